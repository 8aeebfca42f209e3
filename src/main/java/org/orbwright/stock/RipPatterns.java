package org.orbwright.stock;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Set;
import java.util.TreeMap;

/**
 * All ways to rip a cross-section of board that are worth while: the board's width is ripped into lanes from edge to
 * edge, and a lane is sliced or resawn once more (two stages of guillotine cuts). A way is worth while if no other one
 * gives at least as many strips of every width.
 */
final class RipPatterns {
    /** Ways to slice one stick that are looked at. */
    private static final int MOST_LANES = 200;
    /** The same where there are no steps at all. */
    private static final int FEWEST_STICKS = 5;
    /** Patterns that are compared with each other, if there are many steps and if there are few. */
    private static final int MOST_COMPARED = 2000;

    private static final int FEWEST_COMPARED = 40;
    /** Steps for each pattern that is compared. */
    private static final int STEPS_TO_COMPARE = 25;
    /** Patterns that give most of one width and are kept in any case. */
    private static final int OF_EACH_WIDTH = 2;

    private final Ripping ripping;
    private final double width;
    private final double thickness;
    private final int compared;
    private final int mostLanes;
    private final int mostPatterns;
    private int steps;
    private boolean complete = true;

    private RipPatterns(Ripping ripping, double width, double thickness, int steps, int most) {
        this.ripping = ripping;
        this.width = width;
        this.thickness = thickness;
        this.steps = steps;
        this.mostPatterns = most;
        this.compared = Math.min(MOST_COMPARED, Math.max(FEWEST_COMPARED, steps / STEPS_TO_COMPARE));
        this.mostLanes = steps > 0 ? MOST_LANES : ripping.widths().size() + FEWEST_STICKS;
    }

    /** The patterns of one cross-section and their lanes, and whether each list has all that are worth while. */
    record Found(List<RipPattern> patterns, boolean complete, List<Lane> lanes, boolean allLanes) {
        Found {
            patterns = List.copyOf(patterns);
            lanes = List.copyOf(lanes);
        }
    }

    /**
     * Finds the patterns of a cross-section that can be ripped to this width and is so thick once surfaced, in
     * millimetres. The list is not complete where it takes more steps, each a lane added to a set of strips, or has
     * more than the most patterns. With 0 steps it has a few patterns that are quickly found.
     */
    static Found of(Ripping ripping, double width, double thickness, int steps, int most) {
        return new RipPatterns(ripping, width, thickness, steps, most).find();
    }

    private Found find() {
        List<Lane> lanes = worthWhile(lanes());
        boolean allLanes = complete;
        List<RipPattern> patterns = maximal(lanes);
        if (steps <= 0) {
            complete = false;
            patterns.addAll(filled(lanes));
        }
        List<RipPattern> few = few(patterns);
        return new Found(few, complete, lanes, allLanes);
    }

    /** The patterns to which nothing can be added, as far as the steps go. */
    private List<RipPattern> maximal(List<Lane> lanes) {
        List<RipPattern> maximal = new ArrayList<>();
        Map<List<Integer>, Rip> cheapest = new HashMap<>();
        NavigableMap<Integer, ArrayDeque<List<Integer>>> bySize = new TreeMap<>();
        List<Integer> none = ripping.none();
        cheapest.put(none, new Rip(null, null, 0));
        bySize.computeIfAbsent(0, size -> new ArrayDeque<>()).add(none);
        while (!bySize.isEmpty() && steps > 0) {
            for (List<Integer> counts : bySize.pollFirstEntry().getValue()) {
                steps -= lanes.size();
                if (steps > 0 && !extend(counts, lanes, cheapest, bySize)) {
                    maximal.add(pattern(counts, cheapest));
                }
            }
        }
        return maximal;
    }

    /** Patterns that begin with as many of one lane as fit, or half as many and some of the next one. */
    private List<RipPattern> filled(List<Lane> lanes) {
        List<RipPattern> patterns = new ArrayList<>();
        List<Lane> byWidth = new ArrayList<>(lanes);
        byWidth.sort(Comparator.comparingDouble(Lane::width).reversed());
        for (int i = 0; i < lanes.size(); i++) {
            Lane lane = lanes.get(i);
            int most = (int) Math.floor((width + ripping.kerf() + Ripping.EXACT_FIT) / (lane.width() + ripping.kerf()));
            patterns.add(filled(List.of(lane), most, byWidth));
            patterns.add(filled(List.of(lane, lanes.get((i + 1) % lanes.size())), (most + 1) / 2, byWidth));
        }
        return patterns;
    }

    private RipPattern filled(List<Lane> first, int most, List<Lane> byWidth) {
        List<Lane> chosen = new ArrayList<>();
        List<Integer> counts = ripping.none();
        double used = 0;
        List<Lane> order = new ArrayList<>(Collections.nCopies(most, first.get(0)));
        order.addAll(first.subList(1, first.size()));
        order.addAll(byWidth);
        for (int i = 0; i < order.size(); ) {
            Lane lane = order.get(i);
            double more = used + lane.width() + ripping.kerf();
            List<Integer> next =
                    more <= width + ripping.kerf() + Ripping.EXACT_FIT ? ripping.with(counts, lane) : counts;
            if (!next.equals(counts)) {
                chosen.add(lane);
                counts = next;
                used = more;
                // The lanes to begin with are listed as often as they are wanted, the others are repeated while they
                // fit.
                i += i < most ? 1 : 0;
            } else {
                i++;
            }
        }
        return RipPattern.of(chosen, counts);
    }

    /**
     * The last rip of the way to a set of strips that takes least of the width: the set before it, or null, and the
     * lane that it adds. The width used has a kerf for each lane.
     */
    private record Rip(List<Integer> before, Lane lane, double used) {}

    /** Adds each lane that fits; says whether there was one that gives something more. */
    private boolean extend(
            List<Integer> counts,
            List<Lane> lanes,
            Map<List<Integer>, Rip> cheapest,
            NavigableMap<Integer, ArrayDeque<List<Integer>>> bySize) {
        double used = cheapest.get(counts).used();
        boolean extended = false;
        for (Lane lane : lanes) {
            double more = used + lane.width() + ripping.kerf();
            List<Integer> next = ripping.with(counts, lane);
            if (more <= width + ripping.kerf() + Ripping.EXACT_FIT && !next.equals(counts)) {
                Rip known = cheapest.get(next);
                extended = true;
                if (known == null || more < known.used()) {
                    cheapest.put(next, new Rip(counts, lane, more));
                }
                if (known == null) {
                    int size = next.stream().mapToInt(Integer::intValue).sum();
                    bySize.computeIfAbsent(size, s -> new ArrayDeque<>()).add(next);
                }
            }
        }
        return extended;
    }

    private static RipPattern pattern(List<Integer> counts, Map<List<Integer>, Rip> cheapest) {
        List<Lane> lanes = new ArrayList<>();
        Rip rip = cheapest.get(counts);
        while (rip.before() != null) {
            lanes.add(rip.lane());
            rip = cheapest.get(rip.before());
        }
        return RipPattern.of(lanes, counts);
    }

    /** The patterns that no other one replaces, the ones with most wood in them first. */
    private List<RipPattern> few(List<RipPattern> patterns) {
        List<RipPattern> sorted = new ArrayList<>(patterns);
        sorted.sort(Comparator.comparingDouble(this::wood)
                .reversed()
                .thenComparing(pattern -> pattern.counts().toString()));
        List<RipPattern> kept = new ArrayList<>();
        for (RipPattern pattern : most(compared, sorted)) {
            if (kept.stream().noneMatch(other -> other.replaces(pattern))) {
                kept.add(pattern);
            }
        }
        return most(mostPatterns, kept);
    }

    /** The first patterns of a list, and those that give most of each width, in their order. */
    private List<RipPattern> most(int number, List<RipPattern> patterns) {
        if (patterns.size() <= number) {
            return patterns;
        }
        complete = false;
        Set<RipPattern> chosen = new HashSet<>();
        for (int item = 0; item < ripping.widths().size(); item++) {
            int width = item;
            patterns.stream()
                    .sorted(Comparator.comparingInt(pattern -> -pattern.counts().get(width)))
                    .limit(OF_EACH_WIDTH)
                    .forEach(chosen::add);
        }
        for (int i = 0; chosen.size() < number; i++) {
            chosen.add(patterns.get(i));
        }
        return patterns.stream().filter(chosen::contains).toList();
    }

    private double wood(RipPattern pattern) {
        double wood = 0;
        for (int item = 0; item < pattern.counts().size(); item++) {
            wood += pattern.counts().get(item) * ripping.widths().get(item);
        }
        return wood;
    }

    private List<Lane> lanes() {
        List<Lane> lanes = new ArrayList<>();
        double stick = ripping.stick();
        int layers = ripping.layers(thickness);
        for (int item = 0; layers > 0 && item < ripping.widths().size(); item++) {
            List<Integer> items = new ArrayList<>();
            for (int layer = 0; layer < Math.min(layers, ripping.needed().get(item)); layer++) {
                items.add(item);
            }
            lanes.add(new Lane(false, ripping.widths().get(item), items));
        }
        if (stick <= width + Ripping.EXACT_FIT) {
            slice(0, thickness + ripping.kerf() + Ripping.EXACT_FIT, new ArrayList<>(), lanes);
        }
        return lanes;
    }

    /** Slices a stick in every way from which nothing more can be sliced. */
    private void slice(int first, double left, List<Integer> items, List<Lane> lanes) {
        boolean full = true;
        for (int item = 0; item < ripping.widths().size(); item++) {
            double rest = left - ripping.widths().get(item) - ripping.kerf();
            boolean fits = rest >= 0
                    && Collections.frequency(items, item) < ripping.needed().get(item);
            full = full && !fits;
            if (fits && item >= first) {
                if (lanes.size() >= mostLanes) {
                    complete = false;
                    return;
                }
                items.add(item);
                slice(item, rest, items, lanes);
                items.remove(items.size() - 1);
            }
        }
        if (full && !items.isEmpty()) {
            lanes.add(new Lane(true, ripping.stick(), items));
        }
    }

    /** The lanes that no other one replaces; of equal ones the first, which lies as it lay in the board. */
    private List<Lane> worthWhile(List<Lane> lanes) {
        List<Lane> kept = new ArrayList<>();
        for (Lane lane : lanes) {
            if (lane.width() <= width + Ripping.EXACT_FIT && kept.stream().noneMatch(k -> k.replaces(lane))) {
                kept.removeIf(other -> lane.replaces(other));
                kept.add(lane);
            }
        }
        return kept;
    }
}
