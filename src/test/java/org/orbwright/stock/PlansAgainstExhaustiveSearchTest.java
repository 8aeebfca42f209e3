package org.orbwright.stock;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.orbwright.fixture.Trials;
import org.orbwright.stock.CuttingModel.Effort;
import org.orbwright.stock.CuttingPlanner.Planned;
import org.orbwright.stock.SmallProblem.Board;

/** Plans of small problems against the best that trying everything finds. */
class PlansAgainstExhaustiveSearchTest {
    private static final int PROBLEMS = 200;
    /** Far more than any of these problems takes. */
    private static final Effort ENOUGH = new Effort(1_000_000, 60_000_000_000L);

    static LongStream seeds() {
        return Trials.below(PROBLEMS);
    }

    @ParameterizedTest(name = "problem {0}")
    @MethodSource("seeds")
    void noPlanIsBetter(long seed) {
        SmallProblem problem = SmallProblem.random(seed);
        ExhaustiveSearch search = new ExhaustiveSearch(problem);
        for (StockAim aim : StockAim.values()) {
            Planned planned = CuttingPlanner.plan(problem.toProblem(), aim, ENOUGH);
            List<Integer> missing = planned.plan().missing();
            double best = switch (aim) {
                case COST -> search.leastOfBoards(missing, Board::cost);
                case WASTE -> search.leastOfBoards(missing, Board::wood);
                case SEAMS -> search.fewestSeams(missing);
            };
            assertAll(
                    aim.name(),
                    () -> CountedPlan.assertCanBeCut(problem, planned.plan()),
                    () -> assertEquals(search.fewestMissing(), missingWidth(problem, missing), 1e-9),
                    () -> assertEquals(best, planned.value(), 1e-9 * (1 + best)),
                    () -> assertEquals(planned.value(), planned.bound(), 1e-9 * planned.value()),
                    () -> assertTrue(planned.proved()),
                    () -> assertTrue(planned.fewestMissing()));
        }
    }

    private static double missingWidth(SmallProblem problem, List<Integer> missing) {
        return IntStream.range(0, missing.size())
                .mapToDouble(s -> missing.get(s)
                        * problem.widths().get(problem.strips().get(s).width())
                        / 100.0)
                .sum();
    }

    @ParameterizedTest(name = "{0} nodes")
    @ValueSource(ints = {1, 5, 12})
    void aSearchThatIsCutShortClaimsNoMoreThanItKnows(int nodes) {
        seeds().forEach(seed -> {
            SmallProblem problem = SmallProblem.random(seed);
            ExhaustiveSearch search = new ExhaustiveSearch(problem);
            Planned planned =
                    CuttingPlanner.plan(problem.toProblem(), StockAim.COST, new Effort(nodes, 60_000_000_000L));
            List<Integer> missing = planned.plan().missing();
            double best = search.leastOfBoards(missing, Board::cost);
            double fewest = search.fewestMissing();
            CountedPlan.assertCanBeCut(problem, planned.plan());
            assertTrue(planned.bound() <= best + 1e-9 * best, () -> "problem " + seed + ": a bound above " + best);
            assertTrue(planned.value() >= best - 1e-9 * best, () -> "problem " + seed + ": better than " + best);
            assertTrue(
                    !planned.fewestMissing() || Math.abs(missingWidth(problem, missing) - fewest) < 1e-9,
                    () -> "problem " + seed + ": less can be missing than " + missing);
        });
    }

    @Test
    void theProblemsAreOfEveryKind() {
        Map<String, Integer> seen = new TreeMap<>();
        LongStream.range(0, PROBLEMS).forEach(seed -> {
            CuttingProblem problem = SmallProblem.random(seed).toProblem();
            CuttingPlan plan =
                    CuttingPlanner.plan(problem, StockAim.COST, ENOUGH).plan();
            List<Lane> lanes = plan.sections().stream()
                    .flatMap(ripped -> ripped.pattern().lanes().stream())
                    .toList();
            Set<String> kinds = new TreeSet<>();
            for (Lane lane : lanes) {
                kinds.add(lane.rotated() ? "rotated" : lane.items().size() > 1 ? "resawn" : "flat");
            }
            kinds.add(plan.missing().stream().anyMatch(count -> count > 0) ? "some missing" : "all there");
            kinds.add(plan.seams(problem) > 0 ? "seams" : "no seam");
            kinds.forEach(kind -> seen.merge(kind, 1, Integer::sum));
        });
        assertEquals(
                Set.of("rotated", "resawn", "flat", "some missing", "all there", "seams", "no seam"), seen.keySet());
        seen.forEach((kind, count) -> assertTrue(count > PROBLEMS / 10, seen::toString));
    }
}
