package org.orbwright.band;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.orbwright.source.Kind.HAND;
import static org.orbwright.source.Kind.INVARIANT;
import static org.orbwright.source.Kind.LIBRARY;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.apache.commons.geometry.spherical.twod.ConvexArea2S;
import org.apache.commons.geometry.spherical.twod.GreatCircle;
import org.apache.commons.geometry.spherical.twod.GreatCircles;
import org.apache.commons.geometry.spherical.twod.Point2S;
import org.apache.commons.geometry.spherical.twod.RegionBSPTree2S;
import org.apache.commons.numbers.core.Precision;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.orbwright.fixture.SolidNames;
import org.orbwright.solid.Face;
import org.orbwright.solid.FaceKind;
import org.orbwright.solid.SegmentKind;
import org.orbwright.solid.Solid;
import org.orbwright.solid.SolidCatalogue;
import org.orbwright.source.Source;

/**
 * Whole segments, whole faces and whole solids on the sphere against Apache Commons Geometry's spherical regions, which
 * measure by the angles between great circles.
 */
@DisplayName("Whole segments against Apache Commons Geometry's spherical regions")
@Source(
        value = LIBRARY,
        text = "Apache Commons Geometry 1.0, spherical regions, which measure by the angles between great circles")
class WholeSegmentTest {
    private static final Precision.DoubleEquivalence PRECISION = Precision.doubleEquivalenceOfEpsilon(1e-12);
    private static final double EDGE = 64.0;
    /** The library adds angles of up to ten corners; each is good to 1e-15 of a radian or so. */
    private static final double LIBRARY_ACCURACY = 2e-14;

    static Stream<Solid> solids() {
        return SolidCatalogue.all().stream();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("names")
    void everyKindOfSegmentIsASphericalTriangle(String name) {
        Solid solid = SolidCatalogue.find(name).orElseThrow();
        double radius = 0.95 * solid.inradius() * EDGE;
        for (FaceKind kind : solid.faceKinds()) {
            for (SegmentKind segment : kind.segments()) {
                double library =
                        triangle(kind.distance(), segment.baseDistance(), segment.baseLeft(), segment.baseRight());
                double area = surface(kind, segment, radius).whole().visible();
                assertEquals(library, area / (radius * radius), LIBRARY_ACCURACY, kind.face() + segment.segment());
            }
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("names")
    void segmentsOfAFaceAddUpToItsSphericalPolygon(String name) {
        Solid solid = SolidCatalogue.find(name).orElseThrow();
        double radius = solid.inradius() * EDGE;
        for (FaceKind kind : solid.faceKinds()) {
            double sum = 0;
            for (SegmentKind segment : kind.segments()) {
                sum += segment.perFace()
                        * surface(kind, segment, radius).whole().visible();
            }
            assertEquals(polygon(solid, kind), sum / (radius * radius), LIBRARY_ACCURACY * kind.sides(), kind.face());
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("names")
    @Source(INVARIANT)
    void segmentsOfASolidAddUpToTheSphere(String name) {
        Solid solid = SolidCatalogue.find(name).orElseThrow();
        double radius = solid.inradius() * EDGE;
        double sum = 0;
        for (FaceKind kind : solid.faceKinds()) {
            for (SegmentKind segment : kind.segments()) {
                double area = surface(kind, segment, radius).whole().visible();
                sum += (segment.count() + segment.mirroredCount()) * area;
            }
        }
        double sphere = 4 * Math.PI * radius * radius;
        assertEquals(sphere, sum, 1e-12 * sphere);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("names")
    @Source(value = HAND, text = "Archimedes: a cap of the height k has the area 2 pi R k")
    void flatsReplaceTheCapsOfASphereThatIsLargerThanTheFaceDistance(String name) {
        Solid solid = SolidCatalogue.find(name).orElseThrow();
        double radius = (solid.inradius() + solid.midradius()) / 2 * EDGE;
        double expected = 4 * Math.PI * radius * radius;
        double sum = 0;
        for (FaceKind kind : solid.faceKinds()) {
            double height = kind.distance() * EDGE;
            if (radius > height) {
                double cap = 2 * Math.PI * radius * (radius - height);
                double disc = Math.PI * (radius * radius - height * height);
                expected -= kind.count() * (cap - disc);
            }
            for (SegmentKind segment : kind.segments()) {
                double area = surface(kind, segment, radius).whole().visible();
                sum += (segment.count() + segment.mirroredCount()) * area;
            }
        }
        assertEquals(expected, sum, 1e-12 * expected);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("names")
    @Source(INVARIANT)
    void bandsOfEverySegmentAddUpToIt(String name) {
        Solid solid = SolidCatalogue.find(name).orElseThrow();
        double radius = 0.98 * solid.midradius() * EDGE;
        for (FaceKind kind : solid.faceKinds()) {
            for (SegmentKind segment : kind.segments()) {
                SegmentSurface surface = surface(kind, segment, radius);
                double whole = surface.whole().visible();
                assertEquals(whole, sumOfBands(surface, segment, Math.toRadians(0)), 1e-12 * whole);
                assertEquals(whole, sumOfBands(surface, segment, Math.toRadians(37)), 1e-12 * whole);
                assertEquals(whole, sumOfBands(surface, segment, Math.toRadians(-90)), 1e-12 * whole);
            }
        }
    }

    @RepeatedTest(200)
    void randomSegmentIsASphericalTriangle(RepetitionInfo info) {
        Random random = new Random(info.getCurrentRepetition());
        double joint = 5 + 200 * random.nextDouble();
        double base = joint * (0.02 + 2 * random.nextDouble());
        double left = base * (0.02 + 3 * random.nextDouble());
        double right = base * (0.02 + 3 * random.nextDouble());
        double radius = joint * (0.05 + 0.95 * random.nextDouble());
        double area = new SegmentSurface(joint, joint, base, left, right, radius)
                .whole()
                .visible();
        assertEquals(triangle(joint, base, left, right), area / (radius * radius), LIBRARY_ACCURACY);
    }

    @RepeatedTest(20)
    void bandBetweenTwoTiltedSeamPlanesOfRandomSegmentsIsTheDifferenceOfRegions(RepetitionInfo info) {
        Random random = new Random(1000L + info.getCurrentRepetition());
        double joint = 50 + 50 * random.nextDouble();
        double base = joint * (0.2 + random.nextDouble());
        double inner = base * (0.2 + 0.6 * random.nextDouble());
        double left = base * (0.2 + random.nextDouble());
        double right = base * (0.2 + random.nextDouble());
        double library = difference(joint, base, inner, left, right);
        double outerArea = new SegmentSurface(joint, joint, base, left, right, joint)
                .whole()
                .visible();
        double innerArea = new SegmentSurface(joint, joint, inner, left * inner / base, right * inner / base, joint)
                .whole()
                .visible();
        assertEquals(library, (outerArea - innerArea) / (joint * joint), 2 * LIBRARY_ACCURACY);
    }

    static Stream<String> names() {
        return SolidNames.each();
    }

    private static SegmentSurface surface(FaceKind kind, SegmentKind segment, double radius) {
        double joint = kind.distance() * EDGE;
        return new SegmentSurface(
                joint,
                joint,
                segment.baseDistance() * EDGE,
                segment.baseLeft() * EDGE,
                segment.baseRight() * EDGE,
                radius);
    }

    private static double sumOfBands(SegmentSurface surface, SegmentKind segment, double bandAngle) {
        double size = EDGE * (segment.baseDistance() + segment.baseLeft() + segment.baseRight());
        double sum = 0;
        double below = 0;
        for (int i = -10; i <= 10; i++) {
            double next =
                    surface.below(BandLine.of((i + 0.5) * size / 10, bandAngle)).visible();
            sum += next - below;
            below = next;
        }
        return sum;
    }

    private static double triangle(double joint, double base, double left, double right) {
        return ConvexArea2S.fromVertexLoop(corners(joint, base, left, right), PRECISION)
                .getSize();
    }

    private static List<Point2S> corners(double joint, double base, double left, double right) {
        return List.of(
                Point2S.from(Vector3D.of(0, 0, joint)),
                Point2S.from(Vector3D.of(base, -left, joint)),
                Point2S.from(Vector3D.of(base, right, joint)));
    }

    /** The segment less the part of it beyond a great circle parallel to its base. */
    private static double difference(double joint, double base, double inner, double left, double right) {
        RegionBSPTree2S region = ConvexArea2S.fromVertexLoop(corners(joint, base, left, right), PRECISION)
                .toTree();
        GreatCircle inside = GreatCircles.fromPole(Vector3D.of(-joint, 0, inner), PRECISION);
        RegionBSPTree2S cut = ConvexArea2S.fromBounds(inside).toTree();
        region.difference(cut);
        return region.getSize();
    }

    private static double polygon(Solid solid, FaceKind kind) {
        Face face = solid.faces().stream()
                .filter(f -> f.kind().equals(kind.face()))
                .findFirst()
                .orElseThrow();
        List<Point2S> corners = new ArrayList<>();
        face.vertices()
                .forEach(v -> corners.add(Point2S.from(solid.vertices().get(v).vector())));
        return ConvexArea2S.fromVertexLoop(corners, PRECISION).getSize();
    }
}
