package org.orbwright.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.locationtech.jts.algorithm.Distance;
import org.locationtech.jts.geom.Coordinate;
import org.orbwright.design.BandSet;
import org.orbwright.design.Design;
import org.orbwright.design.Panel;
import org.orbwright.drawing.SegmentPatches.Patch;
import org.orbwright.fixture.Slow;
import org.orbwright.solid.Face;

@Slow
class SphereDrawingTest {
    private static final double AZIMUTH = 0.7;
    private static final double ELEVATION = 0.3;
    /** Coordinates are written to a thousandth of a millimetre. */
    private static final double WRITTEN = 0.001;

    static Stream<Design> designs() {
        return Stream.of(
                DrawnDesigns.example("dodecahedron-two-spheres"),
                DrawnDesigns.example("cube-with-chevrons"),
                DrawnDesigns.example("rhombic-triacontahedron"),
                DrawnDesigns.on("tetrahedron", 20, 40, 0, null));
    }

    private static double middle(Design design) {
        return design.sphereRadius() * (1 + Legend.MARGIN);
    }

    /** The bands on the sheet, without the boxes of the key. */
    private static List<List<Coordinate>> bands(Design design) {
        List<List<Coordinate>> parts = new ArrayList<>();
        for (Mark mark : SphereDrawing.draw(design, design.sphere(BandSet.UPRIGHT), AZIMUTH, ELEVATION, true)
                .marks()) {
            if (mark instanceof Area area) {
                DrawnPaths.parts(area.path()).stream()
                        .filter(part -> part.get(0).y < middle(design) + design.sphereRadius() + 1)
                        .forEach(parts::add);
            }
        }
        return parts;
    }

    @ParameterizedTest
    @MethodSource("designs")
    void drawsNothingOutsideTheRim(Design design) {
        double middle = middle(design);
        for (List<Coordinate> part : bands(design)) {
            for (Coordinate point : part) {
                double distance = Math.hypot(point.x - middle, point.y - middle);
                assertTrue(distance <= design.sphereRadius() + WRITTEN, "inside the rim: " + distance);
            }
        }
    }

    @ParameterizedTest
    @MethodSource("designs")
    void coversTheDiscOnce(Design design) {
        double area = bands(design).stream()
                .mapToDouble(part -> org.locationtech.jts.algorithm.Area.ofRing(part.toArray(new Coordinate[0])))
                .sum();
        double disc = Math.PI * design.sphereRadius() * design.sphereRadius();
        assertEquals(disc, area, 0.001 * disc);
    }

    @ParameterizedTest
    @MethodSource("designs")
    void drawsCurvesToWithinATwentiethOfAMillimetre(Design design) {
        List<Coordinate[]> drawn =
                bands(design).stream().map(p -> p.toArray(new Coordinate[0])).toList();
        double worst = 0;
        for (Coordinate exact : exactOutlines(design)) {
            double nearest = Double.POSITIVE_INFINITY;
            for (Coordinate[] line : drawn) {
                nearest = Math.min(nearest, Distance.pointToSegmentString(exact, line));
            }
            worst = Math.max(worst, nearest);
        }
        assertTrue(worst < 0.05, "largest distance of an exact point from what is drawn: " + worst);
    }

    /** Points of the visible great and small circles between the bands, straight from their definitions. */
    private static List<Coordinate> exactOutlines(Design design) {
        double radius = design.sphereRadius();
        SphereView view = new SphereView(AZIMUTH, ELEVATION, radius);
        List<Coordinate> points = new ArrayList<>();
        for (Face face : design.solid().faces()) {
            for (SegmentFrame frame : SegmentFrame.of(design, face)) {
                for (Point plan : outlines(frame.panel(), frame, radius)) {
                    Vector3D seen = view.project(frame.lift(plan, radius));
                    if (seen.getZ() > 0.01 * radius) {
                        points.add(new Coordinate(middle(design) + seen.getX(), middle(design) - seen.getY()));
                    }
                }
            }
        }
        return points;
    }

    private static List<Point> outlines(Panel panel, SegmentFrame frame, double radius) {
        List<Point> points = new ArrayList<>();
        double joint = panel.jointDistance();
        double base = frame.piece().base();
        for (int i = 0; i <= 12; i++) {
            // The seam's plane holds the solid's centre and the base: on the sphere z = g x / a.
            double slope =
                    -frame.piece().left() / base + i / 12.0 * frame.piece().baseLength() / base;
            double x = radius / Math.sqrt(1 + slope * slope + joint * joint / (base * base));
            points.add(new Point(x, slope * x));
        }
        for (Patch patch : new SegmentPatches(panel, frame.piece(), BandSet.UPRIGHT).onSphere(radius, 1e-5)) {
            List<Point> corners = patch.polygon().points();
            for (int i = 0; i < corners.size(); i++) {
                Point a = corners.get(i);
                Point b = corners.get((i + 1) % corners.size());
                if (Math.hypot(b.x() - a.x(), b.y() - a.y()) > radius / 20) {
                    points.add(new Point((a.x() + b.x()) / 2, (a.y() + b.y()) / 2));
                    points.add(new Point((2 * a.x() + b.x()) / 3, (2 * a.y() + b.y()) / 3));
                }
            }
        }
        return points;
    }

    /** The poles by the definition of azimuth and elevation, and numbers as the catalogue lists the faces. */
    @ParameterizedTest
    @MethodSource("org.orbwright.drawing.DrawnDesigns#solids")
    void numbersStandAtThePolesOfTheirPanels(String solid) {
        Design design = DrawnDesigns.on(solid, 0, 30, 0, null);
        Drawing drawing = SphereDrawing.draw(design, design.sphere(BandSet.UPRIGHT), AZIMUTH, ELEVATION, true);
        double letters = Legend.letters(drawing.width());
        List<Integer> numbered = new ArrayList<>();
        for (Mark mark : drawing.marks()) {
            if (!(mark instanceof Label label) || label.letters() != Letters.REVERSED) {
                continue;
            }
            Face face = design.solid().faces().get(Integer.parseInt(label.text()) - 1);
            Vector3D pole = seen(design.solid().normal(face)).multiply(design.sphereRadius());
            assertEquals(middle(design) + pole.getX(), label.x(), WRITTEN);
            assertEquals(middle(design) - pole.getY(), label.y() - 0.36 * label.size(), WRITTEN);
            double radius = label.size() / (label.text().length() > 2 ? 0.8 : 1.15);
            assertTrue(radius <= 0.3 * seenBase(design, face) + WRITTEN, "covers little of its panel");
            assertTrue(radius >= 0.55 * letters - WRITTEN, "can be read");
            numbered.add(Integer.valueOf(label.text()));
        }
        List<Integer> expected = new ArrayList<>();
        for (int i = 0; i < design.solid().faces().size(); i++) {
            if (0.3 * seenBase(design, design.solid().faces().get(i)) >= 0.55 * letters) {
                expected.add(i + 1);
            }
        }
        assertEquals(expected, numbered);
        assertTrue(numbered.size() >= 2, solid);
    }

    /** Right, up and towards the eye, which stands around the third axis and above the plane of the others. */
    private static Vector3D seen(Vector3D point) {
        double ahead = Math.cos(AZIMUTH) * point.getX() + Math.sin(AZIMUTH) * point.getY();
        return Vector3D.of(
                Math.cos(AZIMUTH) * point.getY() - Math.sin(AZIMUTH) * point.getX(),
                Math.cos(ELEVATION) * point.getZ() - Math.sin(ELEVATION) * ahead,
                Math.cos(ELEVATION) * ahead + Math.sin(ELEVATION) * point.getZ());
    }

    /** A face's base distance, shortened as it is seen. */
    private static double seenBase(Design design, Face face) {
        double base = design.facePanels().stream()
                .filter(panel -> panel.face().equals(face.kind()))
                .mapToDouble(Panel::baseDistance)
                .findFirst()
                .orElseThrow();
        return base * seen(design.solid().normal(face)).getZ();
    }

    /** The disc of the panel that faces the eye stands in the middle of the sphere. */
    @ParameterizedTest
    @MethodSource("org.orbwright.drawing.DrawnDesigns#solids")
    void showsThePanelThatIsAskedFor(String solid) {
        Design design = DrawnDesigns.on(solid, 0, 30, 0, null);
        int last = design.solid().faces().size();
        for (int panel : new int[] {1, 2, last}) {
            Drawing drawing = SphereDrawing.draw(
                    design,
                    design.sphere(BandSet.UPRIGHT),
                    new SphereLook(0, 0, true, false).facing(design.solid(), panel));
            Label number = drawing.marks().stream()
                    .filter(mark -> mark instanceof Label label
                            && label.letters() == Letters.REVERSED
                            && label.text().equals(String.valueOf(panel)))
                    .map(Label.class::cast)
                    .findFirst()
                    .orElseThrow();
            assertEquals(middle(design), number.x(), WRITTEN);
            assertEquals(middle(design), number.y() - 0.36 * number.size(), WRITTEN);
        }
    }
}
