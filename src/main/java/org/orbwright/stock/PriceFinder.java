package org.orbwright.stock;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.ojalgo.optimisation.Expression;
import org.ojalgo.optimisation.ExpressionsBasedModel;
import org.ojalgo.optimisation.Optimisation.Result;
import org.ojalgo.optimisation.Variable;
import org.orbwright.stock.CuttingProblem.BoardKind;
import org.orbwright.stock.CuttingProblem.MakeUp;
import org.orbwright.stock.CuttingProblem.StripKind;

/**
 * Finds the prices that give the highest bound: the dual of the linear relaxation, in which patterns and ways to
 * crosscut are added as they are found to be worth more than the prices say (Gilmore and Gomory, A linear programming
 * approach to the cutting-stock problem, 1961).
 */
final class PriceFinder {
    private static final int MOST_ROUNDS = 60;
    /** Prices of the largest program that is solved. */
    private static final int MOST_PRICES = 20_000;

    private static final int FIRST_PATTERNS = 4;
    private static final int FIRST_PLANS = 4;
    /** Share of a price by which a pattern may be worth more. */
    private static final double CLOSE = 1e-7;

    private final CuttingColumns columns;
    private final CuttingAim aim;
    private final double dearest;
    private final ExpressionsBasedModel model = new ExpressionsBasedModel();
    private final Variable[][] piece;
    private final Variable[][] section;
    private final List<Variable> surpluses = new ArrayList<>();

    private PriceFinder(CuttingColumns columns, CuttingAim aim) {
        this.columns = columns;
        this.aim = aim;
        CuttingProblem problem = columns.problem();
        double all = 1;
        for (int b = 0; b < problem.boards().size(); b++) {
            all += problem.boards().get(b).count() * aim.perBoard().get(b);
        }
        for (double missing : aim.perMissing()) {
            all += missing;
        }
        for (StripKind kind : problem.strips()) {
            all += aim.perSeam() * kind.count() * kind.mostSeams();
        }
        dearest = all;
        piece = new Variable[problem.lengths().size()]
                [problem.ripping().widths().size()];
        section = new Variable[columns.sections().size()][problem.lengths().size()];
        prices();
        boards();
        strips();
    }

    /**
     * The best prices for an aim.
     *
     * @param milliseconds time after which no further round begins
     */
    static CuttingPrices find(CuttingColumns columns, CuttingAim aim, long milliseconds) {
        CuttingPrices byWood = byWood(columns, aim).sure();
        if (milliseconds <= 0 || columns.prices() > MOST_PRICES) {
            return byWood;
        }
        CuttingPrices found = new PriceFinder(columns, aim).find(milliseconds).sure();
        return found.bound() >= byWood.bound() ? found : byWood;
    }

    /** Simple prices, if there is no time for better ones: pieces by their wood, as dear as the boards allow. */
    private static CuttingPrices byWood(CuttingColumns columns, CuttingAim aim) {
        CuttingProblem problem = columns.problem();
        double[][] wood =
                new double[problem.lengths().size()][problem.ripping().widths().size()];
        for (int length = 0; length < wood.length; length++) {
            for (int width = 0; width < wood[length].length; width++) {
                wood[length][width] = problem.lengths().get(length)
                        * problem.ripping().widths().get(width);
            }
        }
        return CuttingPrices.ofListed(columns, aim, wood).scaled();
    }

    private void prices() {
        for (int length = 0; length < piece.length; length++) {
            for (int width = 0; width < piece[length].length; width++) {
                piece[length][width] = price("piece " + length + " " + width);
            }
        }
        for (int s = 0; s < section.length; s++) {
            for (int length = 0; length < piece.length; length++) {
                section[s][length] =
                        model.newVariable("section " + s + " " + length).lower(0);
                List<RipPattern> patterns = columns.patterns(s);
                for (RipPattern pattern : patterns.subList(0, Math.min(FIRST_PATTERNS, patterns.size()))) {
                    bind(s, length, pattern);
                }
            }
        }
    }

    private Variable price(String name) {
        return model.newVariable(name).lower(0).upper(dearest);
    }

    private void bind(int s, int length, RipPattern pattern) {
        Expression worth =
                model.newExpression("pattern " + model.countExpressions()).upper(0);
        worth.set(section[s][length], -1);
        for (int width = 0; width < pattern.counts().size(); width++) {
            if (pattern.counts().get(width) > 0) {
                worth.set(piece[length][width], pattern.counts().get(width));
            }
        }
    }

    private void boards() {
        for (int b = 0; b < columns.problem().boards().size(); b++) {
            BoardKind board = columns.problem().boards().get(b);
            Variable surplus = model.newVariable("board " + b).lower(0).weight(-board.count());
            surpluses.add(surplus);
            List<List<Integer>> plans = columns.plans(b);
            for (List<Integer> plan : plans.subList(0, Math.min(FIRST_PLANS, plans.size()))) {
                bind(b, plan);
            }
        }
    }

    private void bind(int b, List<Integer> plan) {
        Expression worth = model.newExpression("plan " + model.countExpressions())
                .upper(aim.perBoard().get(b));
        worth.set(surpluses.get(b), -1);
        for (int length = 0; length < plan.size(); length++) {
            if (plan.get(length) > 0) {
                worth.set(section[columns.sectionOf(b)][length], plan.get(length));
            }
        }
    }

    private void strips() {
        for (int s = 0; s < columns.problem().strips().size(); s++) {
            StripKind kind = columns.problem().strips().get(s);
            int may = aim.mayMiss().get(s);
            Variable must = price("strip " + s).weight(kind.count() - may);
            Variable spared = model.newVariable("spared " + s)
                    .lower(0)
                    .upper(Math.min(dearest, aim.perMissing().get(s)))
                    .weight(may);
            for (MakeUp makeUp : kind.makeUps()) {
                bind(must, kind, makeUp);
                bind(spared, kind, makeUp);
            }
        }
    }

    private void bind(Variable strip, StripKind kind, MakeUp makeUp) {
        Expression price =
                model.newExpression("make-up " + model.countExpressions()).upper(aim.perSeam() * makeUp.seams());
        price.set(strip, 1);
        for (int length = 0; length < piece.length; length++) {
            if (makeUp.count(length) > 0) {
                price.set(piece[length][kind.width()], -makeUp.count(length));
            }
        }
    }

    private CuttingPrices find(long milliseconds) {
        long start = System.nanoTime();
        double[][] none = new double[piece.length][piece.length == 0 ? 0 : piece[0].length];
        CuttingPrices prices = CuttingPrices.ofListed(columns, aim, none);
        for (int round = 0; round < MOST_ROUNDS; round++) {
            long left = milliseconds - TimeUnit.NANOSECONDS.toMillis(System.nanoTime() - start);
            if (left <= 0) {
                return prices;
            }
            model.options.time_abort = left;
            Result result = model.maximise();
            if (!result.getState().isFeasible()) {
                return prices;
            }
            double[][] found = values(result, piece);
            CuttingPrices better = CuttingPrices.ofListed(columns, aim, found);
            prices = better.bound() > prices.bound() ? better : prices;
            double[][] sections = values(result, section);
            boolean added = addPatterns(found, sections);
            if (!addPlans(result, sections) && !added) {
                return prices;
            }
        }
        return prices;
    }

    private double[][] values(Result result, Variable[][] variables) {
        double[][] values = new double[variables.length][];
        for (int i = 0; i < variables.length; i++) {
            values[i] = new double[variables[i].length];
            for (int j = 0; j < values[i].length; j++) {
                values[i][j] = Math.max(0, result.doubleValue(model.indexOf(variables[i][j])));
            }
        }
        return values;
    }

    /** Adds for each cross-section and length the pattern that is worth most, if it is worth more than its price. */
    private boolean addPatterns(double[][] pieces, double[][] sections) {
        boolean added = false;
        for (int s = 0; s < sections.length; s++) {
            for (int length = 0; length < pieces.length; length++) {
                RipPattern most = columns.worthMost(s, pieces[length]);
                double price = sections[s][length] + CLOSE * (1 + sections[s][length]);
                if (most != null && CuttingColumns.worth(most, pieces[length]) > price) {
                    bind(s, length, most);
                    added = true;
                }
            }
        }
        return added;
    }

    /** Adds for each kind of board the way to crosscut it that is worth most, if that is more than its price. */
    private boolean addPlans(Result result, double[][] sections) {
        boolean added = false;
        for (int b = 0; b < surpluses.size(); b++) {
            double[] worth = sections[columns.sectionOf(b)];
            double price = aim.perBoard().get(b) + result.doubleValue(model.indexOf(surpluses.get(b)));
            List<Integer> most = columns.plans(b).stream()
                    .max(Comparator.comparingDouble(plan -> CuttingColumns.worth(plan, worth)))
                    .orElse(null);
            if (most != null && CuttingColumns.worth(most, worth) > price + CLOSE * (1 + price)) {
                bind(b, most);
                added = true;
            }
        }
        return added;
    }
}
