package org.orbwright.api.query;

import io.vertx.core.http.HttpServerRequest;
import jakarta.ws.rs.BeanParam;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.container.ContainerRequestContext;
import jakarta.ws.rs.container.ResourceInfo;
import java.lang.reflect.Field;
import java.lang.reflect.Method;
import java.lang.reflect.Parameter;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import org.jboss.resteasy.reactive.server.ServerRequestFilter;
import org.orbwright.api.wire.RequestException;
import org.orbwright.api.wire.Sentences;
import org.orbwright.design.Violation;

/**
 * Refuses query parameters that an address does not declare, and those that are stated twice: one that is misspelt
 * would else be a silent default. A method that takes the whole request reads its query itself, and refuses likewise.
 */
public class DeclaredQuery {
    private final Map<Method, List<String>> declared = new ConcurrentHashMap<>();

    /** Looks at every request that has found its method. */
    @ServerRequestFilter
    public void refuseUndeclared(ContainerRequestContext request, ResourceInfo found) {
        Map<String, List<String>> query = request.getUriInfo().getQueryParameters();
        Method method = query.isEmpty() ? null : found.getResourceMethod();
        if (method == null || List.of(method.getParameterTypes()).contains(HttpServerRequest.class)) {
            return;
        }
        List<String> names = declared.computeIfAbsent(method, DeclaredQuery::names);
        List<Violation> broken = new ArrayList<>();
        for (String name : new TreeSet<>(query.keySet())) {
            if (!names.contains(name)) {
                broken.add(undeclared(name, names));
            } else if (query.get(name).size() > 1) {
                broken.add(Query.repeated(name, query.get(name).get(1)));
            }
        }
        if (!broken.isEmpty()) {
            throw RequestException.invalid(broken);
        }
    }

    private static Violation undeclared(String name, List<String> names) {
        String shown = Sentences.cut(name);
        String allowed = names.isEmpty() ? "none" : "one of " + String.join(", ", names);
        return new Violation(
                shown,
                "UNKNOWN_PARAMETER",
                "There is no query parameter \"" + shown + "\" here; allowed: " + allowed + ".",
                shown,
                allowed);
    }

    private static List<String> names(Method method) {
        List<String> names = new ArrayList<>();
        for (Parameter parameter : method.getParameters()) {
            add(parameter.getAnnotation(QueryParam.class), names);
            if (parameter.isAnnotationPresent(BeanParam.class)) {
                for (Field field : parameter.getType().getDeclaredFields()) {
                    add(field.getAnnotation(QueryParam.class), names);
                }
            }
        }
        return List.copyOf(names);
    }

    private static void add(QueryParam parameter, List<String> names) {
        if (parameter != null) {
            names.add(parameter.value());
        }
    }
}
