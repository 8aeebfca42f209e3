package org.orbwright.stock;

import java.util.List;

/**
 * The most that fits into a length, any number of each thing, on a grid of parts of the length: with sizes rounded down
 * to the grid as an upper bound, with sizes rounded up as a choice that fits.
 */
final class Knapsack {
    /** Parts that a length is divided into, if time allows; the more, the closer bound and choice come. */
    static final int FINE = 2048;

    private Knapsack() {}

    /**
     * What no choice of things in a length is worth more than.
     *
     * @param parts parts that the length is divided into
     * @param room the length, kerfs included
     * @param sizes size of each kind of thing, its kerf included
     * @param worth worth of one of each kind, 0 or more
     */
    static double bound(int parts, double room, List<Double> sizes, List<Double> worth) {
        double[] most = new double[parts + 1];
        for (int kind = 0; room > 0 && kind < sizes.size(); kind++) {
            if (worth.get(kind) > 0 && sizes.get(kind) <= room + Ripping.EXACT_FIT) {
                fill(most, null, kind, (int) Math.floor(sizes.get(kind) / room * parts), worth.get(kind));
            }
        }
        return most[parts];
    }

    /** How many of each kind of thing to put into a length; as good as the grid can tell. */
    static int[] choice(double room, List<Double> sizes, List<Double> worth) {
        double[] most = new double[FINE + 1];
        int[] last = new int[FINE + 1];
        int[] parts = new int[sizes.size()];
        for (int kind = 0; room > 0 && kind < parts.length; kind++) {
            parts[kind] = (int) Math.max(1, Math.ceil((sizes.get(kind) - Ripping.EXACT_FIT) / room * FINE));
            if (worth.get(kind) > 0) {
                fill(most, last, kind, parts[kind], worth.get(kind));
            }
        }
        int[] counts = new int[parts.length];
        for (int end = FINE; end > 0; ) {
            int kind = last[end] - 1;
            counts[Math.max(0, kind)] += kind < 0 ? 0 : 1;
            end -= kind < 0 ? 1 : parts[kind];
        }
        return counts;
    }

    /** Adds a kind of thing; {@code last} notes from 1 which kind ends at each part, 0 for none. */
    private static void fill(double[] most, int[] last, int kind, int size, double worth) {
        int parts = Math.max(1, size);
        for (int end = 1; end < most.length; end++) {
            if (most[end - 1] > most[end]) {
                most[end] = most[end - 1];
                note(last, end, 0);
            }
            if (end >= parts && most[end - parts] + worth > most[end]) {
                most[end] = most[end - parts] + worth;
                note(last, end, kind + 1);
            }
        }
    }

    private static void note(int[] last, int end, int kind) {
        if (last != null) {
            last[end] = kind;
        }
    }
}
