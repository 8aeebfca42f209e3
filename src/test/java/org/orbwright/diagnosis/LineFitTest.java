package org.orbwright.diagnosis;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

class LineFitTest {
    private static final double[] READ = {
        21.521, 22.012, 22.512, 23.003, 23.507, 23.999, 24.513, 25.002, 25.503, 26.010, 26.511
    };
    private static final double[] CORRECTIONS = {
        -0.171, -0.169, -0.166, -0.159, -0.164, -0.165, -0.156, -0.157, -0.159, -0.161, -0.160
    };

    private static List<TrialError> thermometer(double half) {
        List<TrialError> trials = new ArrayList<>();
        for (int i = 0; i < READ.length; i++) {
            trials.add(new TrialError(READ[i] - 20, CORRECTIONS[i] - half, CORRECTIONS[i] + half));
        }
        return trials;
    }

    /** The data as the documentation of the GUM Tree Calculator lists them, API, "Calibration of a thermometer". */
    @Test
    @DisplayName("JCGM 100:2008, H.3: y1 = -0.1712(29), y2 = 0.00218(67), b(30) = -0.1494(41) for s = 0.0035")
    void calibrationOfAThermometer() {
        LineFit fit = new LineFit(thermometer(0), 0.0035, 0, Double.POSITIVE_INFINITY);
        assertEquals(-0.1712, fit.at(0).value(), 5e-5);
        assertEquals(0.0029, fit.at(0).uncertainty(), 5e-5);
        assertEquals(0.00218, fit.slope(), 5e-6);
        assertEquals(0.00067, fit.slopeUncertainty(), 5e-6);
        assertEquals(-0.1494, fit.at(10).value(), 5e-5);
        assertEquals(0.0041, fit.at(10).uncertainty(), 5e-5);
    }

    @Test
    @DisplayName("the same data: what is estimated by distributions is the least squares fit where errors are normal")
    void distributionsOfNormalErrors() {
        LineFit fit = new LineFit(thermometer(0.0005), 0.0035, 0.002, 0.0005);
        SettingEstimate estimate = new SettingEstimate(thermometer(0.0005), 0.0035, 0.002, 0.0005);
        double[] foretold = estimate.quantilesAt(10, 0.025, 0.5, 0.975);
        Reading at = fit.at(10);
        assertEquals(at.value(), foretold[1], 0.02 * at.uncertainty());
        assertEquals(at.value() - 1.96 * at.uncertainty(), foretold[0], 0.05 * at.uncertainty());
        assertEquals(at.value() + 1.96 * at.uncertainty(), foretold[2], 0.05 * at.uncertainty());
        assertEquals(fit.slope(), estimate.slope().value(), 0.01 * fit.slope());
        assertEquals(fit.slopeUncertainty(), estimate.slope().uncertainty(), 0.02 * fit.slopeUncertainty());
    }
}
