package org.orbwright.api.guard;

import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.CancellationException;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import org.orbwright.api.wire.RequestException;

/**
 * So many permits for one sort of work, and a short queue for them. Callers are told of places. No caller may hold more
 * than a share of them, so that one alone cannot shut out the others.
 */
final class Permits {
    private static final int WAITING_PER_PERMIT = 4;
    private static final int WAIT_SECONDS = 5;
    /** How much the last work counts in the mean of how long work takes. */
    private static final double WEIGHT = 0.2;

    private static final double NANOS_PER_SECOND = 1e9;

    private final String work;
    private final int most;
    private final int share;
    private final Semaphore free;
    private final Semaphore queue;
    private final Map<String, Integer> byCaller = new HashMap<>();
    /** When each of the permits that are held was taken. */
    private final Set<Long> since = new TreeSet<>();

    private double meanNanos;

    /**
     * Permits that are all free.
     *
     * @param work what they are for, in words
     * @param most how many there are
     * @param share how many of them one caller may hold or wait for
     */
    Permits(String work, int most, int share) {
        this.work = work;
        this.most = most;
        this.share = share;
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
     * @param caller who asks
     * @throws RequestException if none becomes free, or the caller holds his share
     * @throws CancellationException if the thread is interrupted, since nobody waits for the work any more
     */
    Permit take(String caller) {
        if (!count(caller)) {
            String detail = "You hold " + share + " of the " + most + " places for " + work
                    + ", which is your share. End one of them first.";
            throw RequestException.busy(detail, secondsToWait());
        }
        boolean taken = false;
        try {
            taken = queueUp();
        } finally {
            if (!taken) {
                discount(caller);
            }
        }
        if (!taken) {
            int seconds = secondsToWait();
            String detail = "All " + most + " places for " + work + " are taken. Ask again in " + seconds + " s.";
            throw RequestException.busy(detail, seconds);
        }
        return held(caller);
    }

    private boolean queueUp() {
        if (!queue.tryAcquire()) {
            return false;
        }
        try {
            return free.tryAcquire(WAIT_SECONDS, TimeUnit.SECONDS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new CancellationException("the wait for a place was interrupted");
        } finally {
            queue.release();
        }
    }

    private Permit held(String caller) {
        long began = begin();
        AtomicBoolean taken = new AtomicBoolean(true);
        return () -> {
            if (taken.getAndSet(false)) {
                end(began);
                discount(caller);
                free.release();
            }
        };
    }

    private synchronized boolean count(String caller) {
        int holds = byCaller.getOrDefault(caller, 0);
        if (holds < share) {
            byCaller.put(caller, holds + 1);
        }
        return holds < share;
    }

    private synchronized void discount(String caller) {
        byCaller.computeIfPresent(caller, (name, holds) -> holds > 1 ? holds - 1 : null);
    }

    /** A time of its own for each permit. */
    private synchronized long begin() {
        long now = System.nanoTime();
        while (!since.add(now)) {
            now++;
        }
        return now;
    }

    private synchronized void end(long began) {
        since.remove(began);
        double took = System.nanoTime() - began;
        meanNanos = meanNanos == 0 ? took : meanNanos + WEIGHT * (took - meanNanos);
    }

    /**
     * When a place should be free, in whole seconds and at least one: each takes as long as those before, or as long as
     * those under way have taken on the mean already, and whoever waits has his turn first.
     */
    synchronized int secondsToWait() {
        long now = System.nanoTime();
        double age = since.stream().mapToDouble(began -> now - began).average().orElse(0);
        double nanos = Math.max(meanNanos, age) * (1 + free.getQueueLength()) / most;
        return (int) Math.max(1, Math.ceil(nanos / NANOS_PER_SECOND));
    }
}
