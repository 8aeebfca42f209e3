package org.orbwright.api;

import io.micrometer.core.instrument.MeterRegistry;
import io.quarkus.runtime.Startup;
import jakarta.inject.Singleton;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;

/** The places for long work, the same for all addresses, and a short queue before them. */
@Singleton
@Startup
public class HeavyPlaces {
    private static final int FEWEST = 4;
    private static final int WAITING_PER_PLACE = 4;
    private static final int WAIT_SECONDS = 5;

    private final Semaphore places;
    private final Semaphore queue;
    private final int most;

    HeavyPlaces(Limits limits, MeterRegistry meters) {
        int processors = Runtime.getRuntime().availableProcessors();
        most = limits.heavy() > 0 ? limits.heavy() : Math.max(FEWEST, 2 * processors);
        places = new Semaphore(most, true);
        queue = new Semaphore(most * WAITING_PER_PLACE);
        meters.gauge("orbwright.heavy.places.free", places, Semaphore::availablePermits);
    }

    /** How many places there are. */
    int most() {
        return most;
    }

    /** Waits a little, as one of a few: the many that would wait behind them are better sent away at once. */
    boolean take() throws InterruptedException {
        if (!queue.tryAcquire()) {
            return false;
        }
        try {
            return places.tryAcquire(WAIT_SECONDS, TimeUnit.SECONDS);
        } finally {
            queue.release();
        }
    }

    /** Gives a place back. */
    void release() {
        places.release();
    }
}
