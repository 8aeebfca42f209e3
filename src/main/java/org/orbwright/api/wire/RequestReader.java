package org.orbwright.api.wire;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import jakarta.validation.Validator;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.ext.Provider;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.lang.annotation.Annotation;
import java.lang.reflect.Type;
import java.util.ArrayList;
import java.util.List;
import org.jboss.resteasy.reactive.server.core.ResteasyReactiveRequestContext;
import org.jboss.resteasy.reactive.server.spi.ResteasyReactiveResourceInfo;
import org.jboss.resteasy.reactive.server.spi.ServerMessageBodyReader;
import org.jboss.resteasy.reactive.server.spi.ServerRequestContext;
import org.orbwright.design.Violation;
import org.orbwright.document.Document;

/**
 * Reads the document in a request's body, and hands it over only if it keeps every rule of the contract: resources need
 * no validation of their own. It is used for requests and for nothing else.
 */
@Provider
@Consumes(MediaType.APPLICATION_JSON)
public class RequestReader implements ServerMessageBodyReader<Document> {
    private static final JsonFactory JSON = JsonFactory.builder()
            .streamReadConstraints(StreamReadConstraints.builder()
                    .maxNestingDepth(JsonLimit.LEVELS.most())
                    .maxNumberLength(JsonLimit.NUMBER.most())
                    .maxStringLength(JsonLimit.TEXT.most())
                    .maxNameLength(JsonLimit.NAME.most())
                    .build())
            .build();

    /** The property of a request under which the document is left for its answer. */
    public static final String DOCUMENT = "orbwright.document";

    private final Validator validator;
    private final DesignMetrics metrics;

    RequestReader(Validator validator, DesignMetrics metrics) {
        this.validator = validator;
        this.metrics = metrics;
    }

    @Override
    public boolean isReadable(Class<?> type, Type genericType, ResteasyReactiveResourceInfo method, MediaType media) {
        return type == Document.class;
    }

    @Override
    public boolean isReadable(Class<?> type, Type genericType, Annotation[] annotations, MediaType media) {
        return type == Document.class;
    }

    @Override
    public Document readFrom(Class<Document> type, Type genericType, MediaType media, ServerRequestContext context) {
        Document document = readBody(context.getInputStream());
        ((ResteasyReactiveRequestContext) context).setProperty(DOCUMENT, document);
        return document;
    }

    @Override
    public Document readFrom(
            Class<Document> type,
            Type genericType,
            Annotation[] annotations,
            MediaType media,
            MultivaluedMap<String, String> headers,
            InputStream body) {
        return readBody(body);
    }

    /** Bodies were collected, and held to the limits, before. */
    private Document readBody(InputStream body) {
        try {
            return readCounted(body.readAllBytes());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The refusal of a body, or a line of a batch, that is too long. */
    public static RequestException tooLarge(String what, int most) {
        String detail = what + " has more than " + most + " bytes, which is the most that is accepted.";
        return new RequestException(ProblemKind.BODY_TOO_LARGE, detail, List.of());
    }

    /** The document of a caller, which is measured. */
    public Document readCounted(byte[] body) {
        Document document = read(body);
        metrics.count(body.length, document);
        return document;
    }

    /** The document that the bytes hold, which keeps every rule of the contract. */
    public Document read(byte[] body) {
        List<Violation> broken = new ArrayList<>();
        Document document = parse(body, broken);
        if (document != null) {
            BeanRules.addBroken(validator.validate(document), broken);
        }
        if (!broken.isEmpty()) {
            throw RequestException.invalid(BeanRules.inOrder(broken));
        }
        return document;
    }

    /** The document as far as it can be read, or null if the body is no object at all. */
    private static Document parse(byte[] body, List<Violation> broken) {
        try (JsonParser json = JSON.createParser(body)) {
            try {
                Document document = read(json, broken);
                requireEnd(json, body);
                return document;
            } catch (StreamConstraintsException e) {
                throw UnreadableJson.beyondLimits(body, json, e);
            } catch (JsonProcessingException e) {
                throw UnreadableJson.malformed(body, e.getLocation());
            }
        } catch (IOException e) {
            // A body that is not Unicode ends here; reading from memory cannot fail otherwise.
            throw UnreadableJson.malformed(body, null);
        }
    }

    private static Document read(JsonParser json, List<Violation> broken) throws IOException {
        JsonToken first = json.nextToken();
        if (first == null) {
            throw UnreadableJson.empty();
        }
        if (first == JsonToken.START_OBJECT) {
            return RecordReader.read(Document.class, json, broken);
        }
        broken.add(RecordReader.wrongType("an object", json, "an object"));
        json.skipChildren();
        return null;
    }

    private static void requireEnd(JsonParser json, byte[] body) throws IOException {
        try {
            if (json.nextToken() == null) {
                return;
            }
        } catch (JsonProcessingException e) {
            throw UnreadableJson.trailing(body, e.getLocation());
        }
        throw UnreadableJson.trailing(body, json.currentTokenLocation());
    }
}
