package org.orbwright.inlay;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.orbwright.design.RequestSketch.lamination;
import static org.orbwright.design.RequestSketch.sketch;
import static org.orbwright.inlay.Inlays.disc;
import static org.orbwright.inlay.Inlays.polygon;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.orbwright.design.Design;
import org.orbwright.design.DesignRequest;
import org.orbwright.design.GeneratedDesigns;
import org.orbwright.design.Panel;
import org.orbwright.design.SizeBy;
import org.orbwright.inlay.InlayPlan.InlayLimit;
import org.orbwright.inlay.InlayPlan.Pocket;

/** The largest inlay against hand-computed cases and against a search on its definition. */
class LargestInlayTest {

    /** A cube of edge 120: face distance and base distance are both 60; the sphere of 120 mm touches the faces. */
    @Nested
    class Cube {
        private static final double THICK = 20;
        private static final DesignRequest CUBE = cube(THICK);

        @Test
        @DisplayName("hollow: the rim lies at 60 - 20 + 4 + 2 = 46, so r = sqrt(60^2 - 46^2) = 38.5227 mm")
        void hollowLimitsADiscInAThinPanel() {
            InlayPlan.Largest largest = disc(CUBE, 10).rim(2).floor(4).plan().largest();
            assertEquals(InlayLimit.HOLLOW, largest.limitedBy());
            assertEquals(2 * Math.sqrt(60 * 60 - 46 * 46), largest.diameter(), 1e-12);
            assertEquals(77.0454, largest.diameter(), 5e-5);
        }

        @Test
        @DisplayName(
                "seam: it leans 45 deg, so sqrt(60^2 - r^2) - 2 = r, r = (sqrt(2 * 60^2 - 2^2) - 2) / 2 = 41.4146 mm")
        void seamLimitsADiscInAThickPanel() {
            InlayPlan.Largest largest =
                    disc(cube(30), 10).rim(2).floor(4).plan().largest();
            assertEquals(InlayLimit.SEAM, largest.limitedBy());
            assertEquals(82.8292, largest.diameter(), 5e-5);
            double r = largest.diameter() / 2;
            assertEquals(r, Math.sqrt(60 * 60 - r * r) - 2, 1e-12);
        }

        @Test
        @DisplayName("without a rim the disc meets the seam where the sphere does: 60 / sqrt(2)")
        void withoutARimTheDiscMeetsTheSeamOnTheSphere() {
            assertEquals(120 / Math.sqrt(2), disc(cube(30), 10).plan().largest().diameter(), 1e-12);
        }

        @Test
        @DisplayName(
                "a square's corners point at the cube's corners, so its corner comes sqrt(2) as far as a disc's rim")
        void squareAlongTheEdgesReachesFartherThanADisc() {
            // sqrt(60^2 - r^2) - 2 = r / sqrt(2): r = (sqrt(8 + 6 * 3596) - sqrt(8)) / 3 = 48.0288.
            InlayPlan.Largest largest = polygon(cube(30), 4, 10).rim(2).plan().largest();
            double r = largest.diameter() / 2;
            assertEquals(r * Math.sqrt(0.5), Math.sqrt(60 * 60 - r * r) - 2, 1e-12);
            assertEquals(96.0577, largest.diameter(), 5e-5);
        }

        @Test
        @DisplayName("an octagon's corners lie 22.5 deg from the edge middles")
        void octagonReachesToTheSeamWithTheCornersNextToTheEdgeMiddle() {
            double r = polygon(cube(30), 8, 10).rim(2).plan().largest().diameter() / 2;
            assertEquals(r * Math.cos(Math.PI / 8), Math.sqrt(60 * 60 - r * r) - 2, 1e-12);
        }

        @Test
        @DisplayName("flat: with R = 70 a flat of sqrt(70^2 - 60^2) = 36.06 mm stays, inside of which the rim is at 60")
        void overAFlatTheRimLiesOnIt() {
            DesignRequest flats = sketch().solid("cube")
                    .size(SizeBy.EDGE, 120)
                    .panel(30, null)
                    .diameter(140.0)
                    .laminations(lamination(null, null, 10.0, null))
                    .request();
            Pocket pocket = disc(flats, 60).rim(3).plan().pocket();
            assertEquals(3, pocket.depth(), 1e-12);
            assertEquals(3, pocket.centreThickness(), 1e-12);
            // 60 - 25 = 35 mm is left over the seam on the flat: r = 35 < 36.06 needs a rim of 25.
            InlayPlan.Largest largest = disc(flats, 10).rim(25).plan().largest();
            assertEquals(70, largest.diameter(), 1e-12);
            assertEquals(InlayLimit.SEAM, largest.limitedBy());
        }

        @Test
        @DisplayName("pocket of a 60 mm disc: depth 60 - sqrt(60^2 - 30^2) + 2 = 10.0385, middle 10.0385 thick")
        void pocketIsAsDeepAsTheRimUnderTheSphere() {
            Pocket pocket = disc(CUBE, 60).rim(2).floor(4).plan().pocket();
            assertEquals(62 - Math.sqrt(2700), pocket.depth(), 1e-12);
            assertEquals(10.0385, pocket.depth(), 5e-5);
            assertEquals(16, pocket.deepest(), 1e-12);
            assertEquals(2, pocket.rimThickness());
            assertEquals(pocket.depth(), pocket.centreThickness(), 1e-12);
            assertEquals(THICK - pocket.depth(), pocket.floor(), 1e-12);
            // Along the sphere 2 * 60 * asin(30 / 60) = 20 pi; the cap's area 2 pi 60 (60 - sqrt(2700)).
            assertEquals(20 * Math.PI, pocket.acrossOnSphere(), 1e-12);
            assertEquals(120 * Math.PI * (60 - Math.sqrt(2700)), pocket.area(), 1e-9);
        }

        private static DesignRequest cube(double thickness) {
            return sketch().solid("cube")
                    .size(SizeBy.EDGE, 120)
                    .panel(thickness, null)
                    .allowance(0)
                    .laminations(lamination(null, null, 10.0, null))
                    .request();
        }
    }

    @Property(tries = 200)
    void largestInlayIsTheOneThatASearchOnItsDefinitionFinds(
            @ForAll("designs") DesignRequest design,
            @ForAll @IntRange(max = 9) int shape,
            @ForAll @DoubleRange(min = 0, max = 0.4) double rimPart,
            @ForAll @DoubleRange(min = 0, max = 0.59) double floorPart) {
        Panel panel = Design.of(design).panels().get(0);
        PocketOracle oracle = PocketOracle.of(Design.of(design), panel, shape < 3 ? 0 : shape, rimPart, floorPart);
        Assume.that(oracle.smallestFits());
        double largest = oracle.largest();
        double unit = design.unit().millimetres();
        InlayPlan plan = inlay(design, shape, 0.02 * largest / unit)
                .face(panel.face())
                .rim(oracle.rim() / unit)
                .floor(oracle.floor() / unit)
                .plan();
        assertEquals(2 * largest, plan.largest().diameter(), 1e-8);
        assertEquals(oracle.hollowLimits(largest), plan.largest().limitedBy() == InlayLimit.HOLLOW);
        Inlays just = inlay(design, shape, plan.largest().diameter() / unit)
                .face(panel.face())
                .rim(oracle.rim() / unit)
                .floor(oracle.floor() / unit);
        assertDoesNotThrow(just::plan);
        assertTrue(just.plan().pocket().floor() >= oracle.floor() - 1e-8);
        just.shape(
                shape < 3 ? InlayRequest.ShapeKind.DISC : InlayRequest.ShapeKind.POLYGON,
                shape < 3 ? null : Integer.valueOf(shape),
                (plan.largest().diameter() + 1e-3) / unit);
        assertEquals("INLAY_TOO_LARGE", just.refusal().code());
    }

    @Provide
    Arbitrary<DesignRequest> designs() {
        return GeneratedDesigns.designs(Arbitraries.just(0.0));
    }

    private static Inlays inlay(DesignRequest design, int shape, double diameter) {
        return shape < 3 ? disc(design, diameter) : polygon(design, shape, diameter);
    }
}
