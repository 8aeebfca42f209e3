package org.orbwright.design;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.orbwright.design.RequestSketch.lamination;
import static org.orbwright.design.RequestSketch.sketch;
import static org.orbwright.source.Kind.CONTRACT;
import static org.orbwright.source.Kind.HAND;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.orbwright.quantity.LengthUnit;
import org.orbwright.source.Source;

/** Every rule that a design can break: its code, the field it names, and the numbers in its sentence. */
@Source(CONTRACT)
class ImpossibleDesignTest {

    @Nested
    class Solid {
        @Test
        void unknownNameIsAnsweredWithTheNearestOnes() {
            Violation violation = only(sketch().solid("dodecahedon"));
            assertViolation("/solid", "UNKNOWN_SOLID", "dodecahedon", violation);
            assertSays(violation, "dodecahedron");
        }
    }

    @Nested
    class Size {
        @Test
        void sizeThatIsAllLandIsTooSmall() {
            Violation violation = only(sketch().size(SizeBy.ACROSS_FLATS, 20).panel(28, 10.0));
            assertViolation("/size/value", "TOO_SMALL_FOR_LAND", "20", violation);
            assertSays(violation, "10 mm");
        }

        @Test
        @DisplayName("a base distance of 0.688 edges: 0.00688 mm is below a hundredth, 0.0138 mm is not")
        void segmentsOfLessThanAHundredthOfAMillimetreAreTooSmall() {
            Violation violation = only(tiny(0.01));
            assertViolation("/size/value", "SEGMENTS_TOO_SMALL", "0.01", violation);
            assertEquals(0.02, tiny(0.02).design().edge(), 1e-15);
        }

        private RequestSketch tiny(double edge) {
            return sketch().size(SizeBy.EDGE, edge)
                    .panel(0.001, null)
                    .allowance(0)
                    .wall(0.001)
                    .laminations(lamination(null, null, (Double) null));
        }

        @Test
        void sphereThatIsAllLandIsTooSmall() {
            Violation violation = only(sketch().size(SizeBy.SPHERE_DIAMETER, 10).panel(28, 8.0));
            assertViolation("/size/value", "TOO_SMALL_FOR_LAND", "10", violation);
        }
    }

    @Nested
    class PanelAndLand {
        @Test
        void panelAsThickAsTheFaceDistanceLeavesNoHollow() {
            Violation violation = only(sketch().panel(90, null));
            assertViolation("/panel/thickness", "PANEL_TOO_THICK", "90", violation);
            assertSays(violation, "90 mm");
        }

        @Test
        void panelThinnerThanTheFaceDistanceIsAllowed() {
            assertEquals(89.99, sketch().panel(89.99, null).design().thickness());
        }

        @Test
        void landAsHighAsThePanelLeavesNoBevel() {
            Violation violation = only(sketch().panel(12, 12.0).laminations(lamination(null, null, 1.0, null)));
            assertViolation("/panel/land", "LAND_TOO_HIGH", "12", violation);
            assertSays(violation, "12 mm");
        }
    }

    @Nested
    class Sphere {
        @Test
        void secondDiameterBesideTheSizeConflicts() {
            Violation violation =
                    only(sketch().size(SizeBy.SPHERE_DIAMETER, 170).diameter(171.5));
            assertViolation("/sphere/diameter", "CONFLICTING_DIAMETERS", "171.5", violation);
        }

        @Test
        @Source(
                value = HAND,
                text = "the dodecahedron's midradius over its inradius: 180 x 1.3090169944 / 1.1135163644")
        void sphereBeyondTheSeamsIsTooLarge() {
            Violation violation = only(sketch().diameter(212.0));
            assertViolation("/sphere/diameter", "SPHERE_TOO_LARGE", "212", violation);
            // Twice the midradius of a dodecahedron of inradius 90: 180 * 1.3090169944 / 1.1135163644.
            assertSays(violation, "A sphere of 212 mm in diameter");
            assertSays(violation, "211.6 mm");
            assertTrue(violation.allowed().contains("211.6 mm"));
        }

        @Test
        void sphereThatFillsTheSeamsIsAllowed() {
            double seam = sketch().design().seamRadius();
            assertEquals(seam, sketch().diameter(2 * seam).design().sphereRadius());
        }

        @Test
        void allowanceAsThickAsTheSolidLeavesNoSphere() {
            Violation violation = only(sketch().allowance(90));
            assertViolation("/sphere/turningAllowance", "ALLOWANCE_TOO_LARGE", "90", violation);
            assertSays(violation, "180 mm");
        }

        @Test
        void wallAsThickAsTheSphereLeavesNoHollow() {
            Violation violation = only(sketch().diameter(150.0).wall(75));
            assertViolation("/sphere/minimumWall", "WALL_TOO_THICK", "75", violation);
            assertSays(violation, "75 mm");
            assertSays(violation, "150 mm");
        }
    }

    @Nested
    class Laminations {
        @Test
        void faceKindWithoutALaminationIsMissing() {
            Violation violation = only(truncatedIcosahedron().laminations(lamination("pentagon", null, (Double) null)));
            assertViolation("/laminations", "LAMINATION_MISSING", null, violation);
            assertSays(violation, "hexagon");
        }

        @Test
        void laminationWithoutAFaceIsUnclearOnASolidWithTwoFaceKinds() {
            List<Violation> all = all(truncatedIcosahedron().laminations(lamination(null, null, (Double) null)));
            Violation violation = withCode(all, "FACE_MISSING");
            assertEquals("/laminations/0/face", violation.path());
            assertTrue(violation.allowed().contains("pentagon"));
            assertTrue(violation.allowed().contains("hexagon"));
        }

        @Test
        void faceThatTheSolidDoesNotHaveIsUnknown() {
            Violation violation = only(sketch().laminations(
                            lamination("pentagon", null, (Double) null), lamination("hexagon", null, (Double) null)));
            assertViolation("/laminations/1/face", "UNKNOWN_FACE", "hexagon", violation);
            assertTrue(violation.allowed().contains("pentagon"));
        }

        @Test
        void secondLaminationForAFaceKindIsRefused() {
            Violation violation = only(sketch().laminations(
                            lamination("pentagon", null, (Double) null), lamination("pentagon", null, (Double) null)));
            assertViolation("/laminations/1/face", "FACE_TWICE", "pentagon", violation);
        }

        @Test
        void secondBandThatTakesTheRestIsRefused() {
            Violation violation = only(sketch().laminations(lamination(null, null, null, 10.0, null)));
            assertViolation("/laminations/0/bands/2/width", "TWO_REST_BANDS", "null", violation);
            assertSays(violation, "Band 1 ");
        }

        @Test
        void bandsThatFillTheBaseDistanceLeaveNothingForTheRest() {
            Violation violation = only(sketch().laminations(lamination(null, null, 30.0, null, 30.0)));
            assertViolation("/laminations/0/bands/1/width", "NOTHING_LEFT_FOR_REST", "null", violation);
            assertSays(violation, "60 mm");
            assertSays(violation, "55.62 mm");
        }

        @Test
        @Source(value = HAND, text = "apothem over inradius of the dodecahedron: 90 x 0.6881909602 / 1.1135163644")
        void bandsWiderThanTheBaseDistanceAreTooWide() {
            Violation violation = only(sketch().laminations(lamination(null, null, 30.0, 25.65)));
            assertViolation("/laminations/0/bands", "BANDS_TOO_WIDE", "55.65", violation);
            assertSays(violation, "55.65 mm");
            assertSays(violation, "the base distance is 55.6231 mm");
            assertTrue(violation.allowed().startsWith("bands that add up to 55.6231 mm"));
        }

        @Test
        void bandsNarrowerThanTheBaseDistanceAreTooNarrow() {
            Violation violation = only(sketch().laminations(lamination(null, null, 30.0, 25.6)));
            assertViolation("/laminations/0/bands", "BANDS_TOO_NARROW", "55.6", violation);
            assertSays(violation, "55.6231 mm");
        }

        @Test
        @Source(value = HAND, text = "edge over inradius of the dodecahedron: 90 / 1.1135163644")
        void tiltedBandsNarrowerThanTheSegmentsExtentAreTooNarrow() {
            Violation violation = only(sketch().laminations(lamination(null, 90.0, 40.0, 40.0)));
            assertViolation("/laminations/0/bands", "BANDS_TOO_NARROW", "80", violation);
            // Edge of a dodecahedron of inradius 90: 90 / 1.1135163644.
            assertSays(violation, "the segment's extent square to the bands is 80.825 mm");
            assertTrue(violation.allowed().startsWith("bands that add up to at least 80.825 mm"));
        }

        private RequestSketch truncatedIcosahedron() {
            return sketch().solid("truncated-icosahedron");
        }
    }

    /** What is filled in has the bounds of what may be written: widths of 0.001 to 10,000 and spheres to 100,000. */
    @Nested
    class FilledIn {
        private static final String CODE = "FILLED_IN_OUT_OF_RANGE";
        /** Base distance and inradius of a dodecahedron over its edge. */
        private static final double BASE_DISTANCE = 0.6881909602355868;

        private static final double INRADIUS = 1.1135163644116068;

        private RequestSketch huge(double edge, Double... widths) {
            return sketch().size(SizeBy.EDGE, edge).laminations(lamination(null, null, widths));
        }

        @Test
        void bandThatTakesAlmostNothing() {
            double edge = 80;
            double base = edge * BASE_DISTANCE;
            assertViolation("/laminations/0/bands/1/width", CODE, "null", only(huge(edge, base - 0.0005, null)));
            Design design = huge(edge, base - 0.002, null).design();
            assertEquals(
                    0.002, design.panels().get(0).lamination().bands().get(1).width(), 1e-9);
        }

        @Test
        void bandThatTakesMoreThanTenMetres() {
            double edge = 10_100 / BASE_DISTANCE;
            Violation violation = only(huge(edge, 5.0, null));
            assertViolation("/laminations/0/bands/1/width", CODE, "null", violation);
            assertSays(violation, "10095 mm");
            assertEquals("0.001 to 10000 mm", violation.allowed());
            assertEquals(1, huge(edge, 200.0, null).design().panels().size());
        }

        @Test
        void sphereOfMoreThanAHundredMetres() {
            double edge = 50_010 / INRADIUS;
            Double[] widths = {10_000.0, 10_000.0, 10_000.0, null};
            Violation violation = only(huge(edge, widths));
            assertViolation("/sphere/diameter", CODE, "null", violation);
            assertSays(violation, "100016 mm");
            assertEquals(49_998, huge(edge, widths).allowance(12).design().sphereRadius(), 1e-6);
        }

        @Test
        void whatWasWrittenIsNotJudgedAgain() {
            assertEquals(
                    60_000,
                    huge(60_000 / INRADIUS, 10_000.0, 10_000.0, 10_000.0, null)
                            .diameter(120_000.0)
                            .design()
                            .sphereRadius());
        }
    }

    @Test
    void everyBrokenRuleIsReportedAtOnce() {
        List<Violation> all = all(sketch().panel(100, 120.0)
                .size(SizeBy.EDGE, 10)
                .diameter(500.0)
                .wall(300)
                .laminations(lamination(null, null, 500.0)));
        assertEquals(
                Set.of("LAND_TOO_HIGH", "SPHERE_TOO_LARGE", "WALL_TOO_THICK", "BANDS_TOO_WIDE"),
                all.stream().map(Violation::code).collect(Collectors.toSet()));
    }

    @Test
    void sentencesSpeakTheUnitOfTheRequest() {
        Violation violation = only(sketch().unit(LengthUnit.IN)
                .size(SizeBy.ACROSS_FLATS, 7)
                .panel(3.5, null)
                .allowance(0.1)
                .wall(0.25)
                .laminations(lamination(null, null, (Double) null)));
        assertViolation("/panel/thickness", "PANEL_TOO_THICK", "3.5", violation);
        assertSays(violation, "3.5 in");
        assertFalse(violation.message().contains(" mm"));
    }

    @Test
    void exceptionBearsTheFirstSentence() {
        ImpossibleDesignException e = assertThrows(
                ImpossibleDesignException.class, () -> sketch().panel(90, null).design());
        assertEquals(e.violations().get(0).message(), e.getMessage());
    }

    private static List<Violation> all(RequestSketch sketch) {
        return assertThrows(ImpossibleDesignException.class, sketch::design).violations();
    }

    private static Violation only(RequestSketch sketch) {
        List<Violation> all = all(sketch);
        assertEquals(1, all.size(), () -> "violations: " + all);
        return all.get(0);
    }

    private static Violation withCode(List<Violation> all, String code) {
        return all.stream()
                .filter(v -> v.code().equals(code))
                .findFirst()
                .orElseThrow(() -> new AssertionError(code + " is not among " + all));
    }

    private static void assertViolation(String path, String code, String rejected, Violation violation) {
        assertEquals(path, violation.path());
        assertEquals(code, violation.code());
        assertEquals(rejected, violation.rejected());
        assertFalse(violation.allowed().isBlank());
    }

    private static void assertSays(Violation violation, String words) {
        assertTrue(violation.message().contains(words), () -> "\"" + words + "\" is not in: " + violation.message());
    }
}
