package org.orbwright.api.guard;

import io.micrometer.core.instrument.Meter;
import io.micrometer.core.instrument.Tag;
import io.micrometer.core.instrument.config.MeterFilter;
import io.micrometer.core.instrument.distribution.DistributionStatisticConfig;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.inject.Produces;
import jakarta.inject.Singleton;
import java.time.Duration;
import java.util.Set;
import java.util.stream.Stream;

/** Latencies of requests as a histogram, by address. */
@ApplicationScoped
public class RequestMetrics {
    private static final String REQUESTS = "http.server.requests";

    private static final String METHOD = "method";
    private static final String URI = "uri";
    private static final String OTHER = "OTHER";
    private static final Set<String> METHODS = Set.of("GET", "HEAD", "OPTIONS", "POST");
    /** What the framework says instead of an address. */
    private static final Set<String> NO_ADDRESSES = Set.of("NOT_FOUND", "REDIRECTION", "UNKNOWN", "root");

    private static final String CLIENTS = "/clients/";

    private final Endpoints endpoints;

    RequestMetrics(Endpoints endpoints) {
        this.endpoints = endpoints;
    }

    private String address(String uri) {
        if (NO_ADDRESSES.contains(uri)) {
            return uri;
        }
        return uri.startsWith(CLIENTS)
                ? CLIENTS + "{file}"
                : endpoints.templateAt(uri).orElse(OTHER);
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
