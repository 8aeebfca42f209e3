package org.orbwright.stock;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.orbwright.fixture.Trials;
import org.orbwright.stock.CuttingModel.Effort;
import org.orbwright.stock.CuttingPlanner.Planned;

/** The same question has the same answer, as long as no clock ends a search. */
class RepeatedPlansTest {
    private static final int THREADS = 4;
    /** A large problem whose search does not come to its end in so many nodes. */
    private static final long LARGE = 12;

    private static final int NODES = 300;

    private static Planned small(long seed, StockAim aim) {
        return CuttingPlanner.plan(SmallProblem.random(seed).toProblem(), aim, new Effort(1_000_000, 600_000_000_000L));
    }

    private static Planned large() {
        return CuttingPlanner.plan(
                SmallProblem.large(LARGE).toProblem(), StockAim.COST, new Effort(NODES, 600_000_000_000L));
    }

    @ParameterizedTest
    @EnumSource
    void aSecondPlanIsTheSame(StockAim aim) {
        seeds().forEach(seed -> assertEquals(small(seed, aim), small(seed, aim)));
    }

    private static LongStream seeds() {
        return Trials.below(40).map(seed -> 4000 + seed);
    }

    @Test
    void plansFromManyThreadsAreTheSame() throws InterruptedException, ExecutionException {
        List<Planned> alone =
                seeds().mapToObj(seed -> small(seed, StockAim.COST)).toList();
        ExecutorService threads = Executors.newFixedThreadPool(THREADS);
        try {
            List<Future<List<Planned>>> all = new ArrayList<>();
            for (int thread = 0; thread < THREADS; thread++) {
                all.add(threads.submit(() ->
                        seeds().mapToObj(seed -> small(seed, StockAim.COST)).toList()));
            }
            for (Future<List<Planned>> plans : all) {
                assertEquals(alone, plans.get());
            }
        } finally {
            threads.shutdownNow();
        }
    }

    @Test
    void aSearchThatItsStepsEndComesToTheSamePlanAgain() throws InterruptedException, ExecutionException {
        Planned first = large();
        assertFalse(first.proved());
        assertEquals(first, large());
        ExecutorService threads = Executors.newFixedThreadPool(THREADS);
        try {
            List<Future<Planned>> all = new ArrayList<>();
            for (int thread = 0; thread < THREADS; thread++) {
                all.add(threads.submit(RepeatedPlansTest::large));
            }
            for (Future<Planned> plan : all) {
                assertEquals(first, plan.get());
            }
        } finally {
            threads.shutdownNow();
        }
    }
}
