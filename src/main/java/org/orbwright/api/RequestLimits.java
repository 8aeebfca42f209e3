package org.orbwright.api;

import io.quarkus.runtime.configuration.MemorySize;
import io.quarkus.vertx.http.runtime.filters.Filters;
import io.vertx.core.buffer.Buffer;
import io.vertx.core.http.HttpHeaders;
import io.vertx.core.http.HttpServerRequest;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.eclipse.microprofile.config.inject.ConfigProperty;

/**
 * Refuses what is too large or has an address that cannot be read, before anything else looks at it: the HTTP server
 * would refuse the same with a bare status and nothing to go by.
 */
@ApplicationScoped
public class RequestLimits {
    private static final int BEFORE_EVERYTHING = 1000;
    private static final Pattern BROKEN_ESCAPE = Pattern.compile("%(?![0-9A-Fa-f]{2})");

    private final Limits limits;
    private final long largestBody;

    RequestLimits(Limits limits, @ConfigProperty(name = "quarkus.http.limits.max-body-size") MemorySize largestBody) {
        this.limits = limits;
        this.largestBody = largestBody.asLongValue();
    }

    void register(@Observes Filters filters) {
        filters.register(this::check, BEFORE_EVERYTHING);
    }

    private void check(RoutingContext exchange) {
        HttpServerRequest request = exchange.request();
        if (request.uri().length() > limits.address()) {
            String detail = "The address has " + request.uri().length() + " characters; at most " + limits.address()
                    + " are accepted.";
            refuse(request, Problem.of(ProblemKind.ADDRESS_TOO_LONG, detail, "", List.of()));
        } else if (BROKEN_ESCAPE.matcher(request.uri()).find()) {
            String detail = "A percent sign in the address is not followed by two hexadecimal digits; write it as %25.";
            refuse(request, Problem.of(ProblemKind.UNREADABLE_ADDRESS, detail, "", List.of()));
        } else if (headerSize(request) > limits.headers()) {
            String detail = "The headers have more than " + limits.headers() + " characters together.";
            refuse(request, Problem.of(ProblemKind.HEADERS_TOO_LARGE, detail, request.path(), List.of()));
        } else if (bodySize(request) > largestBody) {
            String detail = "The body has " + bodySize(request) + " bytes; at most " + largestBody + " are accepted.";
            refuse(request, Problem.of(ProblemKind.BODY_TOO_LARGE, detail, request.path(), List.of()));
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

    private static long bodySize(HttpServerRequest request) {
        String length = request.getHeader(HttpHeaders.CONTENT_LENGTH);
        return length == null ? 0 : Long.parseLong(length);
    }

    /** The rest of the request is not read, so the connection cannot be used again. */
    private static void refuse(HttpServerRequest request, Problem problem) {
        request.response()
                .setStatusCode(problem.status())
                .putHeader(HttpHeaders.CONTENT_TYPE, Problem.MEDIA_TYPE)
                .putHeader(HttpHeaders.CONNECTION, "close")
                .end(Buffer.buffer(RecordWriter.toJson(problem)));
    }
}
