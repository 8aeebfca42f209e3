package org.orbwright.stock;

import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.orbwright.stock.CuttingProblem.MakeUp;
import org.orbwright.stock.CuttingProblem.StripKind;

/**
 * Prices for pieces, and what follows from them: a bound below every plan, and for each way of cutting by how much a
 * plan that uses it exceeds that bound (Lagrangian relaxation of the pieces' balance). All of this holds for any prices
 * that are not negative, whoever found them; better prices only give a better bound.
 */
final class CuttingPrices {
    private final CuttingColumns columns;
    private final CuttingAim aim;
    /** Price of a piece by its length and width of strip. */
    private final double[][] piece;
    /** Worth of a section by its cross-section and length. */
    private final double[][] section;
    /** Worth of a board of each kind. */
    private final double[] board;
    /** By how much each board of a kind is worth more than it costs; 0 if it is worth less. */
    private final double[] surplus;
    /** Price of a strip of each kind. */
    private final double[] strip;

    private final double bound;

    /** The consequences of prices, by length and width of strip. */
    CuttingPrices(CuttingColumns columns, CuttingAim aim, double[][] piece) {
        this(columns, aim, piece, true);
    }

    private CuttingPrices(CuttingColumns columns, CuttingAim aim, double[][] piece, boolean sure) {
        this.columns = columns;
        this.aim = aim;
        this.piece = piece;
        int lengths = columns.problem().lengths().size();
        section = new double[columns.sections().size()][lengths];
        for (int s = 0; s < section.length; s++) {
            for (int length = 0; length < lengths; length++) {
                section[s][length] = columns.worthOfSection(s, piece[length], sure);
            }
        }
        board = new double[columns.problem().boards().size()];
        for (int b = 0; b < board.length; b++) {
            board[b] = columns.worthOfBoard(b, section[columns.sectionOf(b)], sure);
        }
        surplus = surplus();
        strip = strips();
        bound = sum();
    }

    /** All prices times a factor; what sections and boards are worth is so many times as much. */
    private CuttingPrices(CuttingPrices other, double factor) {
        columns = other.columns;
        aim = other.aim;
        piece = times(other.piece, factor);
        section = times(other.section, factor);
        board = times(other.board, factor);
        surplus = surplus();
        strip = strips();
        bound = sum();
    }

    /**
     * The consequences as far as the listed ways of cutting go. They are sure only if all lists are complete, but
     * sooner known.
     */
    static CuttingPrices ofListed(CuttingColumns columns, CuttingAim aim, double[][] piece) {
        return new CuttingPrices(columns, aim, piece, false);
    }

    /**
     * Prices with a sure bound from such as were found for the listed ways: where a list is not complete, the share of
     * them that has the highest bound.
     */
    CuttingPrices sure() {
        if (columns.areComplete()) {
            return this;
        }
        return new CuttingPrices(columns, aim, piece, true).scaled();
    }

    /** The share of these prices that has the highest bound: one at which some board is worth just what it costs. */
    CuttingPrices scaled() {
        CuttingPrices best = this;
        for (int b = 0; b < board.length; b++) {
            double share = aim.perBoard().get(b) / board[b];
            if (share > 0 && share < Double.POSITIVE_INFINITY) {
                CuttingPrices other = new CuttingPrices(this, share);
                best = other.bound > best.bound ? other : best;
            }
        }
        return best;
    }

    private static double[][] times(double[][] values, double factor) {
        return Stream.of(values).map(row -> times(row, factor)).toArray(double[][]::new);
    }

    private static double[] times(double[] values, double factor) {
        return DoubleStream.of(values).map(value -> value * factor).toArray();
    }

    private double[] surplus() {
        double[] more = new double[board.length];
        for (int b = 0; b < more.length; b++) {
            more[b] = Math.max(0, board[b] - aim.perBoard().get(b));
        }
        return more;
    }

    private double[] strips() {
        double[] prices = new double[columns.problem().strips().size()];
        for (int s = 0; s < prices.length; s++) {
            StripKind kind = columns.problem().strips().get(s);
            prices[s] = kind.makeUps().stream()
                    .mapToDouble(makeUp -> price(kind, makeUp))
                    .min()
                    .orElse(Double.POSITIVE_INFINITY);
        }
        return prices;
    }

    private double sum() {
        double sum = 0;
        for (int b = 0; b < board.length; b++) {
            sum -= columns.problem().boards().get(b).count() * surplus[b];
        }
        for (int s = 0; s < strip.length; s++) {
            int count = columns.problem().strips().get(s).count();
            int may = aim.mayMiss().get(s);
            sum += (count - may) * strip[s]
                    + may * Math.min(strip[s], aim.perMissing().get(s));
        }
        return sum;
    }

    /** What no plan costs less than. */
    double bound() {
        return bound;
    }

    /** What a plan costs above the bound at least, if it rips a section so. */
    double excessOfPattern(int crossSection, int length, RipPattern pattern) {
        return section[crossSection][length] - CuttingColumns.worth(pattern, piece[length]);
    }

    /** What a plan costs above the bound at least, if it crosscuts a board so. */
    double excessOfPlan(int kind, List<Integer> plan) {
        double worth = CuttingColumns.worth(plan, section[columns.sectionOf(kind)]);
        return aim.perBoard().get(kind) + surplus[kind] - worth;
    }

    /** What a plan costs above the bound at least, if it leaves one of these boards uncut. */
    double excessOfSparing(int kind) {
        return surplus[kind];
    }

    /** What a plan costs above the bound at least, if it makes up a strip so. */
    double excessOfMakeUp(int stripKind, MakeUp makeUp) {
        return price(columns.problem().strips().get(stripKind), makeUp) - strip[stripKind];
    }

    /** The excess of every way to crosscut, to rip and to make up, the smallest first. */
    double[] excesses() {
        CuttingProblem problem = columns.problem();
        DoubleStream.Builder excesses = DoubleStream.builder();
        for (int b = 0; b < problem.boards().size(); b++) {
            for (List<Integer> plan : columns.plans(b)) {
                excesses.add(excessOfPlan(b, plan));
            }
        }
        for (int s = 0; s < section.length; s++) {
            for (int length = 0; length < piece.length; length++) {
                for (RipPattern pattern : columns.patterns(s)) {
                    excesses.add(excessOfPattern(s, length, pattern));
                }
            }
        }
        for (int s = 0; s < strip.length; s++) {
            for (MakeUp makeUp : problem.strips().get(s).makeUps()) {
                excesses.add(excessOfMakeUp(s, makeUp));
            }
        }
        return excesses.build().sorted().toArray();
    }

    private double price(StripKind kind, MakeUp makeUp) {
        double price = aim.perSeam() * makeUp.seams();
        for (int length : makeUp.pieces()) {
            price += piece[length][kind.width()];
        }
        return price;
    }
}
