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
     * Boards that are alike.
     *
     * @param board the board as it was written, completed
     * @param offer place of the offer in the request, from 0; -1 for boards on the rack
     * @param index place of the board in the request, from 0; -1 for boards to be bought
     * @param surfacing what is left of it
     * @param volume volume as it stands on the rack, in cubic millimetres
     * @param cost cost of one
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
