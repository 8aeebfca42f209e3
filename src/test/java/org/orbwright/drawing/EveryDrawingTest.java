package org.orbwright.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.orbwright.design.BandSet;
import org.orbwright.design.Design;
import org.orbwright.design.ImpossibleDesignException;
import org.orbwright.fixture.Slow;

/** Every kind of drawing of every worked example and of every solid. */
@Slow
class EveryDrawingTest {

    @ParameterizedTest
    @MethodSource("org.orbwright.drawing.DrawnDesigns#examples")
    void writesExamplesAsStructurallyValidSvg(String example) {
        check(DrawnDesigns.example(example));
    }

    @ParameterizedTest
    @MethodSource("org.orbwright.drawing.DrawnDesigns#solids")
    void drawsStraightBandsOnEverySolid(String solid) {
        check(DrawnDesigns.on(solid, 0, 30, 0, null));
    }

    @ParameterizedTest
    @MethodSource("org.orbwright.drawing.DrawnDesigns#solids")
    void drawsTiltedBandsOnEverySolid(String solid) {
        check(DrawnDesigns.on(solid, -35, 30, 0, null));
    }

    @ParameterizedTest
    @MethodSource("org.orbwright.drawing.DrawnDesigns#solids")
    void drawsFlatsAndLandsOnEverySolid(String solid) {
        check(DrawnDesigns.on(solid, 0, 30, 0.5, 300.2));
    }

    @ParameterizedTest
    @MethodSource("org.orbwright.drawing.DrawnDesigns#solids")
    void drawsBreakThroughOnEverySolid(String solid) {
        check(DrawnDesigns.on(solid, 0, 1, 0, 270.0));
    }

    private static void check(Design design) {
        DrawnDesigns.drawings(design).forEach((name, drawing) -> {
            SvgDocument.of(drawing).check(drawing);
            drawing.marks().forEach(mark -> labelOnSheet(drawing, mark));
        });
    }

    static void labelOnSheet(Drawing drawing, Mark mark) {
        if (mark instanceof Label label) {
            double width = Lettering.width(label.text(), label.size());
            double left = label.x()
                    - (label.anchor() == Anchor.START ? 0 : label.anchor() == Anchor.MIDDLE ? width / 2 : width);
            assertTrue(left >= 0, "starts on the sheet: " + label);
            assertTrue(left + width <= drawing.width(), "ends on the sheet: " + label);
            assertTrue(label.y() - label.size() >= 0 && label.y() <= drawing.height(), "is on the sheet: " + label);
        }
    }

    @ParameterizedTest
    @MethodSource("org.orbwright.drawing.DrawnDesigns#examples")
    void rendersPicturesWithInkOnThem(String example) {
        DrawnDesigns.drawings(DrawnDesigns.example(example)).forEach((name, drawing) -> {
            BufferedImage image = image(drawing, 300);
            int ink = 0;
            for (int x = 0; x < image.getWidth(); x++) {
                for (int y = 0; y < image.getHeight(); y++) {
                    ink += (image.getRGB(x, y) & 0xffffff) == 0xffffff ? 0 : 1;
                }
            }
            assertTrue(ink > image.getWidth() * image.getHeight() / 50, name + " is not blank");
        });
    }

    static BufferedImage image(Drawing drawing, int width) {
        try {
            return ImageIO.read(
                    new ByteArrayInputStream(PngRenderer.render(drawing, width).bytes()));
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    @Test
    void tellsUprightFromInverted() {
        Design design = DrawnDesigns.example("dodecahedron-two-spheres");
        var drawings = DrawnDesigns.drawings(design);
        for (String kind : new String[] {"panel pentagon", "survival pentagon", "sphere "}) {
            assertNotEquals(
                    SvgWriter.write(drawings.get(kind + BandSet.UPRIGHT)),
                    SvgWriter.write(drawings.get(kind + BandSet.INVERTED)));
        }
    }

    @Test
    void drawsTheOnlyFaceWithoutItsName() {
        Design design = DrawnDesigns.example("dodecahedron-with-land");
        assertEquals(
                PanelDrawing.draw(design, "pentagon", BandSet.UPRIGHT).title(),
                PanelDrawing.draw(design, null, BandSet.UPRIGHT).title());
    }

    @Test
    void refusesAnUnknownFace() {
        Design design = DrawnDesigns.example("truncated-icosahedron");
        assertThrows(ImpossibleDesignException.class, () -> PanelDrawing.draw(design, "square", BandSet.UPRIGHT));
        assertThrows(ImpossibleDesignException.class, () -> SectionDrawing.draw(design, null));
    }

    @Test
    void saysWhereItBreaksThrough() {
        Drawing section = SectionDrawing.draw(DrawnDesigns.on("dodecahedron", 0, 10, 0, 290.0));
        assertTrue(section.description().contains("breaks through"), section.description());
    }

    @Test
    void saysWhichFlatStays() {
        Drawing section = SectionDrawing.draw(DrawnDesigns.on("dodecahedron", 0, 30, 0, 304.0));
        assertTrue(section.description().contains("a flat of 49.15 mm stays"), section.description());
    }
}
