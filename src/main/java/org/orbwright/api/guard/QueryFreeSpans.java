package org.orbwright.api.guard;

import io.opentelemetry.api.common.AttributeKey;
import io.opentelemetry.api.common.AttributeType;
import io.opentelemetry.api.trace.SpanKind;
import io.opentelemetry.context.Context;
import io.opentelemetry.sdk.trace.ReadWriteSpan;
import io.opentelemetry.sdk.trace.ReadableSpan;
import io.opentelemetry.sdk.trace.SpanProcessor;
import io.opentelemetry.semconv.HttpAttributes;
import io.opentelemetry.semconv.NetworkAttributes;
import io.opentelemetry.semconv.UrlAttributes;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.Set;

/**
 * Takes out of traces whatever a caller makes up. Queries of cells hold whole designs, which are nobody's but the
 * caller's. An address is told by its pattern. Of the rest only those texts stay that the service itself states:
 * headers, such as the name of a program or of a host, are left out. What goes wrong is no event of a trace either
 * (quarkus.otel.span.event.count.limit): a refusal repeats values of the design.
 */
@ApplicationScoped
public class QueryFreeSpans implements SpanProcessor {
    /** What stands in a trace for what is the caller's. */
    public static final String LEFT_OUT = "(left out)";

    private static final Set<AttributeKey<String>> OWN = Set.of(
            HttpAttributes.HTTP_REQUEST_METHOD,
            HttpAttributes.HTTP_ROUTE,
            NetworkAttributes.NETWORK_PEER_ADDRESS,
            NetworkAttributes.NETWORK_PROTOCOL_NAME,
            NetworkAttributes.NETWORK_PROTOCOL_VERSION,
            UrlAttributes.URL_SCHEME);

    private final Endpoints endpoints;

    QueryFreeSpans(Endpoints endpoints) {
        this.endpoints = endpoints;
    }

    /** A span's attributes can be written over, but not removed. */
    @Override
    public void onStart(Context parent, ReadWriteSpan span) {
        if (span.getKind() == SpanKind.SERVER) {
            span.toSpanData().getAttributes().forEach((key, value) -> {
                if (key.getKey().equals(UrlAttributes.URL_PATH.getKey())) {
                    span.setAttribute(
                            UrlAttributes.URL_PATH,
                            endpoints.templateAt(value.toString()).orElse(LEFT_OUT));
                } else if (key.getType() == AttributeType.STRING && !OWN.contains(key)) {
                    span.setAttribute(key.getKey(), LEFT_OUT);
                }
            });
        }
    }

    @Override
    public boolean isStartRequired() {
        return true;
    }

    @Override
    public void onEnd(ReadableSpan span) {
        // Nothing is to be done by then.
    }

    @Override
    public boolean isEndRequired() {
        return false;
    }
}
