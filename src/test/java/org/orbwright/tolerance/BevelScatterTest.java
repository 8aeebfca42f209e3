package org.orbwright.tolerance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.orbwright.tolerance.Tolerances.part;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.apache.commons.math3.optim.PointValuePair;
import org.apache.commons.math3.optim.linear.LinearConstraint;
import org.apache.commons.math3.optim.linear.LinearConstraintSet;
import org.apache.commons.math3.optim.linear.LinearObjectiveFunction;
import org.apache.commons.math3.optim.linear.Relationship;
import org.apache.commons.math3.optim.linear.SimplexSolver;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.orbwright.fixture.Designs;
import org.orbwright.tolerance.ErrorBudget.ErrorContribution;

/**
 * Why scatter of bevels is no uncertainty of the face distance: a rigid panel on edges that are too high or too low.
 */
class BevelScatterTest {
    /**
     * How far out a panel's middle comes to rest that may move and tilt: at no edge lower than what its bevel holds it
     * off, which is nothing where that is too small; a linear program.
     */
    private static double out(double[] held) {
        List<LinearConstraint> edges = new ArrayList<>();
        for (int i = 0; i < held.length; i++) {
            double at = 2 * Math.PI * i / held.length;
            edges.add(new LinearConstraint(
                    new double[] {1, Math.cos(at), Math.sin(at)}, Relationship.GEQ, Math.max(0, held[i])));
        }
        PointValuePair rest = new SimplexSolver()
                .optimize(new LinearObjectiveFunction(new double[] {1, 0, 0}, 0), new LinearConstraintSet(edges));
        return rest.getValue();
    }

    @ParameterizedTest
    @ValueSource(ints = {3, 4, 5, 6, 10})
    void scatterHoldsAPanelOutNeverInAndNoFartherThanItsLargestBevelWould(int edges) {
        Random random = new Random(20261130);
        double mean = 0;
        int trials = 300;
        for (int trial = 0; trial < trials; trial++) {
            double largest = 0;
            double[] held = new double[edges];
            for (int i = 0; i < edges; i++) {
                held[i] = random.nextGaussian();
                largest = Math.max(largest, held[i]);
            }
            double out = out(held);
            assertTrue(out >= -1e-9 && out <= largest + 1e-9, out + " of " + largest);
            mean += out / trials;
        }
        // It does not even out around zero, as an uncertainty would.
        assertTrue(mean > 0.2, "mean " + mean);
        double[] all = new double[edges];
        Arrays.fill(all, 0.7);
        assertEquals(0.7, out(all), 1e-9, "alike bevels move it as far as the setting does");
    }

    @ParameterizedTest
    @ValueSource(strings = {"cube", "dodecahedron", "truncated-icosahedron"})
    void theSettingShiftsThePanelAndTheScatterHasNoPartInItsUncertainty(String solid) {
        Tolerances exact = Tolerances.of(Designs.of(solid)).stop(0, 0.1);
        for (PanelTolerance panel : exact.bevel(0.1, 0.05).calculate().panels()) {
            ErrorBudget distance = panel.faceDistance();
            double perTenth = part(distance, ErrorSource.BEVEL, ErrorContribution::perTenthDegree);
            assertTrue(perTenth > 0);
            assertEquals(perTenth, part(distance, ErrorSource.BEVEL, ErrorContribution::shift), 1e-12);
            assertEquals(0, part(distance, ErrorSource.BEVEL, ErrorContribution::uncertainty));
        }
        assertEquals(
                uncertainties(exact.bevel(0, 0)), uncertainties(exact.bevel(0.1, 0.05)), "with scatter and without");
    }

    private static List<Double> uncertainties(Tolerances of) {
        return of.calculate().panels().stream()
                .map(panel -> panel.faceDistance().uncertainty())
                .toList();
    }
}
