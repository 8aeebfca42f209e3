package org.orbwright.api;

import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import java.lang.reflect.Method;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;

/**
 * Which methods an address takes, and what it answers with. The framework refuses a wrong method without naming the
 * right ones, although HTTP asks for that (RFC 9110, 15.5.6).
 */
final class Methods {
    private static final String READ = "GET, HEAD, OPTIONS";
    private static final String POSTED = "OPTIONS, POST";
    private static final String BOTH = "GET, HEAD, OPTIONS, POST";
    private static final Map<String, String> BY_TEMPLATE = new LinkedHashMap<>();
    private static final Map<String, List<String>> PRODUCED = new LinkedHashMap<>();
    private static final Map<String, String> CONSUMED = new LinkedHashMap<>();
    /** The addresses that differ from request to request, with what matches them. */
    private static final Map<String, Pattern> PATTERNS = new LinkedHashMap<>();

    static {
        for (Class<?> resource : List.of(
                SheetResource.class,
                BuildResource.class,
                BandDesignResource.class,
                StockResource.class,
                AssemblyResource.class,
                ToleranceResource.class,
                JigResource.class,
                TurningResource.class,
                PaperResource.class,
                DrawingsResource.class,
                OutlinesResource.class,
                BodiesResource.class,
                SolidsResource.class,
                DesignsResource.class,
                WoodsResource.class,
                CellResource.class,
                BatchResource.class,
                ClientsResource.class,
                ProblemsResource.class)) {
            for (Method method : resource.getDeclaredMethods()) {
                if (method.isAnnotationPresent(GET.class) || method.isAnnotationPresent(POST.class)) {
                    // Reflection lists methods in no fixed order.
                    String taken = method.isAnnotationPresent(GET.class) ? READ : POSTED;
                    String template = template(resource, method);
                    BY_TEMPLATE.merge(template, taken, (one, other) -> one.equals(other) ? one : BOTH);
                    PRODUCED.put(template, List.of(produced(resource, method)));
                    CONSUMED.put(template, consumed(resource));
                    if (template.contains("{")) {
                        PATTERNS.put(template, Pattern.compile(template.replaceAll("\\{[^}]*}", "[^/]+")));
                    }
                }
            }
        }
    }

    private Methods() {}

    /** The methods as the header Allow lists them; just OPTIONS where none is known. */
    static String allowedAt(String path) {
        return BY_TEMPLATE.getOrDefault(templateAt(path, ""), "OPTIONS");
    }

    /** The media types of the answers at an address, in words. */
    static String producedAt(String path) {
        return String.join(" or ", typesAt(path));
    }

    /** The media types of the answers at an address. */
    static List<String> typesAt(String path) {
        return PRODUCED.getOrDefault(templateAt(path, ""), List.of(MediaType.APPLICATION_JSON));
    }

    /** The media type of the bodies at an address. */
    static String consumedAt(String path) {
        return CONSUMED.getOrDefault(templateAt(path, ""), MediaType.APPLICATION_JSON);
    }

    /** The address with names in braces for what differs from request to request, or what is given if none is known. */
    static String templateAt(String path, String otherwise) {
        String address = path.endsWith("/") ? path.substring(0, path.length() - 1) : path;
        if (BY_TEMPLATE.containsKey(address)) {
            return address;
        }
        return PATTERNS.entrySet().stream()
                .filter(entry -> entry.getValue().matcher(address).matches())
                .map(Map.Entry::getKey)
                .findFirst()
                .orElse(otherwise);
    }

    private static String[] produced(Class<?> resource, Method method) {
        Produces own = method.getAnnotation(Produces.class);
        return own != null
                ? own.value()
                : resource.getAnnotation(Produces.class).value();
    }

    private static String consumed(Class<?> resource) {
        Consumes own = resource.getAnnotation(Consumes.class);
        return own == null ? MediaType.APPLICATION_JSON : own.value()[0];
    }

    private static String template(Class<?> resource, Method method) {
        Path below = method.getAnnotation(Path.class);
        return resource.getAnnotation(Path.class).value() + (below == null ? "" : below.value());
    }
}
