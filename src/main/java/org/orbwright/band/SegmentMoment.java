package org.orbwright.band;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.orbwright.band.BandStack.Layer;
import org.orbwright.design.Panel;
import org.orbwright.design.Piece;

/**
 * The first moment of one band's wood in a segment: the integral of the place over its volume, in the glued-up solid or
 * in the finished sphere, in closed form. The frame has its origin in the solid's centre, x from the panel's centre
 * square to the base, y along the base to the right as seen from outside, and z outwards.
 *
 * <p>The wood is convex: planes bound it, and the ball. By the divergence theorem four times the moment is the sum over
 * its surfaces of their first moment times their distance from the centre. For the sphere that is its radius to the
 * square times the integral of its normal, which is what the normals of all planes together lack, since those of a
 * closed surface add up to nothing. It agrees with quadrature to 1e-10 of volume times radius, and holds even where the
 * sphere breaks through to the hollow.
 */
public final class SegmentMoment {
    /** How far beyond the solid a plane is looked at, in multiples of its radius; its other planes cut it smaller. */
    private static final double FAR = 4;

    /** Unit normals that differ by less are one, but for rounding. */
    private static final double SAME_NORMAL = 1e-12;
    /** In millimetres; wood between two planes that are nearer has no weight. */
    private static final double SAME_DISTANCE = 1e-9;

    /** A side of the wood: a plane with its unit normal outwards, and its distance from the centre. */
    private record Side(Vector3D normal, double distance) {
        static Side of(double x, double y, double z, double distance) {
            double length = Math.sqrt(x * x + y * y + z * z);
            return new Side(Vector3D.of(x / length, y / length, z / length), distance / length);
        }

        /** Whether two sides are one, which must not be counted twice. */
        boolean isSame(Side other) {
            return normal.distance(other.normal) < SAME_NORMAL && Math.abs(distance - other.distance) < SAME_DISTANCE;
        }
    }

    private final List<Side> sides = new ArrayList<>();
    private final double radius;
    private final double far;

    private SegmentMoment(Panel panel, Piece piece, double thickness, double radius) {
        double base = piece.base();
        sides.add(Side.of(0, 0, 1, panel.faceDistance()));
        sides.add(Side.of(0, 0, -1, thickness - panel.faceDistance()));
        sides.add(Side.of(panel.jointDistance(), 0, -base, 0));
        sides.add(Side.of(-piece.right(), base, 0, 0));
        sides.add(Side.of(-piece.left(), -base, 0, 0));
        if (panel.faceDistance() > panel.jointDistance()) {
            sides.add(Side.of(1, 0, 0, base));
        }
        this.radius = radius;
        this.far = FAR * (panel.cornerRadius() + panel.faceDistance());
    }

    /** A segment of the glued-up solid, with its outer face still flat. */
    public static SegmentMoment ofSolid(Panel panel, Piece piece, double thickness) {
        return new SegmentMoment(panel, piece, thickness, Double.POSITIVE_INFINITY);
    }

    /** A segment of the finished sphere. */
    public static SegmentMoment ofSphere(Panel panel, Piece piece, double thickness, double radius) {
        return new SegmentMoment(panel, piece, thickness, radius);
    }

    /** The first moment of one band, in the fourth power of millimetres. */
    public Vector3D of(Layer layer) {
        List<Side> all = new ArrayList<>(sides);
        if (!layer.outermost()) {
            BandLine line = layer.outer();
            add(all, Side.of(line.cos(), line.sin(), 0, line.offset()));
        }
        if (!layer.innermost()) {
            BandLine line = layer.inner();
            add(all, Side.of(-line.cos(), -line.sin(), 0, -line.offset()));
        }
        Vector3D moment = Vector3D.ZERO;
        Vector3D normals = Vector3D.ZERO;
        for (Side side : all) {
            Vector3D right = side.normal.orthogonal();
            Vector3D up = side.normal.cross(right);
            double round = Double.isInfinite(radius)
                    ? radius
                    : Math.sqrt(Math.max(0, (radius - side.distance) * (radius + side.distance)));
            DiscPolygon face =
                    round == 0 ? new DiscPolygon(0, 0, 0) : DiscPolygon.of(outline(side, right, up, all), round);
            normals = normals.add(side.normal.multiply(face.area()));
            moment = moment.add(side.normal
                    .multiply(side.distance * face.area())
                    .add(right.multiply(face.x()))
                    .add(up.multiply(face.y()))
                    .multiply(side.distance));
        }
        Vector3D four = Double.isInfinite(radius) ? moment : moment.subtract(normals.multiply(radius * radius));
        return four.multiply(0.25);
    }

    private static void add(List<Side> all, Side side) {
        if (all.stream().noneMatch(side::isSame)) {
            all.add(side);
        }
    }

    /** The polygon that the other sides leave of a side's plane, around the point nearest to the centre. */
    private double[][] outline(Side side, Vector3D right, Vector3D up, List<Side> all) {
        List<double[]> corners = List.of(
                new double[] {-far, -far}, new double[] {far, -far}, new double[] {far, far}, new double[] {-far, far});
        for (Side other : all) {
            if (!other.equals(side)) {
                double x = other.normal.dot(right);
                double y = other.normal.dot(up);
                double room = other.distance - side.distance * other.normal.dot(side.normal);
                corners = cut(corners, x, y, room);
            }
        }
        return corners.toArray(new double[0][]);
    }

    /** What a line leaves of a convex polygon on its inner side (Sutherland and Hodgman). */
    private static List<double[]> cut(List<double[]> corners, double x, double y, double room) {
        List<double[]> left = new ArrayList<>();
        for (int i = 0; i < corners.size(); i++) {
            double[] from = corners.get(i);
            double[] to = corners.get((i + 1) % corners.size());
            double inFrom = room - x * from[0] - y * from[1];
            double inTo = room - x * to[0] - y * to[1];
            if (inFrom >= 0) {
                left.add(from);
            }
            if (inFrom >= 0 != inTo >= 0) {
                double share = inFrom / (inFrom - inTo);
                left.add(new double[] {from[0] + share * (to[0] - from[0]), from[1] + share * (to[1] - from[1])});
            }
        }
        return left;
    }
}
