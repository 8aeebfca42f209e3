package org.orbwright.api.guard;

import jakarta.ws.rs.container.ContainerRequestContext;
import jakarta.ws.rs.container.ContainerResponseContext;
import jakarta.ws.rs.container.ResourceInfo;
import jakarta.ws.rs.core.EntityTag;
import jakarta.ws.rs.core.HttpHeaders;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.jboss.resteasy.reactive.server.ServerResponseFilter;
import org.orbwright.api.wire.AnswerJson;
import org.orbwright.api.wire.CacheTag;

/** Lets caches keep the answers of {@link Kept} resources. Whoever has an answer already is told so without a body. */
public class KeptAnswers {
    /** Adds tag and age to what is read from the catalogue. */
    @ServerResponseFilter
    public void keep(ResourceInfo found, ContainerRequestContext request, ContainerResponseContext answer) {
        if (answer.getStatus() != 200
                || !List.of("GET", "HEAD").contains(request.getMethod())
                || found.getResourceClass() == null
                || !found.getResourceClass().isAnnotationPresent(Kept.class)) {
            return;
        }
        EntityTag tag = CacheTag.of(bytes(answer.getEntity()));
        answer.getHeaders().putSingle(HttpHeaders.ETAG, tag);
        answer.getHeaders().putSingle(HttpHeaders.CACHE_CONTROL, CacheTag.control());
        // A cache must not hand a packed answer to a caller that cannot unpack it.
        answer.getHeaders().add(HttpHeaders.VARY, HttpHeaders.ACCEPT_ENCODING);
        List<String> known = request.getHeaders().get(HttpHeaders.IF_NONE_MATCH);
        if (known != null && CacheTag.isKnown(tag, known)) {
            answer.setStatus(304);
            answer.setEntity(null);
        }
    }

    private static byte[] bytes(Object answer) {
        if (answer instanceof Record part) {
            return AnswerJson.write(part);
        }
        return answer instanceof byte[] file ? file : answer.toString().getBytes(StandardCharsets.UTF_8);
    }
}
