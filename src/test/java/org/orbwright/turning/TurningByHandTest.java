package org.orbwright.turning;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.apache.commons.math3.analysis.integration.SimpsonIntegrator;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.orbwright.design.Design;
import org.orbwright.fixture.Designs;
import org.orbwright.quantity.LengthUnit;
import org.orbwright.solid.Face;
import org.orbwright.solid.Solid;
import org.orbwright.turning.AxisRequest.Through;
import org.orbwright.turning.Holding.Seat;
import org.orbwright.turning.Roughing.RingGauge;
import org.orbwright.turning.Roughing.RoughPass;
import org.orbwright.turning.TurningRequest.CupRequest;
import org.orbwright.turning.TurningRequest.DiscsRequest;
import org.orbwright.turning.TurningRequest.FinishRequest;
import org.orbwright.turning.TurningRequest.GritRequest;
import org.orbwright.turning.TurningRequest.RatesRequest;
import org.orbwright.turning.TurningRequest.RoughingRequest;
import org.orbwright.turning.TurningRequest.SpeedRequest;

/** Cups, rings on leaning panels, passes, open seams and bands that vanish, by hand and by counting. */
class TurningByHandTest {
    private static final double EXACT = 1e-9;

    private static final Designs CUBE = TurningCalculatorTest.CUBE;

    private static TurningPlan plan(
            Designs designs,
            AxisRequest axis,
            DiscsRequest discs,
            CupRequest cup,
            RoughingRequest roughing,
            SpeedRequest speed,
            FinishRequest finish,
            RatesRequest rates) {
        Design design = designs.build();
        return TurningCalculator.plan(new TurningRequest(axis, discs, cup, roughing, speed, finish, rates), design);
    }

    private static CupHold cups(Designs designs, double rim, Double clearance) {
        return plan(designs, null, null, new CupRequest(rim, clearance), null, null, null, null)
                .cups();
    }

    @ParameterizedTest
    @CsvSource({"9.6, 0.6", "14.4, 0.5", "0.96, 0.78"})
    @DisplayName("shares that positions turn, by counting points that lie evenly on a sphere (Fibonacci lattice)")
    void sharesThatPositionsTurn(double clearance, double sine) {
        int points = 40_000;
        int both = 0;
        int all = 0;
        for (int i = 0; i < points; i++) {
            double z = 1 - (2 * i + 1.0) / points;
            double turn = i * Math.PI * (3 - Math.sqrt(5));
            double x = Math.sqrt(1 - z * z) * Math.cos(turn);
            double y = Math.sqrt(1 - z * z) * Math.sin(turn);
            boolean inBoth = Math.abs(x) < sine && Math.abs(y) < sine;
            both += inBoth ? 1 : 0;
            all += inBoth && Math.abs(z) < sine ? 1 : 0;
        }
        CupHold cups = cups(CUBE, 57.6, clearance);
        assertEquals(sine, cups.turnedOnce(), EXACT);
        assertEquals((double) both / points, cups.turnedInBoth(), 1e-3);
        assertEquals((double) all / points, cups.turnedInAllThree(), 1e-3);
    }

    @Test
    @DisplayName(
            "hand calculation: a reach of 36.8699 degrees (3, 4, 5) lacks 8.1301 of 45 and has 1.6055 above 35.2644")
    void overlapsOfCups() {
        Designs inches = CUBE.times(1 / 25.4).in(LengthUnit.IN);
        CupHold cups = cups(inches, 57.6 / 25.4, 9.6 / 25.4);
        assertEquals(36.8699, Math.toDegrees(cups.reachedLatitude()), 5e-5);
        assertEquals(-8.1301, Math.toDegrees(cups.overlapOfTwo()), 5e-5);
        assertEquals(1.6055, Math.toDegrees(cups.overlapOfThree()), 1e-4);
        assertEquals(3, cups.positions());
    }

    @ParameterizedTest
    @CsvSource({
        "pentagonal-icositetrahedron, FACE, 0.02",
        "pentagonal-icositetrahedron, FACE, 0.2",
        "snub-cube, FACE, 0.05",
        "snub-cube, EDGE, 0.1",
        "snub-dodecahedron, EDGE, 0.3",
        "tetrahedron, FACE, 0.2"
    })
    @DisplayName("of solids without a centre of symmetry the tail may rest on leaning panels: the highest point found")
    void aRingRestsOnTheHighestPointOfItsCircle(String name, Through through, double share) {
        Designs designs = Designs.of(name).land(0);
        Design design = designs.build();
        Solid solid = design.solid();
        Vector3D tail = LatheAxis.direction(new AxisRequest(through, 1), solid).negate();
        double swing = holding(designs, through, null).swing();
        double ring = share * swing / 2;
        Vector3D across = tail.orthogonal();
        double highest = 0;
        for (int i = 0; i < 20_000; i++) {
            double angle = i * Math.PI / 10_000;
            Vector3D out =
                    across.multiply(Math.cos(angle)).add(tail.cross(across).multiply(Math.sin(angle)));
            double height = Double.POSITIVE_INFINITY;
            for (Face face : solid.faces()) {
                Vector3D normal = solid.normal(face);
                double cos = normal.dot(tail);
                if (cos > 1e-9) {
                    double distance = design.panelAt(face.kind(), 0).jointDistance();
                    height = Math.min(height, (distance - ring * normal.dot(out)) / cos);
                }
            }
            highest = Math.max(highest, height);
        }
        Seat seat = holding(designs, through, new DiscsRequest(2 * ring, null, null, null, null))
                .tail();
        // Points are 0.0003 apart of the ring, on wood that rises no more steeply than it is far out.
        assertEquals(highest, seat.seatDistance(), 4e-4 * ring);
    }

    private static Holding holding(Designs designs, Through through, DiscsRequest discs) {
        return plan(designs, new AxisRequest(through, 1), discs, null, null, null, null, null)
                .holding();
    }

    @Test
    @DisplayName(
            "hand calculation: from a cube's corners, 50 root 3 out, passes of 10 mm reach its edges in the second")
    void passesOfACube() {
        List<RoughPass> passes = plan(CUBE, null, null, null, new RoughingRequest(10.0, null, null), null, null, null)
                .roughing()
                .passes();
        double corners = 50 * Math.sqrt(3);
        double edges = 50 * Math.sqrt(2);
        assertEquals(4, passes.size());
        double[] after = {corners - 10, corners - 20, corners - 30, 48};
        double[] atEdges = {0, edges - after[1], 10, after[2] - 48};
        double[] atFaces = {0, 0, 0, 2};
        for (int i = 0; i < 4; i++) {
            assertEquals(2 * after[i], passes.get(i).diameter(), EXACT);
            assertEquals(atEdges[i], passes.get(i).atEdges(), EXACT);
            assertEquals(atFaces[i], passes.get(i).atFaces(), EXACT);
        }
    }

    @Test
    @DisplayName("the usual rings rise R (1 - root(1 - (s / R)^2)) over their own radius s")
    void usualRings() {
        List<RingGauge> gauges =
                plan(CUBE, null, null, null, null, null, null, null).roughing().gauges();
        assertEquals(
                List.of(24.0, 48.0, 72.0), gauges.stream().map(RingGauge::chord).toList());
        for (RingGauge gauge : gauges) {
            double share = gauge.chord() / 96;
            assertEquals(48 * (1 - Math.sqrt(1 - share * share)), gauge.sagitta(), EXACT);
        }
    }

    @Test
    @DisplayName("seams that are open at the middle of an edge, by quadrature along the edge's angle")
    void seamsBelowAWideSphere() {
        // Seams of a cube end 50 root 2 from the centre; a land lets the sphere be wider.
        Designs open = CUBE.acrossFlats(146).thickness(44).land(23).diameter(143.0);
        Design design = open.build();
        double joint = design.panels().get(0).jointDistance();
        double edge = joint * Math.sqrt(2);
        double inner = edge * (73 - 44) / joint;
        double angle = Math.atan(joint / edge);
        double half = new SimpsonIntegrator(1e-10, 1e-12, 3, 60)
                .integrate(
                        10_000_000,
                        at -> (Math.pow(Math.min(71.5, edge / Math.cos(at)), 2) - Math.pow(inner / Math.cos(at), 2))
                                / 2,
                        0,
                        angle);
        double seam = plan(open, null, null, null, null, new SpeedRequest(100.0, 3.0, null), null, null)
                .speeds()
                .sphere()
                .seamArea();
        assertEquals(8 * half, seam, 1e-6 * seam);
    }

    @Test
    @DisplayName("hand calculation: of a rim of 20 mm on a cube of 100 mm 48 (45 degrees - asin(30 / 48)) is seen")
    void theThinnestBandIsTheOneThatShowsLeast() {
        Designs two = CUBE.bands(List.of(Designs.band("black walnut", 20.0), Designs.band("sugar maple", null)));
        FinishRequest finish = new FinishRequest(List.of(new GritRequest(120, 0.5)), null, null, null);
        var thinnest =
                plan(two, null, null, null, null, null, finish, null).finish().thinnest();
        assertEquals(1, thinnest.band());
        assertEquals("black walnut", thinnest.species());
        assertEquals(48 * (Math.PI / 4 - Math.asin(30 / 48.0)), thinnest.widest(), EXACT);
        assertEquals(48.5 * (Math.PI / 4 - Math.asin(30 / 48.5)), thinnest.widestBefore(), EXACT);
        // Of three bands the one that is on the base of the inverted segments, 17 mm wide there.
        Designs three = CUBE.bands(List.of(
                Designs.band("black walnut", 30.0), Designs.band("sugar maple", 3.0), Designs.band("white ash", null)));
        var inverted =
                plan(three, null, null, null, null, null, finish, null).finish().thinnest();
        assertEquals(3, inverted.band());
        assertEquals(48 * (Math.PI / 4 - Math.asin(33 / 48.0)), inverted.widest(), EXACT);
    }

    @Test
    @DisplayName("between discs the work is reversed once, in cups that do not reach all of it three times")
    void reversalsTakeTheirTime() {
        RatesRequest rates = new RatesRequest(30.0, null, null, 10.0, null, null);
        assertEquals(
                30 + 10,
                plan(CUBE, null, null, null, null, null, null, rates).time().total(),
                EXACT);
        assertEquals(
                30 + 3 * 10,
                plan(CUBE, null, null, new CupRequest(80.0, 0.0), null, null, null, rates)
                        .time()
                        .total(),
                EXACT);
    }
}
