package org.orbwright.solid;

import static org.orbwright.quantity.Quantity.UNIT_EDGE;

import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.orbwright.quantity.Describe;

/**
 * A convex solid whose shortest edge is one long, centred at the origin. Coordinates and everything computed from them
 * are accurate to 1e-14.
 */
@Describe("A solid whose shortest edge is 1 long, with its corners, faces, edges and segments.")
public record Solid(
        @Describe(value = "The solid's name.", example = "\"dodecahedron\"")
        String name,

        @Describe(value = "The family that it belongs to.", example = "\"PLATONIC\"")
        SolidFamily family,

        @Describe(value = "Name of its dual.", example = "\"icosahedron\"")
        String dual,

        @Describe(
                value = "Whether it differs from its mirror image; the catalogue holds one of the two.",
                example = "false")
        boolean chiral,

        @Describe(value = "Inradius: the smallest face distance.", quantity = UNIT_EDGE, example = "1.113516364412")
        double inradius,

        @Describe(value = "Midradius: the distance of every edge.", quantity = UNIT_EDGE, example = "1.309016994375")
        double midradius,

        @Describe(
                value = "Circumradius: the distance of the farthest corner.",
                quantity = UNIT_EDGE,
                example = "1.401258538444")
        double circumradius,

        @Describe(value = "Area of all faces.", quantity = UNIT_EDGE, example = "20.645728807068")
        double surfaceArea,

        @Describe(value = "Volume.", quantity = UNIT_EDGE, example = "7.663118960625")
        double volume,

        @Describe("The face kinds, the fewest sides first.") List<FaceKind> faceKinds,
        @Describe("The edge kinds.") List<EdgeKind> edgeKinds,

        @Describe("The corners, in the order of their numbers.")
        List<Vertex> vertices,

        @Describe("The faces, in the order of their numbers.")
        List<Face> faces,

        @Describe("The edges, in the order of their numbers.")
        List<Edge> edges) {

    public Solid {
        faceKinds = List.copyOf(faceKinds);
        edgeKinds = List.copyOf(edgeKinds);
        vertices = List.copyOf(vertices);
        faces = List.copyOf(faces);
        edges = List.copyOf(edges);
    }

    /** Unit normal of a face, outwards. */
    public Vector3D normal(Face face) {
        Vector3D first = corner(face, 0);
        return corner(face, 1)
                .subtract(first)
                .cross(corner(face, 2).subtract(first))
                .normalize();
    }

    /** A corner of a face, by its place in the face's list. */
    public Vector3D corner(Face face, int place) {
        return vertices.get(face.vertices().get(place)).vector();
    }

    /** What a list of solids says of this one. */
    public SolidSummary summary() {
        return new SolidSummary(
                name,
                family,
                dual,
                faces.size(),
                edges.size(),
                vertices.size(),
                faceKinds.stream().map(FaceKind::face).toList());
    }
}
