package org.orbwright.segment;

import java.util.ArrayList;
import java.util.List;
import org.orbwright.design.Design;
import org.orbwright.design.Piece;
import org.orbwright.segment.SegmentPlan.Cut;

/**
 * Segments that alternate upright and inverted along a blank as wide as the base distance. An inverted segment is an
 * upright one turned by half a turn, so neighbours share the direction of the cut between them, and a cut takes its
 * kerf over the sine of its base angle from the blank's length. The shorter part of the base lies first, which wastes
 * least at the end.
 */
final class AlternatingLayout implements BlankLayout {
    private final double trim;
    private final double base;
    private final double shorter;
    /** Length of blank that a cut along the leg over the shorter part of the base takes. */
    private final double shorterKerf;

    private final double longerKerf;
    private final int perBlank;

    AlternatingLayout(Design design, Piece piece) {
        this.trim = design.endTrim();
        this.base = piece.baseLength();
        this.shorter = Math.min(piece.left(), piece.right());
        double longer = Math.max(piece.left(), piece.right());
        this.shorterKerf = design.kerf() * Math.hypot(piece.base(), shorter) / piece.base();
        this.longerKerf = design.kerf() * Math.hypot(piece.base(), longer) / piece.base();
        this.perBlank = most(design.blankLength() - 2 * trim + EXACT_FIT);
    }

    private double pair() {
        return base + shorterKerf + longerKerf;
    }

    private int most(double available) {
        double evenPairs = Math.floor((available - shorter + shorterKerf) / pair());
        double oddPairs = Math.floor((available - base) / pair());
        return (int) Math.max(0, Math.max(2 * evenPairs, oddPairs < 0 ? 0 : 2 * oddPairs + 1));
    }

    /** Length that a number of segments takes, without end trims. */
    double length(int segments) {
        int pairs = segments / 2;
        return segments % 2 == 0 ? pairs * pair() + shorter - shorterKerf : pairs * pair() + base;
    }

    @Override
    public int perBlank() {
        return perBlank;
    }

    @Override
    public double lengthUsed() {
        return perBlank == 0 ? 0 : length(perBlank) + 2 * trim;
    }

    @Override
    public double shortestBlank() {
        return base + 2 * trim;
    }

    @Override
    public List<Cut> cuts() {
        List<Cut> cuts = new ArrayList<>();
        for (int i = 0; perBlank > 0 && i <= perBlank && i < MOST_CUTS; i++) {
            int pairsBefore = i / 2;
            cuts.add(cut(i, trim + pairsBefore * pair()));
        }
        return cuts;
    }

    /** The line of cut i: the left leg of the first segment, then the right leg of segment i. */
    private Cut cut(int i, double pairStart) {
        if (i == 0) {
            return new Cut(0, pairStart, pairStart + shorter);
        }
        return i % 2 == 1
                ? new Cut(i, pairStart + base, pairStart + shorter)
                : new Cut(i, pairStart - shorterKerf, pairStart - shorterKerf + shorter);
    }
}
