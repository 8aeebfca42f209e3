package org.orbwright.band;

/**
 * How bands share what the others leave. A lamination always has some that do: where every band has a wish of its own,
 * the last one.
 */
final class Rests {
    /** The part of the rest before each cut, 0 to 1. */
    private final double[] before;

    private final double least;

    /**
     * Shares out the rest.
     *
     * @param proportions how much of the rest each band takes against the others, 0 for a band that takes none
     */
    Rests(double[] proportions) {
        int bands = proportions.length;
        double sum = 0;
        int last = bands - 1;
        for (int i = 0; i < bands; i++) {
            sum += proportions[i];
            last = proportions[i] > 0 ? i : last;
        }
        before = new double[bands + 1];
        double smallest = 1;
        for (int i = 0; i < bands; i++) {
            before[i + 1] = i >= last ? 1 : before[i] + proportions[i] / sum;
            smallest = takes(i) ? Math.min(smallest, part(i)) : smallest;
        }
        least = smallest;
    }

    int bands() {
        return before.length - 1;
    }

    /** Whether a band takes of the rest. */
    boolean takes(int band) {
        return before[band + 1] > before[band];
    }

    /** The part of the rest that a band takes. */
    double part(int band) {
        return before[band + 1] - before[band];
    }

    /** The part of the rest that lies before a cut. */
    double before(int cut) {
        return before[cut];
    }

    /** The smallest part that any band takes. */
    double leastPart() {
        return least;
    }

    /** How many bands take of it. */
    int count() {
        int count = 0;
        for (int i = 0; i < bands(); i++) {
            count += takes(i) ? 1 : 0;
        }
        return count;
    }

    /** The last band that takes of it. */
    int last() {
        int band = bands() - 1;
        while (!takes(band)) {
            band--;
        }
        return band;
    }
}
