package org.orbwright.diagnosis;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.orbwright.diagnosis.Diagnosis.FlatsDiagnosis;
import org.orbwright.fixture.Designs;
import org.orbwright.sphere.SphereSizing.SphereLimit;

/** What limits the largest sphere of a measured shell. */
class RoomTest {
    private static final Designs LARGE_LAND =
            Designs.example("dodecahedron-with-land").land(16);
    /** A dodecahedron's midradius over its inradius. */
    private static final double SEAM_PER_JOINT = 1 / Math.sin(Math.toRadians(58.28252559));

    @Test
    @DisplayName("hand calculation: a land of 16 mm leaves (88.9 - 16) / sin(58.2825) = 85.6991 mm to the seams")
    void designedSeamsLimitTheSphere() {
        FlatsDiagnosis flats =
                Diagnoses.of(LARGE_LAND).flats(null, 0.05, 177.8).diagnose().acrossFlats();
        assertEquals(2 * 72.9 * SEAM_PER_JOINT, flats.largestDiameter().value(), 1e-6);
        assertEquals(171.3982, flats.largestDiameter().value(), 1e-4);
        assertEquals(0, flats.largestDiameter().uncertainty());
        assertEquals(SphereLimit.SEAMS, flats.largestLimitedBy());
    }

    @Test
    void measuredFacesLimitItBelowThat() {
        FlatsDiagnosis flats =
                Diagnoses.of(LARGE_LAND).flats(null, 0.05, 171.39).diagnose().acrossFlats();
        assertEquals(171.39, flats.largestDiameter().value());
        assertEquals(SphereLimit.FLATS, flats.largestLimitedBy());
    }

    @Test
    void eachCentreHasALimitOfItsOwn() {
        double[] distances = new double[12];
        Arrays.fill(distances, 88.9);
        distances[5] = 85;
        CentreDiagnosis centre = Diagnoses.of(LARGE_LAND)
                .distances(null, 0.05, distances)
                .diagnose()
                .faceDistances();
        assertEquals(171.3982, centre.largestDiameter().value(), 1e-4);
        assertEquals(SphereLimit.SEAMS, centre.largestLimitedBy());
        assertEquals(170, centre.largestDiameterNow().value());
        assertEquals(SphereLimit.FLATS, centre.largestNowLimitedBy());
    }
}
