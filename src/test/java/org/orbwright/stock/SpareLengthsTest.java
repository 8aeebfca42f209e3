package org.orbwright.stock;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.orbwright.quantity.LengthUnit;
import org.orbwright.stock.BoardRequest.PriceBy;

/** What boards have to spare beyond whole strips of 600 mm, by hand; a crosscut takes 3 mm. */
class SpareLengthsTest {
    private static final double WHOLE = 600;

    private static List<Double> spare(double overlap, List<BoardRequest> boards, List<OfferRequest> offers) {
        return Rack.spareLengths(
                Boards.rack(LengthUnit.MM, boards, offers), WHOLE, 3, new SeamRules(overlap, 200, 20, 1));
    }

    private static BoardRequest board(double length, int count) {
        return new BoardRequest(null, "sugar maple", length, 100.0, 20.0, count, null, null, null, null, null, null);
    }

    private static List<Double> ofBoards(double overlap, double... lengths) {
        List<BoardRequest> boards = new ArrayList<>();
        for (double length : lengths) {
            boards.add(board(length, 1));
        }
        return spare(overlap, boards, null);
    }

    /** 1506 mm are two strips, two kerfs and 300 mm; 850 mm are a strip, a kerf and 247 mm. */
    @Test
    void wholeStripsAndTheirKerfsGoFirst() {
        assertEquals(List.of(300.0, 247.0), ofBoards(0, 850, 1506));
    }

    @Test
    void aBoardOfExactlyAWholeStripHasNothingToSpare() {
        assertEquals(List.of(), ofBoards(0, 600, 1203));
    }

    /** A piece is from 200 mm to what the other piece of the strip leaves: 400 mm, and as much more as they overlap. */
    @Test
    void onlyWhatIsOfUseAsAPieceIsCounted() {
        assertEquals(List.of(400.0, 200.0), ofBoards(0, 200, 199.9, 400, 400.1));
        assertEquals(List.of(440.0, 200.0), ofBoards(40, 200, 199.9, 440, 440.1));
    }

    /** Three boards with 250 mm have more wood to spare than one with 390 mm; of what can be bought, one counts. */
    @Test
    void mostWoodComesFirst() {
        assertEquals(List.of(250.0, 390.0), spare(0, List.of(board(390, 1), board(250, 3)), null));
        assertEquals(
                List.of(390.0, 250.0),
                spare(0, List.of(board(390, 1)), List.of(Boards.offered(250, 100, 20, 5, PriceBy.BOARD))));
    }

    /** 250 mm of a board twice as wide, or twice as thick, is more than 390 mm. */
    @Test
    void wideAndThickBoardsHaveMoreWood() {
        BoardRequest wide =
                new BoardRequest(null, "sugar maple", 250.0, 200.0, 20.0, 1, null, null, null, null, null, null);
        BoardRequest thick =
                new BoardRequest(null, "sugar maple", 260.0, 100.0, 40.0, 1, null, null, null, null, null, null);
        assertEquals(List.of(260.0, 250.0, 390.0), spare(0, List.of(board(390, 1), wide, thick), null));
    }
}
