package org.orbwright.stock;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.orbwright.quantity.LengthUnit;
import org.orbwright.stock.BoardRequest.PriceBy;
import org.orbwright.stock.Rack.Stock;

/** What a board costs; a board foot is 144 cubic inches, so 96 x 6 x 1 inches are 4 of them. */
class RackPricesTest {
    private static Stock one(LengthUnit unit, BoardRequest board) {
        return Boards.rack(unit, List.of(board), null).get(0);
    }

    @ParameterizedTest(name = "{0} x {1} x {2} in are {3} board feet of 144 cubic inches")
    @CsvSource({"96, 6, 1, 4", "12, 12, 1, 1", "72, 6, 1.5, 4.5", "96, 8, 2, 10.666666666666666", "48, 4.5, 0.75, 1.125"
    })
    void boardFeetInInches(double length, double width, double thickness, double boardFeet) {
        Stock stock = one(LengthUnit.IN, Boards.priced(length, width, thickness, 9.8, PriceBy.BOARD_FOOT));
        assertEquals(9.8 * boardFeet, stock.cost(), 1e-9);
    }

    @ParameterizedTest(name = "{0} x {1} x {2} mm are {3} board feet of 144 x 25.4^3 cubic millimetres")
    @CsvSource({"2438.4, 152.4, 25.4, 4", "304.8, 304.8, 25.4, 1", "1828.8, 152.4, 38.1, 4.5"})
    void boardFeetInMillimetres(double length, double width, double thickness, double boardFeet) {
        Stock stock = one(LengthUnit.MM, Boards.priced(length, width, thickness, 9.8, PriceBy.BOARD_FOOT));
        assertEquals(9.8 * boardFeet, stock.cost(), 1e-9);
    }

    @Test
    @DisplayName("hand calculation: 2000 x 100 x 50 mm are 0.01 cubic metres, 15 at 1500 each")
    void cubicMetresInMillimetres() {
        assertEquals(
                15,
                one(LengthUnit.MM, Boards.priced(2000, 100, 50, 1500.0, PriceBy.CUBIC_METRE))
                        .cost(),
                1e-12);
    }

    @Test
    @DisplayName("a board foot is 0.002359737216 cubic metres (144 x 0.0254^3), so 96 x 6 x 1 in are four of those")
    void cubicMetresInInches() {
        Stock stock = one(LengthUnit.IN, Boards.priced(96, 6, 1, 1500.0, PriceBy.CUBIC_METRE));
        assertEquals(4 * 0.002359737216 * 1500, stock.cost(), 1e-9);
        assertEquals(4 * 0.002359737216e9, stock.volume(), 1e-3);
    }

    @Test
    void aPriceOfABoardIsThatOfEachWhateverItsSize() {
        for (LengthUnit unit : LengthUnit.values()) {
            assertEquals(
                    24.5,
                    one(unit, Boards.priced(1830, 152, 38, 24.5, PriceBy.BOARD)).cost());
        }
    }

    @Test
    void aPriceIsForABoardUnlessItSaysOtherwise() {
        assertEquals(
                24.5,
                one(LengthUnit.MM, Boards.priced(1830, 152, 38, 24.5, null)).cost());
    }

    @Test
    void aBoardWithoutAPriceCostsNothing() {
        for (PriceBy priceBy : PriceBy.values()) {
            assertEquals(
                    0,
                    one(LengthUnit.MM, Boards.priced(1830, 152, 38, null, priceBy))
                            .cost());
        }
    }

    @Property(tries = 100, seed = "20261125")
    void anOfferCostsWhatTheSameBoardOnTheRackCosts(
            @ForAll PriceBy priceBy,
            @ForAll LengthUnit unit,
            @ForAll @DoubleRange(min = 1, max = 5000) double length,
            @ForAll @DoubleRange(min = 0, max = 2000) double price) {
        List<Stock> rack = Boards.rack(
                unit,
                List.of(Boards.priced(length, 6, 1, price, priceBy)),
                List.of(Boards.offered(length, 6, 1, price, priceBy)));
        assertEquals(rack.get(0).cost(), rack.get(1).cost());
    }

    @Test
    void boardsComeBeforeOffersAndKnowTheirPlaces() {
        List<Stock> rack = Boards.rack(
                LengthUnit.MM,
                List.of(Boards.priced(1830, 152, 38, 1.0, null), Boards.priced(1830, 152, 38, 2.0, null)),
                List.of(Boards.offered(1830, 152, 38, 3.0, null)));
        assertEquals(List.of(0, 1, -1), rack.stream().map(Stock::index).toList());
        assertEquals(List.of(-1, -1, 0), rack.stream().map(Stock::offer).toList());
        assertEquals(
                List.of(1, 1, 100),
                rack.stream().map(stock -> stock.board().count()).toList());
    }
}
