package org.orbwright.api.guard;

import io.smallrye.health.api.AsyncHealthCheck;
import io.smallrye.mutiny.Uni;
import jakarta.enterprise.context.ApplicationScoped;
import org.eclipse.microprofile.health.HealthCheckResponse;
import org.eclipse.microprofile.health.Readiness;
import org.eclipse.microprofile.health.Startup;

/**
 * Ready, and started, once a worked design has been answered from its JSON to its JSON: then everything that an answer
 * needs is loaded. Liveness has no check of its own: that the process answers at all is what it says. The check needs
 * no worker, so that it answers while all of them are busy.
 */
@Startup
@Readiness
@ApplicationScoped
public class ServiceChecks implements AsyncHealthCheck {
    private final WarmUp warmUp;

    ServiceChecks(WarmUp warmUp) {
        this.warmUp = warmUp;
    }

    @Override
    public Uni<HealthCheckResponse> call() {
        return Uni.createFrom()
                .item(HealthCheckResponse.named("a worked design is answered")
                        .status(warmUp.isDone())
                        .build());
    }
}
