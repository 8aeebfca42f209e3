package org.orbwright.api.contract;

import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import io.quarkus.arc.profile.IfBuildProfile;
import io.vertx.core.buffer.Buffer;
import io.vertx.core.http.HttpHeaders;
import io.vertx.core.http.HttpMethod;
import io.vertx.ext.web.Router;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Hands out the committed contract, as YAML and as JSON. The framework's own page makes it anew in both forms at every
 * start; tests and development use that one, so that what is tested is the contract of the code.
 */
@ApplicationScoped
@IfBuildProfile("prod")
public class ContractPage {
    /** After what guards the service, before the framework's own page. */
    private static final int ORDER = -1;

    private static final String ADDRESS = "/q/openapi";
    private static final String DOCUMENT = "/openapi/openapi.yaml";
    private static final String JSON = "json";
    private static final String YAML = "yaml";
    private static final Map<String, String> TYPES = Map.of(JSON, "application/json", YAML, "application/yaml");

    private final Map<String, Buffer> documents = new ConcurrentHashMap<>();

    void register(@Observes Router router) {
        for (String end : List.of("", "." + JSON, "." + YAML, ".yml")) {
            router.route(ADDRESS + end)
                    .method(HttpMethod.GET)
                    .method(HttpMethod.HEAD)
                    .order(ORDER)
                    .blockingHandler(this::answer);
        }
    }

    private void answer(RoutingContext exchange) {
        String form = form(exchange);
        exchange.response()
                .putHeader(HttpHeaders.CONTENT_TYPE, TYPES.get(form) + ";charset=UTF-8")
                .end(documents.computeIfAbsent(form, ContractPage::document));
    }

    private static String form(RoutingContext exchange) {
        String path = exchange.normalizedPath();
        String asked = exchange.request().getParam("format");
        String accepted = exchange.request().getHeader(HttpHeaders.ACCEPT);
        boolean wanted =
                asked == null ? accepted != null && accepted.contains(TYPES.get(JSON)) : asked.equalsIgnoreCase(JSON);
        return path.endsWith("." + JSON) || (path.equals(ADDRESS) && wanted) ? JSON : YAML;
    }

    private static Buffer document(String form) {
        try (InputStream in = ContractPage.class.getResourceAsStream(DOCUMENT)) {
            byte[] yaml = in.readAllBytes();
            return Buffer.buffer(
                    form.equals(YAML) ? yaml : new JsonMapper().writeValueAsBytes(new YAMLMapper().readTree(yaml)));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
