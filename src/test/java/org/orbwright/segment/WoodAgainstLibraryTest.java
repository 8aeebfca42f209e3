package org.orbwright.segment;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.orbwright.source.Kind.LIBRARY;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.ConvexVolume;
import org.apache.commons.geometry.euclidean.threed.Plane;
import org.apache.commons.geometry.euclidean.threed.Planes;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.apache.commons.numbers.core.Precision;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.orbwright.fixture.Designs;
import org.orbwright.segment.Yield.SpeciesInSphere;
import org.orbwright.source.Source;

/**
 * The wood of each band in a solid that is glued up, against volumes that Commons Geometry cuts out with planes. The
 * outlines of the segments are those of the reference table, which knows nothing of the service.
 */
class WoodAgainstLibraryTest {
    private static final Precision.DoubleEquivalence EXACT = Precision.doubleEquivalenceOfEpsilon(1e-11);
    private static final double FIRST = 6;
    private static final double SECOND = 5;

    /** A segment with its tip above the origin, its base at x = base, and left of it below 0 on y. */
    private record Outline(double count, double base, double left, double right, double joint) {
        static Outline of(String[] row, double scale) {
            return new Outline(
                    Double.parseDouble(row[2]),
                    scale * Double.parseDouble(row[3]),
                    scale * Double.parseDouble(row[4]),
                    scale * Double.parseDouble(row[5]),
                    scale * Double.parseDouble(row[6]));
        }

        Outline turned() {
            return new Outline(count, base, /* left= */ right, /* right= */ left, joint);
        }

        boolean symmetric() {
            return Math.abs(left - right) < 1e-9;
        }

        double top(double cos, double sin) {
            return Math.max(0, Math.max(base * cos - left * sin, base * cos + right * sin));
        }
    }

    private static List<Outline> outlines(String solid, double scale) throws IOException {
        try (BufferedReader lines = new BufferedReader(new InputStreamReader(
                WoodAgainstLibraryTest.class.getResourceAsStream("/org/orbwright/sheet/segments.csv"),
                StandardCharsets.UTF_8))) {
            return lines.lines()
                    .filter(line -> line.startsWith(solid + ","))
                    .map(line -> Outline.of(line.split(",", -1), scale))
                    .toList();
        }
    }

    /** The side of a plane that its normal points away from. */
    private static Plane upTo(double x, double y, double z, double offset) {
        Vector3D normal = Vector3D.of(x, y, z);
        return Planes.fromPointAndNormal(normal.multiply(offset / normal.normSq()), normal, EXACT);
    }

    private static double volume(Outline outline, double thickness, double land, List<Plane> lines) {
        double face = outline.joint + land;
        List<Plane> planes = new ArrayList<>(List.of(
                upTo(-outline.left / outline.base, -1, 0, 0),
                upTo(-outline.right / outline.base, 1, 0, 0),
                upTo(outline.joint / outline.base, 0, -1, 0),
                upTo(0, 0, 1, face),
                upTo(0, 0, -1, thickness - face),
                upTo(1, 0, 0, outline.base)));
        planes.addAll(lines);
        ConvexVolume wood = ConvexVolume.full();
        for (Plane plane : planes) {
            wood = wood == null ? null : wood.split(plane).getMinus();
        }
        return wood == null ? 0 : wood.getSize();
    }

    private static double[] bands(Outline outline, double degrees, double thickness, double land) {
        double cos = Math.cos(Math.toRadians(degrees));
        double sin = Math.sin(Math.toRadians(degrees));
        double top = outline.top(cos, sin);
        Plane overFirst = upTo(-cos, -sin, 0, FIRST - top);
        Plane underFirst = upTo(cos, sin, 0, top - FIRST);
        Plane overSecond = upTo(-cos, -sin, 0, FIRST + SECOND - top);
        Plane underSecond = upTo(cos, sin, 0, top - FIRST - SECOND);
        return new double[] {
            volume(outline, thickness, land, List.of(overFirst)),
            volume(outline, thickness, land, List.of(underFirst, overSecond)),
            volume(outline, thickness, land, List.of(underSecond))
        };
    }

    @ParameterizedTest(name = "{0}: bands at {1} degrees, panels {2} mm, land {3} mm")
    @CsvSource({
        "dodecahedron, 0, 25, 0",
        "dodecahedron, 30, 31, 4",
        "cube, 45, 40, 6",
        "tetrahedron, -20, 18, 0",
        "truncated-icosahedron, 0, 22, 3",
        "cuboctahedron, 90, 27, 0",
        "snub-cube, -37, 24, 2",
        "truncated-icosidodecahedron, 0, 20, 1",
        "rhombic-triacontahedron, 0, 26, 2",
        "rhombic-dodecahedron, 35, 33, 0",
        "deltoidal-hexecontahedron, 0, 21, 1",
        "pentagonal-icositetrahedron, 60, 28, 2",
        "disdyakis-dodecahedron, 0, 23, 0"
    })
    @Source(value = LIBRARY, text = "Apache Commons Geometry 1.0, ConvexVolume")
    void woodOfEveryBandOfTheSolid(String solid, double degrees, double thickness, double land) throws IOException {
        double[] expected = new double[3];
        for (Outline outline : outlines(solid, (100 - land) / 100)) {
            boolean bothHands = degrees != 0 && !outline.symmetric();
            for (Outline hand : bothHands ? List.of(outline, outline.turned()) : List.of(outline)) {
                double[] bands = bands(hand, degrees, thickness, land);
                for (int i = 0; i < bands.length; i++) {
                    expected[i] += outline.count / (bothHands ? 2 : 1) * bands[i];
                }
            }
        }
        Designs designs =
                Designs.of(solid).thickness(thickness).land(land).bands(degrees, Designs.widths(FIRST, SECOND, null));
        List<SpeciesInSphere> woods =
                YieldCalculator.calculate(designs.build()).spheres().get(0).species();
        double whole = expected[0] + expected[1] + expected[2];
        assertTrue(expected[0] > 1e-6 * whole);
        assertEquals(expected[0], volume(woods, "black walnut"), 1e-10 * whole);
        assertEquals(expected[1], volume(woods, "sugar maple"), 1e-10 * whole);
        assertEquals(expected[2], volume(woods, "black cherry"), 1e-10 * whole);
    }

    private static double volume(List<SpeciesInSphere> woods, String species) {
        return woods.stream()
                .filter(wood -> wood.species().equals(species))
                .mapToDouble(SpeciesInSphere::solidVolume)
                .sum();
    }
}
