package org.orbwright.stock;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.orbwright.stock.CuttingProblem.BoardKind;

/** The ways to rip each cross-section of board and to crosscut each kind of board. */
final class CuttingColumns {
    /** Steps for the patterns of all cross-sections together; some tenths of a second. */
    private static final int MOST_STEPS = 1_000_000;
    /** Counts of patterns in a model, all lengths and cross-sections together, and the fewest patterns for one. */
    private static final int MOST_COUNTS = 4_000;

    private static final int FEWEST_PATTERNS = 30;
    /** Most ways to crosscut a board for each to be counted; beyond, its sections are counted one by one. */
    private static final int MOST_PLANS = 100;
    /** Boards of a kind whose sections are counted one by one; for more of them only some ways are listed. */
    private static final int MOST_ONE_BY_ONE = 6;

    private final CuttingProblem problem;
    private final Map<CrossSection, RipPatterns.Found> patterns = new LinkedHashMap<>();
    private final List<LengthPlans.Found> plans;

    /** The width of a board that can be ripped and its surfaced thickness, in millimetres. */
    record CrossSection(double width, double thickness) {
        static CrossSection of(BoardKind board) {
            return new CrossSection(board.width(), board.thickness());
        }
    }

    CuttingColumns(CuttingProblem problem) {
        this.problem = problem;
        this.plans = problem.boards().stream()
                .map(board -> LengthPlans.of(problem.lengths(), board.length(), problem.crosscutKerf(), MOST_PLANS))
                .toList();
        int different =
                (int) problem.boards().stream().map(CrossSection::of).distinct().count();
        int steps = MOST_STEPS / Math.max(1, different);
        int most = Math.max(
                FEWEST_PATTERNS,
                MOST_COUNTS / Math.max(1, different * problem.lengths().size()));
        for (BoardKind board : problem.boards()) {
            patterns.computeIfAbsent(
                    CrossSection.of(board),
                    size -> RipPatterns.of(problem.ripping(), size.width(), size.thickness(), steps, most));
        }
    }

    CuttingProblem problem() {
        return problem;
    }

    /** The different cross-sections. */
    Collection<CrossSection> sections() {
        return patterns.keySet();
    }

    /** Whether all ways to rip and to crosscut are looked at that are worth while. */
    boolean areComplete() {
        boolean crosscuts = true;
        for (int board = 0; board < plans.size(); board++) {
            crosscuts &= plans.get(board).complete() || isOneByOne(board);
        }
        return crosscuts && haveAllPatterns();
    }

    /** Sections of a length that the boards of a cross-section give at most. */
    long mostSections(CrossSection size, int length) {
        double each = problem.lengths().get(length) + problem.crosscutKerf();
        return problem.boards().stream()
                .filter(board -> CrossSection.of(board).equals(size))
                .mapToLong(board -> board.count()
                        * (long) Math.floor((board.length() + problem.crosscutKerf() + Ripping.EXACT_FIT) / each))
                .sum();
    }

    /** The patterns of a cross-section. */
    List<RipPattern> patterns(CrossSection section) {
        return patterns.get(section).patterns();
    }

    /** Whether all ways to rip are looked at that are worth while. */
    boolean haveAllPatterns() {
        return patterns.values().stream().allMatch(RipPatterns.Found::complete);
    }

    /** Whether all lanes are known that are worth while. */
    boolean haveAllLanes() {
        return patterns.values().stream().allMatch(RipPatterns.Found::allLanes);
    }

    /** Parts of a section: patterns where all of them are listed, else lanes, which may lie in any section. */
    List<RippedPart> parts(CrossSection section) {
        RipPatterns.Found found = patterns.get(section);
        double kerf = problem.ripping().kerf();
        return found.complete()
                ? found.patterns().stream()
                        .map(pattern -> new RippedPart(pattern.counts(), 1))
                        .toList()
                : found.lanes().stream()
                        .map(lane -> new RippedPart(
                                problem.ripping().with(problem.ripping().none(), lane),
                                (lane.width() + kerf) / (section.width() + kerf + Ripping.EXACT_FIT)))
                        .toList();
    }

    /** A part of a section: how many strips of each width it gives, and the share of the section that it takes. */
    record RippedPart(List<Integer> counts, double share) {}

    /** Whether all ways to crosscut a kind of board are listed. */
    boolean areListed(int board) {
        return plans.get(board).complete();
    }

    /** Whether the sections of each board of a kind are counted one by one, as it can be crosscut in too many ways. */
    boolean isOneByOne(int board) {
        return !plans.get(board).complete() && problem.boards().get(board).count() <= MOST_ONE_BY_ONE;
    }

    /** The ways to crosscut a kind of board. */
    List<List<Integer>> plans(int board) {
        return plans.get(board).plans();
    }
}
