package org.orbwright.stock;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.orbwright.stock.CuttingProblem.BoardKind;

/** What sections and boards are worth, by hand, where all ways are listed and where there are too many. */
class CuttingColumnsTest {
    private static final List<Double> WIDTHS = List.of(45.0, 70.0, 33.0, 20.0);
    /** Each millimetre of a strip is worth the same, but for those of 70 mm. */
    private static final double[] WORTH = {45, 0.1, 33, 20};

    private static final List<Double> LENGTHS = List.of(600.0, 350.0);

    /** No kerf, and no strip fits into the thickness, so that each lane is one strip. */
    private static CuttingProblem problem(
            List<Integer> needed, List<Double> lengths, double kerf, List<BoardKind> boards) {
        return new CuttingProblem(new Ripping(WIDTHS, needed, 15, 0), lengths, kerf, boards, List.of());
    }

    private static BoardKind board(double length, double width) {
        return new BoardKind(length, width, 15, 1, 0, length * width * 15);
    }

    /** 143.5 mm take 2 of 45, 33 and 20 mm; no other set without one of 70 mm has more than 140 mm of wood. */
    private static CuttingProblem oneBoard(int of45) {
        return problem(List.of(of45, 9, 9, 9), LENGTHS, 3, List.of(board(1000, 143.5)));
    }

    @Test
    void aPriceBelongsToEachWidthInEachLengthOfEachCrossSection() {
        CuttingColumns columns = new CuttingColumns(problem(
                List.of(9, 9, 9, 9),
                List.of(600.0, 350.0, 280.0),
                3,
                List.of(board(1000, 100), board(2000, 143.5), board(1500, 100))));
        assertEquals(2 * 3 * 4, columns.prices());
        assertEquals(
                List.of(0, 1, 0),
                IntStream.range(0, 3).map(columns::sectionOf).boxed().toList());
        assertEquals(143.5, columns.sections().get(1).width());
    }

    @Test
    void aCompleteListSaysWhatASectionIsWorth() {
        CuttingColumns columns = new CuttingColumns(oneBoard(9));
        assertTrue(columns.areComplete());
        assertEquals(143, columns.worthOfSection(0, WORTH, false));
        assertEquals(143, columns.worthOfSection(0, WORTH, true));
        assertEquals(List.of(2, 0, 1, 1), columns.worthMost(0, WORTH).counts());
    }

    /**
     * With no more than one strip of 45 mm, seven of 20 mm are the most; a bound would not know how many are needed.
     */
    @Test
    void nothingIsBoundedWhereAllIsListed() {
        assertEquals(140, new CuttingColumns(oneBoard(1)).worthOfSection(0, WORTH, true));
    }

    @Test
    void aFewPatternsAreListedWhereThereIsNoTime() {
        CuttingColumns columns = new CuttingColumns(oneBoard(9), 0);
        assertFalse(columns.areComplete());
        assertEquals(140, columns.worthOfSection(0, WORTH, false));
        double bound = columns.worthOfSection(0, WORTH, true);
        assertTrue(143 <= bound && bound < 144, "" + bound);
    }

    @Test
    void theBestPatternIsAddedToAListThatLacksIt() {
        CuttingColumns columns = new CuttingColumns(oneBoard(9), 0);
        int listed = columns.patterns(0).size();
        for (int time = 0; time < 2; time++) {
            assertEquals(List.of(2, 0, 1, 1), columns.worthMost(0, WORTH).counts());
            assertEquals(listed + 1, columns.patterns(0).size());
        }
        assertEquals(143, columns.worthOfSection(0, WORTH, false));
    }

    /** 1000 mm are 600 and 350 mm, worth 5 and 3, or two of 350 mm. */
    @Test
    void aCompleteListSaysWhatABoardIsWorth() {
        CuttingColumns columns = new CuttingColumns(oneBoard(9));
        assertEquals(8, columns.worthOfBoard(0, new double[] {5, 3}, false));
        assertEquals(8, columns.worthOfBoard(0, new double[] {5, 3}, true));
        assertEquals(10, columns.worthOfBoard(0, new double[] {1, 5}, true));
    }

    /** 46 sections of 127 mm and their kerfs of 3 mm take 5980 of 6003 mm. */
    @Test
    void boardsOfVeryManyKindsHaveFewPlansAndABound() {
        List<Double> lengths = List.of(600.0, 353.0, 211.0, 127.0);
        List<BoardKind> boards = Collections.nCopies(700, board(6000, 143.5));
        CuttingColumns columns = new CuttingColumns(problem(List.of(9, 9, 9, 9), lengths, 3, boards));
        assertFalse(columns.areComplete());
        assertTrue(columns.plans(0).size() <= 60);
        double[] ofShortOnes = {0, 0, 0, 1};
        assertTrue(columns.worthOfBoard(0, ofShortOnes, false) < 46);
        assertEquals(46, columns.worthOfBoard(0, ofShortOnes, true));
        // Sections of 600 and 127 mm: 8 of the long ones leave 6003 - 8 x 603 = 1179 mm, which are 9 x 130 and a rest.
        double mixed = columns.worthOfBoard(0, new double[] {4.65, 0, 0, 1}, true);
        assertTrue(8 * 4.65 + 9 <= mixed && mixed < 8 * 4.65 + 9 + 1, "" + mixed);
    }
}
