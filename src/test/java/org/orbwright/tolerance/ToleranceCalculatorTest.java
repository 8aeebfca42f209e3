package org.orbwright.tolerance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.orbwright.tolerance.Tolerances.part;

import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.orbwright.design.Violation;
import org.orbwright.fixture.Designs;
import org.orbwright.tolerance.ErrorBudget.ErrorContribution;
import org.orbwright.tolerance.LaminationTolerance.BandLineTolerance;
import org.orbwright.tolerance.ToleranceRequest.LengthErrorRequest;

class ToleranceCalculatorTest {
    private static final double TENTH = Math.PI / 1800;
    /** Legs of 64.86 mm from 76.25 mm of base at 54 degrees, 28 mm thick with a land of 4 mm. */
    private static final Designs LANTERN = Designs.example("dodecahedron-with-land");
    /** Base 200 mm, 100 mm high, legs of 100 sqrt(2) mm, 25 mm thick at a bevel of 45 degrees. */
    private static final Designs CUBE = Designs.of("cube");

    private static PanelTolerance panel(Tolerances of) {
        return of.calculate().panels().get(0);
    }

    private static SeamTolerance seam(Tolerances of) {
        return of.calculate().seams().get(0);
    }

    @Test
    @DisplayName("hand calculation: 5 segments each 0.1 degrees too small leave 0.5 degrees, 0.566 mm at the corner")
    void segmentsTooSmallOpenAtTheRim() {
        PanelTolerance panel = panel(Tolerances.of(LANTERN).tipAngle(-0.1, 0));
        double leg = 76.245 / 2 / Math.sin(Math.toRadians(36));
        assertEquals(leg, panel.jointLength(), 1e-3);
        assertEquals(-0.5, Math.toDegrees(panel.angleSum()), 1e-12);
        assertEquals(Math.toRadians(0.5) * leg, panel.gap(), 1e-4);
        assertEquals(0.566, panel.gap(), 1e-3);
        assertEquals(PanelSide.RIM, panel.opensAt());
        assertEquals(panel.gap(), panel.opening().shift());
        assertEquals(
                -panel.gap(), part(panel.opening(), ErrorSource.TIP_ANGLE, ErrorContribution::perTenthDegree), 1e-12);
    }

    @Test
    void segmentsTooLargeOpenAtTheTips() {
        PanelTolerance panel = panel(Tolerances.of(LANTERN).tipAngle(0.1, 0));
        assertEquals(PanelSide.TIPS, panel.opensAt());
        assertEquals(-panel.gap(), panel.opening().shift());
    }

    @Test
    void withoutErrorsNothingOpensAndEverySolidIsBridged() {
        Tolerance exact = Tolerances.of(LANTERN).glue(0.0).calculate();
        assertEquals(0, exact.panels().get(0).gap());
        assertNull(exact.panels().get(0).opensAt());
        assertNull(exact.seams().get(0).opensAt());
        assertEquals(1, exact.simulation().allBridged());
        assertEquals(1, exact.simulation().allBridgedLinear());
        assertTrue(exact.simulation().standardError() > 0);
    }

    @Test
    @DisplayName("hand calculation: scatter of 0.02 degrees in 5 segments is sqrt(5) x 0.02 = 0.0447 degrees of gap")
    void scatterOfTipAngles() {
        ErrorBudget opening = panel(Tolerances.of(LANTERN).tipAngle(0, 0.02)).opening();
        assertEquals(Math.sqrt(5) * Math.toRadians(0.02) * 64.8578, opening.uncertainty(), 1e-5);
        assertEquals(2 * opening.uncertainty(), opening.expanded());
        assertEquals(0, opening.shift());
    }

    @Test
    @DisplayName("hand calculation: bevels 0.1 degrees too large open a seam of 25 sqrt(2) mm by 0.1234 mm outside")
    void bevelsTooLargeOpenOutside() {
        SeamTolerance seam = seam(Tolerances.of(CUBE).bevel(0.1, 0));
        assertEquals(25 * Math.sqrt(2), seam.seamLength(), 1e-9);
        assertEquals(2 * TENTH * 25 * Math.sqrt(2), seam.gap(), 1e-9);
        assertEquals(0.1234, seam.gap(), 1e-4);
        assertEquals(SeamSide.OUTSIDE, seam.opensAt());
        assertEquals(SeamSide.INSIDE, seam(Tolerances.of(CUBE).bevel(-0.1, 0)).opensAt());
    }

    @Test
    @DisplayName("hand calculation: two bevels that scatter by 0.1 degrees scatter by sqrt(2) x 0.1 at a seam")
    void scatterOfBevels() {
        ErrorBudget opening = seam(Tolerances.of(CUBE).bevel(0, 0.1)).opening();
        assertEquals(Math.sqrt(2) * TENTH * 25 * Math.sqrt(2), opening.uncertainty(), 1e-9);
    }

    @Test
    @DisplayName("hand calculation: a land takes its height from the seam: (28 - 4) mm / sin(58.2825)")
    void landShortensTheSeam() {
        assertEquals(
                24 / Math.sin(Math.toRadians(58.2825)),
                seam(Tolerances.of(LANTERN)).seamLength(),
                1e-4);
    }

    @Test
    @DisplayName("hand calculation: the base of a square's segment is twice its height")
    void stopMovesBaseFaceAndDiameter() {
        Tolerance tolerance = Tolerances.of(CUBE).stop(0.2, 0.1).calculate();
        PanelTolerance square = tolerance.panels().get(0);
        assertEquals(0.1, square.baseDistance().shift(), 1e-12);
        // The mean of four segments, each half of 0.1 mm.
        assertEquals(0.05 / 2, square.baseDistance().uncertainty(), 1e-12);
        assertEquals(0.1, square.faceDistance().shift(), 1e-12);
        assertEquals(0.2, tolerance.solid().acrossFlats().shift(), 1e-12);
        assertEquals(0.025 * Math.sqrt(2), tolerance.solid().acrossFlats().uncertainty(), 1e-12);
        assertEquals(0.05, tolerance.solid().largestDiameter().uncertainty(), 1e-12);
        // Two squares that scatter by 0.025 mm each, seen along a seam at 45 degrees.
        SeamTolerance seam = tolerance.seams().get(0);
        assertEquals(0.025 * Math.sqrt(2) * Math.sqrt(2), seam.outerStep().uncertainty(), 1e-12);
        assertEquals(0, seam.outerStep().shift());
    }

    @Test
    @DisplayName(
            "hand calculation: h = b / (2 tan(t / 2)), so that dh/dt = -b / (4 sin(t / 2)^2) = -100 mm at 90 degrees")
    void tipAngleLowersTheSegment() {
        PanelTolerance square = panel(Tolerances.of(CUBE).tipAngle(0.1, 0));
        assertEquals(-100 * TENTH, square.baseDistance().shift(), 1e-12);
        PanelTolerance pentagon = panel(Tolerances.of(LANTERN).tipAngle(0.1, 0));
        double byFormula = -76.245 / 4 / Math.pow(Math.sin(Math.toRadians(36)), 2) * TENTH;
        assertEquals(byFormula, pentagon.baseDistance().shift(), 1e-5);
    }

    @Test
    void bevelsThatAreTooLargeHoldThePanelsApartAndOthersDoNot() {
        // 0.1 degrees over 25 sqrt(2) mm on either side, divided by cos(45).
        assertEquals(
                50 * TENTH,
                panel(Tolerances.of(CUBE).bevel(0.1, 0)).faceDistance().shift(),
                1e-12);
        assertEquals(0, panel(Tolerances.of(CUBE).bevel(-0.1, 0)).faceDistance().shift());
    }

    @Test
    @DisplayName("hand calculation: a blank 0.3 mm too narrow leaves a hole of 0.3 mm, and moves lines by half of it")
    void narrowBlank() {
        Designs banded = CUBE.bands(Designs.widths(20.0, 30.0, null));
        Tolerances narrow = Tolerances.of(banded)
                .widths(new LengthErrorRequest(-0.3, 0.2), new LengthErrorRequest(0.1, 0.05), null);
        // Three bands, each 0.1 mm too wide, make up for it.
        assertEquals(0.3 - 3 * 0.1, panel(narrow).bluntTips().shift(), 1e-12);
        assertEquals(Math.sqrt(0.04 + 3 * 0.0025), panel(narrow).bluntTips().uncertainty(), 1e-12);
        List<BandLineTolerance> lines = narrow.calculate().laminations().get(0).lines();
        assertEquals(2, lines.size());
        assertEquals(80, lines.get(0).distance(), 1e-9);
        assertEquals(50, lines.get(1).distance(), 1e-9);
        assertEquals(0.15 - 0.1, lines.get(0).shift().shift(), 1e-12);
        assertEquals(0.15 - 0.2, lines.get(1).shift().shift(), 1e-12);
        // JCGM 100:2008 by hand: root of (0.2 / 2)^2 + 2 x 0.05^2.
        assertEquals(Math.sqrt(0.01 + 0.005), lines.get(1).shift().uncertainty(), 1e-12);
    }

    @Test
    @DisplayName("JCGM 100:2008 by hand: root of (0.5 x 0.1)^2 + (100 mm x 0.05 degrees)^2 for one segment's height")
    void uncertaintiesAreTheRootOfTheSumOfSquares() {
        ErrorBudget blunt =
                panel(Tolerances.of(CUBE).stop(0, 0.1).tipAngle(0, 0.05)).bluntTips();
        assertEquals(Math.sqrt(0.0025 + Math.pow(100 * Math.toRadians(0.05), 2)), blunt.uncertainty(), 1e-12);
    }

    @Test
    @DisplayName(
            "hand calculation: thickness shows outside, twice across flats; without a land sqrt(2) times at 45 degrees")
    void thicknessShowsOutside() {
        Tolerance thick = Tolerances.of(CUBE)
                .widths(null, null, new LengthErrorRequest(0.5, 0.1))
                .calculate();
        assertEquals(0.5, thick.panels().get(0).faceDistance().shift());
        assertEquals(1, thick.solid().acrossFlats().shift());
        assertEquals(0.1 * Math.sqrt(2), thick.solid().acrossFlats().uncertainty(), 1e-12);
        assertEquals(1, thick.solid().largestDiameter().shift());
        assertEquals(0, thick.solid().thinnestWall().shift());
        assertEquals(0, thick.solid().thinnestWall().uncertainty());
        assertEquals(0, thick.seams().get(0).innerStep().uncertainty());
        assertEquals(
                0.1 * Math.sqrt(2) * Math.sqrt(2),
                thick.seams().get(0).outerStep().uncertainty(),
                1e-12);
    }

    @Test
    @DisplayName(
            "hand calculation: a flat at 100 mm on a sphere of 220 mm; the corners keep 110 - 5 sqrt(3) = 101.3 mm")
    void thicknessIsTheWallWhereAFlatStays() {
        ErrorBudget wall = Tolerances.of(CUBE.diameter(220.0).thickness(95))
                .widths(null, null, new LengthErrorRequest(0.5, 0.1))
                .stop(1, 0)
                .calculate()
                .solid()
                .thinnestWall();
        assertEquals(0.5, wall.shift());
        assertEquals(0.1, wall.uncertainty());
    }

    @Test
    @DisplayName("hand calculation: a tetrahedron's across flats is one face distance, of which all errors count twice")
    void withoutOppositeFacesOneFaceCountsTwice() {
        Tolerance tolerance =
                Tolerances.of(Designs.of("tetrahedron")).stop(0.2, 0.1).calculate();
        ErrorBudget face = tolerance.panels().get(0).faceDistance();
        assertEquals(2 * face.shift(), tolerance.solid().acrossFlats().shift(), 1e-12);
        assertEquals(2 * face.uncertainty(), tolerance.solid().acrossFlats().uncertainty(), 1e-12);
    }

    @Test
    void anAnsweredLimitOpensNoMoreThanTheGlueBridges() {
        Tolerance tolerance = Tolerances.of(LANTERN).calculate();
        double tip = Math.toDegrees(tolerance.limits().tipAngle());
        double bevel = Math.toDegrees(tolerance.limits().bevel());
        double step = 1e-4;
        assertTrue(panel(Tolerances.of(LANTERN).tipAngle(tip, 0)).gap() <= 0.1);
        assertTrue(panel(Tolerances.of(LANTERN).tipAngle(tip + step, 0)).gap() > 0.1);
        assertTrue(seam(Tolerances.of(LANTERN).bevel(bevel, 0)).gap() <= 0.1);
        assertTrue(seam(Tolerances.of(LANTERN).bevel(bevel + step, 0)).gap() > 0.1);
        assertEquals(tip / 2, Math.toDegrees(tolerance.limits().mitreGauge()), 1e-12);
        Tolerances at = Tolerances.of(LANTERN).tipAngle(tip, 0).bevel(-bevel, 0);
        assertEquals(1, at.calculate().simulation().allBridged());
        assertEquals(0, at.tipAngle(tip + step, 0).calculate().simulation().allBridged());
        assertEquals(0, at.bevel(-bevel - step, 0).calculate().simulation().allBridged());
    }

    @Test
    void inchesAreConvertedOnce() {
        Designs inches = Designs.example("dodecahedron-two-spheres");
        Tolerance tolerance = Tolerances.of(inches)
                .glue(0.004)
                .stop(0.01, 0)
                .tipAngle(0.02, 0)
                .calculate();
        assertEquals(0.004 * 25.4, tolerance.glueBridges(), 1e-12);
        PanelTolerance panel = tolerance.panels().get(0);
        assertEquals(
                0.01 * 25.4 * 0.688190960236,
                part(panel.baseDistance(), ErrorSource.STOP_BLOCK, ErrorContribution::shift),
                1e-9);
    }

    @Test
    void glueThatIsNotStatedBridgesARoundLengthOfTheUnit() {
        assertEquals(0.1, Tolerances.of(LANTERN).glue(null).calculate().glueBridges());
        Designs inches = Designs.example("dodecahedron-two-spheres");
        assertEquals(0.004 * 25.4, Tolerances.of(inches).glue(null).calculate().glueBridges(), 1e-12);
    }

    @Test
    void anErrorAsLargeAsWhatIsCutIsRefused() {
        List<Violation> violations = Tolerances.of(LANTERN)
                .tipAngle(10, 5)
                .bevel(10, 5)
                .stop(-76.2, 0.1)
                .widths(
                        new LengthErrorRequest(null, 14.0),
                        new LengthErrorRequest(-4.0, null),
                        new LengthErrorRequest(-28.0, 0.0))
                .refusals();
        assertEquals(
                List.of(
                        "/tolerance/errors/blankWidth",
                        "/tolerance/errors/bandWidth",
                        "/tolerance/errors/panelThickness",
                        "/tolerance/errors/stop"),
                violations.stream().map(Violation::path).toList());
        assertTrue(violations.stream().allMatch(violation -> violation.code().equals("ERROR_TOO_LARGE")));
        List<Violation> angles = Tolerances.of(Designs.of("truncated-icosidodecahedron"))
                .tipAngle(-16, 5)
                .bevel(8, 1)
                .refusals();
        assertEquals(
                List.of("/tolerance/errors/tipAngle", "/tolerance/errors/bevel"),
                angles.stream().map(Violation::path).toList());
        assertEquals("-16 with a scatter of 5", angles.get(0).rejected());
        assertTrue(
                angles.get(0).allowed().endsWith("less than 36 degrees"),
                angles.get(0).allowed());
    }
}
