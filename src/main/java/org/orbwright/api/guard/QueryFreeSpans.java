package org.orbwright.api.guard;

import io.opentelemetry.context.Context;
import io.opentelemetry.sdk.trace.ReadWriteSpan;
import io.opentelemetry.sdk.trace.ReadableSpan;
import io.opentelemetry.sdk.trace.SpanProcessor;
import io.opentelemetry.semconv.UrlAttributes;
import jakarta.enterprise.context.ApplicationScoped;

/** Takes queries out of traces: those of cells hold whole designs, which are nobody's but the caller's. */
@ApplicationScoped
public class QueryFreeSpans implements SpanProcessor {
    /** What stands in a trace for a query. */
    public static final String LEFT_OUT = "(left out)";

    @Override
    public void onStart(Context parent, ReadWriteSpan span) {
        if (span.getAttribute(UrlAttributes.URL_QUERY) != null) {
            // A span's attributes can be written over, but not removed.
            span.setAttribute(UrlAttributes.URL_QUERY, LEFT_OUT);
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
