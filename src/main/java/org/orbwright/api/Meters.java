package org.orbwright.api;

import io.micrometer.core.instrument.DistributionSummary;
import io.micrometer.core.instrument.Meter;
import io.micrometer.core.instrument.MeterRegistry;
import io.micrometer.core.instrument.Tag;
import io.micrometer.core.instrument.config.MeterFilter;
import io.micrometer.core.instrument.distribution.DistributionStatisticConfig;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.inject.Produces;
import jakarta.inject.Singleton;
import java.time.Duration;
import java.util.Arrays;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;
import org.orbwright.design.DesignRequest;

/** What is measured beyond what the framework measures: how large designs are, and latencies as a histogram. */
@ApplicationScoped
public class Meters {
    private static final String REQUESTS = "http.server.requests";

    /** How the design is taken out of each type of request that has one. */
    private static final ClassValue<Optional<Function<Object, Object>>> PARTS = new ClassValue<>() {
        @Override
        protected Optional<Function<Object, Object>> computeValue(Class<?> type) {
            return Arrays.stream(type.getRecordComponents())
                    .filter(component -> component.getType() == DesignRequest.class)
                    .findFirst()
                    .map(Accessors::ofObject);
        }
    };

    private static final String METHOD = "method";
    private static final String URI = "uri";
    private static final String OTHER = "OTHER";
    private static final Set<String> METHODS = Set.of("GET", "HEAD", "OPTIONS", "POST");
    /** What the framework says instead of an address. */
    private static final Set<String> NO_ADDRESSES = Set.of("NOT_FOUND", "REDIRECTION", "UNKNOWN", "root");

    private static final String CLIENTS = "/clients/";

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
        design(request)
                .ifPresent(design -> bands.record(design.laminations().stream()
                        .mapToInt(lamination -> lamination.bands().size())
                        .sum()));
    }

    /** The design that a request is, or has as a part of it. */
    private static Optional<DesignRequest> design(Object request) {
        if (request instanceof DesignRequest design) {
            return Optional.of(design);
        }
        return PARTS.get(request.getClass()).map(part -> (DesignRequest) part.apply(request));
    }

    private static String address(String uri) {
        if (NO_ADDRESSES.contains(uri)) {
            return uri;
        }
        return uri.startsWith(CLIENTS) ? CLIENTS + "{file}" : Methods.templateAt(uri, OTHER);
    }

    /**
     * Latencies of each address as counts below these times. What a caller makes up, an address or a method, is
     * measured under one name: strangers could else fill the memory with names.
     */
    @Produces
    @Singleton
    MeterFilter latencies() {
        return new MeterFilter() {
            @Override
            public Meter.Id map(Meter.Id id) {
                if (!id.getName().equals(REQUESTS)) {
                    return id;
                }
                return id.replaceTags(id.getTags().stream()
                        .map(tag -> switch (tag.getKey()) {
                            case METHOD -> METHODS.contains(tag.getValue()) ? tag : Tag.of(METHOD, OTHER);
                            case URI -> Tag.of(URI, address(tag.getValue()));
                            default -> tag;
                        })
                        .toList());
            }

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
