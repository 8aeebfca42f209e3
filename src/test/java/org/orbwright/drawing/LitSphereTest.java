package org.orbwright.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.orbwright.design.Design;
import org.orbwright.fixture.Slow;
import org.orbwright.notice.Notice;

/**
 * A lit sphere as dots, beside the same drawing without its shade. Lambert's law (Photometria, 1760) says where it is
 * brighter: with the cosine of the angle between the surface's normal and the light, here 40 degrees beside the eye.
 */
@Slow
class LitSphereTest {
    private static final int DOTS = 700;
    private static final double ACROSS = Math.sin(Math.toRadians(40)) / Math.sqrt(2);
    private static final double AHEAD = Math.cos(Math.toRadians(40));
    /** Cosines between which dots are taken together. */
    private static final double[] STEPS = {1, 0.85, 0.6, 0.35, 0.1};
    /** Fewer dots than this say nothing. */
    private static final int ENOUGH = 40;

    private static Drawing lit(Design design) {
        return SphereDrawing.draw(design, design.sphere(null), new SphereLook(0.7, 0.3, false, true));
    }

    private static Drawing unlit(Drawing lit) {
        List<Mark> marks =
                lit.marks().stream().filter(mark -> !(mark instanceof Shade)).toList();
        return new Drawing(lit.title(), lit.description(), lit.width(), lit.height(), lit.species(), marks);
    }

    @ParameterizedTest
    @MethodSource("org.orbwright.drawing.DrawnDesigns#examples")
    void everyWoodIsBrighterTheMoreItFacesTheLight(String example) {
        Design design = DrawnDesigns.example(example);
        Drawing drawing = lit(design);
        BufferedImage shaded = EveryDrawingTest.image(drawing, DOTS);
        BufferedImage flat = EveryDrawingTest.image(unlit(drawing), DOTS);
        double radius = DOTS / (2 * (1 + Legend.MARGIN));
        int compared = 0;
        for (String wood : drawing.species()) {
            int colour = Integer.decode(Tones.fill(new Legend(design).tone(wood)));
            double[] sums = new double[STEPS.length];
            int[] counts = new int[STEPS.length];
            for (int column = 0; column < DOTS; column++) {
                for (int row = 0; row < DOTS; row++) {
                    double x = (column + 0.5 - DOTS / 2.0) / radius;
                    double y = (row + 0.5 - DOTS / 2.0) / radius;
                    if (x * x + y * y < 0.97 && (flat.getRGB(column, row) & 0xffffff) == colour) {
                        double cosine = -ACROSS * (x + y) + AHEAD * Math.sqrt(1 - x * x - y * y);
                        int step = 0;
                        while (step + 1 < STEPS.length && cosine < STEPS[step + 1]) {
                            step++;
                        }
                        sums[step] += brightness(shaded.getRGB(column, row));
                        counts[step]++;
                    }
                }
            }
            List<Double> means = new ArrayList<>();
            for (int step = 0; step < STEPS.length; step++) {
                if (counts[step] >= ENOUGH) {
                    means.add(sums[step] / counts[step]);
                }
            }
            for (int i = 1; i < means.size(); i++) {
                assertTrue(means.get(i) < means.get(i - 1), wood + ": " + means);
                compared++;
            }
        }
        assertTrue(compared >= STEPS.length - 1, "bands in light and in shadow were compared: " + compared);
    }

    private static double brightness(int rgb) {
        return 0.299 * (rgb >> 16 & 0xff) + 0.587 * (rgb >> 8 & 0xff) + 0.114 * (rgb & 0xff);
    }

    @ParameterizedTest
    @MethodSource("org.orbwright.drawing.DrawnDesigns#examples")
    void lightTouchesNothingOutsideTheSphere(String example) {
        Drawing drawing = lit(DrawnDesigns.example(example)).with(List.of(STOP));
        BufferedImage shaded = EveryDrawingTest.image(drawing, DOTS);
        BufferedImage flat = EveryDrawingTest.image(unlit(drawing), DOTS);
        double radius = DOTS / (2 * (1 + Legend.MARGIN));
        Shade shade = drawing.marks().stream()
                .filter(Shade.class::isInstance)
                .map(Shade.class::cast)
                .findFirst()
                .orElseThrow();
        double scale = DOTS / drawing.width();
        int changed = 0;
        for (int column = 0; column < DOTS; column++) {
            for (int row = 0; row < shaded.getHeight(); row++) {
                boolean same = shaded.getRGB(column, row) == flat.getRGB(column, row);
                changed += same ? 0 : 1;
                double distance = Math.hypot(column + 0.5 - scale * shade.x(), row + 0.5 - scale * shade.y());
                assertTrue(same || distance < radius + 1, "outside: " + column + ", " + row);
            }
        }
        assertTrue(changed > DOTS * DOTS / 5, "the sphere is shaded: " + changed);
    }

    private static final Notice STOP =
            new Notice(Notice.Kind.STOP, "MADE_UP", "A made-up sentence that stands above the picture.");

    @Test
    void woodsHaveColoursAloneInPictureAndKey() {
        Design design = DrawnDesigns.example("truncated-icosahedron");
        Drawing drawing = lit(design);
        List<Area> areas = drawing.marks().stream()
                .filter(Area.class::isInstance)
                .map(Area.class::cast)
                .toList();
        assertEquals(2 * drawing.species().size(), areas.size());
        assertTrue(areas.stream().noneMatch(Area::hatched));
        assertFalse(SvgWriter.write(drawing).contains("<pattern"));
        SvgDocument.of(drawing).check(drawing);
    }
}
