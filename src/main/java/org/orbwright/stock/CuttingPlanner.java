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
 * Plans that are better by less than a millionth are not looked for.
 */
final class CuttingPlanner {
    /** Ways of cutting in the first, quick search. */
    private static final int QUICK = 120;
    /** Ways of cutting in the largest search. */
    private static final int LARGEST = 6000;
    /** A plan this close to the bound, as a share, is as good as the bound can tell. */
    private static final double CLOSE = 1e-9;
    /** By what share of its cost a plan has to be better for the search to look for it. */
    private static final double BETTER = 1e-6;

    private final CuttingProblem problem;
    private final CuttingColumns columns;
    private final Effort effort;
    private final long begin = System.nanoTime();
    private final List<Integer> all;
    private final List<Integer> none;

    private CuttingPlanner(CuttingColumns columns, Effort effort) {
        this.problem = columns.problem();
        this.columns = columns;
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
        long begin = System.nanoTime();
        CuttingColumns columns = new CuttingColumns(problem, effort.nanoseconds() / 2);
        long left = effort.nanoseconds() - (System.nanoTime() - begin);
        return new CuttingPlanner(columns, new Effort(effort.nodes(), left)).plan(aim);
    }

    private Planned plan(StockAim aim) {
        CuttingPlan start = start(aim);
        boolean fewest = true;
        if (!start.missing().equals(none)) {
            // What is best comes after that, and wants time too.
            Found found = best(missingAim(), start, effort.nanoseconds() / 2);
            start = found.plan;
            fewest = found.proved();
        }
        List<CuttingAim> aims = aims(aim, start.missing());
        Found found = best(aims.get(0), start, effort.nanoseconds());
        CuttingPlan plan = found.proved() ? bestOfEqual(found, aims) : found.plan;
        return new Planned(plan, found.value, Math.min(found.value, Math.max(0, found.bound)), fewest);
    }

    /**
     * A plan to begin with. Where strips may have seams the best plan without them, whose search is small, shortens the
     * search for one with them.
     */
    private CuttingPlan start(StockAim aim) {
        if (!problem.allowsSeams()) {
            return GreedyPlan.of(columns);
        }
        Effort half = new Effort(effort.nodes(), effort.nanoseconds() / 2);
        return new CuttingPlanner(columns.withoutSeams(), half).plan(aim).plan().withSeamsAllowed(problem);
    }

    /** The best plan known, and the bound. */
    private record Found(CuttingPlan plan, double value, double bound, CuttingPrices prices) {
        boolean proved() {
            return close(value, bound);
        }
    }

    private Found best(CuttingAim aim, CuttingPlan start, long until) {
        CuttingPrices prices = PriceFinder.find(columns, aim, millisecondsLeft(until) / 2);
        CuttingPlan plan = start;
        double value = start.cost(problem, aim);
        double bound = prices.bound();
        double[] excesses = prices.excesses();
        int most = QUICK;
        double limit = largestLimit(excesses, 0, value - bound, most);
        boolean promising = true;
        while (!close(value, bound) && promising && isManageable(excesses, limit) && millisecondsLeft(until) > 0) {
            CuttingModel model = new CuttingModel(columns, aim, prices, limit);
            model.costAtMost(aim, value * (1 - BETTER));
            Outcome outcome = model.solve(effort.nodes(), millisecondsLeft(until));
            // A search that ended early with a better plan goes on faster from there.
            promising = outcome.plan() != null && outcome.plan().cost(problem, aim) < value;
            if (promising) {
                plan = outcome.plan();
                value = plan.cost(problem, aim);
            }
            if (outcome.exhausted() && columns.areComplete()) {
                // What is left out costs more than this, and what is not was searched to its end. Of a way that is not
                // even listed nobody knows what it costs.
                bound = Math.max(bound, Math.min(value, prices.bound() + limit));
            }
            double before = limit;
            double gap = value - prices.bound();
            while (outcome.exhausted() && gap > limit && limit == before && most < LARGEST) {
                most = Math.min(LARGEST, 2 * most);
                limit = largestLimit(excesses, limit, gap, most);
            }
            promising = outcome.exhausted() ? limit > before : promising;
        }
        return new Found(plan, value, bound, prices);
    }

    private long millisecondsLeft(long until) {
        return (until - (System.nanoTime() - begin)) / 1_000_000;
    }

    /** Whether so few ways of cutting come within a limit that a search can take them. */
    private static boolean isManageable(double[] excesses, double limit) {
        return excesses.length <= LARGEST || excesses[LARGEST] > limit;
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

    /** Of the plans that are best by the first aim, one that is best by the second, and of those by the third. */
    private CuttingPlan bestOfEqual(Found found, List<CuttingAim> aims) {
        CuttingPlan plan = found.plan;
        double limit = Math.max(0, found.value - found.prices.bound());
        boolean manageable = isManageable(found.prices.excesses(), limit);
        for (int i = 1; manageable && i < aims.size(); i++) {
            double value = plan.cost(problem, aims.get(i));
            long left = millisecondsLeft(effort.nanoseconds());
            if (value > 0 && left > 0) {
                CuttingModel model = new CuttingModel(columns, aims.get(i), found.prices, limit);
                for (CuttingAim before : aims.subList(0, i)) {
                    model.costAtMost(before, plan.cost(problem, before));
                }
                model.costAtMost(aims.get(i), value * (1 - BETTER));
                CuttingPlan other = model.solve(effort.nodes(), left).plan();
                plan = other != null && isBetter(other, plan, aims.subList(0, i + 1)) ? other : plan;
            }
        }
        return plan;
    }

    /** Whether a plan is as good by all aims but the last, and better by that; a solver's word is not enough. */
    private boolean isBetter(CuttingPlan other, CuttingPlan plan, List<CuttingAim> aims) {
        CuttingAim last = aims.get(aims.size() - 1);
        return other.cost(problem, last) < plan.cost(problem, last)
                && aims.subList(0, aims.size() - 1).stream()
                        .allMatch(aim -> close(other.cost(problem, aim), plan.cost(problem, aim)));
    }

    private CuttingAim missingAim() {
        List<Double> volumes = new ArrayList<>();
        for (StripKind kind : problem.strips()) {
            volumes.add(problem.ripping().widths().get(kind.width()));
        }
        return new CuttingAim(problem.boards().stream().map(board -> 0.0).toList(), 0, volumes, all);
    }

    /** The aim that was asked for, then the others in their order. */
    private List<CuttingAim> aims(StockAim asked, List<Integer> missing) {
        List<CuttingAim> aims = new ArrayList<>();
        aims.add(aim(asked, missing));
        for (StockAim other : StockAim.values()) {
            if (other != asked) {
                aims.add(aim(other, missing));
            }
        }
        return aims;
    }

    private CuttingAim aim(StockAim aim, List<Integer> missing) {
        List<Double> perBoard = problem.boards().stream()
                .map(board -> switch (aim) {
                    case COST -> board.cost();
                    case WASTE -> wood(board);
                    case SEAMS -> 0.0;
                })
                .toList();
        return new CuttingAim(
                perBoard,
                aim == StockAim.SEAMS ? 1 : 0,
                problem.strips().stream().map(kind -> 0.0).toList(),
                missing);
    }

    /** Wood in cubic decimetres, so that the numbers of a search are neither tiny nor huge. */
    private static double wood(BoardKind board) {
        return board.volume() * 1e-6;
    }
}
