package org.orbwright.segment;

import java.util.ArrayList;
import java.util.List;
import org.orbwright.design.Design;
import org.orbwright.design.Lamination;
import org.orbwright.design.Piece;
import org.orbwright.segment.SegmentPlan.Cut;

/**
 * Sticks as wide as the base distance, sawn across a blank at the band angle; each gives one segment, whose extent
 * square to the bands is the blank's width. The two corners of the blank beyond the first and the last stick are lost.
 */
final class StickLayout implements BlankLayout {
    private final double trim;
    private final double blankLength;
    /** Length of blank that one stick takes, measured along an edge. */
    private final double stick;

    private final double kerf;
    /** How far a cut moves along the blank from the first band's edge to the last band's. */
    private final double lean;

    private final int perBlank;

    StickLayout(Design design, Lamination lamination, Piece piece) {
        double sin = Math.abs(Math.sin(lamination.bandAngle()));
        this.trim = design.endTrim();
        this.blankLength = design.blankLength();
        this.stick = piece.base() / sin;
        this.kerf = design.kerf() / sin;
        this.lean = -lamination.width() * Math.cos(lamination.bandAngle()) / Math.sin(lamination.bandAngle());
        double sticks = (blankLength - 2 * trim - Math.abs(lean) + kerf + EXACT_FIT) / (stick + kerf);
        this.perBlank = (int) Math.max(0, Math.floor(sticks));
    }

    @Override
    public int perBlank() {
        return perBlank;
    }

    @Override
    public double lengthUsed() {
        return perBlank == 0 ? 0 : Math.abs(lean) + perBlank * (stick + kerf) - kerf + 2 * trim;
    }

    @Override
    public double shortestBlank() {
        return Math.abs(lean) + stick + 2 * trim;
    }

    @Override
    public List<Cut> cuts() {
        List<Cut> cuts = new ArrayList<>();
        double first = trim + Math.max(0, -lean);
        for (int i = 0; perBlank > 0 && i <= perBlank && i < MOST_CUTS; i++) {
            double at = first + (i == 0 ? 0 : i * (stick + kerf) - kerf);
            cuts.add(new Cut(i, at, at + lean));
        }
        return cuts;
    }
}
