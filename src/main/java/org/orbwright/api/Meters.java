package org.orbwright.api;

import io.micrometer.core.instrument.DistributionSummary;
import io.micrometer.core.instrument.Meter;
import io.micrometer.core.instrument.MeterRegistry;
import io.micrometer.core.instrument.config.MeterFilter;
import io.micrometer.core.instrument.distribution.DistributionStatisticConfig;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.inject.Produces;
import jakarta.inject.Singleton;
import java.time.Duration;
import java.util.stream.Stream;
import org.orbwright.design.DesignRequest;

/** What is measured beyond what the framework measures: how large designs are, and latencies as a histogram. */
@ApplicationScoped
public class Meters {
    private static final String REQUESTS = "http.server.requests";

    private final DistributionSummary bytes;
    private final DistributionSummary bands;

    Meters(MeterRegistry registry) {
        bytes = DistributionSummary.builder("orbwright.request.size")
                .description("Size of request bodies")
                .baseUnit("bytes")
                .serviceLevelObjectives(1_000, 10_000, 100_000, 1_000_000)
                .register(registry);
        bands = DistributionSummary.builder("orbwright.design.bands")
                .description("Bands of the designs that were read")
                .serviceLevelObjectives(2, 5, 10, 20, 60)
                .register(registry);
    }

    /** Counts a request that was read. */
    void count(int size, Object request) {
        bytes.record(size);
        if (request instanceof DesignRequest design) {
            bands.record(design.laminations().stream()
                    .mapToInt(lamination -> lamination.bands().size())
                    .sum());
        }
    }

    /** Latencies of each address as counts below these times. */
    @Produces
    @Singleton
    MeterFilter latencies() {
        return new MeterFilter() {
            @Override
            public DistributionStatisticConfig configure(Meter.Id id, DistributionStatisticConfig config) {
                if (!id.getName().equals(REQUESTS)) {
                    return config;
                }
                double[] nanos = Stream.of(1, 5, 20, 100, 500, 2000, 10_000)
                        .mapToDouble(millis -> Duration.ofMillis(millis).toNanos())
                        .toArray();
                return DistributionStatisticConfig.builder()
                        .serviceLevelObjectives(nanos)
                        .build()
                        .merge(config);
            }
        };
    }
}
