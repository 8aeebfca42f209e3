package org.orbwright.stock;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.orbwright.stock.CuttingPlan.CutBoards;
import org.orbwright.stock.CuttingProblem.BoardKind;
import org.orbwright.stock.CuttingProblem.MakeUp;

/** What a plan is to have least of. It is counted in whole numbers, so that plans can be compared exactly. */
enum CuttingAim {
    /** Missing strips. */
    MISSING(1),
    /** The cost of the boards that are cut, in ten thousandths of the currency. */
    COST(1e-4),
    /** The wood of the boards that are cut, in cubic millimetres. */
    WASTE(1e-6),
    /** Seams in strips. */
    SEAMS(1),
    /** Seams that no cut between segments takes out of the way. */
    SEAMS_WITHIN(1);

    /** Those that an answer states and proves where it can; the last is a preference among equal plans. */
    static final Set<CuttingAim> STATED = EnumSet.range(MISSING, SEAMS);

    /** What one is in the answer: a strip, the currency, a cubic decimetre or a seam. */
    private final double one;

    CuttingAim(double one) {
        this.one = one;
    }

    /** The aims of a search in the order in which they count: missing strips, what is asked for, all others. */
    static List<CuttingAim> inOrder(StockAim asked) {
        List<CuttingAim> aims = new ArrayList<>(List.of(MISSING, of(asked)));
        for (CuttingAim aim : values()) {
            if (!aims.contains(aim)) {
                aims.add(aim);
            }
        }
        return aims;
    }

    static CuttingAim of(StockAim asked) {
        return switch (asked) {
            case COST -> COST;
            case WASTE -> WASTE;
            case SEAMS -> SEAMS;
        };
    }

    /** What a missing strip counts. */
    long perMissing() {
        return this == MISSING ? 1 : 0;
    }

    /** What a board counts. */
    long perBoard(BoardKind board) {
        return switch (this) {
            case COST -> Math.round(board.cost() / one);
            case WASTE -> Math.round(board.volume());
            case MISSING, SEAMS, SEAMS_WITHIN -> 0;
        };
    }

    /** What a strip counts that is made up in a way. */
    long perStrip(MakeUp makeUp) {
        return switch (this) {
            case SEAMS -> makeUp.seams();
            case SEAMS_WITHIN -> makeUp.within();
            case MISSING, COST, WASTE -> 0;
        };
    }

    /** What a plan has of it, as it is answered: strips, the currency, cubic decimetres or seams. */
    double answered(CuttingProblem problem, CuttingPlan plan) {
        double sum = 0;
        for (CutBoards cut : plan.boards()) {
            BoardKind board = problem.boards().get(cut.kind());
            sum += cut.count()
                    * switch (this) {
                        case COST -> board.cost();
                        case WASTE -> board.volume() * one;
                        case MISSING, SEAMS, SEAMS_WITHIN -> 0;
                    };
        }
        return this == COST || this == WASTE ? sum : plan.count(problem, this);
    }

    /** A bound as it is answered, beside a plan that has so many of it. */
    double answeredBound(long bound, long count, double value) {
        return bound >= count ? value : Math.min(value, bound * one);
    }
}
