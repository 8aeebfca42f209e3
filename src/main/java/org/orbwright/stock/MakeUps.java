package org.orbwright.stock;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.orbwright.stock.CuttingProblem.MakeUp;

/**
 * The ways to make a strip up of pieces of given lengths: sets of pieces that reach from end to end with the overlaps
 * of their seams. A set with longer pieces than another one is of use only if fewer of its seams lie within segments,
 * for which they may be longer by the distance between two cuts.
 */
final class MakeUps {
    private final List<Double> lengths;
    private final List<Integer> ascending;
    private final double strip;
    private final SeamRules rules;
    private final double slack;
    private final List<List<Integer>> found = new ArrayList<>();

    private MakeUps(List<Double> lengths, SeamRules rules, double slack) {
        this.lengths = lengths;
        this.strip = lengths.get(0);
        this.rules = rules;
        this.slack = slack;
        this.ascending = IntStream.range(0, lengths.size())
                .boxed()
                .sorted(Comparator.comparing(lengths::get))
                .toList();
    }

    /** The ways that reach from end to end, one piece first. The first length is that of a whole strip. */
    static List<MakeUp> of(List<Double> lengths, SeamRules rules) {
        return new MakeUps(lengths, rules, 0).ways(pieces -> OptionalInt.of(0));
    }

    /** The ways to make up the strips of a band with seams in a zone, the one in a single piece first. */
    static List<MakeUp> of(List<Double> lengths, SeamRules rules, SeamedStrip band, SeamZone zone) {
        // What reaches no cut may reach one if it is longer by a gap; what does not reach the zone, by any length.
        return new MakeUps(lengths, rules, zone.equals(SeamZone.ANYWHERE) ? band.widestGap() : lengths.get(0))
                .ways(pieces -> band.arrangements(pieces, zone).stream()
                        .mapToInt(SeamedStrip.Arrangement::within)
                        .min());
    }

    /** Seams that lie within segments, for pieces in any order; none if the pieces cannot be arranged. */
    private interface Within {
        OptionalInt of(List<Double> pieces);
    }

    private List<MakeUp> ways(Within within) {
        List<MakeUp> ways = new ArrayList<>(List.of(new MakeUp(List.of(0))));
        for (int pieces = 2; pieces <= rules.most() + 1; pieces++) {
            found.clear();
            extend(List.of(), 0, pieces, strip + (pieces - 1) * rules.overlap());
            ways.addAll(useful(within));
        }
        return ways;
    }

    /** Adds pieces that are no longer than those before, until what is wanted is reached. */
    private void extend(List<Integer> places, double reached, int left, double wanted) {
        int longest = places.isEmpty() ? ascending.size() - 1 : places.get(places.size() - 1);
        double most = strip - rules.smallest() + rules.overlap();
        double enough = Double.POSITIVE_INFINITY;
        boolean isEnough = false;
        for (int place = 0; place <= longest; place++) {
            double length = lengths.get(ascending.get(place));
            double all = reached + length;
            boolean isPiece = length >= rules.smallest() - Ripping.EXACT_FIT && length <= most + Ripping.EXACT_FIT;
            if (isPiece && all + (left - 1) * length >= wanted - Ripping.EXACT_FIT && !isEnough) {
                List<Integer> more = new ArrayList<>(places);
                more.add(place);
                if (left > 1) {
                    extend(more, all, left - 1, wanted);
                } else {
                    found.add(more);
                    // There may be no length that is just enough: then the next one is.
                    isEnough = length >= enough;
                    enough = Math.min(enough, length + slack);
                }
            }
        }
    }

    /** Those sets that no other one replaces: with pieces no longer and no more seams within segments. */
    private List<MakeUp> useful(Within within) {
        List<MakeUp> useful = new ArrayList<>();
        List<List<Integer>> kept = new ArrayList<>();
        found.sort(Comparator.comparing(
                set -> set.stream().mapToInt(Integer::intValue).sum()));
        for (List<Integer> set : found) {
            int least = Integer.MAX_VALUE;
            for (int other = 0; other < kept.size(); other++) {
                least = isShorter(kept.get(other), set)
                        ? Math.min(least, useful.get(other).within())
                        : least;
            }
            List<Integer> pieces = set.stream().map(ascending::get).toList();
            OptionalInt seams = least == 0
                    ? OptionalInt.empty()
                    : within.of(pieces.stream().map(lengths::get).toList());
            if (seams.isPresent() && seams.getAsInt() < least) {
                kept.add(set);
                useful.add(new MakeUp(pieces, seams.getAsInt()));
            }
        }
        return useful;
    }

    private static boolean isShorter(List<Integer> set, List<Integer> other) {
        return IntStream.range(0, set.size()).allMatch(i -> set.get(i) <= other.get(i));
    }
}
