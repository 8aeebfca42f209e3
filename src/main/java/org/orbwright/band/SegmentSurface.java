package org.orbwright.band;

import static java.lang.Math.atan2;
import static java.lang.Math.sqrt;

import java.util.Arrays;

/**
 * The outer surface of one segment after turning: the part of the sphere between its seams, and the flat that stays in
 * the middle of the face if the sphere is larger than the face distance.
 *
 * <p>Seen from the panel's centre the surface is swept by rays in the directions of the base. In each direction it ends
 * at the seam, a great circle, or at the panel's outline where a land keeps the seam open, and a band line cuts it
 * earlier. Between the directions in which the end passes from one of these curves to another the area has an
 * elementary antiderivative; the two used here ({@link #underLine} and {@link #underSeam}) are those of the cap, one
 * less the cosine of the polar angle, arranged so that nothing cancels near the centre. Areas agree with
 * arbitrary-precision quadrature to 1e-14 of the whole segment, and to 1e-12 of themselves unless they are smaller than
 * a millionth of it.
 */
public final class SegmentSurface {
    private static final int MOST_BREAKS = 16;

    private final double joint;
    private final double base;
    private final double left;
    private final double right;
    private final double radius;
    private final double seamRadius;
    /** Cosine of the polar angle at which the seam's great circle leans out, {@code g / rho}. */
    private final double seamCos;

    private final double flatRadius;
    /** How far the sphere would rise above the face. */
    private final double capDepth;

    private final boolean outlineReached;
    private final Area whole;

    /**
     * A segment on a sphere.
     *
     * @param joint joint distance {@code g}, above 0
     * @param face face distance {@code h}, at least the joint distance
     * @param base base distance {@code a}, above 0
     * @param left base length {@code l} left of the foot, above 0
     * @param right base length {@code r} right of the foot, above 0
     * @param radius the sphere's radius {@code R}, above 0
     */
    public SegmentSurface(double joint, double face, double base, double left, double right, double radius) {
        this.joint = joint;
        this.base = base;
        this.left = left;
        this.right = right;
        this.radius = radius;
        this.seamRadius = Math.hypot(base, joint);
        this.seamCos = joint / seamRadius;
        this.flatRadius = radius > face ? sqrt((radius - face) * (radius + face)) : 0;
        this.capDepth = Math.max(0, radius - face);
        this.outlineReached = radius > seamRadius;
        this.whole = sweep(null);
    }

    /** The sphere's radius. */
    public double radius() {
        return radius;
    }

    /** Radius of the flat in the middle of the face, 0 if there is none. */
    public double flatRadius() {
        return flatRadius;
    }

    /** The whole surface of the segment. */
    public Area whole() {
        return whole;
    }

    /** The part of the surface below a band line. */
    public Area below(BandLine line) {
        return line.offset() >= 0 ? sweep(line) : whole.minus(sweep(line.reversed()));
    }

    /**
     * How far from the panel's normal the surface reaches in one direction.
     *
     * @param slope the direction as {@code y / x}
     */
    public double reach(double slope) {
        double cos = 1 / sqrt(1 + slope * slope);
        double seam = radius / Math.hypot(1, joint * cos / base);
        return outlineReached ? Math.min(seam, base / cos) : seam;
    }

    /** The largest {@code x cos d + y sin d} of the surface, for a direction given by its cosine and sine. */
    public double extent(double cos, double sin) {
        double most = Math.max(0, Math.max(along(-left / base, cos, sin), along(right / base, cos, sin)));
        double nx = base * cos / seamRadius;
        double touchX = nx * base / seamRadius;
        if (touchX > 0 && inside(sin / touchX)) {
            most = Math.max(most, along(sin / touchX, cos, sin));
        }
        if (outlineReached) {
            double slope = openHalfWidth() / base;
            most = inside(slope) ? Math.max(most, along(slope, cos, sin)) : most;
            most = inside(-slope) ? Math.max(most, along(-slope, cos, sin)) : most;
        }
        return most;
    }

    /** {@code x cos d + y sin d} where the surface ends in the given direction. */
    double along(double slope, double cos, double sin) {
        double directionCos = 1 / sqrt(1 + slope * slope);
        return reach(slope) * directionCos * (cos + slope * sin);
    }

    /** Half the length of the part of the edge that the sphere reaches beyond; only where it does. */
    private double openHalfWidth() {
        return sqrt((radius - seamRadius) * (radius + seamRadius));
    }

    private boolean inside(double slope) {
        return slope > -left / base && slope < right / base;
    }

    private Area sweep(BandLine line) {
        double[] breaks = new double[MOST_BREAKS];
        int count = breaks(breaks, line);
        double onSphere = 0;
        double flat = 0;
        double plan = 0;
        for (int i = 0; i + 1 < count; i++) {
            double from = breaks[i];
            double to = breaks[i + 1];
            if (from == to) {
                continue;
            }
            double middle = (from + to) / 2;
            double reach = reach(middle);
            double lineReach = line == null ? Double.POSITIVE_INFINITY : lineReach(line, middle);
            double end = Math.min(reach, lineReach);
            BandLine straight = straightEnd(line, lineReach < reach, middle, reach);
            double swept = straight == null
                    ? planUnderSeam(to) - planUnderSeam(from)
                    : planUnderLine(straight, to) - planUnderLine(straight, from);
            plan += swept;
            if (end < flatRadius) {
                flat += swept;
            } else {
                double turn = flatRadius == 0 ? 0 : Math.atan(to) - Math.atan(from);
                double cap = straight == null
                        ? underSeam(to) - underSeam(from)
                        : underLine(straight, to) - underLine(straight, from);
                onSphere += radius * (radius * cap - capDepth * turn);
                flat += flatRadius * flatRadius / 2 * turn;
            }
        }
        return new Area(onSphere + flat, flat, plan);
    }

    /** The straight line at which rays of this direction end, or null if they end at the seam. */
    private BandLine straightEnd(BandLine line, boolean endsAtLine, double slope, double reach) {
        if (endsAtLine) {
            return line;
        }
        boolean atOutline = outlineReached && reach >= base * sqrt(1 + slope * slope);
        return atOutline ? new BandLine(base, 1, 0) : null;
    }

    private static double lineReach(BandLine line, double slope) {
        double cos = (line.cos() + slope * line.sin()) / sqrt(1 + slope * slope);
        return cos > 0 ? line.offset() / cos : Double.POSITIVE_INFINITY;
    }

    private int breaks(double[] breaks, BandLine line) {
        breaks[0] = -left / base;
        breaks[1] = right / base;
        int count = 2;
        if (outlineReached) {
            count = put(breaks, count, openHalfWidth() / base);
            count = put(breaks, count, -openHalfWidth() / base);
        }
        if (flatRadius > base) {
            double slope = sqrt((flatRadius - base) * (flatRadius + base)) / base;
            count = put(breaks, put(breaks, count, slope), -slope);
        }
        if (line != null) {
            count = lineBreaks(breaks, count, line);
        }
        Arrays.sort(breaks, 0, count);
        return count;
    }

    private int lineBreaks(double[] breaks, int before, BandLine line) {
        int count = before;
        double u = line.offset();
        // On the plane stretched along x by rho / a the seam is a circle of the sphere's radius.
        double nx = base * line.cos() / seamRadius;
        double ny = line.sin();
        double square = nx * nx + ny * ny;
        double half = radius * radius * square - u * u;
        if (half > 0) {
            double chord = sqrt(half);
            count = putPoint(breaks, count, (nx * u - ny * chord) * base / seamRadius, ny * u + nx * chord);
            count = putPoint(breaks, count, (nx * u + ny * chord) * base / seamRadius, ny * u - nx * chord);
        }
        if (outlineReached && line.sin() != 0) {
            count = put(breaks, count, (u - base * line.cos()) / line.sin() / base);
        }
        if (u < flatRadius) {
            double chord = sqrt((flatRadius - u) * (flatRadius + u));
            count = putPoint(breaks, count, line.cos() * u - line.sin() * chord, line.sin() * u + line.cos() * chord);
            count = putPoint(breaks, count, line.cos() * u + line.sin() * chord, line.sin() * u - line.cos() * chord);
        }
        return count;
    }

    private int putPoint(double[] breaks, int count, double x, double y) {
        return x > 0 ? put(breaks, count, y / x) : count;
    }

    private int put(double[] breaks, int count, double slope) {
        if (inside(slope)) {
            breaks[count] = slope;
            return count + 1;
        }
        return count;
    }

    /** Cap below a band line, per square of the radius, from the line's own axis to the given direction. */
    private double underLine(BandLine line, double slope) {
        double norm = sqrt(1 + slope * slope);
        double cos = (line.cos() + slope * line.sin()) / norm;
        double sin = (slope * line.cos() - line.sin()) / norm;
        double k = line.offset() / radius;
        double height = sqrt(Math.max(0, (cos - k) * (cos + k)));
        return k * atan2(k * sin, height) - atan2(sin * k * k / (cos + height), cos * height + sin * sin);
    }

    /** Cap inside the seam, per square of the radius, from the tip axis to the given direction. */
    private double underSeam(double slope) {
        double norm = sqrt(1 + slope * slope);
        double cos = 1 / norm;
        double sin = slope / norm;
        double polarSin = sqrt(1 - seamCos * seamCos * sin * sin);
        double tilt = base / seamRadius;
        return atan2(sin * tilt * tilt / (polarSin + seamCos * cos), cos * polarSin + seamCos * sin * sin);
    }

    private static double planUnderLine(BandLine line, double slope) {
        double tangent = (slope * line.cos() - line.sin()) / (line.cos() + slope * line.sin());
        return line.offset() * line.offset() * tangent / 2;
    }

    /** A sector of the ellipse as which the seam appears, by stretching it to a circle. */
    private double planUnderSeam(double slope) {
        return radius * radius / 2 * (base / seamRadius) * Math.atan(slope * base / seamRadius);
    }
}
