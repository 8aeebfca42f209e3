package org.orbwright.solid;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.orbwright.solid.Approximately.assertClose;
import static org.orbwright.source.Kind.INVARIANT;

import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.orbwright.source.Source;

/** A solid and its dual: corners for faces, faces for corners, edges across edges. */
@Source(INVARIANT)
class DualityTest {
    private static final String ALL = "org.orbwright.solid.Solids#names";

    @ParameterizedTest
    @MethodSource(ALL)
    void dualOfTheDualIsTheSolid(String name) {
        Solid solid = Solids.solid(name);
        assertEquals(name, Solids.solid(solid.dual()).dual());
        assertEquals(solid.chiral(), Solids.solid(solid.dual()).chiral());
    }

    @ParameterizedTest
    @MethodSource(ALL)
    void dualHasAsManyCornersAsTheSolidHasFacesAndAsManyEdges(String name) {
        Solid solid = Solids.solid(name);
        Solid dual = Solids.solid(solid.dual());
        assertEquals(solid.faces().size(), dual.vertices().size());
        assertEquals(solid.vertices().size(), dual.faces().size());
        assertEquals(solid.edges().size(), dual.edges().size());
    }

    @ParameterizedTest
    @MethodSource(ALL)
    void cornersWhereNFacesMeetAreAsManyAsTheDualsFacesWithNSides(String name) {
        Solid solid = Solids.solid(name);
        assertEquals(
                sorted(Solids.solid(solid.dual()).faces().stream()
                        .map(f -> f.vertices().size())
                        .toList()),
                sorted(IntStream.range(0, solid.vertices().size())
                        .mapToObj(v -> facesAt(solid, v))
                        .toList()));
    }

    @ParameterizedTest
    @MethodSource(ALL)
    @DisplayName("poles of the faces in the midsphere are as far from the centre as the corners of the dual")
    void polesOfTheFacesAreTheCornersOfTheDual(String name) {
        Solid solid = Solids.solid(name);
        Solid dual = Solids.solid(solid.dual());
        double scale = dual.midradius() / solid.midradius();
        List<Double> poles =
                radii(poles(solid).stream().map(p -> p.multiply(scale)).toList());
        List<Double> corners = radii(Solids.corners(dual));
        for (int i = 0; i < poles.size(); i++) {
            assertClose(corners.get(i), poles.get(i), "corner radius");
        }
    }

    @ParameterizedTest
    @MethodSource(ALL)
    void edgesOfTheDualAreAsLongAsTheLinesBetweenThePolesOfNeighbours(String name) {
        Solid solid = Solids.solid(name);
        Solid dual = Solids.solid(solid.dual());
        double scale = dual.midradius() / solid.midradius();
        List<Vector3D> poles = poles(solid);
        List<Double> expected = solid.edges().stream()
                .map(e -> scale * poles.get(e.face()).distance(poles.get(e.neighbour())))
                .sorted()
                .toList();
        List<Double> actual = dual.edges().stream()
                .map(e -> Solids.corner(dual, e.from()).distance(Solids.corner(dual, e.to())))
                .sorted()
                .toList();
        for (int i = 0; i < expected.size(); i++) {
            assertClose(expected.get(i), actual.get(i), "edge");
        }
    }

    @ParameterizedTest
    @MethodSource(ALL)
    void edgeAndItsDualCrossSquarelyOnTheMidsphere(String name) {
        Solid solid = Solids.solid(name);
        List<Vector3D> poles = poles(solid);
        for (Edge edge : solid.edges()) {
            Vector3D from = Solids.corner(solid, edge.from());
            Vector3D along = Solids.corner(solid, edge.to()).subtract(from).normalize();
            Vector3D across = poles.get(edge.neighbour()).subtract(poles.get(edge.face()));
            Vector3D foot = from.reject(along);
            Vector3D dualFoot = poles.get(edge.face()).reject(across);
            assertClose(0, along.dot(across.normalize()), "cosine");
            assertClose(0, foot.distance(dualFoot), "distance of the two points of contact");
            assertClose(solid.midradius(), dualFoot.norm(), "midsphere");
        }
    }

    @ParameterizedTest
    @MethodSource(ALL)
    void reciprocationTwiceGivesTheSameCorners(String name) {
        Solid solid = Solids.solid(name);
        Polyhedron original = new Polyhedron(
                Solids.corners(solid),
                solid.faces().stream().map(Face::vertices).toList());
        Polyhedron dual = original.dual(solid.midradius());
        Polyhedron twice = dual.dual(Solids.solid(solid.dual()).midradius());
        assertEquals(original.vertices().size(), twice.vertices().size());
        for (Vector3D corner : original.vertices()) {
            assertTrue(twice.vertices().stream().anyMatch(v -> v.distance(corner) < 1e-12), corner.toString());
        }
    }

    private static List<Vector3D> poles(Solid solid) {
        double square = solid.midradius() * solid.midradius();
        return IntStream.range(0, solid.faces().size())
                .mapToObj(f -> {
                    Vector3D normal = Solids.normal(solid, f);
                    Vector3D corner =
                            Solids.corner(solid, solid.faces().get(f).vertices().get(0));
                    return normal.multiply(square / normal.dot(corner));
                })
                .toList();
    }

    private static List<Double> radii(List<Vector3D> points) {
        return points.stream().map(Vector3D::norm).sorted().toList();
    }

    private static int facesAt(Solid solid, int corner) {
        return (int) solid.faces().stream()
                .filter(f -> f.vertices().contains(corner))
                .count();
    }

    private static List<Integer> sorted(List<Integer> numbers) {
        return numbers.stream().sorted().toList();
    }
}
