package org.orbwright.api;

import io.quarkus.runtime.Startup;
import jakarta.enterprise.context.ApplicationScoped;
import org.orbwright.solid.SolidCatalogue;

/** Computes the catalogue of solids while the service starts, so that no caller waits for it. */
@ApplicationScoped
public class WarmUp {

    @Startup
    void computeSolids() {
        SolidCatalogue.all();
    }
}
