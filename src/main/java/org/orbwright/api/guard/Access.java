package org.orbwright.api.guard;

import io.smallrye.config.ConfigMapping;
import io.smallrye.config.WithDefault;
import java.nio.file.Path;
import java.util.Optional;

/** Who may ask the service: everybody, unless one of these is set. Health is always open. */
@ConfigMapping(prefix = "orbwright.access")
public interface Access {
    /** A file of hashed keys, of which a caller has to have one. It is read again when it changes. */
    Optional<Path> keys();

    /** Whether bearer tokens of an OpenID Connect provider (quarkus.oidc.auth-server-url) are taken. */
    @WithDefault("false")
    boolean tokens();

    /** Who may read /q/metrics. */
    @WithDefault("as-all")
    Opening metrics();

    /** Who may read the contract at /q/openapi and its page at /q/swagger-ui. */
    @WithDefault("as-all")
    Opening contract();

    /** How far an address of the keeper's is open. */
    enum Opening {
        /** To everybody, or to whoever has a key or a token where one is asked for. */
        AS_ALL,
        /** To everybody. */
        OPEN,
        /** To nobody. */
        OFF
    }
}
