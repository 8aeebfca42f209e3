package org.orbwright.stock;

import java.util.List;
import java.util.stream.DoubleStream;
import org.orbwright.stock.CuttingProblem.BoardKind;
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
    /** By how much each board of a kind is worth more than it costs; 0 if it is worth less. */
    private final double[] surplus;
    /** Price of a strip of each kind. */
    private final double[] strip;

    private final double bound;

    CuttingPrices(CuttingColumns columns, CuttingAim aim, double[][] piece) {
        this.columns = columns;
        this.aim = aim;
        this.piece = piece;
        CuttingProblem problem = columns.problem();
        int lengths = problem.lengths().size();
        section = new double[columns.sections().size()][lengths];
        for (int s = 0; s < section.length; s++) {
            for (int length = 0; length < lengths; length++) {
                section[s][length] = columns.worthOfSection(s, piece[length]);
            }
        }
        double sum = 0;
        surplus = new double[problem.boards().size()];
        for (int b = 0; b < surplus.length; b++) {
            BoardKind board = problem.boards().get(b);
            double worth = columns.worthOfBoard(b, section[columns.sectionOf(b)]);
            surplus[b] = Math.max(0, worth - aim.perBoard().get(b));
            sum -= board.count() * surplus[b];
        }
        strip = new double[problem.strips().size()];
        for (int s = 0; s < strip.length; s++) {
            StripKind kind = problem.strips().get(s);
            strip[s] = Double.POSITIVE_INFINITY;
            for (MakeUp makeUp : kind.makeUps()) {
                strip[s] = Math.min(strip[s], price(kind, makeUp));
            }
            double missing = aim.perMissing().get(s);
            int may = aim.mayMiss().get(s);
            sum += (kind.count() - may) * strip[s] + may * Math.min(strip[s], missing);
        }
        bound = sum;
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
    double excessOfPlan(int board, List<Integer> plan) {
        double worth = CuttingColumns.worth(plan, section[columns.sectionOf(board)]);
        return aim.perBoard().get(board) + surplus[board] - worth;
    }

    /** What a plan costs above the bound at least, if it leaves one of these boards uncut. */
    double excessOfSparing(int board) {
        return surplus[board];
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
