package org.orbwright.stock;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.orbwright.stock.CuttingPlan.CutBoards;
import org.orbwright.stock.CuttingPlan.RippedSections;
import org.orbwright.stock.CuttingProblem.BoardKind;
import org.orbwright.stock.CuttingProblem.StripKind;

/**
 * A first plan: board after board, always the one that gives most wanted wood for its cost, without seams. It is sound
 * but seldom best; searches start from it, and it stands where they find nothing.
 */
final class GreedyPlan {
    private final CuttingColumns columns;
    private final CuttingProblem problem;
    private final int[] left;
    private final int[] boardsLeft;
    private final Choice[] choices;
    private final List<CutBoards> cut = new ArrayList<>();
    private final Map<String, RippedSections> ripped = new LinkedHashMap<>();

    private GreedyPlan(CuttingColumns columns) {
        this.columns = columns;
        this.problem = columns.problem();
        this.left = new int[problem.ripping().widths().size()];
        problem.strips().forEach(kind -> left[kind.width()] += wholeAllowed(kind) ? kind.count() : 0);
        this.boardsLeft = problem.boards().stream().mapToInt(BoardKind::count).toArray();
        this.choices = new Choice[boardsLeft.length];
    }

    static CuttingPlan of(CuttingColumns columns) {
        return new GreedyPlan(columns).plan();
    }

    private static boolean wholeAllowed(StripKind kind) {
        return kind.makeUps().get(0).seams() == 0;
    }

    private CuttingPlan plan() {
        Choice choice = best();
        while (choice != null) {
            take(choice);
            choice = best();
        }
        return new CuttingPlan(cut, List.copyOf(ripped.values()), madeUp(), missing());
    }

    private record Choice(int board, List<Integer> plan, List<RipPattern> patterns, double rate) {}

    /**
     * The board that gives most wanted wood for its cost; null if none gives any. What is wanted only becomes less, so
     * that a board gives no more than it once did, and only those have to be looked at anew that once gave more than
     * the best does now.
     */
    private Choice best() {
        while (true) {
            int most = -1;
            for (int b = 0; b < boardsLeft.length; b++) {
                if (boardsLeft[b] > 0 && !columns.plans(b).isEmpty() && (most < 0 || rate(b) > rate(most))) {
                    most = b;
                }
            }
            if (most < 0 || rate(most) == 0) {
                return null;
            }
            if (choices[most] != null && isWanted(given(choices[most]))) {
                return choices[most];
            }
            Choice choice = choose(most);
            if (choices[most] != null && choice.rate == choices[most].rate) {
                return choice;
            }
            choices[most] = choice;
        }
    }

    private double rate(int board) {
        return choices[board] == null ? Double.POSITIVE_INFINITY : choices[board].rate;
    }

    /** How many strips of each width one such board gives. */
    private int[] given(Choice choice) {
        int[] given = new int[left.length];
        for (RipPattern pattern : choice.patterns) {
            for (int width = 0; width < given.length; width++) {
                given[width] += pattern.counts().get(width);
            }
        }
        return given;
    }

    private boolean isWanted(int[] given) {
        for (int width = 0; width < given.length; width++) {
            if (given[width] > left[width]) {
                return false;
            }
        }
        return true;
    }

    /** The plan with most whole lengths comes first; each section is ripped to the most that is still wanted. */
    private Choice choose(int b) {
        List<Integer> plan = columns.plans(b).get(0);
        int[] wanted = left.clone();
        List<RipPattern> patterns = new ArrayList<>();
        double wood = 0;
        for (int i = 0; i < plan.get(0); i++) {
            RipPattern most = null;
            double mostWood = 0;
            for (RipPattern pattern : columns.patterns(columns.sectionOf(b))) {
                double some = useful(pattern, wanted);
                if (some > mostWood) {
                    most = pattern;
                    mostWood = some;
                }
            }
            if (most != null) {
                patterns.add(most);
                use(most, wanted);
                wood += mostWood;
            }
        }
        BoardKind board = problem.boards().get(b);
        return new Choice(b, plan, patterns, wood / (board.cost() + board.volume() * 1e-12));
    }

    private double useful(RipPattern pattern, int[] wanted) {
        double wood = 0;
        for (int width = 0; width < wanted.length; width++) {
            wood += Math.min(wanted[width], pattern.counts().get(width))
                    * problem.ripping().widths().get(width);
        }
        return wood;
    }

    private static void use(RipPattern pattern, int[] wanted) {
        for (int width = 0; width < wanted.length; width++) {
            wanted[width] = Math.max(0, wanted[width] - pattern.counts().get(width));
        }
    }

    /** Takes such boards as long as everything that one gives is wanted, which is as long as none is better. */
    private void take(Choice choice) {
        int[] given = given(choice);
        int count = boardsLeft[choice.board];
        for (int width = 0; width < given.length; width++) {
            count = given[width] == 0 ? count : Math.min(count, left[width] / given[width]);
        }
        int boards = Math.max(1, count);
        boardsLeft[choice.board] -= boards;
        cut.add(new CutBoards(choice.board, boards, choice.plan));
        for (RipPattern pattern : choice.patterns) {
            RippedSections some =
                    new RippedSections(columns.sections().get(columns.sectionOf(choice.board)), 0, boards, pattern);
            ripped.merge(
                    some.section() + " " + pattern.counts(),
                    some,
                    (a, b) -> new RippedSections(a.section(), 0, a.count() + b.count(), a.pattern()));
        }
        for (int width = 0; width < given.length; width++) {
            left[width] = Math.max(0, left[width] - boards * given[width]);
        }
    }

    private List<List<Integer>> madeUp() {
        List<List<Integer>> madeUp = new ArrayList<>();
        List<Integer> missing = missing();
        for (int s = 0; s < problem.strips().size(); s++) {
            StripKind kind = problem.strips().get(s);
            List<Integer> counts =
                    new ArrayList<>(kind.makeUps().stream().map(makeUp -> 0).toList());
            counts.set(0, kind.count() - missing.get(s));
            madeUp.add(counts);
        }
        return madeUp;
    }

    /** What is still wanted of a width is missing from its last kinds of strip. */
    private List<Integer> missing() {
        int[] wanted = left.clone();
        Integer[] missing = new Integer[problem.strips().size()];
        for (int s = missing.length - 1; s >= 0; s--) {
            StripKind kind = problem.strips().get(s);
            missing[s] = wholeAllowed(kind) ? Math.min(kind.count(), wanted[kind.width()]) : kind.count();
            wanted[kind.width()] -= wholeAllowed(kind) ? missing[s] : 0;
        }
        return List.of(missing);
    }
}
