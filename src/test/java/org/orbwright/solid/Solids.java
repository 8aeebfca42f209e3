package org.orbwright.solid;

import java.util.List;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.orbwright.fixture.SolidNames;

/** Solids for parameterised tests, and their corners as vectors. */
final class Solids {
    private Solids() {}

    static Stream<String> names() {
        return SolidNames.each();
    }

    static Stream<String> regularFaced() {
        return names().filter(name -> listed(name).family() != SolidFamily.CATALAN);
    }

    static Solid listed(String name) {
        return SolidCatalogue.find(name).orElseThrow(() -> new AssertionError("no solid named " + name));
    }

    /** The solid, built anew: the catalogue's was built before a test, or a mutant, could change anything. */
    static Solid solid(String name) {
        Solid listed = listed(name);
        if (listed.family() != SolidFamily.CATALAN) {
            return built(listed, Polyhedron.uniform(ExactCoordinates.of(name)));
        }
        Polyhedron dual = Polyhedron.uniform(ExactCoordinates.of(listed.dual()));
        return built(listed, dual.dual(built(listed(listed.dual()), dual).midradius()));
    }

    private static Solid built(Solid listed, Polyhedron polyhedron) {
        return SolidBuilder.build(listed.name(), listed.family(), listed.dual(), listed.chiral(), polyhedron);
    }

    static FaceKind kind(Solid solid, String face) {
        return solid.faceKinds().stream()
                .filter(kind -> kind.face().equals(face))
                .findFirst()
                .orElseThrow(() -> new AssertionError(solid.name() + " has no face kind named " + face));
    }

    static SegmentKind segment(FaceKind kind, String letter) {
        return kind.segments().stream()
                .filter(segment -> segment.segment().equals(letter))
                .findFirst()
                .orElseThrow(() -> new AssertionError(kind.face() + " has no segment " + letter));
    }

    static List<Vector3D> corners(Solid solid) {
        return solid.vertices().stream().map(Vertex::vector).toList();
    }

    static List<Vector3D> corners(Solid solid, Face face) {
        return face.vertices().stream().map(v -> corner(solid, v)).toList();
    }

    static Vector3D corner(Solid solid, int number) {
        return solid.vertices().get(number).vector();
    }

    /** Outward unit normal, from the first three corners. */
    static Vector3D normal(Solid solid, int face) {
        List<Vector3D> corners = corners(solid, solid.faces().get(face));
        Vector3D first = corners.get(1).subtract(corners.get(0));
        return first.cross(corners.get(2).subtract(corners.get(1))).normalize();
    }
}
