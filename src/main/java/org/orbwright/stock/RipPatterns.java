package org.orbwright.stock;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;

/**
 * All ways to rip a cross-section of board that are worth while: the board's width is ripped into lanes from edge to
 * edge, and a lane is sliced or resawn once more (two stages of guillotine cuts). A way is worth while if no other one
 * gives at least as many strips of every width.
 */
final class RipPatterns {
    /** Sets of strips that are looked at; beyond that the list of patterns is not complete. */
    private static final int MOST_SETS = 20_000;
    /** Ways to slice one stick that are looked at. */
    private static final int MOST_LANES = 200;
    /** Patterns that are kept. */
    private static final int MOST_PATTERNS = 150;

    private final Ripping ripping;
    private final double width;
    private final double thickness;
    private boolean complete = true;

    private RipPatterns(Ripping ripping, double width, double thickness) {
        this.ripping = ripping;
        this.width = width;
        this.thickness = thickness;
    }

    /**
     * The patterns of one cross-section.
     *
     * @param patterns the patterns
     * @param complete whether they are all that are worth while
     */
    record Found(List<RipPattern> patterns, boolean complete) {
        Found {
            patterns = List.copyOf(patterns);
        }
    }

    /** Finds the patterns of a cross-section, surfaced and clear, in millimetres. */
    static Found of(Ripping ripping, double width, double thickness) {
        return new RipPatterns(ripping, width, thickness).find();
    }

    private Found find() {
        List<Lane> lanes = worthWhile(lanes());
        List<RipPattern> maximal = new ArrayList<>();
        Map<List<Integer>, Rip> cheapest = new HashMap<>();
        NavigableMap<Integer, ArrayDeque<List<Integer>>> bySize = new TreeMap<>();
        List<Integer> none = ripping.widths().stream().map(item -> 0).toList();
        cheapest.put(none, new Rip(null, null, 0));
        bySize.computeIfAbsent(0, size -> new ArrayDeque<>()).add(none);
        while (!bySize.isEmpty()) {
            for (List<Integer> counts : bySize.pollFirstEntry().getValue()) {
                if (!extend(counts, lanes, cheapest, bySize)) {
                    maximal.add(pattern(counts, cheapest));
                }
            }
        }
        return new Found(few(maximal), complete);
    }

    /**
     * The last rip of the way to a set of strips that takes least of the width.
     *
     * @param before the set without it; null for none
     * @param lane the lane that it adds
     * @param used width used, with a kerf for each lane
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
            List<Integer> next = with(counts, lane);
            if (more <= width + ripping.kerf() + Ripping.EXACT_FIT && !next.equals(counts)) {
                Rip known = cheapest.get(next);
                if (known == null && cheapest.size() >= MOST_SETS) {
                    complete = false;
                    continue;
                }
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

    /** A set of strips with those of a lane, none counted that nobody needs. */
    private List<Integer> with(List<Integer> counts, Lane lane) {
        List<Integer> next = new ArrayList<>(counts.size());
        for (int item = 0; item < counts.size(); item++) {
            next.add(Math.min(ripping.needed().get(item), counts.get(item) + lane.count(item)));
        }
        return next;
    }

    private static RipPattern pattern(List<Integer> counts, Map<List<Integer>, Rip> cheapest) {
        List<Lane> lanes = new ArrayList<>();
        Rip rip = cheapest.get(counts);
        while (rip.before() != null) {
            lanes.add(rip.lane());
            rip = cheapest.get(rip.before());
        }
        // Wide lanes first, and equal ones side by side, so that the fence moves seldom.
        lanes.sort(Comparator.comparingDouble(Lane::width)
                .reversed()
                .thenComparing(Lane::rotated)
                .thenComparing(lane -> lane.items().toString()));
        return new RipPattern(lanes, counts);
    }

    /** The patterns that no other one replaces, the ones with most wood in them first. */
    private List<RipPattern> few(List<RipPattern> patterns) {
        List<RipPattern> sorted = new ArrayList<>(patterns);
        sorted.sort(Comparator.comparingDouble(this::wood)
                .reversed()
                .thenComparing(pattern -> pattern.counts().toString()));
        List<RipPattern> kept = new ArrayList<>();
        for (RipPattern pattern : sorted) {
            if (kept.stream().noneMatch(other -> other.replaces(pattern))) {
                kept.add(pattern);
            }
        }
        if (kept.size() > MOST_PATTERNS) {
            complete = false;
            return kept.subList(0, MOST_PATTERNS);
        }
        return kept;
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
        int layers = (int) Math.floor((thickness + ripping.kerf() + Ripping.EXACT_FIT) / (stick + ripping.kerf()));
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
                if (lanes.size() >= MOST_LANES) {
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
        int widths = ripping.widths().size();
        List<Lane> kept = new ArrayList<>();
        for (Lane lane : lanes) {
            if (lane.width() <= width + Ripping.EXACT_FIT && kept.stream().noneMatch(k -> k.replaces(lane, widths))) {
                kept.removeIf(other -> lane.replaces(other, widths));
                kept.add(lane);
            }
        }
        return kept;
    }
}
