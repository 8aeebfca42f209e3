package org.orbwright.stock;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.orbwright.stock.CuttingPlan.CutBoards;
import org.orbwright.stock.CuttingPlan.RippedSections;
import org.orbwright.stock.SmallProblem.Board;
import org.orbwright.stock.SmallProblem.Strip;

/** Counts a plan of a small problem from the boards to the strips, in whole hundredths of a millimetre. */
final class CountedPlan {
    private final SmallProblem problem;
    private final CuttingPlan plan;

    private CountedPlan(SmallProblem problem, CuttingPlan plan) {
        this.problem = problem;
        this.plan = plan;
    }

    /** Fails unless the plan can be cut and gives every strip that it does not call missing. */
    static void assertCanBeCut(SmallProblem problem, CuttingPlan plan) {
        CountedPlan counted = new CountedPlan(problem, plan);
        counted.boards();
        counted.sections();
        counted.strips();
    }

    private void boards() {
        int[] used = new int[problem.boards().size()];
        for (CutBoards cut : plan.boards()) {
            used[cut.kind()] += cut.count();
            int length = -problem.crosscutKerf();
            for (int i = 0; i < problem.lengths().size(); i++) {
                length += cut.sections().get(i) * (problem.lengths().get(i) + problem.crosscutKerf());
            }
            assertTrue(length <= problem.boards().get(cut.kind()).length(), () -> "too long: " + cut);
        }
        for (int b = 0; b < used.length; b++) {
            assertTrue(used[b] <= problem.boards().get(b).count(), "more boards than there are");
        }
    }

    private void sections() {
        for (RippedSections ripped : plan.sections()) {
            int width = SmallProblem.hundredths(ripped.section().width());
            int thickness = SmallProblem.hundredths(ripped.section().thickness());
            int cut = 0;
            for (CutBoards boards : plan.boards()) {
                Board board = problem.boards().get(boards.kind());
                boolean same = board.width() == width && board.thickness() == thickness;
                cut += same ? boards.count() * boards.sections().get(ripped.length()) : 0;
            }
            int used = plan.sections().stream()
                    .filter(other -> other.section().equals(ripped.section()) && other.length() == ripped.length())
                    .mapToInt(RippedSections::count)
                    .sum();
            assertTrue(used <= cut, () -> "more sections than were cut: " + ripped);
            assertTrue(ripped.count() > 0);
            lanes(ripped.pattern().lanes(), width, thickness);
        }
    }

    private void lanes(List<Lane> lanes, int width, int thickness) {
        int across = -problem.ripKerf();
        for (Lane lane : lanes) {
            int laneWidth = SmallProblem.hundredths(lane.width());
            across += laneWidth + problem.ripKerf();
            int deep = -problem.ripKerf();
            for (int item : lane.items()) {
                assertEquals(lane.rotated() ? problem.stick() : problem.widths().get(item), laneWidth);
                deep += (lane.rotated() ? problem.widths().get(item) : problem.stick()) + problem.ripKerf();
            }
            assertTrue(deep <= thickness, () -> "too thick: " + lane);
        }
        assertTrue(across <= width, () -> "too wide: " + lanes);
    }

    private void strips() {
        int[][] left = new int[problem.lengths().size()][problem.widths().size()];
        for (RippedSections ripped : plan.sections()) {
            for (Lane lane : ripped.pattern().lanes()) {
                lane.items().forEach(item -> left[ripped.length()][item] += ripped.count());
            }
        }
        for (int s = 0; s < problem.strips().size(); s++) {
            Strip strip = problem.strips().get(s);
            int made = 0;
            for (int m = 0; m < strip.makeUps().size(); m++) {
                int count = plan.madeUp().get(s).get(m);
                assertTrue(count >= 0);
                made += count;
                strip.makeUps().get(m).forEach(length -> left[length][strip.width()] -= count);
            }
            assertTrue(plan.missing().get(s) >= 0);
            assertEquals(strip.count(), made + plan.missing().get(s), "strips made and missing");
        }
        List<Integer> byLength = IntStream.range(0, left.length)
                .boxed()
                .sorted(Comparator.comparing(problem.lengths()::get).reversed())
                .toList();
        for (int width = 0; width < problem.widths().size(); width++) {
            int spare = 0;
            for (int length : byLength) {
                spare += left[length][width];
                assertTrue(spare >= 0, "more pieces than were ripped at least as long");
            }
        }
    }
}
