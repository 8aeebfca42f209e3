package org.orbwright.band;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.orbwright.design.Band;
import org.orbwright.design.BandSet;
import org.orbwright.design.Lamination;
import org.orbwright.design.Piece;

/**
 * The bands of one segment with the lines between them, from the base to the tip.
 *
 * @param layers the bands
 */
public record BandStack(List<Layer> layers) {

    /**
     * One band of a segment.
     *
     * @param number its number in the lamination, from 1
     * @param band the strip
     * @param outer the line on its side towards the base
     * @param inner the line on its side towards the tip
     * @param outermost whether it reaches the end of the segment on the base's side
     * @param innermost whether it reaches the end on the tip's side, and takes up what the widths miss
     */
    public record Layer(int number, Band band, BandLine outer, BandLine inner, boolean outermost, boolean innermost) {}

    /** The bands of a piece of one set. */
    public static BandStack of(Lamination lamination, Piece piece, BandSet set) {
        int count = lamination.bands().size();
        double angle = piece.angle(lamination);
        double cos = Math.cos(angle);
        double sin = Math.sin(angle);
        List<Layer> layers = new ArrayList<>(count);
        double offset = piece.top(angle);
        for (int i = 0; i < count; i++) {
            int index = set == BandSet.UPRIGHT ? i : count - 1 - i;
            Band band = lamination.bands().get(index);
            double next = offset - band.width();
            BandLine outer = new BandLine(offset, cos, sin);
            BandLine inner = new BandLine(i == count - 1 ? Math.min(next, piece.bottom(angle)) : next, cos, sin);
            layers.add(new Layer(index + 1, band, outer, inner, i == 0, i == count - 1));
            offset = next;
        }
        return new BandStack(Collections.unmodifiableList(layers));
    }
}
