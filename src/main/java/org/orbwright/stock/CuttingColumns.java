package org.orbwright.stock;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.DoubleStream;
import org.orbwright.stock.CuttingProblem.BoardKind;

/** The ways to rip each cross-section of board and to crosscut each kind of board. */
final class CuttingColumns {
    /** Steps for the patterns of all cross-sections together; some tenths of a second. */
    private static final int MOST_STEPS = 1_000_000;
    /** Parts of the knapsacks of all prices together, and the fewest for one. */
    private static final int MOST_PARTS = 40_000_000;

    private static final int COARSE = 128;
    /** Ways to crosscut all boards together, the most for one kind of board, and how many each may have in any case. */
    private static final int PLANS_IN_ALL = 40_000;

    private static final int MOST_PLANS = 10000;
    private static final int FEWEST_PLANS = 60;

    private final CuttingProblem problem;
    private final List<CrossSection> sections;
    private final List<List<RipPattern>> patterns;
    private final List<Boolean> complete;
    private final List<Integer> sectionOfBoard;
    private final List<LengthPlans.Found> plans;

    /**
     * A board's width and thickness.
     *
     * @param width width that can be ripped, in millimetres
     * @param thickness thickness once surfaced
     */
    record CrossSection(double width, double thickness) {}

    /** The columns of a problem, however long that takes. */
    CuttingColumns(CuttingProblem problem) {
        this(problem, Long.MAX_VALUE);
    }

    /**
     * The columns of a problem.
     *
     * @param nanoseconds time after which only a few quickly found patterns are listed for each cross-section that is
     *     left
     */
    CuttingColumns(CuttingProblem problem, long nanoseconds) {
        long start = System.nanoTime();
        this.problem = problem;
        this.sections = new ArrayList<>();
        this.patterns = new ArrayList<>();
        this.complete = new ArrayList<>();
        this.sectionOfBoard = new ArrayList<>();
        this.plans = plans(problem);
        Map<CrossSection, Integer> known = new LinkedHashMap<>();
        long different = problem.boards().stream()
                .map(board -> new CrossSection(board.width(), board.thickness()))
                .distinct()
                .count();
        int steps = (int) (MOST_STEPS / Math.max(1, different));
        for (BoardKind board : problem.boards()) {
            CrossSection section = new CrossSection(board.width(), board.thickness());
            Integer index = known.get(section);
            if (index == null) {
                index = sections.size();
                known.put(section, index);
                sections.add(section);
                int left = System.nanoTime() - start < nanoseconds ? steps : 0;
                RipPatterns.Found found = RipPatterns.of(problem.ripping(), board.width(), board.thickness(), left);
                patterns.add(new ArrayList<>(found.patterns()));
                complete.add(found.complete());
            }
            sectionOfBoard.add(index);
        }
    }

    /** How many prices a search has to find: of each width of strip in each length of each cross-section. */
    int prices() {
        return sections.size()
                * problem.lengths().size()
                * problem.ripping().widths().size();
    }

    /** Parts for knapsacks, so that those for all prices stay within some tenths of a second. */
    private int parts() {
        return Math.max(COARSE, Math.min(Knapsack.FINE, MOST_PARTS / Math.max(1, prices())));
    }

    /** Those of a problem with the same boards and strips, but other lengths; the patterns are the same. */
    private CuttingColumns(CuttingColumns other, CuttingProblem problem) {
        this.problem = problem;
        this.sections = other.sections;
        this.patterns = other.patterns;
        this.complete = other.complete;
        this.sectionOfBoard = other.sectionOfBoard;
        this.plans = plans(problem);
    }

    private static List<LengthPlans.Found> plans(CuttingProblem problem) {
        int most = Math.min(
                MOST_PLANS,
                Math.max(
                        FEWEST_PLANS,
                        PLANS_IN_ALL / Math.max(1, problem.boards().size())));
        return problem.boards().stream()
                .map(board -> LengthPlans.of(problem.lengths(), board.length(), problem.crosscutKerf(), most))
                .toList();
    }

    /** The columns of the same problem if no strip may have a seam. */
    CuttingColumns withoutSeams() {
        return new CuttingColumns(this, problem.withoutSeams());
    }

    CuttingProblem problem() {
        return problem;
    }

    /** The different cross-sections. */
    List<CrossSection> sections() {
        return sections;
    }

    /** Whether all ways to rip and to crosscut are listed that are worth while. */
    boolean areComplete() {
        return !complete.contains(false) && plans.stream().allMatch(LengthPlans.Found::complete);
    }

    /** The patterns of a cross-section. */
    List<RipPattern> patterns(int section) {
        return patterns.get(section);
    }

    /**
     * The pattern of a cross-section that is worth most, if each strip of a width is worth so much. Where the list is
     * not complete, one that is not in it may be the one, and is added to it.
     */
    RipPattern worthMost(int section, double[] worth) {
        RipPattern most = null;
        for (RipPattern pattern : patterns(section)) {
            most = most == null || worth(pattern, worth) > worth(most, worth) ? pattern : most;
        }
        if (!complete.get(section)) {
            RipPattern other = PricedPattern.of(problem.ripping(), sections.get(section), worth);
            if (most == null || worth(other, worth) > worth(most, worth)) {
                patterns.get(section).add(other);
                most = other;
            }
        }
        return most;
    }

    /** Which cross-section a kind of board has. */
    int sectionOf(int board) {
        return sectionOfBoard.get(board);
    }

    /** The ways to crosscut a kind of board. */
    List<List<Integer>> plans(int board) {
        return plans.get(board).plans();
    }

    /**
     * What a section of board is worth, if each strip of a width is worth so much.
     *
     * @param section the cross-section
     * @param worth worth of a strip of each width
     * @param bound whether ways to rip that are not in an incomplete list are to be bounded too
     */
    double worthOfSection(int section, double[] worth, boolean bound) {
        double most = 0;
        for (RipPattern pattern : patterns(section)) {
            most = Math.max(most, worth(pattern, worth));
        }
        boolean more = bound && !complete.get(section);
        return more
                ? Math.max(most, PricedPattern.bound(parts(), problem.ripping(), sections.get(section), worth))
                : most;
    }

    /** What the strips of a pattern are worth together. */
    static double worth(RipPattern pattern, double[] worth) {
        return worth(pattern.counts(), worth);
    }

    /**
     * What a board is worth, if each of its sections is worth so much.
     *
     * @param board the kind of board
     * @param worth worth of a section of each length
     * @param bound whether ways to crosscut that are not in an incomplete list are to be bounded too
     */
    double worthOfBoard(int board, double[] worth, boolean bound) {
        double most = 0;
        for (List<Integer> plan : plans(board)) {
            most = Math.max(most, worth(plan, worth));
        }
        boolean more = bound && !plans.get(board).complete();
        return more ? Math.max(most, boundOfBoard(board, worth)) : most;
    }

    private double boundOfBoard(int board, double[] worth) {
        double kerf = problem.crosscutKerf();
        return Knapsack.bound(
                Knapsack.FINE,
                problem.boards().get(board).length() + kerf,
                problem.lengths().stream().map(length -> length + kerf).toList(),
                DoubleStream.of(worth).boxed().toList());
    }

    /** What so many of each kind are worth together. */
    static double worth(List<Integer> counts, double[] worth) {
        double sum = 0;
        for (int kind = 0; kind < worth.length; kind++) {
            sum += counts.get(kind) * worth[kind];
        }
        return sum;
    }
}
