package org.orbwright.band;

import static java.lang.Math.atan2;
import static java.lang.Math.sqrt;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

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
    /** Breaks without any line: the two corners, and where outline, seam, flat and disc meet in pairs. */
    private static final int FIXED_BREAKS = 10;
    /** Breaks of one line with outline, seam, flat and disc. */
    private static final int LINE_BREAKS = 7;

    /**
     * Where an interval between two breaks is looked at. Not at its middle: there the seam of a symmetric segment
     * touches the outline and the flat if the sphere just reaches them, and rounding would decide for the whole
     * interval.
     */
    private static final double SAMPLE = 0.382;

    private static final BandLine[] NO_LINES = {};

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
        this.whole = sweep(NO_LINES, Double.POSITIVE_INFINITY);
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
        return line.offset() >= 0 ? inside(line) : whole.minus(inside(line.reversed()));
    }

    private Area inside(BandLine... lines) {
        return sweep(lines, Double.POSITIVE_INFINITY);
    }

    /** The part of the surface inside a disc around the panel's centre. */
    public Area within(double disc) {
        return sweep(NO_LINES, disc);
    }

    /** The part inside a disc around the panel's centre and below a band line. */
    public Area within(double disc, BandLine line) {
        return line.offset() >= 0
                ? sweep(new BandLine[] {line}, disc)
                : within(disc).minus(sweep(new BandLine[] {line.reversed()}, disc));
    }

    /** The part inside a convex polygon around the panel's centre, given by its sides, all with offsets above 0. */
    public Area within(List<BandLine> sides) {
        return inside(sides.toArray(NO_LINES));
    }

    /** The part inside a convex polygon around the panel's centre and below a band line. */
    public Area within(List<BandLine> sides, BandLine line) {
        List<BandLine> lines = new ArrayList<>(sides);
        lines.add(line.offset() >= 0 ? line : line.reversed());
        Area part = within(lines);
        return line.offset() >= 0 ? part : within(sides).minus(part);
    }

    /**
     * How far from the panel's normal the surface reaches in one direction.
     *
     * @param slope the direction as {@code y / x}
     */
    public double reach(double slope) {
        double seam = seamReach(slope);
        return outlineReached ? Math.min(seam, outlineReach(slope)) : seam;
    }

    private double seamReach(double slope) {
        return radius / Math.hypot(1, joint / base / sqrt(1 + slope * slope));
    }

    private double outlineReach(double slope) {
        return base * sqrt(1 + slope * slope);
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
    public double along(double slope, double cos, double sin) {
        double directionCos = 1 / sqrt(1 + slope * slope);
        return reach(slope) * directionCos * (cos + slope * sin);
    }

    /**
     * Distance along the finished surface from the panel's centre to a plane square to the section, flat and sphere.
     *
     * @param offset distance of the plane from the centre, negative on the other side, at most the radius
     * @return the distance, with the sign of the offset
     */
    public double arc(double offset) {
        double distance = Math.abs(offset);
        double along = distance <= flatRadius
                ? distance
                : flatRadius + radius * (Math.asin(Math.min(1, distance / radius)) - Math.asin(flatRadius / radius));
        return offset < 0 ? -along : along;
    }

    /** Half the length of the part of the edge that the sphere reaches beyond; only where it does. */
    private double openHalfWidth() {
        return sqrt((radius - seamRadius) * (radius + seamRadius));
    }

    private boolean inside(double slope) {
        return slope > -left / base && slope < right / base;
    }

    /** Sweeps the surface that lies below every line, all with offsets of at least 0, and inside a disc. */
    private Area sweep(BandLine[] lines, double disc) {
        double[] breaks = new double[FIXED_BREAKS + lines.length * (LINE_BREAKS + lines.length)];
        int count = breaks(breaks, lines, disc);
        double onSphere = 0;
        double flat = 0;
        double plan = 0;
        for (int i = 0; i + 1 < count; i++) {
            double from = breaks[i];
            double to = breaks[i + 1];
            if (from == to) {
                continue;
            }
            End end = end(lines, disc, from + SAMPLE * (to - from));
            double turn = flatRadius > 0 || end.round ? Math.atan(to) - Math.atan(from) : 0;
            double swept = planBetween(end, from, to, turn);
            plan += swept;
            if (end.reach < flatRadius) {
                flat += swept;
            } else {
                onSphere += radius * (radius * capBetween(end, from, to, turn) - capDepth * turn);
                flat += flatRadius * flatRadius / 2 * turn;
            }
        }
        return new Area(onSphere + flat, flat, plan);
    }

    /**
     * Where the rays of a direction end.
     *
     * @param reach how far from the panel's normal
     * @param straight the line at which they end, or null for the seam or the disc
     * @param round whether they end at the disc
     */
    private record End(double reach, BandLine straight, boolean round) {}

    private End end(BandLine[] lines, double disc, double slope) {
        double reach = seamReach(slope);
        BandLine straight = null;
        if (outlineReached && outlineReach(slope) < reach) {
            reach = outlineReach(slope);
            straight = new BandLine(base, 1, 0);
        }
        for (BandLine line : lines) {
            double lineReach = lineReach(line, slope);
            if (lineReach < reach) {
                reach = lineReach;
                straight = line;
            }
        }
        return disc < reach ? new End(disc, null, true) : new End(reach, straight, false);
    }

    private double planBetween(End end, double from, double to, double turn) {
        if (end.round) {
            return end.reach * end.reach / 2 * turn;
        }
        return end.straight == null
                ? planUnderSeam(to) - planUnderSeam(from)
                : planUnderLine(end.straight, to) - planUnderLine(end.straight, from);
    }

    private double capBetween(End end, double from, double to, double turn) {
        if (end.round) {
            double sin = Math.min(1, end.reach / radius);
            return sin * sin / (1 + sqrt(1 - sin * sin)) * turn;
        }
        return end.straight == null
                ? underSeam(to) - underSeam(from)
                : underLine(end.straight, to) - underLine(end.straight, from);
    }

    private static double lineReach(BandLine line, double slope) {
        double cos = (line.cos() + slope * line.sin()) / sqrt(1 + slope * slope);
        return cos > 0 ? line.offset() / cos : Double.POSITIVE_INFINITY;
    }

    private int breaks(double[] breaks, BandLine[] lines, double disc) {
        breaks[0] = -left / base;
        breaks[1] = right / base;
        int count = 2;
        if (outlineReached) {
            count = putBoth(breaks, count, openHalfWidth() / base);
        }
        if (flatRadius > base) {
            count = putBoth(breaks, count, sqrt((flatRadius - base) * (flatRadius + base)) / base);
        }
        if (disc < radius) {
            count = discBreaks(breaks, count, lines, disc);
        }
        for (int i = 0; i < lines.length; i++) {
            count = lineBreaks(breaks, count, lines[i]);
            for (int j = 0; j < i; j++) {
                double cross = lines[i].cos() * lines[j].sin() - lines[i].sin() * lines[j].cos();
                double x = (lines[i].offset() * lines[j].sin() - lines[j].offset() * lines[i].sin()) / cross;
                double y = (lines[j].offset() * lines[i].cos() - lines[i].offset() * lines[j].cos()) / cross;
                count = cross == 0 ? count : putPoint(breaks, count, x, y);
            }
        }
        Arrays.sort(breaks, 0, count);
        return count;
    }

    private int discBreaks(double[] breaks, int before, BandLine[] lines, double disc) {
        int count = before;
        double cosSquared = (radius - disc) * (radius + disc) / (disc * disc) * (base / joint) * (base / joint);
        if (cosSquared < 1) {
            count = putBoth(breaks, count, sqrt(1 / cosSquared - 1));
        }
        if (disc > base) {
            count = putBoth(breaks, count, sqrt((disc - base) * (disc + base)) / base);
        }
        for (BandLine line : lines) {
            count = circleBreaks(breaks, count, line, disc);
        }
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
        return circleBreaks(breaks, count, line, flatRadius);
    }

    private int circleBreaks(double[] breaks, int before, BandLine line, double circle) {
        double u = line.offset();
        if (u >= circle) {
            return before;
        }
        double chord = sqrt((circle - u) * (circle + u));
        int count = putPoint(breaks, before, line.cos() * u - line.sin() * chord, line.sin() * u + line.cos() * chord);
        return putPoint(breaks, count, line.cos() * u + line.sin() * chord, line.sin() * u - line.cos() * chord);
    }

    private int putBoth(double[] breaks, int count, double slope) {
        return put(breaks, put(breaks, count, slope), -slope);
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
        double k = line.offset() / radius;
        if (k == 0) {
            return 0;
        }
        double norm = sqrt(1 + slope * slope);
        double cos = Math.max(k, (line.cos() + slope * line.sin()) / norm);
        double sin = (slope * line.cos() - line.sin()) / norm;
        double height = sqrt((cos - k) * (cos + k));
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

    /**
     * A triangle between the line's axis and a ray; a ray that meets the line on the sphere is never square to its
     * axis.
     */
    private double planUnderLine(BandLine line, double slope) {
        double k = line.offset() / radius;
        if (k == 0) {
            return 0;
        }
        double cos = Math.max(k * sqrt(1 + slope * slope), line.cos() + slope * line.sin());
        return line.offset() * line.offset() * (slope * line.cos() - line.sin()) / cos / 2;
    }

    /** A sector of the ellipse as which the seam appears, by stretching it to a circle. */
    private double planUnderSeam(double slope) {
        return radius * radius / 2 * (base / seamRadius) * Math.atan(slope * base / seamRadius);
    }
}
