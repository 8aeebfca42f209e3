package org.orbwright.tolerance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.apache.commons.math3.distribution.BetaDistribution;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.orbwright.design.DesignRequest.BandRequest;
import org.orbwright.design.DesignRequest.LaminationRequest;
import org.orbwright.design.Places;
import org.orbwright.fixture.Designs;
import org.orbwright.tolerance.ToleranceRequest.LengthErrorRequest;

/** What errors do where panels, their halves or their segments differ. */
class PanelsOfSeveralKindsTest {
    private static final double TENTH = Math.PI / 1800;
    private static final double EDGE = 50;
    private static final double EXACT = 1e-9;
    private static final Designs CUBE = Designs.of("cube");
    private static final Designs FOOTBALL =
            Designs.of("truncated-icosahedron").edge(EDGE).thickness(20);
    /**
     * Hexagons of the football lie in the faces of an icosahedron, of which two make pi - asin(2 / 3), which is
     * acos(-sqrt(5) / 3) (GNU 3DLDF, user manual, Icosahedron). An axis through a face of the icosahedron and the next
     * one through a corner make acos(sqrt((5 + 2 sqrt(5)) / 15)).
     */
    private static final double HEXAGON_BEVEL = Math.acos(-Math.sqrt(5) / 3) / 2;

    private static final double PENTAGON_BEVEL =
            Math.PI - Math.acos(Math.sqrt((5 + 2 * Math.sqrt(5)) / 15)) - HEXAGON_BEVEL;
    /** Circumradius over the edge: sqrt(9 phi + 10) / 2, phi the golden section. */
    private static final double CIRCUMRADIUS = Math.sqrt(9 * (1 + Math.sqrt(5)) / 2 + 10) / 2;

    private static final double PENTAGON = EDGE / 2 / Math.tan(Math.PI / 5);
    private static final double HEXAGON = EDGE / 2 / Math.tan(Math.PI / 6);

    private static PanelTolerance panel(Tolerance tolerance, String face) {
        return tolerance.panels().stream()
                .filter(panel -> panel.face().equals(face))
                .findFirst()
                .orElseThrow();
    }

    @Nested
    class TwoFaceKinds {
        @Test
        void thePanelSitsOutAsFarAsItsLongestSeamHoldsIt() {
            Tolerance tolerance = Tolerances.of(FOOTBALL).bevel(0.1, 0).calculate();
            double pentagon = 20 / Math.sin(PENTAGON_BEVEL);
            double hexagon = 20 / Math.sin(HEXAGON_BEVEL);
            // A pentagon has hexagons beside it only, with which it touches over the shorter of the two seam faces.
            assertEquals(
                    TENTH * pentagon / Math.cos(PENTAGON_BEVEL),
                    panel(tolerance, "pentagon").faceDistance().shift(),
                    EXACT);
            assertEquals(
                    TENTH * hexagon / Math.cos(HEXAGON_BEVEL),
                    panel(tolerance, "hexagon").faceDistance().shift(),
                    EXACT);
        }

        @Test
        @DisplayName("hexagons lie lowest: across flats moves by twice what one of them does, which is as it grows")
        void acrossFlatsIsOfTheLowestFaces() {
            Tolerance tolerance = Tolerances.of(FOOTBALL).stop(0.2, 0).calculate();
            double distance = HEXAGON * Math.tan(HEXAGON_BEVEL);
            // The solid scales: every length grows by the stop's error over the edge.
            assertEquals(
                    2 * distance * 0.2 / EDGE, tolerance.solid().acrossFlats().shift(), EXACT);
        }

        @Test
        @DisplayName("without a land the corner of the hollow is (1 - t / g) times the circumradius from the centre")
        void theWallIsThinnestInTheFurthestPanel() {
            Tolerance tolerance = Tolerances.of(FOOTBALL).tipAngle(0.1, 0).calculate();
            // g is larger for pentagons: they decide. Base distance b / (2 tan(t / 2)), so dh/dt = -b / (4 sin^2).
            double lower = EDGE / 4 / Math.pow(Math.sin(Math.PI / 5), 2) * TENTH;
            double hollow = lower * CIRCUMRADIUS * EDGE / PENTAGON;
            assertEquals(hollow, tolerance.solid().thinnestWall().shift(), EXACT);
        }

        @Test
        void aBevelIsLimitedByWhatItLacksOfARightAngle() {
            assertEquals(90 - 73.5278, Math.toDegrees(Math.PI / 2 - PENTAGON_BEVEL), 1e-4);
            Tolerance tolerance =
                    Tolerances.of(FOOTBALL).bevel(16.4, 0).glue(1000.0).calculate();
            // Rounded down to four decimals of a degree, below what leaves nothing.
            double limit = tolerance.seams().stream()
                    .mapToDouble(seam -> Math.toDegrees(seam.largestBevelError()))
                    .min()
                    .orElseThrow();
            double right = 90 - Math.toDegrees(PENTAGON_BEVEL);
            assertTrue(limit < right && limit >= right - 1e-4, () -> "limit " + limit);
            assertEquals(
                    "/tolerance/errors/bevel",
                    Tolerances.of(FOOTBALL).bevel(16.5, 0).refusals().get(0).path());
        }
    }

    @Nested
    class OneFaceKind {
        @Test
        @DisplayName(
                "four legs that scatter by s move a base distance of 100 mm by 100 s / 2; two panels by sqrt 2 more")
        void innerStepsScatterAlongTheSeam() {
            SeamTolerance seam =
                    Tolerances.of(CUBE).tipAngle(0, 0.1).calculate().seams().get(0);
            // Along a seam at 45 degrees by sqrt 2 of the base distance.
            double one = 100 * TENTH / 2 * Math.sqrt(2);
            assertEquals(one * Math.sqrt(2), seam.innerStep().uncertainty(), EXACT);
        }

        @Test
        void bevelsThatAreTooSmallOpenTheInsideAndShiftTheOtherWay() {
            SeamTolerance small =
                    Tolerances.of(CUBE).bevel(-0.1, 0).calculate().seams().get(0);
            SeamTolerance large =
                    Tolerances.of(CUBE).bevel(0.1, 0).calculate().seams().get(0);
            assertEquals(small.gap(), small.opening().shift());
            assertEquals(-large.gap(), large.opening().shift());
        }

        @Test
        @DisplayName(
                "hollow at the corner: sqrt 3 times as far as at the face, so a wall loses sqrt 3 of what it moves")
        void theWallOfACubeIsThinnestAtItsCorner() {
            Tolerance tolerance = Tolerances.of(CUBE).stop(0.2, 0).calculate();
            assertEquals(-0.1 * Math.sqrt(3), tolerance.solid().thinnestWall().shift(), EXACT);
        }

        @Test
        @DisplayName("a flat of the stock stays: its wall is as thick as the panel")
        void aWallUnderAFlatIsAsThickAsThePanel() {
            Tolerance tolerance = Tolerances.of(CUBE.thickness(90).diameter(280.0))
                    .widths(null, null, new LengthErrorRequest(0.3, 0.1))
                    .calculate();
            assertEquals(0.3, tolerance.solid().thinnestWall().shift(), EXACT);
            assertEquals(0.1, tolerance.solid().thinnestWall().uncertainty(), EXACT);
        }

        @Test
        void theSegmentWithTheShortestBaseForItsHeightIsTheBluntest() {
            Designs kites = Designs.of("deltoidal-icositetrahedron");
            double steepest = kites.build().panels().get(0).pieces().stream()
                    .mapToDouble(piece -> piece.base() / (piece.left() + piece.right()))
                    .max()
                    .orElseThrow();
            assertEquals(2, kites.build().panels().get(0).pieces().size());
            Tolerance tolerance = Tolerances.of(kites).stop(0.2, 0).calculate();
            assertEquals(0.2 * steepest, tolerance.panels().get(0).bluntTips().shift(), EXACT);
        }
    }

    /** Segments that were neighbours along a blank, and so share a cut, in one panel. */
    @Nested
    class Unmixed {
        /** The variance of the sum of consecutive tip angles over that of one, when either cut gives half of it. */
        private static double variance(int segments) {
            double[] shares = new double[segments + 1];
            for (int i = 0; i < segments; i++) {
                shares[i]++;
                shares[i + 1]++;
            }
            double variance = 0;
            for (double share : shares) {
                variance += share * share / 2;
            }
            return variance;
        }

        private static LaminationRequest half(Places places, List<BandRequest> bands) {
            return new LaminationRequest(null, places, 0.0, null, bands);
        }

        @Test
        void consecutiveSegmentsOfOneSetScatterMore() {
            Tolerance cube = Tolerances.of(CUBE).calculate();
            assertEquals(Math.sqrt(variance(4) / 4), cube.panels().get(0).unmixed(), EXACT);
            Tolerance football = Tolerances.of(FOOTBALL.laminations(List.of(
                            Designs.lamination("pentagon", 0, Designs.widths((Double) null)),
                            Designs.lamination("hexagon", 0, Designs.widths(10.0, null)))))
                    .calculate();
            assertEquals(Math.sqrt(variance(5) / 5), panel(football, "pentagon").unmixed(), EXACT);
            assertNull(panel(football, "hexagon").unmixed(), "upright and inverted ones never meet in a panel");
        }

        @Test
        void tiltedSegmentsShareNoCut() {
            Designs tilted = CUBE.bands(90, Designs.widths((Double) null));
            assertNull(Tolerances.of(tilted).calculate().panels().get(0).unmixed());
        }

        @Test
        void eachHalfOfAPanelComesFromABlankOfItsOwn() {
            List<BandRequest> oneSet = Designs.widths((Double) null);
            List<BandRequest> twoSets = Designs.widths(40.0, null);
            double both = (variance(2) + variance(2)) / 4;
            double one = (variance(2) + 2) / 4;
            assertEquals(Math.sqrt(both), unmixed(oneSet, oneSet), EXACT);
            assertEquals(Math.sqrt(one), unmixed(oneSet, twoSets), EXACT);
            assertEquals(Math.sqrt(one), unmixed(twoSets, oneSet), EXACT);
        }

        private Double unmixed(List<BandRequest> odd, List<BandRequest> even) {
            return Tolerances.of(CUBE.laminations(List.of(half(Places.ODD, odd), half(Places.EVEN, even))))
                    .calculate()
                    .panels()
                    .get(0)
                    .unmixed();
        }

        @Test
        void theHalfWithMoreBandsIsTheBlunterOne() {
            List<BandRequest> one = Designs.widths((Double) null);
            List<BandRequest> three = Designs.widths(40.0, 30.0, null);
            for (List<LaminationRequest> halves : List.of(
                    List.of(half(Places.ODD, one), half(Places.EVEN, three)),
                    List.of(half(Places.ODD, three), half(Places.EVEN, one)))) {
                Tolerances errors = Tolerances.of(CUBE.laminations(halves));
                LengthErrorRequest narrow = new LengthErrorRequest(-0.1, 0.0);
                LengthErrorRequest scattered = new LengthErrorRequest(0.0, 0.05);
                assertEquals(
                        0.3,
                        errors.widths(null, narrow, null)
                                .calculate()
                                .panels()
                                .get(0)
                                .bluntTips()
                                .shift(),
                        EXACT);
                assertEquals(
                        2 * Math.sqrt(3) * 0.05,
                        errors.widths(null, scattered, null)
                                .calculate()
                                .panels()
                                .get(0)
                                .bluntTips()
                                .expanded(),
                        EXACT);
            }
        }
    }

    @Nested
    class Simulated {
        @ParameterizedTest(name = "glue bridges {0} mm")
        @CsvSource({"0.01", "0.5", "1", "5"})
        @DisplayName("a share that was anything before is beta distributed after the samples (Bayes and Laplace)")
        void theStandardErrorIsThatOfABetaDistribution(double glue) {
            GapSimulation simulation = Tolerances.of(CUBE)
                    .tipAngle(0, 0.05)
                    .glue(glue)
                    .samples(50, 7)
                    .calculate()
                    .simulation();
            double bridged = Math.round(simulation.allBridged() * 50);
            double variance = new BetaDistribution(bridged + 1, 50 - bridged + 1).getNumericalVariance();
            assertEquals(Math.sqrt(variance), simulation.standardError(), 1e-12);
        }

        @Test
        void oneSampleHasAllPercentiles() {
            GapSimulation simulation = Tolerances.of(CUBE)
                    .tipAngle(0, 0.05)
                    .samples(1, 3)
                    .calculate()
                    .simulation();
            assertTrue(simulation.panelGap().p5() > 0);
            assertEquals(simulation.panelGap().p5(), simulation.panelGap().p99());
        }

        @ParameterizedTest(name = "tip angles {0} degrees too large")
        @CsvSource({"0.05", "0.5", "1", "1.4", "1.5", "5"})
        @DisplayName("four segments of 141.42 mm legs leave the chord of four times the error")
        void chordsAreExactForSmallAndLargeAngles(double degrees) {
            GapSimulation simulation =
                    Tolerances.of(CUBE).tipAngle(degrees, 0).calculate().simulation();
            double chord = 2 * 100 * Math.sqrt(2) * Math.sin(Math.toRadians(4 * degrees) / 2);
            // Samples are kept as floats, of 24 bits.
            assertEquals(chord, simulation.largestPanelGap().p50(), 1e-7 * chord);
        }
    }

    @Test
    void glueBridgesWhatItIsSaidToBridge() {
        Tolerance tolerance = Tolerances.of(CUBE).glue(0.1).calculate();
        assertTrue(tolerance.bridges(0.1));
        assertTrue(tolerance.bridges(0.1 + 5e-7), "within what a limit is rounded to");
        assertFalse(tolerance.bridges(0.1 + 5e-6));
        assertTrue(tolerance.bridges(0));
    }
}
