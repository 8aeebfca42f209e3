package org.orbwright.band;

import static java.lang.Math.sqrt;

import java.util.ArrayList;
import java.util.List;
import org.orbwright.design.Panel;
import org.orbwright.design.Piece;

/**
 * The outer surface of one segment after turning: the part of the sphere between its seams, and the flat that stays in
 * the middle of the face if the sphere is larger than the face distance.
 *
 * <p>Seen from the panel's centre the surface is swept by rays in the directions of the base. In each direction it ends
 * at the seam, a great circle, or at the panel's outline where a land keeps the seam open, and a band line cuts it
 * earlier. Between the directions in which the end passes from one of these curves to another the area has an
 * elementary antiderivative; the two used here ({@link SweptAreas}) are those of the cap, one less the cosine of the
 * polar angle, arranged so that nothing cancels near the centre. Areas agree with arbitrary-precision quadrature to
 * 1e-14 of the whole segment, and to 1e-12 of themselves unless they are smaller than a millionth of it.
 */
public final class SegmentSurface {
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
    private final SweptAreas swept;
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
        this.swept = new SweptAreas(radius, joint / seamRadius, base / seamRadius);
        this.flatRadius = radius > face ? sqrt((radius - face) * (radius + face)) : 0;
        this.capDepth = Math.max(0, radius - face);
        this.outlineReached = radius > seamRadius;
        this.whole = sweep(NO_LINES, Double.POSITIVE_INFINITY);
    }

    /** The surface of a design's segment on a sphere of the given radius. */
    public static SegmentSurface of(Panel panel, Piece piece, double radius) {
        return new SegmentSurface(
                panel.jointDistance(), panel.faceDistance(), piece.base(), piece.left(), piece.right(), radius);
    }

    /** The sphere's radius. */
    public double radius() {
        return radius;
    }

    /** Radius of the flat in the middle of the face, 0 if there is none. */
    public double flatRadius() {
        return flatRadius;
    }

    /** Joint distance. */
    double joint() {
        return joint;
    }

    /** Base distance. */
    double base() {
        return base;
    }

    /** Seam radius: from the solid's centre to the middle of the edge. */
    double seamRadius() {
        return seamRadius;
    }

    /** Whether the sphere reaches beyond the seams at the middle of the edge, so that rays end at the outline there. */
    boolean outlineReached() {
        return outlineReached;
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

    /** Half the length of the part of the edge that the sphere reaches beyond; only where it does. */
    double openHalfWidth() {
        return sqrt((radius - seamRadius) * (radius + seamRadius));
    }

    private boolean inside(double slope) {
        return slope > -left / base && slope < right / base;
    }

    /** Sweeps the surface that lies below every line, all with offsets of at least 0, and inside a disc. */
    private Area sweep(BandLine[] lines, double disc) {
        // The two sides of a symmetric segment with lines along its base are alike.
        boolean alike = left == right && alongBase(lines);
        SweepBreaks breaks = new SweepBreaks(this, alike ? 0 : -left / base, right / base, lines, disc);
        double onSphere = 0;
        double flat = 0;
        double plan = 0;
        for (int i = 0; i + 1 < breaks.count(); i++) {
            double from = breaks.at(i);
            double to = breaks.at(i + 1);
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
        double sides = alike ? 2 : 1;
        return new Area(sides * (onSphere + flat), sides * flat, sides * plan);
    }

    private static boolean alongBase(BandLine[] lines) {
        for (BandLine line : lines) {
            if (line.sin() != 0) {
                return false;
            }
        }
        return true;
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
                ? swept.planUnderSeam(to) - swept.planUnderSeam(from)
                : swept.planUnderLine(end.straight, to) - swept.planUnderLine(end.straight, from);
    }

    private double capBetween(End end, double from, double to, double turn) {
        if (end.round) {
            double sin = Math.min(1, end.reach / radius);
            return sin * sin / (1 + sqrt(1 - sin * sin)) * turn;
        }
        return end.straight == null
                ? swept.underSeam(to) - swept.underSeam(from)
                : swept.underLine(end.straight, to) - swept.underLine(end.straight, from);
    }

    private static double lineReach(BandLine line, double slope) {
        double cos = (line.cos() + slope * line.sin()) / sqrt(1 + slope * slope);
        return cos > 0 ? line.offset() / cos : Double.POSITIVE_INFINITY;
    }
}
