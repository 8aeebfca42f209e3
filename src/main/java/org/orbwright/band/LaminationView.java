package org.orbwright.band;

import java.util.ArrayList;
import java.util.List;
import org.orbwright.design.Design;
import org.orbwright.design.Panel;
import org.orbwright.design.Piece;

/**
 * What is seen of a strip of one panel's lamination that lies between two depths, measured from the base's side of the
 * lamination towards the tip.
 */
final class LaminationView {
    private final Panel panel;
    private final List<Part> parts = new ArrayList<>();
    private final double sphereArea;

    private record Part(Piece piece, SegmentSurface surface, double top, double cos, double sin) {}

    LaminationView(Design design, Panel panel) {
        this.panel = panel;
        double total = 0;
        for (Panel other : design.panels()) {
            for (Piece piece : other.pieces()) {
                SegmentSurface surface = SegmentSurface.of(other, piece, design.sphereRadius());
                total += piece.perSphere() * surface.whole().visible();
                if (other.equals(panel)) {
                    double angle = piece.angle(panel.lamination());
                    parts.add(new Part(piece, surface, piece.top(angle), Math.cos(angle), Math.sin(angle)));
                }
            }
        }
        this.sphereArea = total;
    }

    /** Width of the lamination, from its first edge to its last. */
    double width() {
        return panel.lamination().width();
    }

    /** Visible width at the edge middle, the least of the panel's pieces. */
    double edgeMiddle(double from, double to) {
        double least = Double.POSITIVE_INFINITY;
        for (Part part : parts) {
            least = Math.min(least, crossed(part, 0, from, to));
        }
        return least;
    }

    /** Visible width at a corner, the least of the panel's pieces and corners. */
    double corner(double from, double to) {
        double least = Double.POSITIVE_INFINITY;
        for (Part part : parts) {
            Piece piece = part.piece();
            least = Math.min(least, crossed(part, -piece.left() / piece.base(), from, to));
            least = Math.min(least, crossed(part, piece.right() / piece.base(), from, to));
        }
        return least;
    }

    /** Share of the sphere's whole surface. */
    double share(double from, double to) {
        double area = 0;
        for (Part part : parts) {
            area += part.piece().perSphere() * (below(part, from) - below(part, to));
        }
        return Math.max(0, area / sphereArea);
    }

    private double below(Part part, double depth) {
        return part.surface()
                .below(new BandLine(part.top() - depth, part.cos(), part.sin()))
                .visible();
    }

    private double crossed(Part part, double slope, double from, double to) {
        double end = part.surface().along(slope, part.cos(), part.sin());
        double low = Math.max(part.top() - to, Math.min(0, end));
        double high = Math.min(part.top() - from, Math.max(0, end));
        return high > low ? part.surface().arc(high) - part.surface().arc(low) : 0;
    }
}
