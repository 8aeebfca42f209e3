package org.orbwright.stock;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.orbwright.stock.CuttingProblem.BoardKind;

/** The ways to rip each cross-section of board and to crosscut each kind of board. */
final class CuttingColumns {
    private final CuttingProblem problem;
    private final List<CrossSection> sections = new ArrayList<>();
    private final List<RipPatterns.Found> patterns = new ArrayList<>();
    private final List<Integer> sectionOfBoard = new ArrayList<>();
    private final List<LengthPlans.Found> plans = new ArrayList<>();

    /**
     * A board's width and thickness.
     *
     * @param width width that can be ripped, in millimetres
     * @param thickness thickness once surfaced
     */
    record CrossSection(double width, double thickness) {}

    CuttingColumns(CuttingProblem problem) {
        this.problem = problem;
        Map<CrossSection, Integer> known = new LinkedHashMap<>();
        for (BoardKind board : problem.boards()) {
            CrossSection section = new CrossSection(board.width(), board.thickness());
            Integer index = known.get(section);
            if (index == null) {
                index = sections.size();
                known.put(section, index);
                sections.add(section);
                patterns.add(RipPatterns.of(problem.ripping(), board.width(), board.thickness()));
            }
            sectionOfBoard.add(index);
            plans.add(LengthPlans.of(problem.lengths(), board.length(), problem.crosscutKerf()));
        }
    }

    CuttingProblem problem() {
        return problem;
    }

    /** The different cross-sections. */
    List<CrossSection> sections() {
        return sections;
    }

    /** The patterns of a cross-section. */
    List<RipPattern> patterns(int section) {
        return patterns.get(section).patterns();
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
     * What a section of board is worth at most, if each strip of a width is worth so much.
     *
     * @param section the cross-section
     * @param worth worth of a strip of each width
     */
    double worthOfSection(int section, double[] worth) {
        double most = 0;
        for (RipPattern pattern : patterns(section)) {
            most = Math.max(most, worth(pattern, worth));
        }
        return patterns.get(section).complete() ? most : Math.max(most, worthByWood(section, worth));
    }

    /** What the strips of a pattern are worth together. */
    static double worth(RipPattern pattern, double[] worth) {
        return worth(pattern.counts(), worth);
    }

    /** The worth if strips could be cut from the cross-section like butter: no pattern is worth more. */
    private double worthByWood(int section, double[] worth) {
        Ripping ripping = problem.ripping();
        double kerf = ripping.kerf();
        CrossSection size = sections.get(section);
        double best = 0;
        for (int item = 0; item < worth.length; item++) {
            best = Math.max(best, worth[item] / (ripping.widths().get(item) + kerf));
        }
        return best * (size.width() + kerf) * (size.thickness() + kerf) / (ripping.stick() + kerf);
    }

    /**
     * What a board is worth at most, if each of its sections is worth so much.
     *
     * @param board the kind of board
     * @param worth worth of a section of each length
     */
    double worthOfBoard(int board, double[] worth) {
        double most = 0;
        for (List<Integer> plan : plans(board)) {
            most = Math.max(most, worth(plan, worth));
        }
        return plans.get(board).complete() ? most : Math.max(most, worthByLength(board, worth));
    }

    /** What so many of each kind are worth together. */
    static double worth(List<Integer> counts, double[] worth) {
        double sum = 0;
        for (int kind = 0; kind < worth.length; kind++) {
            sum += counts.get(kind) * worth[kind];
        }
        return sum;
    }

    private double worthByLength(int board, double[] worth) {
        double kerf = problem.crosscutKerf();
        double best = 0;
        for (int length = 0; length < worth.length; length++) {
            best = Math.max(best, worth[length] / (problem.lengths().get(length) + kerf));
        }
        return best * (problem.boards().get(board).length() + kerf);
    }
}
