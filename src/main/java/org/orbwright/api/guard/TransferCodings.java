package org.orbwright.api.guard;

import io.quarkus.vertx.http.runtime.filters.Filters;
import io.vertx.core.http.HttpHeaders;
import io.vertx.core.http.HttpServerRequest;
import io.vertx.core.http.HttpVersion;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import java.util.List;
import org.orbwright.api.wire.Problem;
import org.orbwright.api.wire.ProblemKind;
import org.orbwright.api.wire.Sentences;

/**
 * Refuses a transfer coding that is not understood (RFC 9112, 6.1). The HTTP server takes no notice of it: it would
 * read the body as the next request. A proxy before it might read it otherwise, and let something in unseen.
 */
@ApplicationScoped
public class TransferCodings {
    /** Before all that answers, since the connection has to be closed whatever the answer is. */
    private static final int BEFORE_LIMITS = 1001;

    private static final String UNDERSTOOD = "chunked";

    void register(@Observes Filters filters) {
        filters.register(TransferCodings::check, BEFORE_LIMITS);
    }

    private static void check(RoutingContext exchange) {
        HttpServerRequest request = exchange.request();
        List<String> codings = request.headers().getAll(HttpHeaders.TRANSFER_ENCODING);
        if (codings.isEmpty() || (codings.size() == 1 && codings.get(0).strip().equalsIgnoreCase(UNDERSTOOD))) {
            exchange.next();
            return;
        }
        String detail = "The transfer coding " + Sentences.cut(String.join(", ", codings)) + " is not understood. The"
                + " service takes " + UNDERSTOOD + " alone, once.";
        if (request.version() != HttpVersion.HTTP_2) {
            // The header alone does not keep the server from what it has read already.
            exchange.addEndHandler(end -> request.connection().close());
        }
        EarlyRefusal.send(request, Problem.of(ProblemKind.REFUSED, detail, request.path(), List.of()));
    }
}
