package org.orbwright.api.wire;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import io.quarkus.runtime.configuration.ConfigurationException;
import io.smallrye.config.SmallRyeConfig;
import io.smallrye.config.SmallRyeConfigBuilder;
import java.time.Duration;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Limits on both sides of what is allowed. */
class LimitsCheckTest {
    private static void check(String name, String value) {
        SmallRyeConfig config = new SmallRyeConfigBuilder()
                .withMapping(Limits.class)
                .withConverter(Duration.class, 100, text -> Duration.parse("PT" + text))
                .withDefaultValue("orbwright.limits." + name, value)
                .build();
        LimitsCheck.check(config.getConfigMapping(Limits.class));
    }

    @ParameterizedTest
    @CsvSource({
        "address, 39, 40 to 65536",
        "address, 65537, 40 to 65536",
        "headers, 255, 256 to 65536",
        "body, -1, 1024 to 1073741824",
        "batch, 1048575, 1048576 to 1073741824",
        "heavy, -1, 0 to 10000",
        "share, -1, 0 to 10000",
        "line-time, 0s, 1s to 24h",
        "body-time, 0s, 1s to 24h",
        "stream-time, 25h, 1s to 24h"
    })
    void aWrongOneIsNamed(String name, String value, String allowed) {
        ConfigurationException end = assertThrows(ConfigurationException.class, () -> check(name, value));
        assertEquals(
                "The setting orbwright.limits." + name + " must be " + allowed + ", but is " + value + ".",
                end.getMessage());
    }

    @Test
    void whatIsAllowedPasses() {
        assertDoesNotThrow(() -> check("address", "40"));
        assertDoesNotThrow(() -> check("body", "1024"));
        assertDoesNotThrow(() -> check("heavy", "0"));
        assertDoesNotThrow(() -> check("body-time", "1s"));
    }
}
