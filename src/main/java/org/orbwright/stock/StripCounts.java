package org.orbwright.stock;

import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.orbwright.stock.CuttingProblem.MakeUp;
import org.orbwright.stock.CuttingProblem.StripKind;

/**
 * The strips in an integer program: how many of a kind are made up in a way or missing, and that the pieces suffice for
 * them. A longer piece serves as a shorter one: of the pieces of a width and at least a length there are as many as
 * strips ask for.
 */
final class StripCounts {
    private final CpModel model;
    private final CuttingProblem problem;
    private final List<Made> made = new ArrayList<>();
    private final List<IntVar> missing = new ArrayList<>();
    /** For each width and length, pieces that are cut less those that are asked for. */
    private final List<List<LinearExprBuilder>> pieces;

    /** How many strips of a kind are made up in a way. */
    private record Made(int strip, int makeUp, IntVar count) {}

    StripCounts(CpModel model, CuttingProblem problem) {
        this.model = model;
        this.problem = problem;
        this.pieces = problem.ripping().widths().stream()
                .map(width -> sums(problem.lengths().size()))
                .toList();
        for (int s = 0; s < problem.strips().size(); s++) {
            strips(s);
        }
    }

    /** So many empty sums. */
    static List<LinearExprBuilder> sums(int count) {
        return IntStream.range(0, count).mapToObj(i -> LinearExpr.newBuilder()).toList();
    }

    private void strips(int s) {
        StripKind kind = problem.strips().get(s);
        LinearExprBuilder needed = LinearExpr.newBuilder();
        IntVar less = model.newIntVar(0, kind.count(), "missing");
        needed.addTerm(less, 1);
        missing.add(less);
        for (int m = 0; m < kind.makeUps().size(); m++) {
            MakeUp makeUp = kind.makeUps().get(m);
            IntVar count = model.newIntVar(0, kind.count(), "made");
            needed.addTerm(count, 1);
            for (int length = 0; length < problem.lengths().size(); length++) {
                int uses = makeUp.count(length);
                if (uses > 0) {
                    pieces.get(kind.width()).get(length).addTerm(count, -uses);
                }
            }
            made.add(new Made(s, m, count));
        }
        model.addEquality(needed.build(), kind.count());
    }

    /** Adds the pieces of a length that come of so many sections, each of which gives so many strips of each width. */
    void cut(int length, IntVar sections, List<Integer> strips) {
        for (int width = 0; width < pieces.size(); width++) {
            if (strips.get(width) > 0) {
                pieces.get(width).get(length).addTerm(sections, strips.get(width));
            }
        }
    }

    /** Demands that the pieces suffice; all of them have to be added before. */
    void suffice() {
        List<Integer> sorted = IntStream.range(0, problem.lengths().size())
                .boxed()
                .sorted(Comparator.comparing(
                                (Integer length) -> problem.lengths().get(length))
                        .reversed())
                .toList();
        for (List<LinearExprBuilder> counts : pieces) {
            LinearExprBuilder longer = LinearExpr.newBuilder();
            for (int length : sorted) {
                longer.add(counts.get(length).build());
                model.addGreaterOrEqual(longer.build(), 0);
            }
        }
    }

    /** Adds the length of all pieces that strips of a width ask for. */
    void wantedLength(int width, PieceRanges ranges, long perMillimetre, LinearExprBuilder sum) {
        for (Made one : made) {
            StripKind kind = problem.strips().get(one.strip);
            if (kind.width() == width) {
                int seams = kind.makeUps().get(one.makeUp).seams();
                sum.addTerm(one.count, -(long) (ranges.wanted(seams) * perMillimetre));
            }
        }
    }

    /** Adds what strips count of an aim. */
    void count(CuttingAim aim, LinearExprBuilder count) {
        made.forEach(one -> count.addTerm(
                one.count,
                aim.perStrip(problem.strips().get(one.strip).makeUps().get(one.makeUp))));
        missing.forEach(less -> count.addTerm(less, aim.perMissing()));
    }

    /** Begins the search with the strips of a plan. */
    void hint(CuttingPlan plan) {
        made.forEach(
                one -> model.addHint(one.count, plan.madeUp().get(one.strip).get(one.makeUp)));
        for (int s = 0; s < missing.size(); s++) {
            model.addHint(missing.get(s), plan.missing().get(s));
        }
    }

    /** For each kind of strip, how many are made up in each way. */
    List<List<Integer>> madeUp(CpSolver solver) {
        List<List<Integer>> madeUp = new ArrayList<>();
        for (int s = 0; s < missing.size(); s++) {
            int strip = s;
            madeUp.add(made.stream()
                    .filter(one -> one.strip == strip)
                    .map(one -> (int) solver.value(one.count))
                    .toList());
        }
        return madeUp;
    }

    /** For each kind of strip, how many are missing. */
    List<Integer> missing(CpSolver solver) {
        return missing.stream().map(less -> (int) solver.value(less)).toList();
    }
}
