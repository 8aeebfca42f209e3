package org.orbwright.stock;

import org.orbwright.quantity.LengthUnit;
import org.orbwright.stock.BoardRequest.Surface;
import org.orbwright.stock.StockRequest.AllowancesRequest;

/**
 * What is left of a board once it is jointed, flat, planed and clear of its ends; lengths in millimetres, 0 or more.
 * The losses are the thickness that flattening takes from it with shims and without.
 *
 * <p>A twisted board of even thickness is a saddle: seen from its middle plane its corners stand a quarter of the twist
 * above and below in turn. Shimmed so that both ends share the twist, planing both faces flat takes half the twist in
 * all. With three corners on the bed the first face is planed parallel to a plane from which the fourth corner is off
 * by all of it, and the second face then takes the whole twist. Cup and bow take their depth either way.
 */
record Surfacing(double length, double width, double thickness, double shimmedLoss, double unshimmedLoss) {

    /** Surfaces a board whose measures are all filled in. */
    static Surfacing of(BoardRequest board, AllowancesRequest allowances, LengthUnit unit) {
        double shimmedLoss = unit.toMillimetres(board.outOfFlat() + board.twist() / 2);
        double unshimmedLoss = unit.toMillimetres(board.outOfFlat() + board.twist());
        double faces = board.surface() == Surface.ROUGH ? 2 * unit.toMillimetres(allowances.planing()) : 0;
        return new Surfacing(
                left(board.length(), 2 * allowances.ends(), unit),
                left(board.width(), allowances.jointing() + allowances.edgeCleaning(), unit),
                Math.max(
                        0,
                        unit.toMillimetres(board.thickness())
                                - faces
                                - (board.shimmed() ? shimmedLoss : unshimmedLoss)),
                shimmedLoss,
                unshimmedLoss);
    }

    private static double left(double length, double loss, LengthUnit unit) {
        return Math.max(0, unit.toMillimetres(length - loss));
    }
}
