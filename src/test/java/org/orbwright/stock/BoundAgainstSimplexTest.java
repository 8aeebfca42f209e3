package org.orbwright.stock;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.orbwright.fixture.Trials;

/** The bound of the prices that are found against the linear program that it is the dual of. */
class BoundAgainstSimplexTest {
    static LongStream seeds() {
        return Trials.below(200).map(seed -> 1000 + seed);
    }

    @ParameterizedTest(name = "problem {0}")
    @MethodSource("seeds")
    void thePricesGiveTheHighestBoundThatThereIs(long seed) {
        CuttingColumns columns = new CuttingColumns(SmallProblem.random(seed).toProblem());
        CuttingProblem problem = columns.problem();
        List<Integer> missing = GreedyPlan.of(columns).missing();
        for (CuttingAim aim : List.of(
                Aims.fewestMissing(problem),
                Aims.cheapest(problem, 0, missing),
                Aims.cheapest(problem, 2.5, missing),
                Aims.fewestSeams(problem, missing))) {
            double least = LinearRelaxation.least(columns, aim);
            assertEquals(least, PriceFinder.find(columns, aim, 60_000).bound(), 1e-6 * least + 1e-9, aim::toString);
        }
    }

    /** Large problems have far more patterns than prices are found with at first. */
    @ParameterizedTest(name = "large problem {0}")
    @ValueSource(longs = {0, 1, 4, 5, 6, 8, 10, 11})
    void patternsAreAddedUntilTheBoundIsTheHighest(long seed) {
        CuttingColumns columns = new CuttingColumns(SmallProblem.large(seed).toProblem());
        CuttingAim aim =
                Aims.cheapest(columns.problem(), 2.5, GreedyPlan.of(columns).missing());
        double least = LinearRelaxation.least(columns, aim);
        assertEquals(least, PriceFinder.find(columns, aim, 60_000).bound(), 1e-6 * least);
    }

    @Test
    void mostOfTheseBoundsAreAboveZero() {
        long above = seeds().mapToObj(
                        seed -> new CuttingColumns(SmallProblem.random(seed).toProblem()))
                .filter(columns -> LinearRelaxation.least(
                                columns,
                                Aims.cheapest(
                                        columns.problem(),
                                        2.5,
                                        GreedyPlan.of(columns).missing()))
                        > 0)
                .count();
        assertTrue(above > Trials.of(200) / 2, () -> "only " + above);
    }
}
