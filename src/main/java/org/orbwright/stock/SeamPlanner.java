package org.orbwright.stock;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;

/**
 * Chooses the places where strips of a blank may have seams. Every second strip has its seams at one set of places, the
 * strips between them at another; every place of one set keeps the clearance from every place of the other, so any ways
 * to make up two neighbours go together. The middle of a place is on a cut between segments, where the saw takes most
 * of the seam out of the way, unless no cut will do.
 */
final class SeamPlanner {
    private final BlankKind blank;
    private final SeamRules rules;
    private final int most;
    /** The places of the odd strips (the first, the third and so on), and of the even ones. */
    private final List<List<SeamPlace>> chosen = List.of(new ArrayList<>(), new ArrayList<>());

    private SeamPlanner(BlankKind blank, SeamRules rules, int most) {
        this.blank = blank;
        this.rules = rules;
        this.most = most;
    }

    /**
     * A place for seams in a blank.
     *
     * @param cut the cut that it lies on; null if it lies on none
     * @param at for each band, where the seam's middle lies, along the blank
     */
    record SeamPlace(Integer cut, List<Double> at) {
        SeamPlace {
            at = List.copyOf(at);
        }
    }

    /**
     * A way to make up a strip.
     *
     * @param seams its seams, along the blank
     * @param pieces the lengths that its pieces are crosscut to
     */
    record MadeUpStrip(List<SeamPlace> seams, List<Double> pieces) {
        MadeUpStrip {
            seams = List.copyOf(seams);
            pieces = List.copyOf(pieces);
        }
    }

    /** The ways to make up the odd strips of a blank, and the even ones. */
    record BlankSeams(List<MadeUpStrip> odd, List<MadeUpStrip> even) {
        BlankSeams {
            odd = List.copyOf(odd);
            even = List.copyOf(even);
        }

        /** The ways for a band, counted from 0. */
        List<MadeUpStrip> of(int band) {
            return band % 2 == 0 ? odd : even;
        }
    }

    /**
     * The ways to make up the strips of a blank, the one without a seam first.
     *
     * @param useful lengths that boards have to spare, those worth most first
     * @param most places for each of the two sets of strips
     */
    static BlankSeams plan(BlankKind blank, SeamRules rules, List<Double> useful, int most) {
        SeamPlanner planner = new SeamPlanner(blank, rules, most);
        if (rules.most() > 0) {
            planner.choose(useful);
        }
        return new BlankSeams(planner.madeUp(0), planner.madeUp(1));
    }

    private void choose(List<Double> useful) {
        for (double length : useful) {
            // Odd strips take such pieces at their left end, even ones at their right end.
            double end = rules.overlap() / 2;
            double start = blank.length() - end;
            for (int piece = 0; piece < rules.most(); piece++) {
                double farthest = end + length - rules.overlap();
                double nearest = start - length + rules.overlap();
                SeamPlace left = add(0, candidates(0, at -> farthest - at));
                SeamPlace right = add(1, candidates(1, at -> at - nearest));
                end = left == null ? farthest : of(0, left).min().orElse(farthest);
                start = right == null ? nearest : of(1, right).max().orElse(nearest);
            }
        }
        for (double share : new double[] {1 / 3.0, 2 / 3.0, 1 / 2.0}) {
            add(0, candidates(0, at -> -Math.abs(at - share * blank.length())));
            add(1, candidates(1, at -> -Math.abs(at - (1 - share) * blank.length())));
        }
        for (int set = 0; set < chosen.size(); set++) {
            for (double share = 0.5; share < 1 && chosen.get(set).isEmpty(); share += 1 / 16.0) {
                add(set, List.of(free(share), free(1 - share)));
            }
        }
    }

    private SeamPlace free(double share) {
        double at = share * blank.length();
        return new SeamPlace(null, blank.bands().stream().map(band -> at).toList());
    }

    /**
     * The cuts for a set of strips, nearest first.
     *
     * @param room how much shorter than the wanted end a piece ends that ends at a place; nearest is the smallest room
     *     that is not negative. If all rooms are negative, the one nearest to zero comes first.
     */
    private List<SeamPlace> candidates(int set, DoubleUnaryOperator room) {
        List<SeamPlace> places = new ArrayList<>();
        for (int cut = 0; cut < blank.cuts().size(); cut++) {
            int number = cut;
            places.add(new SeamPlace(
                    cut,
                    IntStream.range(0, blank.bands().size())
                            .mapToObj(band -> blank.crossing(number, band))
                            .toList()));
        }
        Comparator<SeamPlace> nearest = Comparator.comparingDouble(place -> {
            double least = of(set, place).map(room).min().orElse(0);
            return least >= -Ripping.EXACT_FIT ? least : blank.length() - least;
        });
        places.sort(nearest);
        return places;
    }

    /** Adds the first of these places that may be one, and answers it; null if there is none or there are enough. */
    private SeamPlace add(int set, List<SeamPlace> places) {
        SeamPlace first = chosen.get(set).size() < most
                ? places.stream().filter(place -> fits(set, place)).findFirst().orElse(null)
                : null;
        if (first != null) {
            chosen.get(set).add(first);
        }
        return first;
    }

    private boolean fits(int set, SeamPlace place) {
        return blank.bands().size() > set
                && chosen.get(set).stream().noneMatch(place::equals)
                && isPiece(set, null, place)
                && isPiece(set, place, null)
                && chosen.get(1 - set).stream().allMatch(other -> clear(set, place, other));
    }

    /** Whether seams at a place in the strips of a set keep the clearance from seams at another in their neighbours. */
    private boolean clear(int set, SeamPlace place, SeamPlace other) {
        double least = rules.clearance() + rules.overlap() - Ripping.EXACT_FIT;
        return bandsOf(set)
                .allMatch(band -> bandsOf(1 - set)
                        .filter(next -> Math.abs(next - band) == 1)
                        .allMatch(next ->
                                Math.abs(place.at().get(band) - other.at().get(next)) >= least));
    }

    /** Whether the piece between two places, or between a place and the end where one is null, is long enough. */
    private boolean isPiece(int set, SeamPlace from, SeamPlace to) {
        return lengths(set, from, to).min().orElse(0) >= rules.smallest() - Ripping.EXACT_FIT;
    }

    /** Lengths of a piece in each strip of a set, with half an overlap beyond each seam's middle. */
    private DoubleStream lengths(int set, SeamPlace from, SeamPlace to) {
        return bandsOf(set).mapToDouble(band -> {
            double start = from == null ? 0 : from.at().get(band) - rules.overlap() / 2;
            double end = to == null ? blank.length() : to.at().get(band) + rules.overlap() / 2;
            return end - start;
        });
    }

    private DoubleStream of(int set, SeamPlace place) {
        return bandsOf(set).mapToDouble(band -> place.at().get(band));
    }

    private IntStream bandsOf(int set) {
        return IntStream.range(0, blank.bands().size()).filter(band -> band % 2 == set);
    }

    private List<MadeUpStrip> madeUp(int set) {
        List<SeamPlace> places = new ArrayList<>(chosen.get(set));
        places.sort(Comparator.comparingDouble(place -> of(set, place).min().orElse(0)));
        List<MadeUpStrip> ways = new ArrayList<>();
        ways.add(new MadeUpStrip(List.of(), List.of(blank.length())));
        combine(set, places, 0, List.of(), ways);
        return ways;
    }

    private void combine(int set, List<SeamPlace> places, int first, List<SeamPlace> seams, List<MadeUpStrip> ways) {
        SeamPlace last = seams.isEmpty() ? null : seams.get(seams.size() - 1);
        for (int next = first; next < places.size() && seams.size() < rules.most(); next++) {
            if (isPiece(set, last, places.get(next))) {
                List<SeamPlace> more = new ArrayList<>(seams);
                more.add(places.get(next));
                ways.add(new MadeUpStrip(more, pieces(set, more)));
                combine(set, places, next + 1, more, ways);
            }
        }
    }

    /** Each piece is crosscut to the most that a strip of the set needs of it. */
    private List<Double> pieces(int set, List<SeamPlace> seams) {
        List<Double> pieces = new ArrayList<>();
        SeamPlace from = null;
        for (SeamPlace to : seams) {
            pieces.add(lengths(set, from, to).max().orElse(0));
            from = to;
        }
        pieces.add(lengths(set, from, null).max().orElse(0));
        return pieces;
    }
}
