package org.orbwright.stock;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.orbwright.stock.CuttingColumns.CrossSection;
import org.orbwright.stock.CuttingProblem.BoardKind;
import org.orbwright.stock.CuttingProblem.MakeUp;
import org.orbwright.stock.CuttingProblem.StripKind;

/**
 * A plan for the boards of one species.
 *
 * @param boards how boards are crosscut
 * @param sections how sections are ripped
 * @param madeUp for each kind of strip, how many are made up in each way
 * @param missing for each kind of strip, how many are missing
 */
record CuttingPlan(
        List<CutBoards> boards, List<RippedSections> sections, List<List<Integer>> madeUp, List<Integer> missing) {
    CuttingPlan {
        boards = List.copyOf(boards);
        sections = List.copyOf(sections);
        madeUp = madeUp.stream().map(List::copyOf).toList();
        missing = List.copyOf(missing);
    }

    /**
     * Boards of a kind that are crosscut alike.
     *
     * @param kind which kind
     * @param count how many
     * @param sections how many sections of each length come of one
     */
    record CutBoards(int kind, int count, List<Integer> sections) {
        CutBoards {
            sections = List.copyOf(sections);
        }
    }

    /**
     * Sections that are ripped alike.
     *
     * @param section the boards' cross-section
     * @param length which of the lengths they have
     * @param count how many
     * @param pattern how they are ripped
     */
    record RippedSections(CrossSection section, int length, int count, RipPattern pattern) {}

    /** The same plan, made for a problem without seams, as one for the problem with them. */
    CuttingPlan withSeamsAllowed(CuttingProblem problem) {
        List<CutBoards> cut = boards.stream()
                .map(one -> new CutBoards(
                        one.kind(),
                        one.count(),
                        padded(one.sections(), problem.lengths().size())))
                .toList();
        List<List<Integer>> made = new ArrayList<>();
        for (int s = 0; s < madeUp.size(); s++) {
            made.add(padded(madeUp.get(s), problem.strips().get(s).makeUps().size()));
        }
        return new CuttingPlan(cut, sections, made, missing);
    }

    private static List<Integer> padded(List<Integer> counts, int size) {
        List<Integer> longer = new ArrayList<>(counts);
        longer.addAll(Collections.nCopies(size - counts.size(), 0));
        return longer;
    }

    /** What it costs by an aim. */
    double cost(CuttingProblem problem, CuttingAim aim) {
        double cost = 0;
        for (CutBoards cut : boards) {
            cost += cut.count() * aim.perBoard().get(cut.kind());
        }
        for (int s = 0; s < missing.size(); s++) {
            cost += missing.get(s) * aim.perMissing().get(s);
        }
        return cost + aim.perSeam() * seams(problem);
    }

    /** Number of seams in all strips. */
    int seams(CuttingProblem problem) {
        int seams = 0;
        for (int s = 0; s < madeUp.size(); s++) {
            List<MakeUp> makeUps = problem.strips().get(s).makeUps();
            for (int m = 0; m < makeUps.size(); m++) {
                seams += madeUp.get(s).get(m) * makeUps.get(m).seams();
            }
        }
        return seams;
    }

    /**
     * Whether it can be cut: no more boards than there are, no more sections than they give, no more pieces than the
     * sections give, and every strip that may not be missing. A solver's answer is believed only after this.
     */
    boolean isSound(CuttingProblem problem, CuttingAim aim) {
        return boardsSuffice(problem)
                && sectionsSuffice(problem)
                && piecesSuffice(problem)
                && stripsSuffice(problem, aim);
    }

    private boolean boardsSuffice(CuttingProblem problem) {
        int[] used = new int[problem.boards().size()];
        boards.forEach(cut -> used[cut.kind()] += cut.count());
        for (int b = 0; b < used.length; b++) {
            if (used[b] > problem.boards().get(b).count()) {
                return false;
            }
        }
        return boards.stream().allMatch(cut -> cut.count() > 0);
    }

    private boolean sectionsSuffice(CuttingProblem problem) {
        Map<CrossSection, int[]> left = new HashMap<>();
        for (CutBoards cut : boards) {
            BoardKind board = problem.boards().get(cut.kind());
            int[] counts = left.computeIfAbsent(
                    new CrossSection(board.width(), board.thickness()),
                    section -> new int[problem.lengths().size()]);
            for (int length = 0; length < counts.length; length++) {
                counts[length] += cut.count() * cut.sections().get(length);
            }
        }
        for (RippedSections ripped : sections) {
            int[] counts = left.get(ripped.section());
            if (counts == null || (counts[ripped.length()] -= ripped.count()) < 0) {
                return false;
            }
        }
        return true;
    }

    private boolean piecesSuffice(CuttingProblem problem) {
        int[][] left = pieces(problem);
        for (int s = 0; s < madeUp.size(); s++) {
            StripKind kind = problem.strips().get(s);
            for (int m = 0; m < kind.makeUps().size(); m++) {
                for (int length : kind.makeUps().get(m).pieces()) {
                    left[length][kind.width()] -= madeUp.get(s).get(m);
                }
            }
        }
        for (int[] widths : left) {
            for (int count : widths) {
                if (count < 0) {
                    return false;
                }
            }
        }
        return true;
    }

    /** How many pieces come of the sections, by length and width of strip. */
    private int[][] pieces(CuttingProblem problem) {
        int widths = problem.ripping().widths().size();
        int[][] pieces = new int[problem.lengths().size()][widths];
        for (RippedSections ripped : sections) {
            for (Lane lane : ripped.pattern().lanes()) {
                for (int width = 0; width < widths; width++) {
                    pieces[ripped.length()][width] += ripped.count() * lane.count(width);
                }
            }
        }
        return pieces;
    }

    private boolean stripsSuffice(CuttingProblem problem, CuttingAim aim) {
        for (int s = 0; s < madeUp.size(); s++) {
            int less = missing.get(s);
            int made = madeUp.get(s).stream().mapToInt(Integer::intValue).sum();
            if (less < 0
                    || less > aim.mayMiss().get(s)
                    || less + made != problem.strips().get(s).count()) {
                return false;
            }
        }
        return true;
    }
}
