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
import org.orbwright.fixture.Slow;
import org.orbwright.fixture.Trials;

/** The same question has the same answer, as long as no clock ends a search. */
@Slow
class RepeatedPlansTest {
    private static final int THREADS = 4;
    /** A large problem whose search does not come to its end with so little work. */
    private static final long LARGE = 12;

    private static final double LITTLE_WORK = 0.05;

    private static CuttingPlan small(long seed, StockAim aim) {
        return Solved.best(SmallProblem.random(seed).toProblem(), aim).plan();
    }

    private static Solved large() {
        return Solved.within(SmallProblem.large(LARGE).toProblem(), StockAim.COST, LITTLE_WORK);
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
        List<CuttingPlan> alone =
                seeds().mapToObj(seed -> small(seed, StockAim.COST)).toList();
        ExecutorService threads = Executors.newFixedThreadPool(THREADS);
        try {
            List<Future<List<CuttingPlan>>> all = new ArrayList<>();
            for (int thread = 0; thread < THREADS; thread++) {
                all.add(threads.submit(() ->
                        seeds().mapToObj(seed -> small(seed, StockAim.COST)).toList()));
            }
            for (Future<List<CuttingPlan>> plans : all) {
                assertEquals(alone, plans.get());
            }
        } finally {
            threads.shutdownNow();
        }
    }

    @Test
    void aSearchThatItsWorkEndsComesToTheSamePlanAgain() throws InterruptedException, ExecutionException {
        Solved first = large();
        assertFalse(first.proved());
        assertEquals(first, large());
        ExecutorService threads = Executors.newFixedThreadPool(THREADS);
        try {
            List<Future<Solved>> all = new ArrayList<>();
            for (int thread = 0; thread < THREADS; thread++) {
                all.add(threads.submit(RepeatedPlansTest::large));
            }
            for (Future<Solved> plan : all) {
                assertEquals(first, plan.get());
            }
        } finally {
            threads.shutdownNow();
        }
    }
}
