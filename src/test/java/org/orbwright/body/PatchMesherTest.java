package org.orbwright.body;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Patches of a sphere cover their outline once, in fat triangles that are as small as they must be. */
class PatchMesherTest {
    private static final double RADIUS = 50;
    /** So coarse that no edge of these patches is too long. */
    private static final double COARSE = RADIUS / 2;

    private static final double EXACT = 1e-9;

    /** A star around the third axis; its notches lie between its tips. */
    private static List<Vector3D> star(int tips, double tip, double notch) {
        List<Vector3D> outline = new ArrayList<>();
        for (int i = 0; i < 2 * tips; i++) {
            outline.add(Patch.direction(i % 2 == 0 ? tip : notch, i * Math.PI / tips));
        }
        return outline;
    }

    /** A comb whose back lies along the equator, with teeth of different lengths towards the pole. */
    private static List<Vector3D> comb(int teeth) {
        double pitch = 0.08;
        List<Vector3D> outline = new ArrayList<>();
        outline.add(Patch.direction(1.6, 0));
        outline.add(Patch.direction(1.6, 2 * teeth * pitch));
        for (int tooth = teeth - 1; tooth >= 0; tooth--) {
            double end = 0.9 - 0.15 * (tooth % 3);
            outline.add(Patch.direction(1.4, (2 * tooth + 1) * pitch));
            outline.add(Patch.direction(end, (2 * tooth + 1) * pitch - 0.02));
            outline.add(Patch.direction(end, 2 * tooth * pitch + 0.02));
            outline.add(Patch.direction(1.4, 2 * tooth * pitch));
        }
        return outline;
    }

    /** An eighth of the sphere, with corners along its three edges. */
    private static List<Vector3D> octant(int partsOfAnEdge) {
        Vector3D[] axes = {Vector3D.Unit.PLUS_X, Vector3D.Unit.PLUS_Y, Vector3D.Unit.PLUS_Z};
        List<Vector3D> outline = new ArrayList<>();
        for (int edge = 0; edge < 3; edge++) {
            for (int i = 0; i < partsOfAnEdge; i++) {
                double along = i * Math.PI / 2 / partsOfAnEdge;
                outline.add(axes[edge].multiply(Math.cos(along)).add(axes[(edge + 1) % 3].multiply(Math.sin(along))));
            }
        }
        return outline;
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 5, 8, 16})
    @DisplayName("closed form: an eighth of a sphere has pi R^2 / 2")
    void anEighthOfTheSphereIsCovered(int partsOfAnEdge) {
        Patch patch = Patch.of(RADIUS, 0.5, octant(partsOfAnEdge));
        patch.assertCoversItsOutline();
        assertEquals(Math.PI * RADIUS * RADIUS / 2, patch.areaOfTriangles(), EXACT * RADIUS * RADIUS);
    }

    @ParameterizedTest
    @CsvSource({"3, 1.2, 0.3", "8, 1.0, 0.1", "20, 0.5, 0.15", "20, 1.1, 0.05", "60, 1.0, 0.9"})
    void aStarIsCoveredInTheFattestTriangles(int tips, double tip, double notch) {
        Patch coarse = Patch.of(RADIUS, COARSE, star(tips, tip, notch));
        coarse.assertCoversItsOutline();
        coarse.assertFattest();
        Patch fine = Patch.of(RADIUS, 0.1, star(tips, tip, notch));
        fine.assertCoversItsOutline();
        fine.assertFattest();
    }

    @ParameterizedTest
    @ValueSource(ints = {3, 4, 9, 15})
    void aCombIsCoveredTeethAndAll(int teeth) {
        List<Vector3D> comb = comb(teeth);
        for (int first = 0; first < comb.size(); first++) {
            List<Vector3D> turned = new ArrayList<>(comb.subList(first, comb.size()));
            turned.addAll(comb.subList(0, first));
            Patch patch = Patch.of(RADIUS, COARSE, turned);
            patch.assertCoversItsOutline();
            patch.assertFattest();
        }
    }

    @Test
    @DisplayName("hand-worked: the shortest ear, at the top, has the point of a spike inside, which comes from below")
    void anEarWithACornerInsideIsNotCut() {
        double[][] right = {{0.1, -10}, {2, -14}, {5, -16}, {9, -16}, {12, -13}, {12, -9}, {6, -5}, {1, 0}};
        List<Vector3D> outline = new ArrayList<>();
        outline.add(Vector3D.of(0, 1, 30));
        for (double[] corner : right) {
            outline.add(Vector3D.of(corner[0], corner[1], 30));
        }
        outline.add(Vector3D.of(0, 3, 30));
        for (int i = right.length - 1; i >= 0; i--) {
            outline.add(Vector3D.of(-right[i][0], right[i][1], 30));
        }
        Patch patch = Patch.of(RADIUS, COARSE, outline);
        patch.assertCoversItsOutline();
        patch.assertFattest();
        assertFalse(patch.has(8, 9, 10));
    }

    @Property(tries = 200, seed = "20260302")
    void anyOutlineAroundAPoleIsCovered(
            @ForAll @Size(min = 3, max = 45) List<@DoubleRange(min = 0.1, max = 1.3) Double> tilts) {
        List<Vector3D> outline = new ArrayList<>();
        for (int i = 0; i < tilts.size(); i++) {
            outline.add(Patch.direction(tilts.get(i), 2 * Math.PI * i / tilts.size()));
        }
        Patch coarse = Patch.of(RADIUS, COARSE, outline);
        coarse.assertCoversItsOutline();
        coarse.assertFattest();
        Patch.of(RADIUS, 1, outline).assertCoversItsOutline();
    }

    @ParameterizedTest
    @ValueSource(doubles = {5, 0.5, 0.05, 0.01})
    void noEdgeIsLongerThanAllowed(double deviation) {
        List<Vector3D> outline = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            outline.add(Patch.direction(0.7, i * Math.PI / 2));
        }
        Patch patch = Patch.of(RADIUS, deviation, outline);
        patch.assertCoversItsOutline();
        // An equilateral triangle in a circle of radius r has edges of r sqrt(3), and r^2 = deviation (2 R -
        // deviation).
        double allowed = Math.sqrt(3 * deviation * (2 * RADIUS - deviation));
        assertTrue(patch.longestInnerEdge() <= allowed * (1 + EXACT));
        // So fine a patch of triangles that are not thin has more of them than its area holds equilateral ones.
        double equilateral = Math.sqrt(3) / 4 * allowed * allowed;
        assertTrue(patch.triangles().size() > patch.areaOfTriangles() / equilateral);
    }

    @Test
    @DisplayName("hand calculation: on a sphere of 2 the longest edge is 3, and so is a diagonal of this square")
    void anEdgeAsLongAsAllowedIsKept() {
        double height = Math.sqrt(4 - 1.5 * 1.5);
        Corners corners = new Corners(1e-7);
        List<Integer> outline = List.of(
                corners.add(Vector3D.of(1.5, 0, height)),
                corners.add(Vector3D.of(0, 1.5, height)),
                corners.add(Vector3D.of(-1.5, 0, height)),
                corners.add(Vector3D.of(0, -1.5, height)));
        assertEquals(
                2,
                new PatchMesher(corners, 2, new Fineness(1)).triangles(outline).size());
        // Only a little finer, and the diagonal gets a corner in its middle, on the sphere: the pole.
        assertEquals(
                4,
                new PatchMesher(corners, 2, new Fineness(0.99))
                        .triangles(outline)
                        .size());
        assertEquals(0, corners.at(4).distance(Vector3D.of(0, 0, 2)), EXACT);
    }

    @ParameterizedTest
    @ValueSource(ints = {-30, 30})
    void aPatchOfAnySizeIsDividedTheSameWay(int exponent) {
        // A power of two changes no digit.
        double scale = Math.scalb(1.0, exponent);
        for (List<Vector3D> outline : List.of(star(20, 1.1, 0.05), comb(9), octant(8))) {
            Patch usual = Patch.of(RADIUS, 1, outline);
            Patch scaled = Patch.of(RADIUS * scale, scale, outline);
            assertEquals(usual.triangles(), scaled.triangles());
        }
    }

    @Test
    void onePatchLeavesNothingBehindForTheNext() {
        Corners corners = new Corners(1e-7 * RADIUS);
        PatchMesher mesher = new PatchMesher(corners, RADIUS, new Fineness(COARSE));
        for (List<Vector3D> outline : List.of(star(8, 1.0, 0.1), comb(4))) {
            List<Integer> loop =
                    outline.stream().map(d -> corners.add(d.withNorm(RADIUS))).toList();
            new Patch(corners, RADIUS, loop, mesher.triangles(loop)).assertCoversItsOutline();
        }
    }
}
