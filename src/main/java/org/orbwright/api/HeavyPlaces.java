package org.orbwright.api;

import io.micrometer.core.instrument.MeterRegistry;
import io.quarkus.runtime.Startup;
import jakarta.inject.Singleton;

/**
 * The places for long work, the same for all addresses, and those for answers of many lines. The latter may wait for
 * their callers most of the time, so that they have places of their own, and more of them.
 */
@Singleton
@Startup
public class HeavyPlaces {
    private static final int FEWEST = 4;
    private static final int STREAMS_PER_PLACE = 4;

    private final Places work;
    private final Places streams;

    HeavyPlaces(Limits limits, MeterRegistry meters) {
        int processors = Runtime.getRuntime().availableProcessors();
        int most = limits.heavy() > 0 ? limits.heavy() : Math.max(FEWEST, 2 * processors);
        work = new Places("long work", most);
        streams = new Places("answers of many lines", most * STREAMS_PER_PLACE);
        meters.gauge("orbwright.heavy.places.free", work, Places::free);
        meters.gauge("orbwright.stream.places.free", streams, Places::free);
    }

    /** Places for one long piece of work each. */
    Places work() {
        return work;
    }

    /** Places for an answer of many lines each. */
    Places streams() {
        return streams;
    }
}
