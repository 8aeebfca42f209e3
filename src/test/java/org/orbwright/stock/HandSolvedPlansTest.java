package org.orbwright.stock;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.orbwright.stock.CuttingPlan.CutBoards;
import org.orbwright.stock.CuttingProblem.BoardKind;
import org.orbwright.stock.CuttingProblem.MakeUp;
import org.orbwright.stock.CuttingProblem.StripKind;

/**
 * Plans that can be found by hand. Strips are 40 and 25 mm wide and as thick as the boards, 20 mm; every kerf is 3 mm,
 * and a whole strip is 500 mm long.
 */
class HandSolvedPlansTest {
    private static final MakeUp WHOLE = new MakeUp(List.of(0));
    private static final MakeUp TWO_PIECES = new MakeUp(List.of(1, 1));

    /*
     * Three strips of each width are needed. Boards:
     *   wide:   1003 x 108 mm, one of them, 10 a board. Two sections. Each gives two strips of 40 mm (40 + 3 + 40, and
     *           the 22 mm beyond the next kerf are too narrow), or one of 40 and two of 25 (40 + 3 + 25 + 3 + 25 = 96),
     *           or three of 25.
     *   medium: 500 x 68 mm, two of them, 4 a board. One section: one strip of each width, exactly, or two of 25.
     *   narrow: 500 x 40 mm, two of them, 2.5 a board. One section: one strip of either width.
     * Without the wide board all the others are needed, for they give 2 + 2 + 1 + 1 = 6 strips at most: 13 and
     * 4 x 20 mm x (68, 68, 40, 40) mm x 500 mm = 2.16 litres. The wide board alone gives at most five of the strips
     * that are needed (2 and 1 wide ones leave room for 2 narrow ones, 1 and 1 wide ones for 4). So it takes one more
     * board, and the cheapest one does: 12.5 and 2.16648 + 0.4 = 2.56648 litres, whatever that board is at least.
     */
    private static final BoardKind WIDE = board(1003, 108, 1, 10);
    private static final BoardKind MEDIUM = board(500, 68, 2, 4);
    private static final BoardKind NARROW = board(500, 40, 2, 2.5);
    private static final CuttingProblem WHOLE_STRIPS = new CuttingProblem(
            new Ripping(List.of(40.0, 25.0), List.of(3, 3), 20, 3),
            List.of(500.0),
            3,
            List.of(WIDE, MEDIUM, NARROW),
            List.of(new StripKind(0, 3, List.of(WHOLE)), new StripKind(1, 3, List.of(WHOLE))));

    /*
     * Two strips of each width are needed, whole or of two pieces of 250 mm. Boards:
     *   long:  500 x 68 mm, one of them, 9 a board: a whole strip of each width, 40 + 3 + 25. The 250 mm less a kerf
     * that
     *          are left beside one piece are too short for another.
     *   short: 250 x 68 mm, four of them, 3 a board: a piece of each width, so that two of them give what the long one
     *          does, but with a seam in each strip.
     * The cheapest plan has the four short boards: 12, with four seams. With the long one only two strips have a seam,
     * and two short boards are needed beside it: 15. Fewer seams cannot be: only the long board gives whole strips.
     */
    static final CuttingProblem WHOLE_OR_SEAMED = new CuttingProblem(
            new Ripping(List.of(40.0, 25.0), List.of(4, 4), 20, 3),
            List.of(500.0, 250.0),
            3,
            List.of(board(500, 68, 1, 9), board(250, 68, 4, 3)),
            List.of(new StripKind(0, 2, List.of(WHOLE, TWO_PIECES)), new StripKind(1, 2, List.of(WHOLE, TWO_PIECES))));

    private static BoardKind board(double length, double width, int count, double cost) {
        return new BoardKind(length, width, 20, count, cost, length * width * 20);
    }

    /** How many boards of each kind are cut. */
    private static List<Integer> cut(CuttingProblem problem, Solved planned) {
        return IntStream.range(0, problem.boards().size())
                .mapToObj(kind -> planned.plan().boards().stream()
                        .filter(boards -> boards.kind() == kind)
                        .mapToInt(CutBoards::count)
                        .sum())
                .toList();
    }

    private static void assertProved(double value, Solved planned) {
        assertAll(
                () -> assertEquals(value, planned.value(), 1e-9),
                () -> assertEquals(value, planned.bound(), 1e-8),
                () -> assertTrue(planned.proved()),
                () -> assertTrue(planned.fewestMissing()),
                () -> assertTrue(planned.plan().missing().stream().allMatch(count -> count == 0)));
    }

    @Test
    @DisplayName("hand calculation: the wide board and a narrow one cost 12.5, all of the others 13")
    void theCheapestBoards() {
        Solved planned = Solved.best(WHOLE_STRIPS, StockAim.COST);
        assertProved(12.5, planned);
        assertEquals(List.of(1, 0, 1), cut(WHOLE_STRIPS, planned));
    }

    @Test
    @DisplayName("hand calculation: all of the others hold 2.16 litres, the wide board and a narrow one 2.56648")
    void theLeastWood() {
        Solved planned = Solved.best(WHOLE_STRIPS, StockAim.WASTE);
        assertProved(2.16, planned);
        assertEquals(List.of(0, 2, 2), cut(WHOLE_STRIPS, planned));
    }

    @Test
    @DisplayName("hand calculation: only the long board gives whole strips, so that two of four have a seam")
    void theFewestSeams() {
        Solved planned = Solved.best(WHOLE_OR_SEAMED, StockAim.SEAMS);
        assertProved(2, planned);
        assertEquals(2, planned.plan().count(WHOLE_OR_SEAMED, CuttingAim.SEAMS));
        // Of the plans with two seams the cheapest one, without a third short board.
        assertEquals(List.of(1, 2), cut(WHOLE_OR_SEAMED, planned));
    }

    @Test
    @DisplayName("hand calculation: four short boards cost 12 and give four seams, the long one and two short ones 15")
    void theCheapestBoardsHaveSeams() {
        Solved planned = Solved.best(WHOLE_OR_SEAMED, StockAim.COST);
        assertProved(12, planned);
        assertEquals(List.of(0, 4), cut(WHOLE_OR_SEAMED, planned));
        assertEquals(List.of(List.of(0, 2), List.of(0, 2)), planned.plan().madeUp());
    }

    @Test
    @DisplayName("hand calculation: the wide board alone gives (2, 0) + (1, 2), or (1, 2) twice: five strips of six")
    void theFewestMissingStripsComeFirst() {
        CuttingProblem scarce = new CuttingProblem(
                WHOLE_STRIPS.ripping(), WHOLE_STRIPS.lengths(), 3, List.of(WIDE), WHOLE_STRIPS.strips());
        Solved planned = Solved.best(scarce, StockAim.COST);
        assertEquals(1, planned.missing().stream().mapToInt(Integer::intValue).sum());
        assertEquals(10, planned.value(), 1e-9);
        assertTrue(planned.fewestMissing());
    }
}
