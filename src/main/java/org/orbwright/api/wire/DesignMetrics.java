package org.orbwright.api.wire;

import io.micrometer.core.instrument.DistributionSummary;
import io.micrometer.core.instrument.MeterRegistry;
import jakarta.inject.Singleton;
import org.orbwright.document.Document;

/** How large the documents are that are read. */
@Singleton
class DesignMetrics {
    private final DistributionSummary bytes;
    private final DistributionSummary bands;

    DesignMetrics(MeterRegistry registry) {
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

    /** Counts a document that was read from so many bytes. */
    void count(int size, Document document) {
        bytes.record(size);
        if (document.laminations() != null) {
            bands.record(document.laminations().stream()
                    .mapToInt(lamination -> lamination.bands().size())
                    .sum());
        }
    }
}
