package org.orbwright.api.wire;

import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.ext.Provider;
import java.io.IOException;
import java.io.OutputStream;
import java.lang.annotation.Annotation;
import java.lang.reflect.Type;
import org.jboss.resteasy.reactive.server.spi.ResteasyReactiveResourceInfo;
import org.jboss.resteasy.reactive.server.spi.ServerMessageBodyWriter;
import org.jboss.resteasy.reactive.server.spi.ServerRequestContext;

/** Writes every answer and every problem: records whose components carry descriptions. */
@Provider
@Produces({MediaType.APPLICATION_JSON, Problem.MEDIA_TYPE})
public class AnswerWriter implements ServerMessageBodyWriter<Record> {

    @Override
    public boolean isWriteable(Class<?> type, Type genericType, ResteasyReactiveResourceInfo method, MediaType media) {
        return type.isRecord();
    }

    @Override
    public boolean isWriteable(Class<?> type, Type genericType, Annotation[] annotations, MediaType media) {
        return type.isRecord();
    }

    @Override
    public void writeResponse(Record answer, Type genericType, ServerRequestContext context) {
        context.serverResponse().end(AnswerJson.write(answer));
    }

    @Override
    public void writeTo(
            Record answer,
            Class<?> type,
            Type genericType,
            Annotation[] annotations,
            MediaType media,
            MultivaluedMap<String, Object> headers,
            OutputStream body)
            throws IOException {
        body.write(AnswerJson.write(answer));
    }
}
