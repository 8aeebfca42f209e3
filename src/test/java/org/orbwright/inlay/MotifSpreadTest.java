package org.orbwright.inlay;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Motifs shared out over panels that lie anywhere, against all ways to share them out. */
class MotifSpreadTest {
    /** Panels are at least this far apart, and neighbours up to twice as far, in radians. */
    private static final double NEAREST = 0.55;

    private static List<Vector3D> panels(int count, Random random) {
        List<Vector3D> panels = new ArrayList<>();
        while (panels.size() < count) {
            Vector3D panel = Vector3D.of(random.nextGaussian(), random.nextGaussian(), random.nextGaussian());
            if (panels.stream().allMatch(other -> other.angle(panel) > NEAREST)) {
                panels.add(panel);
            }
        }
        return panels;
    }

    private static int sideBySide(int[] shared, boolean[][] neighbours) {
        int pairs = 0;
        for (int a = 0; a < shared.length; a++) {
            for (int b = 0; b < a; b++) {
                pairs += shared[a] == shared[b] && neighbours[a][b] ? 1 : 0;
            }
        }
        return pairs;
    }

    /** How often each motif is used. */
    private static int[] counts(int[] shared, int motifs) {
        int[] counts = new int[motifs];
        for (int motif : shared) {
            counts[motif]++;
        }
        return counts;
    }

    /** Tries every way to share the motifs out as often as these counts say. */
    private static int fewest(int[] left, int[] shared, int next, boolean[][] neighbours) {
        if (next == shared.length) {
            return sideBySide(shared, neighbours);
        }
        int fewest = Integer.MAX_VALUE;
        for (int motif = 0; motif < left.length; motif++) {
            if (left[motif] > 0) {
                left[motif]--;
                shared[next] = motif;
                fewest = Math.min(fewest, fewest(left, shared, next + 1, neighbours));
                left[motif]++;
            }
        }
        return fewest;
    }

    @ParameterizedTest(name = "{0} panels, {1} motifs")
    @CsvSource({"8, 2", "9, 2", "10, 2", "9, 3", "10, 3", "8, 4"})
    void noOtherWayHasFewerEqualMotifsSideBySide(int count, int motifs) {
        Random random = new Random(20_261_126L * count + motifs);
        for (int trial = 0; trial < 20; trial++) {
            List<Vector3D> panels = panels(count, random);
            double[][] angles = new double[count][count];
            boolean[][] neighbours = new boolean[count][count];
            for (int a = 0; a < count; a++) {
                for (int b = 0; b < count; b++) {
                    angles[a][b] = panels.get(a).angle(panels.get(b));
                    neighbours[a][b] = a != b && angles[a][b] < 2 * NEAREST;
                }
            }
            int[] shared = new MotifSpread(angles, neighbours, motifs).share();
            int[] counts = new int[motifs];
            for (int i = 0; i < count; i++) {
                counts[i % motifs]++;
            }
            assertArrayEquals(counts, counts(shared, motifs));
            assertEquals(fewest(counts, new int[count], 0, neighbours), sideBySide(shared, neighbours));
        }
    }
}
