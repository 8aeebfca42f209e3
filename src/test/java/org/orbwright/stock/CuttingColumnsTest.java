package org.orbwright.stock;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.orbwright.stock.CuttingColumns.CrossSection;
import org.orbwright.stock.CuttingProblem.BoardKind;

/** Which ways to cut are listed, by hand. No strip fits into the thickness, so that each lane is one strip. */
class CuttingColumnsTest {
    private static CuttingProblem problem(List<Double> lengths, BoardKind... boards) {
        return new CuttingProblem(
                new Ripping(List.of(45.0, 70.0), List.of(9, 9), 15, 0), lengths, 3, List.of(boards), List.of());
    }

    private static BoardKind board(double length, double width, int count) {
        return new BoardKind(length, width, 15, count, 0, length * width * 15);
    }

    @Test
    @DisplayName(
            "hand calculation: 1000 mm are 600 and 350 mm, or two of 350 mm; 143.5 mm are 3 of 45, 1 and 1, or 2 of 70")
    void fewWaysAreAllListed() {
        CuttingColumns columns = new CuttingColumns(problem(List.of(600.0, 350.0), board(1000, 143.5, 9)));
        assertTrue(columns.areComplete());
        assertEquals(List.of(List.of(1, 1), List.of(0, 2)), columns.plans(0));
        assertEquals(
                List.of(List.of(0, 2), List.of(3, 0), List.of(1, 1)),
                columns.patterns(new CrossSection(143.5, 15)).stream()
                        .map(RipPattern::counts)
                        .toList());
    }

    @Test
    void boardsOfOneCrossSectionHaveTheSamePatterns() {
        CuttingColumns columns = new CuttingColumns(
                problem(List.of(600.0), board(1000, 100, 1), board(2000, 90, 1), board(700, 100, 1)));
        assertEquals(List.of(new CrossSection(100, 15), new CrossSection(90, 15)), List.copyOf(columns.sections()));
    }

    @Test
    void sectionsOfBoardsWithVeryManyWaysAreCountedOneByOneIfThereAreFew() {
        List<Double> lengths = List.of(600.0, 353.0, 211.0, 127.0);
        CuttingColumns few = new CuttingColumns(problem(lengths, board(6000, 100, 6)));
        assertTrue(few.isOneByOne(0));
        assertTrue(few.areComplete());
        CuttingColumns many = new CuttingColumns(problem(lengths, board(6000, 100, 7)));
        assertFalse(many.isOneByOne(0));
        assertFalse(many.areComplete());
        assertTrue(many.plans(0).size() <= 100);
        // Of each number of whole strips there are some.
        for (int wholes = 0; wholes <= 9; wholes++) {
            int number = wholes;
            assertTrue(many.plans(0).stream().anyMatch(plan -> plan.get(0) == number), "with " + wholes);
        }
    }

    @Test
    void moreCrossSectionsHaveFewerPatternsEach() {
        List<Double> widths = List.of(11.0, 13.0, 17.0, 19.0, 23.0);
        Ripping ripping = new Ripping(widths, Collections.nCopies(5, 99), 15, 0);
        BoardKind[] boards = new BoardKind[12];
        for (int i = 0; i < boards.length; i++) {
            boards[i] = board(1000, 150 + i, 1);
        }
        List<Double> lengths = List.of(600.0, 353.0, 211.0, 127.0, 260.0, 301.0, 149.0, 188.0);
        CuttingColumns one = new CuttingColumns(new CuttingProblem(ripping, lengths, 3, List.of(boards[0]), List.of()));
        CuttingColumns all = new CuttingColumns(new CuttingProblem(ripping, lengths, 3, List.of(boards), List.of()));
        assertTrue(one.patterns(new CrossSection(150, 15)).size() > 41);
        assertEquals(41, all.patterns(new CrossSection(150, 15)).size(), "4,000 / (12 x 8)");
        assertFalse(all.haveAllPatterns());
    }
}
