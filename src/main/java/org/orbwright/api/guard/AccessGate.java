package org.orbwright.api.guard;

import io.quarkus.logging.Log;
import io.quarkus.oidc.AccessTokenCredential;
import io.quarkus.oidc.TenantIdentityProvider;
import io.quarkus.security.AuthenticationFailedException;
import io.quarkus.vertx.http.runtime.filters.Filters;
import io.quarkus.vertx.http.runtime.security.SecurityHandlerPriorities;
import io.vertx.core.http.HttpHeaders;
import io.vertx.core.http.HttpServerRequest;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import jakarta.enterprise.inject.Instance;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jboss.logging.MDC;
import org.orbwright.api.wire.Problem;
import org.orbwright.api.wire.ProblemKind;

/**
 * Lets in whoever has a key or a token, once keys or tokens are asked for at all. A key comes as {@code X-API-Key}, as
 * a bearer token, or as the password of basic authentication, since some programs of a shop can send nothing else.
 * Health and the pages on problems are open to everybody. What browsers ask before a request of another origin is
 * answered before the gate, if other origins are allowed at all. Who was let in stands in the log beside whatever is
 * logged of the request.
 */
@ApplicationScoped
public class AccessGate {
    /** After the limits of sizes and the answers to other origins (CORS), before everything that does work. */
    private static final int BEFORE_WORK = SecurityHandlerPriorities.CORS - 1;

    private static final String CALLER = "caller";

    /** The header that a key comes in. */
    public static final String KEY = "X-API-Key";

    private static final String BEARER = "Bearer ";
    private static final String BASIC = "Basic ";
    /** Whoever is refused may read why. */
    private static final List<String> OPEN = List.of("/q/health", ProblemKind.PAGES);

    private final Optional<ApiKeys> keys;
    private final boolean tokens;
    /** Addresses of the service's keeper, with those below them. */
    private final Map<String, Access.Opening> openings;

    private final Instance<TenantIdentityProvider> provider;

    AccessGate(Access access, Instance<TenantIdentityProvider> provider) {
        keys = access.keys().map(ApiKeys::new);
        tokens = access.tokens();
        openings = Map.of(
                "/q/metrics", access.metrics(), "/q/openapi", access.contract(), "/q/swagger-ui", access.contract());
        this.provider = provider;
    }

    void register(@Observes Filters filters) {
        if (keys.isPresent() || tokens || openings.containsValue(Access.Opening.OFF)) {
            filters.register(this::check, BEFORE_WORK);
        }
    }

    private void check(RoutingContext exchange) {
        HttpServerRequest request = exchange.request();
        String path = exchange.normalizedPath();
        Access.Opening opening = opening(path);
        if (opening == Access.Opening.OFF) {
            String detail = "There is nothing at " + request.path() + ".";
            EarlyRefusal.send(request, Problem.of(ProblemKind.NOT_FOUND, detail, request.path(), List.of()));
            return;
        }
        if (opening == Access.Opening.OPEN || (keys.isEmpty() && !tokens)) {
            exchange.next();
            return;
        }
        String given = credential(request);
        Optional<String> name = given == null ? Optional.empty() : keys.flatMap(known -> known.nameOf(given));
        if (name.isPresent()) {
            let(exchange, name.get());
        } else if (given != null && tokens) {
            provider.get()
                    .authenticate(new AccessTokenCredential(given))
                    .subscribe()
                    .with(
                            identity -> let(exchange, identity.getPrincipal().getName()),
                            fault -> refuseToken(request, fault));
        } else {
            refuse(request, given != null);
        }
    }

    /** The name of a caller's key or token, without one the address that it comes from. */
    static String callerOf(RoutingContext exchange) {
        String name = exchange.get(CALLER);
        return name == null ? exchange.request().remoteAddress().hostAddress() : name;
    }

    private Access.Opening opening(String path) {
        if (OPEN.stream().anyMatch(open -> isAtOrBelow(path, open))) {
            return Access.Opening.OPEN;
        }
        return openings.entrySet().stream()
                .filter(entry -> isAtOrBelow(path, entry.getKey()))
                .map(Map.Entry::getValue)
                .findFirst()
                .orElse(Access.Opening.AS_ALL);
    }

    private static boolean isAtOrBelow(String path, String address) {
        return path.equals(address) || path.startsWith(address + "/");
    }

    private static void let(RoutingContext exchange, String name) {
        MDC.put(CALLER, name);
        exchange.put(CALLER, name);
        exchange.next();
    }

    /** A provider that cannot be asked is no fault of the token. */
    private static void refuseToken(HttpServerRequest request, Throwable fault) {
        if (fault instanceof AuthenticationFailedException) {
            refuse(request, true);
            return;
        }
        Log.errorf("A token cannot be checked: %s", fault);
        String detail = "Tokens cannot be checked at the moment; ask again in a second.";
        EarlyRefusal.send(request, Problem.of(ProblemKind.BUSY, detail, request.path(), List.of()));
    }

    private static String credential(HttpServerRequest request) {
        String key = request.getHeader(KEY);
        String authorization = request.getHeader(HttpHeaders.AUTHORIZATION);
        if (key != null || authorization == null) {
            return key;
        }
        if (authorization.regionMatches(true, 0, BEARER, 0, BEARER.length())) {
            return authorization.substring(BEARER.length()).strip();
        }
        return authorization.regionMatches(true, 0, BASIC, 0, BASIC.length())
                ? password(authorization.substring(BASIC.length()).strip())
                : null;
    }

    private static String password(String basic) {
        try {
            String pair = new String(Base64.getDecoder().decode(basic), StandardCharsets.UTF_8);
            return pair.substring(pair.indexOf(':') + 1);
        } catch (IllegalArgumentException e) {
            return null;
        }
    }

    private static void refuse(HttpServerRequest request, boolean given) {
        String detail = given
                ? "The key or token is not known, or no longer."
                : "A key is needed, in the header X-API-Key, or a bearer token in the header Authorization.";
        request.response().putHeader("WWW-Authenticate", "Bearer, Basic realm=\"orbwright\"");
        EarlyRefusal.send(request, Problem.of(ProblemKind.UNAUTHENTICATED, detail, request.path(), List.of()));
    }
}
