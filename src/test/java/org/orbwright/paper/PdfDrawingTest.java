package org.orbwright.paper;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.orbwright.design.BandSet;
import org.orbwright.drawing.Drawing;
import org.orbwright.drawing.PanelDrawing;
import org.orbwright.fixture.Designs;
import org.orbwright.paper.PdfLines.Stroke;

/** Drawings on pages. */
class PdfDrawingTest {
    private static final double WIDTH = 150;

    private static List<Stroke> strokes(Designs design) throws IOException {
        Drawing drawing = PanelDrawing.draw(design.build(), null, BandSet.UPRIGHT);
        try (PDDocument document = new PDDocument()) {
            PdfCanvas canvas = new PdfCanvas(document, new PdfLetters(document), 210, 297);
            new PdfDrawing().draw(drawing, canvas, 10, 20, WIDTH / drawing.width(), 0.1);
            canvas.close();
            return PdfLines.of(canvas.page());
        }
    }

    /** Drawings of similar designs differ in their size and in nothing else. */
    @ParameterizedTest
    @ValueSource(doubles = {0.01, 100})
    void smallAndLargeDesignsAreDrawnAlike(double factor) throws IOException {
        List<Stroke> usual = strokes(Designs.of("dodecahedron"));
        List<Stroke> scaled = strokes(Designs.of("dodecahedron").times(factor));
        // The scale bar, of a round length, comes last.
        for (int i = 0; i < 20; i++) {
            assertEquals(usual.get(i).fromX(), scaled.get(i).fromX(), 0.01);
            assertEquals(usual.get(i).fromY(), scaled.get(i).fromY(), 0.01);
            assertEquals(usual.get(i).toX(), scaled.get(i).toX(), 0.01);
            assertEquals(usual.get(i).toY(), scaled.get(i).toY(), 0.01);
        }
    }
}
