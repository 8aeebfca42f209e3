package org.orbwright.stock;

import java.util.ArrayList;
import java.util.List;
import org.orbwright.stock.CuttingModel.Effort;
import org.orbwright.stock.CuttingModel.Outcome;
import org.orbwright.stock.CuttingProblem.BoardKind;
import org.orbwright.stock.CuttingProblem.StripKind;

/**
 * Finds the best plan for the boards of one species: first as few missing strips as can be, then the least of what the
 * caller wants little of, then the second of it. Each search is an integer program over the few ways of cutting that
 * prices do not rule out; it is widened until what is left out is proved to be of no use, or until it grows too large.
 */
final class CuttingPlanner {
    /** Ways of cutting in the first, quick search. */
    private static final int QUICK = 120;
    /** Ways of cutting in the largest search. */
    private static final int LARGEST = 1500;
    /** A plan this close to the bound, as a share, is as good as the bound can tell. */
    private static final double CLOSE = 1e-9;

    private final CuttingProblem problem;
    private final CuttingColumns columns;
    private final Effort effort;
    private final List<Integer> all;
    private final List<Integer> none;

    private CuttingPlanner(CuttingProblem problem, Effort effort) {
        this.problem = problem;
        this.columns = new CuttingColumns(problem);
        this.effort = effort;
        this.all = problem.strips().stream().map(StripKind::count).toList();
        this.none = problem.strips().stream().map(kind -> 0).toList();
    }

    /**
     * A plan and how good it is.
     *
     * @param plan the plan
     * @param value what it costs by the first aim
     * @param bound what no plan with as few missing strips costs less than
     * @param fewestMissing whether fewer strips cannot be missing
     */
    record Planned(CuttingPlan plan, double value, double bound, boolean fewestMissing) {
        /** By what share of its cost the plan might at most be bettered. */
        double gap() {
            return value > 0 ? (value - bound) / value : 0;
        }

        /** Whether no plan is better. */
        boolean proved() {
            return close(value, bound);
        }
    }

    /** Plans a problem with at least one kind of strip. */
    static Planned plan(CuttingProblem problem, StockAim aim, Effort effort) {
        return new CuttingPlanner(problem, effort).plan(aim);
    }

    private Planned plan(StockAim aim) {
        CuttingPlan greedy = GreedyPlan.of(columns);
        List<Integer> missing = greedy.missing();
        boolean fewest = true;
        CuttingPlan start = greedy;
        if (!missing.equals(none)) {
            Found found = best(missingAim(), greedy);
            start = found.plan;
            missing = start.missing();
            fewest = found.proved();
        }
        CuttingAim first = aim(aim, true, missing);
        Found found = best(first, start);
        CuttingPlan plan = found.plan;
        if (found.proved()) {
            plan = second(found, first, aim(aim, false, missing));
        }
        return new Planned(plan, found.value, Math.min(found.value, Math.max(0, found.bound)), fewest);
    }

    /** The best plan known, and the bound. */
    private record Found(CuttingPlan plan, double value, double bound, CuttingPrices prices) {
        boolean proved() {
            return close(value, bound);
        }
    }

    private Found best(CuttingAim aim, CuttingPlan start) {
        CuttingPrices prices = PriceFinder.find(columns, aim);
        CuttingPlan plan = start;
        double value = start.cost(aim);
        double bound = prices.bound();
        double[] excesses = prices.excesses();
        double limit = largestLimit(excesses, 0, value - bound, QUICK);
        double before = -1;
        while (!close(value, bound) && limit > before) {
            CuttingModel model = new CuttingModel(columns, aim, prices, limit);
            Outcome outcome = model.solve(effort);
            if (outcome.plan() != null && outcome.plan().cost(aim) < value) {
                plan = outcome.plan();
                value = plan.cost(aim);
            }
            if (outcome.exhausted()) {
                // What is left out costs more than this, and what is not was searched to its end.
                bound = Math.max(bound, Math.min(value, prices.bound() + limit));
            }
            before = limit;
            double gap = value - prices.bound();
            if (outcome.exhausted() && gap > limit) {
                limit = largestLimit(excesses, limit, gap, LARGEST);
            }
        }
        return new Found(plan, value, bound, prices);
    }

    /** The largest limit, from one up to the gap, that keeps a search to so many ways of cutting. */
    private static double largestLimit(double[] excesses, double from, double gap, int most) {
        if (excesses.length <= most || excesses[most] > gap) {
            return gap;
        }
        double limit = from;
        for (int i = 0; i < most && excesses[i] < excesses[most]; i++) {
            limit = Math.max(limit, excesses[i]);
        }
        return limit;
    }

    private static boolean close(double value, double bound) {
        return value - bound <= CLOSE * Math.abs(value);
    }

    private CuttingPlan second(Found found, CuttingAim first, CuttingAim second) {
        CuttingModel model =
                new CuttingModel(columns, second, found.prices, Math.max(0, found.value - found.prices.bound()));
        model.keep(first, found.value);
        Outcome outcome = model.solve(effort);
        boolean better = outcome.plan() != null
                && close(outcome.plan().cost(first), found.value)
                && outcome.plan().cost(second) < found.plan.cost(second);
        return better ? outcome.plan() : found.plan;
    }

    private CuttingAim missingAim() {
        List<Double> volumes = new ArrayList<>();
        for (StripKind kind : problem.strips()) {
            volumes.add(problem.ripping().widths().get(kind.width()));
        }
        return new CuttingAim(problem.boards().stream().map(board -> 0.0).toList(), volumes, all);
    }

    private CuttingAim aim(StockAim aim, boolean first, List<Integer> missing) {
        boolean cost = (aim == StockAim.COST) == first;
        List<Double> perBoard = problem.boards().stream()
                .map(board -> cost ? board.cost() : wood(board))
                .toList();
        return new CuttingAim(
                perBoard, problem.strips().stream().map(kind -> 0.0).toList(), missing);
    }

    /** Wood in cubic decimetres, so that the numbers of a search are neither tiny nor huge. */
    private static double wood(BoardKind board) {
        return board.volume() * 1e-6;
    }
}
