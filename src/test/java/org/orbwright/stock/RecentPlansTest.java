package org.orbwright.stock;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.Test;
import org.orbwright.design.DesignRequest;
import org.orbwright.fixture.Designs;

class RecentPlansTest {
    private static final int MOST = 32;
    private static final DesignRequest DESIGN = Designs.of("cube").request();

    private final RecentPlans recent = new RecentPlans();
    private int searches;

    private static StockRequest question(double work) {
        return new StockRequest(
                List.of(), List.of(), null, null, StockAim.COST, new StockRequest.SearchRequest(work, 20.0));
    }

    private static StockPlan newPlan() {
        return new StockPlan(
                true, null, List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), List.of(),
                List.of(), 0, 0);
    }

    private StockPlan ask(double work, DesignRequest design) {
        return recent.get(question(work), design, () -> {
            searches++;
            return newPlan();
        });
    }

    private StockPlan ask(double work) {
        return ask(work, DESIGN);
    }

    @Test
    void theSameQuestionHasTheSamePlan() {
        assertSame(ask(1), ask(1));
        assertEquals(1, searches);
    }

    @Test
    void anotherQuestionHasAnotherPlan() {
        assertNotSame(ask(1), ask(2));
        assertEquals(2, searches);
    }

    @Test
    void anotherDesignHasAnotherPlan() {
        assertNotSame(ask(1), ask(1, Designs.of("cube").copies(2).request()));
    }

    @Test
    void aDesignThatIsWrittenAlikeIsTheSame() {
        assertSame(ask(1), ask(1, Designs.of("cube").request()));
    }

    @Test
    void asManyPlansAsThereIsRoomForAreKept() {
        StockPlan first = ask(0);
        for (int other = 1; other < MOST; other++) {
            ask(other);
        }
        assertSame(first, ask(0));
    }

    @Test
    void thePlanThatWasAskedForLongestAgoIsGivenUp() {
        StockPlan first = ask(0);
        StockPlan second = ask(1);
        for (int other = 2; other < MOST; other++) {
            ask(other);
        }
        assertSame(first, ask(0));
        ask(MOST);
        assertSame(first, ask(0));
        assertNotSame(second, ask(1));
    }

    @Test
    void ofTwoCallsAtOnceBothHaveThePlanOfTheFaster() throws InterruptedException, ExecutionException {
        CountDownLatch searching = new CountDownLatch(1);
        CountDownLatch done = new CountDownLatch(1);
        ExecutorService thread = Executors.newSingleThreadExecutor();
        try {
            Future<StockPlan> slower = thread.submit(() -> recent.get(question(1), DESIGN, () -> {
                searching.countDown();
                await(done);
                return newPlan();
            }));
            searching.await();
            StockPlan faster = ask(1);
            done.countDown();
            assertSame(faster, slower.get());
        } finally {
            thread.shutdownNow();
        }
    }

    private static void await(CountDownLatch latch) {
        try {
            latch.await();
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }

    @Test
    void aSearchThatIsStoppedLeavesNoPlan() {
        assertThrows(
                CancellationException.class,
                () -> recent.get(question(1), DESIGN, () -> {
                    throw new CancellationException();
                }));
        ask(1);
        assertEquals(1, searches);
    }
}
