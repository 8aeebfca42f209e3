package org.orbwright.diagnosis;

import java.util.List;

/**
 * Least squares for how far settings are off, {@code off = level + slope (set - reference)}, with known uncertainties
 * and what is known of the slope before (JCGM 100:2008, H.3, with an observation of the slope added).
 */
final class LineFit {
    /** The weighted mean of the settings, about which level and slope do not depend on each other. */
    private final double reference;

    private final double level;
    private final double slope;
    private final double levelVariance;
    private final double slopeVariance;

    /**
     * A fit.
     *
     * @param trials one or more
     * @param scatter standard deviation that is added to each trial's own uncertainty
     * @param slope what is known of the slope
     * @param uncertainty its standard uncertainty; infinite where nothing is known
     */
    LineFit(List<TrialError> trials, double scatter, double slope, double uncertainty) {
        double weights = 0;
        double sets = 0;
        for (TrialError trial : trials) {
            weights += weight(trial, scatter);
            sets += weight(trial, scatter) * trial.set();
        }
        reference = sets / weights;
        double known = 1 / (uncertainty * uncertainty);
        double squares = known;
        double products = known * slope;
        double sum = 0;
        for (TrialError trial : trials) {
            double off = trial.set() - reference;
            squares += weight(trial, scatter) * off * off;
            products += weight(trial, scatter) * off * trial.middle();
            sum += weight(trial, scatter) * trial.middle();
        }
        this.level = sum / weights;
        this.slope = products / squares;
        this.levelVariance = 1 / weights;
        this.slopeVariance = 1 / squares;
    }

    private static double weight(TrialError trial, double scatter) {
        double uncertainty = trial.uncertainty();
        return 1 / (uncertainty * uncertainty + scatter * scatter);
    }

    double reference() {
        return reference;
    }

    double level() {
        return level;
    }

    double slope() {
        return slope;
    }

    double slopeUncertainty() {
        return Math.sqrt(slopeVariance);
    }

    /** How far a setting is off, with its standard uncertainty. */
    Reading at(double set) {
        double off = set - reference;
        return new Reading(level + slope * off, Math.sqrt(levelVariance + off * off * slopeVariance));
    }
}
