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
}
