package org.orbwright.paper;

import java.awt.geom.Point2D;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.contentstream.PDFGraphicsStreamEngine;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.graphics.image.PDImage;

/** The straight strokes of a page as PDFBox's interpreter finds them, in millimetres from the top left corner. */
final class PdfLines extends PDFGraphicsStreamEngine {
    private static final double MILLIMETRE = 72 / 25.4;

    /** A stroke. */
    record Stroke(double fromX, double fromY, double toX, double toY) {
        double length() {
            return Math.hypot(toX - fromX, toY - fromY);
        }

        boolean level() {
            return Math.abs(toY - fromY) < 1e-3;
        }

        boolean upright() {
            return Math.abs(toX - fromX) < 1e-3;
        }
    }

    private final double height;
    private final List<Stroke> pending = new ArrayList<>();
    private final List<Stroke> strokes = new ArrayList<>();
    private Point2D start = new Point2D.Double();
    private Point2D current = new Point2D.Double();

    private PdfLines(PDPage page) {
        super(page);
        this.height = page.getMediaBox().getHeight();
    }

    /** The strokes of a page. */
    static List<Stroke> of(PDPage page) {
        PdfLines lines = new PdfLines(page);
        try {
            lines.processPage(page);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return lines.strokes;
    }

    private void stroke(double x, double y) {
        pending.add(new Stroke(
                current.getX() / MILLIMETRE,
                (height - current.getY()) / MILLIMETRE,
                x / MILLIMETRE,
                (height - y) / MILLIMETRE));
        current = new Point2D.Double(x, y);
    }

    @Override
    public void moveTo(float x, float y) {
        start = new Point2D.Double(x, y);
        current = start;
    }

    @Override
    public void lineTo(float x, float y) {
        stroke(x, y);
    }

    @Override
    public void curveTo(float x1, float y1, float x2, float y2, float x3, float y3) {
        current = new Point2D.Double(x3, y3);
    }

    @Override
    public void closePath() {
        stroke(start.getX(), start.getY());
    }

    @Override
    public void strokePath() {
        strokes.addAll(pending);
        pending.clear();
    }

    @Override
    public void fillAndStrokePath(int rule) {
        strokePath();
    }

    @Override
    public void fillPath(int rule) {
        pending.clear();
    }

    @Override
    public void endPath() {
        pending.clear();
    }

    @Override
    public Point2D getCurrentPoint() {
        return current;
    }

    @Override
    public void appendRectangle(Point2D one, Point2D two, Point2D three, Point2D four) {
        current = one;
    }

    @Override
    public void clip(int rule) {
        pending.clear();
    }

    @Override
    public void drawImage(PDImage image) {
        throw new AssertionError("a sheet has no pictures made of dots");
    }

    @Override
    public void shadingFill(COSName shading) {
        throw new AssertionError("a sheet has no shading");
    }
}
