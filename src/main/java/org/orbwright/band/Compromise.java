package org.orbwright.band;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.orbwright.band.CutSearch.Found;
import org.orbwright.band.CutSearch.Limits;

/**
 * Brings the wish that is farthest from coming true as near as can be. Then come the others, as far as those before
 * leave them free. How far a wish is from coming true is its deviation, as a share of what is wished.
 *
 * <p>The least largest deviation is bracketed. Above are cuts that reach it. Below is a deviation of which
 * {@link CutSearch} proves that no cuts keep to it.
 */
final class Compromise {
    /** Deviations up to this are none: it is a thousandth of what answers are rounded to. */
    static final double MET = 1e-9;

    /** Between what is reached and what is proved no more than this is looked for. */
    private static final double GAP = 1e-8;
    /** A change of a deviation, or a part of all that a wish could show, that is worth looking for. */
    private static final double WORTH = 1e-4;
    /** What a most is found to, as a share of all that the wish could show. */
    private static final double FINEST_MOST = 1e-7;

    private static final int MOST_HALVINGS = 80;

    private final CutSearch search;
    private final List<Wish> wishes;
    private final Level worst;
    private double[] cuts;

    /** Looks for the best compromise between wishes. */
    Compromise(CutSearch search, List<Wish> wishes) {
        this.search = search;
        this.wishes = wishes;
        search.begin(1);
        double[] any = search.find(new Limits(wishes.size())).cuts();
        this.worst = lowered(unlimited(), all(), any);
    }

    /** How far the largest deviation of some wishes can be lowered: cuts that reach it, and what none comes below. */
    private static final class Level {
        private final double[] cuts;
        private final double reached;
        private final double proved;

        Level(double[] cuts, double reached, double proved) {
            this.cuts = cuts;
            this.reached = reached;
            this.proved = proved;
        }
    }

    /** Cuts that reach the largest deviation, with the other wishes as near as they come. */
    double[] cuts() {
        if (cuts == null) {
            search.begin(1);
            cuts = settled(unlimited(), all());
        }
        return cuts;
    }

    /** The largest deviation that was reached. */
    double worst() {
        return told(worst.reached);
    }

    private static double told(double deviation) {
        return Math.abs(deviation) <= MET ? 0 : deviation;
    }

    /** How far a wish is off, above 0 where it shows more than is wished. */
    double deviation(Wish wish) {
        return told(wish.signedDeviation(cuts()));
    }

    /** A deviation below which no cuts bring all wishes. */
    double proved() {
        return Math.min(worst.proved, worst());
    }

    /**
     * For each wish the largest deviation of the others if it were dropped, or a little more. Null where that does not
     * help, or where the search for it gives up.
     */
    List<Double> worstWithout() {
        return wishes.stream().map(wish -> worstWithout(wish.index())).toList();
    }

    private Double worstWithout(int wish) {
        if (worst() <= WORTH) {
            return null;
        }
        search.begin(wishes.size());
        double[] most = unlimited();
        Arrays.fill(most, worst() - WORTH);
        most[wish] = Double.POSITIVE_INFINITY;
        double[] start = search.find(limits(most)).cuts();
        if (start == null) {
            return null;
        }
        boolean[] others = all();
        others[wish] = false;
        return told(lowered(unlimited(), others, start).reached);
    }

    /**
     * For each wish the most it can show while the others come as near as they do, or a little less. Null where the
     * search gives up.
     */
    List<Double> most() {
        return wishes.stream().map(wish -> most(wish.index())).toList();
    }

    private Double most(int wish) {
        search.begin(wishes.size());
        double[] most = new double[wishes.size()];
        for (int i = 0; i < most.length; i++) {
            most[i] = wishes.get(i).deviation(cuts());
        }
        Limits limits = limits(most);
        limits.high(wish, Double.POSITIVE_INFINITY);
        Wish moved = wishes.get(wish);
        double shown = moved.shown(cuts());
        double beyond = moved.all();
        limits.low(wish, shown);
        Found others = search.find(limits);
        double[] floor = others.none() ? search.floor() : others.floor();
        for (int i = 0; i < MOST_HALVINGS && beyond - shown > FINEST_MOST * moved.all(); i++) {
            double middle = (shown + beyond) / 2;
            limits.low(wish, middle);
            Found found = search.find(limits, floor);
            if (found.cuts() != null) {
                shown = Math.max(middle, moved.shown(found.cuts()));
                floor = found.floor();
            } else if (found.none()) {
                beyond = middle;
            } else {
                return beyond - shown <= WORTH * moved.all() ? shown : null;
            }
        }
        return shown;
    }

    /** Lowers the free wishes' largest deviation by halving what is open between what is reached and what is proved. */
    private Level lowered(double[] most, boolean[] free, double[] start) {
        Level level = new Level(start, largest(free, start), 0);
        double open = Double.POSITIVE_INFINITY;
        double openTo = Double.NEGATIVE_INFINITY;
        double next = 0;
        for (int i = 0; i < MOST_HALVINGS && level.reached - level.proved > gap(level) && search.mayGoOn(); i++) {
            Found found = search.find(limits(lowered(most, free, next)));
            double reached = reached(most, free, found);
            boolean better = reached < level.reached;
            if (better) {
                level = new Level(found.nearest(), reached, Math.min(level.proved, reached));
            }
            if (found.none()) {
                level = new Level(level.cuts, level.reached, next);
            } else if (!better || found.cuts() == null) {
                open = Math.min(open, next);
                openTo = Math.max(openTo, next);
            }
            boolean upper = level.reached - openTo > open - level.proved;
            double from = upper ? Math.max(openTo, level.proved) : level.proved;
            double to = upper ? level.reached : Math.min(open, level.reached);
            next = (from + to) / 2;
        }
        return level;
    }

    /** What the free wishes reach with what was found. Where the search gave up the others may miss their limits. */
    private double reached(double[] most, boolean[] free, Found found) {
        double[] at = found.nearest();
        boolean keeps = at != null;
        for (int i = 0; keeps && found.cuts() == null && i < free.length; i++) {
            keeps = free[i] || wishes.get(i).deviation(at) <= most[i];
        }
        return keeps ? largest(free, at) : Double.POSITIVE_INFINITY;
    }

    /** Whether all wishes come true is looked at closely; a compromise need not be. */
    private static double gap(Level level) {
        return level.proved > 0 ? GAP : MET;
    }

    private static double[] lowered(double[] most, boolean[] free, double to) {
        double[] lowered = most.clone();
        for (int i = 0; i < lowered.length; i++) {
            lowered[i] = free[i] ? to : lowered[i];
        }
        return lowered;
    }

    /** Keeps what can come no nearer, and lowers the deviation of the others, until none is left. */
    private double[] settled(double[] most, boolean[] free) {
        Level level = worst;
        while (level.reached > MET && search.mayGoOn()) {
            List<Integer> stuck = stuck(most, free, level);
            for (int wish : stuck) {
                most[wish] = level.reached;
                free[wish] = false;
            }
            if (stuck.isEmpty() || largest(free, level.cuts) == 0) {
                return level.cuts;
            }
            level = lowered(most, free, level.cuts);
        }
        return level.cuts;
    }

    /** The free wishes that can come no nearer while the others keep to the level; at least the farthest. */
    private List<Integer> stuck(double[] most, boolean[] free, Level level) {
        double nearer = level.proved - WORTH;
        List<Integer> stuck = new ArrayList<>();
        int farthest = -1;
        for (int i = 0; i < free.length; i++) {
            if (!free[i]) {
                continue;
            }
            double[] limits = lowered(most, free, level.reached);
            limits[i] = Math.max(0, nearer);
            if (search.find(limits(limits)).cuts() == null) {
                stuck.add(i);
            }
            double deviation = wishes.get(i).deviation(level.cuts);
            farthest = farthest < 0 || deviation > wishes.get(farthest).deviation(level.cuts) ? i : farthest;
        }
        return stuck.isEmpty() && farthest >= 0 ? List.of(farthest) : stuck;
    }

    private double[] unlimited() {
        double[] most = new double[wishes.size()];
        Arrays.fill(most, Double.POSITIVE_INFINITY);
        return most;
    }

    private boolean[] all() {
        boolean[] all = new boolean[wishes.size()];
        Arrays.fill(all, true);
        return all;
    }

    private double largest(boolean[] of, double[] with) {
        double largest = 0;
        for (int i = 0; i < of.length; i++) {
            largest = of[i] ? Math.max(largest, wishes.get(i).deviation(with)) : largest;
        }
        return largest;
    }

    private Limits limits(double[] most) {
        Limits limits = new Limits(wishes.size());
        for (int i = 0; i < most.length; i++) {
            double value = wishes.get(i).value();
            limits.low(i, value * (1 - most[i]));
            limits.high(i, value * (1 + most[i]));
        }
        return limits;
    }
}
