package org.orbwright.solid;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.orbwright.source.Kind.CONTRACT;

import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.orbwright.source.Source;

@Source(CONTRACT)
class LazyTest {
    private static final int THREADS = 8;

    private final AtomicInteger computed = new AtomicInteger();
    private final Lazy<Integer> lazy = new Lazy<>(computed::incrementAndGet);

    @Test
    void nothingIsComputedBeforeItIsAskedFor() {
        assertEquals(0, computed.get());
        assertEquals(1, lazy.get());
    }

    /** The computation waits until all threads have asked. */
    @Test
    void threadsThatAskAtOnceGetOneResult() throws InterruptedException {
        CountDownLatch asking = new CountDownLatch(THREADS);
        Lazy<Object> slow = new Lazy<>(() -> {
            computed.incrementAndGet();
            awaitAll(asking);
            return new Object();
        });
        Object[] seen = new Object[THREADS];
        List<Thread> threads = Stream.iterate(0, i -> i < THREADS, i -> i + 1)
                .map(i -> new Thread(() -> {
                    asking.countDown();
                    seen[i] = slow.get();
                }))
                .toList();
        threads.forEach(Thread::start);
        for (Thread thread : threads) {
            thread.join();
        }
        assertEquals(1, computed.get());
        for (Object result : seen) {
            assertSame(slow.get(), result);
        }
    }

    private static void awaitAll(CountDownLatch asking) {
        try {
            asking.await();
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }
}
