package org.orbwright.diagnosis;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.orbwright.diagnosis.DialIn.ErrorRange;

/**
 * Trials that contradict the others: what the others foretell, by least squares, against what was read. Where three or
 * more settings lie on one line that has another slope than was stated, it is the scale that is another.
 */
final class Contradictions {
    /** Standard deviations within which a reading may differ from what is foretold, beside half of its step. */
    private static final double AGREE = 3;
    /** A slope is told well where it is so many times its uncertainty. */
    private static final double WELL_TOLD = 5;

    private final List<TrialError> trials;
    private final double scatter;
    private final double slope;
    private final double uncertainty;

    Contradictions(List<TrialError> trials, double scatter, double slope, double uncertainty) {
        this.trials = trials;
        this.scatter = scatter;
        this.slope = slope;
        this.uncertainty = Math.max(uncertainty, SettingEstimate.KNOWN * Math.abs(slope));
    }

    /**
     * The trials that do not count, by their place from 0. The one that is farthest from what the others foretell is
     * taken out first; of two that contradict each other the earlier one.
     */
    Set<Integer> found() {
        Set<Integer> out = new TreeSet<>();
        if (isOtherScale()) {
            return out;
        }
        while (trials.size() - out.size() > 1) {
            int worst = -1;
            double farthest = 1;
            for (int i = 0; i < trials.size(); i++) {
                double excess = out.contains(i) ? 0 : excess(i, out);
                worst = excess > farthest ? i : worst;
                farthest = Math.max(farthest, excess);
            }
            if (worst < 0) {
                return out;
            }
            boolean two = trials.size() - out.size() == 2;
            out.add(two ? first(out) : worst);
        }
        return out;
    }

    private int first(Set<Integer> out) {
        int first = 0;
        while (out.contains(first)) {
            first++;
        }
        return first;
    }

    /** How far a trial is from what the others foretell, as a share of what it may be. */
    private double excess(int trial, Set<Integer> out) {
        TrialError read = trials.get(trial);
        Reading foretold = others(trial, out).at(read.set());
        double allowed = read.half() + AGREE * Math.hypot(foretold.uncertainty(), scatter);
        return Math.abs(read.middle() - foretold.value()) / allowed;
    }

    /** What the others that count foretell for a trial. */
    ErrorRange foretold(int trial, Set<Integer> out) {
        Reading foretold = others(trial, out).at(trials.get(trial).set());
        double expanded = LengthEstimate.COVERAGE * Math.hypot(foretold.uncertainty(), scatter);
        return new ErrorRange(foretold.value() - expanded, foretold.value() + expanded);
    }

    private LineFit others(int trial, Set<Integer> out) {
        List<TrialError> others = new ArrayList<>();
        for (int i = 0; i < trials.size(); i++) {
            if (i != trial && !out.contains(i)) {
                others.add(trials.get(i));
            }
        }
        return others.isEmpty()
                // The only trial that counts: those that do not are all that there is.
                ? others(trial, Set.of())
                : new LineFit(others, scatter, slope, uncertainty);
    }

    /** The line through all trials, whatever was known of its slope; null where they do not tell its slope well. */
    LineFit ofTrials() {
        long settings = trials.stream().mapToDouble(TrialError::set).distinct().count();
        if (settings < 2) {
            return null;
        }
        LineFit line = new LineFit(trials, scatter, 0, Double.POSITIVE_INFINITY);
        return WELL_TOLD * line.slopeUncertainty() < Math.abs(line.slope()) ? line : null;
    }

    /** Whether the trials agree with each other, and not with the slope that was stated. */
    boolean isOtherScale() {
        LineFit line = ofTrials();
        return trials.size() > 2
                && line != null
                && trials.stream().allMatch(trial -> lies(trial, line))
                && Math.abs(line.slope() - slope) > AGREE * Math.hypot(line.slopeUncertainty(), uncertainty);
    }

    private boolean lies(TrialError trial, LineFit line) {
        double off = Math.abs(trial.middle() - line.at(trial.set()).value());
        return off <= trial.half() + AGREE * scatter;
    }
}
