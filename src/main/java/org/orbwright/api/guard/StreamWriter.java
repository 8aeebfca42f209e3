package org.orbwright.api.guard;

import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.inject.Instance;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import java.io.IOException;
import java.io.OutputStream;
import java.lang.annotation.Annotation;
import java.lang.reflect.Type;
import java.util.function.BooleanSupplier;
import org.jboss.resteasy.reactive.server.core.ResteasyReactiveRequestContext;
import org.jboss.resteasy.reactive.server.spi.ResteasyReactiveResourceInfo;
import org.jboss.resteasy.reactive.server.spi.ServerHttpResponse;
import org.jboss.resteasy.reactive.server.spi.ServerMessageBodyWriter;
import org.jboss.resteasy.reactive.server.spi.ServerRequestContext;
import org.orbwright.api.wire.Limits;

/**
 * Writes an answer line by line as it is computed. The stream blocks while the caller does not read, so that memory
 * stays bounded, and fails when the caller is gone, which ends the work. Only so many are written at once.
 */
public abstract class StreamWriter<T> implements ServerMessageBodyWriter<T> {
    private final Class<T> written;

    /** Asked for when it is needed: writers are made before the configuration can be read. */
    private final Instance<Limits> limits;

    private final Instance<WorkPermits> permits;

    public StreamWriter(Class<T> written, Instance<Limits> limits, Instance<WorkPermits> permits) {
        this.written = written;
        this.limits = limits;
        this.permits = permits;
    }

    /**
     * Writes all lines.
     *
     * @param left whether the caller has left; fails when the answer takes too long
     */
    public abstract void write(T answer, MediaType media, OutputStream body, BooleanSupplier left) throws IOException;

    @Override
    public boolean isWriteable(Class<?> type, Type genericType, ResteasyReactiveResourceInfo method, MediaType media) {
        return type == written;
    }

    @Override
    public boolean isWriteable(Class<?> type, Type genericType, Annotation[] annotations, MediaType media) {
        return type == written;
    }

    @Override
    public void writeResponse(T answer, Type genericType, ServerRequestContext context) throws IOException {
        RoutingContext exchange = ((ResteasyReactiveRequestContext) context).unwrap(RoutingContext.class);
        Permits.Permit permit = permits.get().streams().take(AccessGate.callerOf(exchange));
        try {
            stream(answer, context);
        } finally {
            permit.close();
        }
    }

    private void stream(T answer, ServerRequestContext context) throws IOException {
        OutputStream body = context.getOrCreateOutputStream();
        ServerHttpResponse response = context.serverResponse();
        long end = System.nanoTime() + limits.get().streamTime().toNanos();
        try {
            write(answer, context.getResponseContentType().getMediaType(), body, () -> {
                if (System.nanoTime() > end) {
                    throw new IllegalStateException(
                            "an answer took longer than " + limits.get().streamTime());
                }
                return response.closed();
            });
            body.close();
        } catch (IOException e) {
            // A caller that leaves in the middle of the lines is no fault of the service.
            if (!response.closed()) {
                throw e;
            }
        }
    }

    @Override
    public void writeTo(
            T answer,
            Class<?> type,
            Type genericType,
            Annotation[] annotations,
            MediaType media,
            MultivaluedMap<String, Object> headers,
            OutputStream body)
            throws IOException {
        write(answer, media, body, () -> false);
    }
}
