package org.orbwright.api.guard;

import jakarta.enterprise.inject.Any;
import jakarta.enterprise.inject.spi.Bean;
import jakarta.enterprise.inject.spi.BeanManager;
import jakarta.inject.Singleton;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import java.lang.reflect.Method;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;

/**
 * Which methods an address takes, and what it answers with, read from the resources' own annotations. The framework
 * refuses a wrong method without naming the right ones, although HTTP asks for that (RFC 9110, 15.5.6).
 */
@Singleton
public class Endpoints {
    private final Map<String, Endpoint> byTemplate = new HashMap<>();

    Endpoints(BeanManager beans) {
        for (Bean<?> bean : beans.getBeans(Object.class, Any.Literal.INSTANCE)) {
            Class<?> resource = bean.getBeanClass();
            if (resource.isAnnotationPresent(Path.class)) {
                for (Method method : resource.getDeclaredMethods()) {
                    if (method.isAnnotationPresent(GET.class) || method.isAnnotationPresent(POST.class)) {
                        add(resource, method);
                    }
                }
            }
        }
    }

    /**
     * One address.
     *
     * @param template with names in braces for what differs from request to request
     * @param pattern what matches it
     * @param methods those that it takes
     * @param produced media types of its answers
     * @param consumed media type of its bodies
     */
    private record Endpoint(
            String template, Pattern pattern, Set<String> methods, List<String> produced, String consumed) {}

    private void add(Class<?> resource, Method method) {
        Path below = method.getAnnotation(Path.class);
        String template = resource.getAnnotation(Path.class).value() + (below == null ? "" : below.value());
        Endpoint endpoint = byTemplate.computeIfAbsent(
                template,
                address -> new Endpoint(
                        address,
                        Pattern.compile(address.replaceAll("\\{[^}]*}", "[^/]+")),
                        new TreeSet<>(Set.of("OPTIONS")),
                        produced(resource, method),
                        consumed(resource)));
        endpoint.methods().addAll(method.isAnnotationPresent(GET.class) ? List.of("GET", "HEAD") : List.of("POST"));
    }

    private static List<String> produced(Class<?> resource, Method method) {
        Produces own = method.getAnnotation(Produces.class);
        return List.of((own == null ? resource.getAnnotation(Produces.class) : own).value());
    }

    private static String consumed(Class<?> resource) {
        Consumes own = resource.getAnnotation(Consumes.class);
        return own == null ? MediaType.APPLICATION_JSON : own.value()[0];
    }

    /** The methods as the header Allow lists them; just OPTIONS where none is known. */
    String allowedAt(String path) {
        return at(path).map(endpoint -> String.join(", ", endpoint.methods())).orElse("OPTIONS");
    }

    /** The media types of the answers at an address. */
    List<String> producedAt(String path) {
        return at(path).map(Endpoint::produced).orElse(List.of(MediaType.APPLICATION_JSON));
    }

    /** The media type of the bodies at an address. */
    String consumedAt(String path) {
        return at(path).map(Endpoint::consumed).orElse(MediaType.APPLICATION_JSON);
    }

    /** Whether a document is posted to an address, as a whole and not line by line. */
    boolean takesDocument(String path) {
        return at(path).filter(endpoint -> endpoint.methods().contains("POST")
                        && endpoint.consumed().equals(MediaType.APPLICATION_JSON))
                .isPresent();
    }

    /** The address with names in braces for what differs from request to request, if there is one. */
    Optional<String> templateAt(String path) {
        return at(path).map(Endpoint::template);
    }

    private Optional<Endpoint> at(String path) {
        String address = path.endsWith("/") ? path.substring(0, path.length() - 1) : path;
        Endpoint exact = byTemplate.get(address);
        return exact != null
                ? Optional.of(exact)
                : byTemplate.values().stream()
                        .filter(endpoint -> endpoint.pattern().matcher(address).matches())
                        .findFirst();
    }
}
