package org.orbwright.inlay;

import java.util.ArrayList;
import java.util.List;
import org.orbwright.band.Area;
import org.orbwright.band.BandLine;
import org.orbwright.band.SegmentSurface;

/**
 * A disc or a regular polygon around the panel's centre.
 *
 * @param radius radius of the disc, or of the circle through the polygon's corners, in millimetres
 * @param sides sides of the polygon, or 0 for a disc
 */
record InlayShape(double radius, int sides) {

    boolean disc() {
        return sides == 0;
    }

    /** Radius of the largest circle around the centre inside the shape. */
    double innerRadius() {
        return disc() ? radius : radius * Math.cos(Math.PI / sides);
    }

    /**
     * The smallest angle between one of the shape's corners and the direction of a panel's base: that corner comes
     * nearest to a seam.
     *
     * @param bases directions of the panel's bases, from that of the first one, in radians
     */
    double nearestCorner(double[] bases) {
        if (disc()) {
            return 0;
        }
        double nearest = Math.PI;
        for (double base : bases) {
            for (int corner = 0; corner < sides; corner++) {
                double direction = (2 * corner + 1) * Math.PI / sides;
                nearest = Math.min(nearest, Math.abs(Math.IEEEremainder(direction - base, 2 * Math.PI)));
            }
        }
        return nearest;
    }

    /** The part of a segment's surface that the shape covers, below a band line or, without one, all of it. */
    Area covered(SegmentSurface surface, double baseDirection, BandLine line) {
        if (disc()) {
            return line == null ? surface.within(radius) : surface.within(radius, line);
        }
        List<BandLine> lines = new ArrayList<>();
        for (int side = 0; side < sides; side++) {
            lines.add(BandLine.of(innerRadius(), 2 * Math.PI * side / sides - baseDirection));
        }
        return line == null ? surface.within(lines) : surface.within(lines, line);
    }
}
