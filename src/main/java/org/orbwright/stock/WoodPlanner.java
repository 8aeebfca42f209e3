package org.orbwright.stock;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.orbwright.stock.CuttingPlanner.Planned;
import org.orbwright.stock.CuttingProblem.BoardKind;
import org.orbwright.stock.StockPlan.PlanProof;
import org.orbwright.stock.StripsAndBoards.Wood;

/**
 * Plans the strips of one wood, each strip by itself: whether seams keep their clearance from the neighbours' is
 * another matter. A plan without seams comes first. Then pieces of a few lengths are allowed, and as long as there is
 * work left and something to gain, the lengths that were of use are kept and others are tried beside them.
 */
final class WoodPlanner {
    /** Lengths of pieces in the first search with seams, and how many more in each one after it. */
    private static final int FIRST_LENGTHS = 9;

    private static final int MORE_LENGTHS = 5;
    private static final int MOST_LENGTHS = 24;
    /** Share of the work of a step that goes to its plan; the rest goes to its bounds. */
    private static final double FOR_PLAN = 0.6;

    /** Work that a plan without seams hardly ever exceeds. */
    private static final double WITHOUT_SEAMS = 0.05;
    /** Cross-sections times lengths in a search for a plan, and the fewest lengths. */
    private static final int LENGTHS = 300;

    private static final int FEWEST_LENGTHS = 5;
    /** The same of ranges in a search for a bound. */
    private static final int RANGES = 100;

    private static final int FEWEST_RANGES = 3;

    private final WoodStrips needs;
    private final List<BoardKind> boards;
    private final List<CuttingAim> aims;
    private final SeamZone.Pair zones;
    /** Lengths of pieces in the next search, that of a whole strip with them. */
    private int next = FIRST_LENGTHS;

    private WoodPlan best;
    private WoodPlan withoutSeams;
    /** Whether a search with the same lengths as the one before brought nothing new. */
    private boolean settled;

    /** The best plan found for a wood, with its problem. The plan's own bounds are for that problem's lengths. */
    record WoodPlan(List<CuttingAim> aims, CuttingProblem problem, Planned planned, Map<CuttingAim, Long> bounds) {
        long count(CuttingAim aim) {
            return planned.plan().count(problem, aim);
        }

        /** What no plan has less of that is as good in all aims before, whatever the lengths of its pieces. */
        long bound(CuttingAim aim) {
            return bounds.getOrDefault(aim, 0L);
        }

        PlanProof proof() {
            List<CuttingAim> stated =
                    aims.stream().filter(CuttingAim.STATED::contains).toList();
            if (stated.stream().allMatch(aim -> bound(aim) >= count(aim))) {
                return PlanProof.EVERY_PLAN;
            }
            boolean listed =
                    problem.lengths().size() > 1 && stated.stream().allMatch(aim -> planned.isLeast(problem, aim));
            return listed ? PlanProof.LISTED_LENGTHS : PlanProof.NONE;
        }

        /**
         * The same with what is known by bounds of another plan. A bound holds for all plans that are as good in the
         * aims before it as the plan that it was found for.
         */
        WoodPlan withBoundsOf(WoodPlan other) {
            Map<CuttingAim, Long> known = new EnumMap<>(CuttingAim.class);
            boolean holds = true;
            for (CuttingAim aim : aims) {
                known.put(aim, Math.max(bound(aim), holds ? other.bound(aim) : 0));
                holds &= count(aim) <= other.count(aim);
            }
            return new WoodPlan(aims, problem, planned, known);
        }
    }

    /** Plans a wood by the aims in their order; the seams of the bands lie in zones. */
    WoodPlanner(Wood wood, List<CuttingAim> aims, SeamZone.Pair zones) {
        this.needs = wood.strips();
        this.boards = wood.boards();
        this.aims = aims;
        this.zones = zones;
    }

    /** The best plan until now. */
    WoodPlan best() {
        return best;
    }

    /** The best plan without seams. */
    WoodPlan withoutSeams() {
        return withoutSeams;
    }

    /** Whether there is nothing to gain any more, or nothing more is tried. */
    boolean isFinished() {
        if (best == null) {
            return false;
        }
        return settled
                || best.proof() == PlanProof.EVERY_PLAN
                || (best.proof() == PlanProof.LISTED_LENGTHS && next > MOST_LENGTHS);
    }

    /** Makes the next search, and looks for bounds over all lengths. */
    void step(Effort effort) {
        PieceLengths lengths = needs.lengths();
        int most = needs.rules().most() == 0 ? 1 : Math.min(next, MOST_LENGTHS);
        List<Double> points = lengths.of(boards, Math.min(most, most(LENGTHS, FEWEST_LENGTHS)));
        WoodPlan before = best;
        if (before == null) {
            // Without seams first, and never with less work than that takes as a rule: with seams it is not to be
            // worse.
            best = withoutSeams(points.subList(0, 1), effort);
            withoutSeams = best;
        } else {
            WoodPlan other = plan(with(best, points, points.size()), effort.share(FOR_PLAN));
            best = isBetter(best, other) ? best : other;
            next += MORE_LENGTHS;
        }
        if (best.proof() != PlanProof.EVERY_PLAN && !effort.isSpent()) {
            best = bounded(best, points.subList(0, Math.min(points.size(), most(RANGES, FEWEST_RANGES))), effort);
        }
        boolean same = needs.rules().most() == 0 || next > MOST_LENGTHS + MORE_LENGTHS;
        settled = before != null && same && isAsGood(before);
    }

    /** The more cross-sections there are, the fewer lengths, so that a search stays one that can be made. */
    private int most(int all, int fewest) {
        long different =
                boards.stream().map(CuttingColumns.CrossSection::of).distinct().count();
        return (int) Math.max(fewest, all / Math.max(1, different));
    }

    /** Whether another plan is as good as the best one, and as much is known of it. */
    private boolean isAsGood(WoodPlan other) {
        return aims.stream()
                .allMatch(aim -> best.count(aim) == other.count(aim) && best.bound(aim) == other.bound(aim));
    }

    private WoodPlan withoutSeams(List<Double> whole, Effort effort) {
        CuttingColumns columns = new CuttingColumns(needs.problem(boards, whole, zones));
        CuttingPlan greedy = GreedyPlan.of(columns);
        return effort.isSpent()
                ? new WoodPlan(aims, columns.problem(), new Planned(greedy, Map.of(), false), Map.of())
                : plan(columns, greedy, Map.of(), effort.share(FOR_PLAN).atLeast(WITHOUT_SEAMS));
    }

    /** The same plan with bounds over all lengths, from ranges between some of them. */
    private WoodPlan bounded(WoodPlan plan, List<Double> points, Effort effort) {
        CuttingBound model = new CuttingBound(plan.problem, PieceRanges.between(points, needs.rules()));
        Map<CuttingAim, Long> bounds = new EnumMap<>(CuttingAim.class);
        bounds.putAll(plan.bounds);
        for (CuttingAim aim : model.holds() ? aims : List.<CuttingAim>of()) {
            long count = plan.count(aim);
            if (CuttingAim.STATED.contains(aim) && plan.bound(aim) < count && !effort.isSpent()) {
                bounds.merge(aim, Math.min(count, model.least(aim, effort.share(1.0 / 2))), Math::max);
            }
            model.atMost(aim, count);
        }
        return new WoodPlan(aims, plan.problem, plan.planned, bounds);
    }

    private boolean isBetter(WoodPlan one, WoodPlan other) {
        for (CuttingAim aim : aims) {
            if (one.count(aim) != other.count(aim)) {
                return one.count(aim) < other.count(aim);
            }
        }
        return false;
    }

    /** The lengths that a plan uses, then others. */
    private static List<Double> with(WoodPlan best, List<Double> others, int most) {
        List<Double> lengths = new ArrayList<>(List.of(others.get(0)));
        for (int length : best.planned.plan().usedLengths(best.problem)) {
            add(lengths, best.problem.lengths().get(length), MOST_LENGTHS);
        }
        others.forEach(length -> add(lengths, length, most));
        return lengths;
    }

    private static void add(List<Double> lengths, double length, int most) {
        boolean known = lengths.stream().anyMatch(other -> Math.abs(other - length) < Ripping.EXACT_FIT);
        if (!known && lengths.size() < most) {
            lengths.add(length);
        }
    }

    /** The best plan with pieces of these lengths. */
    private WoodPlan plan(List<Double> lengths, Effort effort) {
        CuttingProblem problem = needs.problem(boards, lengths, zones);
        CuttingPlan start = best.planned.plan().movedTo(best.problem, problem);
        return plan(new CuttingColumns(problem), start, best.bounds, effort).withBoundsOf(best);
    }

    private WoodPlan plan(CuttingColumns columns, CuttingPlan start, Map<CuttingAim, Long> known, Effort effort) {
        Planned planned = CuttingPlanner.plan(columns, aims, start, known, effort);
        if (!zones.equals(SeamZone.Pair.ANYWHERE)) {
            // Plans with seams elsewhere were not compared.
            planned = new Planned(planned.plan(), planned.bounds(), false);
        }
        boolean all = needs.rules().most() == 0 && planned.complete();
        return new WoodPlan(aims, columns.problem(), planned, all ? planned.bounds() : Map.of());
    }
}
