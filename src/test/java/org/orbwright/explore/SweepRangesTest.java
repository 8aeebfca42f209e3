package org.orbwright.explore;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.orbwright.explore.Sweeps.DIAMETER;
import static org.orbwright.explore.Sweeps.WALL;
import static org.orbwright.explore.Sweeps.metric;
import static org.orbwright.explore.Sweeps.range;
import static org.orbwright.explore.Sweeps.refusal;
import static org.orbwright.explore.Sweeps.rows;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.orbwright.document.ExploreRequest.VaryRequest;

/** Values of ranges. */
class SweepRangesTest {
    @Test
    void rangeOfWholeNumbersTakesEachOfThem() {
        List<Double> copies = rows(metric(), List.of(range("/copies", 1, 10, 10)), WALL).stream()
                .map(row -> row.inputs().get(0))
                .toList();
        assertEquals(List.of(1.0, 2.0, 3.0, 4.0, 5.0, 6.0, 7.0, 8.0, 9.0, 10.0), copies);
    }

    @Test
    void rangeInWholeStepsHoldsWholeNumbers() {
        for (SweepRow row : rows(metric(), List.of(range(DIAMETER, 160, 175, 16)), WALL)) {
            assertEquals(Math.rint(row.inputs().get(0)), row.inputs().get(0));
        }
    }

    @Test
    void halfARangeIsOneMistake() {
        VaryRequest half = new VaryRequest(DIAMETER, null, 100.0, null, null);
        assertEquals("VALUES_OR_RANGE", refusal(metric(), List.of(half), WALL).code());
    }
}
