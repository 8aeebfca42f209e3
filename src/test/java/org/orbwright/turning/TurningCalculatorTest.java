package org.orbwright.turning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.integration.SimpsonIntegrator;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.orbwright.design.Design;
import org.orbwright.design.ImpossibleDesignException;
import org.orbwright.design.Sets;
import org.orbwright.fixture.DesignArbitraries;
import org.orbwright.fixture.Designs;
import org.orbwright.fixture.Slow;
import org.orbwright.solid.Face;
import org.orbwright.turning.AxisRequest.Through;
import org.orbwright.turning.Holding.ReachEnd;
import org.orbwright.turning.Holding.Seat;
import org.orbwright.turning.Roughing.PolygonProfile;
import org.orbwright.turning.Roughing.RoughPass;
import org.orbwright.turning.SpeedLimits.SpeedLimit;
import org.orbwright.turning.TurningRequest.CupRequest;
import org.orbwright.turning.TurningRequest.DiscsRequest;
import org.orbwright.turning.TurningRequest.FinishRequest;
import org.orbwright.turning.TurningRequest.GritRequest;
import org.orbwright.turning.TurningRequest.RatesRequest;
import org.orbwright.turning.TurningRequest.RoughingRequest;
import org.orbwright.turning.TurningRequest.ScrewsRequest;
import org.orbwright.turning.TurningRequest.SpeedRequest;
import org.orbwright.turning.TurningTime.StageTime;

/** The work on the lathe against values worked out by hand. */
@Slow
class TurningCalculatorTest {
    private static final double EXACT = 1e-9;

    /** A cube 100 mm across, 26 mm thick, of one wood, turned to a sphere of 96 mm. */
    static final Designs CUBE = Designs.of("cube")
            .acrossFlats(100)
            .thickness(26)
            .land(0)
            .diameter(96.0)
            .minimumWall(1)
            .bands(List.of(Designs.band("black walnut", null)));

    /** A request that is put together step by step. */
    private record Wish(
            AxisRequest axis,
            DiscsRequest discs,
            CupRequest cup,
            RoughingRequest roughing,
            SpeedRequest speed,
            FinishRequest finish,
            RatesRequest rates) {
        static final Wish NONE = new Wish(null, null, null, null, null, null, null);

        TurningPlan plan(Designs designs) {
            Design design = designs.build();
            return TurningCalculator.plan(new TurningRequest(axis, discs, cup, roughing, speed, finish, rates), design);
        }

        static Wish axis(Through through, DiscsRequest discs) {
            return new Wish(new AxisRequest(through, 1), discs, null, null, null, null, null);
        }

        static Wish cup(double rim, double clearance) {
            return new Wish(null, null, new CupRequest(rim, clearance), null, null, null, null);
        }

        static Wish passes(double depth) {
            return new Wish(null, null, null, new RoughingRequest(depth, null, null), null, null, null);
        }

        static Wish speed(Double turns, Double strength, Double divisor) {
            return new Wish(null, null, null, null, new SpeedRequest(turns, strength, divisor), null, null);
        }
    }

    @Test
    @DisplayName("by hand: a side of an octagon is tan 22.5 degrees = 0.4142 of its inner diameter, half of it 0.2071")
    void octagon() {
        Roughing roughing = Wish.NONE.plan(CUBE).roughing();
        PolygonProfile octagon = roughing.profiles().get(1);
        assertEquals(96, roughing.turnedDiameter());
        assertEquals(0.4142, octagon.side() / 96, 5e-5);
        assertEquals(0.2071, octagon.halfSide() / 96, 5e-5);
        assertEquals(0.2929, octagon.fromCorner() / 96, 5e-5);
    }

    @Test
    void everyProfileIsARegularPolygonAroundTheOneBefore() {
        for (PolygonProfile profile : Wish.NONE.plan(CUBE).roughing().profiles()) {
            double x = 0;
            double y = 48;
            for (int i = 0; i < profile.corners().size(); i++) {
                double nextX = profile.corners().get(i).at();
                double nextY = profile.corners().get(i).diameter() / 2;
                double side = Math.hypot(nextX - x, nextY - y);
                assertEquals(i == 0 ? profile.halfSide() : profile.side(), side, EXACT);
                assertEquals(profile.aboveSphere(), Math.hypot(nextX, nextY) - 48, EXACT);
                // The middle of a side touches the sphere.
                assertEquals(48, i == 0 ? y : Math.hypot((x + nextX) / 2, (y + nextY) / 2), EXACT);
                x = nextX;
                y = nextY;
            }
        }
    }

    @Test
    @DisplayName("hand calculation: over a chord of 60 mm a sphere of 100 mm rises 50 - 40 = 10 mm, as 30, 40, 50")
    void ringGauge() {
        Designs sphere = CUBE.acrossFlats(104).diameter(100.0);
        Wish wish = new Wish(null, null, null, new RoughingRequest(null, 6, List.of(60.0)), null, null, null);
        Roughing roughing = wish.plan(sphere).roughing();
        assertEquals(10, roughing.gauges().get(0).sagitta(), EXACT);
        // d s / d D = (1 - R / h) / 2 = (1 - 50 / 40) / 2
        assertEquals(0.125, roughing.gauges().get(0).lessPerDiameter(), EXACT);
        assertEquals(30, roughing.depths().get(3).at(), EXACT);
        assertEquals(80, roughing.depths().get(3).diameter(), EXACT);
        assertEquals(10, roughing.depths().get(3).depth(), EXACT);
    }

    @Test
    @DisplayName("hand calculation: of a sphere beyond a cube's faces six caps of (1 - h / r) / 2 lie outside")
    void shareOfAPassInWood() {
        List<RoughPass> passes = Wish.passes(2).plan(CUBE).roughing().passes();
        double corner = 50 * Math.sqrt(3);
        assertEquals(Math.ceil((corner - 48) / 2), passes.size());
        for (RoughPass pass : passes) {
            double r = pass.diameter() / 2;
            if (r > 50 && r < 50 * Math.sqrt(2)) {
                assertEquals(1 - 3 * (1 - 50 / r), pass.inWood(), EXACT);
            }
            assertTrue(r >= 50 || Math.abs(pass.inWood() - 1) < EXACT);
        }
        assertEquals(
                corner - 48, passes.stream().mapToDouble(RoughPass::atCorners).sum(), EXACT);
        assertEquals(
                50 * Math.sqrt(2) - 48,
                passes.stream().mapToDouble(RoughPass::atEdges).sum(),
                EXACT);
        assertEquals(2, passes.stream().mapToDouble(RoughPass::atFaces).sum(), EXACT);
        Roughing roughing = Wish.passes(2).plan(CUBE).roughing();
        assertTrue(passes.get(roughing.edgesFrom() - 1).atEdges() > 0);
        assertEquals(0, passes.get(roughing.edgesFrom() - 2).atEdges());
        assertTrue(passes.get(roughing.facesFrom() - 1).atFaces() > 0);
    }

    @Test
    @DisplayName(
            "hand calculation: a ring of radius r rests on the three edges of a cube's corner at h root 3 - r / root 2")
    void ringOnACorner() {
        Seat seat = Wish.axis(Through.CORNER, new DiscsRequest(40.0, null, 3.0, null, null))
                .plan(CUBE)
                .holding()
                .head();
        assertEquals(Through.CORNER, seat.at());
        assertNull(seat.largestDisc());
        // From the corner (h, h, h) an edge leads s to (h, h, h - s), root(2/3) s from the axis and s / root 3 lower.
        assertEquals(50 * Math.sqrt(3) - 20 / Math.sqrt(2), seat.seatDistance(), EXACT);
    }

    @Test
    @DisplayName(
            "hand calculation: a ring on the middle of a cube's edge rests on the edge, until it is wider than that")
    void ringOnAnEdge() {
        Seat narrow = Wish.axis(Through.EDGE, new DiscsRequest(40.0, null, 3.0, null, null))
                .plan(CUBE)
                .holding()
                .head();
        assertEquals(50 * Math.sqrt(2), narrow.seatDistance(), EXACT);
        // From the edge's end (h, h, h) another edge leads s to (h - s, h, h), as far as root(h^2 + s^2 / 2).
        Seat wide = Wish.axis(Through.EDGE, new DiscsRequest(2 * Math.sqrt(2500 + 200), null, 3.0, null, null))
                .plan(CUBE)
                .holding()
                .head();
        assertEquals((100 - 20) / Math.sqrt(2), wide.seatDistance(), EXACT);
    }

    @Property(tries = 60, seed = "20261126")
    void aRingRestsOnTheSolidWithoutCuttingIntoIt(@ForAll("designs") Designs designs) {
        Design design = designs.build();
        for (Through through : Through.values()) {
            Holding holding = Wish.axis(through, null).plan(designs).holding();
            double ring = holding.swing() / 5;
            Seat seat = Wish.axis(through, new DiscsRequest(2 * ring, null, null, null, null))
                    .plan(designs)
                    .holding()
                    .head();
            Vector3D end = LatheAxis.direction(new AxisRequest(through, 1), design.solid());
            Vector3D across = end.orthogonal();
            double highest = 0;
            for (int i = 0; i < 3600; i++) {
                double angle = i * Math.PI / 1800;
                Vector3D out =
                        across.multiply(Math.cos(angle)).add(end.cross(across).multiply(Math.sin(angle)));
                // Panels without their lands are the solid between its face planes; a land lifts them, at most so far.
                double height = Double.POSITIVE_INFINITY;
                for (Face face : design.solid().faces()) {
                    Vector3D normal = design.solid().normal(face);
                    double distance = design.panelAt(face.kind(), 0).jointDistance();
                    double cos = normal.dot(end);
                    if (cos > 1e-9) {
                        height = Math.min(height, (distance - ring * normal.dot(out)) / cos);
                    }
                }
                highest = Math.max(highest, height);
            }
            if (seat.largestDisc() == null) {
                assertTrue(seat.seatDistance() >= highest - 1e-3 * ring, () -> through + " " + seat);
                assertTrue(
                        seat.seatDistance() <= highest + 1e-3 * ring + 3 * design.land(), () -> through + " " + seat);
            }
        }
    }

    @ParameterizedTest
    @CsvSource({"CORNER, 50.3496", "EDGE, 39.4214"})
    @DisplayName("hand calculation: of the wood on the largest ring the lowest is 51 mm up, as faces lean by the axis")
    void theLargestRingIsClearOfTheSphereByTheRoom(Through through, double diameter) {
        // At a corner (50 - 51 / root 3) / root(2 / 3), at an edge 50 root 2 - 51.
        Seat seat = Wish.axis(through, new DiscsRequest(null, null, 3.0, null, null))
                .plan(CUBE)
                .holding()
                .head();
        assertEquals(diameter, seat.disc(), 1e-4);
        assertTrue(seat.seatDistance() > 48 + 3);
    }

    @Test
    @DisplayName(
            "hand calculation: a neck of 57.6 mm on a sphere of 96 mm leaves 53.1301 degrees of latitude (3, 4, 5)")
    void neckAndDiscEndTheReach() {
        Holding neck = Wish.axis(Through.FACE, new DiscsRequest(60.0, 57.6, 1.0, null, null))
                .plan(CUBE)
                .holding();
        assertEquals(ReachEnd.NECK, neck.head().reachEnds());
        assertEquals(53.1301, Math.toDegrees(neck.head().reachedLatitude()), 5e-5);
        assertEquals(57.6, neck.head().capDiameter(), EXACT);
        assertEquals(0.8, neck.reachedShare(), EXACT);
        // The tool's side has to stay 11.6 mm from a disc that is 50 mm from the centre: 38.4 = 0.8 x 48.
        Holding disc = Wish.axis(Through.FACE, new DiscsRequest(60.0, 20.0, 11.6, null, null))
                .plan(CUBE)
                .holding();
        assertEquals(ReachEnd.DISC, disc.head().reachEnds());
        assertEquals(0.8, disc.reachedShare(), EXACT);
        Holding free = Wish.axis(Through.CORNER, new DiscsRequest(10.0, 1e-1, 0.0, null, null))
                .plan(CUBE)
                .holding();
        assertEquals(ReachEnd.NECK, free.head().reachEnds());
    }

    @Test
    void screwsLeaveHolesWhereTheWoodIsTurnedAway() {
        // Above a circle of 28.8 mm radius the cube's face stands 50 - 38.4 = 11.6 mm over the sphere.
        ScrewsRequest screws = new ScrewsRequest(30.0, 15.0, 57.6);
        Seat seat = Wish.axis(Through.FACE, new DiscsRequest(80.0, null, 2.0, 10.0, screws))
                .plan(CUBE)
                .holding()
                .head();
        assertEquals(15 - 11.6, seat.holeInSphere(), EXACT);
        assertEquals(15, seat.discThickness(), EXACT);
        assertEquals(Math.PI / 4 * (80 * 80 - 100), seat.glueArea(), EXACT);
        assertEquals(100, seat.largestDisc(), EXACT);
    }

    @Test
    @DisplayName("hand calculation: a screw on a cube's corner axis bites from the faces, which lie below the ring")
    void screwHolesAreMeasuredFromTheWood() {
        // 12 mm from the axis the faces are lowest: (50 - 12 root(2/3)) root 3 = 69.63, and the sphere at 46.48.
        Seat corner = Wish.axis(
                        Through.CORNER, new DiscsRequest(40.0, 10.0, 2.0, null, new ScrewsRequest(40.0, 25.0, 24.0)))
                .plan(CUBE)
                .holding()
                .head();
        double above = (50 - 12 * Math.sqrt(2 / 3.0)) * Math.sqrt(3) - Math.sqrt(48 * 48 - 144);
        assertEquals(25 - above, corner.holeInSphere(), EXACT);
        // Before sanding the sphere is larger; in the finished one the hole is as deep as without.
        FinishRequest finish =
                new FinishRequest(List.of(new GritRequest(120, 10.0), new GritRequest(240, 10.0)), null, null, null);
        DiscsRequest discs = new DiscsRequest(80.0, 40.0, 2.0, null, new ScrewsRequest(30.0, 15.0, 57.6));
        assertEquals(
                15 - 11.6,
                new Wish(null, discs, null, null, null, finish, null)
                        .plan(CUBE)
                        .holding()
                        .head()
                        .holeInSphere(),
                EXACT);
    }

    @ParameterizedTest
    @CsvSource({
        "80, 30, 15, 80, /turning/discs/screws/circle, SCREWS_BESIDE_DISC",
        "0.1, 30, 30, 60, /turning/discs/screws/bite, BITE_TOO_DEEP",
        "0.1, 5, 10, 60, /turning/discs/screws/bite, BITE_TOO_DEEP",
        "80, 30, 15, 60, /turning/discs/centreHole, HOLE_TOO_WIDE",
        "90, 30, 15, 60, /turning/discs/centreHole, HOLE_TOO_WIDE"
    })
    void holesAndScrewsThatDoNotFitTheDiscAreRefused(
            double hole, double length, double bite, double circle, String path, String code) {
        Double centre = code.equals("SCREWS_BESIDE_DISC") ? null : Double.valueOf(hole);
        DiscsRequest discs = new DiscsRequest(80.0, 40.0, null, centre, new ScrewsRequest(length, bite, circle));
        assertRefused(Wish.axis(Through.FACE, discs), path, code);
        DiscsRequest fits = new DiscsRequest(80.0, 40.0, null, 79.9, new ScrewsRequest(30.0, 29.9, 79.9));
        assertTrue(Wish.axis(Through.FACE, fits).plan(CUBE).holding().head().glueArea() > 0);
    }

    @Test
    void aRingThatPassesOverTheSolidIsRefused() {
        double swing = Wish.axis(Through.CORNER, null).plan(CUBE).holding().swing();
        assertRefused(
                Wish.axis(Through.CORNER, new DiscsRequest(swing + 0.1, 40.0, null, null, null)),
                "/turning/discs/diameter",
                "RING_PASSES_OVER");
        Wish just = Wish.axis(Through.CORNER, new DiscsRequest(swing - 0.1, 40.0, null, null, null));
        // Its three upper corners (h, h, -h) are h / root 3 above the middle.
        assertEquals(50 / Math.sqrt(3), just.plan(CUBE).holding().head().seatDistance(), 0.1);
    }

    @Test
    @DisplayName("hand calculation: a neck of 57.6 mm under a sphere of 96 mm begins 38.4 mm from the middle (3, 4, 5)")
    void whatWouldPartTheWorkOffIsMarked() {
        Wish wish = new Wish(
                null,
                new DiscsRequest(60.0, 57.6, 1.0, null, null),
                null,
                new RoughingRequest(null, 6, null),
                null,
                null,
                null);
        Roughing roughing = wish.plan(CUBE).roughing();
        assertEquals(38.4, roughing.reachedHead(), EXACT);
        assertEquals(38.4, roughing.reachedTail(), EXACT);
        // 0, 9.6, 19.2, 28.8, 38.4 and 48 mm.
        assertEquals(
                List.of(false, false, false, false, false, true),
                roughing.depths().stream()
                        .map(station -> station.afterReversing())
                        .toList());
        for (PolygonProfile profile : roughing.profiles()) {
            profile.corners().forEach(corner -> assertEquals(corner.at() > 38.4, corner.afterReversing()));
        }
        assertTrue(roughing.profiles().get(3).corners().get(0).at() < 38.4);
    }

    @Test
    void theSphereTurnsAsItLeavesTheTool() {
        FinishRequest finish = new FinishRequest(List.of(new GritRequest(120, 0.5)), null, null, null);
        SpeedRequest speed = new SpeedRequest(1000.0, 3.0, 20.0);
        SpeedLimits limits =
                new Wish(null, null, null, null, speed, finish, null).plan(CUBE).speeds();
        assertEquals(97, limits.sphere().diameter(), EXACT);
        assertEquals(6000 * 25.4 / 97, limits.sphere().thumbLow(), EXACT);
        assertEquals(limits.solid().thumbLow(), limits.lowest());
        SpeedLimits weak = Wish.speed(null, 0.01, 20.0).plan(CUBE).speeds();
        assertEquals(Math.min(weak.solid().glueLimit(), weak.sphere().glueLimit()), weak.lowest());
    }

    @Property(tries = 100, seed = "20261125")
    void bothCapsAndTheReachAreTheSphere(@ForAll("designs") Designs designs) {
        for (Through through : Through.values()) {
            Holding holding = Wish.axis(through, null).plan(designs).holding();
            double area = 4 * Math.PI * Math.pow(designs.build().sphereRadius(), 2);
            assertEquals(
                    area,
                    holding.reachedArea()
                            + holding.head().capArea()
                            + holding.tail().capArea(),
                    1e-9 * area);
            assertTrue(holding.reachedShare() >= 0 && holding.reachedShare() <= 1);
            assertEquals(through, holding.head().at());
        }
    }

    @Provide
    Arbitrary<Designs> designs() {
        return DesignArbitraries.designs();
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.05, 0.2, 0.4, 0.5, 0.57, 0.6, 0.7, 0.8})
    @DisplayName("shares of a sphere beyond two or three latitudes against quadrature along the third axis")
    void whatTheCupsLeave(double sine) {
        UnivariateFunction slice = z -> {
            double start = sine / Math.sqrt(1 - z * z);
            return start >= Math.sqrt(0.5) ? 0 : 4 * (Math.PI / 2 - 2 * Math.asin(start)) / (2 * Math.PI);
        };
        double end = 2 * sine * sine >= 1 ? 0 : Math.sqrt(1 - 2 * sine * sine);
        SimpsonIntegrator simpson = new SimpsonIntegrator(1e-10, 1e-12, 3, 60);
        double two = end == 0 ? 0 : simpson.integrate(10_000_000, slice, 0, end);
        double three = end <= sine ? 0 : simpson.integrate(10_000_000, slice, sine, end);
        assertEquals(two, CupCalculator.leftByTwo(sine), 1e-6);
        assertEquals(three, CupCalculator.leftByThree(sine), 1e-6);
    }

    @ParameterizedTest
    @CsvSource({"40, 0, 2", "67, 0, 2", "70, 0, 3", "78, 0, 3", "80, 0,"})
    @DisplayName("hand calculation: two positions need 45 degrees, a rim of 67.88 mm on 96; three 35.26, one of 78.38")
    void positionsThatAreNeeded(double rim, double clearance, Integer positions) {
        CupHold cups = Wish.cup(rim, clearance).plan(CUBE).cups();
        assertEquals(positions, cups.positions());
        assertEquals(positions != null && positions == 2, cups.leftByTwo() == 0);
        assertEquals(positions != null, cups.leftByThree() == 0);
        assertEquals(1, cups.turnedInBoth() + 2 * (cups.turnedOnce() - cups.turnedInBoth()) + cups.leftByTwo(), EXACT);
    }

    @Test
    @DisplayName("hand calculation: a rim of 57.6 mm holds a sphere of 96 mm 38.4 mm from its centre (3, 4, 5)")
    void cup() {
        CupHold cups = Wish.cup(57.6, 0).plan(CUBE).cups();
        assertEquals(36.8699, Math.toDegrees(cups.contactAngle()), 5e-5);
        assertEquals(38.4, cups.rimDistance(), EXACT);
        assertEquals(9.6, cups.depth(), EXACT);
        assertEquals(28.8 / 0.8, cups.drivingRadius(), EXACT);
        assertEquals(0.8, cups.turnedOnce(), EXACT);
    }

    @Test
    @DisplayName(
            "by hand: half a thin ring pulls at its two ends with density times speed squared; 6000 to 9000 in/min is"
                    + " common practice, no source")
    void speedOfACube() {
        // 48 mm at 1000 radians a second are 48 m/s.
        SpeedLimits limits =
                Wish.speed(30000 / Math.PI / 10, 3.0, 20.0).plan(CUBE).speeds();
        SpeedLimit sphere = limits.sphere();
        assertEquals(4.8, sphere.surfaceSpeed(), EXACT);
        // Black walnut: 0.55 x 1.12 x 1000 kg/m3, as in the table of woods.
        assertEquals(616 * 4.8 * 4.8 * 1e-6, sphere.ringStress(), EXACT);
        assertEquals(6000 * 25.4 / 96, sphere.thumbLow(), EXACT);
        assertEquals(9000 * 25.4 / 96, sphere.thumbHigh(), EXACT);
        SpeedLimit solid = limits.solid();
        assertEquals(100 * Math.sqrt(2), solid.diameter(), EXACT);
        // A frustum of a pyramid on a square of 100 mm, 26 mm thick, and its centroid.
        double mass = 616e-9 * (1e6 - Math.pow(48, 3)) / 6;
        double centroid = 0.75 * (Math.pow(50, 4) - Math.pow(24, 4)) / (Math.pow(50, 3) - Math.pow(24, 3));
        assertEquals(mass * centroid / 1000 * 100 * 100, solid.panelPull(), EXACT);
        // Four trapezia between edges of 100 and 48 mm.
        assertEquals(4 * (100 + 48) / 2.0 * 26 * Math.sqrt(2), solid.seamArea(), 1e-6);
        assertEquals(solid.panelPull() / solid.seamArea(), solid.seamStress(), EXACT);
        // Four half lenses between a circle of 48 mm and a line at 24 root 2 mm from its centre.
        double angle = Math.atan(1 / Math.sqrt(2));
        assertEquals(4 * (48 * 48 * angle - 2 * 24 * 24 * Math.tan(angle)), sphere.seamArea(), 1e-6);
    }

    @Test
    void atTheGlueLimitTheStressIsTheAllowed() {
        double limit = Wish.speed(null, 3.0, 20.0).plan(CUBE).speeds().sphere().glueLimit();
        SpeedLimit there = Wish.speed(limit, 3.0, 20.0).plan(CUBE).speeds().sphere();
        assertEquals(3.0 / 20, Math.max(there.ringStress(), there.seamStress()), EXACT);
        assertNull(Wish.NONE.plan(CUBE).speeds().sphere().glueLimit());
    }

    @Test
    void ofAnUnknownWoodTheRuleOfThumbIsLeft() {
        Designs unknown = CUBE.bands(List.of(Designs.band("moonwood", null)));
        SpeedLimit sphere = Wish.speed(400.0, 3.0, null).plan(unknown).speeds().sphere();
        assertNull(sphere.glueLimit());
        assertNull(sphere.seamArea());
        assertEquals(6000 * 25.4 / 96, sphere.thumbLow(), EXACT);
    }

    @Test
    @DisplayName("hand calculation: 3 coats at 10 m2 a litre on a sphere of 96 mm, 0.028953 m2, take 8.686 ml")
    void sandingAndCoats() {
        FinishRequest finish =
                new FinishRequest(List.of(new GritRequest(120, 0.3), new GritRequest(240, 0.1)), 3, 10.0, 12.0);
        TurningPlan plan = new Wish(null, null, null, null, null, finish, null).plan(CUBE);
        assertEquals(96.8, plan.roughing().turnedDiameter(), EXACT);
        assertEquals(96.2, plan.finish().grits().get(0).after(), EXACT);
        assertEquals(96, plan.finish().grits().get(1).after(), EXACT);
        assertEquals(8686, plan.finish().finish(), 1);
        assertEquals(36, plan.finish().dryingHours());
        // A cube's hollow of 48 mm reaches 24 root 3 mm from the centre.
        assertEquals(48 - 24 * Math.sqrt(3), plan.finish().wallAfter(), EXACT);
    }

    @Test
    void timesAreWorkTimesRates() {
        FinishRequest finish = new FinishRequest(List.of(new GritRequest(120, 0.0)), 2, null, null);
        RatesRequest rates = new RatesRequest(30.0, 40.0, 20.0, 10.0, 8.0, 15.0);
        TurningPlan plan = new Wish(null, null, new CupRequest(40.0, 0.0), null, null, finish, rates).plan(CUBE);
        double removed = 1e3 - 4 / 3.0 * Math.PI * Math.pow(4.8, 3);
        double[] expected = {30, removed / 40, 4 * Math.PI * 4.8 * 4.8 / 20, 2 * 10, 8, 2 * 15};
        assertEquals(expected.length, plan.time().stages().size());
        for (int i = 0; i < expected.length; i++) {
            assertEquals(expected[i], plan.time().stages().get(i).time(), 1e-6);
        }
        assertEquals(
                plan.time().stages().stream().mapToDouble(StageTime::time).sum(),
                plan.time().total(),
                EXACT);
        assertNull(Wish.NONE.plan(CUBE).time());
    }

    @Test
    void whatCannotBeMeasuredIsRefused() {
        assertRefused(Wish.cup(96, 0), "/turning/cup/rim", "CUP_TOO_WIDE");
        assertRefused(Wish.passes(0.01), "/turning/roughing/passDepth", "TOO_MANY_PASSES");
        assertRefused(
                new Wish(null, null, null, new RoughingRequest(null, null, List.of(10.0, 96.0)), null, null, null),
                "/turning/roughing/rings/1",
                "RING_TOO_WIDE");
    }

    private static void assertRefused(Wish wish, String path, String code) {
        var refused = assertThrows(ImpossibleDesignException.class, () -> wish.plan(CUBE));
        assertEquals(path, refused.violations().get(0).path());
        assertEquals(code, refused.violations().get(0).code());
    }

    @Test
    void theHeaviestPanelIsSoughtInTheSetsThatAreUsed() {
        // Basswood at the rim and walnut at the tip: in the solid the inverted panels are the heavier ones.
        Designs light =
                CUBE.bands(List.of(Designs.band("american basswood", 20.0), Designs.band("black walnut", null)));
        Designs reversed =
                CUBE.bands(List.of(Designs.band("black walnut", null), Designs.band("american basswood", 20.0)));
        SpeedLimits upright = speeds(light);
        SpeedLimits inverted = speeds(light.sets(Sets.INVERTED));
        assertTrue(inverted.solid().panelPull() > upright.solid().panelPull());
        assertEquals(speeds(reversed).solid().panelPull(), inverted.solid().panelPull(), EXACT);
        assertEquals(speeds(reversed).sphere().panelPull(), inverted.sphere().panelPull(), EXACT);
        // Much of the rim is turned away, and in the sphere the upright panels are the heavier ones.
        assertTrue(upright.sphere().panelPull() > inverted.sphere().panelPull());
        for (Designs both : List.of(light.copies(2), light.sets(Sets.MIXED))) {
            assertEquals(inverted.solid(), speeds(both).solid());
            assertEquals(upright.sphere(), speeds(both).sphere());
        }
    }

    private static SpeedLimits speeds(Designs design) {
        return Wish.speed(1000.0, 3.0, 20.0).plan(design).speeds();
    }
}
