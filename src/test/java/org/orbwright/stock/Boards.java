package org.orbwright.stock;

import java.util.List;
import org.orbwright.quantity.LengthUnit;
import org.orbwright.stock.BoardRequest.PriceBy;
import org.orbwright.stock.BoardRequest.Surface;
import org.orbwright.stock.Rack.Stock;
import org.orbwright.stock.StockRequest.AllowancesRequest;

/** Boards that a test puts on the rack, with what it does not care about left out. */
final class Boards {
    private Boards() {}

    /** A board with a price. */
    static BoardRequest priced(double length, double width, double thickness, Double price, PriceBy priceBy) {
        return new BoardRequest(
                null, "sugar maple", length, width, thickness, null, null, price, priceBy, null, null, null);
    }

    /** An offer of a stock size. */
    static OfferRequest offered(double length, double width, double thickness, double price, PriceBy priceBy) {
        return new OfferRequest(null, "sugar maple", length, width, thickness, null, price, priceBy, null);
    }

    /** A board of 1000 x 150 x 30 that is not flat. */
    static BoardRequest warped(Surface surface, double outOfFlat, double twist, boolean shimmed) {
        return new BoardRequest(
                null, "sugar maple", 1000.0, 150.0, 30.0, 1, surface, 0.0, PriceBy.BOARD, outOfFlat, twist, shimmed);
    }

    /** What the first step of a board loses: jointing, edge cleaning, planing of a face, and each end. */
    static AllowancesRequest allowances(double jointing, double edgeCleaning, double planing, double ends) {
        return new AllowancesRequest(jointing, edgeCleaning, planing, ends, 3.0, 0.0, 0.0);
    }

    /** The rack with these boards and offers, in a unit. */
    static List<Stock> rack(LengthUnit unit, List<BoardRequest> boards, List<OfferRequest> offers) {
        StockRequest request = new StockRequest(boards, offers, allowances(0, 0, 0, 0), null, null, null).filled(3.0);
        return Rack.of(request, unit);
    }
}
