package org.orbwright.diagnosis;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import org.apache.commons.numbers.gamma.ErfDifference;

/**
 * What trials say of a setting. A setting is off by {@code level + slope (set - reference)}, and what a trial read lies
 * in the trial's interval but for a normal scatter. The distribution of level and slope follows from that and from what
 * is known of the slope before, on a grid that holds all but a millionth of it (JCGM 101:2008: distributions are
 * propagated, not variances alone). It has one peak, for each factor is log-concave.
 *
 * <p>Readings that are rounded alike tell no more than one of them. That is why intervals are kept, and not replaced by
 * normal errors, which would seem to average out.
 */
final class SettingEstimate {
    private static final int NODES = 41;
    /** The logarithm of what is left of the density at the edge of the grid. */
    private static final double EDGE = 14;
    /** Standard deviations of the slope that are looked at, and the least share of it. */
    private static final double REACH = 4;

    private static final double LEAST_SLOPE = 0.1;
    /** A slope is never known better than this share of it. */
    static final double KNOWN = 1e-9;
    /** Golden section steps: the bracket shrinks to 1e-8 of itself. */
    private static final int STEPS = 40;

    private static final double GOLDEN = (Math.sqrt(5) - 1) / 2;
    /** Standard deviations beyond which the tail is taken for the leading term of its expansion. */
    private static final double TAIL = 6;

    private static final double LOG_ROOT_2PI = 0.5 * Math.log(2 * Math.PI);

    private final List<TrialError> trials;
    private final double scatter;
    private final double known;
    private final double uncertainty;
    private final double reference;
    private final double[] levels = new double[NODES * NODES];
    private final double[] slopes = new double[NODES * NODES];
    private final double[] weights = new double[NODES * NODES];

    /**
     * An estimate.
     *
     * @param trials one or more
     * @param scatter standard deviation from trial to trial, above 0
     * @param slope how far the setting moves for a step of the scale, not 0
     * @param uncertainty standard uncertainty of that
     */
    SettingEstimate(List<TrialError> trials, double scatter, double slope, double uncertainty) {
        this.trials = trials;
        this.scatter = scatter;
        this.known = slope;
        this.uncertainty = Math.max(uncertainty, KNOWN * Math.abs(slope));
        this.reference = new LineFit(trials, scatter, slope, this.uncertainty).reference();
        fill();
    }

    private void fill() {
        double one = known - REACH * uncertainty;
        double other = known + REACH * uncertainty;
        double least = known > 0 ? Math.max(one, LEAST_SLOPE * known) : one;
        double most = known > 0 ? other : Math.min(other, LEAST_SLOPE * known);
        double peak = golden(least, most, this::alongRidge);
        double top = alongRidge(peak);
        double from = edge(peak, least, this::alongRidge);
        double to = edge(peak, most, this::alongRidge);
        double sum = 0;
        for (int i = 0; i < NODES; i++) {
            double slope = from + (i + 0.5) / NODES * (to - from);
            sum += fill(i, slope, top);
        }
        for (int i = 0; i < weights.length; i++) {
            weights[i] /= sum;
        }
    }

    /** The levels of one slope. */
    private double fill(int row, double slope, double top) {
        double ridge = ridge(slope);
        double reach = reach(slope, ridge);
        DoubleUnaryOperator density = level -> logDensity(level, slope);
        double from = edge(ridge, ridge - reach, density);
        double to = edge(ridge, ridge + reach, density);
        // Rows are shifted against each other, so that nodes of several rows do not lie on one value.
        double shift = row * GOLDEN % 1;
        double sum = 0;
        for (int j = 0; j < NODES; j++) {
            int at = row * NODES + j;
            levels[at] = from + (j + shift) / NODES * (to - from);
            slopes[at] = slope;
            weights[at] = Math.exp(logDensity(levels[at], slope) - top) * (to - from);
            sum += weights[at];
        }
        return sum;
    }

    private double alongRidge(double slope) {
        return logDensity(ridge(slope), slope);
    }

    /** The likeliest level for a slope. */
    private double ridge(double slope) {
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        for (TrialError trial : trials) {
            double middle = trial.middle() - slope * (trial.set() - reference);
            least = Math.min(least, middle);
            most = Math.max(most, middle);
        }
        return golden(least, most, level -> logDensity(level, slope));
    }

    /** Farther than this from the ridge there is nothing. */
    private double reach(double slope, double ridge) {
        double reach = 0;
        for (TrialError trial : trials) {
            double middle = trial.middle() - slope * (trial.set() - reference);
            reach = Math.max(reach, trial.half() + Math.abs(middle - ridge));
        }
        return reach + 2 * EDGE * scatter;
    }

    /** Where a density that falls from inside to outside has fallen to the edge; outside where it has not. */
    private static double edge(double inside, double outside, DoubleUnaryOperator density) {
        double least = density.applyAsDouble(inside) - EDGE;
        double in = inside;
        double out = outside;
        for (int i = 0; i < STEPS / 2; i++) {
            double middle = (in + out) / 2;
            boolean high = density.applyAsDouble(middle) > least;
            in = high ? middle : in;
            out = high ? out : middle;
        }
        return out;
    }

    private static double golden(double least, double most, DoubleUnaryOperator height) {
        double from = least;
        double to = most;
        double one = to - GOLDEN * (to - from);
        double other = from + GOLDEN * (to - from);
        double first = height.applyAsDouble(one);
        double second = height.applyAsDouble(other);
        for (int i = 0; i < STEPS && to > from; i++) {
            if (first < second) {
                from = one;
                one = other;
                first = second;
                other = from + GOLDEN * (to - from);
                second = height.applyAsDouble(other);
            } else {
                to = other;
                other = one;
                second = first;
                one = to - GOLDEN * (to - from);
                first = height.applyAsDouble(one);
            }
        }
        return (from + to) / 2;
    }

    private double logDensity(double level, double slope) {
        double off = (slope - known) / uncertainty;
        double sum = -off * off / 2;
        for (TrialError trial : trials) {
            double at = level + slope * (trial.set() - reference);
            sum += logWithin((trial.least() - at) / scatter, (trial.most() - at) / scatter);
        }
        return sum;
    }

    /** The logarithm of the probability that a standard normal number lies between two others. */
    private static double logWithin(double least, double most) {
        double nearest = Math.max(least, -most);
        if (nearest > TAIL) {
            // The leading term of the tail, less that of the interval's far end.
            double width = -Math.expm1(-nearest * (most - least));
            return -nearest * nearest / 2 - Math.log(nearest) - LOG_ROOT_2PI + Math.log(width);
        }
        return Math.log(within(least, most));
    }

    private static double within(double least, double most) {
        return ErfDifference.value(least / Math.sqrt(2), most / Math.sqrt(2)) / 2;
    }

    /** The setting that is right, weight by weight. */
    private double right(int at) {
        return reference - levels[at] / slopes[at];
    }

    /** The right setting with its standard uncertainty. */
    Reading right() {
        return moments(this::right);
    }

    /** How far the setting moves for a step of the scale. */
    Reading slope() {
        return moments(at -> slopes[at]);
    }

    private Reading moments(IntToDoubleFunction value) {
        double mean = 0;
        for (int i = 0; i < weights.length; i++) {
            mean += weights[i] * value.applyAsDouble(i);
        }
        double variance = 0;
        for (int i = 0; i < weights.length; i++) {
            variance += weights[i] * Math.pow(value.applyAsDouble(i) - mean, 2);
        }
        return new Reading(mean, Math.sqrt(variance));
    }

    /** Below these the right setting lies with the given probabilities, which rise. */
    double[] quantiles(double... probabilities) {
        return quantiles(this::right, probabilities);
    }

    /** Below these a setting is off with the given probabilities, which rise. */
    double[] quantilesAt(double set, double... probabilities) {
        return quantiles(at -> levels[at] + slopes[at] * (set - reference), probabilities);
    }

    private double[] quantiles(IntToDoubleFunction value, double... probabilities) {
        double[] values = IntStream.range(0, weights.length).mapToDouble(value).toArray();
        int[] order = IntStream.range(0, weights.length)
                .boxed()
                .sorted(Comparator.comparingDouble(i -> values[i]))
                .mapToInt(i -> i)
                .toArray();
        double[] found = new double[probabilities.length];
        Arrays.fill(found, values[order[order.length - 1]]);
        double sum = 0;
        int next = 0;
        for (int at : order) {
            sum += weights[at];
            while (next < found.length && sum >= probabilities[next]) {
                found[next++] = values[at];
            }
        }
        return found;
    }

    /** The probability that a saw which is set so is off by no more than this either way. */
    double chance(double set, double limit) {
        double chance = 0;
        for (int i = 0; i < weights.length; i++) {
            double at = levels[i] + slopes[i] * (set - reference);
            chance += weights[i] * within((-limit - at) / scatter, (limit - at) / scatter);
        }
        return chance;
    }

    /** The error that a saw which is set so keeps within with this probability. */
    double bound(double set, double probability) {
        double inside = 0;
        double outside = scatter;
        while (chance(set, outside) < probability) {
            outside *= 2;
        }
        for (int i = 0; i < STEPS / 2; i++) {
            double middle = (inside + outside) / 2;
            boolean enough = chance(set, middle) >= probability;
            outside = enough ? middle : outside;
            inside = enough ? inside : middle;
        }
        return outside;
    }
}
