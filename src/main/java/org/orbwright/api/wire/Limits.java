package org.orbwright.api.wire;

import io.smallrye.config.ConfigMapping;
import io.smallrye.config.WithDefault;
import java.time.Duration;

/**
 * The largest requests that are accepted. The HTTP server's own limits have to be higher, so that these speak first.
 */
@ConfigMapping(prefix = "orbwright.limits")
public interface Limits {
    /** Characters of path and query. */
    @WithDefault("4096")
    int address();

    /** Characters of all headers together. */
    @WithDefault("16384")
    int headers();

    /** Bytes of the body. */
    @WithDefault("1048576")
    int body();

    /** Bytes of all lines of a batch together; each line may be as long as a body. */
    @WithDefault("1073741824")
    long batch();

    /** Requests that may do long work at once; twice as many as there are processors, at least four, if this is 0. */
    @WithDefault("0")
    int heavy();

    /** Answers of many lines that one caller may take at once; a quarter of all places for them if this is 0. */
    @WithDefault("0")
    int share();

    /** How long a batch waits for its next line; empty lines do not count. */
    @WithDefault("30s")
    Duration lineTime();

    /** How long a body may take to come in. */
    @WithDefault("30s")
    Duration bodyTime();

    /** How long an answer of many lines may take; its connection is then cut, so that nobody takes it for whole. */
    @WithDefault("1h")
    Duration streamTime();
}
