package org.orbwright.stock;

import java.util.List;
import java.util.Map;
import org.orbwright.stock.CuttingPlanner.Planned;

/** A cutting problem and what the planner makes of it. */
record Solved(CuttingProblem problem, StockAim aim, Planned planned) {
    /** Far more work and time than any small problem takes. */
    private static final double MUCH_WORK = 100;

    private static final long LONG = 600_000_000_000L;

    /** The best plan. */
    static Solved best(CuttingProblem problem, StockAim aim) {
        return within(problem, aim, MUCH_WORK);
    }

    /** The best plan that so much work finds. */
    static Solved within(CuttingProblem problem, StockAim aim, double work) {
        Planned planned = planned(problem, CuttingAim.inOrder(aim), new Effort(work, LONG));
        return new Solved(problem, aim, planned);
    }

    /** The best plan by aims in their order. */
    static Planned planned(CuttingProblem problem, List<CuttingAim> aims, Effort effort) {
        CuttingColumns columns = new CuttingColumns(problem);
        return CuttingPlanner.plan(columns, aims, GreedyPlan.of(columns), Map.of(), effort);
    }

    CuttingPlan plan() {
        return planned.plan();
    }

    List<Integer> missing() {
        return plan().missing();
    }

    /** What it has of the aim that was asked for, as it is answered. */
    double value() {
        return CuttingAim.of(aim).answered(problem, plan());
    }

    double bound() {
        CuttingAim asked = CuttingAim.of(aim);
        return asked.answeredBound(planned.bounds().get(asked), plan().count(problem, asked), value());
    }

    boolean fewestMissing() {
        return planned.isLeast(problem, CuttingAim.MISSING);
    }

    boolean proved() {
        return CuttingAim.STATED.stream().allMatch(one -> planned.isLeast(problem, one));
    }
}
