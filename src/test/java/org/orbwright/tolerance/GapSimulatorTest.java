package org.orbwright.tolerance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ForkJoinPool;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.orbwright.design.Design;
import org.orbwright.fixture.Designs;
import org.orbwright.tolerance.GapSimulation.GapPercentiles;
import org.orbwright.tolerance.ToleranceRequest.LengthErrorRequest;

class GapSimulatorTest {
    /** Standard errors that a right answer stays within; one of 150,000 does not. */
    private static final double FAR = 4.5;

    private static final Designs LANTERN = Designs.example("dodecahedron-with-land");

    private static GapSimulation on(int processors, Tolerances of) throws ExecutionException, InterruptedException {
        ForkJoinPool pool = new ForkJoinPool(processors);
        try {
            return pool.submit(of::calculate).get().simulation();
        } finally {
            pool.shutdown();
        }
    }

    @Test
    void theAnswerDoesNotDependOnTheNumberOfProcessors() throws ExecutionException, InterruptedException {
        // Two whole chunks, and a part of one.
        Tolerances of = Tolerances.of(LANTERN)
                .tipAngle(-0.01, 0.01)
                .bevel(0.02, 0.02)
                .widths(null, null, new LengthErrorRequest(0.0, 0.1))
                .samples(5000, 7);
        GapSimulation one = on(1, of);
        assertEquals(one, on(4, of));
        assertEquals(one, on(3, of));
        assertNotEquals(one.panelGap(), on(4, of.samples(5000, 8)).panelGap());
        assertTrue(one.allBridged() > 0.1 && one.allBridged() < 0.99, one::toString);
    }

    @ParameterizedTest
    @CsvSource({
        "1, 0.006, 0, 0.04",
        "2, 0.006, 0.03, 0.05",
        "3, 0, 0.03, 0.05",
        "4, 0.007, 0.02, 0.045",
        "2147483647, 0.005, 0.025, 0.045"
    })
    void smallErrorsAgreeWithTheLinearTheory(int seed, double tip, double bevel, double glue) {
        GapSimulation simulation = Tolerances.of(LANTERN)
                .tipAngle(0.002, tip)
                .bevel(-0.005, bevel)
                .glue(glue)
                .samples(40_000, seed)
                .calculate()
                .simulation();
        double off = simulation.allBridged() - simulation.allBridgedLinear();
        assertTrue(Math.abs(off) < FAR * simulation.standardError(), simulation::toString);
        assertTrue(simulation.allBridged() > 0.05 && simulation.allBridged() < 0.999, simulation::toString);
        double share = simulation.allBridged();
        assertEquals(Math.sqrt(share * (1 - share) / 40_000), simulation.standardError(), 1e-5);
    }

    @Test
    @DisplayName("percentiles of a normal error's size by mpmath, sqrt(2) erfinv(p): 0.0627, 0.6745, 1.9600 and 2.5758")
    void percentilesAreThoseOfTheNormalDistribution() {
        int samples = 100_000;
        Tolerance tolerance = Tolerances.of(LANTERN)
                .tipAngle(0, 0.01)
                .bevel(0, 0.01)
                .samples(samples, 11)
                .calculate();
        assertNormal(
                tolerance.simulation().panelGap(),
                tolerance.panels().get(0).opening().uncertainty(),
                samples);
        assertNormal(
                tolerance.simulation().seamGap(),
                tolerance.seams().get(0).opening().uncertainty(),
                samples);
    }

    private static void assertNormal(GapPercentiles gaps, double deviation, int samples) {
        double[] found = {gaps.p5(), gaps.p50(), gaps.p95(), gaps.p99()};
        double[] wanted = {0.0627, 0.6745, 1.9600, 2.5758};
        double[] share = {0.05, 0.5, 0.95, 0.99};
        for (int i = 0; i < found.length; i++) {
            double density = 2 * Math.exp(-wanted[i] * wanted[i] / 2) / Math.sqrt(2 * Math.PI);
            double error = Math.sqrt(share[i] * (1 - share[i]) / samples) / density;
            assertEquals(wanted[i], found[i] / deviation, FAR * error + 5e-5);
        }
    }

    @Test
    void withoutScatterTheGapsAreExactChords() {
        Tolerance tolerance = Tolerances.of(LANTERN).tipAngle(4, 0).bevel(-3, 0).calculate();
        GapSimulation simulation = tolerance.simulation();
        double panel = 2 * tolerance.panels().get(0).jointLength() * Math.sin(Math.toRadians(10));
        double seam = 2 * tolerance.seams().get(0).seamLength() * Math.sin(Math.toRadians(3));
        for (GapPercentiles gaps : List.of(simulation.panelGap(), simulation.largestPanelGap())) {
            assertEquals(panel, gaps.p5(), panel * 1e-7);
            assertEquals(panel, gaps.p99(), panel * 1e-7);
        }
        assertEquals(seam, simulation.seamGap().p50(), seam * 1e-7);
        assertEquals(seam, simulation.largestSeamGap().p95(), seam * 1e-7);
    }

    @Test
    void anglesBeyondAHalfTurnStayFinite() {
        GapSimulation simulation = Tolerances.of(LANTERN)
                .tipAngle(30, 10)
                .samples(2000, 1)
                .calculate()
                .simulation();
        assertEquals(2 * 64.8578, simulation.largestPanelGap().p99(), 1e-3);
        assertEquals(0, simulation.allBridged());
    }

    /** Solids whose every segment and every bevel is drawn on its own and put edge to edge. */
    @ParameterizedTest
    @CsvSource({
        "truncated-octahedron, 0, 0.02, 0.05, 0.1, 0, 0.12",
        "dodecahedron, -3, 1.5, 2, 1, 0.5, 27",
        "deltoidal-icositetrahedron, 1, 0.5, -1, 0.7, 1, 5.9",
    })
    void largeErrorsAgreeWithPlacedSegments(
            String solid, double tip, double tipScatter, double bevel, double bevelScatter, double thick, double glue) {
        Designs designs = Designs.of(solid).thickness(15).land(3);
        GapSimulation simulation = Tolerances.of(designs)
                .tipAngle(tip, tipScatter)
                .bevel(bevel, bevelScatter)
                .widths(null, null, new LengthErrorRequest(0.2, thick))
                .glue(glue)
                .samples(50_000, 5)
                .calculate()
                .simulation();
        Design design = designs.build();
        PlacedByHand placed = new PlacedByHand(design);
        Random random = new Random(20260301);
        int solids = 1500;
        List<double[]> gaps = new ArrayList<>();
        for (int i = 0; i < solids; i++) {
            gaps.add(placed.largestGaps(
                    random,
                    new double[] {Math.toRadians(tip), Math.toRadians(tipScatter)},
                    new double[] {Math.toRadians(bevel), Math.toRadians(bevelScatter)},
                    new double[] {0.2, thick}));
        }
        assertShare(
                simulation.allBridged(),
                gaps.stream().filter(gap -> Math.max(gap[0], gap[1]) <= glue).count(),
                solids);
        assertDistribution(simulation.largestPanelGap(), gaps, 0);
        assertDistribution(simulation.largestSeamGap(), gaps, 1);
        assertTrue(simulation.allBridged() > 0.05 && simulation.allBridged() < 0.95, simulation::toString);
    }

    private static void assertDistribution(GapPercentiles percentiles, List<double[]> gaps, int of) {
        assertBelow(0.05, percentiles.p5(), gaps, of);
        assertBelow(0.5, percentiles.p50(), gaps, of);
        assertBelow(0.95, percentiles.p95(), gaps, of);
        assertBelow(0.99, percentiles.p99(), gaps, of);
    }

    private static void assertBelow(double share, double percentile, List<double[]> gaps, int of) {
        assertShare(share, gaps.stream().filter(gap -> gap[of] <= percentile).count(), gaps.size());
    }

    private static void assertShare(double share, long counted, int of) {
        // A twentieth more for the simulation's own error: it has over thirty times as many samples.
        double error = Math.sqrt(share * (1 - share) / of) * 1.05;
        assertEquals(share, (double) counted / of, FAR * error);
    }
}
