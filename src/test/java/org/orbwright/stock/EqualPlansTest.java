package org.orbwright.stock;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.orbwright.stock.CuttingPlan.CutBoards;
import org.orbwright.stock.CuttingProblem.BoardKind;
import org.orbwright.stock.CuttingProblem.MakeUp;
import org.orbwright.stock.CuttingProblem.StripKind;

/**
 * Of plans that are equal in what is asked for the other aims decide. Strips are 40 mm wide and 500 mm long, crosscuts
 * without a kerf; four are needed.
 *
 * <p>A first plan takes the board that gives most for its price, the one for three strips, and a short one. Two boards
 * for two strips each hold as many.
 */
class EqualPlansTest {
    private static final int STRIPS = 4;

    private static Solved plan(StockAim aim, BoardKind... boards) {
        return Solved.best(
                new CuttingProblem(
                        new Ripping(List.of(40.0), List.of(STRIPS), 20, 3),
                        List.of(500.0),
                        0,
                        List.of(boards),
                        List.of(new StripKind(0, STRIPS, List.of(new MakeUp(List.of(0)))))),
                aim);
    }

    private static BoardKind board(double length, int count, double cost) {
        return new BoardKind(length, 40, 20, count, cost, length * 40 * 20);
    }

    private static void assertTwoOfTheSecond(Solved planned) {
        assertEquals(List.of(new CutBoards(1, 2, List.of(2))), planned.plan().boards());
        assertTrue(planned.proved());
    }

    @Test
    @DisplayName("hand calculation: 1500 + 500 mm and twice 1000 mm are the same wood, for 20.9 and for 20")
    void ofPlansWithAsMuchWoodTheCheaperIsTaken() {
        Solved planned = plan(StockAim.WASTE, board(1500, 1, 14), board(1000, 2, 10), board(500, 1, 6.9));
        assertTwoOfTheSecond(planned);
        assertEquals(1.6, planned.value(), 1e-9);
    }

    /** One board of 2000 mm has still less wood, but is dear. */
    @Test
    @DisplayName("hand calculation: 14 + 6 and twice 10 are the same price, for 2250 mm and for 2100 mm")
    void ofPlansForOnePriceTheOneWithLessWoodIsTaken() {
        BoardKind[] boards = {board(1550, 1, 14), board(1050, 2, 10), board(700, 1, 6), board(2000, 1, 30)};
        Solved planned = plan(StockAim.COST, boards);
        assertTwoOfTheSecond(planned);
        assertEquals(20, planned.value(), 1e-9);
        assertTwoOfTheSecond(plan(StockAim.SEAMS, boards));
    }

    @Test
    void theAimThatWasAskedForComesFirst() {
        BoardKind dear = board(2000, 1, 30);
        BoardKind cheap = board(2400, 1, 12);
        assertEquals(1, plan(StockAim.COST, dear, cheap).plan().boards().get(0).kind());
        assertEquals(0, plan(StockAim.WASTE, dear, cheap).plan().boards().get(0).kind());
    }
}
