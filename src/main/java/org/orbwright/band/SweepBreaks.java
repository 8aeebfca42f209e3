package org.orbwright.band;

import static java.lang.Math.sqrt;

import java.util.Arrays;

/**
 * The directions in which rays from the panel's centre pass from ending at one curve to ending at another, sorted, with
 * the two corners first and last. A direction too many does no harm.
 */
final class SweepBreaks {
    /** Breaks without any line: the two corners, and where outline, seam, flat and disc meet in pairs. */
    private static final int FIXED_BREAKS = 10;
    /** Breaks of one line with outline, seam, flat and disc. */
    private static final int LINE_BREAKS = 7;

    private final SegmentSurface segment;
    private final double[] slopes;
    private int count = 2;

    /**
     * @param from slope of the left corner
     * @param to slope of the right corner
     * @param lines band lines at which rays may end
     * @param disc radius of a disc at whose rim they may end, or infinity
     */
    SweepBreaks(SegmentSurface segment, double from, double to, BandLine[] lines, double disc) {
        this.segment = segment;
        this.slopes = new double[FIXED_BREAKS + lines.length * (LINE_BREAKS + lines.length)];
        this.slopes[0] = from;
        this.slopes[1] = to;
        find(lines, disc);
    }

    /** Number of directions. */
    int count() {
        return count;
    }

    /** One of the directions, in ascending order. */
    double at(int index) {
        return slopes[index];
    }

    /** Looks for every break, and sorts them. */
    private void find(BandLine[] lines, double disc) {
        if (segment.outlineReached()) {
            putBoth(segment.openHalfWidth() / segment.base());
        }
        double base = segment.base();
        double flat = segment.flatRadius();
        if (flat > base) {
            putBoth(sqrt((flat - base) * (flat + base)) / base);
        }
        if (disc < segment.radius()) {
            discBreaks(lines, disc);
        }
        for (int i = 0; i < lines.length; i++) {
            lineBreaks(lines[i]);
            for (int j = 0; j < i; j++) {
                double cross = lines[i].cos() * lines[j].sin() - lines[i].sin() * lines[j].cos();
                double x = (lines[i].offset() * lines[j].sin() - lines[j].offset() * lines[i].sin()) / cross;
                double y = (lines[j].offset() * lines[i].cos() - lines[i].offset() * lines[j].cos()) / cross;
                if (cross != 0) {
                    putPoint(x, y);
                }
            }
        }
        Arrays.sort(slopes, 0, count);
    }

    private void discBreaks(BandLine[] lines, double disc) {
        double base = segment.base();
        double radius = segment.radius();
        double rise = base / segment.joint();
        double cosSquared = (radius - disc) * (radius + disc) / (disc * disc) * rise * rise;
        if (cosSquared < 1) {
            putBoth(sqrt(1 / cosSquared - 1));
        }
        if (disc > base) {
            putBoth(sqrt((disc - base) * (disc + base)) / base);
        }
        for (BandLine line : lines) {
            circleBreaks(line, disc);
        }
    }

    private void lineBreaks(BandLine line) {
        double u = line.offset();
        // On the plane stretched along x by rho / a the seam is a circle of the sphere's radius.
        double stretch = segment.base() / segment.seamRadius();
        double nx = stretch * line.cos();
        double ny = line.sin();
        double square = nx * nx + ny * ny;
        double half = segment.radius() * segment.radius() * square - u * u;
        if (half > 0) {
            double chord = sqrt(half);
            putPoint((nx * u - ny * chord) * stretch, ny * u + nx * chord);
            putPoint((nx * u + ny * chord) * stretch, ny * u - nx * chord);
        }
        if (segment.outlineReached() && line.sin() != 0) {
            put((u - segment.base() * line.cos()) / line.sin() / segment.base());
        }
        circleBreaks(line, segment.flatRadius());
    }

    private void circleBreaks(BandLine line, double circle) {
        double u = line.offset();
        if (u >= circle) {
            return;
        }
        double chord = sqrt((circle - u) * (circle + u));
        putPoint(line.cos() * u - line.sin() * chord, line.sin() * u + line.cos() * chord);
        putPoint(line.cos() * u + line.sin() * chord, line.sin() * u - line.cos() * chord);
    }

    private void putBoth(double slope) {
        put(slope);
        put(-slope);
    }

    private void putPoint(double x, double y) {
        if (x > 0) {
            put(y / x);
        }
    }

    private void put(double slope) {
        if (slope > slopes[0] && slope < slopes[1]) {
            slopes[count++] = slope;
        }
    }
}
