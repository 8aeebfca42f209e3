package org.orbwright.diagnosis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.orbwright.diagnosis.Diagnoses.read;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.orbwright.design.ImpossibleDesignException;
import org.orbwright.design.Violation;
import org.orbwright.fixture.Designs;
import org.orbwright.tolerance.PanelSide;

/** Measurements that cannot be. */
class ChecksTest {
    private static Diagnoses lantern() {
        return Diagnoses.of(Designs.example("dodecahedron-with-land"));
    }

    @Test
    @DisplayName("a dodecahedron's blade tilt is 31.7175 degrees, its bevel 58.2825")
    void aBevelIsNoTilt() {
        for (double reading : new double[] {57.4, 58.3, 59.2}) {
            Diagnoses bevel = lantern().tilt(null, reading, 0.1);
            bevel.assertRefused("/diagnosis/tilt/value", "MEASURE_FAR_OFF", Checks.shown(reading));
            Violation violation = assertThrows(ImpossibleDesignException.class, bevel::diagnose)
                    .violations()
                    .get(0);
            assertTrue(violation.message().contains("its bevel"), violation.message());
            assertEquals("within a quarter of 31.7175 degrees", violation.allowed());
        }
    }

    @ParameterizedTest
    @CsvSource({"0", "23.7", "39.7", "90"})
    void tiltsAreNotFarOff(double reading) {
        lantern()
                .tilt(null, reading, 0.001)
                .assertRefused("/diagnosis/tilt/value", "MEASURE_FAR_OFF", Checks.shown(reading));
    }

    @ParameterizedTest
    @CsvSource({"23.8", "31.7", "39.6"})
    void tiltsNearTheDesignAreRead(double reading) {
        assertEquals(
                Math.toRadians(31.71747441 - reading),
                lantern()
                        .tilt(null, reading, 0.1)
                        .diagnose()
                        .tilt()
                        .bevelError()
                        .value(),
                1e-9);
    }

    @Test
    @DisplayName("legs of 64.86 mm on a rule with steps of 1 mm may read 65.8, and not 66")
    void aDistanceMayBeReadAStepTooLong() {
        assertEquals(
                0,
                lantern()
                        .panel(null, read(0, 0.1), PanelSide.RIM, read(65.8, 1))
                        .diagnose()
                        .panel()
                        .angleSum()
                        .value(),
                1e-12);
        lantern()
                .panel(null, read(0, 0.1), PanelSide.RIM, read(66, 1))
                .assertRefused("/diagnosis/panel/distance/value", "DISTANCE_TOO_LARGE", "66");
    }

    @Test
    void scalesThatAreAsCoarseAsWhatTheyReadAreRefused() {
        lantern().tilt(null, 32, 8.01).assertRefused("/diagnosis/tilt/resolution", "RESOLUTION_TOO_COARSE", "8.01");
        lantern()
                .flats(null, 178, 170)
                .assertRefused("/diagnosis/acrossFlats/0/resolution", "RESOLUTION_TOO_COARSE", "178");
        lantern()
                .panel(null, read(0.1, 0.1), PanelSide.RIM, read(40, 11))
                .assertRefused("/diagnosis/panel/distance/resolution", "RESOLUTION_TOO_COARSE", "11");
        assertEquals(
                0.1,
                lantern()
                        .flats(null, 44, 177.9)
                        .diagnose()
                        .acrossFlats()
                        .larger()
                        .value(),
                1e-9);
    }
}
