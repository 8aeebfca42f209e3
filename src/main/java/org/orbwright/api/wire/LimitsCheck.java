package org.orbwright.api.wire;

import io.quarkus.runtime.Startup;
import io.quarkus.runtime.configuration.ConfigurationException;
import jakarta.inject.Singleton;
import java.time.Duration;
import java.util.Locale;

/**
 * Ends the start where a setting of {@link Limits} makes no sense: a service that refuses everything, or holds
 * everything, is found out later and by somebody else. The framework prints this exception's message alone.
 */
@Singleton
@Startup
public final class LimitsCheck {
    /** Room for the longest address of the contract that has no query. */
    private static final int SHORTEST_ADDRESS = 40;
    /** What the HTTP server itself takes (quarkus.http.limits). */
    private static final int LONGEST_LINE = 65_536;

    private static final int LEAST_HEADERS = 256;
    private static final int KIBIBYTE = 1024;
    private static final int GIBIBYTE = 1 << 30;
    private static final int MOST_PLACES = 10_000;
    private static final Duration SECOND = Duration.ofSeconds(1);
    private static final Duration DAY = Duration.ofDays(1);

    LimitsCheck(Limits limits) {
        check(limits);
    }

    /**
     * Checks all limits.
     *
     * @throws ConfigurationException with a sentence that names setting, value and what is allowed
     */
    static void check(Limits limits) {
        number("address", limits.address(), SHORTEST_ADDRESS, LONGEST_LINE);
        number("headers", limits.headers(), LEAST_HEADERS, LONGEST_LINE);
        number("body", limits.body(), KIBIBYTE, GIBIBYTE);
        number("batch", limits.batch(), limits.body(), GIBIBYTE);
        number("heavy", limits.heavy(), 0, MOST_PLACES);
        number("share", limits.share(), 0, MOST_PLACES);
        time("line-time", limits.lineTime());
        time("body-time", limits.bodyTime());
        time("stream-time", limits.streamTime());
    }

    private static void number(String name, long value, long least, long most) {
        if (value < least || value > most) {
            throw wrong(name, String.valueOf(value), least + " to " + most);
        }
    }

    private static void time(String name, Duration value) {
        if (value.compareTo(SECOND) < 0 || value.compareTo(DAY) > 0) {
            String given = value.toString().substring(2).toLowerCase(Locale.ROOT);
            throw wrong(name, given, "1s to 24h");
        }
    }

    private static ConfigurationException wrong(String name, String value, String allowed) {
        return new ConfigurationException(
                "The setting orbwright.limits." + name + " must be " + allowed + ", but is " + value + ".");
    }
}
