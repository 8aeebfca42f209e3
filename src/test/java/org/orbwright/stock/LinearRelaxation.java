package org.orbwright.stock;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.optim.MaxIter;
import org.apache.commons.math3.optim.linear.LinearConstraint;
import org.apache.commons.math3.optim.linear.LinearConstraintSet;
import org.apache.commons.math3.optim.linear.LinearObjectiveFunction;
import org.apache.commons.math3.optim.linear.NonNegativeConstraint;
import org.apache.commons.math3.optim.linear.Relationship;
import org.apache.commons.math3.optim.linear.SimplexSolver;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;
import org.orbwright.stock.CuttingProblem.MakeUp;
import org.orbwright.stock.CuttingProblem.StripKind;

/**
 * The least that plans would cost if boards, sections and strips could be cut in fractions, from the dual of that
 * linear program over all ways of cutting at once, by the simplex algorithm of Apache Commons Math. The dual, because
 * prices of zero keep all its rules: a start from which no solver can go astray.
 */
final class LinearRelaxation {
    private final CuttingColumns columns;
    private final CuttingProblem problem;
    private final CuttingAim aim;
    private final int lengths;
    private final int widths;
    /** Places of the prices: of boards, of sections, of pieces, of strips, and of leave to miss a strip. */
    private final int firstSection;

    private final int firstPiece;
    private final int firstStrip;
    private final int firstLeave;
    private final int prices;
    private final List<LinearConstraint> rules = new ArrayList<>();

    private LinearRelaxation(CuttingColumns columns, CuttingAim aim) {
        this.columns = columns;
        this.problem = columns.problem();
        this.aim = aim;
        this.lengths = problem.lengths().size();
        this.widths = problem.ripping().widths().size();
        this.firstSection = problem.boards().size();
        this.firstPiece = firstSection + columns.sections().size() * lengths;
        this.firstStrip = firstPiece + lengths * widths;
        this.firstLeave = firstStrip + problem.strips().size();
        this.prices = firstLeave + problem.strips().size();
    }

    /** The least cost by an aim. */
    static double least(CuttingColumns columns, CuttingAim aim) {
        return new LinearRelaxation(columns, aim).solve();
    }

    private double solve() {
        crosscuts();
        rips();
        double[] worth = new double[prices];
        for (int b = 0; b < problem.boards().size(); b++) {
            worth[b] = -problem.boards().get(b).count();
        }
        for (int s = 0; s < problem.strips().size(); s++) {
            worth[firstStrip + s] = problem.strips().get(s).count();
            worth[firstLeave + s] = -aim.mayMiss().get(s);
            strip(s);
        }
        return new SimplexSolver()
                .optimize(
                        new MaxIter(100_000),
                        new LinearObjectiveFunction(worth, 0),
                        new LinearConstraintSet(rules),
                        GoalType.MAXIMIZE,
                        new NonNegativeConstraint(true))
                .getValue();
    }

    private void atMost(double[] factors, double most) {
        rules.add(new LinearConstraint(factors, Relationship.LEQ, most));
    }

    /** The sections of a board are worth no more than the board costs and is scarce. */
    private void crosscuts() {
        for (int b = 0; b < problem.boards().size(); b++) {
            for (List<Integer> plan : columns.plans(b)) {
                double[] factors = new double[prices];
                factors[b] = -1;
                for (int length = 0; length < lengths; length++) {
                    factors[firstSection + columns.sectionOf(b) * lengths + length] = plan.get(length);
                }
                atMost(factors, aim.perBoard().get(b));
            }
        }
    }

    /** The pieces of a section are worth no more than the section. */
    private void rips() {
        for (int section = 0; section < columns.sections().size(); section++) {
            for (int length = 0; length < lengths; length++) {
                for (RipPattern pattern : columns.patterns(section)) {
                    double[] factors = new double[prices];
                    factors[firstSection + section * lengths + length] = -1;
                    for (int width = 0; width < widths; width++) {
                        factors[firstPiece + length * widths + width] =
                                pattern.counts().get(width);
                    }
                    atMost(factors, 0);
                }
            }
        }
    }

    /** A strip is worth no more than its pieces and seams, nor than to miss it. */
    private void strip(int s) {
        StripKind kind = problem.strips().get(s);
        for (MakeUp makeUp : kind.makeUps()) {
            double[] factors = new double[prices];
            factors[firstStrip + s] = 1;
            makeUp.pieces().forEach(length -> factors[firstPiece + length * widths + kind.width()] -= 1);
            atMost(factors, aim.perSeam() * makeUp.seams());
        }
        double[] factors = new double[prices];
        factors[firstStrip + s] = 1;
        factors[firstLeave + s] = -1;
        atMost(factors, aim.perMissing().get(s));
    }
}
