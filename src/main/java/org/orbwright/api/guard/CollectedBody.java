package org.orbwright.api.guard;

import io.vertx.ext.web.RoutingContext;
import jakarta.ws.rs.container.ContainerRequestContext;
import java.io.ByteArrayInputStream;
import org.jboss.resteasy.reactive.server.ServerRequestFilter;

/** Hands the body that was collected to whoever reads the document, so that the framework does not look for it. */
public class CollectedBody {
    @ServerRequestFilter
    public void handOver(ContainerRequestContext request, RoutingContext exchange) {
        byte[] body = exchange.get(BodyCollector.BYTES);
        if (body != null) {
            request.setEntityStream(new ByteArrayInputStream(body));
        }
    }
}
