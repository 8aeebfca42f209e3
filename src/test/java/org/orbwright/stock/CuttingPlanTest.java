package org.orbwright.stock;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.orbwright.stock.CuttingColumns.CrossSection;
import org.orbwright.stock.CuttingPlan.CutBoards;
import org.orbwright.stock.CuttingPlan.RippedSections;
import org.orbwright.stock.CuttingProblem.BoardKind;
import org.orbwright.stock.CuttingProblem.MakeUp;
import org.orbwright.stock.CuttingProblem.StripKind;

/**
 * A plan that uses everything up: two boards, each crosscut to a whole length and two short ones; the two whole
 * sections give two strips each, the four short ones eight pieces, of which four strips are made; a ninth strip is
 * missing.
 */
class CuttingPlanTest {
    private static final CrossSection SIZE = new CrossSection(43, 20);
    private static final RipPattern PAIR =
            new RipPattern(List.of(new Lane(false, 20, List.of(0)), new Lane(false, 20, List.of(0))), List.of(2));
    private static final CuttingProblem PROBLEM = new CuttingProblem(
            new Ripping(List.of(20.0), List.of(16), 20, 3),
            List.of(600.0, 300.0),
            3,
            List.of(
                    new BoardKind(1206, 43, 20, 2, 7, 1206 * 43 * 20),
                    new BoardKind(1206, 60, 20, 1, 10, 1206 * 60 * 20)),
            List.of(
                    new StripKind(0, 5, List.of(new MakeUp(List.of(0)), new MakeUp(List.of(1, 1)))),
                    new StripKind(0, 4, List.of(new MakeUp(List.of(0)), new MakeUp(List.of(1, 1))))));

    private static final List<CutBoards> BOARDS = List.of(new CutBoards(0, 2, List.of(1, 2)));
    private static final List<RippedSections> SECTIONS =
            List.of(new RippedSections(SIZE, 0, 2, PAIR), new RippedSections(SIZE, 1, 4, PAIR));
    private static final List<List<Integer>> MADE = List.of(List.of(4, 1), List.of(0, 3));
    private static final List<Integer> MISSING = List.of(0, 1);

    private static boolean sound(
            List<CutBoards> boards, List<RippedSections> sections, List<List<Integer>> made, List<Integer> missing) {
        return new CuttingPlan(boards, sections, made, missing).isSound(PROBLEM);
    }

    @Test
    void aPlanThatUsesEverythingUpIsSound() {
        assertTrue(sound(BOARDS, SECTIONS, MADE, MISSING));
    }

    @Test
    void oneBoardTooManyIsRefused() {
        assertFalse(sound(List.of(new CutBoards(0, 3, List.of(1, 2))), SECTIONS, MADE, MISSING));
        // Counted over all ways to crosscut a kind of board.
        assertFalse(sound(List.of(BOARDS.get(0), new CutBoards(0, 1, List.of(0, 3))), SECTIONS, MADE, MISSING));
    }

    @Test
    void oneSectionTooManyIsRefused() {
        for (int length = 0; length < 2; length++) {
            RippedSections more = new RippedSections(SIZE, length, 1, PAIR);
            assertFalse(sound(BOARDS, List.of(SECTIONS.get(0), SECTIONS.get(1), more), MADE, MISSING));
        }
    }

    @Test
    void aSectionOfABoardThatIsNotCutIsRefused() {
        List<RippedSections> others =
                List.of(SECTIONS.get(0), new RippedSections(new CrossSection(60, 20), 1, 4, PAIR));
        assertFalse(sound(BOARDS, others, MADE, MISSING));
    }

    @Test
    void onePieceTooManyIsRefused() {
        assertFalse(sound(BOARDS, SECTIONS, List.of(List.of(5, 0), List.of(0, 3)), MISSING), "a whole one");
        assertFalse(sound(BOARDS, SECTIONS, List.of(List.of(3, 2), List.of(0, 3)), MISSING), "a short one");
        assertFalse(
                sound(BOARDS, List.of(SECTIONS.get(0), new RippedSections(SIZE, 1, 3, PAIR)), MADE, MISSING),
                "a section less");
    }

    @Test
    void aStripTooFewIsRefused() {
        assertFalse(sound(BOARDS, SECTIONS, List.of(List.of(4, 1), List.of(0, 2)), MISSING), "not accounted for");
    }

    @Test
    void aStripTooManyIsRefused() {
        assertFalse(sound(BOARDS, SECTIONS, MADE, List.of(0, 0)));
        assertFalse(sound(BOARDS, SECTIONS, MADE, List.of(-1, 1)));
    }

    @Test
    void boardsSeamsAndMissingStripsAreAddedUp() {
        CuttingPlan plan = new CuttingPlan(BOARDS, SECTIONS, MADE, MISSING);
        assertEquals(4, plan.count(PROBLEM, CuttingAim.SEAMS));
        assertEquals(2 * 7, CuttingAim.COST.answered(PROBLEM, plan), 1e-9);
        assertEquals(1, plan.count(PROBLEM, CuttingAim.MISSING));
        assertEquals(2 * 1206 * 43 * 20, plan.count(PROBLEM, CuttingAim.WASTE));
    }

    @Test
    void aLongerPieceServesAsAShorterOneButNotTheOtherWayRound() {
        // Three whole strips and a strip of a short piece and the fourth whole one.
        assertTrue(sound(
                BOARDS,
                List.of(SECTIONS.get(0), new RippedSections(SIZE, 1, 4, PAIR)),
                List.of(List.of(3, 1), List.of(0, 3)),
                List.of(1, 1)));
        assertTrue(sound(
                List.of(new CutBoards(0, 2, List.of(2, 0))),
                List.of(new RippedSections(SIZE, 0, 4, PAIR)),
                List.of(List.of(4, 1), List.of(0, 1)),
                List.of(0, 3)));
        assertFalse(sound(
                List.of(new CutBoards(0, 2, List.of(0, 4))),
                List.of(new RippedSections(SIZE, 1, 8, PAIR)),
                List.of(List.of(1, 0), List.of(0, 0)),
                List.of(4, 4)));
    }
}
