package org.orbwright.stock;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

class LengthPlansTest {
    private static final String SEED = "20261125";

    private static double used(List<Integer> plan, List<Double> lengths, double kerf) {
        double used = -kerf;
        for (int i = 0; i < lengths.size(); i++) {
            used += plan.get(i) * (lengths.get(i) + kerf);
        }
        return used;
    }

    @Property(tries = 500, seed = SEED)
    void sectionsFitTheBoardAndNoFurtherOneDoes(
            @ForAll @Size(min = 1, max = 4) List<@DoubleRange(min = 100, max = 900) Double> lengths,
            @ForAll @DoubleRange(min = 0, max = 5) double kerf,
            @ForAll @DoubleRange(min = 0, max = 4000) double board) {
        double shortest =
                lengths.stream().mapToDouble(Double::doubleValue).min().orElseThrow();
        for (List<Integer> plan : LengthPlans.of(lengths, board, kerf, 60).plans()) {
            double used = used(plan, lengths, kerf);
            assertTrue(used <= board + 1e-6);
            assertTrue(used + kerf + shortest > board);
        }
    }

    @Property(tries = 500, seed = SEED)
    void noPlanIsListedTwice(
            @ForAll @Size(min = 1, max = 4) List<@DoubleRange(min = 100, max = 900) Double> lengths,
            @ForAll @DoubleRange(min = 0, max = 4000) double board) {
        List<List<Integer>> plans = LengthPlans.of(lengths, board, 3, 60).plans();
        assertEquals(plans.size(), new HashSet<>(plans).size());
    }

    @Property(tries = 500, seed = SEED)
    void aCompleteListHasEveryWayThatLeavesNoRoom(
            @ForAll @DoubleRange(min = 300, max = 900) double whole,
            @ForAll @DoubleRange(min = 200, max = 900) double piece,
            @ForAll @DoubleRange(min = 0, max = 4000) double board) {
        LengthPlans.Found found = LengthPlans.of(List.of(whole, piece), board, 3, 60);
        assertTrue(found.complete());
        int ways = 0;
        for (int wholes = 0; wholes <= 20; wholes++) {
            for (int pieces = 0; pieces <= 20; pieces++) {
                double used = used(List.of(wholes, pieces), List.of(whole, piece), 3);
                boolean full = used <= board && used + 3 + Math.min(whole, piece) > board;
                ways += full && wholes + pieces > 0 ? 1 : 0;
            }
        }
        assertEquals(ways, found.plans().size());
    }

    @Test
    @DisplayName("hand calculation: 1206 mm less two kerfs of 3 mm are three sections of 400 mm, exactly")
    void anExactFit() {
        assertEquals(
                List.of(List.of(3)), LengthPlans.of(List.of(400.0), 1206, 3, 60).plans());
        assertEquals(
                List.of(List.of(2)),
                LengthPlans.of(List.of(400.0), 1205.9, 3, 60).plans());
    }

    @Test
    @DisplayName("hand calculation: 1000 mm are 600 + 3 + 350, or two of 350 and 294 mm that are left")
    void theMostWholeStripsComeFirst() {
        assertEquals(
                List.of(List.of(1, 1), List.of(0, 2)),
                LengthPlans.of(List.of(600.0, 350.0), 1000, 3, 60).plans());
    }

    @Test
    void aBoardThatIsTooShortGivesNothing() {
        LengthPlans.Found found = LengthPlans.of(List.of(600.0, 350.0), 349, 3, 60);
        assertEquals(List.of(), found.plans());
        assertTrue(found.complete());
    }

    @Test
    void aListThatIsTooLongIsNotComplete() {
        LengthPlans.Found found = LengthPlans.of(List.of(600.0, 353.0, 211.0, 127.0), 6000, 3, 60);
        assertFalse(found.complete());
        assertTrue(found.plans().size() <= 60);
        // Some plans for each number of whole strips.
        assertEquals(9, found.plans().get(0).get(0));
        assertEquals(0, found.plans().get(found.plans().size() - 1).get(0));
    }
}
