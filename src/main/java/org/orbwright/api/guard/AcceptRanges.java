package org.orbwright.api.guard;

import io.quarkus.vertx.http.runtime.filters.Filters;
import io.vertx.core.http.HttpHeaders;
import io.vertx.core.http.HttpServerRequest;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.orbwright.api.query.Format;
import org.orbwright.api.wire.Problem;

/**
 * Writes ranges such as {@code text/*} in the header Accept as the types of that range that the address has: the
 * framework chooses among several types by their full names only, and would refuse a range that one of them is in, or
 * answer in a type that is none of them (RFC 9110, 12.5.1). Parameters other than weights are left out: no type here
 * has any, and the framework would send a caller's back. The type of problems is left out too: generated clients ask
 * for it, some of them for it alone. Where the query names a format, the header says nothing.
 */
@ApplicationScoped
public class AcceptRanges {
    private static final int AFTER_THE_GATE = 100;
    private static final String ALL = "*/";
    private static final String ANY = "/*";
    private static final Pattern FORMAT = Pattern.compile("(^|&)" + Format.PARAMETER + "=[^&]");
    private static final Pattern WEIGHT = Pattern.compile("[qQ]=[01](\\.[0-9]{0,3})?");

    private final Endpoints endpoints;

    AcceptRanges(Endpoints endpoints) {
        this.endpoints = endpoints;
    }

    void register(@Observes Filters filters) {
        filters.register(this::spellOut, AFTER_THE_GATE);
    }

    private void spellOut(RoutingContext exchange) {
        HttpServerRequest request = exchange.request();
        String accepted = request.getHeader(HttpHeaders.ACCEPT);
        if (accepted != null && (isOdd(accepted) || hasFormat(request))) {
            String spelt =
                    hasFormat(request) ? "" : spellOut(accepted, endpoints.producedAt(exchange.normalizedPath()));
            if (spelt.isEmpty()) {
                // Nothing is asked for: as good as no header, of which the framework makes a fault.
                request.headers().remove(HttpHeaders.ACCEPT);
            } else {
                request.headers().set(HttpHeaders.ACCEPT, spelt);
            }
        }
        exchange.next();
    }

    /** Whether there is anything to do; what most callers send is left alone. */
    private static boolean isOdd(String accepted) {
        return accepted.isBlank()
                || accepted.contains(";")
                || accepted.contains(Problem.MEDIA_TYPE)
                || (accepted.contains(ANY) && !accepted.equals("*/*"));
    }

    private static boolean hasFormat(HttpServerRequest request) {
        return request.query() != null && FORMAT.matcher(request.query()).find();
    }

    /** The header with every range replaced; one that no type is in stays, and is refused as it was sent. */
    public static String spellOut(String accepted, List<String> types) {
        return Arrays.stream(accepted.split(","))
                .flatMap(each -> spelt(each.strip(), types))
                .collect(Collectors.joining(", "));
    }

    private static Stream<String> spelt(String each, List<String> types) {
        String[] parts = each.split(";", -1);
        String range = parts[0].strip();
        String weight = Arrays.stream(parts)
                .skip(1)
                .map(String::strip)
                .filter(part -> WEIGHT.matcher(part).matches())
                .findFirst()
                .map(part -> ";" + part)
                .orElse("");
        if (range.isEmpty() || range.equals(Problem.MEDIA_TYPE)) {
            return Stream.empty();
        }
        if (!range.endsWith(ANY) || range.startsWith(ALL)) {
            return Stream.of(range + weight);
        }
        String family = range.substring(0, range.length() - 1);
        List<String> within = types.stream()
                .filter(type -> type.startsWith(family))
                .map(type -> type + weight)
                .toList();
        return within.isEmpty() ? Stream.of(range + weight) : within.stream();
    }
}
