package org.orbwright.api;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import com.fasterxml.jackson.core.io.JsonEOFException;
import jakarta.validation.Validator;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.ext.Provider;
import java.io.IOException;
import java.io.InputStream;
import java.lang.annotation.Annotation;
import java.lang.reflect.Type;
import java.util.ArrayList;
import java.util.List;
import org.jboss.resteasy.reactive.server.spi.ResteasyReactiveResourceInfo;
import org.jboss.resteasy.reactive.server.spi.ServerMessageBodyReader;
import org.jboss.resteasy.reactive.server.spi.ServerRequestContext;
import org.orbwright.design.DesignRequest;
import org.orbwright.design.Violation;

/**
 * Reads a design from a request's body, and hands it over only if it keeps every rule of the contract: resources need
 * no validation of their own. It is used for requests and for nothing else.
 */
@Provider
@Consumes(MediaType.APPLICATION_JSON)
public class DesignReader implements ServerMessageBodyReader<DesignRequest> {
    private static final int MOST_LEVELS = 64;
    private static final int LONGEST_NUMBER = 64;
    private static final int LONGEST_TEXT = 100_000;
    private static final int LONGEST_NAME = 256;

    private static final JsonFactory JSON = JsonFactory.builder()
            .streamReadConstraints(StreamReadConstraints.builder()
                    .maxNestingDepth(MOST_LEVELS)
                    .maxNumberLength(LONGEST_NUMBER)
                    .maxStringLength(LONGEST_TEXT)
                    .maxNameLength(LONGEST_NAME)
                    .build())
            .build();

    private final Validator validator;

    DesignReader(Validator validator) {
        this.validator = validator;
    }

    @Override
    public boolean isReadable(Class<?> type, Type genericType, ResteasyReactiveResourceInfo method, MediaType media) {
        return type == DesignRequest.class;
    }

    @Override
    public boolean isReadable(Class<?> type, Type genericType, Annotation[] annotations, MediaType media) {
        return type == DesignRequest.class;
    }

    @Override
    public DesignRequest readFrom(
            Class<DesignRequest> type, Type genericType, MediaType media, ServerRequestContext context)
            throws IOException {
        return read(context.getInputStream().readAllBytes());
    }

    @Override
    public DesignRequest readFrom(
            Class<DesignRequest> type,
            Type genericType,
            Annotation[] annotations,
            MediaType media,
            MultivaluedMap<String, String> headers,
            InputStream body)
            throws IOException {
        return read(body.readAllBytes());
    }

    private DesignRequest read(byte[] body) {
        List<Violation> broken = new ArrayList<>();
        DesignRequest request = parse(body, broken);
        if (request != null) {
            BeanRules.addBroken(validator.validate(request), broken);
        }
        if (!broken.isEmpty()) {
            throw RequestException.invalid(BeanRules.inOrder(broken));
        }
        return request;
    }

    /** The design as far as it can be read, or null if the body is no object at all. */
    private static DesignRequest parse(byte[] body, List<Violation> broken) {
        try (JsonParser json = JSON.createParser(body)) {
            JsonToken first = json.nextToken();
            if (first == null) {
                throw UnreadableJson.empty();
            }
            DesignRequest request = null;
            if (first == JsonToken.START_OBJECT) {
                request = RecordReader.read(DesignRequest.class, json, broken);
            } else {
                broken.add(RecordReader.wrongType("an object", json, "an object"));
                json.skipChildren();
            }
            if (json.nextToken() != null) {
                throw UnreadableJson.trailing(body, json.currentTokenLocation());
            }
            return request;
        } catch (StreamConstraintsException e) {
            throw UnreadableJson.beyondLimits(body, e.getLocation(), MOST_LEVELS, LONGEST_NUMBER, LONGEST_TEXT);
        } catch (JsonEOFException e) {
            throw UnreadableJson.endsEarly(body, e.getLocation());
        } catch (JsonProcessingException e) {
            throw UnreadableJson.malformed(body, e.getLocation());
        } catch (IOException e) {
            // A body that is not Unicode ends here; reading from memory cannot fail otherwise.
            throw UnreadableJson.malformed(body, null);
        }
    }
}
