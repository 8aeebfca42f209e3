package org.orbwright.stock;

import java.util.ArrayList;
import java.util.List;
import org.orbwright.stock.CuttingProblem.MakeUp;
import org.orbwright.stock.CuttingProblem.StripKind;

/**
 * Ranges of lengths that pieces may have, side by side from the shortest piece to the longest, for a bound over all
 * lengths. A piece takes no more of a board than the start of its range, and reaches as far in a strip as its end; all
 * pieces of a width together are as long as their strips. The lengths are that of a whole strip, then the start of each
 * range.
 */
record PieceRanges(List<Double> lengths, List<Double> ends, SeamRules rules) {
    PieceRanges {
        lengths = List.copyOf(lengths);
        ends = List.copyOf(ends);
    }

    /** The ranges between some lengths, that of a whole strip first. */
    static PieceRanges between(List<Double> points, SeamRules rules) {
        double strip = points.get(0);
        if (rules.most() == 0) {
            return new PieceRanges(List.of(strip), List.of(strip), rules);
        }
        double longest = strip - rules.smallest() + rules.overlap();
        List<Double> starts = points.stream()
                .skip(1)
                .filter(length -> length > rules.smallest() + 1 && length < longest - 1)
                .sorted()
                .toList();
        List<Double> lengths = new ArrayList<>(List.of(strip, rules.smallest()));
        lengths.addAll(starts);
        List<Double> ends = new ArrayList<>(List.of(strip));
        ends.addAll(starts);
        ends.add(longest);
        return new PieceRanges(lengths, ends, rules);
    }

    /** How long pieces of a range are at most. */
    double longest(int range) {
        return ends.get(range);
    }

    /** Length of the pieces of a strip with so many seams. */
    double wanted(int seams) {
        return lengths.get(0) + seams * rules.overlap();
    }

    /** A problem whose strips are made of pieces of these ranges, however they are arranged. */
    CuttingProblem over(CuttingProblem problem) {
        List<MakeUp> ways = MakeUps.of(ends, rules);
        return new CuttingProblem(
                problem.ripping(),
                lengths,
                problem.crosscutKerf(),
                problem.boards(),
                problem.strips().stream()
                        .map(kind -> new StripKind(kind.width(), kind.count(), ways))
                        .toList());
    }
}
