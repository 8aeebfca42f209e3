package org.orbwright.band;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.orbwright.source.Kind.CONTRACT;
import static org.orbwright.source.Kind.HAND;
import static org.orbwright.source.Kind.INVARIANT;

import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.orbwright.band.BandSurvival.BandView;
import org.orbwright.band.BandSurvival.SegmentBands;
import org.orbwright.band.BandSurvival.Station;
import org.orbwright.band.BandSurvival.VisibleWidth;
import org.orbwright.design.Design;
import org.orbwright.design.Panel;
import org.orbwright.fixture.Designs;
import org.orbwright.source.Source;

@Source(
        value = HAND,
        text = "an arc is R times its angle; the sphere ends at the seam at x = R a / rho, at a corner at x = R a / "
                + "corner radius")
class VisibleWidthsTest {
    private static SegmentBands segment(Designs design, int stations) {
        return BandCalculator.calculate(design.build(), stations)
                .faces()
                .get(0)
                .segments()
                .get(0);
    }

    private static VisibleWidth rim(Designs design) {
        return segment(design, 9).upright().get(0).visibleWidth();
    }

    @ParameterizedTest(name = "{0}, rim band of {1} mm, sphere of {2} mm")
    @CsvSource({
        "dodecahedron, 20, 196",
        "dodecahedron, 30, 190",
        "cube, 60, 196",
        "icosahedron, 25, 198",
        "octahedron, 55, 180",
        "cube, 50, 150"
    })
    void theRimEndsWhereTheSeamMeetsTheSphere(String solid, double width, double diameter) {
        // Middle of an edge: x = R a / rho. Corner: x = R a / corner radius. Width along the sphere: R times the angle.
        Designs designs = Designs.of(solid).diameter(diameter).bands(Designs.widths(width, null));
        Design design = designs.build();
        Panel panel = design.panels().get(0);
        double radius = diameter / 2;
        double a = panel.baseDistance();
        double inner = Math.asin((a - width) / radius);
        VisibleWidth rim = rim(designs);
        double middle = radius * (Math.asin(a / panel.seamRadius()) - inner);
        double corner = radius * (Math.asin(a / panel.cornerRadius()) - inner);
        assertEquals(Math.max(0, middle), rim.edgeMiddle(), 1e-9);
        assertEquals(Math.max(0, corner), rim.leftCorner(), 1e-9);
        assertEquals(Math.max(0, corner), rim.rightCorner(), 1e-9);
        assertEquals(Math.max(0, middle), rim.widest(), 1e-9);
    }

    @Test
    @DisplayName(
            "a dodecahedron with R = g loses 14.9 % of the base distance at the edge middles, 20.5 % at the corners")
    void dodecahedronAtTheFaceDistance() {
        Designs design = Designs.of("dodecahedron").diameter(200.0).allowance(0);
        Panel panel = design.build().panels().get(0);
        double a = panel.baseDistance();
        double middle = 100 * a / panel.seamRadius();
        double corner = 100 * a / panel.cornerRadius();
        assertEquals(14.9, 100 * (1 - middle / a), 0.05);
        assertEquals(20.5, 100 * (1 - corner / a), 0.05);
        // A rim a hair narrower than that is gone, one a hair wider is not.
        assertEquals(
                0, rim(design.bands(Designs.widths(a - middle - 1e-6, null))).edgeMiddle());
        assertTrue(rim(design.bands(Designs.widths(a - middle + 1e-6, null))).edgeMiddle() > 0);
        assertEquals(
                0, rim(design.bands(Designs.widths(a - corner - 1e-6, null))).rightCorner());
        assertTrue(rim(design.bands(Designs.widths(a - corner + 1e-6, null))).rightCorner() > 0);
    }

    @Test
    @DisplayName("a band that lies whole inside the seams is as wide as the arc between its planes")
    void aWholeBand() {
        BandView view = segment(Designs.of("cube").bands(Designs.widths(60.0, 15.0, null)), 9)
                .upright()
                .get(1);
        double arc = 98 * (Math.asin(40 / 98.0) - Math.asin(25 / 98.0));
        assertEquals(arc, view.visibleWidth().edgeMiddle(), 1e-12);
        assertEquals(arc, view.visibleWidth().rightCorner(), 1e-12);
        assertEquals(arc, view.visibleWidth().widest(), 1e-12);
    }

    @Test
    @DisplayName("on a flat a band is as wide as it is: cube 200, radius 110, flat of radius 45.8, band 30 to 40")
    void aBandOnAFlat() {
        BandView view = segment(Designs.of("cube").diameter(220.0).bands(Designs.widths(60.0, 10.0, null)), 9)
                .upright()
                .get(1);
        assertEquals(10, view.visibleWidth().edgeMiddle(), 1e-12);
        assertEquals(10, view.visibleWidth().widest(), 1e-12);
    }

    @ParameterizedTest(name = "{0} stations")
    @ValueSource(ints = {2, 3, 9, 33})
    @Source(CONTRACT)
    void aSymmetricSegmentHasAStationForEachPlaceFromTheMiddleToACorner(int stations) {
        Designs design = Designs.of("dodecahedron").bands(Designs.widths(20.0, null));
        double half = design.build().panels().get(0).pieces().get(0).right();
        List<Station> profile = segment(design, stations).upright().get(0).profile();
        assertEquals(stations, profile.size());
        for (int i = 0; i < stations; i++) {
            assertEquals((double) i / (stations - 1), profile.get(i).at(), 1e-15);
            assertEquals(half * i / (stations - 1), profile.get(i).along(), 1e-12);
        }
    }

    @ParameterizedTest(name = "{0} stations")
    @ValueSource(ints = {2, 3, 9, 33})
    @Source(CONTRACT)
    void aScaleneSegmentHasStationsOnBothSides(int stations) {
        Designs design = Designs.of("rhombic-triacontahedron").bands(Designs.widths(10.0, null));
        SegmentBands segment = segment(design, stations);
        List<Station> profile = segment.upright().get(0).profile();
        assertEquals(2 * stations - 1, profile.size());
        double left = design.build().panels().get(0).pieces().get(0).left();
        double right = design.build().panels().get(0).pieces().get(0).right();
        assertEquals(-1, profile.get(0).at());
        assertEquals(-left, profile.get(0).along(), 1e-12);
        assertEquals(0, profile.get(stations - 1).at());
        assertEquals(0, profile.get(stations - 1).along(), 1e-12);
        assertEquals(1, profile.get(2 * stations - 2).at());
        assertEquals(right, profile.get(2 * stations - 2).along(), 1e-12);
        VisibleWidth width = segment.upright().get(0).visibleWidth();
        assertEquals(width.leftCorner(), profile.get(0).width(), 1e-12);
        assertEquals(width.edgeMiddle(), profile.get(stations - 1).width(), 1e-12);
        assertEquals(width.rightCorner(), profile.get(2 * stations - 2).width(), 1e-12);
    }

    @Test
    @Source(INVARIANT)
    void theRimNarrowsFromTheMiddleToTheCorner() {
        List<Station> profile = segment(Designs.of("dodecahedron").bands(Designs.widths(20.0, null)), 33)
                .upright()
                .get(0)
                .profile();
        for (int i = 1; i < profile.size(); i++) {
            assertTrue(profile.get(i).width() <= profile.get(i - 1).width());
        }
    }

    @Test
    @DisplayName("at a station the sphere ends at x = R a / sqrt(rho^2 + along^2)")
    void stationsByHand() {
        Designs designs = Designs.of("dodecahedron").bands(Designs.widths(25.0, null));
        Panel panel = designs.build().panels().get(0);
        double inner = Math.asin((panel.baseDistance() - 25) / 98);
        for (Station station : segment(designs, 9).upright().get(0).profile()) {
            double end = panel.baseDistance() / Math.hypot(panel.seamRadius(), station.along());
            assertEquals(Math.max(0, 98 * (Math.asin(end) - inner)), station.width(), 1e-9);
        }
    }

    @Test
    void theBandsCrossedOnTheWayToAPlaceMakeUpTheWay() {
        for (double angle : new double[] {0, 30, 90}) {
            Designs designs = Designs.of("deltoidal-hexecontahedron").bands(angle, Designs.widths(3.0, 5.0, 2.0, null));
            for (SegmentBands segment :
                    BandCalculator.calculate(designs.build(), 9).faces().get(0).segments()) {
                Panel panel = designs.build().panels().get(0);
                double left = panel.pieces().stream()
                        .filter(p -> p.segment().equals(segment.segment()) && p.mirrored() == segment.mirrored())
                        .findFirst()
                        .orElseThrow()
                        .left();
                double corner = Math.hypot(panel.seamRadius(), left);
                double across =
                        Math.cos(Math.toRadians(angle)) * panel.baseDistance() - Math.sin(Math.toRadians(angle)) * left;
                double way = segment.upright().stream()
                        .mapToDouble(v -> v.visibleWidth().leftCorner())
                        .sum();
                assertEquals(98 * Math.asin(Math.abs(across) / corner), way, 1e-9);
            }
        }
    }
}
