package org.orbwright.stock;

import java.util.ArrayList;
import java.util.List;
import org.orbwright.stock.Rack.Stock;
import org.orbwright.stock.Shortage.BoardFit;
import org.orbwright.stock.Shortage.BoardLack;

/**
 * What boards lack for strips; lengths in millimetres. A strip lies flat in a board, as thick as the strip and as wide
 * as it, or on edge, as wide as the strip is thick and as thick as it is wide. Every strip leaves the saw as thick as
 * the stick, and wider than its band by what is planed off.
 */
record BoardFits(double shortest, double stick, double planing) {
    /** Lines that an answer has at most. */
    private static final int MOST = 100;

    /** What each kind of board lacks for strips of these widths. */
    List<BoardFit> of(List<Stock> stock, List<Double> widths) {
        List<BoardFit> fits = new ArrayList<>();
        for (Stock one : stock) {
            for (double width : widths) {
                if (fits.size() < MOST) {
                    fits.add(fit(one, width));
                }
            }
        }
        return fits;
    }

    private BoardFit fit(Stock one, double strip) {
        double length = one.surfacing().length();
        double width = one.surfacing().width();
        double thickness = one.surfacing().thickness();
        boolean thickForFlat = Ripping.fits(stick, thickness);
        boolean thickForEdge = Ripping.fits(strip, thickness);
        BoardLack fit = BoardLack.NOTHING;
        double by = 0;
        if (!Ripping.fits(shortest, length)) {
            fit = BoardLack.TOO_SHORT;
            by = shortest - length;
        } else if (!thickForFlat && !thickForEdge) {
            fit = BoardLack.TOO_THIN;
            by = Math.min(stick, strip) - thickness;
        } else if (!(thickForFlat && Ripping.fits(strip, width)) && !(thickForEdge && Ripping.fits(stick, width))) {
            fit = BoardLack.TOO_NARROW;
            by = Math.min(
                    thickForFlat ? strip - width : Double.POSITIVE_INFINITY,
                    thickForEdge ? stick - width : Double.POSITIVE_INFINITY);
        }
        return new BoardFit(one.boardNumber(), one.offerNumber(), strip, fit, by, widestBand(one));
    }

    /** The widest band that a strip from a board can have; 0 for none. */
    double widestBand(Stock one) {
        double flat = Ripping.fits(stick, one.surfacing().thickness())
                ? one.surfacing().width()
                : 0;
        double onEdge =
                Ripping.fits(stick, one.surfacing().width()) ? one.surfacing().thickness() : 0;
        boolean isLong = Ripping.fits(shortest, one.surfacing().length());
        return isLong ? Math.max(0, Math.max(flat, onEdge) - planing) : 0;
    }
}
