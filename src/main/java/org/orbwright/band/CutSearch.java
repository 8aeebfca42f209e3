package org.orbwright.band;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Deque;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.analysis.solvers.BrentSolver;

/**
 * Finds the depths of the cuts between bands with which every wish shows something between its limits, or proves that
 * there are none.
 *
 * <p>Each limit ties the two cuts of one band. The band has to end no nearer than somewhere, or to start no nearer than
 * somewhere. Both move outwards together. Such rules have a least solution: raising cuts as far as the rules demand
 * never passes it. So either that stops at cuts that keep all rules, or a cut is pushed over the end. Then there are
 * none. With a step, cuts are raised to the next place that the saw can be set to, and the same holds.
 *
 * <p>Several bands that share the rest tie more than two cuts. For a range of the rest's whole width each of them has a
 * range of its own, which gives rules as above. Ranges without a solution are left out, others are halved.
 *
 * <p>Cuts may creep towards a solution without end, or in more steps than are worth waiting for. Then the search gives
 * up, says so, and hands over the widths it came to: they may miss the limits by little.
 */
final class CutSearch {
    /** Raises less than this, as a share of the lamination, are none. */
    private static final double NOTHING = 1e-13;
    /** What a limit may be missed by, as a share of all that a wish could show: rounding of the curves. */
    private static final double ROUNDING = 1e-12;
    /** A cut that is past a place of the saw by less than this part of a step is at it. */
    private static final double AT_STEP = 1e-9;

    private static final double ROOT = 1e-14;
    private static final int MOST_ROOT_STEPS = 200;
    private static final int MOST_RAISES = 160_000;
    private static final int ALL_RAISES = 800_000;
    /** What each of many rows may raise at least. */
    private static final int FEWEST_RAISES = 16_000;
    /** More than it takes to give each band its least width. */
    private static final int RAISES_TO_WIDTHS = 4_000;

    private final List<Wish> wishes;
    private final List<List<Wish>> byBand;
    private final Rests rests;
    private final double width;
    private final double step;
    private final double least;
    private final double nothing;
    private int raisesLeft;

    /**
     * Gets ready.
     *
     * @param wishes all wishes, in the order of limits
     * @param rests how bands share the rest
     * @param width width of the lamination
     * @param step the shop's step, or 0 for none
     * @param least least width of any band
     */
    CutSearch(List<Wish> wishes, Rests rests, double width, double step, double least) {
        this.wishes = wishes;
        this.rests = rests;
        this.width = width;
        this.step = step;
        this.least = least;
        this.nothing = NOTHING * width;
        List<List<Wish>> sorted = new ArrayList<>();
        for (int band = 0; band < rests.bands(); band++) {
            int place = band;
            sorted.add(wishes.stream().filter(wish -> wish.band() == place).toList());
        }
        this.byBand = sorted;
    }

    /** What each wish has to show at least and at most. */
    static final class Limits {
        private final double[] low;
        private final double[] high;

        /** No limits at all. */
        Limits(int wishes) {
            low = new double[wishes];
            high = new double[wishes];
            Arrays.fill(low, Double.NEGATIVE_INFINITY);
            Arrays.fill(high, Double.POSITIVE_INFINITY);
        }

        void low(int wish, double shown) {
            low[wish] = shown;
        }

        void high(int wish, double shown) {
            high[wish] = shown;
        }
    }

    /** What a search came to: cuts, the proof that there are none, or neither. */
    static final class Found {
        private final double[] cuts;
        private final boolean proved;
        private final double[] floor;

        private Found(double[] cuts, boolean proved, double[] floor) {
            this.cuts = cuts;
            this.proved = proved;
            this.floor = floor;
        }

        /** Depths of cuts that keep all limits, or null. */
        double[] cuts() {
            return proved ? cuts : null;
        }

        /** Those, or the widths at which the search gave up, which miss limits; or null. */
        double[] nearest() {
            return cuts;
        }

        /** Depths before which no cut lies that keeps these limits or narrower ones. */
        double[] floor() {
            return floor;
        }

        /** Whether it is proved that there are no cuts. */
        boolean none() {
            return cuts == null && proved;
        }
    }

    /**
     * Begins a row of searches. They share a count of raises, so that each row has an end, the same on any machine.
     *
     * @param rows how many rows share all raises
     */
    void begin(int rows) {
        raisesLeft = Math.max(FEWEST_RAISES, ALL_RAISES / rows);
    }

    /** Whether the row has raises left. */
    boolean mayGoOn() {
        return raisesLeft > 0;
    }

    /** Whether there are any widths at all. */
    boolean hasRoom() {
        return most() >= smallestRest();
    }

    /** Depths before which no cut needs to lie. */
    double[] floor() {
        double[] floor = new double[rests.bands() + 1];
        floor[rests.bands()] = width;
        return floor;
    }

    /** The depths of cuts that keep all limits. */
    Found find(Limits limits) {
        return find(limits, floor());
    }

    /**
     * The same.
     *
     * @param floor depths before which no cuts that keep the limits lie
     */
    Found find(Limits limits, double[] floor) {
        double[] reached = floor;
        Deque<double[]> ranges = new ArrayDeque<>();
        ranges.push(new double[] {smallestOnSteps(), most()});
        Found gaveUp = null;
        while (!ranges.isEmpty()) {
            double[] range = ranges.pop();
            Found found = least(limits, reached, range[0], range[1]);
            reached = reached == floor ? found.floor : reached;
            boolean one = rests.count() == 1 || range[1] - range[0] <= (step > 0 ? step / 2 : nothing);
            double[] shared = found.cuts == null || (one && step > 0) ? found.cuts : shared(found.cuts);
            if (!found.proved) {
                gaveUp = new Found(one || step == 0 ? shared : null, false, reached);
            } else if (shared != null && (one || (step == 0 && keeps(limits, shared)))) {
                return new Found(shared, true, reached);
            } else if (shared != null) {
                double middle = range[0] + halfOnSteps(range[1] - range[0]);
                ranges.push(new double[] {range[0], middle});
                ranges.push(new double[] {middle + step, range[1]});
            }
        }
        return gaveUp == null ? new Found(null, true, null) : gaveUp;
    }

    private double halfOnSteps(double length) {
        return step > 0 ? step * Math.floor(length / step / 2 + AT_STEP) : length / 2;
    }

    private double smallestRest() {
        return least / rests.leastPart();
    }

    private double smallestOnSteps() {
        return step > 0 ? most() - step * Math.floor((most() - smallestRest()) / step + AT_STEP) : smallestRest();
    }

    /** The widest that the rest can be. */
    private double most() {
        return width - (rests.bands() - rests.count()) * leastWidth();
    }

    private double leastWidth() {
        return step > 0 ? step * Math.ceil(least / step - AT_STEP) : least;
    }

    /** The same widths of all bands but those of the rest, which stand in their proportion. */
    private double[] shared(double[] cuts) {
        double rest = width;
        for (int band = 0; band < rests.bands(); band++) {
            rest -= rests.takes(band) ? 0 : cuts[band + 1] - cuts[band];
        }
        double[] shared = cuts.clone();
        for (int band = 0; band < rests.bands(); band++) {
            double own = rests.takes(band) ? rest * rests.part(band) : cuts[band + 1] - cuts[band];
            shared[band + 1] = band == rests.bands() - 1 ? width : shared[band] + own;
        }
        return shared;
    }

    private boolean keeps(Limits limits, double[] cuts) {
        for (int i = 0; i < wishes.size(); i++) {
            double shown = wishes.get(i).shown(cuts);
            double rounding = ROUNDING * wishes.get(i).all();
            if (shown < limits.low[i] - rounding || shown > limits.high[i] + rounding) {
                return false;
            }
        }
        return true;
    }

    /** The least cuts that keep all limits with the whole rest in a range. */
    private Found least(Limits limits, double[] floor, double restFrom, double restTo) {
        Found found = raised(floor, limits, restFrom, restTo, Math.max(0, raisesLeft - MOST_RAISES));
        if (found.proved) {
            return found;
        }
        // Bands may be too narrow yet, or none at all.
        Limits none = new Limits(wishes.size());
        Found nearest = raised(found.floor, none, restFrom, restTo, raisesLeft - RAISES_TO_WIDTHS);
        return new Found(nearest.cuts(), false, found.floor);
    }

    /** Raises cuts until they keep all limits, or until so many raises are left. */
    private Found raised(double[] floor, Limits limits, double restFrom, double restTo, int stopAt) {
        double[] cuts = floor.clone();
        BitSet open = new BitSet();
        open.set(0, rests.bands());
        double rest = restTo - restFrom < step / 2 ? restFrom : Double.NaN;
        int band = 0;
        while (band >= 0) {
            open.clear(band);
            double end = onStep(band + 1, end(limits, band, cuts, restFrom), rest);
            if (end > cuts[band + 1] + nothing) {
                if (band + 1 == rests.bands() || end > width + nothing) {
                    return new Found(null, true, null);
                }
                cuts[band + 1] = end;
                raisesLeft--;
                open.set(band, band + 2);
            }
            double start = onStep(band, start(limits, band, cuts, restTo), rest);
            if (start > cuts[band] + nothing) {
                if (band == 0 || start > width + nothing) {
                    return new Found(null, true, null);
                }
                cuts[band] = start;
                raisesLeft--;
                open.set(band - 1, band + 1);
            }
            if (raisesLeft <= stopAt) {
                return new Found(null, false, cuts);
            }
            // In turn: two cuts that creep do not keep the others from being raised.
            int next = open.nextSetBit(band);
            band = next < 0 ? open.nextSetBit(0) : next;
        }
        return new Found(cuts, true, cuts);
    }

    /** Where a band has to end at least. */
    private double end(Limits limits, int band, double[] cuts, double restFrom) {
        double own = rests.takes(band) ? rests.part(band) * restFrom : leastWidth();
        double end = cuts[band] + own;
        for (Wish wish : byBand.get(band)) {
            double low = limits.low[wish.index()] - ROUNDING * wish.all();
            for (DoubleUnaryOperator curve : low > 0 ? wish.curves() : List.<DoubleUnaryOperator>of()) {
                end = Math.max(
                        end, reaching(curve, curve.applyAsDouble(cuts[band]) + low, Math.max(end, cuts[band + 1])));
            }
        }
        return end;
    }

    /** Where a band has to start at least. */
    private double start(Limits limits, int band, double[] cuts, double restTo) {
        double start = rests.takes(band) ? cuts[band + 1] - rests.part(band) * restTo : cuts[band];
        for (Wish wish : byBand.get(band)) {
            double high = limits.high[wish.index()] + ROUNDING * wish.all();
            double nearest = Double.POSITIVE_INFINITY;
            for (DoubleUnaryOperator curve : high < wish.all() ? wish.curves() : List.<DoubleUnaryOperator>of()) {
                double level = curve.applyAsDouble(cuts[band + 1]) - high;
                nearest = Math.min(nearest, reaching(curve, level, Math.max(start, cuts[band])));
            }
            start = nearest == Double.POSITIVE_INFINITY ? start : Math.max(start, nearest);
        }
        return start;
    }

    /**
     * The least depth, not before another, at which a curve reaches a level; beyond the lamination if it never does.
     */
    private double reaching(DoubleUnaryOperator curve, double level, double from) {
        if (curve.applyAsDouble(from) >= level) {
            return from;
        }
        if (curve.applyAsDouble(width) < level) {
            return Double.POSITIVE_INFINITY;
        }
        return new BrentSolver(ROOT, ROOT * width)
                .solve(MOST_ROOT_STEPS, depth -> curve.applyAsDouble(depth) - level, from, width);
    }

    /** The next place of a cut that the saw can be set to, as far as it is known. */
    private double onStep(int cut, double depth, double rest) {
        double before = rests.before(cut);
        boolean known = before == 0 || before == 1 || !Double.isNaN(rest);
        if (step == 0 || !known || depth == Double.POSITIVE_INFINITY) {
            return depth;
        }
        double first = before == 0 ? 0 : before == 1 ? width : before * rest;
        return first + step * Math.ceil((depth - first) / step - AT_STEP);
    }
}
