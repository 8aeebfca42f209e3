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
}
