package org.orbwright.stock;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.ojalgo.optimisation.Expression;
import org.ojalgo.optimisation.ExpressionsBasedModel;
import org.ojalgo.optimisation.Optimisation.Result;
import org.ojalgo.optimisation.Optimisation.State;
import org.ojalgo.optimisation.Variable;
import org.ojalgo.optimisation.integer.IntegerStrategy;
import org.orbwright.stock.CuttingColumns.CrossSection;
import org.orbwright.stock.CuttingPlan.CutBoards;
import org.orbwright.stock.CuttingPlan.RippedSections;
import org.orbwright.stock.CuttingProblem.BoardKind;
import org.orbwright.stock.CuttingProblem.MakeUp;
import org.orbwright.stock.CuttingProblem.StripKind;

/**
 * The integer program over those ways of cutting that exceed the bound by no more than a limit. A plan that uses any
 * other way costs more than bound and limit together, so what is left out cannot be in a better plan than that.
 */
final class CuttingModel {
    /**
     * No value is as far as this from the whole numbers on both of its sides, so no Gomory cut is made. Those of ojAlgo
     * 56 at times cut off every solution that there is, and the program is called infeasible.
     */
    private static final double NO_CUTS = 0.9;
    /**
     * What the solver is told of the time that a search has, as a share: it counts the time of each of its linear
     * programs anew, and was seen to take 1.7 times what it was told.
     */
    private static final double SOLVER_TIME = 0.5;
    /** Far more pivots for each row and column than a simplex takes. */
    private static final int MOST_PIVOTS = 10;

    private final CuttingColumns columns;
    private final CuttingAim aim;
    private final ExpressionsBasedModel model = new ExpressionsBasedModel();
    private final List<Variable> boards = new ArrayList<>();
    private final List<Crosscut> crosscuts = new ArrayList<>();
    private final List<Rip> rips = new ArrayList<>();
    private final List<Made> made = new ArrayList<>();
    private final List<Variable> missing = new ArrayList<>();
    private final Expression[][] pieces;
    private final Expression[][] sections;

    private record Crosscut(int board, List<Integer> plan, Variable count) {}

    private record Rip(int section, int length, RipPattern pattern, Variable count) {}

    private record Made(int strip, int makeUp, Variable count) {}

    /**
     * How long searches may take.
     *
     * @param nodes branches that are looked at in one search
     * @param nanoseconds time that all searches for a wood take at most
     */
    record Effort(int nodes, long nanoseconds) {}

    /**
     * What came of a search.
     *
     * @param plan the best plan found; null if none was
     * @param exhausted whether no plan of the program is better, or there is none
     */
    record Outcome(CuttingPlan plan, boolean exhausted) {}

    CuttingModel(CuttingColumns columns, CuttingAim aim, CuttingPrices prices, double limit) {
        this.columns = columns;
        this.aim = aim;
        CuttingProblem problem = columns.problem();
        int lengths = problem.lengths().size();
        pieces = new Expression[lengths][problem.ripping().widths().size()];
        sections = new Expression[columns.sections().size()][lengths];
        for (int length = 0; length < lengths; length++) {
            for (int width = 0; width < pieces[length].length; width++) {
                pieces[length][width] =
                        model.newExpression("pieces " + length + " " + width).lower(0);
            }
            for (int s = 0; s < sections.length; s++) {
                sections[s][length] =
                        model.newExpression("sections " + s + " " + length).upper(0);
            }
        }
        boards(prices, limit);
        patterns(prices, limit);
        strips(prices, limit);
    }

    private void boards(CuttingPrices prices, double limit) {
        for (int b = 0; b < columns.problem().boards().size(); b++) {
            BoardKind board = columns.problem().boards().get(b);
            // A variable of its own, so that the search can branch on how many boards are cut.
            Variable cut = count("boards " + b, board.count());
            cut.weight(aim.perBoard().get(b));
            boards.add(cut);
            if (prices.excessOfSparing(b) > limit) {
                cut.lower(board.count());
            }
            Expression used = model.newExpression("used " + b).level(0);
            used.set(cut, -1);
            for (List<Integer> plan : columns.plans(b)) {
                if (prices.excessOfPlan(b, plan) <= limit) {
                    Variable count = count("crosscut " + crosscuts.size(), board.count());
                    used.set(count, 1);
                    for (int length = 0; length < plan.size(); length++) {
                        add(sections[columns.sectionOf(b)][length], count, -plan.get(length));
                    }
                    crosscuts.add(new Crosscut(b, plan, count));
                }
            }
        }
    }

    private void patterns(CuttingPrices prices, double limit) {
        for (int s = 0; s < sections.length; s++) {
            for (int length = 0; length < pieces.length; length++) {
                for (RipPattern pattern : columns.patterns(s)) {
                    if (prices.excessOfPattern(s, length, pattern) <= limit) {
                        Variable count =
                                model.newVariable("rip " + rips.size()).lower(0).integer();
                        add(sections[s][length], count, 1);
                        for (int width = 0; width < pattern.counts().size(); width++) {
                            add(pieces[length][width], count, pattern.counts().get(width));
                        }
                        rips.add(new Rip(s, length, pattern, count));
                    }
                }
            }
        }
    }

    private void strips(CuttingPrices prices, double limit) {
        for (int s = 0; s < columns.problem().strips().size(); s++) {
            StripKind kind = columns.problem().strips().get(s);
            Expression needed = model.newExpression("strips " + s).level(kind.count());
            Variable less = count("missing " + s, aim.mayMiss().get(s));
            less.weight(aim.perMissing().get(s));
            needed.set(less, 1);
            missing.add(less);
            for (int m = 0; m < kind.makeUps().size(); m++) {
                MakeUp makeUp = kind.makeUps().get(m);
                if (prices.excessOfMakeUp(s, makeUp) <= limit) {
                    Variable count = count("made " + made.size(), kind.count());
                    count.weight(aim.perSeam() * makeUp.seams());
                    needed.set(count, 1);
                    for (int length = 0; length < pieces.length; length++) {
                        add(pieces[length][kind.width()], count, -makeUp.count(length));
                    }
                    made.add(new Made(s, m, count));
                }
            }
        }
    }

    private Variable count(String name, int most) {
        return model.newVariable(name).lower(0).upper(most).integer();
    }

    private static void add(Expression expression, Variable variable, int factor) {
        if (factor != 0) {
            expression.set(variable, factor);
        }
    }

    /**
     * Only plans that cost no more than this by an aim, give or take the last bits of a sum. It shortens searches much.
     */
    void costAtMost(CuttingAim other, double most) {
        Expression cost =
                model.newExpression("at most " + model.countExpressions()).upper(most + 1e-9 * Math.abs(most));
        for (int b = 0; b < boards.size(); b++) {
            double each = other.perBoard().get(b);
            if (each != 0) {
                cost.set(boards.get(b), BigDecimal.valueOf(each));
            }
        }
        for (int s = 0; s < missing.size(); s++) {
            if (other.perMissing().get(s) != 0) {
                cost.set(missing.get(s), BigDecimal.valueOf(other.perMissing().get(s)));
            }
        }
        for (Made one : made) {
            int seams = columns.problem()
                    .strips()
                    .get(one.strip)
                    .makeUps()
                    .get(one.makeUp)
                    .seams();
            if (other.perSeam() * seams != 0) {
                cost.set(one.count, BigDecimal.valueOf(other.perSeam() * seams));
            }
        }
    }

    /**
     * Searches for the best plan, in one thread, so that the same question always has the same answer.
     *
     * @param nodes branches that are looked at
     * @param milliseconds time that it takes at most
     */
    Outcome solve(int nodes, long milliseconds) {
        model.options.integer(IntegerStrategy.newConfigurable()
                .withParallelism(() -> 1)
                .withGMICutConfiguration(new IntegerStrategy.GMICutConfiguration().withFractionality(NO_CUTS)));
        model.options.iterations_abort = nodes;
        model.options.iterations_suffice = nodes;
        long solving = (long) (SOLVER_TIME * milliseconds);
        model.options.time_abort = solving;
        model.options.time_suffice = solving;
        long start = System.nanoTime();
        Result result = model.minimise();
        boolean inTime = System.nanoTime() - start < TimeUnit.MILLISECONDS.toNanos(solving);
        CuttingPlan plan = plan(result);
        boolean sound = plan.isSound(columns.problem(), aim);
        boolean optimal = result.getState().isOptimal() && sound;
        boolean exhausted = optimal || result.getState() == State.INFEASIBLE;
        return new Outcome(sound ? plan : null, exhausted && inTime && isEnough(nodes));
    }

    /**
     * Whether so many steps end no linear program on the way. The limits of a search are those of each of its linear
     * programs too, and one that does not come to its end is taken for infeasible, so that a search may seem exhausted.
     */
    private boolean isEnough(int nodes) {
        return nodes >= MOST_PIVOTS * (model.countVariables() + model.countExpressions());
    }

    private CuttingPlan plan(Result result) {
        List<CutBoards> cut = new ArrayList<>();
        for (Crosscut crosscut : crosscuts) {
            int count = value(result, crosscut.count);
            if (count > 0) {
                cut.add(new CutBoards(crosscut.board, count, crosscut.plan));
            }
        }
        List<RippedSections> ripped = new ArrayList<>();
        for (Rip rip : rips) {
            int count = value(result, rip.count);
            if (count > 0) {
                CrossSection size = columns.sections().get(rip.section);
                ripped.add(new RippedSections(size, rip.length, count, rip.pattern));
            }
        }
        List<List<Integer>> madeUp = new ArrayList<>();
        for (StripKind kind : columns.problem().strips()) {
            madeUp.add(new ArrayList<>(kind.makeUps().stream().map(makeUp -> 0).toList()));
        }
        made.forEach(one -> madeUp.get(one.strip).set(one.makeUp, value(result, one.count)));
        return new CuttingPlan(
                cut,
                ripped,
                madeUp,
                missing.stream().map(less -> value(result, less)).toList());
    }

    private int value(Result result, Variable variable) {
        return (int) Math.rint(result.doubleValue(model.indexOf(variable)));
    }
}
