package org.orbwright.jig;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.orbwright.design.Design;
import org.orbwright.design.DesignRequest;
import org.orbwright.design.Panel;
import org.orbwright.design.Piece;
import org.orbwright.fixture.Designs;
import org.orbwright.jig.JigPlan.BevelCut;
import org.orbwright.jig.JigPlan.JigFace;
import org.orbwright.jig.JigPlan.JigSegment;
import org.orbwright.jig.JigPlan.LegCut;
import org.orbwright.jig.JigPlan.UprightCut;
import org.orbwright.jig.JigPlan.WoodFace;
import org.orbwright.jig.JigSetting.MeasuredAngle;
import org.orbwright.jig.JigSetting.SettingLine;
import org.orbwright.quantity.Describe;
import org.orbwright.quantity.LengthUnit;
import org.orbwright.solid.SolidCatalogue;
import org.orbwright.solid.SolidSummary;
import org.orbwright.sphere.SphereSizing.FaceSizing;

/** Set-ups against values worked out by hand, and against their own inverses on every solid. */
class JigCalculatorTest {
    /** Values by hand are written to four decimals. */
    private static final double FOUR_DECIMALS = 5e-5;
    /** Inverses near a right angle lose some bits. */
    private static final double EXACT = 1e-10;

    private static JigPlan plan(Designs designs) {
        DesignRequest design = designs.request();
        return JigCalculator.plan(new JigRequest(null, null), Design.of(design));
    }

    private static JigFace lantern() {
        return plan(Designs.example("dodecahedron-with-land")).faces().get(0);
    }

    static Stream<String> solids() {
        return SolidCatalogue.summaries().stream().map(SolidSummary::name);
    }

    private static Stream<JigSetting> settings(JigFace face) {
        return Stream.concat(
                Stream.of(face.bevel().tilt()),
                face.segments().stream()
                        .flatMap(segment -> Stream.of(
                                segment.left().mitre(), segment.right().mitre())));
    }

    @Test
    @DisplayName("Mitre of five segments: 180/5 = 36 degrees; 100 mm x sin 36 = 58.7785 by mpmath")
    void mitreOfThePentagon() {
        JigSetting mitre = lantern().segments().get(0).left().mitre();
        assertAll(
                () -> assertEquals(36, Math.toDegrees(mitre.angle()), FOUR_DECIMALS),
                () -> assertEquals(54, Math.toDegrees(mitre.complement()), FOUR_DECIMALS),
                () -> assertEquals(58.7785, mitre.sineBarStack(), FOUR_DECIMALS),
                () -> assertEquals(80.9017, mitre.sineBarStackComplement(), FOUR_DECIMALS),
                () -> assertEquals(181.6356, mitre.rise(), FOUR_DECIMALS),
                () -> assertEquals(0.01 / 80.9017, mitre.stackErrorAngle(), 1e-8),
                () -> assertEquals(0.01 / 58.7785, mitre.complementErrorAngle(), 1e-7),
                () -> assertEquals(MeasuredAngle.ANGLE, mitre.measureBy()),
                () -> assertEquals(SettingLine.SQUARE_TO_BLADE, mitre.line()),
                () -> assertEquals(SettingLine.BLADE, mitre.complementLine()));
    }

    @Test
    @DisplayName(
            "250 mm along the table and up: 250 x tan 58.2825 = 404.51; along an upright: 250 x tan 31.7175 = 154.51")
    void tiltFromTheTableAndFromAnUpright() {
        JigSetting tilt = lantern().bevel().tilt();
        assertAll(
                () -> assertEquals(404.51, tilt.riseToBlade(), 5e-3),
                () -> assertEquals(154.51, tilt.rise(), 5e-3),
                () -> assertEquals(SettingLine.UPRIGHT, tilt.line()),
                () -> assertEquals(SettingLine.TABLE, tilt.complementLine()),
                () -> assertEquals(MeasuredAngle.ANGLE, tilt.measureBy()));
    }

    /** A steep mitre is measured from the blade, whose stack is then the more exact one. */
    @Test
    @DisplayName("a triangle's mitre of 60 degrees: 30 from the blade, 250 x tan 30 = 144.3376")
    void aSteepMitreIsMeasuredFromTheBlade() {
        JigSetting mitre = plan(Designs.of("octahedron"))
                .faces()
                .get(0)
                .segments()
                .get(0)
                .left()
                .mitre();
        assertEquals(MeasuredAngle.COMPLEMENT, mitre.measureBy());
        assertEquals(144.3376, mitre.riseToBlade(), FOUR_DECIMALS);
        assertTrue(mitre.complementErrorAngle() < mitre.stackErrorAngle());
    }

    /** The pair's heel at the origin, one inner edge along x: the ends of both legs and their distance. */
    private static double chord(double angle, double run) {
        return Math.hypot(run * Math.cos(angle) - run, run * Math.sin(angle));
    }

    @ParameterizedTest
    @MethodSource("solids")
    @DisplayName("turned further from square the pair's ends come closer, by what two legs in coordinates say")
    void chordsOfTrialCuts(String solid) {
        JigPlan plan = plan(Designs.of(solid));
        double error = Math.toRadians(0.1);
        plan.faces().stream().flatMap(JigCalculatorTest::settings).forEach(setting -> {
            double chord = chord(Math.PI - 2 * setting.angle(), 250);
            double tooLarge = chord(Math.PI - 2 * (setting.angle() + error), 250);
            double tooSmall = chord(Math.PI - 2 * (setting.angle() - error), 250);
            assertEquals(chord, setting.trialPairChord(), 1e-9);
            assertEquals(chord - tooLarge, setting.trialPairChordChange(), 1e-9);
            assertTrue(tooLarge < chord && chord < tooSmall);
            assertTrue(Math.max(setting.rise(), setting.riseToBlade()) >= 250 - 1e-9);
        });
    }

    @ParameterizedTest
    @MethodSource("solids")
    @DisplayName("a tip is the sum of its two mitres; its chord and sine bar give it back")
    void tipAngles(String solid) {
        JigPlan plan = plan(Designs.of(solid));
        double error = Math.toRadians(0.1);
        plan.faces().stream().flatMap(face -> face.segments().stream()).forEach(segment -> {
            TipAngle tip = segment.tip();
            double sum =
                    segment.left().mitre().angle() + segment.right().mitre().angle();
            assertEquals(sum, tip.angle(), EXACT);
            assertEquals(chord(sum, 250), tip.chord(), 1e-9);
            assertEquals(chord(sum + 2 * error, 250) - chord(sum, 250), tip.chordChange(), 1e-9);
            double bar = Math.min(sum, Math.PI - sum);
            assertEquals(100 * Math.sin(bar), tip.sineBarStack(), 1e-9);
            assertEquals(tip.sineBarStack() - 0.01, 100 * Math.sin(bar - tip.stackErrorAngle()), 1e-9);
        });
    }

    @Test
    @DisplayName("tip of the pentagon: 100 x sin 72 = 95.1057; two legs of 250 mm end 500 x sin 36 = 293.8926 apart")
    void tipOfThePentagon() {
        TipAngle tip = lantern().segments().get(0).tip();
        assertEquals(72, Math.toDegrees(tip.angle()), FOUR_DECIMALS);
        assertEquals(95.1057, tip.sineBarStack(), FOUR_DECIMALS);
        assertEquals(293.8926, tip.chord(), FOUR_DECIMALS);
    }

    /**
     * Half the tetrahedron's dihedral of acos(1/3) = 70.5288 degrees is 35.2644, its tangent 1 / sqrt 2. Upright, the
     * seam runs from a land beside the carrier to the inner face, 25 mm from it.
     */
    @Test
    @DisplayName(
            "tetrahedron: tilt 54.7356 flat, 35.2644 upright; 21 mm below a land of 4 are 21 x sqrt 2 high upright")
    void steepTiltsAreAnsweredUpright() {
        BevelCut bevel =
                plan(Designs.of("tetrahedron").edge(300).land(4)).faces().get(0).bevel();
        UprightCut upright = bevel.upright();
        assertEquals(54.7356, Math.toDegrees(bevel.tilt().angle()), FOUR_DECIMALS);
        assertEquals(35.2644, Math.toDegrees(upright.tilt().angle()), FOUR_DECIMALS);
        assertEquals(21 * Math.sqrt(2), upright.bladeHeight(), EXACT);
        assertEquals(4, upright.carrierToBlade(), EXACT);
        double leaning = upright.bladeHeight() * Math.tan(upright.tilt().angle());
        assertEquals(25, upright.carrierToBlade() + leaning, EXACT);
        assertEquals(bevel.seamWidth(), Math.hypot(upright.bladeHeight(), leaning), EXACT);
    }

    @Test
    void aTiltOf45DegreesIsSawnFlat() {
        assertNull(plan(Designs.of("cube")).faces().get(0).bevel().upright());
        assertNull(lantern().bevel().upright());
    }

    @Test
    @DisplayName("Half the dodecahedron's dihedral of acos(-1/sqrt 5) = 116.5651 degrees: 58.2825, tilt 31.7175")
    void tiltOfTheDodecahedron() {
        JigSetting tilt = lantern().bevel().tilt();
        assertAll(
                () -> assertEquals(31.7175, Math.toDegrees(tilt.angle()), FOUR_DECIMALS),
                () -> assertEquals(58.2825, Math.toDegrees(tilt.complement()), FOUR_DECIMALS),
                () -> assertEquals(Math.acos(-1 / Math.sqrt(5)), tilt.trialPairAngle(), EXACT));
    }

    @Test
    @DisplayName("The tangent of the dodecahedron's tilt is (sqrt 5 - 1)/2 = 0.618034; 28 mm panels, a land of 4 mm")
    void bevelBelowALand() {
        BevelCut bevel = lantern().bevel();
        assertAll(
                () -> assertEquals(24, bevel.bladeHeight(), EXACT),
                () -> assertEquals(24 * 0.618034, bevel.inset(), FOUR_DECIMALS),
                () -> assertEquals(28 * 0.618034, bevel.shiftOverThickness(), FOUR_DECIMALS),
                () -> assertEquals(4 * 0.618034, bevel.fenceShift(), FOUR_DECIMALS),
                () -> assertEquals(Math.hypot(24, 24 * 0.618034), bevel.seamWidth(), FOUR_DECIMALS),
                () -> assertEquals(WoodFace.INNER, bevel.faceDown()));
    }

    /**
     * The panel's section: x from the fence's face inwards, y up from the table, the inner face at y = 0. The land
     * bears against the fence at x = 0. The seam's side of the blade comes out of the table at some x and leans over to
     * the fence, which it meets at the height x / tan(tilt); what is left of the rim above that is the land.
     */
    @Test
    @DisplayName("the fence moves towards the blade by fenceShift: 28 - 17.305 / tan 31.7175 = 0, 14.8328 leaves 4 mm")
    void theFenceMovesTowardsTheBladeToLeaveALand() {
        BevelCut bevel = lantern().bevel();
        double tangent = Math.tan(bevel.tilt().angle());
        double withoutLand = bevel.shiftOverThickness();
        assertEquals(0, 28 - withoutLand / tangent, EXACT);
        assertEquals(4, 28 - (withoutLand - bevel.fenceShift()) / tangent, EXACT);
        assertEquals(bevel.inset(), withoutLand - bevel.fenceShift(), EXACT);
        assertTrue(28 - (withoutLand + bevel.fenceShift()) / tangent < 0, "moved out, the cut passes the whole rim");
        assertTrue(words(BevelCut.class, "fenceShift").contains("moved towards the blade"));
        assertTrue(words(FaceSizing.class, "fenceShift").contains("moved towards the blade"));
    }

    private static String words(Class<? extends Record> type, String component) {
        return Arrays.stream(type.getRecordComponents())
                .filter(part -> part.getName().equals(component))
                .map(part -> part.getAnnotation(Describe.class).value())
                .findFirst()
                .orElseThrow();
    }

    @Test
    void withoutALandTheBladeRisesThroughTheWholePanel() {
        BevelCut bevel = plan(Designs.of("cube").thickness(20)).faces().get(0).bevel();
        assertEquals(20, bevel.bladeHeight(), EXACT);
        assertEquals(20, bevel.inset(), EXACT);
        assertEquals(0, bevel.fenceShift());
    }

    @Test
    void tenLegsEachATenthOfADegreeOffLeaveAWholeDegreeOpen() {
        JigFace face = lantern();
        assertEquals(10, face.closing().timesError());
        assertEquals(1, Math.toDegrees(face.closing().gapAngle()), EXACT);
        assertEquals(64.8578 * 2 * Math.sin(Math.toRadians(0.5)), face.closing().gap(), FOUR_DECIMALS);
        assertEquals(250 * Math.tan(Math.toRadians(0.2)), face.bevel().tilt().trialPairGap(), EXACT);
    }

    @Test
    @DisplayName("common practice, no source: what is left out in an inch design is 5 in and 10 in")
    void inchesAreReadAndTheUsualLengthsAreWholeInches() {
        DesignRequest design = Designs.of("cube").in(LengthUnit.IN).request();
        JigPlan usual = JigCalculator.plan(new JigRequest(null, null), Design.of(design));
        JigPlan stated = JigCalculator.plan(new JigRequest(5.0, 10.0), Design.of(design));
        assertEquals(127, usual.sineBar());
        assertEquals(254, usual.run());
        assertEquals(127, stated.sineBar());
        assertEquals(254, stated.run());
    }

    @ParameterizedTest
    @MethodSource("solids")
    void stackRiseAndErrorGiveTheAngleBack(String solid) {
        JigPlan plan = plan(Designs.of(solid));
        plan.faces().stream().flatMap(JigCalculatorTest::settings).forEach(setting -> {
            double angle = setting.angle();
            assertEquals(angle, Math.asin(setting.sineBarStack() / plan.sineBar()), EXACT);
            assertEquals(angle, Math.acos(setting.sineBarStackComplement() / plan.sineBar()), EXACT);
            assertEquals(angle, Math.atan(setting.rise() / plan.run()), EXACT);
            assertEquals(
                    setting.sineBarStack() - plan.stackError(),
                    plan.sineBar() * Math.sin(angle - setting.stackErrorAngle()),
                    EXACT);
        });
    }

    @ParameterizedTest
    @MethodSource("solids")
    void theTwoHoldDownsAreTheCentroidSeenFromBothEnds(String solid) {
        for (JigFace face : plan(Designs.of(solid)).faces()) {
            for (JigSegment segment : face.segments()) {
                LegCut left = segment.left();
                LegCut right = segment.right();
                assertEquals(segment.stopDistance(), left.holdDownFromStop() + right.holdDownFromStop(), EXACT);
                assertTrue(left.faceUp() == WoodFace.OUTER && right.faceUp() == WoodFace.INNER);
            }
        }
    }

    /** From the stop, where one corner lies: the mean of three corners along the base, and over it. */
    @ParameterizedTest
    @MethodSource("solids")
    void holdDownsAreTheMeanOfTheThreeCorners(String solid) {
        Designs designs = Designs.of(solid);
        List<JigFace> faces = plan(designs).faces();
        List<Panel> panels = designs.build().panels();
        for (int i = 0; i < faces.size(); i++) {
            for (JigSegment segment : faces.get(i).segments()) {
                Piece piece = panels.get(i).pieces().stream()
                        .filter(each -> each.segment().equals(segment.segment()))
                        .findFirst()
                        .orElseThrow();
                double base = piece.left() + piece.right();
                assertEquals(base, segment.stopDistance(), EXACT);
                assertEquals((0 + piece.right() + base) / 3, segment.left().holdDownFromStop(), EXACT);
                assertEquals((0 + piece.left() + base) / 3, segment.right().holdDownFromStop(), EXACT);
                assertEquals(piece.base() / 3, segment.left().holdDownFromBase(), EXACT);
                assertEquals(piece.base() / 3, segment.right().holdDownFromBase(), EXACT);
            }
        }
    }

    /** The tips of all segments around a panel's centre make a full turn. */
    @ParameterizedTest
    @MethodSource("solids")
    void mitresOfAPanelAddUpToAFullTurn(String solid) {
        Designs designs = Designs.of(solid);
        JigPlan plan = plan(designs);
        for (int i = 0; i < plan.faces().size(); i++) {
            JigFace face = plan.faces().get(i);
            double sum = 0;
            for (int j = 0; j < face.segments().size(); j++) {
                JigSegment segment = face.segments().get(j);
                int perFace = Designs.solid(solid)
                        .faceKinds()
                        .get(i)
                        .segments()
                        .get(j)
                        .perFace();
                sum += perFace
                        * (segment.left().mitre().angle()
                                + segment.right().mitre().angle());
            }
            assertEquals(2 * Math.PI, sum, EXACT);
        }
    }
}
