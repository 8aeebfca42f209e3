package org.orbwright.api;

import io.smallrye.config.ConfigMapping;
import io.smallrye.config.WithDefault;

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
}
