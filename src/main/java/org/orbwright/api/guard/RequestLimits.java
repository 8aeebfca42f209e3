package org.orbwright.api.guard;

import io.quarkus.vertx.http.runtime.filters.Filters;
import io.vertx.core.http.HttpHeaders;
import io.vertx.core.http.HttpServerRequest;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import java.util.List;
import java.util.Map;
import org.orbwright.api.query.Format;
import org.orbwright.api.wire.Limits;
import org.orbwright.api.wire.Problem;
import org.orbwright.api.wire.ProblemKind;

/**
 * Refuses what is too large before anything else looks at it: the HTTP server would refuse the same with a bare status
 * and nothing to go by. What goes even beyond the server's own limits, and an address that is no URI at all, such as
 * one with a bare percent sign, still gets that bare status, since nothing of the application is asked before it is
 * sent.
 */
@ApplicationScoped
public class RequestLimits {
    private static final int BEFORE_EVERYTHING = 1000;
    private final Limits limits;
    private final Endpoints endpoints;

    RequestLimits(Limits limits, Endpoints endpoints) {
        this.limits = limits;
        this.endpoints = endpoints;
    }

    void register(@Observes Filters filters) {
        filters.register(this::check, BEFORE_EVERYTHING);
    }

    private void check(RoutingContext exchange) {
        HttpServerRequest request = exchange.request();
        if (request.uri().length() > limits.address()) {
            String detail = "The address has " + request.uri().length() + " characters. At most " + limits.address()
                    + " are accepted.";
            EarlyRefusal.send(request, Problem.of(ProblemKind.ADDRESS_TOO_LONG, detail, "", List.of()));
        } else if (headerSize(request) > limits.headers()) {
            String detail = "The headers have more than " + limits.headers() + " characters together.";
            EarlyRefusal.send(request, Problem.of(ProblemKind.HEADERS_TOO_LARGE, detail, request.path(), List.of()));
        } else if (bodySize(request) > 0 && bodySize(request) > mostOf(request)) {
            String detail =
                    "The body has " + bodySize(request) + " bytes. At most " + mostOf(request) + " are accepted.";
            EarlyRefusal.send(request, Problem.of(ProblemKind.BODY_TOO_LARGE, detail, request.path(), List.of()));
        } else {
            exchange.next();
        }
    }

    private static int headerSize(HttpServerRequest request) {
        int size = 0;
        for (Map.Entry<String, String> header : request.headers()) {
            size += header.getKey().length() + header.getValue().length();
        }
        return size;
    }

    private long mostOf(HttpServerRequest request) {
        return endpoints.consumedAt(request.path()).equals(Format.NDJSON_TYPE) ? limits.batch() : limits.body();
    }

    private static long bodySize(HttpServerRequest request) {
        String length = request.getHeader(HttpHeaders.CONTENT_LENGTH);
        return length == null ? 0 : Long.parseLong(length);
    }
}
