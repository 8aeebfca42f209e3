package org.orbwright.segment;

import org.orbwright.design.BandSet;
import org.orbwright.design.Design;
import org.orbwright.design.Panel;
import org.orbwright.design.Piece;

/**
 * How many segments of one kind all spheres take, spares included.
 *
 * @param upright upright ones, or all of them where sawing gives one set
 * @param inverted inverted ones
 */
record SegmentCount(int upright, int inverted) {

    /** Counts a piece. Every panel of a face kind takes as many of it as any other. */
    static SegmentCount of(Design design, Panel panel, Piece piece) {
        int perPanel = piece.perSphere() / panel.kind().count();
        if (panel.lamination().sets() == 1) {
            return new SegmentCount(spared(piece.perSphere() * design.copies(), design), 0);
        }
        return new SegmentCount(
                spared(perPanel * design.panelsOf(panel.face(), BandSet.UPRIGHT), design),
                spared(perPanel * design.panelsOf(panel.face(), BandSet.INVERTED), design));
    }

    private static int spared(int needed, Design design) {
        return needed == 0 ? 0 : needed + design.spareSegments();
    }

    int total() {
        return upright + inverted;
    }
}
