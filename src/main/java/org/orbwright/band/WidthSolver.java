package org.orbwright.band;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.orbwright.band.WidthRequest.Measure;
import org.orbwright.band.WidthSolution.Rounded;
import org.orbwright.band.WidthSolution.Seen;
import org.orbwright.band.WidthSolution.Sensitivity;
import org.orbwright.band.WidthSolution.SolvedBand;
import org.orbwright.design.ImpossibleDesignException;
import org.orbwright.design.Violation;
import org.orbwright.quantity.Quantity;

/**
 * Finds the flat widths that give what is wished to be seen.
 *
 * <p>The band of the rest parts the others: from the base towards it, and from the tip towards it, every band starts
 * where the one before ends, so that each wish is one equation in one unknown. What is seen of a band only grows with
 * its width, so a bracketing solver (Brent) on the closed form finds the one width; it is exact to 1e-12 of the
 * lamination's width.
 */
public final class WidthSolver {
    private static final double RELATIVE_ACCURACY = 1e-14;
    private static final double ABSOLUTE_PER_WIDTH = 1e-13;
    private static final int MOST_STEPS = 200;
    /** Step of the central difference for sensitivities, as a share of the lamination; its error is its square. */
    private static final double DIFFERENCE = 1e-5;

    private final WishedDesign wished;
    private final LaminationView view;
    /** Depth at which each band starts, seen from the base in the chosen set, and where the last one ends. */
    private final double[] edges;
    /** The most that could have been wished for. */
    private final double[] most;

    private final int count;
    private final int rest;

    private WidthSolver(WishedDesign wished) {
        this.wished = wished;
        this.view = wished.view();
        this.count = wished.count();
        this.rest = wished.rest();
        this.edges = new double[count + 1];
        this.most = new double[count];
    }

    /**
     * The widths for a list of wishes.
     *
     * @param request a request that keeps its Bean Validation constraints
     * @throws ImpossibleDesignException if the design cannot exist or a wish cannot come true
     */
    public static WidthSolution solve(WidthRequest request) {
        return new WidthSolver(WishedDesign.of(request)).solution();
    }

    private WidthSolution solution() {
        edges[count] = view.width();
        for (int i = 0; i < rest; i++) {
            edges[i + 1] = fromBase(i);
        }
        for (int i = count - 1; i > rest; i--) {
            edges[i] = fromTip(i);
        }
        if (edges[rest + 1] - edges[rest] < wished.smallestWidth()) {
            throw nothingLeft();
        }
        for (int i = 0; i < count; i++) {
            most[i] = i < rest ? mostFromBase(i) : i > rest ? mostFromTip(i) : 0;
        }
        double[] rounded = rounded();
        List<SolvedBand> bands = new ArrayList<>();
        for (int number = 0; number < count; number++) {
            bands.add(band(wished.place(number), rounded));
        }
        double[] used = rounded.length == 0 ? edges : rounded;
        return new WidthSolution(wished.designWith(used), wished.face(), wished.set(), bands);
    }

    private double fromBase(int i) {
        double start = edges[i];
        return solve(i, end -> measure(i, start, end), start, view.width());
    }

    private double fromTip(int i) {
        double end = edges[i + 1];
        return solve(i, start -> measure(i, start, end), end, 0);
    }

    /** What band {@code i} shows at most if the bands between it and the rest are pushed to the rest's far edge. */
    private double mostFromBase(int i) {
        double end = edges[rest + 1];
        for (int j = rest - 1; j > i; j--) {
            int band = j;
            double inner = end;
            end = depth(start -> measure(band, start, inner), wished.value(j), inner, edges[j]);
        }
        return measure(i, edges[i], end);
    }

    private double mostFromTip(int i) {
        double start = edges[rest];
        for (int j = rest + 1; j < i; j++) {
            int band = j;
            double outer = start;
            start = depth(end -> measure(band, outer, end), wished.value(j), outer, edges[j + 1]);
        }
        return measure(i, start, edges[i + 1]);
    }

    /** The depth at which the measure reaches its wish, on the way from where it is nothing to where it is the most. */
    private double solve(int i, UnivariateFunction measure, double nothing, double everything) {
        double wish = wished.value(i);
        most[i] = measure.value(everything);
        if (wish > most[i] + wished.answerRounding(i)) {
            throw tooMuch(i, wish);
        }
        return depth(measure, wish, nothing, everything);
    }

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

    private double measure(int i, double from, double to) {
        return measure(wished.measure(i), from, to);
    }

    private double measure(Measure measure, double from, double to) {
        return switch (measure) {
            case EDGE_MIDDLE -> view.edgeMiddle(from, to);
            case CORNER -> view.corner(from, to);
            case SHARE_OF_SPHERE, REST -> view.share(from, to);
        };
    }

    private Seen seen(double from, double to) {
        return new Seen(view.edgeMiddle(from, to), view.corner(from, to), view.share(from, to));
    }

    private SolvedBand band(int i, double[] rounded) {
        boolean isRest = i == rest;
        double reached = measure(i, edges[i], edges[i + 1]);
        return new SolvedBand(
                wished.number(i),
                wished.species(i),
                wished.measure(i),
                edges[i + 1] - edges[i],
                seen(edges[i], edges[i + 1]),
                isRest ? null : Double.valueOf(wished.toWishUnit(i, reached - wished.value(i))),
                isRest ? null : Double.valueOf(wished.toWishUnit(i, most[i])),
                sensitivities(i),
                rounded.length == 0
                        ? null
                        : new Rounded(rounded[i + 1] - rounded[i], seen(rounded[i], rounded[i + 1])));
    }

    private List<Sensitivity> sensitivities(int i) {
        List<Sensitivity> sensitivities = new ArrayList<>();
        for (int number = 0; number < count; number++) {
            int other = wished.place(number);
            if (other != rest) {
                sensitivities.add(new Sensitivity(wished.number(other), sensitivity(i, other)));
            }
        }
        return sensitivities;
    }

    /** A central difference; the rest takes up what another band gains. */
    private double sensitivity(int i, int other) {
        double step = DIFFERENCE * view.width();
        double change = measured(i, other, step) - measured(i, other, -step);
        double perMillimetre = change / (2 * step);
        return wished.isShare(i) ? perMillimetre / Quantity.LENGTH.factor(wished.unit()) : perMillimetre;
    }

    private double measured(int i, int wider, double by) {
        return measure(i, moved(i, wider, by), moved(i + 1, wider, by));
    }

    /** Where an edge lies once a band is wider: those between it and the rest move towards the rest. */
    private double moved(int edge, int wider, double by) {
        if (wider < rest) {
            return edge > wider && edge <= rest ? edges[edge] + by : edges[edge];
        }
        return edge > rest && edge <= wider ? edges[edge] - by : edges[edge];
    }

    /** The edges after rounding every width but the rest to the shop's step; empty without a step. */
    private double[] rounded() {
        double step = wished.step();
        if (step == 0) {
            return new double[0];
        }
        double[] rounded = edges.clone();
        for (int i = 0; i < rest; i++) {
            rounded[i + 1] = rounded[i] + toStep(edges[i + 1] - edges[i], step);
        }
        for (int i = count - 1; i > rest; i--) {
            rounded[i] = rounded[i + 1] - toStep(edges[i + 1] - edges[i], step);
        }
        if (rounded[rest + 1] - rounded[rest] < wished.smallestWidth()) {
            throw wished.impossible(
                    "/step",
                    "STEP_TOO_COARSE",
                    "Rounded to " + wished.say(step) + " the widths leave nothing for the rest.",
                    wished.shown(step),
                    "a finer step");
        }
        return rounded;
    }

    private static double toStep(double width, double step) {
        return Math.max(step, Math.rint(width / step) * step);
    }

    private ImpossibleDesignException tooMuch(int i, double wish) {
        return wished.impossible(List.of(violation(i, wish, most[i], "with everything that is left for it")));
    }

    /** Every wish that takes more than the others leave, with the most that it could be beside them. */
    private ImpossibleDesignException nothingLeft() {
        List<Violation> violations = new ArrayList<>();
        for (int number = 0; number < count; number++) {
            int i = wished.place(number);
            if (i != rest) {
                double beside = Math.max(0, i < rest ? mostFromBase(i) : mostFromTip(i));
                violations.add(violation(i, wished.value(i), beside, "beside the other wishes"));
            }
        }
        return wished.impossible(violations);
    }

    private Violation violation(int i, double wish, double atMost, String how) {
        return new Violation(
                wished.path(i) + "/value",
                "WISH_TOO_LARGE",
                "Band " + wished.number(i) + " cannot show " + wished.sayWish(i, wish) + ": " + how + " it shows "
                        + wished.sayMost(i, atMost) + " at most, and the rest needs something too.",
                wished.shownWish(i, wish),
                "at most " + wished.sayMost(i, atMost));
    }
}
