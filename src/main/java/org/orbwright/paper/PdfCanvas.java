package org.orbwright.paper;

import java.io.Closeable;
import java.io.IOException;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.graphics.state.RenderingMode;
import org.apache.pdfbox.util.Matrix;
import org.orbwright.drawing.Anchor;

/** A page to draw on, in millimetres from its top left corner, y downwards. */
final class PdfCanvas implements Closeable {
    /** Points of a PDF in a millimetre (ISO 32000-1:2008, 8.3.2.3, from memory). */
    static final double POINTS = 72 / 25.4;
    /** Bold letters are drawn with a rim of this share of their size, as only one cut of the font is at hand. */
    private static final double BOLD = 0.03;

    private final PDPage page;
    private final PDPageContentStream out;
    private final PdfLetters letters;
    private final double width;
    private final double height;

    PdfCanvas(PDDocument document, PdfLetters letters, double width, double height) throws IOException {
        this.page = new PDPage(new PDRectangle((float) (width * POINTS), (float) (height * POINTS)));
        document.addPage(page);
        this.out = new PDPageContentStream(document, page);
        this.letters = letters;
        this.width = width;
        this.height = height;
        out.transform(new Matrix((float) POINTS, 0, 0, (float) -POINTS, 0, (float) (height * POINTS)));
    }

    PDPage page() {
        return page;
    }

    PDPageContentStream out() {
        return out;
    }

    PdfLetters letters() {
        return letters;
    }

    double width() {
        return width;
    }

    double height() {
        return height;
    }

    /** Draws a straight line. */
    void line(double fromX, double fromY, double toX, double toY, double pen) throws IOException {
        out.setLineWidth((float) pen);
        out.moveTo((float) fromX, (float) fromY);
        out.lineTo((float) toX, (float) toY);
        out.stroke();
    }

    /** Draws a line of dashes. */
    void dashed(double fromX, double fromY, double toX, double toY, double pen) throws IOException {
        out.setLineDashPattern(new float[] {3, 2}, 0);
        line(fromX, fromY, toX, toY, pen);
        out.setLineDashPattern(new float[0], 0);
    }

    /** Draws a rectangle. */
    void frame(double left, double top, double wide, double high, double pen) throws IOException {
        out.setLineWidth((float) pen);
        out.addRect((float) left, (float) top, (float) wide, (float) high);
        out.stroke();
    }

    /** Fills a rectangle with a shade: 0 black, 1 white. */
    void fill(double left, double top, double wide, double high, double shade) throws IOException {
        out.setNonStrokingColor((float) shade);
        out.addRect((float) left, (float) top, (float) wide, (float) high);
        out.fill();
        out.setNonStrokingColor(0f);
    }

    /** Writes a line of text in black. */
    void text(String text, double x, double baseLine, double size, Anchor anchor) throws IOException {
        text(text, x, baseLine, size, anchor, RenderingMode.FILL);
    }

    /** Writes a line of bold text in the shade that is set. */
    void bold(String text, double x, double baseLine, double size, Anchor anchor) throws IOException {
        out.setLineWidth((float) (BOLD * size));
        text(text, x, baseLine, size, anchor, RenderingMode.FILL_STROKE);
    }

    /** Writes a line of text. */
    void text(String text, double x, double baseLine, double size, Anchor anchor, RenderingMode mode)
            throws IOException {
        double share = anchor == Anchor.START ? 0 : anchor == Anchor.MIDDLE ? 0.5 : 1;
        double start = share == 0 ? x : x - share * letters.width(text, size);
        out.beginText();
        out.setFont(letters.font(), (float) size);
        out.setRenderingMode(mode);
        out.setTextMatrix(new Matrix(1, 0, 0, -1, (float) start, (float) baseLine));
        out.showText(letters.printable(text));
        out.endText();
    }

    @Override
    public void close() throws IOException {
        out.close();
    }
}
