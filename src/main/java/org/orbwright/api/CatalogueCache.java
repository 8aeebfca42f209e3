package org.orbwright.api;

import jakarta.ws.rs.container.ContainerRequestContext;
import jakarta.ws.rs.container.ContainerResponseContext;
import jakarta.ws.rs.container.ResourceInfo;
import jakarta.ws.rs.core.CacheControl;
import jakarta.ws.rs.core.EntityTag;
import jakarta.ws.rs.core.HttpHeaders;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.zip.CRC32C;
import org.jboss.resteasy.reactive.server.ServerResponseFilter;

/**
 * Lets caches keep what changes only with the service itself: the lists of solids, designs and woods, with the pictures
 * of solids, here, and the answers to spreadsheets ({@link CellAnswer}). Whoever has an answer already is told so
 * without a body.
 */
public class CatalogueCache {
    /** An hour is long for a shop's day and short for an upgrade. */
    private static final int FRESH_SECONDS = 3600;

    private static final Pattern TAG = Pattern.compile("\"([^\"]*)\"");
    private static final Set<Class<?>> CATALOGUE =
            Set.of(SolidsResource.class, DesignsResource.class, WoodsResource.class);

    /** Adds tag and age to what is read from the catalogue. */
    @ServerResponseFilter
    public void keep(ResourceInfo found, ContainerRequestContext request, ContainerResponseContext answer) {
        if (answer.getStatus() != 200
                || !List.of("GET", "HEAD").contains(request.getMethod())
                || found.getResourceClass() == null
                || !CATALOGUE.contains(found.getResourceClass())) {
            return;
        }
        EntityTag tag = tag(bytes(answer.getEntity()));
        answer.getHeaders().putSingle(HttpHeaders.ETAG, tag);
        answer.getHeaders().putSingle(HttpHeaders.CACHE_CONTROL, control());
        // A cache must not hand a packed answer to a caller that cannot unpack it.
        answer.getHeaders().add(HttpHeaders.VARY, HttpHeaders.ACCEPT_ENCODING);
        List<String> known = request.getHeaders().get(HttpHeaders.IF_NONE_MATCH);
        if (known != null && isKnown(tag, known)) {
            answer.setStatus(304);
            answer.setEntity(null);
        }
    }

    private static byte[] bytes(Object answer) {
        if (answer instanceof Record part) {
            return RecordWriter.toJson(part);
        }
        return answer instanceof byte[] file ? file : answer.toString().getBytes(StandardCharsets.UTF_8);
    }

    /** The tag of an answer. */
    static EntityTag tag(byte[] answer) {
        CRC32C sum = new CRC32C();
        sum.update(answer);
        return new EntityTag(Long.toHexString(sum.getValue()) + "-" + answer.length);
    }

    /** How long an answer may be kept. */
    static CacheControl control() {
        CacheControl cache = new CacheControl();
        cache.setNoTransform(false);
        cache.setMaxAge(FRESH_SECONDS);
        return cache;
    }

    /** Whether the caller has the answer: caches that compress it make its tag weak (RFC 9110, 13.1.2). */
    static boolean isKnown(EntityTag tag, List<String> known) {
        return known.stream()
                .anyMatch(each -> each.strip().equals("*")
                        || TAG.matcher(each)
                                .results()
                                .anyMatch(found -> found.group(1).equals(tag.getValue())));
    }
}
