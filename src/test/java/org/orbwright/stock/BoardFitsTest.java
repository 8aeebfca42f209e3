package org.orbwright.stock;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;

import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.orbwright.fixture.Trials;
import org.orbwright.quantity.LengthUnit;
import org.orbwright.stock.BoardRequest.PriceBy;
import org.orbwright.stock.CuttingProblem.BoardKind;
import org.orbwright.stock.CuttingProblem.MakeUp;
import org.orbwright.stock.CuttingProblem.StripKind;
import org.orbwright.stock.Rack.Stock;
import org.orbwright.stock.Shortage.BoardFit;
import org.orbwright.stock.Shortage.BoardLack;

/** Pieces of at least 400 mm for strips 27 mm thick, which are ripped 1 mm wider than their band. */
class BoardFitsTest {
    private static final double EXACT = 1e-9;
    private static final double SHORTEST = 400;
    private static final double STICK = 27;
    private static final double PLANING = 1;
    private static final BoardFits FITS = new BoardFits(SHORTEST, STICK, PLANING);

    private static Stock board(double length, double width, double thickness) {
        return Boards.rack(
                        LengthUnit.MM, List.of(Boards.priced(length, width, thickness, 1.0, PriceBy.BOARD)), List.of())
                .get(0);
    }

    @ParameterizedTest(name = "{0} x {1} x {2} for strips {3} wide: {4} by {5}, bands up to {6}")
    @DisplayName("hand calculation: flat it has to be 27 mm thick, on edge 27 mm wide")
    @CsvSource({
        // Thick and wide enough flat; on edge it would be as well.
        "1000, 100, 30, 21, NOTHING, 0, 99",
        // Both ways without a hair to spare.
        "400, 21, 27, 21, NOTHING, 0, 20",
        "400, 27, 21, 21, NOTHING, 0, 20",
        "399.5, 100, 30, 21, TOO_SHORT, 0.5, 0",
        // Short, and too thin besides: the length comes first.
        "399.5, 100, 10, 21, TOO_SHORT, 0.5, 0",
        // 1 mm more and it would hold the strip on edge.
        "1000, 100, 20, 21, TOO_THIN, 1, 19",
        // 2 mm more and it would hold the strip flat.
        "1000, 100, 25, 40, TOO_THIN, 2, 24",
        "1000, 26, 20, 21, TOO_THIN, 1, 0",
        // Thick enough flat alone: 40 - 30.
        "1000, 30, 27, 40, TOO_NARROW, 10, 29",
        // Thick enough on edge alone: 27 - 26.
        "1000, 26, 22, 21, TOO_NARROW, 1, 0",
        // Thick enough both ways: 40 - 25 flat, 27 - 25 on edge.
        "1000, 25, 45, 40, TOO_NARROW, 2, 24",
        // A thousandth too thin to lie flat, so that it would have to stand on edge: 27 - 21.
        "1000, 21, 26.999, 21, TOO_NARROW, 6, 0",
        // Less wide than what is planed off.
        "1000, 0.5, 30, 21, TOO_NARROW, 20.5, 0"
    })
    void whatABoardLacks(
            double length, double width, double thickness, double strip, BoardLack fit, double by, double widestBand) {
        BoardFit found = FITS.of(List.of(board(length, width, thickness)), List.of(strip))
                .get(0);
        assertEquals(fit, found.fit());
        assertEquals(by, found.by(), EXACT);
        assertEquals(widestBand, found.widestBand(), EXACT);
        assertEquals(strip, found.stripWidth());
    }

    @Test
    void boardsAndOffersAreNumberedAsTheRequestListsThem() {
        BoardRequest board = Boards.priced(1000, 100, 30, 1.0, PriceBy.BOARD);
        OfferRequest offer = Boards.offered(1000, 100, 30, 1, PriceBy.BOARD);
        List<Stock> rack = Boards.rack(LengthUnit.MM, List.of(board, board), List.of(offer));
        List<BoardFit> fits = FITS.of(rack, List.of(21.0, 40.0));
        assertEquals(
                List.of(1, 1, 2, 2), fits.stream().limit(4).map(BoardFit::board).toList());
        assertNull(fits.get(0).offer());
        assertNull(fits.get(5).board());
        assertEquals(1, fits.get(5).offer());
        assertEquals(
                List.of(21.0, 40.0, 21.0, 40.0, 21.0, 40.0),
                fits.stream().map(BoardFit::stripWidth).toList());
    }

    @Test
    void anAnswerHasAtMostAHundredLines() {
        List<Stock> rack =
                IntStream.range(0, 60).mapToObj(i -> board(1000, 100, 30)).toList();
        assertEquals(100, FITS.of(rack, List.of(21.0, 40.0)).size());
    }

    /** Whether a plan gets a strip of that width out of a board. */
    private static boolean gives(Stock board, double width) {
        BoardKind kind = new BoardKind(
                board.surfacing().length(),
                board.surfacing().width(),
                board.surfacing().thickness(),
                1,
                1,
                board.volume());
        CuttingProblem problem = new CuttingProblem(
                new Ripping(List.of(width), List.of(1), STICK, 3),
                List.of(SHORTEST),
                3,
                List.of(kind),
                List.of(new StripKind(0, 1, List.of(new MakeUp(List.of(0))))));
        return GreedyPlan.of(new CuttingColumns(problem)).missing().get(0) == 0;
    }

    @Test
    void aBoardLacksNothingExactlyWhereAPlanGetsTheStripOutOfIt() {
        Random random = new Random(11);
        for (int i = 0; i < Trials.of(600); i++) {
            Stock board = board(380 + random.nextInt(60), 15 + random.nextInt(40), 15 + random.nextInt(40));
            double strip = 15 + random.nextInt(40);
            BoardFit fit = FITS.of(List.of(board), List.of(strip)).get(0);
            assertEquals(gives(board, strip), fit.fit() == BoardLack.NOTHING, fit::toString);
            assertEquals(fit.fit() == BoardLack.NOTHING, fit.by() == 0, fit::toString);
        }
    }

    @Test
    void theWidestBandCanBeCutAndNoneThatIsWider() {
        Random random = new Random(12);
        for (int i = 0; i < Trials.of(600); i++) {
            Stock board = board(380 + random.nextInt(60), 15 + random.nextInt(40), 15 + random.nextInt(40));
            double widest = FITS.widestBand(board);
            if (widest > 0) {
                assertEquals(true, gives(board, widest + PLANING), board::toString);
            }
            assertEquals(false, gives(board, widest + PLANING + 0.01), board::toString);
        }
    }
}
