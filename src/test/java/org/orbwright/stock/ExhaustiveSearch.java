package org.orbwright.stock;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import org.orbwright.stock.SmallProblem.Board;
import org.orbwright.stock.SmallProblem.Strip;

/**
 * The best plans of a small problem, by trying everything: every set of pieces that so many boards of each kind can
 * give, board after board, against every way to make up the strips. It counts in whole hundredths of a millimetre and
 * shares nothing with the planner.
 */
final class ExhaustiveSearch {
    /** Sums of widths and costs that differ by less are equal; numbers are drawn much further apart. */
    private static final double EQUAL = 1e-6;

    private final SmallProblem problem;
    private final int strips;
    /** A set of pieces is as long as this: for each length and width, how many are at least as long. */
    private final int size;

    private final int[] useful;
    private final List<Set<List<Integer>>> fromBoard = new ArrayList<>();
    private final List<Wish> wishes = new ArrayList<>();
    private final List<Supply> supplies = new ArrayList<>();

    /** The pieces for one way to make up the strips, with what is missing then and the seams that it has. */
    private record Wish(List<Integer> pieces, List<Integer> missing, int seams) {}

    /** What so many boards of each kind can give. */
    private record Supply(List<Integer> boards, Set<List<Integer>> pieces) {}

    ExhaustiveSearch(SmallProblem problem) {
        this.problem = problem;
        this.strips = problem.strips().size();
        int widths = problem.widths().size();
        this.size = problem.lengths().size() * widths;
        this.useful = new int[size];
        for (int i = 0; i < size; i++) {
            useful[i] = problem.mostUseful(i % widths);
        }
        for (Board board : problem.boards()) {
            fromBoard.add(crosscut(board, board.length() + problem.crosscutKerf(), 0, sections(board)));
        }
        wish(0, 0, 0, new int[size], new int[strips], 0);
        supply(new ArrayList<>(), Set.of(zeros()));
    }

    /** The fewest missing strips, all together. */
    int fewestMissing() {
        int fewest = Integer.MAX_VALUE;
        Supply all = supplies.get(supplies.size() - 1);
        for (Wish wish : wishes) {
            int missing = wish.missing().stream().mapToInt(Integer::intValue).sum();
            if (missing < fewest && covers(all.pieces(), wish.pieces())) {
                fewest = missing;
            }
        }
        return fewest;
    }

    /** The least cost of boards, among the plans in which so many strips are missing. */
    double leastOfBoards(int missing, ToDoubleFunction<Board> cost) {
        return least(missing, (supply, wish) -> {
            double sum = 0;
            for (int b = 0; b < supply.boards().size(); b++) {
                sum += supply.boards().get(b)
                        * cost.applyAsDouble(problem.boards().get(b));
            }
            return sum;
        });
    }

    /** The fewest seams, among the plans in which so many strips are missing. */
    double fewestSeams(int missing) {
        return least(missing, (supply, wish) -> wish.seams());
    }

    private interface Cost {
        double of(Supply supply, Wish wish);
    }

    private double least(int missing, Cost cost) {
        double least = Double.POSITIVE_INFINITY;
        for (Supply supply : supplies) {
            for (Wish wish : wishes) {
                if (wish.missing().stream().mapToInt(Integer::intValue).sum() == missing) {
                    double value = cost.of(supply, wish);
                    if (value < least - EQUAL && covers(supply.pieces(), wish.pieces())) {
                        least = value;
                    }
                }
            }
        }
        return least;
    }

    /** What a section of a board can give: each set is how many strips of each width. */
    private Set<List<Integer>> sections(Board board) {
        List<int[]> lanes = new ArrayList<>();
        for (int width = 0; width < problem.widths().size(); width++) {
            int[] lane = new int[problem.widths().size() + 1];
            lane[0] = problem.widths().get(width);
            lane[width + 1] = (board.thickness() + problem.ripKerf()) / (problem.stick() + problem.ripKerf());
            lanes.add(lane);
        }
        slices(
                board.thickness() + problem.ripKerf(),
                0,
                new int[problem.widths().size() + 1],
                lanes);
        Set<List<Integer>> found = new HashSet<>();
        rip(
                board.width() + problem.ripKerf(),
                0,
                lanes,
                new int[problem.widths().size()],
                found);
        return uncovered(found);
    }

    /** Every way to slice strips off a stick that was turned on its side. */
    private void slices(int room, int first, int[] lane, List<int[]> lanes) {
        for (int width = first; width < problem.widths().size(); width++) {
            int rest = room - problem.widths().get(width) - problem.ripKerf();
            if (rest >= 0) {
                lane[0] = problem.stick();
                lane[width + 1]++;
                lanes.add(lane.clone());
                slices(rest, width, lane, lanes);
                lane[width + 1]--;
            }
        }
    }

    private void rip(int room, int first, List<int[]> lanes, int[] counts, Set<List<Integer>> found) {
        found.add(list(counts));
        for (int lane = first; lane < lanes.size(); lane++) {
            int rest = room - lanes.get(lane)[0] - problem.ripKerf();
            if (rest >= 0) {
                int[] more = counts.clone();
                for (int width = 0; width < more.length; width++) {
                    more[width] += lanes.get(lane)[width + 1];
                }
                rip(rest, lane, lanes, more, found);
            }
        }
    }

    /** What a board can give from here on, if it is crosscut to sections of this length or later ones. */
    private Set<List<Integer>> crosscut(Board board, int room, int first, Set<List<Integer>> sections) {
        Set<List<Integer>> found = new HashSet<>();
        found.add(zeros());
        for (int length = first; length < problem.lengths().size(); length++) {
            int rest = room - problem.lengths().get(length) - problem.crosscutKerf();
            if (rest >= 0) {
                Set<List<Integer>> section = new HashSet<>();
                for (List<Integer> strips : sections) {
                    int[] pieces = new int[size];
                    for (int width = 0; width < strips.size(); width++) {
                        pieces[length * strips.size() + width] = strips.get(width);
                    }
                    section.add(atLeast(pieces));
                }
                found.addAll(sums(section, crosscut(board, rest, length, sections)));
            }
        }
        return uncovered(found);
    }

    private void supply(List<Integer> boards, Set<List<Integer>> pieces) {
        if (boards.size() == problem.boards().size()) {
            supplies.add(new Supply(List.copyOf(boards), pieces));
            return;
        }
        Set<List<Integer>> all = pieces;
        int kind = boards.size();
        for (int count = 0; count <= problem.boards().get(kind).count(); count++) {
            boards.add(count);
            supply(boards, all);
            boards.remove(kind);
            all = uncovered(sums(all, fromBoard.get(kind)));
        }
    }

    /** Decides for this strip and all later ones how many are missing and how many are made up in each way. */
    private void wish(int strip, int makeUp, int decided, int[] pieces, int[] missing, int seams) {
        if (strip == strips) {
            wishes.add(new Wish(atLeast(pieces), list(missing), seams));
            return;
        }
        Strip kind = problem.strips().get(strip);
        if (makeUp == kind.makeUps().size()) {
            int[] less = missing.clone();
            less[strip] = kind.count() - decided;
            wish(strip + 1, 0, 0, pieces, less, seams);
            return;
        }
        List<Integer> made = kind.makeUps().get(makeUp);
        int[] more = pieces.clone();
        for (int count = 0; decided + count <= kind.count(); count++) {
            wish(strip, makeUp + 1, decided + count, more.clone(), missing, seams + count * (made.size() - 1));
            for (int length : made) {
                more[length * problem.widths().size() + kind.width()]++;
            }
        }
    }

    /** Every sum of a set of the one kind and a set of the other, none counted that is of no use. */
    private Set<List<Integer>> sums(Set<List<Integer>> some, Set<List<Integer>> others) {
        Set<List<Integer>> sums = new HashSet<>();
        for (List<Integer> one : some) {
            for (List<Integer> other : others) {
                int[] sum = new int[size];
                for (int i = 0; i < size; i++) {
                    sum[i] = Math.min(useful[i], one.get(i) + other.get(i));
                }
                sums.add(list(sum));
            }
        }
        return sums;
    }

    /** Without the sets that another one covers. */
    private static Set<List<Integer>> uncovered(Set<List<Integer>> sets) {
        Set<List<Integer>> kept = new HashSet<>();
        for (List<Integer> set : sets) {
            if (sets.stream().noneMatch(other -> !other.equals(set) && covers(List.of(other), set))) {
                kept.add(set);
            }
        }
        return kept;
    }

    private static boolean covers(Collection<List<Integer>> sets, List<Integer> wanted) {
        return sets.stream().anyMatch(set -> {
            for (int i = 0; i < wanted.size(); i++) {
                if (set.get(i) < wanted.get(i)) {
                    return false;
                }
            }
            return true;
        });
    }

    /** For each length and width, how many pieces are at least as long: a longer piece serves as a shorter one. */
    private List<Integer> atLeast(int[] pieces) {
        int widths = problem.widths().size();
        int[] counts = new int[size];
        for (int i = 0; i < size; i++) {
            for (int other = i % widths; other < size; other += widths) {
                boolean longer = problem.lengths().get(other / widths)
                        >= problem.lengths().get(i / widths);
                counts[i] += longer ? pieces[other] : 0;
            }
        }
        return list(counts);
    }

    private List<Integer> zeros() {
        return list(new int[size]);
    }

    private static List<Integer> list(int[] counts) {
        List<Integer> list = new ArrayList<>(counts.length);
        for (int count : counts) {
            list.add(count);
        }
        return list;
    }
}
