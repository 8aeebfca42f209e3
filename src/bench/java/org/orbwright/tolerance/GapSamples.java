package org.orbwright.tolerance;

import java.util.List;
import java.util.Locale;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ForkJoinPool;
import org.orbwright.bench.BenchmarkDesigns;
import org.orbwright.design.Design;
import org.orbwright.tolerance.ToleranceRequest.AngleErrorRequest;
import org.orbwright.tolerance.ToleranceRequest.ErrorsRequest;

/**
 * How many solids are simulated in a second, on one and on two processors: a dodecahedron, and the largest solid with
 * its 62 faces and 180 edges. Run with {@code -Dbench.main=org.orbwright.tolerance.GapSamples}.
 */
public final class GapSamples {
    private static final int SAMPLES = 1_000_000;
    private static final int ROUNDS = 3;

    private GapSamples() {}

    /**
     * Prints a line for each run.
     *
     * @param arguments none
     * @throws ExecutionException never
     * @throws InterruptedException if it is interrupted
     */
    public static void main(String[] arguments) throws ExecutionException, InterruptedException {
        for (String name : List.of("icosahedron-mixed", "truncated-icosidodecahedron")) {
            for (int processors = 1; processors <= 2; processors++) {
                run(name, processors);
            }
        }
    }

    private static void run(String name, int processors) throws ExecutionException, InterruptedException {
        AngleErrorRequest angle = new AngleErrorRequest(0.01, 0.01);
        ErrorsRequest errors = new ErrorsRequest(angle, angle, null, null, null, null, null, null);
        ToleranceRequest request = new ToleranceRequest(errors, null, SAMPLES, 1);
        Design design = Design.of(BenchmarkDesigns.read(name).design());
        ForkJoinPool pool = new ForkJoinPool(processors);
        double best = Double.POSITIVE_INFINITY;
        for (int round = 0; round < ROUNDS; round++) {
            long start = System.nanoTime();
            pool.submit(() -> ToleranceCalculator.calculate(request, design)).get();
            best = Math.min(best, (System.nanoTime() - start) * 1e-9);
        }
        pool.shutdown();
        System.out.printf(
                Locale.ROOT, "%s, %d processors: %.2f s, %.0f samples/s%n", name, processors, best, SAMPLES / best);
    }
}
