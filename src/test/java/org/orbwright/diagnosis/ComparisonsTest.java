package org.orbwright.diagnosis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.orbwright.diagnosis.Diagnoses.gap;
import static org.orbwright.diagnosis.Diagnoses.read;
import static org.orbwright.tolerance.SeamSide.INSIDE;
import static org.orbwright.tolerance.SeamSide.OUTSIDE;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.orbwright.design.Design;
import org.orbwright.diagnosis.Diagnosis.FaceBevel;
import org.orbwright.diagnosis.DiagnosisRequest.FaceReadingRequest;
import org.orbwright.diagnosis.DiagnosisRequest.SeamGapRequest;
import org.orbwright.fixture.Designs;
import org.orbwright.quantity.Numbering;
import org.orbwright.solid.Solid;
import org.orbwright.tolerance.JointLengths;

/** Measurements that tell the same thing, and what they have in common. */
class ComparisonsTest {
    private static final Designs CUBE = Designs.of("cube");
    private static final Designs FOOTBALL = Designs.of("truncated-icosahedron");
    /** Standard uncertainty over the resolution of a reading (JCGM 100:2008, F.2.2.1, the clause from memory). */
    private static final double UNIFORM = Math.sqrt(1.0 / 12);

    /** A cube's seam, 25 mm thick at 45 degrees. */
    private static final double SEAM = 25 * Math.sqrt(2);

    /** The gap of a cube's seam whose two bevels together are off by this, inside where they are too small. */
    private static SeamGapRequest seam(double degrees) {
        double chord = 2 * SEAM * Math.sin(Math.toRadians(Math.abs(degrees)) / 2);
        return gap(chord, 0.02, degrees < 0 ? INSIDE : OUTSIDE);
    }

    @Nested
    class Bevels {
        @Test
        @DisplayName("hand calculation: a tilt of 44.9 says 0.1 degrees too much, a gap inside 0.1 too little")
        void tiltAndSeamThatDisagree() {
            List<Comparison> found = Diagnoses.of(CUBE)
                    .seam(null, null, seam(-0.2))
                    .tilt(null, 44.9, 0.1)
                    .diagnose()
                    .comparisons();
            assertEquals(1, found.size());
            Comparison both = found.get(0);
            assertEquals(ComparedMeasures.TILT_AND_SEAM, both.measures());
            assertEquals("square", both.face());
            assertNull(both.length());
            assertEquals(0.2, Math.toDegrees(both.angle().value()), 1e-9);
            double gauge = Math.toRadians(0.1) * UNIFORM;
            double half = 0.02 * UNIFORM / SEAM / 2;
            assertEquals(Math.hypot(gauge, half), both.angle().uncertainty(), 1e-8);
            assertFalse(both.agree());
        }

        @Test
        void tiltAndSeamThatAgree() {
            Comparison both = Diagnoses.of(CUBE)
                    .seam(null, null, seam(0.2))
                    .tilt(null, 44.9, 0.1)
                    .diagnose()
                    .comparisons()
                    .get(0);
            assertEquals(0, both.angle().value(), 1e-12);
            assertTrue(both.agree());
        }

        @Test
        void onlyTheFaceWhoseTiltWasReadIsCompared() {
            List<Comparison> found = Diagnoses.of(FOOTBALL)
                    .seam(List.of("hexagon", "pentagon"), null, gap(0, 0.05, OUTSIDE))
                    .tilt("pentagon", 16.4, 0.1)
                    .diagnose()
                    .comparisons();
            assertEquals(
                    List.of("pentagon"), found.stream().map(Comparison::face).toList());
        }

        @Test
        void oneMeasurementAloneIsNotCompared() {
            assertNull(Diagnoses.of(CUBE).seam(null, null, seam(0.2)).diagnose().comparisons());
            assertNull(Diagnoses.of(CUBE).tilt(null, 44.9, 0.1).diagnose().comparisons());
            assertNull(Diagnoses.of(CUBE)
                    .flats(null, 0.05, 200, 200, 200)
                    .diagnose()
                    .comparisons());
        }
    }

    @Nested
    class Trios {
        @Test
        @DisplayName("hand calculation: bevels off by 0.2, -0.3 and 0.4 degrees have a mean of 0.1 and are 0.7 apart")
        void theSettingIsTheMeanOfThePanels() {
            Diagnosis diagnosis = Diagnoses.of(CUBE)
                    .seam(List.of("square", "square", "square"), null, seam(-0.1), seam(0.1), seam(0.6))
                    .diagnose();
            FaceBevel square = diagnosis.seam().faces().get(0);
            assertEquals(1, diagnosis.seam().faces().size());
            assertEquals(3, square.panels());
            assertEquals(0.1, Math.toDegrees(square.bevelError().value()), 1e-9);
            assertEquals(0.7, Math.toDegrees(square.spread().value()), 1e-9);
            // The mean is a sixth of the three sums; of two panels' difference two whole sums are left.
            double sum = 0.02 * UNIFORM / SEAM;
            assertEquals(Math.sqrt(3) / 6 * sum, square.bevelError().uncertainty(), 1e-8);
            assertEquals(Math.sqrt(2) * sum, square.spread().uncertainty(), 1e-8);
            Comparison panels = diagnosis.comparisons().get(0);
            assertEquals(ComparedMeasures.PANELS_OF_TRIO, panels.measures());
            assertEquals(square.spread(), panels.angle());
            assertFalse(panels.agree());
        }

        @Test
        void panelsThatAreAllAlikeAreTwoPanelsAllTheSame() {
            Diagnosis diagnosis = Diagnoses.of(CUBE)
                    .seam(null, null, seam(0.2), seam(0.2), seam(0.2))
                    .diagnose();
            FaceBevel square = diagnosis.seam().faces().get(0);
            assertEquals(0, square.spread().value(), 1e-12);
            assertEquals(Math.sqrt(2) * 0.02 * UNIFORM / SEAM, square.spread().uncertainty(), 1e-8);
            assertTrue(diagnosis.comparisons().get(0).agree());
        }

        @Test
        @DisplayName("whichever panel is the worst, the largest error less the smallest is how far they lie apart")
        void spreadsOfAnyOrder() {
            double[][] errors = {
                {0.3, 0.1, -0.2}, {0.3, -0.2, 0.1}, {-0.2, 0.3, 0.1}, {0.1, -0.2, 0.3}, {-0.2, 0.1, 0.3}
            };
            for (double[] e : errors) {
                FaceBevel square = Diagnoses.of(CUBE)
                        .seam(null, null, seam(e[0] + e[1]), seam(e[1] + e[2]), seam(e[2] + e[0]))
                        .diagnose()
                        .seam()
                        .faces()
                        .get(0);
                assertEquals(0.5, Math.toDegrees(square.spread().value()), 1e-9);
                assertEquals(0.2 / 3, Math.toDegrees(square.bevelError().value()), 1e-9);
            }
        }

        @Test
        void eachFaceKindOfAMixedTrioHasItsOwnSetting() {
            Design design = FOOTBALL.build();
            double mixed = JointLengths.seam(
                    design, JointLengths.panel(design, "pentagon"), JointLengths.panel(design, "hexagon"));
            double alike = JointLengths.seam(
                    design, JointLengths.panel(design, "hexagon"), JointLengths.panel(design, "hexagon"));
            // Off by 0.1 and 0.3 degrees the hexagons, by -0.2 the pentagon between them.
            List<FaceBevel> faces = Diagnoses.of(FOOTBALL)
                    .seam(
                            List.of("hexagon", "pentagon", "hexagon"),
                            null,
                            gap(2 * mixed * Math.sin(Math.toRadians(0.05)), 0.02, INSIDE),
                            gap(2 * mixed * Math.sin(Math.toRadians(0.05)), 0.02, OUTSIDE),
                            gap(2 * alike * Math.sin(Math.toRadians(0.2)), 0.02, OUTSIDE))
                    .diagnose()
                    .seam()
                    .faces();
            assertEquals(
                    List.of("hexagon", "pentagon"),
                    faces.stream().map(FaceBevel::face).toList());
            FaceBevel hexagon = faces.get(0);
            assertEquals(2, hexagon.panels());
            assertEquals(0.2, Math.toDegrees(hexagon.bevelError().value()), 1e-9);
            assertEquals(0.2, Math.toDegrees(hexagon.spread().value()), 1e-9);
            FaceBevel pentagon = faces.get(1);
            assertEquals(1, pentagon.panels());
            assertEquals(-0.2, Math.toDegrees(pentagon.bevelError().value()), 1e-9);
            assertNull(pentagon.spread());
        }

        @Test
        void aPairDoesNotTellItsPanelsApart() {
            FaceBevel square = Diagnoses.of(CUBE)
                    .seam(null, null, seam(0.2))
                    .diagnose()
                    .seam()
                    .faces()
                    .get(0);
            assertEquals(2, square.panels());
            assertNull(square.spread());
            assertEquals(0.1, Math.toDegrees(square.bevelError().value()), 1e-9);
        }

        @Test
        @DisplayName("JCGM 100:2008 by hand: the distance is common to three equal gaps, for each of the three panels")
        void theDistanceCountsOnceForEveryPanel() {
            SeamGapRequest each = gap(0.6, 1e-6, INSIDE);
            Diagnosis diagnosis =
                    Diagnoses.of(CUBE).seam(null, read(30, 3), each, each, each).diagnose();
            diagnosis
                    .seam()
                    .panels()
                    .forEach(panel -> assertEquals(
                            0.02 * (3 * UNIFORM) / 30 / 2, panel.bevelError().uncertainty(), 1e-7));
        }
    }

    @Nested
    class Flats {
        private final Solid solid = CUBE.build().solid();

        private int opposite(int face) {
            Vector3D normal = solid.normal(solid.faces().get(face));
            for (int other = 0; other < 6; other++) {
                if (solid.normal(solid.faces().get(other)).dot(normal) < -0.5) {
                    return other;
                }
            }
            throw new AssertionError("a cube has opposite faces");
        }

        /** Distances of the faces: those of three pairs add up to 200 and what the pair has more. */
        private List<FaceReadingRequest> distances(double... more) {
            List<FaceReadingRequest> readings = new ArrayList<>();
            int pair = 0;
            for (int face = 0; face < 6; face++) {
                if (face < opposite(face)) {
                    readings.add(new FaceReadingRequest(Numbering.of(face), 100.7 + more[pair], 0.05));
                    readings.add(new FaceReadingRequest(Numbering.of(opposite(face)), 99.3, 0.05));
                    pair++;
                }
            }
            return readings;
        }

        @Test
        @DisplayName("hand calculation: callipers read 199.8 to 200.3 where sums of distances are 199.7 to 200.1")
        void theExtremesAreCompared() {
            List<Comparison> found = Diagnoses.of(CUBE)
                    .flats(null, 0.05, 200.0, 200.3, 199.8)
                    .distances(null, distances(0.1, -0.3, 0))
                    .diagnose()
                    .comparisons();
            assertEquals(
                    List.of(ComparedMeasures.SMALLEST_FLATS, ComparedMeasures.LARGEST_FLATS),
                    found.stream().map(Comparison::measures).toList());
            assertEquals(0.1, found.get(0).length().value(), 1e-9);
            assertEquals(0.2, found.get(1).length().value(), 1e-9);
            for (Comparison comparison : found) {
                assertEquals("square", comparison.face());
                assertNull(comparison.angle());
                // One reading of the callipers and two distances.
                assertEquals(Math.sqrt(3) * 0.05 * UNIFORM, comparison.length().uncertainty(), 1e-12);
                assertFalse(comparison.agree());
            }
        }

        @Test
        void readingsWithinTheirUncertaintyAgree() {
            List<Comparison> found = Diagnoses.of(CUBE)
                    .flats(null, 0.05, 200.0, 200.1, 199.7)
                    .distances(null, distances(0.14, -0.26, 0))
                    .diagnose()
                    .comparisons();
            // Twice sqrt(3) x 0.05 / sqrt(12) are 0.05.
            assertTrue(found.get(0).agree());
            assertTrue(found.get(1).agree());
        }

        @Test
        void whereAPairIsMissingTheExtremesAreNotKnown() {
            assertNull(Diagnoses.of(CUBE)
                    .flats(null, 0.05, 200.0, 200.3)
                    .distances(null, distances(0, 0, 0))
                    .diagnose()
                    .comparisons());
            assertNull(Diagnoses.of(CUBE)
                    .flats(null, 0.05, 200.0, 200.3, 199.8)
                    .distances(null, distances(0, 0, 0).subList(0, 5))
                    .diagnose()
                    .comparisons());
        }

        @Test
        void facesWithoutOppositesAreNotCompared() {
            Designs tetrahedron = Designs.of("tetrahedron");
            double distance = tetrahedron.build().panels().get(0).faceDistance();
            assertNull(Diagnoses.of(tetrahedron)
                    .distances(null, 0.05, distance, distance, distance, distance)
                    .diagnose()
                    .comparisons());
        }

        @Test
        void faceKindsAreComparedOnTheirOwn() {
            Designs designs = Designs.of("truncated-octahedron");
            Design design = designs.build();
            double[] distances = design.solid().faces().stream()
                    .mapToDouble(face -> JointLengths.panel(design, face.kind()).faceDistance())
                    .toArray();
            double flats = 2 * JointLengths.panel(design, "square").faceDistance();
            List<Comparison> found = Diagnoses.of(designs)
                    .flats("square", 0.05, flats, flats, flats)
                    .flats(
                            "hexagon",
                            0.05,
                            2 * JointLengths.panel(design, "hexagon").faceDistance())
                    .distances(null, 0.05, distances)
                    .diagnose()
                    .comparisons();
            assertEquals(
                    List.of("square", "square"),
                    found.stream().map(Comparison::face).toList());
            assertEquals(0, found.get(0).length().value(), 1e-9);
        }
    }

    @Nested
    class Unclear {
        @Test
        void whatItsExpandedUncertaintyReachesCannotBeToldFromNothing() {
            assertTrue(LengthEstimate.of(0.2, 0.1).unclear());
            assertTrue(LengthEstimate.of(-0.2, 0.1).unclear());
            assertFalse(LengthEstimate.of(0.21, 0.1).unclear());
            assertEquals(0.2, LengthEstimate.of(0, 0.1).expanded());
            assertTrue(AngleEstimate.of(-0.2, 0.1).unclear());
            assertFalse(AngleEstimate.of(-0.21, 0.1).unclear());
        }

        @Test
        @DisplayName("a gauge with steps of 0.1 degrees tells neither 44.96 nor 45.04 from 45, but 44.9 and 45.1")
        void tiltsWithinHalfAStepAreUnclear() {
            assertTrue(
                    Diagnoses.of(CUBE).tilt(null, 44.96, 0.1).diagnose().tilt().unclear());
            assertTrue(
                    Diagnoses.of(CUBE).tilt(null, 45.04, 0.1).diagnose().tilt().unclear());
            assertFalse(
                    Diagnoses.of(CUBE).tilt(null, 44.9, 0.1).diagnose().tilt().unclear());
            assertFalse(
                    Diagnoses.of(CUBE).tilt(null, 45.1, 0.1).diagnose().tilt().unclear());
        }

        /** How much a value changes with a reading, by a difference, times the reading's uncertainty. */
        private static double byDifference(double more, double less, double step, double resolution) {
            return Math.abs(more - less) / step * resolution * UNIFORM;
        }

        @Test
        void uncertaintiesOfWideGapsAreThoseOfADifference() {
            double step = 1e-5;
            double[] angles = new double[2];
            for (int i = 0; i < 2; i++) {
                angles[i] = Diagnoses.of(CUBE)
                        .seam(null, null, gap(8 + i * step, 0.02, OUTSIDE))
                        .diagnose()
                        .seam()
                        .angleSums()
                        .get(0)
                        .value();
            }
            double stated = Diagnoses.of(CUBE)
                    .seam(null, null, gap(8, 0.02, OUTSIDE))
                    .diagnose()
                    .seam()
                    .angleSums()
                    .get(0)
                    .uncertainty();
            assertEquals(byDifference(angles[1], angles[0], step, 0.02), stated, 1e-6 * stated);
        }

        @Test
        void uncertaintiesOfTiltsThatAreFarOffAreThoseOfADifference() {
            double step = 1e-4;
            double[] openings = new double[2];
            for (int i = 0; i < 2; i++) {
                openings[i] = Diagnoses.of(CUBE)
                        .tilt(null, 36 + i * step, 0.1)
                        .diagnose()
                        .tilt()
                        .opening()
                        .value();
            }
            double stated = Diagnoses.of(CUBE)
                    .tilt(null, 36, 0.1)
                    .diagnose()
                    .tilt()
                    .opening()
                    .uncertainty();
            assertEquals(byDifference(openings[1], openings[0], step, 0.1), stated, 1e-5 * stated);
        }
    }
}
