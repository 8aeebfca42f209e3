package org.orbwright.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.locationtech.jts.algorithm.Area;
import org.locationtech.jts.geom.Coordinate;
import org.orbwright.design.BandSet;
import org.orbwright.design.Design;
import org.orbwright.design.ImpossibleDesignException;

/** Two spheres on one sheet, each held against the picture of it alone; JTS (Eclipse, 1.20) measures areas. */
class SideBySideTest {
    private static final SphereLook LOOK = new SphereLook(0.7, 0.3, false, false);
    /** Coordinates are written to a thousandth of a millimetre, along outlines of some metres. */
    private static final double WRITTEN = 5;

    static Stream<Design> designs() {
        return Stream.of(
                DrawnDesigns.example("dodecahedron-two-spheres"),
                DrawnDesigns.example("truncated-icosidodecahedron"),
                DrawnDesigns.on("rhombic-triacontahedron", 0, 30, 2, null),
                DrawnDesigns.on("snub-cube", 0, 30, 0, null));
    }

    /** Area of each tone between two upright lines, above the foot of the spheres, in square millimetres. */
    private static Map<Integer, Double> areas(Design design, Drawing drawing, double left, double right) {
        double foot = design.sphereRadius() * (2 + Legend.MARGIN) + 0.01;
        Map<Integer, Double> areas = new TreeMap<>();
        for (Mark mark : drawing.marks()) {
            if (mark instanceof org.orbwright.drawing.Area area) {
                for (List<Coordinate> part : DrawnPaths.parts(area.path())) {
                    double x = part.get(0).x;
                    if (x > left && x < right && part.get(0).y < foot) {
                        areas.merge(area.tone(), Area.ofRing(part.toArray(new Coordinate[0])), Double::sum);
                    }
                }
            }
        }
        return areas;
    }

    @ParameterizedTest
    @MethodSource("designs")
    void eachSphereHasTheAreasOfItsOwnPicture(Design design) {
        Drawing both = SphereDrawing.sideBySide(design, design.sphereOfEachSet(), LOOK);
        double half = both.width() / 2;
        Map<Integer, Double> upright = areas(design, both, 0, half);
        same(areas(design, alone(design, BandSet.UPRIGHT), 0, half), upright);
        Map<Integer, Double> inverted = areas(design, both, half, both.width());
        same(areas(design, alone(design, BandSet.INVERTED), 0, half), inverted);
        assertNotEquals(upright, inverted);
    }

    private static Drawing alone(Design design, BandSet set) {
        return SphereDrawing.draw(design, design.sphere(set), LOOK);
    }

    private static void same(Map<Integer, Double> expected, Map<Integer, Double> seen) {
        assertEquals(expected.keySet(), seen.keySet());
        expected.forEach((tone, area) -> assertEquals(area, seen.get(tone), WRITTEN));
    }

    @ParameterizedTest
    @MethodSource("designs")
    void eachSetIsNamedBelowItsSphere(Design design) {
        Drawing both = SphereDrawing.sideBySide(design, design.sphereOfEachSet(), LOOK);
        List<Label> names = both.marks().stream()
                .filter(mark -> mark instanceof Label label && label.anchor() == Anchor.MIDDLE)
                .map(Label.class::cast)
                .toList();
        assertEquals(
                List.of("upright segments", "inverted segments"),
                names.stream().map(Label::text).toList());
        double middle = design.sphereRadius() * (1 + Legend.MARGIN);
        assertEquals(middle, names.get(0).x(), 1e-9);
        assertEquals(3 * middle, names.get(1).x(), 1e-9);
    }

    /** Chevrons are not straight, so that upright and inverted segments are one set. */
    @Test
    void oneSetIsNoPair() {
        Design chevrons = DrawnDesigns.example("cube-with-chevrons");
        ImpossibleDesignException refusal = assertThrows(ImpossibleDesignException.class, chevrons::sphereOfEachSet);
        assertEquals("ONE_SET", refusal.violations().get(0).code());
    }
}
