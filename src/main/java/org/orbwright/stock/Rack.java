package org.orbwright.stock;

import java.util.ArrayList;
import java.util.List;
import org.orbwright.quantity.LengthUnit;
import org.orbwright.quantity.Quantity;
import org.orbwright.stock.StockRequest.AllowancesRequest;

/** The boards at hand and those that can be bought, with everything filled in that was left out. */
final class Rack {
    private Rack() {}

    /**
     * Boards that are alike, as they were written and filled in. The offer and the index are places in the request,
     * from 0, and one of them is -1: boards on the rack have an index, boards to be bought an offer. The volume is that
     * of one on the rack, in cubic millimetres.
     */
    record Stock(BoardRequest board, int offer, int index, Surfacing surfacing, double volume, double cost) {
        /** Which board of the rack it is, from 1; null for one to be bought. */
        Integer boardNumber() {
            return offer < 0 ? index + 1 : null;
        }

        /** Which offer it is, from 1; null for one on the rack. */
        Integer offerNumber() {
            return offer < 0 ? null : offer + 1;
        }
    }

    /** The boards on the rack, then those that can be bought, in the order of the request. */
    static List<Stock> of(StockRequest request, LengthUnit unit) {
        List<Stock> stock = new ArrayList<>();
        for (int i = 0; i < request.boards().size(); i++) {
            stock.add(stock(request.boards().get(i), -1, i, request.allowances(), unit));
        }
        for (int i = 0; i < request.offers().size(); i++) {
            stock.add(stock(bought(request.offers().get(i)), i, -1, request.allowances(), unit));
        }
        return stock;
    }

    private static Stock stock(
            BoardRequest board, int offer, int index, AllowancesRequest allowances, LengthUnit unit) {
        double volume = unit.toMillimetres(board.length())
                * unit.toMillimetres(board.width())
                * unit.toMillimetres(board.thickness());
        double amount = switch (board.priceBy()) {
            case BOARD -> 1;
            case BOARD_FOOT -> volume * Quantity.BOARD_FEET.factor(unit);
            case CUBIC_METRE -> volume * Quantity.CUBIC_METRES.factor(unit);
        };
        return new Stock(board, offer, index, Surfacing.of(board, allowances, unit), volume, board.price() * amount);
    }

    private static BoardRequest bought(OfferRequest offer) {
        return new BoardRequest(
                        offer.name(),
                        offer.species(),
                        offer.length(),
                        offer.width(),
                        offer.thickness(),
                        offer.most(),
                        offer.surface(),
                        offer.price(),
                        offer.priceBy(),
                        null,
                        null,
                        null)
                .filled();
    }
}
