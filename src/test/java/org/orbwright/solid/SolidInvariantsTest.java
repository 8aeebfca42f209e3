package org.orbwright.solid;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.orbwright.solid.Approximately.assertClose;
import static org.orbwright.source.Kind.CONTRACT;
import static org.orbwright.source.Kind.HAND;
import static org.orbwright.source.Kind.INVARIANT;
import static org.orbwright.source.Kind.ORACLE;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.orbwright.source.Source;

/** What holds for every solid, recomputed here from nothing but the coordinates of its corners. */
@Source(value = ORACLE, text = "vector geometry from nothing but the coordinates of the corners")
class SolidInvariantsTest {
    private static final String ALL = "org.orbwright.solid.Solids#names";

    @ParameterizedTest
    @MethodSource(ALL)
    @DisplayName("corners + faces = edges + 2 (Euler)")
    @Source(INVARIANT)
    void eulersFormulaHolds(String name) {
        Solid solid = Solids.solid(name);
        assertEquals(
                solid.edges().size() + 2,
                solid.vertices().size() + solid.faces().size());
    }

    @ParameterizedTest
    @MethodSource(ALL)
    void everyCornerOfAFaceLiesInItsPlaneAndAllOthersBelow(String name) {
        Solid solid = Solids.solid(name);
        for (int f = 0; f < solid.faces().size(); f++) {
            Face face = solid.faces().get(f);
            Vector3D normal = Solids.normal(solid, f);
            double distance = Solids.kind(solid, face.kind()).distance();
            for (int v = 0; v < solid.vertices().size(); v++) {
                double height = normal.dot(Solids.corner(solid, v));
                if (face.vertices().contains(v)) {
                    assertClose(distance, height, "face " + f + ", corner " + v);
                } else {
                    assertTrue(height < distance - 0.01, "face " + f + ", corner " + v);
                }
            }
        }
    }

    @ParameterizedTest
    @MethodSource(ALL)
    @Source(INVARIANT)
    void everyEdgeStandsOnceBetweenTwoFacesThatRunAlongItOppositely(String name) {
        Solid solid = Solids.solid(name);
        Set<List<Integer>> seen = new HashSet<>();
        for (Edge edge : solid.edges()) {
            assertTrue(seen.add(List.of(edge.from(), edge.to())), "edge listed twice: " + edge);
            assertTrue(follows(solid.faces().get(edge.face()), edge.from(), edge.to()), edge.toString());
            assertTrue(follows(solid.faces().get(edge.neighbour()), edge.to(), edge.from()), edge.toString());
        }
    }

    /** So a place in the list, or every other one, means the same segment in every panel. */
    @ParameterizedTest
    @MethodSource(ALL)
    @Source(CONTRACT)
    void facesOfAKindListTheirSegmentsFromTheSameOneOn(String name) {
        Solid solid = Solids.solid(name);
        for (FaceKind kind : solid.faceKinds()) {
            List<Face> faces = solid.faces().stream()
                    .filter(face -> face.kind().equals(kind.face()))
                    .toList();
            List<Face.Part> first = faces.get(0).segments();
            List<Face.Part> otherHand = new ArrayList<>();
            for (Face.Part part : first) {
                otherHand.add(0, new Face.Part(part.segment(), !part.mirrored()));
            }
            for (Face face : faces) {
                assertEquals(face.mirrored() ? otherHand : first, face.segments());
            }
        }
    }

    @ParameterizedTest
    @MethodSource(ALL)
    @Source(CONTRACT)
    void shortestEdgeIsOne(String name) {
        Solid solid = Solids.solid(name);
        assertClose(
                1,
                solid.edges().stream().mapToDouble(e -> length(solid, e)).min().orElseThrow(),
                "edge");
    }

    @ParameterizedTest
    @MethodSource(ALL)
    void everyEdgeTouchesTheMidsphere(String name) {
        Solid solid = Solids.solid(name);
        for (Edge edge : solid.edges()) {
            Vector3D from = Solids.corner(solid, edge.from());
            Vector3D to = Solids.corner(solid, edge.to());
            double distance = from.cross(to).norm() / from.distance(to);
            assertClose(solid.midradius(), distance, edge.toString());
        }
    }

    @ParameterizedTest
    @MethodSource("org.orbwright.solid.Solids#regularFaced")
    void everyEdgeOfAPlatonicOrArchimedeanSolidIsOne(String name) {
        Solid solid = Solids.solid(name);
        for (Edge edge : solid.edges()) {
            assertClose(1, length(solid, edge), edge.toString());
        }
    }

    @ParameterizedTest
    @MethodSource("org.orbwright.solid.Solids#regularFaced")
    void everyFaceOfAPlatonicOrArchimedeanSolidIsRegular(String name) {
        Solid solid = Solids.solid(name);
        for (Face face : solid.faces()) {
            List<Vector3D> corners = Solids.corners(solid, face);
            int n = corners.size();
            Vector3D centre =
                    corners.stream().reduce(Vector3D.ZERO, Vector3D::add).multiply(1.0 / n);
            for (int i = 0; i < n; i++) {
                assertClose(1, corners.get(i).distance(corners.get((i + 1) % n)), "side");
                assertClose(0.5 / Math.sin(Math.PI / n), corners.get(i).distance(centre), "corner from centre");
            }
        }
    }

    @ParameterizedTest
    @MethodSource("org.orbwright.solid.Solids#regularFaced")
    @Source(value = HAND, text = "a regular polygon of side 1 has the apothem 1 / (2 tan(180 / n))")
    void everyFaceOfAPlatonicOrArchimedeanSolidHasOneSymmetricKindOfSegment(String name) {
        for (FaceKind kind : Solids.solid(name).faceKinds()) {
            assertEquals(1, kind.segments().size());
            SegmentKind segment = kind.segments().get(0);
            assertTrue(segment.symmetric());
            assertEquals(0, segment.mirroredCount());
            assertEquals(kind.sides(), segment.perFace());
            assertEquals(kind.sides() * kind.count(), segment.count());
            assertClose(0.5 / Math.tan(Math.PI / kind.sides()), segment.baseDistance(), "base distance");
        }
    }

    @ParameterizedTest
    @MethodSource(ALL)
    @DisplayName("the solid angles of all segments add up to 4 pi (Van Oosterom and Strackee, 1983)")
    @Source(INVARIANT)
    void solidAnglesOfAllSegmentsAddUpToTheWholeSphere(String name) {
        double sum = 0;
        for (FaceKind kind : Solids.solid(name).faceKinds()) {
            for (SegmentKind segment : kind.segments()) {
                sum += (segment.count() + segment.mirroredCount()) * solidAngle(kind, segment);
            }
        }
        assertClose(4 * Math.PI, sum, "solid angle");
    }

    @ParameterizedTest
    @MethodSource(ALL)
    void bevelsAtEveryEdgeAddUpToTheAngleBetweenTheFaceNormals(String name) {
        Solid solid = Solids.solid(name);
        for (Edge edge : solid.edges()) {
            Vector3D one = Solids.normal(solid, edge.face());
            Vector3D other = Solids.normal(solid, edge.neighbour());
            double dihedral = Math.PI - Math.atan2(one.cross(other).norm(), one.dot(other));
            EdgeKind kind = kindOf(solid, edge);
            assertClose(dihedral, kind.bevel() + kind.neighbourBevel(), edge.toString());
            assertClose(dihedral, kind.dihedral(), edge.toString());
        }
    }

    @ParameterizedTest
    @MethodSource(ALL)
    void bevelIsTheAngleBetweenTheFaceAndTheSeamPlaneThroughTheCentre(String name) {
        Solid solid = Solids.solid(name);
        for (Edge edge : solid.edges()) {
            Vector3D seam = Solids.corner(solid, edge.from()).cross(Solids.corner(solid, edge.to()));
            Vector3D face = Solids.normal(solid, edge.face());
            double bevel = Math.atan2(seam.cross(face).norm(), Math.abs(seam.dot(face)));
            EdgeKind kind = kindOf(solid, edge);
            boolean first = solid.faces().get(edge.face()).kind().equals(kind.face());
            assertClose(bevel, first ? kind.bevel() : kind.neighbourBevel(), edge.toString());
        }
    }

    @ParameterizedTest
    @MethodSource(ALL)
    void volumeIsTheSumOfTheTetrahedraOverTheTriangulatedFaces(String name) {
        Solid solid = Solids.solid(name);
        double sixfold = 0;
        for (Face face : solid.faces()) {
            List<Vector3D> corners = Solids.corners(solid, face);
            for (int i = 1; i + 1 < corners.size(); i++) {
                sixfold += corners.get(0).dot(corners.get(i).cross(corners.get(i + 1)));
            }
        }
        assertClose(sixfold / 6, solid.volume(), "volume");
    }

    @ParameterizedTest
    @MethodSource(ALL)
    void areaIsTheSumOfTheTriangulatedFaces(String name) {
        Solid solid = Solids.solid(name);
        double sum = 0;
        for (Face face : solid.faces()) {
            double area = area(Solids.corners(solid, face));
            assertClose(area, Solids.kind(solid, face.kind()).area(), "face");
            sum += area;
        }
        assertClose(sum, solid.surfaceArea(), "surface");
    }

    @ParameterizedTest
    @MethodSource(ALL)
    void inradiusAndCircumradiusAreThoseOfTheNearestFaceAndTheFarthestCorner(String name) {
        Solid solid = Solids.solid(name);
        double farthest =
                Solids.corners(solid).stream().mapToDouble(Vector3D::norm).max().orElseThrow();
        double nearest = Double.POSITIVE_INFINITY;
        for (Face face : solid.faces()) {
            int f = solid.faces().indexOf(face);
            nearest = Math.min(
                    nearest,
                    Solids.normal(solid, f)
                            .dot(Solids.corner(solid, face.vertices().get(0))));
        }
        assertClose(farthest, solid.circumradius(), "circumradius");
        assertClose(nearest, solid.inradius(), "inradius");
    }

    @ParameterizedTest
    @MethodSource(ALL)
    void outlinesOfTheSegmentsRebuildEveryFace(String name) {
        Solid solid = Solids.solid(name);
        for (int f = 0; f < solid.faces().size(); f++) {
            Face face = solid.faces().get(f);
            FaceKind kind = Solids.kind(solid, face.kind());
            Vector3D foot = Solids.normal(solid, f).multiply(kind.distance());
            List<Vector3D> corners = Solids.corners(solid, face);
            assertEquals(corners.size(), face.segments().size());
            double area = 0;
            for (int i = 0; i < corners.size(); i++) {
                SegmentKind segment =
                        Solids.segment(kind, face.segments().get(i).segment());
                boolean mirrored = face.segments().get(i).mirrored();
                Vector3D from = corners.get(i);
                Vector3D to = corners.get((i + 1) % corners.size());
                Vector3D along = to.subtract(from).normalize();
                double left = foot.subtract(from).dot(along);
                assertClose(left, mirrored ? segment.baseRight() : segment.baseLeft(), "left of the foot");
                assertClose(from.distance(to), segment.baseLeft() + segment.baseRight(), "base length");
                assertClose(foot.subtract(from).reject(along).norm(), segment.baseDistance(), "base distance");
                area += segment.baseDistance() * (segment.baseLeft() + segment.baseRight()) / 2;
            }
            assertClose(area(corners), area, "area of face " + f);
        }
    }

    @ParameterizedTest
    @MethodSource(ALL)
    @Source(INVARIANT)
    void countsOfSegmentsAreThoseFoundOnTheFaces(String name) {
        Solid solid = Solids.solid(name);
        for (FaceKind kind : solid.faceKinds()) {
            for (SegmentKind segment : kind.segments()) {
                assertEquals(segment.count(), parts(solid, kind, segment, false), segment.segment());
                assertEquals(segment.mirroredCount(), parts(solid, kind, segment, true), segment.segment());
                assertEquals(kind.count() * segment.perFace(), segment.count() + segment.mirroredCount());
            }
            assertEquals(
                    kind.sides(),
                    kind.segments().stream().mapToInt(SegmentKind::perFace).sum());
        }
    }

    @ParameterizedTest
    @MethodSource(ALL)
    @Source(value = HAND, text = "Pythagoras in the right triangles centre, foot, base and corner")
    void seamAndCornerRadiiOfSegmentsAreThoseOfTheirRightTriangles(String name) {
        Solid solid = Solids.solid(name);
        for (FaceKind kind : solid.faceKinds()) {
            for (SegmentKind s : kind.segments()) {
                assertClose(Math.hypot(s.baseDistance(), kind.distance()), s.seamRadius(), "seam radius");
                assertClose(Math.hypot(s.seamRadius(), s.baseLeft()), s.leftCornerRadius(), "left corner");
                assertClose(Math.hypot(s.seamRadius(), s.baseRight()), s.rightCornerRadius(), "right corner");
                assertTrue(s.baseLeft() <= s.baseRight());
            }
        }
    }

    @ParameterizedTest
    @MethodSource(ALL)
    void faceHasAnOppositeOnlyIfAParallelFaceOfItsKindExists(String name) {
        Solid solid = Solids.solid(name);
        for (FaceKind kind : solid.faceKinds()) {
            List<Vector3D> normals = solid.faces().stream()
                    .filter(face -> face.kind().equals(kind.face()))
                    .map(face -> Solids.normal(solid, solid.faces().indexOf(face)))
                    .toList();
            boolean all = normals.stream()
                    .allMatch(n -> normals.stream().anyMatch(m -> m.add(n).norm() < Approximately.SOLID_ACCURACY * 10));
            assertEquals(all, kind.opposite(), kind.face());
        }
    }

    private static long parts(Solid solid, FaceKind kind, SegmentKind segment, boolean mirrored) {
        return solid.faces().stream()
                .filter(face -> face.kind().equals(kind.face()))
                .flatMap(face -> face.segments().stream())
                .filter(part -> part.segment().equals(segment.segment()) && part.mirrored() == mirrored)
                .count();
    }

    private static boolean follows(Face face, int from, int to) {
        int at = face.vertices().indexOf(from);
        return at >= 0 && face.vertices().get((at + 1) % face.vertices().size()) == to;
    }

    private static double length(Solid solid, Edge edge) {
        return Solids.corner(solid, edge.from()).distance(Solids.corner(solid, edge.to()));
    }

    private static double area(List<Vector3D> corners) {
        Vector3D twice = Vector3D.ZERO;
        for (int i = 0; i < corners.size(); i++) {
            twice = twice.add(corners.get(i).cross(corners.get((i + 1) % corners.size())));
        }
        return twice.norm() / 2;
    }

    private static EdgeKind kindOf(Solid solid, Edge edge) {
        String one = solid.faces().get(edge.face()).kind();
        String other = solid.faces().get(edge.neighbour()).kind();
        Set<String> faces = new HashSet<>(List.of(one, other));
        return solid.edgeKinds().stream()
                .filter(kind -> faces.equals(new HashSet<>(List.of(kind.face(), kind.neighbour()))))
                .filter(kind -> Math.abs(kind.length() - length(solid, edge)) < 1e-9)
                .findFirst()
                .orElseThrow(() -> new AssertionError("no kind for " + edge));
    }

    /**
     * Solid angle of the triangle (0, 0, h), (a, -l, h), (a, r, h) seen from the origin: A. Van Oosterom and J.
     * Strackee, The solid angle of a plane triangle, IEEE Transactions on Biomedical Engineering 30 (1983).
     */
    private static double solidAngle(FaceKind kind, SegmentKind segment) {
        Vector3D tip = Vector3D.of(0, 0, kind.distance());
        Vector3D left = Vector3D.of(segment.baseDistance(), -segment.baseLeft(), kind.distance());
        Vector3D right = Vector3D.of(segment.baseDistance(), segment.baseRight(), kind.distance());
        double a = tip.norm();
        double b = left.norm();
        double c = right.norm();
        double numerator = Math.abs(tip.dot(left.cross(right)));
        double denominator = a * b * c + tip.dot(left) * c + tip.dot(right) * b + left.dot(right) * a;
        return 2 * Math.atan2(numerator, denominator);
    }
}
