package org.orbwright.api.guard;

import jakarta.enterprise.context.ApplicationScoped;
import org.eclipse.microprofile.health.HealthCheck;
import org.eclipse.microprofile.health.HealthCheckResponse;
import org.eclipse.microprofile.health.Readiness;
import org.eclipse.microprofile.health.Startup;

/**
 * Ready, and started, once a worked design has been answered from its JSON to its JSON: then everything that an answer
 * needs is loaded. Liveness has no check of its own: that the process answers at all is what it says.
 */
@Startup
@Readiness
@ApplicationScoped
public class ServiceChecks implements HealthCheck {
    private final WarmUp warmUp;

    ServiceChecks(WarmUp warmUp) {
        this.warmUp = warmUp;
    }

    @Override
    public HealthCheckResponse call() {
        return HealthCheckResponse.named("a worked design is answered")
                .status(warmUp.isDone())
                .build();
    }
}
