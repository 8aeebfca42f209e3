package org.orbwright.band;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.orbwright.source.Kind.CONTRACT;
import static org.orbwright.source.Kind.HAND;
import static org.orbwright.source.Kind.INVARIANT;
import static org.orbwright.source.Kind.ORACLE;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegrator;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegratorFactory;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.orbwright.band.BandSurvival.BandView;
import org.orbwright.band.BandSurvival.FaceBands;
import org.orbwright.band.BandSurvival.SegmentBands;
import org.orbwright.band.BandSurvival.SpeciesShare;
import org.orbwright.band.BandSurvival.SphereShares;
import org.orbwright.design.Design;
import org.orbwright.design.DesignRequest.BandRequest;
import org.orbwright.design.DesignRequest.LaminationRequest;
import org.orbwright.design.Sets;
import org.orbwright.design.SphereSet;
import org.orbwright.fixture.Designs;
import org.orbwright.solid.Solid;
import org.orbwright.solid.SolidCatalogue;
import org.orbwright.source.Source;

@Source(INVARIANT)
class BandCalculatorTest {
    private static final List<BandRequest> BANDS = Designs.widths(2.5, 4.0, 3.0, null);
    private static final double[] ANGLES = {0, 30, -52, 90};

    static List<Solid> solids() {
        return SolidCatalogue.all();
    }

    private static BandSurvival bands(Designs design) {
        return BandCalculator.calculate(design.build(), 9);
    }

    private static SegmentBands first(Designs design) {
        return bands(design).faces().get(0).segments().get(0);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("solids")
    void theBandsOfAllSegmentsCoverTheSphere(Solid solid) {
        for (double angle : ANGLES) {
            Design design = Designs.of(solid.name()).bands(angle, BANDS).build();
            double sphere = 4 * Math.PI * Math.pow(design.sphereRadius(), 2);
            double upright = 0;
            double inverted = 0;
            for (FaceBands face : BandCalculator.calculate(design, 9).faces()) {
                for (SegmentBands segment : face.segments()) {
                    upright += segment.perSphere() * sum(segment.upright());
                    inverted += segment.perSphere() * sum(segment.inverted());
                }
            }
            assertEquals(sphere, upright, 1e-11 * sphere);
            assertEquals(sphere, inverted, 1e-11 * sphere);
        }
    }

    private static double sum(List<BandView> views) {
        return views.stream().mapToDouble(BandView::sphereArea).sum();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("solids")
    void sharesAddUpToOne(Solid solid) {
        for (double angle : ANGLES) {
            BandSurvival bands = bands(Designs.of(solid.name()).bands(angle, BANDS));
            double shares = bands.faces().stream()
                    .flatMap(f -> f.segments().stream())
                    .flatMap(s -> s.upright().stream())
                    .mapToDouble(BandView::shareOfSphere)
                    .sum();
            assertEquals(1, shares, 1e-12);
            for (SphereShares sphere : bands.spheres()) {
                assertEquals(
                        1,
                        sphere.species().stream()
                                .mapToDouble(SpeciesShare::share)
                                .sum(),
                        1e-12);
            }
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("solids")
    void survivalIsAShareAndNoBandIsNegative(Solid solid) {
        for (double angle : ANGLES) {
            for (FaceBands face :
                    bands(Designs.of(solid.name()).bands(angle, BANDS)).faces()) {
                for (SegmentBands segment : face.segments()) {
                    for (BandView view : segment.upright()) {
                        assertTrue(view.survival() >= 0 && view.survival() <= 1);
                        assertTrue(view.flatArea() >= 0 && view.sphereArea() >= 0);
                        assertTrue(view.sphereArea() <= segment.sphereArea() * (1 + 1e-12));
                    }
                    double flat = segment.upright().stream()
                            .mapToDouble(BandView::flatArea)
                            .sum();
                    assertEquals(segment.flatArea(), flat, 1e-12 * flat);
                }
            }
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("solids")
    void invertedIsUprightOfTheReversedBands(Solid solid) {
        for (double angle : ANGLES) {
            // Without a rest, bands of a given width stay the same when they are listed the other way round.
            Designs design = Designs.of(solid.name()).bands(angle, BANDS);
            List<Designs> both = bothWays(design, angle);
            BandSurvival straight = bands(both.get(0));
            BandSurvival reversed = bands(both.get(1));
            for (int i = 0; i < straight.faces().size(); i++) {
                List<SegmentBands> segments = straight.faces().get(i).segments();
                for (int j = 0; j < segments.size(); j++) {
                    SegmentBands mirror = reversed.faces().get(i).segments().get(j);
                    assertAlike(segments.get(j).inverted(), mirror.upright());
                    assertAlike(segments.get(j).upright(), mirror.inverted());
                }
            }
        }
    }

    private static List<Designs> bothWays(Designs design, double angle) {
        List<LaminationRequest> straight = new ArrayList<>();
        List<LaminationRequest> reversed = new ArrayList<>();
        design.build().panels().forEach(panel -> {
            List<BandRequest> bands = new ArrayList<>();
            panel.lamination().bands().forEach(band -> bands.add(Designs.band(band.species(), band.width())));
            straight.add(Designs.lamination(panel.face(), angle, bands));
            List<BandRequest> turned = new ArrayList<>(bands);
            Collections.reverse(turned);
            reversed.add(Designs.lamination(panel.face(), angle, turned));
        });
        return List.of(design.laminations(straight), design.laminations(reversed));
    }

    private static void assertAlike(List<BandView> one, List<BandView> other) {
        assertEquals(one.size(), other.size());
        for (int i = 0; i < one.size(); i++) {
            assertEquals(one.get(i).species(), other.get(i).species());
            assertEquals(one.get(i).sphereArea(), other.get(i).sphereArea(), 1e-9);
            assertEquals(one.get(i).flatArea(), other.get(i).flatArea(), 1e-9);
            assertEquals(one.get(i).survival(), other.get(i).survival(), 1e-9);
            assertEquals(
                    one.get(i).visibleWidth().widest(),
                    other.get(i).visibleWidth().widest(),
                    1e-9);
            assertEquals(one.size() + 1 - other.get(i).band(), one.get(i).band());
        }
    }

    @Test
    void mirroredSegmentsAtAnAngleAgreeWithPlainOnesAtItsOpposite() {
        // Kites and scalene triangles have segments in both hands.
        for (String solid : List.of("deltoidal-hexecontahedron", "disdyakis-triacontahedron", "rhombic-dodecahedron")) {
            List<SegmentBands> plus =
                    bands(Designs.of(solid).bands(35, BANDS)).faces().get(0).segments();
            List<SegmentBands> minus =
                    bands(Designs.of(solid).bands(-35, BANDS)).faces().get(0).segments();
            int mirrored = 0;
            for (SegmentBands segment : plus) {
                SegmentBands other = minus.stream()
                        .filter(s -> s.segment().equals(segment.segment()) && s.mirrored() != segment.mirrored())
                        .findFirst()
                        .orElse(segment);
                if (!other.equals(segment)) {
                    mirrored++;
                    assertAgree(segment.upright(), other.upright());
                }
            }
            assertTrue(mirrored > 0, solid);
        }
    }

    private static void assertAgree(List<BandView> plain, List<BandView> mirrored) {
        for (int i = 0; i < plain.size(); i++) {
            BandView one = plain.get(i);
            BandView other = mirrored.get(i);
            assertEquals(one.sphereArea(), other.sphereArea(), 1e-9);
            assertEquals(one.flatArea(), other.flatArea(), 1e-9);
            assertEquals(one.visibleWidth().leftCorner(), other.visibleWidth().rightCorner(), 1e-9);
            assertEquals(one.visibleWidth().rightCorner(), other.visibleWidth().leftCorner(), 1e-9);
            assertEquals(one.visibleWidth().edgeMiddle(), other.visibleWidth().edgeMiddle(), 1e-9);
            int last = one.profile().size() - 1;
            for (int j = 0; j <= last; j++) {
                assertEquals(
                        one.profile().get(j).width(),
                        other.profile().get(last - j).width(),
                        1e-9);
            }
        }
    }

    @Test
    @DisplayName("bands at 90 degrees, symmetric about the axis: left and right alike, areas in pairs")
    @Source(value = HAND, text = "a chord of 2 c across the middle of a sphere is an arc of 2 R asin(c / R)")
    void bandsFromTipToBase() {
        double half = Designs.of("dodecahedron")
                .build()
                .panels()
                .get(0)
                .pieces()
                .get(0)
                .right();
        List<BandView> views = first(Designs.of("dodecahedron").bands(90, Designs.widths(half - 5, 10.0, half - 5)))
                .upright();
        BandView right = views.get(0);
        BandView middle = views.get(1);
        BandView left = views.get(2);
        assertEquals(right.sphereArea(), left.sphereArea(), 1e-9);
        assertEquals(right.flatArea(), left.flatArea(), 1e-9);
        assertEquals(right.visibleWidth().rightCorner(), left.visibleWidth().leftCorner(), 1e-9);
        assertEquals(0, right.visibleWidth().leftCorner(), 1e-12);
        assertEquals(middle.visibleWidth().rightCorner(), middle.visibleWidth().leftCorner(), 1e-9);
        // Across the axis the middle band is whole: 10 mm of chord on a sphere of 98 mm, 2 R asin(5 / R) of arc.
        assertEquals(2 * 98 * Math.asin(5 / 98.0), middle.visibleWidth().widest(), 1e-9);
    }

    @Test
    @Source(value = HAND, text = "a sixtieth of 4 pi R^2")
    void oneBandTakesTheWholeSegment() {
        SegmentBands segment = first(Designs.of("dodecahedron"));
        BandView view = segment.upright().get(0);
        assertEquals(4 * Math.PI * 98 * 98 / 60, view.sphereArea(), 1e-9);
        assertEquals(segment.sphereArea(), view.sphereArea(), 1e-9);
        assertEquals(1, view.shareOfSphere(), 1e-12);
        assertNull(segment.inverted(), "one band reads the same from both edges");
    }

    @Test
    @Source(CONTRACT)
    void aTwoSetDesignHasTwoKindsOfSphere() {
        List<SphereShares> two =
                bands(Designs.of("cube").bands(Designs.widths(40.0, null))).spheres();
        assertEquals(
                List.of(SphereSet.UPRIGHT, SphereSet.INVERTED),
                two.stream().map(SphereShares::set).toList());
        assertEquals(1, bands(Designs.of("cube")).spheres().size());
        assertEquals(
                1,
                bands(Designs.of("cube").bands(45, Designs.widths(40.0, null)))
                        .spheres()
                        .size());
    }

    @Test
    @DisplayName("where flats stay, sphere and flats together are the surface: cube 200, radius 110")
    @Source(value = HAND, text = "Archimedes: a cap of the height k has the area 2 pi R k")
    void flatsCountAsVisible() {
        // Six caps of height 10 are cut off, 2 pi R 10 each, and discs of radius sqrt(110^2 - 100^2) take their place.
        Design design = Designs.of("cube").diameter(220.0).build();
        double surface = 4 * Math.PI * 110 * 110 - 6 * 2 * Math.PI * 110 * 10 + 6 * Math.PI * (110 * 110 - 100 * 100);
        SegmentBands segment =
                BandCalculator.calculate(design, 9).faces().get(0).segments().get(0);
        assertEquals(surface / 24, segment.sphereArea(), 1e-9);
    }

    /** A cube of 200 mm and a sphere of 98 mm in it; around each face's middle a band of width w makes a square. */
    private static final Designs SQUARES = Designs.of("cube").bands(Designs.widths(55.0, null));

    /** The sphere over the squares of a half width on all six faces. */
    private static double squares(double half) {
        GaussIntegrator quadrature = new GaussIntegratorFactory().legendre(60, -half, half);
        return 6 * quadrature.integrate(x -> quadrature.integrate(y -> 98 / Math.sqrt(98 * 98 - x * x - y * y)));
    }

    @Test
    @DisplayName("hand calculation: seen square to the panel the sphere of a segment is R^2 atan(1 / sqrt 2) / sqrt 2")
    @Source(value = HAND, text = "the integral of R^2 / (1 + cos^2) over an eighth of a turn")
    void survivalOfTheBandsOfACube() {
        // It ends at the seam, z = x, so that x^2 + y^2 + z^2 = R^2 is r^2 = R^2 / (1 + cos^2) in the panel's plane.
        double plan = 98 * 98 * Math.atan(1 / Math.sqrt(2)) / Math.sqrt(2);
        List<BandView> upright = first(SQUARES).upright();
        assertEquals(100 * 100 - 45 * 45, upright.get(0).flatArea(), 1e-9);
        assertEquals((plan - 45 * 45) / (100 * 100 - 45 * 45), upright.get(0).survival(), 1e-12);
        assertEquals(45 * 45, upright.get(1).flatArea(), 1e-9);
        assertEquals(1, upright.get(1).survival(), 1e-12);
    }

    @Test
    @Source(
            value = ORACLE,
            text = "Gauss-Legendre quadrature of R / sqrt(R^2 - x^2 - y^2) over a square, Apache Commons Math 3.6.1")
    void theTipsOfBothSetsAreSquaresOnTheSphere() {
        double sphere = 4 * Math.PI * 98 * 98;
        List<SphereShares> spheres = bands(SQUARES.copies(2)).spheres();
        List<SpeciesShare> upright = spheres.get(0).species();
        assertEquals("sugar maple", upright.get(1).species());
        assertEquals(squares(45), upright.get(1).area(), 1e-11 * sphere);
        assertEquals(1 - squares(45) / sphere, upright.get(0).share(), 1e-11);
        List<SpeciesShare> inverted = spheres.get(1).species();
        assertEquals("black walnut", inverted.get(1).species());
        assertEquals(squares(55), inverted.get(1).area(), 1e-11 * sphere);
        assertEquals(1 - squares(55) / sphere, inverted.get(0).share(), 1e-11);
    }

    @Test
    @Source(CONTRACT)
    void anInvertedSphereHasTheUprightSegmentsOfTiltedBands() {
        List<BandRequest> widths = Designs.widths(40.0, null);
        BandSurvival bands = bands(Designs.of("cuboctahedron")
                .laminations(
                        List.of(Designs.lamination("triangle", 0, widths), Designs.lamination("square", 30, widths))));
        assertEquals(
                List.of(1, 2),
                bands.faces().stream().map(FaceBands::sets).sorted().toList());
        FaceBands tilted = bands.faces().stream()
                .filter(face -> face.sets() == 1)
                .findFirst()
                .orElseThrow();
        assertEquals("square", tilted.face());
        FaceBands straight = bands.faces().stream()
                .filter(face -> face.sets() == 2)
                .findFirst()
                .orElseThrow();
        List<SphereShares> spheres = bands.spheres();
        assertEquals(SphereSet.INVERTED, spheres.get(1).set());
        String wood = tilted.segments().get(0).upright().get(0).species();
        double area = 0;
        for (SegmentBands segment : tilted.segments()) {
            area += segment.perSphere() * area(segment.upright(), wood);
        }
        for (SegmentBands segment : straight.segments()) {
            area += segment.perSphere() * area(segment.inverted(), wood);
        }
        double answered = spheres.get(1).species().stream()
                .filter(share -> share.species().equals(wood))
                .mapToDouble(SpeciesShare::area)
                .sum();
        assertEquals(area, answered, 1e-9 * area);
    }

    private static double area(List<BandView> views, String wood) {
        return views.stream()
                .filter(view -> view.species().equals(wood))
                .mapToDouble(BandView::sphereArea)
                .sum();
    }

    @Test
    @Source(value = HAND, text = "a flat of half a chord of a circle, and the arc beyond it")
    void withFlatsWidthsRunThroughTheFacesCentreAtTheCornersToo() {
        // Faces 100 mm out and 100 mm of base distance; a sphere of 106 mm leaves flats of root(106^2 - 100^2) mm.
        double flat = Math.sqrt(106 * 106 - 100 * 100);
        SegmentBands segment = first(Designs.of("cube").diameter(212.0).bands(Designs.widths(60.0, null)));
        double arc = 106 * (Math.asin(40 / 106.0) - Math.asin(flat / 106));
        assertEquals(flat + arc, segment.upright().get(1).visibleWidth().rightCorner(), 1e-9);
        assertEquals(flat + arc, segment.upright().get(1).visibleWidth().edgeMiddle(), 1e-9);
        // On the diagonal of a segment the line is 40 root 2 mm from the centre: no flat reaches there.
        assertTrue(40 * Math.sqrt(2) > flat);
    }

    @Test
    @Source(CONTRACT)
    void bandsKeepTheirNumbersInBothSets() {
        SegmentBands segment = first(SQUARES);
        assertEquals(
                List.of(1, 2), segment.upright().stream().map(BandView::band).toList());
        assertEquals(
                List.of(2, 1), segment.inverted().stream().map(BandView::band).toList());
    }

    @Test
    @Source(
            value = ORACLE,
            text = "Gauss-Legendre quadrature of R / sqrt(R^2 - x^2 - y^2) over a square, Apache Commons Math 3.6.1")
    void aMixedSphereHasHalfOfEachSet() {
        List<SphereShares> spheres = bands(SQUARES.sets(Sets.MIXED)).spheres();
        assertEquals(
                List.of(SphereSet.MIXED, SphereSet.UPRIGHT, SphereSet.INVERTED),
                spheres.stream().map(SphereShares::set).toList());
        double sphere = 4 * Math.PI * 98 * 98;
        SpeciesShare maple = spheres.get(0).species().stream()
                .filter(wood -> wood.species().equals("sugar maple"))
                .findFirst()
                .orElseThrow();
        double area = (squares(45) + sphere - squares(55)) / 2;
        assertEquals(area, maple.area(), 1e-11 * sphere);
        assertEquals(area / sphere, maple.share(), 1e-11);
    }
}
