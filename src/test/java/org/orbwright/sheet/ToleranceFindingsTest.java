package org.orbwright.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.orbwright.sheet.Finding.Severity.NOTE;
import static org.orbwright.sheet.Finding.Severity.STOP;
import static org.orbwright.sheet.Finding.Severity.WARN;
import static org.orbwright.source.Kind.CONTRACT;
import static org.orbwright.source.Kind.HAND;
import static org.orbwright.source.Kind.INVARIANT;
import static org.orbwright.source.Kind.ORACLE;

import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.orbwright.design.DesignRequest.BandRequest;
import org.orbwright.fixture.Designs;
import org.orbwright.quantity.LengthUnit;
import org.orbwright.quantity.Rounding;
import org.orbwright.sheet.Finding.Severity;
import org.orbwright.solid.Solid;
import org.orbwright.solid.SolidCatalogue;
import org.orbwright.source.Source;
import org.orbwright.tolerance.Tolerance;
import org.orbwright.tolerance.ToleranceRequest.LengthErrorRequest;
import org.orbwright.tolerance.Tolerances;

@Source(CONTRACT)
class ToleranceFindingsTest {
    private static final Designs LANTERN = Designs.example("dodecahedron-with-land");

    private static List<Finding> findings(Tolerances of) {
        return SheetCalculator.tolerance(of.document()).findings();
    }

    private static void assertFound(Tolerances of, FindingCode code, Severity severity, String says) {
        Finding found = findings(of).stream()
                .filter(finding -> finding.code() == code)
                .findFirst()
                .orElseThrow();
        assertEquals(severity, found.severity());
        assertTrue(found.message().contains(says), found.message());
    }

    private static void assertAbsent(Tolerances of, FindingCode code) {
        assertTrue(findings(of).stream().noneMatch(finding -> finding.code() == code));
    }

    static Stream<String> solids() {
        return SolidCatalogue.all().stream().map(Solid::name);
    }

    /** As a client reads a limit: to four decimals. */
    private static double answered(double radians) {
        return Rounding.round(Math.toDegrees(radians), 4);
    }

    @ParameterizedTest
    @MethodSource("solids")
    @Source(INVARIANT)
    void everyAnsweredLimitMayBeSet(String solid) {
        Random random = new Random(solid.hashCode());
        for (LengthUnit unit : LengthUnit.values()) {
            boolean metric = unit == LengthUnit.MM;
            for (double bridged : new double[] {0, 0.02 + random.nextDouble(), 99}) {
                Designs designs = metric
                        ? Designs.of(solid).thickness(12).land(2)
                        : Designs.of(solid)
                                .in(unit)
                                .acrossFlats(8)
                                .thickness(0.5)
                                .land(0.08)
                                .minimumWall(0.1)
                                .allowance(0.08);
                double glue = metric ? bridged : bridged / 25.4;
                Tolerances exact = Tolerances.of(designs).glue(glue);
                Tolerance tolerance = exact.calculate();
                double tip = answered(tolerance.limits().tipAngle());
                double bevel = answered(tolerance.limits().bevel());
                assertTrue(tip <= 30 && bevel <= 30);
                assertTrue(2 * answered(tolerance.limits().mitreGauge()) <= tip);
                for (int sign : new int[] {-1, 1}) {
                    Tolerances at = exact.tipAngle(sign * tip, 0).bevel(sign * bevel, 0);
                    assertAbsent(at, FindingCode.GAP_BEYOND_GLUE);
                    assertEquals(1, at.calculate().simulation().allBridged());
                }
                tolerance.panels().forEach(panel -> assertTrue(answered(panel.largestTipAngleError()) >= tip));
            }
        }
    }

    @Test
    @DisplayName("hand calculation: a seam of 0.0001 mm would take 24000 degrees to open by 0.1 mm")
    @Source(value = HAND, text = "an angle over a seam of 0.0001 mm")
    void anglesThatCannotBeSetAreNotAnswered() {
        Tolerance sliver = Tolerances.of(
                        Designs.of("dodecahedron").thickness(28).land(27.9999))
                .calculate();
        assertEquals(30, Math.toDegrees(sliver.limits().bevel()), 1e-12);
    }

    private static Designs palindrome() {
        BandRequest edge = Designs.band("black walnut", 20.0);
        return LANTERN.bands(List.of(edge, Designs.band("sugar maple", null), edge));
    }

    @Test
    @DisplayName("hand calculation: of 6 cuts in 5 segments 4 count twice: sqrt((2 + 4 x 4) / (5 x 2)) = 1.3416")
    @Source(value = HAND, text = "variances of sums: of 6 cuts in 5 segments 4 count twice")
    void segmentsThatShareCutsAreMixed() {
        Tolerances mixed = Tolerances.of(palindrome()).tipAngle(0, 0.02);
        assertEquals(Math.sqrt(1.8), mixed.calculate().panels().get(0).unmixed(), 1e-12);
        assertFound(mixed, FindingCode.SEGMENTS_SHARE_CUTS, NOTE, "1.34 times");
        assertAbsent(Tolerances.of(palindrome()).tipAngle(0.01, 0), FindingCode.SEGMENTS_SHARE_CUTS);
        Tolerances two = Tolerances.of(LANTERN).tipAngle(0, 0.02);
        assertNull(two.calculate().panels().get(0).unmixed());
        assertAbsent(two, FindingCode.SEGMENTS_SHARE_CUTS);
    }

    @Test
    @Source(value = ORACLE, text = "simulation of 40,000 panels of consecutive cuts")
    void consecutiveCutsScatterAsIsSaid() {
        double stated = Tolerances.of(palindrome()).calculate().panels().get(0).unmixed();
        Random random = new Random(9);
        int panels = 40_000;
        double squares = 0;
        for (int i = 0; i < panels; i++) {
            double before = random.nextGaussian();
            double sum = 0;
            for (int segment = 0; segment < 5; segment++) {
                double after = random.nextGaussian();
                sum += before + after;
                before = after;
            }
            squares += sum * sum;
        }
        // Ten independent legs would have a variance of 10. The relative standard error is 1 / sqrt(80000) = 0.35 %.
        assertEquals(stated, Math.sqrt(squares / panels / 10), 0.016 * stated);
    }

    private static Tolerances longer(double stop) {
        return Tolerances.of(LANTERN).stop(stop, 0);
    }

    @Test
    @DisplayName("hand calculation: the stop takes 1.4013 mm of the wall of 9.3629 mm for each millimetre")
    @Source(
            value = HAND,
            text = "a dodecahedron's corner moves by its circumradius over its edge, 1.401258538444 (VIAS, "
                    + "Computational Geometry)")
    void wallsThatErrorsTakeAway() {
        double each = 1.401258538444;
        assertFound(longer(9.3630 / each), FindingCode.BREAK_THROUGH, STOP, "9.36 mm");
        assertFound(longer(9.3620 / each), FindingCode.WALL_BELOW_MINIMUM, STOP, "So thin a wall");
        assertFound(longer(3.38 / each), FindingCode.WALL_BELOW_MINIMUM, WARN, "only 5.98 mm");
        assertAbsent(longer(3.34 / each), FindingCode.WALL_BELOW_MINIMUM);
        // Scatter counts twice.
        assertFound(
                Tolerances.of(LANTERN).stop(0, 3.39 / each * Math.sqrt(5) / 2),
                FindingCode.WALL_BELOW_MINIMUM,
                WARN,
                "");
        assertAbsent(Tolerances.of(LANTERN).stop(0, 3.33 / each * Math.sqrt(5) / 2), FindingCode.WALL_BELOW_MINIMUM);
    }

    private static Tolerances thinner(double thickness) {
        return Tolerances.of(LANTERN).widths(null, null, new LengthErrorRequest(thickness, null));
    }

    @Test
    @DisplayName("hand calculation: 2.9 mm are turned away at the faces, 2 mm of them are the allowance")
    @Source(value = HAND, text = "88.9 - 86 = 2.9 mm over the sphere, less the allowance of 2 mm")
    void spheresThatErrorsLeaveNoRoomFor() {
        assertAbsent(thinner(-0.89), FindingCode.ALLOWANCE_NOT_MET);
        assertFound(thinner(-0.92), FindingCode.ALLOWANCE_NOT_MET, WARN, "only 1.98 mm");
        assertFound(thinner(-2.91), FindingCode.FLATS_LEFT, WARN, "only 171.98 mm");
        assertAbsent(thinner(-2.89), FindingCode.FLATS_LEFT);
    }

    @Test
    void seamsThatErrorsOpenAreStopped() {
        Designs seams = LANTERN.land(16).diameter(171.3);
        assertAbsent(Tolerances.of(seams), FindingCode.SEAMS_OPEN);
        assertFound(Tolerances.of(seams).stop(-0.1, 0), FindingCode.SEAMS_OPEN, STOP, "seams may be open");
    }

    @Test
    @DisplayName("hand calculation: 25 mm times twice 0.2 degrees are 0.1745 mm, times 0.1 degrees 0.0436 mm")
    @Source(value = HAND, text = "the thickness times the lean of both legs")
    void legsThatAreNotSquareOpenJointsOnOneFace() {
        Tolerances cube = Tolerances.of(Designs.of("cube"));
        assertAbsent(cube, FindingCode.LEGS_NOT_SQUARE);
        assertFound(
                cube.square(0.2, 0, 0),
                FindingCode.LEGS_NOT_SQUARE,
                STOP,
                "pressed flat, every joint of the square panels opens inside by 0.17 mm. Pulled tight, the panel becomes"
                        + " a shallow cone, and its middle stands 0.49 mm out. The glue bridges 0.1 mm: set the blade"
                        + " square to within 0.1145 degrees.");
        assertFound(
                cube.square(-0.05, 0, 0),
                FindingCode.LEGS_NOT_SQUARE,
                NOTE,
                "opens outside by 0.04 mm. Pulled tight, the panel becomes a shallow cone, and its middle stands 0.12 mm"
                        + " in. The glue bridges that.");
        assertFound(
                cube.square(0, 0, 0.1),
                FindingCode.LEGS_NOT_SQUARE,
                NOTE,
                "opens inside at the rim and outside at the tips, by up to 0.04 mm. The glue bridges that.");
    }
}
