package org.orbwright.stock;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.orbwright.fixture.Slow;
import org.orbwright.fixture.Trials;
import org.orbwright.stock.SmallProblem.Board;

/** Plans of small problems against the best that trying everything finds. */
@Slow
class PlansAgainstExhaustiveSearchTest {
    private static final int PROBLEMS = 400;

    static LongStream seeds() {
        return Trials.below(PROBLEMS);
    }

    @ParameterizedTest(name = "problem {0}")
    @MethodSource("seeds")
    void noPlanIsBetter(long seed) {
        SmallProblem problem = SmallProblem.random(seed);
        ExhaustiveSearch search = new ExhaustiveSearch(problem);
        for (StockAim aim : StockAim.values()) {
            Solved planned = Solved.best(problem.toProblem(), aim);
            List<Integer> missing = planned.missing();
            double best = switch (aim) {
                case COST -> search.leastOfBoards(sum(missing), Board::cost);
                case WASTE -> search.leastOfBoards(sum(missing), Board::wood);
                case SEAMS -> search.fewestSeams(sum(missing));
            };
            assertAll(
                    aim.name(),
                    () -> CountedPlan.assertCanBeCut(problem, planned.plan()),
                    () -> assertEquals(search.fewestMissing(), sum(missing)),
                    () -> assertEquals(best, planned.value(), 1e-9 * (1 + best)),
                    () -> assertEquals(planned.value(), planned.bound(), 1e-9 * planned.value()),
                    () -> assertTrue(planned.proved()),
                    () -> assertTrue(planned.fewestMissing()));
        }
    }

    private static int sum(List<Integer> counts) {
        return counts.stream().mapToInt(Integer::intValue).sum();
    }

    @ParameterizedTest(name = "work {0}")
    @ValueSource(doubles = {1e-6, 1e-4, 1e-3})
    void aSearchThatIsCutShortClaimsNoMoreThanItKnows(double work) {
        seeds().forEach(seed -> {
            SmallProblem problem = SmallProblem.random(seed);
            ExhaustiveSearch search = new ExhaustiveSearch(problem);
            Solved planned = Solved.within(problem.toProblem(), StockAim.COST, work);
            List<Integer> missing = planned.missing();
            double best = search.leastOfBoards(sum(missing), Board::cost);
            int fewest = search.fewestMissing();
            CountedPlan.assertCanBeCut(problem, planned.plan());
            assertTrue(planned.bound() <= best + 1e-9 * best, () -> "problem " + seed + ": a bound above " + best);
            assertTrue(planned.value() >= best - 1e-9 * best, () -> "problem " + seed + ": better than " + best);
            assertTrue(
                    !planned.fewestMissing() || sum(missing) == fewest,
                    () -> "problem " + seed + ": less can be missing than " + missing);
        });
    }

    @Test
    void theProblemsAreOfEveryKind() {
        Map<String, Integer> seen = new TreeMap<>();
        LongStream.range(0, PROBLEMS).forEach(seed -> {
            CuttingProblem problem = SmallProblem.random(seed).toProblem();
            CuttingPlan plan = Solved.best(problem, StockAim.COST).plan();
            List<Lane> lanes = plan.sections().stream()
                    .flatMap(ripped -> ripped.pattern().lanes().stream())
                    .toList();
            Set<String> kinds = new TreeSet<>();
            for (Lane lane : lanes) {
                kinds.add(lane.rotated() ? "rotated" : lane.items().size() > 1 ? "resawn" : "flat");
            }
            kinds.add(plan.missing().stream().anyMatch(count -> count > 0) ? "some missing" : "all there");
            kinds.add(plan.count(problem, CuttingAim.SEAMS) > 0 ? "seams" : "no seam");
            kinds.forEach(kind -> seen.merge(kind, 1, Integer::sum));
        });
        assertEquals(
                Set.of("rotated", "resawn", "flat", "some missing", "all there", "seams", "no seam"), seen.keySet());
        seen.forEach((kind, count) -> assertTrue(count > PROBLEMS / 10, seen::toString));
    }
}
