package org.orbwright.api;

import io.smallrye.config.ConfigMapping;
import io.smallrye.config.WithDefault;

/** The largest requests that are accepted, besides the body's {@code quarkus.http.limits.max-body-size}. */
@ConfigMapping(prefix = "orbwright.limits")
public interface Limits {
    /** Characters of path and query. */
    @WithDefault("4096")
    int address();

    /** Characters of all headers together. */
    @WithDefault("16384")
    int headers();
}
