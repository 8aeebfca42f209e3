package org.orbwright.stock;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.orbwright.stock.CuttingProblem.BoardKind;
import org.orbwright.stock.CuttingProblem.MakeUp;
import org.orbwright.stock.CuttingProblem.StripKind;

/** Strips are 40 and 25 mm wide and 20 mm thick; whole ones are 500 mm long, pieces 250 mm. */
class CuttingProblemTest {
    private static final MakeUp WHOLE = new MakeUp(List.of(0));
    private static final MakeUp TWO_PIECES = new MakeUp(List.of(1, 1));
    private static final MakeUp THREE_PIECES = new MakeUp(List.of(1, 0, 1));

    private static CuttingProblem problem(StripKind... strips) {
        return new CuttingProblem(
                new Ripping(List.of(40.0, 25.0), List.of(9, 9), 20, 3),
                List.of(500.0, 250.0),
                3,
                List.of(),
                List.of(strips));
    }

    private static boolean isLarge(double length, double width, double thickness) {
        return problem().isLarge(new BoardKind(length, width, thickness, 1, 0, 0), 250);
    }

    /** A board gives something if the narrowest strip lies in it flat or on edge and the shortest piece along it. */
    @Test
    void aBoardOfExactlyAPieceIsLargeEnough() {
        assertTrue(isLarge(250, 25, 20));
        assertTrue(isLarge(250, 20, 25));
        assertTrue(isLarge(250 - 1e-7, 25 - 1e-7, 20 - 1e-7));
    }

    @Test
    void aBoardThatIsTooSmallAnyWayIsNot() {
        assertFalse(isLarge(249.99, 25, 20));
        assertFalse(isLarge(250, 24.99, 20));
        assertFalse(isLarge(250, 24.99, 24.99));
        assertFalse(isLarge(250, 25, 19.99));
        assertFalse(isLarge(250, 19.99, 25));
        assertFalse(isLarge(250, 300, 19.99));
        assertFalse(isLarge(250, 19.99, 300));
    }

    @Test
    void aBoardOnEdgeIsLargeEnough() {
        assertTrue(isLarge(250, 20, 300));
        assertTrue(isLarge(250, 300, 20));
    }

    @Test
    void seamsAreOneLessThanPieces() {
        assertEquals(0, WHOLE.seams());
        assertEquals(2, THREE_PIECES.seams());
        assertEquals(2, THREE_PIECES.count(1));
    }

    @Test
    void aWayIsFoundFromPiecesThatAreAsLongEachForItself() {
        StripKind kind = new StripKind(0, 1, List.of(WHOLE, TWO_PIECES, THREE_PIECES));
        List<Double> lengths = List.of(500.0, 250.0);
        assertEquals(1, kind.wayFrom(List.of(300.0, 250.0), lengths));
        assertEquals(-1, kind.wayFrom(List.of(400.0, 240.0), lengths));
        assertEquals(2, kind.wayFrom(List.of(250.0, 510.0, 260.0), lengths));
        assertEquals(-1, kind.wayFrom(List.of(499.0), lengths));
    }
}
