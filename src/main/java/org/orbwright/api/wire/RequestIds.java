package org.orbwright.api.wire;

import io.quarkus.vertx.http.runtime.filters.Filters;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import java.util.UUID;
import java.util.regex.Pattern;
import org.jboss.logging.MDC;

/**
 * Gives every request an id, the caller's own if that is short and plain, which stands in the log beside whatever is
 * logged of the request, in the answer's header, and in the problem if there is one.
 */
@ApplicationScoped
public class RequestIds {
    /** The header that the id comes and goes in. */
    public static final String HEADER = "X-Request-Id";

    private static final int BEFORE_LIMITS = 1100;
    private static final String KEY = "requestId";
    private static final Pattern PLAIN = Pattern.compile("[A-Za-z0-9._-]{1,64}");

    void register(@Observes Filters filters) {
        filters.register(RequestIds::give, BEFORE_LIMITS);
    }

    private static void give(RoutingContext exchange) {
        String asked = exchange.request().getHeader(HEADER);
        String id = asked != null && PLAIN.matcher(asked).matches()
                ? asked
                : UUID.randomUUID().toString();
        MDC.put(KEY, id);
        exchange.response().putHeader(HEADER, id);
        exchange.next();
    }

    /** The id of the request that is worked on, null if there is none. */
    static String current() {
        return (String) MDC.get(KEY);
    }
}
