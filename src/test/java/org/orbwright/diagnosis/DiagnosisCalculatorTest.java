package org.orbwright.diagnosis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.orbwright.diagnosis.Diagnoses.gap;
import static org.orbwright.diagnosis.Diagnoses.read;
import static org.orbwright.tolerance.SeamSide.INSIDE;
import static org.orbwright.tolerance.SeamSide.OUTSIDE;

import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.orbwright.diagnosis.Diagnosis.FlatsDiagnosis;
import org.orbwright.diagnosis.Diagnosis.PanelBevel;
import org.orbwright.diagnosis.Diagnosis.PanelDiagnosis;
import org.orbwright.diagnosis.Diagnosis.TiltDiagnosis;
import org.orbwright.fixture.Designs;
import org.orbwright.tolerance.PanelSide;

class DiagnosisCalculatorTest {
    private static final Designs LANTERN = Designs.example("dodecahedron-with-land");
    private static final Designs CUBE = Designs.of("cube");

    private static Diagnoses lantern() {
        return Diagnoses.of(LANTERN);
    }

    @Nested
    class Panels {
        @Test
        @DisplayName("hand calculation: 0.5585 mm at 64 mm are 0.5 degrees, 0.1 for each of five segments")
        void gapAtTheRim() {
            double gap = 128 * Math.sin(Math.toRadians(0.25));
            PanelDiagnosis panel = lantern()
                    .panel(null, read(gap, 0.05), PanelSide.RIM, read(64, 0.5))
                    .diagnose()
                    .panel();
            assertEquals("pentagon", panel.face());
            assertEquals(-0.5, Math.toDegrees(panel.angleSum().value()), 1e-12);
            assertEquals(-0.1, Math.toDegrees(panel.tipAngleError().value()), 1e-12);
            assertEquals(0.05, Math.toDegrees(panel.mitreGaugeChange().value()), 1e-12);
        }

        @Test
        void gapAtTheTips() {
            PanelDiagnosis panel = lantern()
                    .panel("pentagon", read(0.3, 0.05), PanelSide.TIPS, null)
                    .diagnose()
                    .panel();
            assertTrue(panel.tipAngleError().value() > 0);
            assertTrue(panel.mitreGaugeChange().value() < 0);
        }

        @Test
        @DisplayName("JCGM 100:2008 by hand: u(gap) = 0.05 / sqrt(12) = 0.01443 mm, u(distance) = 0.1443 mm")
        void uncertainty() {
            PanelDiagnosis panel = lantern()
                    .panel(null, read(0.35, 0.05), PanelSide.RIM, read(64, 0.5))
                    .diagnose()
                    .panel();
            // 0.014434 / 64 and 0.35 / 64^2 x 0.14434 radians; their root of the sum of squares is 2.2587e-4.
            assertEquals(2.2587e-4, panel.angleSum().uncertainty(), 1e-8);
            assertEquals(2.2587e-4 / 5, panel.tipAngleError().uncertainty(), 1e-8);
            assertEquals(2 * 2.2587e-4, panel.angleSum().expanded(), 2e-8);
            assertFalse(panel.tipAngleError().unclear());
        }

        @Test
        void noGapIsNoErrorWithinItsUncertainty() {
            AngleEstimate error = lantern()
                    .panel(null, read(0, 0.05), PanelSide.RIM, null)
                    .diagnose()
                    .panel()
                    .tipAngleError();
            assertEquals(0, error.value(), 1e-15);
            assertEquals(0.05 / Math.sqrt(12) / 64.8578 / 5, error.uncertainty(), 1e-9);
            assertTrue(error.unclear());
        }

        @Test
        void absurdPanels() {
            lantern()
                    .panel("square", read(0.1, 0.1), PanelSide.RIM, null)
                    .assertRefused("/diagnosis/panel/face", "UNKNOWN_FACE", "square");
            Diagnoses.of(Designs.of("truncated-octahedron"))
                    .panel(null, read(0.1, 0.1), PanelSide.RIM, null)
                    .assertRefused("/diagnosis/panel/face", "FACE_MISSING", null);
            lantern()
                    .panel(null, read(17, 1), PanelSide.RIM, null)
                    .assertRefused("/diagnosis/panel/gap/value", "GAP_TOO_LARGE", "17");
            lantern()
                    .panel(null, read(0.1, 0.1), PanelSide.RIM, read(70, 1))
                    .assertRefused("/diagnosis/panel/distance/value", "DISTANCE_TOO_LARGE", "70");
            lantern()
                    .panel(null, read(0, 0.1), PanelSide.RIM, read(0, 1))
                    .assertRefused("/diagnosis/panel/distance/value", "DISTANCE_TOO_LARGE", "0");
        }
    }

    @Nested
    class Seams {
        @Test
        @DisplayName("hand calculation: 0.1234 mm over 35.355 mm are 0.2 degrees, 0.1 for either bevel")
        void pair() {
            double gap = 2 * 25 * Math.sqrt(2) * Math.sin(Math.toRadians(0.1));
            List<PanelBevel> panels = Diagnoses.of(CUBE)
                    .seam(null, null, gap(gap, 0.02, INSIDE))
                    .diagnose()
                    .seam()
                    .panels();
            assertEquals(2, panels.size());
            assertEquals(-0.1, Math.toDegrees(panels.get(1).bevelError().value()), 1e-9);
            assertEquals(
                    0.02 / Math.sqrt(12) / (25 * Math.sqrt(2)) / 2,
                    panels.get(0).bevelError().uncertainty(),
                    1e-8);
        }

        @Test
        @DisplayName("hand calculation: errors of 0.1, -0.3 and 0.2 degrees add up to -0.2, -0.1 and 0.3 at the seams")
        void trioTellsEachBevel() {
            double lever = 25 * Math.sqrt(2);
            double[] sums = {-0.2, -0.1, 0.3};
            List<PanelBevel> panels = Diagnoses.of(CUBE)
                    .seam(
                            List.of("square", "square", "square"),
                            null,
                            gap(2 * lever * Math.sin(Math.toRadians(0.1)), 0.02, INSIDE),
                            gap(2 * lever * Math.sin(Math.toRadians(0.05)), 0.02, INSIDE),
                            gap(2 * lever * Math.sin(Math.toRadians(0.15)), 0.02, OUTSIDE))
                    .diagnose()
                    .seam()
                    .panels();
            assertEquals(0.1, Math.toDegrees(panels.get(0).bevelError().value()), 1e-9);
            assertEquals(-0.3, Math.toDegrees(panels.get(1).bevelError().value()), 1e-9);
            assertEquals(0.2, Math.toDegrees(panels.get(2).bevelError().value()), 1e-9);
            assertEquals(
                    sums[0],
                    Math.toDegrees(panels.get(0).bevelError().value()
                            + panels.get(1).bevelError().value()),
                    1e-9);
            // Three readings, each half: sqrt(3) / 2.
            assertEquals(
                    Math.sqrt(3) / 2 * 0.02 / Math.sqrt(12) / lever,
                    panels.get(0).bevelError().uncertainty(),
                    1e-8);
        }

        @Test
        @DisplayName(
                "JCGM 100:2008 by hand: one distance for two equal gaps counts whole, for opposite ones it cancels")
        void theDistanceIsCommonToAllGaps() {
            // Errors of panel 1: (s1 + s3 - s2) / 2; with three equal sums s / 2, to which the distance adds s u(d) / d
            // / 2.
            AngleEstimate error = Diagnoses.of(CUBE)
                    .seam(null, read(30, 3), gap(0.6, 1e-6, INSIDE), gap(0.6, 1e-6, INSIDE), gap(0.6, 1e-6, INSIDE))
                    .diagnose()
                    .seam()
                    .panels()
                    .get(0)
                    .bevelError();
            assertEquals(0.02 * (3 / Math.sqrt(12)) / 30 / 2, error.uncertainty(), 1e-7);
        }

        @Test
        void aPairOfTwoKindsSharesItsErrorEvenly() {
            List<PanelBevel> panels = Diagnoses.of(Designs.of("truncated-icosahedron"))
                    .seam(List.of("pentagon", "hexagon"), null, gap(0.2, 0.05, OUTSIDE))
                    .diagnose()
                    .seam()
                    .panels();
            assertEquals("pentagon", panels.get(0).face());
            assertEquals(
                    panels.get(0).bevelError().value(),
                    panels.get(1).bevelError().value(),
                    1e-15);
        }

        @Test
        void absurdSeams() {
            Diagnoses.of(CUBE)
                    .seam(null, null, gap(0.1, 0.1, INSIDE), gap(0.1, 0.1, INSIDE))
                    .assertRefused("/diagnosis/seam/gaps", "WRONG_NUMBER_OF_GAPS", "2");
            Diagnoses.of(CUBE)
                    .seam(List.of("square", "square", "square"), null, gap(0.1, 0.1, INSIDE))
                    .assertRefused("/diagnosis/seam/gaps", "WRONG_NUMBER_OF_GAPS", "1");
            Diagnoses.of(Designs.of("octahedron"))
                    .seam(null, null, gap(0, 0.1, INSIDE), gap(0, 0.1, INSIDE), gap(0, 0.1, INSIDE))
                    .assertRefused("/diagnosis/seam/faces", "NO_SUCH_CORNER", "triangle, triangle, triangle");
            Diagnoses.of(Designs.of("truncated-icosahedron"))
                    .seam(List.of("pentagon", "pentagon"), null, gap(0, 0.1, INSIDE))
                    .assertRefused("/diagnosis/seam/faces", "NOT_NEIGHBOURS", "pentagon, pentagon");
            Diagnoses.of(CUBE)
                    .seam(List.of("square", "cube"), null, gap(0, 0.1, INSIDE))
                    .assertRefused("/diagnosis/seam/faces/1", "UNKNOWN_FACE", "cube");
            Diagnoses.of(CUBE)
                    .seam(null, read(40, 1), gap(0, 1, INSIDE), gap(0, 1, INSIDE), gap(0, 1, INSIDE))
                    .assertRefused("/diagnosis/seam/distance/value", "DISTANCE_TOO_LARGE", "40");
            Diagnoses.of(CUBE)
                    .seam(null, null, gap(0, 1, INSIDE), gap(9, 1, INSIDE), gap(0, 1, INSIDE))
                    .assertRefused("/diagnosis/seam/gaps/1/value", "GAP_TOO_LARGE", "9");
        }
    }

    @Nested
    class AcrossFlats {
        @Test
        void sixPairsOfADodecahedron() {
            FlatsDiagnosis flats = lantern()
                    .flats(null, 0.05, 177.9, 178.1, 177.7, 177.8, 178.0, 177.9)
                    .diagnose()
                    .acrossFlats();
            assertEquals(6, flats.measured());
            assertEquals(6, flats.pairs());
            assertEquals(177.7, flats.largestDiameter().value(), 1e-12);
            assertEquals(0.05 / Math.sqrt(12), flats.largestDiameter().uncertainty(), 1e-12);
            assertEquals(0.4, flats.outOfRound().value(), 1e-9);
            assertEquals(0.05 / Math.sqrt(6), flats.outOfRound().uncertainty(), 1e-12);
            assertEquals(0.1, flats.larger().value(), 1e-9);
            assertEquals(0.05 / Math.sqrt(12) / Math.sqrt(6), flats.larger().uncertainty(), 1e-12);
        }

        @Test
        @DisplayName("hand calculation: k = (80 - 46.188) / (80000 + 53333), so 0.5 + 30.940 k are out of round")
        void kindsOfFaceAreMeasuredAgainstTheirOwnDistance() {
            Designs design = Designs.of("truncated-octahedron");
            double hexagons = 2 * design.build().panels().get(1).faceDistance();
            double squares = 2 * design.build().panels().get(0).faceDistance();
            FlatsDiagnosis flats = Diagnoses.of(design)
                    .flats("hexagon", 0.1, hexagons + 0.3, hexagons + 0.1)
                    .flats("square", 0.1, squares - 0.2)
                    .diagnose()
                    .acrossFlats();
            assertEquals(0.507846, flats.outOfRound().value(), 1e-6);
            assertEquals(1 + 33.812 / 133333, flats.factor(), 1e-8);
            assertEquals(7, flats.pairs());
            assertEquals(
                    Math.min(hexagons + 0.1, squares - 0.2),
                    flats.largestDiameter().value(),
                    1e-9);
        }

        @Test
        void aSimilarShellIsNotOutOfRound() {
            Designs design = Designs.of("rhombicuboctahedron");
            Diagnoses flats = Diagnoses.of(design);
            design.build().facePanels().stream()
                    .filter(panel -> panel.kind().opposite())
                    .forEach(panel -> flats.flats(panel.face(), 0.02, 2 * panel.faceDistance() * 0.996));
            FlatsDiagnosis found = flats.diagnose().acrossFlats();
            assertEquals(0.996, found.factor(), 1e-12);
            assertEquals(-0.8, found.larger().value(), 1e-9);
            assertEquals(0, found.outOfRound().value(), 1e-9);
        }

        @Test
        void absurdFlats() {
            lantern()
                    .flats(null, 0.05, 177, 177, 177, 177, 177, 177, 177)
                    .assertRefused("/diagnosis/acrossFlats/6", "TOO_MANY_PAIRS", "pentagon");
            lantern()
                    .flats(null, 0.05, 88.9)
                    .assertRefused("/diagnosis/acrossFlats/0/value", "MEASURE_FAR_OFF", "88.9");
            Diagnoses.of(Designs.of("tetrahedron"))
                    .flats(null, 0.05, 200)
                    .assertRefused("/diagnosis/acrossFlats/0", "NO_OPPOSITE_FACES", "triangle");
        }
    }

    @Nested
    class Tilt {
        @Test
        @DisplayName("hand calculation: 44.9 read to 0.1 degrees: bevels are 0.05 to 0.15 degrees too large")
        void anAngleGaugeGivesAnInterval() {
            TiltDiagnosis tilt =
                    Diagnoses.of(CUBE).tilt(null, 44.9, 0.1).diagnose().tilt();
            double lever = 50 * Math.sqrt(2);
            assertEquals(0.1, Math.toDegrees(tilt.bevelError().value()), 1e-9);
            assertEquals(0.1 / Math.sqrt(12), Math.toDegrees(tilt.bevelError().uncertainty()), 1e-12);
            assertEquals(-lever * Math.sin(Math.toRadians(0.1)), tilt.opening().value(), 1e-9);
            assertEquals(-lever * Math.sin(Math.toRadians(0.15)), tilt.leastOpening(), 1e-9);
            assertEquals(-lever * Math.sin(Math.toRadians(0.05)), tilt.mostOpening(), 1e-9);
            assertEquals(-tilt.leastOpening(), tilt.largestGap());
            assertEquals(
                    lever * Math.toRadians(0.1) / Math.sqrt(12), tilt.opening().uncertainty(), 1e-6);
        }

        @Test
        void anIntervalMayReachBothSides() {
            TiltDiagnosis tilt =
                    Diagnoses.of(CUBE).tilt(null, 45.02, 0.1).diagnose().tilt();
            assertTrue(tilt.leastOpening() < 0 && tilt.mostOpening() > 0);
            assertEquals(tilt.mostOpening(), tilt.largestGap());
        }
    }

    @Test
    void atLeastOneMeasurementIsNeeded() {
        lantern().assertRefused("/diagnosis", "NOTHING_MEASURED", null);
    }

    @Test
    void whatWasNotMeasuredIsLeftOut() {
        Diagnosis diagnosis = lantern().tilt(null, 31.7, 0.1).diagnose();
        assertNull(diagnosis.panel());
        assertNull(diagnosis.seam());
        assertNull(diagnosis.acrossFlats());
        assertNull(diagnosis.faceDistances());
    }
}
