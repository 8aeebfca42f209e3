package org.orbwright.diagnosis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.orbwright.design.Design;
import org.orbwright.design.ImpossibleDesignException;
import org.orbwright.diagnosis.CentreDiagnosis.FaceDeviation;
import org.orbwright.diagnosis.DiagnosisRequest.FaceReadingRequest;
import org.orbwright.fixture.Designs;
import org.orbwright.quantity.Numbering;
import org.orbwright.solid.Face;
import org.orbwright.solid.Solid;
import org.orbwright.solid.SolidCatalogue;
import org.orbwright.tolerance.JointLengths;

class CentreFitTest {
    private static final Designs LANTERN = Designs.example("dodecahedron-with-land");
    private static final double STEP = 0.05 / Math.sqrt(12);

    /** Distances of all faces of a similar solid: its centre lies somewhere and its smallest distance is larger. */
    private static double[] distances(Designs designs, Vector3D centre, double larger) {
        Design design = designs.build();
        return design.solid().faces().stream()
                .mapToDouble(face -> (1 + larger / design.smallestFaceDistance())
                                * JointLengths.panel(design, face.kind()).faceDistance()
                        + design.solid().normal(face).dot(centre))
                .toArray();
    }

    private static CentreDiagnosis fit(Designs designs, Integer disc, double... distances) {
        return Diagnoses.of(designs).distances(disc, 0.05, distances).diagnose().faceDistances();
    }

    @Test
    @DisplayName("all 31 solids 0.5 % larger in every direction: nothing is out of round and nothing off centre")
    void aSimilarShellIsRound() {
        for (Solid solid : SolidCatalogue.all()) {
            Designs designs = Designs.of(solid.name());
            for (Vector3D centre : List.of(Vector3D.ZERO, Vector3D.of(0.2, -0.4, 0.1))) {
                CentreDiagnosis fit = fit(designs, null, distances(designs, centre, 0.5));
                assertEquals(1.005, fit.factor(), 1e-12, solid.name());
                assertEquals(1, fit.larger().value(), 1e-9, solid.name());
                assertEquals(centre.norm(), fit.offset().value(), 1e-9, solid.name());
                for (FaceDeviation face : fit.deviations()) {
                    assertEquals(0, face.deviation(), 1e-9, solid.name());
                }
            }
        }
    }

    @Test
    @DisplayName("a truncated tetrahedron of 200 mm, 1.005 times as large, whose small faces stand at 5/3 of the large")
    void aSimilarTruncatedTetrahedron() {
        List<FaceReadingRequest> faces = new ArrayList<>();
        for (int face : new int[] {0, 1, 4, 5, 6}) {
            faces.add(new FaceReadingRequest(face + 1, face < 5 ? 100.5 : 167.5, 0.01));
        }
        CentreDiagnosis fit = Diagnoses.of(Designs.of("truncated-tetrahedron"))
                .distances(null, faces)
                .diagnose()
                .faceDistances();
        assertEquals(1.005, fit.factor(), 1e-9);
        assertEquals(0, fit.offset().value(), 1e-9);
        assertEquals(0, fit.outOfRound().value(), 1e-9);
    }

    @Test
    void findsTheCentreOfAPerfectShell() {
        for (String solid :
                List.of("tetrahedron", "cube", "truncated-icosidodecahedron", "deltoidal-hexecontahedron")) {
            Designs designs = Designs.of(solid);
            Vector3D centre = Vector3D.of(0.3, -0.2, 0.6);
            double[] distances = distances(designs, centre, 0.4);
            CentreDiagnosis fit = fit(designs, null, distances);
            assertEquals(0.7, fit.offset().value(), 1e-9);
            assertEquals(0.8, fit.larger().value(), 1e-9);
            if (solid.equals("tetrahedron")) {
                assertNull(fit.outOfRound());
            } else {
                assertEquals(0, fit.outOfRound().value(), 1e-9);
            }
            assertEquals(
                    2 * (designs.build().smallestFaceDistance() + 0.4),
                    fit.largestDiameter().value(),
                    1e-9);
            assertTrue(fit.largestDiameterNow().value() < fit.largestDiameter().value());
            assertEquals(
                    0.49,
                    Math.pow(fit.discs().shift().value(), 2)
                            + Math.pow(fit.discs().along().value(), 2),
                    1e-9);
        }
    }

    @Test
    @DisplayName(
            "hand calculation: twelve normals add up to 4 n n', so u(centre) = u / 2 and u(mean distance) = u / sqrt(12)")
    void uncertaintiesOfADodecahedron() {
        CentreDiagnosis fit = fit(LANTERN, null, distances(LANTERN, Vector3D.of(0.1, 0.2, 0.2), 0));
        assertEquals(STEP / 2, fit.offset().uncertainty(), 1e-9);
        assertEquals(STEP / 2, fit.discs().shift().uncertainty(), 1e-9);
        assertEquals(STEP / 2, fit.discs().along().uncertainty(), 1e-9);
        assertEquals(2 * STEP / Math.sqrt(12), fit.larger().uncertainty(), 1e-9);
        assertEquals(2 * STEP, fit.largestDiameterNow().uncertainty(), 1e-12);
        CentreDiagnosis still = fit(LANTERN, null, distances(LANTERN, Vector3D.ZERO, 0));
        assertEquals(STEP / 2, still.offset().uncertainty(), 1e-9);
        assertEquals(STEP / 2, still.discs().shift().uncertainty(), 1e-9);
        assertNull(still.discs().direction());
    }

    @Test
    void uncertaintiesAreTheSpreadOfRepeatedReadings() {
        Random random = new Random(4);
        double[] exact = distances(LANTERN, Vector3D.of(0.5, 0, -0.3), 0.2);
        CentreDiagnosis stated = fit(LANTERN, 3, exact);
        double[] sum = new double[3];
        double[] squares = new double[3];
        int repeats = 2000;
        for (int i = 0; i < repeats; i++) {
            double[] read = exact.clone();
            for (int j = 0; j < read.length; j++) {
                read[j] += 0.05 * (random.nextDouble() - 0.5);
            }
            CentreDiagnosis fit = fit(LANTERN, 3, read);
            double[] found = {
                fit.offset().value(), fit.discs().shift().value(), fit.larger().value()
            };
            for (int j = 0; j < found.length; j++) {
                sum[j] += found[j];
                squares[j] += found[j] * found[j];
            }
        }
        double[] wanted = {
            stated.offset().uncertainty(),
            stated.discs().shift().uncertainty(),
            stated.larger().uncertainty()
        };
        for (int j = 0; j < wanted.length; j++) {
            double mean = sum[j] / repeats;
            // A standard deviation from 2000 values has a relative standard error of 1 / sqrt(4000) = 1.6 %.
            assertEquals(wanted[j], Math.sqrt(squares[j] / repeats - mean * mean), 0.08 * wanted[j]);
        }
    }

    @Test
    void discsAreShiftedTowardsTheCentreCounterClockwiseFromTheFirstCorner() {
        Design design = LANTERN.build();
        for (int disc : new int[] {0, 7}) {
            Face face = design.solid().faces().get(disc);
            Vector3D axis = design.solid().normal(face);
            Vector3D middle = axis.multiply(design.solid().corner(face, 0).dot(axis));
            for (int corner = 0; corner < 5; corner++) {
                Vector3D towards =
                        design.solid().corner(face, corner).subtract(middle).normalize();
                Vector3D centre = towards.multiply(0.3).add(axis.multiply(-0.2));
                CentreDiagnosis fit = fit(LANTERN, disc, distances(LANTERN, centre, 0));
                assertEquals(disc, fit.discs().face());
                assertEquals(0.3, fit.discs().shift().value(), 1e-9);
                assertEquals(-0.2, fit.discs().along().value(), 1e-9);
                double direction = Math.toDegrees(fit.discs().direction());
                assertTrue(direction >= 0 && direction <= 360);
                assertEquals(0, Math.sin(Math.toRadians(direction - 72 * corner)), 1e-9);
                assertEquals(1, Math.cos(Math.toRadians(direction - 72 * corner)), 1e-9);
            }
        }
    }

    @Test
    void oneProudFaceIsOutOfRound() {
        double[] distances = distances(LANTERN, Vector3D.ZERO, 0);
        distances[4] += 0.6;
        CentreDiagnosis fit = fit(LANTERN, null, distances);
        // By hand: the fit takes 1/12 of it as growth and moves the centre by 1/4 of it along the face's normal.
        assertEquals(0.1, fit.larger().value(), 1e-9);
        assertEquals(0.15, fit.offset().value(), 1e-9);
        assertEquals(0.6 * (1 - 1.0 / 12 - 0.25), fit.deviations().get(4).deviation(), 1e-9);
        // Its five neighbours, whose normals are at cosine 1 / sqrt(5) to its own, are the nearest to the new centre.
        assertEquals(2 * (88.9 - 0.15 / Math.sqrt(5)), fit.largestDiameter().value(), 1e-6);
        assertEquals(2 * 88.9, fit.largestDiameterNow().value(), 1e-6);
        // They lie lowest by what the fit has grown and by their part of the shift.
        double lowest = -0.05 - 0.15 / Math.sqrt(5);
        assertEquals(0.6 * (1 - 1.0 / 12 - 0.25) - lowest, fit.outOfRound().value(), 1e-9);
    }

    /**
     * With H = 1/12 + n n' / 4 for the part of reading j in the fitted distance i, what two faces deviate from each
     * other has the variance (1 - H)ii + (1 - H)jj - 2 (1 - H)ij, and the distance from the centre 1 - 1/4.
     */
    @Test
    @DisplayName("hand calculation: u(out of round) by the projection, u(nearest face) = u sqrt(3) / 2")
    void uncertaintiesOfAProudFace() {
        double[] distances = distances(LANTERN, Vector3D.ZERO, 0);
        distances[4] += 0.6;
        CentreDiagnosis fit = fit(LANTERN, null, distances);
        double own = 1 - 1.0 / 12 - 0.25;
        double neighbour = -1.0 / 12 - 0.25 / Math.sqrt(5);
        assertEquals(STEP * Math.sqrt(2 * own - 2 * neighbour), fit.outOfRound().uncertainty(), 1e-9);
        assertEquals(2 * STEP * Math.sqrt(0.75), fit.largestDiameter().uncertainty(), 1e-9);
    }

    @Test
    @DisplayName("between two faces that are too near the largest sphere is as uncertain as the sum of both")
    void uncertaintyOfTheRoomiestCentre() {
        double[] distances = distances(LANTERN, Vector3D.ZERO, 0.5);
        Design design = LANTERN.build();
        Vector3D first = design.solid().normal(design.solid().faces().get(0));
        for (int i = 0; i < 12; i++) {
            distances[i] -= Math.abs(design.solid()
                                    .normal(design.solid().faces().get(i))
                                    .dot(first))
                            > 0.9
                    ? 0.5
                    : 0;
        }
        CentreDiagnosis fit = fit(LANTERN, null, distances);
        assertEquals(2 * 88.9, fit.roomiest().largestDiameter().value(), 1e-9);
        assertEquals(STEP * Math.sqrt(2), fit.roomiest().largestDiameter().uncertainty(), 1e-9);
    }

    @Test
    void aFaceThatTheSolidDoesNotHaveIsNamed() {
        List<FaceReadingRequest> faces = new ArrayList<>();
        for (int face : new int[] {0, 1, 2, 3, 12}) {
            faces.add(new FaceReadingRequest(Numbering.of(face), 88.9, 0.05));
        }
        Diagnoses unknown = Diagnoses.of(LANTERN).distances(null, faces);
        unknown.assertRefused("/diagnosis/faceDistances/faces/4/face", "UNKNOWN_FACE", "13");
        String allowed = assertThrows(ImpossibleDesignException.class, unknown::diagnose)
                .violations()
                .get(0)
                .allowed();
        assertTrue(allowed.startsWith("1 to 12,"), allowed);
    }

    @Test
    void aScaleThatIsTooCoarseForADistanceIsRefused() {
        List<FaceReadingRequest> faces = new ArrayList<>();
        for (int face = 0; face < 12; face++) {
            faces.add(new FaceReadingRequest(Numbering.of(face), 88.9, face == 7 ? 23 : 0.05));
        }
        Diagnoses.of(LANTERN)
                .distances(null, faces)
                .assertRefused("/diagnosis/faceDistances/faces/7/resolution", "RESOLUTION_TOO_COARSE", "23");
    }

    @Test
    void aFinerReadingCountsForMore() {
        double[] distances = distances(LANTERN, Vector3D.ZERO, 0);
        List<FaceReadingRequest> faces = new ArrayList<>();
        for (int i = 0; i < distances.length; i++) {
            faces.add(new FaceReadingRequest(Numbering.of(i), distances[i] + (i == 4 ? 0.6 : 0), i == 4 ? 20.0 : 0.05));
        }
        CentreDiagnosis fit =
                Diagnoses.of(LANTERN).distances(null, faces).diagnose().faceDistances();
        assertEquals(0, fit.offset().value(), 1e-5);
        assertEquals(0.6, fit.deviations().get(4).deviation(), 1e-5);
    }

    @Test
    void absurdDistances() {
        double[] distances = distances(LANTERN, Vector3D.ZERO, 0);
        Diagnoses.of(LANTERN)
                .distances(12, 0.05, distances)
                .assertRefused("/diagnosis/faceDistances/discFace", "UNKNOWN_FACE", "13");
        double[] far = distances.clone();
        far[3] = 177.8;
        Diagnoses.of(LANTERN)
                .distances(null, 0.05, far)
                .assertRefused("/diagnosis/faceDistances/faces/3/value", "MEASURE_FAR_OFF", "177.8");
        List<FaceReadingRequest> twice = new ArrayList<>();
        for (int face : new int[] {0, 1, 2, 3, 1}) {
            twice.add(new FaceReadingRequest(Numbering.of(face), 88.9, 0.05));
        }
        Diagnoses.of(LANTERN)
                .distances(null, twice)
                .assertRefused("/diagnosis/faceDistances/faces/4/face", "FACE_TWICE", "2");
        List<FaceReadingRequest> ring = new ArrayList<>();
        Design cube = Designs.of("cube").build();
        for (int face = 0; face < 6; face++) {
            if (Math.abs(cube.solid().normal(cube.solid().faces().get(face)).getX()) < 0.5) {
                ring.add(new FaceReadingRequest(Numbering.of(face), 100.0, 0.05));
            }
        }
        Diagnoses.of(Designs.of("cube"))
                .distances(null, ring)
                .assertRefused("/diagnosis/faceDistances/faces", "FACES_DO_NOT_FIX_CENTRE", "4 faces");
    }
}
