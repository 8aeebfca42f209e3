package org.orbwright.solid;

import java.util.List;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.threed.Vector3D;

/** Solids for parameterised tests, and their corners as vectors. */
final class Solids {
    private Solids() {}

    static Stream<String> names() {
        return SolidCatalogue.all().stream().map(Solid::name);
    }

    static Stream<String> regularFaced() {
        return SolidCatalogue.all().stream()
                .filter(solid -> solid.family() != SolidFamily.CATALAN)
                .map(Solid::name);
    }

    static Solid solid(String name) {
        return SolidCatalogue.find(name).orElseThrow(() -> new AssertionError("no solid named " + name));
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
