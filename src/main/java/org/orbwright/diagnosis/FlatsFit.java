package org.orbwright.diagnosis;

import java.util.List;
import org.orbwright.design.Design;
import org.orbwright.diagnosis.Diagnosis.FlatsDiagnosis;
import org.orbwright.solid.FaceKind;

/**
 * Fits a solid similar to the designed one to measures across flats: a pair that should be d apart is {@code factor d}
 * apart. Weighted least squares for the factor, which is linear in the readings.
 */
final class FlatsFit {
    private final List<Reading> measured;
    private final List<Double> designed;
    /** How the factor depends on each reading. */
    private final double[] factor;

    private FlatsFit(List<Reading> measured, List<Double> designed) {
        this.measured = measured;
        this.designed = designed;
        this.factor = new double[measured.size()];
        double squares = 0;
        for (int i = 0; i < factor.length; i++) {
            factor[i] = designed.get(i) / Math.pow(measured.get(i).uncertainty(), 2);
            squares += factor[i] * designed.get(i);
        }
        for (int i = 0; i < factor.length; i++) {
            factor[i] /= squares;
        }
    }

    static FlatsDiagnosis of(Design design, List<Reading> measured, List<Double> designed) {
        FlatsFit fit = new FlatsFit(measured, designed);
        double flats = 2 * design.smallestFaceDistance();
        Reading smallest = measured.get(0);
        for (Reading reading : measured) {
            smallest = reading.value() < smallest.value() ? reading : smallest;
        }
        Reading factor = fit.value(fit.factor);
        LargestSphere room = LargestSphere.of(design, smallest.value(), smallest.uncertainty());
        return new FlatsDiagnosis(
                measured.size(),
                design.solid().faceKinds().stream()
                        .filter(FaceKind::opposite)
                        .mapToInt(kind -> kind.count() / 2)
                        .sum(),
                factor.value(),
                LengthEstimate.of(flats * (factor.value() - 1), flats * factor.uncertainty()),
                measured.size() == 1 ? null : fit.outOfRound(),
                room.diameter(),
                room.limitedBy());
    }

    private LengthEstimate outOfRound() {
        int highest = 0;
        int lowest = 0;
        for (int i = 1; i < factor.length; i++) {
            highest = value(deviation(i)).value() > value(deviation(highest)).value() ? i : highest;
            lowest = value(deviation(i)).value() < value(deviation(lowest)).value() ? i : lowest;
        }
        // Where all deviate alike, any two of them say so.
        lowest = highest == lowest ? (highest + 1) % factor.length : lowest;
        Reading between = value(LinearCentre.sum(deviation(highest), deviation(lowest), -1));
        return LengthEstimate.of(between.value(), between.uncertainty());
    }

    /** How far a pair is off the fitted solid, as coefficients of the readings. */
    private double[] deviation(int pair) {
        double[] deviation = LinearCentre.scaled(factor, -designed.get(pair));
        deviation[pair] += 1;
        return deviation;
    }

    private Reading value(double[] coefficients) {
        double value = 0;
        double variance = 0;
        for (int i = 0; i < coefficients.length; i++) {
            value += coefficients[i] * measured.get(i).value();
            variance += Math.pow(coefficients[i] * measured.get(i).uncertainty(), 2);
        }
        return new Reading(value, Math.sqrt(variance));
    }
}
