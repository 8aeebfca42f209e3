package org.orbwright.inlay;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.orbwright.design.RequestSketch.lamination;
import static org.orbwright.design.RequestSketch.sketch;
import static org.orbwright.inlay.Inlays.disc;
import static org.orbwright.inlay.Inlays.nothing;
import static org.orbwright.inlay.Inlays.polygon;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.orbwright.design.Design;
import org.orbwright.design.DesignRequest;
import org.orbwright.design.GeneratedDesigns;
import org.orbwright.design.Panel;
import org.orbwright.design.SizeBy;
import org.orbwright.design.Violation;
import org.orbwright.fixture.Designs;
import org.orbwright.fixture.Slow;
import org.orbwright.fixture.SolidNames;
import org.orbwright.inlay.ChipPlan.ChipHole;
import org.orbwright.inlay.ChipPlan.Plug;
import org.orbwright.inlay.ChipPlan.Recut;
import org.orbwright.inlay.InlayRequest.ChipMeasure;
import org.orbwright.inlay.InlayRequest.ChipRequest;
import org.orbwright.jig.JigCalculator;
import org.orbwright.jig.JigPlan.JigSegment;
import org.orbwright.jig.JigRequest;
import org.orbwright.quantity.LengthUnit;

/** The hole that chipped tips leave, what hides it, and how segments are cut again. */
class ChipHoleTest {
    /** Face distance 90 mm, sphere of 85 mm: 5 mm are turned away at the panel's centre, which is 28 mm thick. */
    private static final DesignRequest DODECAHEDRON = sketch().diameter(170.0).request();

    private static ChipRequest chip(double length, ChipMeasure measured, Double depth) {
        return new ChipRequest(length, measured, depth, null, null);
    }

    private static ChipHole hole(DesignRequest design, ChipRequest chip) {
        return nothing(design).chips(chip).plan().chips().hole();
    }

    @Test
    @DisplayName("tips chipped by 3 mm leave a hole of 6 mm, on a sphere of 170 mm 2 * 85 asin(3 / 85) = 6.00125 mm")
    void holeIsTwiceTheChipAndALittleMoreAlongTheSphere() {
        ChipHole hole = hole(DODECAHEDRON, chip(3, null, null));
        assertEquals(5, hole.tips());
        assertEquals(6, hole.diameterOnPanel(), 1e-12);
        assertEquals(6, hole.diameter(), 1e-12);
        assertEquals(5, hole.turnedAway(), 1e-12);
        assertEquals(170 * Math.asin(3.0 / 85), hole.alongSphere(), 1e-12);
        assertEquals(6.00125, hole.alongSphere(), 5e-6);
        assertEquals(Math.asin(3.0 / 85), hole.capAngle(), 1e-12);
        assertNull(hole.coveredByInlay());
    }

    @Test
    @DisplayName("up to a line 3 mm from the tip a chip of a pentagon reaches 3 / cos 36 = 3.70820 mm")
    void chipAlongTheAxisReachesFartherAtItsCorners() {
        assertEquals(
                7.41641,
                hole(DODECAHEDRON, chip(3, ChipMeasure.ALONG_AXIS, null)).diameter(),
                5e-6);
    }

    @Test
    void holeInAFlatIsAsLargeOnTheFinishedSurface() {
        DesignRequest flats = sketch().solid("cube")
                .size(SizeBy.EDGE, 120)
                .diameter(140.0)
                .laminations(lamination(null, null, 10.0, null))
                .request();
        ChipHole hole = hole(flats, chip(4, null, null));
        assertEquals(8, hole.alongSphere(), 1e-12);
        assertEquals(Math.atan2(4, 60), hole.capAngle(), 1e-12);
        assertEquals(0, hole.turnedAway());
    }

    @Test
    @DisplayName("5 mm are turned away: a chip 5 mm deep is gone, of one 5.01 mm deep sqrt(85^2 - 84.99^2) = 1.3038")
    void shallowChipsAreTurnedAwayFromOutside() {
        ChipPlan gone = nothing(DODECAHEDRON).chips(chip(3, null, 5.0)).plan().chips();
        assertTrue(gone.hole().vanishes());
        assertEquals(0, gone.hole().diameter());
        assertEquals(0, gone.hole().area());
        assertNull(gone.plug());
        ChipHole left = hole(DODECAHEDRON, chip(3, null, 5.01));
        assertFalse(left.vanishes());
        assertEquals(2 * 1.3038, left.diameter(), 5e-5);
        assertEquals(6, left.diameterOnPanel(), 1e-12);
        // A whole circle of that size on the sphere, as all five sectors of 72 degrees are in it.
        assertEquals(2 * Math.PI * 85 * 0.01, left.area(), 1e-9);
        assertEquals(left.area() / 5, left.areaOfOne(), 1e-9);
    }

    @Test
    void withoutChipsAndShapeOnlyTipsAreAnswered() {
        InlayPlan plan = nothing(DODECAHEDRON).plan();
        assertNull(plan.chips());
        assertNull(plan.pocket());
        assertTrue(plan.covered().isEmpty());
        assertFalse(plan.tips().tips().isEmpty());
    }

    @Test
    void discCoversAHoleUpToItsOwnSize() {
        assertTrue(covered(disc(DODECAHEDRON, 6).chips(3)));
        assertFalse(covered(disc(DODECAHEDRON, 5.99).chips(3)));
    }

    @Test
    @DisplayName("a square over its corners of 6 mm covers a hole of 6 / sqrt(2) = 4.243 mm")
    void polygonCoversAHoleUpToItsInscribedCircle() {
        assertTrue(covered(polygon(DODECAHEDRON, 4, 6).chips(2.121)));
        assertFalse(covered(polygon(DODECAHEDRON, 4, 6).chips(2.122)));
    }

    private static boolean covered(Inlays inlays) {
        return inlays.plan().chips().hole().coveredByInlay();
    }

    @Test
    void oneOfFiveTipsLeavesAFifthOfTheArea() {
        ChipHole all = hole(DODECAHEDRON, chip(3, null, null));
        ChipHole two = hole(DODECAHEDRON, new ChipRequest(3.0, null, null, 2, null));
        assertEquals(all.area() * 2 / 5, two.area(), 1e-9);
        assertEquals(all.areaOfOne(), two.areaOfOne());
        assertEquals(all.diameter(), two.diameter());
    }

    @Property(tries = 300)
    @Slow
    void holeIsTheOneThatRaysFind(
            @ForAll("designs") DesignRequest request,
            @ForAll @DoubleRange(min = 0.01, max = 0.7) double lengthPart,
            @ForAll @DoubleRange(min = 0.01, max = 1) double depthPart,
            @ForAll boolean onAxis,
            @ForAll @IntRange(max = 2) int place) {
        Design design = Design.of(request);
        Panel panel = design.panels().get(place % design.panels().size());
        double unit = design.unit().millimetres();
        double length = lengthPart * panel.baseDistance() * (onAxis ? 0.5 : 0.9);
        double depth = depthPart * design.thickness();
        // Else the sphere breaks through where chips are.
        Assume.that(panel.faceDistance() - design.thickness() < 0.9 * design.sphereRadius());
        ChipRequest chip = chip(length / unit, onAxis ? ChipMeasure.ALONG_AXIS : ChipMeasure.ALONG_LEG, depth / unit);
        ChipHole hole =
                nothing(request).face(panel.face()).chips(chip).plan().chips().hole();
        ChipOracle oracle = new ChipOracle(design, panel, length, onAxis, depth);
        assertEquals(oracle.sides(), hole.tips());
        assertEquals(2 * oracle.reach(), hole.diameter(), 1e-6);
        double[] areas =
                IntStream.range(0, oracle.sides()).mapToDouble(oracle::area).toArray();
        double size = length * length;
        assertEquals(Arrays.stream(areas).max().orElseThrow(), hole.areaOfOne(), 2e-4 * size);
        assertEquals(Arrays.stream(areas).sum(), hole.area(), 2e-4 * size * areas.length);
    }

    @Property(tries = 300)
    void recutTakesTheChipAwayAndLeavesTheSegment(
            @ForAll("designs") DesignRequest request,
            @ForAll @DoubleRange(min = 0.01, max = 0.4) double lengthPart,
            @ForAll boolean onAxis) {
        Design design = Design.of(request);
        Panel panel = design.panels().get(0);
        double unit = design.unit().millimetres();
        double length = lengthPart * panel.baseDistance();
        ChipRequest chip = chip(length / unit, onAxis ? ChipMeasure.ALONG_AXIS : ChipMeasure.ALONG_LEG, null);
        List<JigSegment> segments = JigCalculator.plan(new JigRequest(null, null), design)
                .faces()
                .get(0)
                .segments();
        for (Recut recut :
                nothing(request).face(panel.face()).chips(chip).plan().chips().recuts()) {
            JigSegment jig = segments.stream()
                    .filter(segment -> segment.segment().equals(recut.segment()))
                    .findFirst()
                    .orElseThrow();
            double a = panel.baseDistance();
            double tan = Math.tan(jig.left().mitre().angle());
            double tanRight = Math.tan(jig.right().mitre().angle());
            // The larger triangle, its tip at 0, and its right leg, which stays.
            double high = a + recut.wider();
            double rightEnd = tanRight * high;
            double leftEnd = -tan * high;
            assertEquals(recut.firstStop(), rightEnd - leftEnd, 1e-9);
            // The second cut, parallel to the left leg, a finished base from the right corner.
            double cutAtBase = rightEnd - jig.stopDistance();
            double shiftedBy = cutAtBase - leftEnd;
            assertEquals(recut.stopFurther(), shiftedBy, 1e-9);
            assertEquals(recut.takenOff(), shiftedBy / Math.hypot(1, tan), 1e-9);
            // Where it meets the right leg the new tip lies, a base distance from the base.
            double tip = shiftedBy / (tan + tanRight);
            assertEquals(a, high - tip, 1e-9);
            // The chip's corners lie where the second cut takes wood away; the one on the right leg on the cut itself.
            double alongLeft = length * (onAxis ? Math.hypot(1, tan) : 1);
            double alongRight = length * (onAxis ? Math.hypot(1, tanRight) : 1);
            assertEquals(-recut.takenOff(), beyondCut(tan, cutAtBase, high, 0, 0), 1e-9);
            assertTrue(beyondCut(tan, cutAtBase, high, alongLeft, -tan) <= 1e-9);
            assertEquals(0, beyondCut(tan, cutAtBase, high, alongRight, tanRight), 1e-9);
        }
    }

    /**
     * How far a point at a distance from the tip, along a leg of a slope, lies on the kept side of a cut that is
     * parallel to the left leg and meets the base at a place.
     */
    private static double beyondCut(double tan, double atBase, double high, double along, double slope) {
        double down = along / Math.hypot(1, slope);
        double across = down * slope;
        return (across - atBase - tan * (high - down)) / Math.hypot(1, tan);
    }

    static Stream<String> solids() {
        return SolidNames.each();
    }

    @ParameterizedTest
    @MethodSource("solids")
    void plugOfEverySolidHidesItsHoleAndCanBeLetIn(String solid) {
        DesignRequest request = Designs.of(solid).acrossFlats(300).thickness(40).request();
        Design design = Design.of(request);
        for (Panel panel : design.facePanels()) {
            InlayPlan plan = nothing(request)
                    .face(panel.face())
                    .rim(1)
                    .floor(2)
                    .chips(1.5)
                    .plan();
            Plug plug = plan.chips().plug();
            if (panel.faceDistance() - design.thickness() > design.sphereRadius() - 3) {
                assertTrue(plug == null || !plug.fits());
                continue;
            }
            assertTrue(plug.fits());
            assertEquals(3, plug.smallestDiameter(), 1e-9);
            assertEquals(3, plug.diameter(), 1e-9);
            assertEquals(plan.pocket().depth(), plug.depth(), 1e-12);
            assertEquals(plan.pocket().floor(), plug.floor(), 1e-12);
            assertTrue(covered(disc(request, plug.diameter())
                    .face(panel.face())
                    .rim(1)
                    .floor(2)
                    .chips(1.5)));
        }
    }

    @Test
    @DisplayName("a hole of 6.2 mm is hidden by 7 mm in steps of 1 mm, by 6.25 mm in steps of 1.25 mm")
    void plugIsTheNextWholeStep() {
        Inlays inlays = nothing(DODECAHEDRON).rim(1.5).floor(6);
        Plug plug = inlays.chips(3.1).plan().chips().plug();
        assertEquals(6.2, plug.smallestDiameter(), 1e-12);
        assertEquals(7, plug.diameter(), 1e-12);
        // 90 - sqrt(85^2 - 3.5^2) + 1.5 = 6.57209.
        assertEquals(6.57209, plug.depth(), 5e-6);
        assertEquals(28 - 6.57209, plug.floor(), 5e-6);
        Plug finer = inlays.chips(new ChipRequest(3.1, null, null, null, 1.25))
                .plan()
                .chips()
                .plug();
        assertEquals(6.25, finer.diameter(), 1e-12);
    }

    @Test
    @DisplayName("0.1 in chips: a hole of 0.2 in is hidden by 4/16 in, which stands in the section then")
    void plugInInchesBecomesTheShape() {
        DesignRequest inches = sketch().unit(LengthUnit.IN)
                .solid("cube")
                .size(SizeBy.EDGE, 4)
                .panel(0.75, null)
                .wall(0.2)
                .allowance(0)
                .laminations(lamination(null, null, 0.5, null))
                .request();
        Design design = Design.of(inches);
        InlayRequest section =
                new InlayRequest(null, null, null, null, chip(0.1, null, null), null, null, null).filled(design);
        InlayPlan plan = InlayCalculator.plan(section, design);
        InlayRequest next = section.plugged(plan.chips(), design.unit());
        assertEquals(0.25, next.shape().diameter());
        InlayPlan again = InlayCalculator.plan(next, design);
        assertEquals(plan.pocket().depth(), again.pocket().depth(), 1e-9);
        assertTrue(again.chips().hole().coveredByInlay());
        assertEquals(next, next.plugged(again.chips(), design.unit()));
    }

    @Test
    void plugThatDoesNotFitIsNoInlay() {
        InlayPlan plan = nothing(DODECAHEDRON).rim(1).floor(21.5).chips(20).plan();
        assertFalse(plan.chips().plug().fits());
        assertNull(plan.pocket());
        assertTrue(plan.largest().diameter() < 40);
        InlayPlan none = nothing(DODECAHEDRON).rim(12).floor(12).chips(2).plan();
        assertFalse(none.chips().plug().fits());
        assertNull(none.largest());
    }

    @Test
    @DisplayName("a cube's sphere of R = 60 cuts a corner at 60 sqrt(2 / 3) = 48.9898 mm from the face's axis")
    void chipBeyondTheSegmentIsRefused() {
        DesignRequest cube = sketch().solid("cube")
                .size(SizeBy.EDGE, 120)
                .panel(20, null)
                .allowance(0)
                .laminations(lamination(null, null, 10.0, null))
                .request();
        Violation violation = nothing(cube).chips(48.99).refusal();
        assertEquals("/inlays/chips/length", violation.path());
        assertEquals("CHIP_TOO_LONG", violation.code());
        assertEquals("48.99", violation.rejected());
        assertEquals("less than 48.98 mm", violation.allowed());
        assertFalse(nothing(cube).chips(48.989).plan().chips().plug().fits());
        Violation axis =
                nothing(cube).chips(chip(34.65, ChipMeasure.ALONG_AXIS, null)).refusal();
        assertEquals("less than 34.64 mm", axis.allowed());
    }

    @Test
    void chipDeeperThanThePanelIsRefused() {
        Violation violation = nothing(DODECAHEDRON).chips(chip(2, null, 28.1)).refusal();
        assertEquals("/inlays/chips/depth", violation.path());
        assertEquals("CHIP_TOO_DEEP", violation.code());
        assertEquals("at most 28 mm", violation.allowed());
        assertFalse(hole(DODECAHEDRON, chip(2, null, 28.0)).vanishes());
    }

    @Test
    void moreTipsThanSegmentsAreRefused() {
        Violation violation = nothing(DODECAHEDRON)
                .chips(new ChipRequest(2.0, null, null, 6, null))
                .refusal();
        assertEquals("/inlays/chips/tips", violation.path());
        assertEquals("MORE_TIPS_THAN_SEGMENTS", violation.code());
        assertEquals("at most 5", violation.allowed());
    }

    @Provide
    Arbitrary<DesignRequest> designs() {
        return GeneratedDesigns.designs(GeneratedDesigns.anyBandAngle());
    }
}
