package org.orbwright.inlay;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.orbwright.design.Design;
import org.orbwright.design.Panel;
import org.orbwright.solid.Face;
import org.orbwright.solid.Solid;

/**
 * A pocket straight from its definition: a prism of the inlay's shape from the panel's outer face down to the bottom,
 * that leaves the rim's thickness below the finished surface at its farthest points, stays above the hollow by the
 * floor and inside the planes through the solid's centre and its edges, and inside the panel's outline. The planes come
 * from the corners of the catalogue's solid.
 *
 * @param normal of the face, outwards
 * @param edges for each edge of the face, its corners
 * @param face face distance
 * @param thickness of the panel
 * @param radius of the sphere
 * @param sides of a polygon, or 0 for a disc
 * @param rim thickness that has to remain at the rim
 * @param floor that has to remain above the hollow
 */
record PocketOracle(
        Vector3D normal,
        List<Vector3D[]> edges,
        double face,
        double thickness,
        double radius,
        int sides,
        double rim,
        double floor) {
    /** Enough points of a disc's rim to lie within 1e-9 of the nearest one; the feet of the edges are added. */
    private static final int DISC_POINTS = 360;

    static PocketOracle of(Design design, Panel panel, int sides, double rimPart, double floorPart) {
        Solid solid = design.solid();
        Face face = solid.faces().stream()
                .filter(f -> f.kind().equals(panel.face()))
                .findFirst()
                .orElseThrow();
        List<Vector3D> corners = face.vertices().stream()
                .map(v -> solid.vertices().get(v).vector().multiply(design.edge()))
                .toList();
        List<Vector3D[]> edges = new ArrayList<>();
        for (int i = 0; i < corners.size(); i++) {
            edges.add(new Vector3D[] {corners.get(i), corners.get((i + 1) % corners.size())});
        }
        Vector3D normal = corners.get(1)
                .subtract(corners.get(0))
                .cross(corners.get(2).subtract(corners.get(1)))
                .normalize();
        double outer = normal.dot(corners.get(0)) + design.land();
        double wall = design.thickness() + Math.min(0, design.sphereRadius() - outer);
        return new PocketOracle(
                normal,
                edges,
                outer,
                design.thickness(),
                design.sphereRadius(),
                sides,
                rimPart * wall,
                floorPart * wall);
    }

    /** Whether there is any room at all. */
    boolean smallestFits() {
        return fits(1e-3);
    }

    /** The largest radius that fits, by bisection. */
    double largest() {
        double small = 0;
        double large = radius;
        for (int i = 0; i < 80; i++) {
            double middle = (small + large) / 2;
            boolean fits = fits(middle);
            small = fits ? middle : small;
            large = fits ? large : middle;
        }
        return small;
    }

    /** Whether the hollow, and not a seam, keeps the largest inlay from being larger. */
    boolean hollowLimits(double largest) {
        return insideSeams(largest * (1 + 1e-9)) && !aboveHollow(largest * (1 + 1e-9));
    }

    private boolean fits(double size) {
        return aboveHollow(size) && insideSeams(size);
    }

    private boolean aboveHollow(double size) {
        return bottom(size) >= face - thickness + floor;
    }

    private double bottom(double size) {
        double surface = size < radius ? Math.min(face, Math.sqrt(radius * radius - size * size)) : 0;
        return surface - rim;
    }

    private boolean insideSeams(double size) {
        for (Vector3D direction : farthestPoints()) {
            Vector3D low = normal.multiply(bottom(size)).add(direction.multiply(size));
            for (Vector3D[] edge : edges) {
                Vector3D inwards = edge[0].cross(edge[1]);
                Vector3D outline = normal.cross(edge[1].subtract(edge[0]));
                if (inwards.dot(low) < 0 || outline.dot(low.subtract(edge[0])) < 0) {
                    return false;
                }
            }
        }
        return true;
    }

    /** Directions of the shape's farthest points from the middle: corners, or points of the rim. */
    private List<Vector3D> farthestPoints() {
        Vector3D base = foot(edges.get(0));
        Vector3D side = normal.cross(base);
        List<Vector3D> points = new ArrayList<>();
        int count = sides == 0 ? DISC_POINTS : sides;
        for (int i = 0; i < count; i++) {
            double angle = (2 * i + 1) * Math.PI / count;
            points.add(base.multiply(Math.cos(angle)).add(side.multiply(Math.sin(angle))));
        }
        if (sides == 0) {
            edges.forEach(edge -> points.add(foot(edge)));
        }
        return points;
    }

    /** Direction from the panel's middle square to an edge. */
    private Vector3D foot(Vector3D[] edge) {
        return edge[1].subtract(edge[0]).cross(normal).normalize();
    }
}
