package org.orbwright.api;

import io.quarkus.oidc.AccessTokenCredential;
import io.quarkus.oidc.TenantIdentityProvider;
import io.quarkus.vertx.http.runtime.filters.Filters;
import io.vertx.core.buffer.Buffer;
import io.vertx.core.http.HttpHeaders;
import io.vertx.core.http.HttpServerRequest;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import jakarta.enterprise.inject.Instance;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.List;
import java.util.Optional;

/**
 * Lets in whoever has a key or a token, once keys or tokens are asked for at all. A key comes as {@code X-API-Key}, as
 * a bearer token, or as the password of basic authentication, since some programs of a shop can send nothing else.
 * Health is open to everybody, and so is what browsers ask before a request of another origin.
 */
@ApplicationScoped
public class AccessGate {
    /** After the limits of sizes, before everything that does work. */
    private static final int AFTER_LIMITS = 900;

    private static final String KEY = "X-API-Key";
    private static final String BEARER = "Bearer ";
    private static final String BASIC = "Basic ";
    private static final String HEALTH = "/q/health";

    private final Optional<ApiKeys> keys;
    private final boolean tokens;
    private final Instance<TenantIdentityProvider> provider;

    AccessGate(Access access, Instance<TenantIdentityProvider> provider) {
        keys = access.keys().map(ApiKeys::new);
        tokens = access.tokens();
        this.provider = provider;
    }

    void register(@Observes Filters filters) {
        if (keys.isPresent() || tokens) {
            filters.register(this::check, AFTER_LIMITS);
        }
    }

    private void check(RoutingContext exchange) {
        HttpServerRequest request = exchange.request();
        String path = exchange.normalizedPath();
        if (path.equals(HEALTH) || path.startsWith(HEALTH + "/") || isPreflight(request)) {
            exchange.next();
            return;
        }
        String given = credential(request);
        if (given != null && keys.flatMap(known -> known.nameOf(given)).isPresent()) {
            exchange.next();
        } else if (given != null && tokens) {
            provider.get()
                    .authenticate(new AccessTokenCredential(given))
                    .subscribe()
                    .with(identity -> exchange.next(), fault -> refuse(request, true));
        } else {
            refuse(request, given != null);
        }
    }

    private static boolean isPreflight(HttpServerRequest request) {
        return request.method().name().equals("OPTIONS")
                && request.headers().contains(HttpHeaders.ACCESS_CONTROL_REQUEST_METHOD);
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

    /** The rest of the request is not read, so the connection cannot be used again. */
    private static void refuse(HttpServerRequest request, boolean given) {
        String detail = given
                ? "The key or token is not known, or no longer."
                : "A key is needed, in the header X-API-Key, or a bearer token in the header Authorization.";
        Problem problem = Problem.of(ProblemKind.UNAUTHENTICATED, detail, request.path(), List.of());
        request.response()
                .setStatusCode(problem.status())
                .putHeader("WWW-Authenticate", "Bearer, Basic realm=\"orbwright\"")
                .putHeader(HttpHeaders.CONTENT_TYPE, Problem.MEDIA_TYPE)
                .putHeader(HttpHeaders.CONNECTION, "close")
                .end(Buffer.buffer(RecordWriter.toJson(problem)));
    }
}
