package org.orbwright.band;

import org.orbwright.design.Panel;
import org.orbwright.design.Piece;

/** The turned surfaces of a design's segments. */
final class Surfaces {
    private Surfaces() {}

    static SegmentSurface of(Panel panel, Piece piece, double radius) {
        return new SegmentSurface(
                panel.jointDistance(), panel.faceDistance(), piece.base(), piece.left(), piece.right(), radius);
    }
}
