package org.orbwright.api.guard;

import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import org.orbwright.api.wire.ProblemKind;
import org.orbwright.api.wire.RequestException;

/** So many permits for one sort of work, and a short queue for them. Callers are told of places. */
final class Permits {
    private static final int WAITING_PER_PERMIT = 4;
    private static final int WAIT_SECONDS = 5;

    private final String work;
    private final int most;
    private final Semaphore free;
    private final Semaphore queue;

    /**
     * Permits that are all free.
     *
     * @param work what they are for, in words
     * @param most how many there are
     */
    Permits(String work, int most) {
        this.work = work;
        this.most = most;
        free = new Semaphore(most, true);
        queue = new Semaphore(most * WAITING_PER_PERMIT);
    }

    /** A permit that is held until it is closed, once or more often. */
    interface Permit extends AutoCloseable {
        @Override
        void close();
    }

    /** How many are free. */
    int free() {
        return free.availablePermits();
    }

    /**
     * Waits a little, as one of a few: the many that would wait behind them are better sent away at once.
     *
     * @throws RequestException if none becomes free
     * @throws CancellationException if the thread is interrupted, since nobody waits for the work any more
     */
    Permit take() {
        if (!queue.tryAcquire()) {
            throw busy();
        }
        try {
            if (!free.tryAcquire(WAIT_SECONDS, TimeUnit.SECONDS)) {
                throw busy();
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new CancellationException("the wait for a place was interrupted");
        } finally {
            queue.release();
        }
        AtomicBoolean taken = new AtomicBoolean(true);
        return () -> {
            if (taken.getAndSet(false)) {
                free.release();
            }
        };
    }

    private RequestException busy() {
        String detail = "All " + most + " places for " + work + " are taken; ask again in a second.";
        return new RequestException(ProblemKind.BUSY, detail, List.of());
    }
}
