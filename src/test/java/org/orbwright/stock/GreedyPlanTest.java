package org.orbwright.stock;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.stream.LongStream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.orbwright.stock.CuttingPlan.CutBoards;
import org.orbwright.stock.CuttingProblem.BoardKind;
import org.orbwright.stock.CuttingProblem.MakeUp;
import org.orbwright.stock.CuttingProblem.StripKind;

class GreedyPlanTest {
    @Test
    void everyFirstPlanCanBeCutAndHasNoSeam() {
        LongStream.range(3000, 3500).mapToObj(SmallProblem::random).forEach(problem -> {
            CuttingPlan plan = GreedyPlan.of(new CuttingColumns(problem.toProblem()));
            CountedPlan.assertCanBeCut(problem, plan);
            assertEquals(0, plan.seams(problem.toProblem()));
        });
    }

    @Test
    @DisplayName("hand calculation: 80 mm of strips for 4 are 20 for each unit of money, 40 mm for 2.5 only 16")
    void theBoardThatGivesMostForItsPriceComesFirst() {
        CuttingProblem problem = new CuttingProblem(
                new Ripping(List.of(40.0), List.of(3), 20, 3),
                List.of(500.0),
                3,
                List.of(new BoardKind(500, 40, 20, 3, 2.5, 400_000), new BoardKind(500, 83, 20, 3, 4, 830_000)),
                List.of(new StripKind(0, 3, List.of(new MakeUp(List.of(0))))));
        CuttingPlan plan = GreedyPlan.of(new CuttingColumns(problem));
        // For the third strip the dear board is worth no more than the cheap one, at 10 against 16.
        assertEquals(List.of(new CutBoards(1, 1, List.of(1)), new CutBoards(0, 1, List.of(1))), plan.boards());
        assertEquals(List.of(0), plan.missing());
    }

    @Test
    void stripsThatMayNotBeWholeAreMissingFromIt() {
        CuttingProblem problem = new CuttingProblem(
                new Ripping(List.of(40.0), List.of(4), 20, 3),
                List.of(500.0, 250.0),
                3,
                List.of(new BoardKind(1003, 83, 20, 1, 4, 1_665_000)),
                List.of(
                        new StripKind(0, 2, List.of(new MakeUp(List.of(1, 1)))),
                        new StripKind(0, 2, List.of(new MakeUp(List.of(0))))));
        assertEquals(List.of(2, 0), GreedyPlan.of(new CuttingColumns(problem)).missing());
    }

    private static CuttingPlan plan(
            List<Double> widths, List<Integer> needed, List<BoardKind> boards, StripKind... strips) {
        return GreedyPlan.of(new CuttingColumns(
                new CuttingProblem(new Ripping(widths, needed, 20, 0), List.of(600.0), 0, boards, List.of(strips))));
    }

    private static StripKind whole(int width, int count) {
        return new StripKind(width, count, List.of(new MakeUp(List.of(0))));
    }

    @Test
    @DisplayName("hand calculation: each of a board's two sections, 40 mm wide, gives one of the two strips")
    void whatOneSectionGivesIsNotCutFromTheNext() {
        CuttingPlan plan = plan(
                List.of(40.0, 30.0),
                List.of(1, 1),
                List.of(new BoardKind(1200, 40, 20, 3, 1, 960_000)),
                whole(0, 1),
                whole(1, 1));
        assertEquals(List.of(new CutBoards(0, 1, List.of(2))), plan.boards());
        assertEquals(
                List.of(List.of(1, 0), List.of(0, 1)),
                plan.sections().stream()
                        .map(section -> section.pattern().counts())
                        .toList());
        assertEquals(List.of(0, 0), plan.missing());
    }

    @Test
    @DisplayName("hand calculation: 60 mm are one strip of 55 mm or two of 25 mm, which are only 50 mm")
    void aSectionIsRippedToMostWood() {
        CuttingPlan plan = plan(
                List.of(55.0, 25.0),
                List.of(1, 2),
                List.of(new BoardKind(600, 60, 20, 1, 1, 720_000)),
                whole(0, 1),
                whole(1, 2));
        assertEquals(List.of(0, 2), plan.missing());
    }

    @Test
    void ofBoardsThatCostNothingTheSmallerIsCut() {
        CuttingPlan plan = plan(
                List.of(40.0),
                List.of(1),
                List.of(new BoardKind(900, 40, 20, 1, 0, 720_000), new BoardKind(600, 40, 20, 1, 0, 480_000)),
                whole(0, 1));
        assertEquals(List.of(new CutBoards(1, 1, List.of(1))), plan.boards());
    }

    @Test
    void whatIsMissingOfAWidthIsMissingFromItsLastStrips() {
        BoardKind two = new BoardKind(600, 80, 20, 1, 1, 960_000);
        assertEquals(
                List.of(1, 2),
                plan(List.of(40.0), List.of(5), List.of(two), whole(0, 3), whole(0, 2))
                        .missing());
    }
}
