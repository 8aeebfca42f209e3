package org.orbwright.stock;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.orbwright.stock.CuttingModel.Result;

/**
 * Finds the best plan of a cutting problem: as few missing strips as can be, then the least of what the caller wants
 * little of, then of each other aim. Each aim is a search of its own, which begins at the plan of the one before and
 * may not lose what that gained.
 */
final class CuttingPlanner {
    /** Share of the work that is left that the search for one aim may take. */
    private static final double OF_WHAT_IS_LEFT = 0.5;

    private CuttingPlanner() {}

    /**
     * A plan, with what no plan has less of for each aim that is as good in all aims before. It is complete if that
     * goes for all ways to rip and to crosscut.
     */
    record Planned(CuttingPlan plan, Map<CuttingAim, Long> bounds, boolean complete) {
        /** Whether no plan of the problem has less of an aim and as little of all aims before. */
        boolean isLeast(CuttingProblem problem, CuttingAim aim) {
            return complete && bounds.getOrDefault(aim, 0L) >= plan.count(problem, aim);
        }
    }

    /**
     * Plans a problem, aim by aim in their order, from a plan to start with. What is known are bounds: no plan has less
     * of an aim that is as good as the first plan in all aims before.
     */
    static Planned plan(
            CuttingColumns columns,
            List<CuttingAim> aims,
            CuttingPlan start,
            Map<CuttingAim, Long> known,
            Effort effort) {
        CuttingProblem problem = columns.problem();
        CuttingModel model = new CuttingModel(columns);
        CuttingPlan plan = start;
        Map<CuttingAim, Long> bounds = new EnumMap<>(CuttingAim.class);
        boolean holds = true;
        for (int i = 0; i < aims.size(); i++) {
            CuttingAim aim = aims.get(i);
            long best = plan.count(problem, aim);
            long bound = holds ? known.getOrDefault(aim, 0L) : 0;
            if (best > bound && !effort.isSpent()) {
                model.hint(plan);
                Result result = model.least(aim, effort.share(OF_WHAT_IS_LEFT));
                if (result.plan() != null
                        && result.plan().isSound(problem)
                        && isBetter(problem, aims.subList(0, i + 1), result.plan(), plan)) {
                    plan = result.plan();
                    best = plan.count(problem, aim);
                }
                bound = Math.max(bound, Math.min(best, result.bound()));
            }
            holds &= best <= start.count(problem, aim);
            bounds.put(aim, bound);
            model.atMost(aim, best);
        }
        return new Planned(plan, bounds, columns.areComplete());
    }

    /** Whether a plan is better than another one by aims in their order. */
    static boolean isBetter(CuttingProblem problem, List<CuttingAim> aims, CuttingPlan plan, CuttingPlan other) {
        for (CuttingAim aim : aims) {
            long more = plan.count(problem, aim) - other.count(problem, aim);
            if (more != 0) {
                return more < 0;
            }
        }
        return false;
    }
}
