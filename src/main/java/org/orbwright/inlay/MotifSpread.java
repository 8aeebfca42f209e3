package org.orbwright.inlay;

import java.util.Random;

/**
 * Shares motifs out over panels so that equal ones lie as far apart as can be found: no two side by side if that is
 * possible, and the nearest ones counting most. Starts from several orders and exchanges pairs of panels as long as
 * that helps; the same panels and motifs always give the same answer.
 */
final class MotifSpread {
    private static final long SEED = 20260101;
    /** Orders to start from; fewer where there are many panels, whose exchanges take long and gain little. */
    private static final int STARTS = 60;

    private static final int STARTS_OF_MANY = 3;
    private static final int MANY = 40;
    /** What two equal motifs side by side weigh against the crowding of those that are apart. */
    private static final double SIDE_BY_SIDE = 1000;
    /** A gain that is more than rounding. */
    private static final double GAIN = 1e-9;

    private final double[][] crowding;
    private final int motifs;

    /**
     * @param angles angles between the panels, in radians
     * @param neighbours whether two panels share an edge
     * @param motifs number of motifs, at most that of the panels
     */
    MotifSpread(double[][] angles, boolean[][] neighbours, int motifs) {
        int count = angles.length;
        this.motifs = motifs;
        this.crowding = new double[count][count];
        for (int a = 0; a < count; a++) {
            for (int b = 0; b < count; b++) {
                if (a != b) {
                    double square = angles[a][b] * angles[a][b];
                    crowding[a][b] = 1 / (square * square) + (neighbours[a][b] ? SIDE_BY_SIDE : 0);
                }
            }
        }
    }

    /** The motif of every panel, each as often as the others to within one. */
    int[] share() {
        int count = crowding.length;
        Random random = new Random(SEED);
        int[] best = null;
        double least = Double.POSITIVE_INFINITY;
        for (int start = 0; start < (count > MANY ? STARTS_OF_MANY : STARTS); start++) {
            int[] shared = new int[count];
            for (int i = 0; i < count; i++) {
                shared[i] = i % motifs;
            }
            if (start > 0) {
                shuffle(shared, random);
            }
            exchange(shared);
            double total = total(shared);
            if (total < least - GAIN) {
                least = total;
                best = shared;
            }
        }
        return best;
    }

    private static void shuffle(int[] shared, Random random) {
        for (int i = shared.length - 1; i > 0; i--) {
            int other = random.nextInt(i + 1);
            int motif = shared[i];
            shared[i] = shared[other];
            shared[other] = motif;
        }
    }

    private void exchange(int[] shared) {
        boolean better = true;
        while (better) {
            better = false;
            for (int a = 0; a < shared.length; a++) {
                for (int b = a + 1; b < shared.length; b++) {
                    if (shared[a] != shared[b] && gain(shared, a, b) > GAIN) {
                        int motif = shared[a];
                        shared[a] = shared[b];
                        shared[b] = motif;
                        better = true;
                    }
                }
            }
        }
    }

    private double gain(int[] shared, int a, int b) {
        double gain = 0;
        for (int other = 0; other < shared.length; other++) {
            if (other != a && other != b) {
                double difference = crowding[a][other] - crowding[b][other];
                if (shared[other] == shared[a]) {
                    gain += difference;
                } else if (shared[other] == shared[b]) {
                    gain -= difference;
                }
            }
        }
        return gain;
    }

    private double total(int[] shared) {
        double total = 0;
        for (int a = 0; a < shared.length; a++) {
            for (int b = 0; b < a; b++) {
                total += shared[a] == shared[b] ? crowding[a][b] : 0;
            }
        }
        return total;
    }
}
