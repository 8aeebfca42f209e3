package org.orbwright.stock;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;
import org.orbwright.stock.CuttingColumns.CrossSection;
import org.orbwright.stock.CuttingProblem.BoardKind;
import org.orbwright.stock.CuttingProblem.MakeUp;
import org.orbwright.stock.CuttingProblem.StripKind;

/**
 * A plan for the boards of one species: how boards are crosscut and sections ripped, and for each kind of strip how
 * many are made up in each way, and how many are missing.
 */
record CuttingPlan(
        List<CutBoards> boards, List<RippedSections> sections, List<List<Integer>> madeUp, List<Integer> missing) {
    CuttingPlan {
        boards = List.copyOf(boards);
        sections = List.copyOf(sections);
        madeUp = madeUp.stream().map(List::copyOf).toList();
        missing = List.copyOf(missing);
    }

    /** Boards of a kind that are crosscut alike, and how many sections of each length come of one. */
    record CutBoards(int kind, int count, List<Integer> sections) {
        CutBoards {
            sections = List.copyOf(sections);
        }
    }

    /** Sections of one cross-section and one of the lengths that are ripped alike. */
    record RippedSections(CrossSection section, int length, int count, RipPattern pattern) {}

    /** Which lengths its sections have, and the pieces of its strips. */
    Set<Integer> usedLengths(CuttingProblem problem) {
        Set<Integer> used = new TreeSet<>();
        sections.forEach(ripped -> used.add(ripped.length()));
        for (int s = 0; s < madeUp.size(); s++) {
            for (int m = 0; m < madeUp.get(s).size(); m++) {
                if (madeUp.get(s).get(m) > 0) {
                    used.addAll(problem.strips().get(s).makeUps().get(m).pieces());
                }
            }
        }
        return used;
    }

    /** The same plan as one for a problem that has all of its lengths, and others. */
    CuttingPlan movedTo(CuttingProblem from, CuttingProblem to) {
        List<Integer> places = from.lengths().stream()
                .map(length -> placeOf(length, to.lengths()))
                .toList();
        List<CutBoards> cut = new ArrayList<>();
        for (CutBoards one : boards) {
            List<Integer> counts =
                    new ArrayList<>(Collections.nCopies(to.lengths().size(), 0));
            for (int length = 0; length < one.sections().size(); length++) {
                if (one.sections().get(length) > 0 && places.get(length) >= 0) {
                    counts.set(places.get(length), one.sections().get(length));
                }
            }
            cut.add(new CutBoards(one.kind(), one.count(), counts));
        }
        List<List<Integer>> made = new ArrayList<>();
        List<Integer> less = new ArrayList<>();
        for (int s = 0; s < madeUp.size(); s++) {
            int[] counts = new int[to.strips().get(s).makeUps().size()];
            int strips = 0;
            for (int m = 0; m < madeUp.get(s).size(); m++) {
                int way = to.strips().get(s).wayFrom(pieces(from, s, m), to.lengths());
                if (way >= 0) {
                    counts[way] += madeUp.get(s).get(m);
                    strips += madeUp.get(s).get(m);
                }
            }
            made.add(IntStream.of(counts).boxed().toList());
            less.add(to.strips().get(s).count() - strips);
        }
        List<RippedSections> ripped = sections.stream()
                .map(one -> new RippedSections(one.section(), places.get(one.length()), one.count(), one.pattern()))
                .toList();
        return new CuttingPlan(cut, ripped, made, less);
    }

    private static List<Double> pieces(CuttingProblem problem, int strip, int makeUp) {
        return problem.strips().get(strip).makeUps().get(makeUp).pieces().stream()
                .map(problem.lengths()::get)
                .toList();
    }

    private static int placeOf(double length, List<Double> lengths) {
        return IntStream.range(0, lengths.size())
                .filter(i -> Math.abs(lengths.get(i) - length) < Ripping.EXACT_FIT)
                .findFirst()
                .orElse(-1);
    }

    /** How much it has of an aim. */
    long count(CuttingProblem problem, CuttingAim aim) {
        long count = 0;
        for (CutBoards cut : boards) {
            count += cut.count() * aim.perBoard(problem.boards().get(cut.kind()));
        }
        for (int s = 0; s < missing.size(); s++) {
            count += missing.get(s) * aim.perMissing();
            List<MakeUp> makeUps = problem.strips().get(s).makeUps();
            for (int m = 0; m < makeUps.size(); m++) {
                count += madeUp.get(s).get(m) * aim.perStrip(makeUps.get(m));
            }
        }
        return count;
    }

    /**
     * Whether it can be cut: no more boards than there are, no more sections than they give, no more pieces than the
     * sections give, where a longer piece serves as a shorter one, and every strip made or missing. A solver's answer
     * is believed only after this.
     */
    boolean isSound(CuttingProblem problem) {
        return boardsSuffice(problem) && sectionsSuffice(problem) && piecesSuffice(problem) && stripsSuffice(problem);
    }

    private boolean boardsSuffice(CuttingProblem problem) {
        int[] used = new int[problem.boards().size()];
        boards.forEach(cut -> used[cut.kind()] += cut.count());
        for (int b = 0; b < used.length; b++) {
            if (used[b] > problem.boards().get(b).count()) {
                return false;
            }
        }
        return boards.stream().allMatch(cut -> cut.count() > 0 && fits(problem, cut));
    }

    private static boolean fits(CuttingProblem problem, CutBoards cut) {
        double room = problem.boards().get(cut.kind()).length() + problem.crosscutKerf() + Ripping.EXACT_FIT;
        for (int length = 0; length < cut.sections().size(); length++) {
            room -= cut.sections().get(length) * (problem.lengths().get(length) + problem.crosscutKerf());
        }
        return room >= 0;
    }

    private boolean sectionsSuffice(CuttingProblem problem) {
        Map<CrossSection, int[]> left = new HashMap<>();
        for (CutBoards cut : boards) {
            BoardKind board = problem.boards().get(cut.kind());
            int[] counts = left.computeIfAbsent(
                    CrossSection.of(board), section -> new int[problem.lengths().size()]);
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
        List<Integer> byLength = IntStream.range(0, left.length)
                .boxed()
                .sorted(Comparator.comparing(
                                (Integer length) -> problem.lengths().get(length))
                        .reversed())
                .toList();
        int[] spare = new int[problem.ripping().widths().size()];
        for (int length : byLength) {
            for (int width = 0; width < spare.length; width++) {
                spare[width] += left[length][width];
                if (spare[width] < 0) {
                    return false;
                }
            }
        }
        return true;
    }

    private int[][] pieces(CuttingProblem problem) {
        int widths = problem.ripping().widths().size();
        int[][] pieces = new int[problem.lengths().size()][widths];
        for (int length = 0; length < pieces.length; length++) {
            for (int width = 0; width < widths; width++) {
                pieces[length][width] = pieces(length, width);
            }
        }
        return pieces;
    }

    /** How many pieces of a length and a width come of the sections. */
    int pieces(int length, int width) {
        return sections.stream()
                .filter(ripped -> ripped.length() == length)
                .mapToInt(ripped -> ripped.count()
                        * ripped.pattern().lanes().stream()
                                .mapToInt(lane -> lane.count(width))
                                .sum())
                .sum();
    }

    private boolean stripsSuffice(CuttingProblem problem) {
        for (int s = 0; s < madeUp.size(); s++) {
            int less = missing.get(s);
            int made = madeUp.get(s).stream().mapToInt(Integer::intValue).sum();
            if (less < 0 || less + made != problem.strips().get(s).count()) {
                return false;
            }
        }
        return true;
    }
}
