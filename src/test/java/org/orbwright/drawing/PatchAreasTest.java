package org.orbwright.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.orbwright.band.BandCalculator;
import org.orbwright.band.BandSurvival.BandView;
import org.orbwright.band.BandSurvival.SegmentBands;
import org.orbwright.design.BandSet;
import org.orbwright.design.Design;
import org.orbwright.design.Panel;
import org.orbwright.design.Piece;
import org.orbwright.drawing.SegmentPatches.Patch;
import org.orbwright.fixture.Slow;

/** What is drawn has the areas that are computed; JTS (Eclipse, 1.20) measures the drawn polygons. */
@Slow
class PatchAreasTest {
    private static final GeometryFactory JTS = new GeometryFactory();
    /** Of the number that is agreed with. */
    private static final double DRAWN = 0.001;
    /** What is next to nothing, as a share of the segment, has no thousandth that could be drawn. */
    private static final double NEXT_TO_NOTHING = 1e-5;

    private static final double FINE = 1e-4;

    static Stream<Design> designs() {
        return Stream.concat(
                DrawnDesigns.examples().map(DrawnDesigns::example),
                Stream.of(
                        DrawnDesigns.on("disdyakis-triacontahedron", 30, 20, 0, null),
                        DrawnDesigns.on("pentagonal-icositetrahedron", -50, 20, 0, null),
                        DrawnDesigns.on("dodecahedron", 0, 20, 0, 306.0),
                        DrawnDesigns.on("snub-dodecahedron", 90, 20, 2, null)));
    }

    /** One segment with its drawn patches and computed bands. */
    private interface Check {
        void check(Panel panel, Piece piece, SegmentPatches patches, List<BandView> bands);
    }

    private static void forEachSegment(Design design, Check check) {
        for (int i = 0; i < design.panels().size(); i++) {
            Panel panel = design.panels().get(i);
            List<SegmentBands> segments =
                    BandCalculator.calculate(design, 2).faces().get(i).segments();
            for (int k = 0; k < segments.size(); k++) {
                Piece piece = panel.pieces().get(k);
                check.check(
                        panel,
                        piece,
                        new SegmentPatches(panel, piece, BandSet.UPRIGHT),
                        segments.get(k).upright());
                if (segments.get(k).inverted() != null) {
                    check.check(
                            panel,
                            piece,
                            new SegmentPatches(panel, piece, BandSet.INVERTED),
                            segments.get(k).inverted());
                }
            }
        }
    }

    private static PlanPolygon drawn(List<Patch> patches, BandView band) {
        return patches.stream()
                .filter(patch -> patch.layer().number() == band.band())
                .map(Patch::polygon)
                .findFirst()
                .orElse(new PlanPolygon(List.of()));
    }

    @ParameterizedTest
    @MethodSource("designs")
    void flatPatchesHaveTheFlatAreas(Design design) {
        forEachSegment(design, (panel, piece, patches, bands) -> {
            for (BandView band : bands) {
                PlanPolygon polygon = drawn(patches.flat(), band);
                assertEquals(band.flatArea(), polygon.area(), 1e-9 * piece.area());
            }
        });
    }

    @ParameterizedTest
    @MethodSource("designs")
    void patchesSeenSquareToThePanelHaveWhatSurvives(Design design) {
        forEachSegment(design, (panel, piece, patches, bands) -> {
            List<Patch> fine = patches.onSphere(design.sphereRadius(), FINE);
            List<Patch> asDrawn = patches.onSphere(design.sphereRadius(), Flattening.TOLERANCE);
            for (BandView band : bands) {
                double survives = band.survival() * band.flatArea();
                assertEquals(survives, drawn(fine, band).area(), tolerance(survives, piece));
                assertEquals(survives, drawn(asDrawn, band).area(), DRAWN * piece.area());
            }
        });
    }

    @ParameterizedTest
    @MethodSource("designs")
    void liftedPatchesHaveTheAreasOnTheSphere(Design design) {
        forEachSegment(design, (panel, piece, patches, bands) -> {
            List<Patch> fine = patches.onSphere(design.sphereRadius(), FINE);
            for (BandView band : bands) {
                double area = lifted(design, panel, piece, drawn(fine, band));
                assertEquals(band.sphereArea(), area, tolerance(band.sphereArea(), piece));
            }
        });
    }

    private static double tolerance(double value, Piece piece) {
        return Math.max(DRAWN * value, NEXT_TO_NOTHING * piece.area());
    }

    /** A fan of triangles, each split until it is small, with its corners on the finished surface. */
    private static double lifted(Design design, Panel panel, Piece piece, PlanPolygon polygon) {
        SegmentFrame frame =
                new SegmentFrame(panel, piece, Vector3D.Unit.PLUS_X, Vector3D.Unit.PLUS_Y, Vector3D.Unit.PLUS_Z);
        double area = 0;
        for (int i = 1; i + 1 < polygon.points().size(); i++) {
            area += triangle(
                    design,
                    frame,
                    polygon.points().get(0),
                    polygon.points().get(i),
                    polygon.points().get(i + 1));
        }
        return area;
    }

    private static double triangle(Design design, SegmentFrame frame, Point a, Point b, Point c) {
        double radius = design.sphereRadius();
        Vector3D liftedA = frame.lift(a, radius);
        Vector3D liftedB = frame.lift(b, radius);
        Vector3D liftedC = frame.lift(c, radius);
        double ab = liftedA.distance(liftedB);
        double bc = liftedB.distance(liftedC);
        double ca = liftedC.distance(liftedA);
        double longest = Math.max(ab, Math.max(bc, ca));
        if (longest < radius / 100) {
            return small(liftedA, liftedB, liftedC, frame.panel().faceDistance(), radius);
        }
        if (longest == ab) {
            Point middle = middle(a, b);
            return triangle(design, frame, a, middle, c) + triangle(design, frame, middle, b, c);
        }
        if (longest == bc) {
            Point middle = middle(b, c);
            return triangle(design, frame, b, middle, a) + triangle(design, frame, middle, c, a);
        }
        Point middle = middle(c, a);
        return triangle(design, frame, c, middle, b) + triangle(design, frame, middle, a, b);
    }

    /** A flat triangle on the flat, else one between great circles (F. Eriksson, Mathematics Magazine 63, 1990). */
    private static double small(Vector3D a, Vector3D b, Vector3D c, double face, double radius) {
        if (a.getZ() >= face && b.getZ() >= face && c.getZ() >= face) {
            return b.subtract(a).cross(c.subtract(a)).norm() / 2;
        }
        Vector3D u = a.normalize();
        Vector3D v = b.normalize();
        Vector3D w = c.normalize();
        double volume = Math.abs(u.dot(v.cross(w)));
        return 2 * radius * radius * Math.atan2(volume, 1 + u.dot(v) + v.dot(w) + w.dot(u));
    }

    private static Point middle(Point a, Point b) {
        return new Point((a.x() + b.x()) / 2, (a.y() + b.y()) / 2);
    }

    @ParameterizedTest
    @MethodSource("designs")
    void patchesAreValidAndCoverTheSegmentOnce(Design design) {
        forEachSegment(design, (panel, piece, patches, bands) -> {
            assertEquals(piece.area(), covered(patches.flat()), 1e-6 * piece.area());
            List<Patch> left = patches.onSphere(design.sphereRadius(), Flattening.TOLERANCE);
            double whole =
                    left.stream().mapToDouble(patch -> patch.polygon().area()).sum();
            assertEquals(whole, covered(left), 1e-6 * piece.area());
        });
    }

    /** Area of the union; each polygon is valid and measured alike. */
    private static double covered(List<Patch> patches) {
        Geometry union = JTS.createPolygon();
        for (Patch patch : patches) {
            Polygon polygon = jts(patch.polygon());
            assertTrue(
                    polygon.isValid(), "valid polygon of band " + patch.layer().number());
            assertEquals(polygon.getArea(), patch.polygon().area(), 1e-9 * Math.max(1, polygon.getArea()));
            union = union.union(polygon);
        }
        return union.getArea();
    }

    private static Polygon jts(PlanPolygon polygon) {
        List<Coordinate> ring = new ArrayList<>();
        polygon.points().forEach(point -> ring.add(new Coordinate(point.x(), point.y())));
        ring.add(ring.get(0));
        return JTS.createPolygon(ring.toArray(new Coordinate[0]));
    }
}
