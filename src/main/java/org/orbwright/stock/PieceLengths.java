package org.orbwright.stock;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.orbwright.stock.CuttingProblem.BoardKind;

/**
 * The lengths that pieces of strips are crosscut to, in millimetres: of all lengths there are, those that come out
 * well. They are what boards have to spare beyond whole strips and equal parts of that, what is wanted beside such a
 * piece to make a strip, equal parts of a strip, and the shortest piece.
 */
final class PieceLengths {
    private final double strip;
    private final SeamRules rules;
    private final double kerf;
    private final List<SeamedStrip> bands;
    private final Set<Long> known = new LinkedHashSet<>();
    private final List<Double> lengths = new ArrayList<>();

    /** Lengths for pieces of strips of these bands; strip is the length of a whole one, and kerf that of a crosscut. */
    PieceLengths(double strip, SeamRules rules, double kerf, List<SeamedStrip> bands) {
        this.strip = strip;
        this.rules = rules;
        this.kerf = kerf;
        this.bands = bands;
    }

    /** The lengths, that of a whole strip first, and no more than the most. */
    List<Double> of(List<BoardKind> boards, int most) {
        known.clear();
        lengths.clear();
        lengths.add(strip);
        known.add(key(strip));
        if (rules.most() == 0) {
            return List.copyOf(lengths);
        }
        List<Double> spare = spare(boards);
        double all = strip;
        for (int pieces = 2; pieces <= rules.most() + 1; pieces++) {
            all += rules.overlap();
            add(all / pieces, most);
        }
        for (double length : spare) {
            add(length, most);
            add(strip + rules.overlap() - length, most);
            withCut(length, most);
            if (rules.most() > 1) {
                add(strip + 2 * rules.overlap() - 2 * length, most);
                add((strip + 2 * rules.overlap() - length) / 2, most);
            }
        }
        add(rules.smallest(), most);
        add(strip + rules.overlap() - rules.smallest(), most);
        for (double length : spare) {
            for (int parts = 2; parts <= 3; parts++) {
                double part = (length - (parts - 1) * kerf) / parts;
                add(part, most);
                add(strip + rules.overlap() - part, most);
            }
        }
        return List.copyOf(lengths);
    }

    /** What is wanted beside a piece of a length if the seam is on the last cut that the piece reaches. */
    private void withCut(double length, int most) {
        double longest = 0;
        for (SeamedStrip band : bands) {
            longest = Math.max(longest, band.besideOnCut(length));
        }
        if (longest > 0) {
            add(longest, most);
        }
    }

    private void add(double length, int most) {
        double longest = strip - rules.smallest() + rules.overlap();
        boolean isPiece = length >= rules.smallest() - Ripping.EXACT_FIT && length <= longest + Ripping.EXACT_FIT;
        if (isPiece && lengths.size() < most && known.add(key(length))) {
            lengths.add(length);
        }
    }

    private static long key(double length) {
        return Math.round(length / Ripping.EXACT_FIT / 10);
    }

    /** What boards have to spare beyond each number of whole strips, the lengths of most wood first. */
    private List<Double> spare(List<BoardKind> boards) {
        Map<Double, Double> wood = new TreeMap<>(Comparator.reverseOrder());
        double longest = strip - rules.smallest() + rules.overlap();
        for (BoardKind board : boards) {
            double left = board.length();
            while (left > longest + Ripping.EXACT_FIT) {
                left -= strip + kerf;
            }
            if (left >= rules.smallest()) {
                wood.merge(left, board.count() * left * board.width() * board.thickness(), Double::sum);
            }
        }
        List<Double> spare = new ArrayList<>(wood.keySet());
        spare.sort(Comparator.comparing((Double length) -> wood.get(length)).reversed());
        return spare;
    }
}
