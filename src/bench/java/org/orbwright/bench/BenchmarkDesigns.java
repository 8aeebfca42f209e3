package org.orbwright.bench;

import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.MapperFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import org.orbwright.document.Document;

/** Reads worked examples for benchmarks. */
public final class BenchmarkDesigns {
    private static final JsonMapper MAPPER = JsonMapper.builder()
            .enable(MapperFeature.ACCEPT_CASE_INSENSITIVE_ENUMS)
            .enable(DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES)
            .build();

    private BenchmarkDesigns() {}

    /** A worked document by its name. */
    public static Document read(String name) {
        try (InputStream in = Document.class.getResourceAsStream("/designs/" + name + ".json")) {
            return MAPPER.readValue(in, Document.class);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
