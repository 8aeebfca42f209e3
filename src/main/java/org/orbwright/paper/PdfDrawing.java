package org.orbwright.paper;

import java.awt.Color;
import java.awt.geom.AffineTransform;
import java.io.IOException;
import java.util.HashMap;
import java.util.Map;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.PDPatternContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.graphics.color.PDColor;
import org.apache.pdfbox.pdmodel.graphics.color.PDPattern;
import org.apache.pdfbox.pdmodel.graphics.pattern.PDTilingPattern;
import org.apache.pdfbox.pdmodel.graphics.state.PDExtendedGraphicsState;
import org.apache.pdfbox.pdmodel.graphics.state.RenderingMode;
import org.apache.pdfbox.util.Matrix;
import org.orbwright.drawing.Area;
import org.orbwright.drawing.Drawing;
import org.orbwright.drawing.Ink;
import org.orbwright.drawing.Label;
import org.orbwright.drawing.Letters;
import org.orbwright.drawing.Line;
import org.orbwright.drawing.Mark;
import org.orbwright.drawing.Paper;
import org.orbwright.drawing.PathData;
import org.orbwright.drawing.PathData.Command;
import org.orbwright.drawing.PathData.Move;
import org.orbwright.drawing.PathData.Straight;
import org.orbwright.drawing.Pen;
import org.orbwright.drawing.Tones;

/** Draws drawings onto the pages of one document, as lines, not as dots. */
final class PdfDrawing {
    private static final Color INK = new Color(0x1c1c1c);
    /** A hatch repeats some 80 times over a drawing, as in the SVG. */
    private static final double HATCHES_PER_DRAWING = 80;
    /** Thin lines, as a share of the drawing's width, as in the SVG. */
    static final double THIN_PER_DRAWING = 0.001;
    /** Width of the stroke that leaves a light rim around letters, as a share of their size. */
    private static final double RIM_PER_LETTER = 0.35;

    private static final double BOLD_PER_LETTER = 0.04;
    private static final float HATCH_PEN = 0.9f;

    private final Map<String, PDTilingPattern> hatches = new HashMap<>();

    /**
     * Draws a drawing with its upper left corner at a place. The scale is the size on paper of one millimetre of the
     * drawing; thin is the width of a thin line on paper.
     */
    void draw(Drawing drawing, PdfCanvas canvas, double left, double top, double scale, double thin)
            throws IOException {
        PDPageContentStream out = canvas.out();
        out.saveGraphicsState();
        out.transform(new Matrix(1, 0, 0, 1, (float) left, (float) top));
        out.setLineJoinStyle(1);
        double hatch = scale * drawing.width() / HATCHES_PER_DRAWING;
        for (Mark mark : drawing.marks()) {
            mark(mark, canvas, scale, thin, hatch);
        }
        out.restoreGraphicsState();
    }

    /** Draws a mark. A shade has no look here: nothing on paper is lit. */
    private void mark(Mark mark, PdfCanvas canvas, double scale, double thin, double hatch) throws IOException {
        PDPageContentStream out = canvas.out();
        if (mark instanceof Area area) {
            out.setNonStrokingColor(Color.decode(Tones.fill(area.tone())));
            PdfPath.lay(area.path(), scale, out);
            out.fill();
            if (area.hatched()) {
                out.setNonStrokingColor(hatched(area.tone(), hatch, canvas));
                PdfPath.lay(area.path(), scale, out);
                out.fill();
            }
            stroke(area.path(), area.pen(), scale, thin, out);
        } else if (mark instanceof Paper paper) {
            out.saveGraphicsState();
            PDExtendedGraphicsState cover = new PDExtendedGraphicsState();
            cover.setNonStrokingAlphaConstant((float) paper.opacity());
            out.setGraphicsStateParameters(cover);
            out.setNonStrokingColor(Color.WHITE);
            PdfPath.lay(paper.path(), scale, out);
            out.fillEvenOdd();
            out.restoreGraphicsState();
            stroke(paper.path(), paper.pen(), scale, thin, out);
        } else if (mark instanceof Ink ink) {
            out.setNonStrokingColor(INK);
            PdfPath.lay(ink.path(), scale, out);
            out.fill();
        } else if (mark instanceof Line line) {
            line(line, scale, thin, out);
        } else if (mark instanceof Label label) {
            label(label, scale, canvas);
        }
    }

    private static void line(Line line, double scale, double thin, PDPageContentStream out) throws IOException {
        if (line.pen() == Pen.CASED || line.pen() == Pen.DASHED || line.pen() == Pen.CHAIN) {
            out.setStrokingColor(Color.WHITE);
            out.setLineWidth((float) ((line.pen() == Pen.CASED ? 4 : 2) * thin));
            PdfPath.lay(line.path(), scale, out);
            out.stroke();
        }
        stroke(line.path(), line.pen(), scale, thin, out);
    }

    private static void stroke(PathData path, Pen pen, double scale, double thin, PDPageContentStream out)
            throws IOException {
        if (pen == Pen.NONE || path.isEmpty()) {
            return;
        }
        double width = switch (pen) {
            case NONE, THIN -> thin;
            case CASED -> 1.5 * thin;
            case MEDIUM, DASHED, CHAIN -> 2 * thin;
            case THICK -> 3.5 * thin;
        };
        out.setStrokingColor(INK);
        out.setLineWidth((float) width);
        if (pen == Pen.DASHED) {
            out.setLineDashPattern(new float[] {(float) (8 * thin), (float) (5 * thin)}, 0);
        } else if (pen == Pen.CHAIN) {
            float gap = (float) (3.5 * thin);
            out.setLineDashPattern(new float[] {(float) (14 * thin), gap, (float) (3 * thin), gap}, 0);
        }
        PdfPath.lay(path, scale, out);
        out.stroke();
        if (pen == Pen.DASHED || pen == Pen.CHAIN) {
            out.setLineDashPattern(new float[0], 0);
        }
    }

    private static void label(Label label, double scale, PdfCanvas canvas) throws IOException {
        PDPageContentStream out = canvas.out();
        if (label.letters() == Letters.CASED) {
            out.setStrokingColor(Color.WHITE);
            out.setLineWidth((float) (RIM_PER_LETTER * scale * label.size()));
            letters(label, scale, canvas, RenderingMode.STROKE);
        }
        boolean reversed = label.letters() == Letters.REVERSED;
        Color colour = reversed ? Color.WHITE : INK;
        out.setNonStrokingColor(colour);
        out.setStrokingColor(colour);
        out.setLineWidth((float) (BOLD_PER_LETTER * scale * label.size()));
        letters(label, scale, canvas, reversed ? RenderingMode.FILL_STROKE : RenderingMode.FILL);
    }

    private static void letters(Label label, double scale, PdfCanvas canvas, RenderingMode mode) throws IOException {
        canvas.text(label.text(), scale * label.x(), scale * label.y(), scale * label.size(), label.anchor(), mode);
    }

    /** A hatch that repeats over the page; its size is rounded so that drawings of nearly one size share it. */
    private PDColor hatched(int tone, double size, PdfCanvas canvas) throws IOException {
        double rounded = Math.max(0.1, Math.rint(size * 10) / 10);
        String key = tone + " " + rounded;
        PDTilingPattern hatch = hatches.get(key);
        if (hatch == null) {
            hatch = hatch(tone, rounded);
            hatches.put(key, hatch);
        }
        return new PDColor(canvas.page().getResources().add(hatch), new PDPattern(null));
    }

    private static PDTilingPattern hatch(int tone, double size) throws IOException {
        PDTilingPattern pattern = new PDTilingPattern();
        float side = (float) Tones.HATCH_SIZE;
        float scale = (float) (size / Tones.HATCH_SIZE * PdfCanvas.POINTS);
        pattern.setBBox(new PDRectangle(side, side));
        pattern.setPaintType(PDTilingPattern.PAINT_COLORED);
        pattern.setTilingType(PDTilingPattern.TILING_NO_DISTORTION);
        pattern.setXStep(side);
        pattern.setYStep(side);
        pattern.setMatrix(new AffineTransform(scale, 0, 0, -scale, 0, 0));
        try (PDPatternContentStream strokes = new PDPatternContentStream(pattern)) {
            strokes.setStrokingColor(Color.decode(Tones.line(tone)));
            strokes.setLineWidth(HATCH_PEN);
            for (Command command : Tones.hatch(tone).commands()) {
                if (command instanceof Move move) {
                    strokes.moveTo((float) move.x(), (float) move.y());
                } else if (command instanceof Straight straight) {
                    strokes.lineTo((float) straight.x(), (float) straight.y());
                }
            }
            strokes.stroke();
        }
        return pattern;
    }
}
