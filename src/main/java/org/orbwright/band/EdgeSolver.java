package org.orbwright.band;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.orbwright.design.ImpossibleDesignException;
import org.orbwright.design.Violation;

/**
 * Finds the depths at which bands start and end so that each shows what is wished.
 *
 * <p>From the base to the first band of the rest every band starts where the one before ends, and likewise from the tip
 * to the last band of the rest, so that each wish is one equation in one unknown. What is seen of a band only grows
 * with its width: a bracketing solver (Brent) on the closed form finds the one width.
 *
 * <p>Between the first and the last band of the rest one more number is unknown, the width of the whole rest. A walk
 * from the first to the last ends the deeper the wider the rest is, and the same solver finds the width with which it
 * ends where it has to. Where a wished band shows all that it can, its end may lie anywhere beyond; it then takes up
 * what the walk leaps over.
 */
final class EdgeSolver {
    private static final double RELATIVE_ACCURACY = 1e-14;
    private static final double ABSOLUTE_PER_WIDTH = 1e-13;
    private static final int MOST_STEPS = 200;
    /** What is seen of a band up to the tip exceeds its wish by less than this, of the lamination, at such a leap. */
    private static final double LEAP = 1e-9;

    private final WishedDesign wished;
    private final LaminationView view;
    private final int count;
    private final int first;
    private final int last;
    /** Depth at which each band starts, seen from the base in the chosen set, and where the last one ends. */
    private final double[] edges;

    EdgeSolver(WishedDesign wished, LaminationView view) {
        this.wished = wished;
        this.view = view;
        this.count = wished.count();
        this.first = wished.firstRest();
        this.last = wished.lastRest();
        this.edges = new double[count + 1];
    }

    /**
     * The depth at which each band starts, from the base, and where the last one ends.
     *
     * @throws ImpossibleDesignException if a wish cannot come true
     */
    double[] solve() {
        edges[count] = view.width();
        for (int i = 0; i < first; i++) {
            checkAlone(i, edges[i], view.width());
            edges[i + 1] = end(i, edges[i], view.width());
        }
        for (int i = count - 1; i > last; i--) {
            checkAlone(i, 0, edges[i + 1]);
            edges[i] = start(i, edges[i + 1], 0);
        }
        double least = wished.smallestRest();
        double most = edges[last + 1] - edges[first];
        double atLeast = walk(least);
        for (int i = first + 1; i < last; i++) {
            if (!wished.isRest(i)) {
                checkAlone(i, edges[first], view.width());
            }
        }
        if (most < least || atLeast > edges[last + 1]) {
            throw nothingLeft();
        }
        if (first < last) {
            settle(wholeRest(least, most));
        }
        return edges.clone();
    }

    /** The width of the whole rest with which the walk ends where it has to; all there is without wishes in between. */
    private double wholeRest(double least, double most) {
        if (walk(most) <= edges[last + 1]) {
            return most;
        }
        BrentSolver solver = new BrentSolver(RELATIVE_ACCURACY, ABSOLUTE_PER_WIDTH * view.width());
        return solver.solve(MOST_STEPS, rest -> walk(rest) - edges[last + 1], least, most);
    }

    /** What a band of depths shows in the measure of a wish. */
    double measure(int i, double from, double to) {
        return switch (wished.measure(i)) {
            case EDGE_MIDDLE -> view.edgeMiddle(from, to);
            case CORNER -> view.corner(from, to);
            case SHARE_OF_SPHERE, REST -> view.share(from, to);
        };
    }

    /** What band {@code i} shows at most beside the other wishes, the rest pressed together to nothing. */
    double most(int i) {
        double start = edges[Math.min(i, first)];
        for (int j = first + 1; j < i; j++) {
            if (!wished.isRest(j)) {
                boolean near = measure(j, start, edges[j + 1]) >= wished.value(j);
                start = end(j, start, near ? edges[j + 1] : view.width());
            }
        }
        double end = edges[Math.max(i, last) + 1];
        for (int j = last - 1; j > i; j--) {
            if (!wished.isRest(j)) {
                boolean near = measure(j, edges[j], end) >= wished.value(j);
                end = start(j, end, near ? edges[j] : 0);
            }
        }
        return measure(i, start, end);
    }

    /** Places the bands between the first and the last of the rest, and tells where the last one of it ends. */
    private double walk(double rest) {
        double depth = edges[first];
        for (int i = first; i <= last; i++) {
            if (wished.isRest(i)) {
                depth += rest * wished.part(i);
            } else if (measure(i, depth, view.width()) >= wished.value(i)) {
                depth = end(i, depth, view.width());
            } else {
                depth = Math.max(depth, view.width());
            }
            if (i < last) {
                edges[i + 1] = depth;
            }
        }
        return depth;
    }

    /** Walks with the width that was found, and beyond a band that shows all that it can back from the other end. */
    private void settle(double rest) {
        walk(rest);
        int i = first;
        while (i < last && !showsAll(i)) {
            i++;
        }
        for (int j = last; j > i; j--) {
            edges[j] = wished.isRest(j) ? edges[j + 1] - rest * wished.part(j) : start(j, edges[j + 1], edges[i]);
        }
    }

    private boolean showsAll(int i) {
        return !wished.isRest(i) && measure(i, edges[i], view.width()) <= wished.value(i) + LEAP * view.width();
    }

    /** Where a band ends that starts here and shows its wish, at most at the farthest depth. */
    private double end(int i, double start, double farthest) {
        return depth(end -> measure(i, start, end), wished.value(i), start, farthest);
    }

    /** Where a band starts that ends here and shows its wish, at least at the nearest depth. */
    private double start(int i, double end, double nearest) {
        return depth(start -> measure(i, start, end), wished.value(i), end, nearest);
    }

    /** The depth at which the measure reaches its wish, on the way from where it is nothing to where it is the most. */
    private double depth(UnivariateFunction measure, double wish, double nothing, double everything) {
        if (wish >= measure.value(everything)) {
            return leastDepth(measure, wish, nothing, everything);
        }
        BrentSolver solver = new BrentSolver(RELATIVE_ACCURACY, ABSOLUTE_PER_WIDTH * view.width());
        return solver.solve(
                MOST_STEPS,
                depth -> measure.value(depth) - wish,
                Math.min(nothing, everything),
                Math.max(nothing, everything));
    }

    /** The most may be reached before the end: the first depth that shows it, by bisection. */
    private static double leastDepth(UnivariateFunction measure, double wish, double nothing, double everything) {
        double less = nothing;
        double enough = everything;
        for (int i = 0; i < MOST_STEPS && less != enough; i++) {
            double middle = (less + enough) / 2;
            boolean shown =
                    measure.value(middle) >= Math.min(wish, measure.value(everything)) * (1 - RELATIVE_ACCURACY);
            less = shown ? less : middle;
            enough = shown ? middle : enough;
        }
        return enough;
    }

    /** Refuses a wish that is too large even with everything that the bands before it leave. */
    private void checkAlone(int i, double from, double to) {
        double atMost = measure(i, from, to);
        double wish = wished.value(i);
        if (wish > atMost + wished.answerRounding(i)) {
            throw wished.impossible(List.of(tooLarge(i, wish, atMost, "with everything that is left for it")));
        }
    }

    /** Every wish that takes more than the others leave, with the most that it could be beside them. */
    private ImpossibleDesignException nothingLeft() {
        List<Violation> violations = new ArrayList<>();
        for (int number = 0; number < count; number++) {
            int i = wished.place(number);
            if (!wished.isRest(i)) {
                violations.add(tooLarge(i, wished.value(i), Math.max(0, most(i)), "beside the other wishes"));
            }
        }
        return wished.impossible(violations);
    }

    private Violation tooLarge(int i, double wish, double atMost, String how) {
        return new Violation(
                wished.path(i) + "/value",
                "WISH_TOO_LARGE",
                "Band " + wished.number(i) + " cannot show " + wished.sayWish(i, wish) + ": " + how + " it shows "
                        + wished.sayMost(i, atMost) + " at most, and the rest needs something too.",
                wished.shownWish(i, wish),
                "at most " + wished.sayMost(i, atMost));
    }
}
