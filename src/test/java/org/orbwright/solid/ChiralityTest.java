package org.orbwright.solid;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.orbwright.source.Kind.FROM_MEMORY;
import static org.orbwright.source.Kind.HAND;
import static org.orbwright.source.Kind.INVARIANT;
import static org.orbwright.source.Kind.ORACLE;

import java.util.List;
import java.util.Set;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.orbwright.source.Source;

/** Which solids, faces and segments differ from their mirror image. */
@Source(INVARIANT)
class ChiralityTest {
    private static final double SAME_POINT = 1e-9;

    @Test
    @Source(
            value = FROM_MEMORY,
            text = "H. M. Cundy and A. P. Rollett, Mathematical Models, 2nd edition 1961: only the snub solids come "
                    + "in two forms")
    void onlyTheSnubSolidsAndTheirDualsAreChiral() {
        Set<String> chiral =
                Set.of("snub-cube", "snub-dodecahedron", "pentagonal-icositetrahedron", "pentagonal-hexecontahedron");
        for (Solid solid : SolidCatalogue.all()) {
            assertEquals(chiral.contains(solid.name()), solid.chiral(), solid.name());
        }
    }

    @ParameterizedTest
    @MethodSource("org.orbwright.solid.Solids#names")
    @Source(value = ORACLE, text = "exhaustive search: every turn that takes an edge to an edge")
    void solidIsChiralIfNoTurnBringsItsMirrorImageOntoIt(String name) {
        Solid solid = Solids.solid(name);
        assertEquals(solid.chiral(), !someTurnMatchesMirrorImage(solid));
    }

    @ParameterizedTest
    @CsvSource({
        "disdyakis-dodecahedron, 48, 24",
        "disdyakis-triacontahedron, 120, 60",
        "pentagonal-icositetrahedron, 24, 0",
        "deltoidal-hexecontahedron, 60, 0",
        "dodecahedron, 12, 0"
    })
    @Source(
            value = HAND,
            text = "order of the symmetry group: a scalene face lies in no mirror, so half of them are mirror images")
    void onlyScaleneFacesComeInTwoHands(String name, int faces, int mirrored) {
        FaceKind kind = Solids.solid(name).faceKinds().get(0);
        assertEquals(faces, kind.count());
        assertEquals(mirrored, kind.mirroredCount());
    }

    @ParameterizedTest
    @CsvSource({
        "rhombic-dodecahedron, 1",
        "rhombic-triacontahedron, 1",
        "deltoidal-icositetrahedron, 2",
        "deltoidal-hexecontahedron, 2",
        "triakis-tetrahedron, 2",
        "pentakis-dodecahedron, 2",
        "disdyakis-dodecahedron, 3",
        "disdyakis-triacontahedron, 3",
        "pentagonal-icositetrahedron, 2",
        "pentagonal-hexecontahedron, 2"
    })
    @Source(
            value = HAND,
            text = "the two tangents from a corner to a circle are equal: a segment is told by the corners at its "
                    + "base")
    void facesWithUnequalSidesAreCutIntoAsManyKindsOfSegmentAsTheyNeed(String name, int kinds) {
        assertEquals(kinds, Solids.solid(name).faceKinds().get(0).segments().size());
    }

    @ParameterizedTest
    @MethodSource("org.orbwright.solid.Solids#names")
    void scaleneSegmentsOfASolidComeInEqualNumbersOfBothHands(String name) {
        for (FaceKind kind : Solids.solid(name).faceKinds()) {
            for (SegmentKind segment : kind.segments()) {
                int mirrored = segment.symmetric() ? 0 : segment.count();
                assertEquals(mirrored, segment.mirroredCount(), name + " " + segment.segment());
            }
        }
    }

    /** A turn of a solid is fixed by where it takes one directed edge; only edges between the same faces can follow. */
    private static boolean someTurnMatchesMirrorImage(Solid solid) {
        List<Vector3D> image = Solids.corners(solid).stream()
                .map(v -> Vector3D.of(-v.getX(), v.getY(), v.getZ()))
                .toList();
        Edge first = solid.edges().get(0);
        Frame from = Frame.of(image.get(first.from()), image.get(first.to()));
        for (Edge edge : solid.edges()) {
            Vector3D start = Solids.corner(solid, edge.from());
            Vector3D end = Solids.corner(solid, edge.to());
            if (matches(image, from, Frame.of(start, end), solid)
                    || matches(image, from, Frame.of(end, start), solid)) {
                return true;
            }
        }
        return false;
    }

    private static boolean matches(List<Vector3D> image, Frame from, Frame to, Solid solid) {
        List<Vector3D> corners = Solids.corners(solid);
        return image.stream()
                .map(point -> to.place(from.measure(point)))
                .allMatch(point -> corners.stream().anyMatch(c -> c.distance(point) < SAME_POINT));
    }

    /** Right-handed axes: out through the edge, along it, and across. */
    private record Frame(Vector3D out, Vector3D along, Vector3D across) {
        static Frame of(Vector3D from, Vector3D to) {
            Vector3D along = to.subtract(from).normalize();
            Vector3D out = from.reject(along).normalize();
            return new Frame(out, along, out.cross(along));
        }

        Vector3D measure(Vector3D point) {
            return Vector3D.of(point.dot(out), point.dot(along), point.dot(across));
        }

        Vector3D place(Vector3D c) {
            return out.multiply(c.getX()).add(along.multiply(c.getY())).add(across.multiply(c.getZ()));
        }
    }
}
