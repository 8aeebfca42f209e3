package org.orbwright.inlay;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.orbwright.design.Band;
import org.orbwright.design.Design;
import org.orbwright.design.Panel;
import org.orbwright.solid.Face;
import org.orbwright.solid.Solid;

/**
 * How much of each band an inlay covers, summed over rays from the panel's middle, 20,000 for each edge. The edges come
 * from the corners of the catalogue's solid.
 */
final class CoverOracle {
    private static final int RAYS = 20_000;

    private final Design design;
    private final Panel panel;
    private final double shapeRadius;
    private final int sides;
    private final List<Edge> edges = new ArrayList<>();

    /**
     * An edge seen from the panel's middle.
     *
     * @param direction of its foot, counter-clockwise from that of the first edge seen from outside
     * @param base its distance
     * @param left from the foot to the corner before it
     * @param right from the foot to the corner after it
     */
    private record Edge(double direction, double base, double left, double right) {}

    CoverOracle(Design design, Panel panel, double shapeRadius, int sides) {
        this.design = design;
        this.panel = panel;
        this.shapeRadius = shapeRadius;
        this.sides = sides;
        Solid solid = design.solid();
        Face face = solid.faces().stream()
                .filter(f -> f.kind().equals(panel.face()))
                .findFirst()
                .orElseThrow();
        Vector3D normal = solid.normal(face);
        Vector3D first = null;
        int corners = face.vertices().size();
        for (int i = 0; i < corners; i++) {
            Vector3D from = solid.corner(face, i).multiply(design.edge());
            Vector3D to = solid.corner(face, (i + 1) % corners).multiply(design.edge());
            Vector3D along = to.subtract(from).normalize();
            Vector3D foot = along.cross(normal);
            first = first == null ? foot : first;
            double direction = Math.atan2(normal.cross(first).dot(foot), first.dot(foot));
            edges.add(new Edge(direction, foot.dot(from), -along.dot(from), along.dot(to)));
        }
    }

    /** The covered area of every band of an upright panel, from the base. */
    double[] covered() {
        double[] areas = new double[panel.lamination().bands().size()];
        for (Edge edge : edges) {
            double from = -Math.atan2(edge.left(), edge.base());
            double width = (Math.atan2(edge.right(), edge.base()) - from) / RAYS;
            for (int i = 0; i < RAYS; i++) {
                addRay(areas, edge, from + (i + 0.5) * width, width);
            }
        }
        return areas;
    }

    private void addRay(double[] areas, Edge edge, double angle, double width) {
        List<Band> bands = panel.lamination().bands();
        double across = Math.cos(angle - panel.lamination().bandAngle());
        double outer = top(edge);
        for (int band = 0; band < areas.length; band++) {
            double inner = outer - bands.get(band).width();
            double from = band == areas.length - 1 ? Double.NEGATIVE_INFINITY : inner;
            double to = band == 0 ? Double.POSITIVE_INFINITY : outer;
            double low = across > 0 ? from / across : to / across;
            double high = across > 0 ? to / across : from / across;
            areas[band] += wedge(Math.max(0, low), Math.min(reach(edge.direction() + angle), high)) * width;
            outer = inner;
        }
    }

    /** Area of the finished surface per angle between two distances from the panel's normal. */
    private double wedge(double from, double to) {
        return to > from ? capTo(to) - capTo(from) : 0;
    }

    /** The flat as far as it goes, and R times the height lost on the sphere beyond it. */
    private double capTo(double distance) {
        double radius = design.sphereRadius();
        double top = Math.min(radius, panel.faceDistance());
        double flat = Math.sqrt((radius - top) * (radius + top));
        if (distance <= flat) {
            return distance * distance / 2;
        }
        return flat * flat / 2 + radius * (top - Math.sqrt(radius * radius - distance * distance));
    }

    private double reach(double angle) {
        if (sides == 0) {
            return shapeRadius;
        }
        double step = 2 * Math.PI / sides;
        double fromSide = Math.IEEEremainder(angle, step);
        return shapeRadius * Math.cos(step / 2) / Math.cos(fromSide);
    }

    /** Where the first band starts: the corner of the segment that lies farthest across the bands. */
    private double top(Edge edge) {
        double cos = Math.cos(panel.lamination().bandAngle());
        double sin = Math.sin(panel.lamination().bandAngle());
        double leftCorner = edge.base() * cos - edge.left() * sin;
        double rightCorner = edge.base() * cos + edge.right() * sin;
        return Math.max(0, Math.max(leftCorner, rightCorner));
    }
}
