package org.orbwright.api.guard;

import io.micrometer.core.instrument.MeterRegistry;
import io.quarkus.runtime.Startup;
import jakarta.inject.Singleton;
import org.orbwright.api.wire.Limits;

/**
 * The permits for long work, the same for all addresses, and those for answers of many lines. The latter may wait for
 * their callers most of the time, so they have permits of their own, and more of them.
 */
@Singleton
@Startup
public class WorkPermits {
    private static final int FEWEST = 4;
    private static final int STREAMS_PER_PERMIT = 4;
    /** How many callers it takes to hold all places for answers of many lines. */
    private static final int SHARES = 4;

    private final Permits work;
    private final Permits streams;

    WorkPermits(Limits limits, MeterRegistry meters) {
        int processors = Runtime.getRuntime().availableProcessors();
        int most = limits.heavy() > 0 ? limits.heavy() : Math.max(FEWEST, 2 * processors);
        work = new Permits("long work", most, Integer.MAX_VALUE);
        int lines = most * STREAMS_PER_PERMIT;
        int share = limits.share() > 0 ? limits.share() : lines / SHARES;
        streams = new Permits("answers of many lines", lines, share);
        meters.gauge("orbwright.heavy.places.free", work, Permits::free);
        meters.gauge("orbwright.stream.places.free", streams, Permits::free);
    }

    /** Permits for one long piece of work each. */
    Permits work() {
        return work;
    }

    /** Permits for an answer of many lines each. */
    Permits streams() {
        return streams;
    }
}
