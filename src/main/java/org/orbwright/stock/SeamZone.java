package org.orbwright.stock;

import java.util.ArrayList;
import java.util.List;

/**
 * Parts of a blank where the seams of a strip may lie, in millimetres along it. If every second strip keeps to one zone
 * and the strips between them to another, any of them may lie side by side.
 */
record SeamZone(List<Range> ranges) {
    /** The whole blank: then neighbours have to be chosen for each other. */
    static final SeamZone ANYWHERE =
            new SeamZone(List.of(new Range(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY)));

    SeamZone {
        ranges = List.copyOf(ranges);
    }

    /** From one point to another. */
    record Range(double from, double to) {
        boolean holds(double at) {
            return at >= from - Ripping.EXACT_FIT && at <= to + Ripping.EXACT_FIT;
        }
    }

    /** A zone for the odd strips and one for the even ones. */
    record Pair(SeamZone odd, SeamZone even) {
        static final Pair ANYWHERE = new Pair(SeamZone.ANYWHERE, SeamZone.ANYWHERE);

        /** That of a band, counted from 0. */
        SeamZone of(int band) {
            return band % 2 == 0 ? odd : even;
        }
    }

    /**
     * Pairs of zones on a blank of a length that are as far apart as the middles of neighbouring seams have to be: the
     * halves of the blank, and its middle against its ends, either way round.
     */
    static List<Pair> pairs(double length, double apart) {
        List<Pair> pairs = new ArrayList<>();
        pairs.add(new Pair(
                new SeamZone(List.of(new Range(0, (length - apart) / 2))),
                new SeamZone(List.of(new Range((length + apart) / 2, length)))));
        // The middle is as wide as to have as much of the blank as both ends together, but never narrower than a point.
        double half = Math.max(0, length / 4 - apart / 2);
        SeamZone middle = new SeamZone(List.of(new Range(length / 2 - half, length / 2 + half)));
        SeamZone ends = new SeamZone(
                List.of(new Range(0, length / 2 - half - apart), new Range(length / 2 + half + apart, length)));
        pairs.add(new Pair(middle, ends));
        pairs.add(new Pair(ends, middle));
        return pairs;
    }

    /** The parts of a range that lie in the zone. */
    List<Range> within(double from, double to) {
        List<Range> parts = new ArrayList<>();
        for (Range range : ranges) {
            double first = Math.max(from, range.from);
            double last = Math.min(to, range.to);
            if (first <= last + Ripping.EXACT_FIT) {
                parts.add(new Range(Math.min(first, last), last));
            }
        }
        return parts;
    }
}
