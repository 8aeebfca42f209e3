package org.orbwright.stock;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.orbwright.fixture.Slow;
import org.orbwright.fixture.Trials;
import org.orbwright.stock.CuttingPlan.CutBoards;
import org.orbwright.stock.CuttingProblem.BoardKind;
import org.orbwright.stock.CuttingProblem.MakeUp;
import org.orbwright.stock.CuttingProblem.StripKind;

/** Plans to begin with. By hand: strips of 500 mm, 40 or 25 mm wide and 20 mm thick, with kerfs of 3 mm. */
@Slow
class GreedyPlanTest {
    private static final MakeUp WHOLE = new MakeUp(List.of(0));
    private static final MakeUp HALVES = new MakeUp(List.of(1, 1));

    static LongStream seeds() {
        return Trials.below(300);
    }

    private static CuttingPlan plan(CuttingProblem problem) {
        return GreedyPlan.of(new CuttingColumns(problem));
    }

    private static BoardKind board(double length, double width, int count, double cost) {
        return new BoardKind(length, width, 20, count, cost, length * width * 20);
    }

    private static CuttingProblem problem(List<BoardKind> boards, StripKind... strips) {
        return new CuttingProblem(
                new Ripping(List.of(40.0, 25.0), List.of(9, 9), 20, 3),
                List.of(500.0, 250.0),
                3,
                boards,
                List.of(strips));
    }

    @ParameterizedTest(name = "problem {0}")
    @MethodSource("seeds")
    void everyPlanCanBeCut(long seed) {
        SmallProblem problem = SmallProblem.random(seed);
        CuttingPlan plan = plan(problem.toProblem());
        assertTrue(plan.isSound(problem.toProblem()));
        CountedPlan.assertCanBeCut(problem, plan);
    }

    @ParameterizedTest(name = "problem {0}")
    @MethodSource("seeds")
    void everyPlanOfALargeRackCanBeCut(long seed) {
        SmallProblem problem = SmallProblem.large(seed);
        CountedPlan.assertCanBeCut(problem, plan(problem.toProblem()));
    }

    @ParameterizedTest(name = "problem {0}")
    @MethodSource("seeds")
    void neverAreMoreStripsMissingThanThereAreNorFewerThanCanBe(long seed) {
        SmallProblem problem = SmallProblem.random(seed);
        long missing = plan(problem.toProblem()).count(problem.toProblem(), CuttingAim.MISSING);
        int all = problem.strips().stream().mapToInt(SmallProblem.Strip::count).sum();
        assertTrue(missing <= all);
        assertTrue(missing >= new ExhaustiveSearch(problem).fewestMissing());
    }

    @Test
    void withoutBoardsEverythingIsMissing() {
        CuttingPlan plan = plan(problem(List.of(), new StripKind(0, 3, List.of(WHOLE))));
        assertEquals(new CuttingPlan(List.of(), List.of(), List.of(List.of(0)), List.of(3)), plan);
    }

    @Test
    @DisplayName("hand calculation: two boards of one strip for 2 each come before one of two strips for 5")
    void theCheapestBoardsComeFirst() {
        CuttingPlan plan =
                plan(problem(List.of(board(500, 83, 1, 5), board(500, 40, 2, 2)), new StripKind(0, 2, List.of(WHOLE))));
        assertEquals(List.of(new CutBoards(1, 1, List.of(1, 0)), new CutBoards(1, 1, List.of(1, 0))), split(plan));
        assertEquals(List.of(0), plan.missing());
    }

    private static List<CutBoards> split(CuttingPlan plan) {
        return plan.boards().stream()
                .flatMap(cut -> Stream.generate(() -> new CutBoards(cut.kind(), 1, cut.sections()))
                        .limit(cut.count()))
                .toList();
    }

    @Test
    void ofBoardsForOnePriceThoseWithLessWoodComeFirst() {
        CuttingPlan plan =
                plan(problem(List.of(board(600, 40, 1, 0), board(500, 40, 1, 0)), new StripKind(0, 1, List.of(WHOLE))));
        assertEquals(List.of(new CutBoards(1, 1, List.of(1, 0))), plan.boards());
    }

    @Test
    @DisplayName("hand calculation: 68 mm are a strip of each width, 40 + 3 + 25; then 25 + 3 + 25 mm are still wanted")
    void aSectionIsRippedForWhatIsStillWanted() {
        CuttingPlan plan = plan(problem(
                List.of(board(1003, 68, 1, 0)),
                new StripKind(0, 1, List.of(WHOLE)),
                new StripKind(1, 3, List.of(WHOLE))));
        assertEquals(List.of(0, 0), plan.missing());
        assertEquals(2, plan.sections().size());
    }

    @Test
    void noBoardIsCutForNothing() {
        CuttingPlan plan = plan(problem(List.of(board(2012, 40, 5, 0)), new StripKind(0, 2, List.of(WHOLE))));
        assertEquals(List.of(new CutBoards(0, 1, List.of(2, 0))), plan.boards());
    }

    @Test
    void aBoardShorterThanAStripIsNotCut() {
        CuttingPlan plan = plan(problem(List.of(board(499, 40, 5, 0)), new StripKind(0, 2, List.of(WHOLE, HALVES))));
        assertEquals(List.of(), plan.boards());
        assertEquals(List.of(2), plan.missing());
    }

    @Test
    void stripsThatAreOnlyMadeOfPiecesAreMissing() {
        CuttingPlan plan = plan(problem(
                List.of(board(2012, 40, 5, 0)),
                new StripKind(0, 2, List.of(HALVES)),
                new StripKind(0, 1, List.of(HALVES, WHOLE))));
        assertEquals(List.of(2, 0), plan.missing());
        assertEquals(List.of(List.of(0), List.of(0, 1)), plan.madeUp());
    }
}
