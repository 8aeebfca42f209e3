package org.orbwright.body;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Which ears are cut off an outline of more than 14 corners. All corners lie on one circle, where every division is as
 * good as another to Delaunay, so that the ears stay as they were cut.
 */
class PatchEarsTest {
    private static final double RADIUS = 50;
    /** So coarse that no edge is halved. */
    private static final double COARSE = RADIUS / 2;

    private static final double TILT = 0.6;

    /** A patch whose corner 0 is at the start of the first step, whichever corner the outline starts with. */
    private static Patch onCircle(double[] steps, int first) {
        double whole = Arrays.stream(steps).sum();
        Corners corners = new Corners(1e-7 * RADIUS);
        List<Integer> outline = new ArrayList<>();
        double at = 0;
        for (double step : steps) {
            outline.add(
                    corners.add(Patch.direction(TILT, 2 * Math.PI * at / whole).withNorm(RADIUS)));
            at += step;
        }
        Collections.rotate(outline, -first);
        PatchMesher mesher = new PatchMesher(corners, RADIUS, new Fineness(COARSE));
        return new Patch(corners, RADIUS, outline, mesher.triangles(outline));
    }

    private static double thickness(Corners corners, int a, int b, int c) {
        Vector3D p = corners.at(a);
        Vector3D q = corners.at(b);
        Vector3D r = corners.at(c);
        double longest = Math.max(p.distance(q), Math.max(q.distance(r), r.distance(p)));
        return q.subtract(p).cross(r.subtract(p)).norm() / 2 / (longest * longest);
    }

    /** The thickest that the thinnest triangle of a convex polygon can be, by trying all divisions. */
    private static double bestThinnest(Corners corners, List<Integer> polygon) {
        if (polygon.size() < 3) {
            return Double.POSITIVE_INFINITY;
        }
        double best = 0;
        int last = polygon.size() - 1;
        for (int i = 1; i < last; i++) {
            double sides = Math.min(
                    bestThinnest(corners, polygon.subList(0, i + 1)),
                    bestThinnest(corners, polygon.subList(i, last + 1)));
            best = Math.max(
                    best, Math.min(sides, thickness(corners, polygon.get(0), polygon.get(i), polygon.get(last))));
        }
        return best;
    }

    private static double thinnest(Patch patch) {
        return patch.triangles().stream()
                .mapToDouble(t -> thickness(patch.corners(), t.a(), t.b(), t.c()))
                .min()
                .orElseThrow();
    }

    @Test
    void theShortestEarsAreCutOffFirst() {
        double[] steps = new double[21];
        for (int i = 0; i < 21; i++) {
            steps[i] = i % 3 == 2 ? 2 : 1;
        }
        for (int first = 0; first < 21; first++) {
            Patch patch = onCircle(steps, first);
            patch.assertCoversItsOutline();
            for (int i = 0; i < 21; i += 3) {
                assertTrue(patch.has(i, i + 1, (i + 2) % 21), "the ear at " + (i + 1) + " of an outline from " + first);
            }
        }
    }

    @ParameterizedTest
    @CsvSource({"1.0, 1.1, 1.3, 0, 2, 3", "1.3, 1.1, 1.0, 0, 1, 3"})
    @DisplayName("hand-worked: steps of 1, 1.1 and 1.3 among tens; after the first ear the next is beside it")
    void anEarBesideOneThatIsCutIsTheNext(double one, double two, double three, int a, int b, int c) {
        double[] steps = new double[16];
        Arrays.fill(steps, 10);
        steps[0] = one;
        steps[1] = two;
        steps[2] = three;
        for (int first = 0; first < 16; first++) {
            Patch patch = onCircle(steps, first);
            patch.assertCoversItsOutline();
            assertTrue(patch.has(one < three ? 0 : 1, one < three ? 1 : 2, one < three ? 2 : 3));
            assertTrue(patch.has(a, b, c), "an outline from " + first);
        }
    }

    @Test
    void anOutlineOfFourteenCornersIsDividedAsWellAsCanBe() {
        double[] steps = new double[14];
        Arrays.fill(steps, 10);
        steps[4] = 1;
        steps[5] = 1;
        Patch patch = onCircle(steps, 0);
        double best = bestThinnest(patch.corners(), patch.outline());
        assertEquals(best, thinnest(patch), 1e-9);
        assertTrue(best > 1.5 * thickness(patch.corners(), 4, 5, 6), "the shortest ear is thinner");
    }

    @Test
    void fromFifteenCornersOneEarIsCutAndTheRestDividedAsWellAsCanBe() {
        double[] steps = new double[15];
        Arrays.fill(steps, 10);
        steps[4] = 1;
        steps[5] = 1;
        steps[9] = 0.4;
        steps[10] = 0.4;
        Patch patch = onCircle(steps, 0);
        assertTrue(patch.has(9, 10, 11));
        List<Integer> rest = new ArrayList<>(patch.outline());
        rest.remove(10);
        List<Triangle> others = patch.triangles().stream()
                .filter(t -> !List.of(t.a(), t.b(), t.c()).contains(10))
                .toList();
        Patch without = new Patch(patch.corners(), RADIUS, rest, others);
        without.assertCoversItsOutline();
        assertEquals(bestThinnest(patch.corners(), rest), thinnest(without), 1e-9);
    }
}
