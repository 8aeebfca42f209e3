package org.orbwright.api.cells;

import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.cfg.JsonNodeFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.io.UncheckedIOException;
import org.orbwright.api.query.Stations;
import org.orbwright.api.wire.AnswerJson;
import org.orbwright.document.Document;
import org.orbwright.sheet.Answer;
import org.orbwright.sheet.SheetCalculator;

/** A document's sheet as the JSON that {@code /v1/sheet} answers, to be looked into. */
public final class SheetJson {
    private static final ObjectMapper JSON = JsonMapper.builder()
            .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
            .disable(JsonNodeFeature.STRIP_TRAILING_BIGDECIMAL_ZEROES)
            .build();

    private SheetJson() {}

    /** A document's sheet. */
    public static Answer answer(Document document) {
        return SheetCalculator.sheet(document, Stations.parse(null));
    }

    /** A document's sheet as JSON. */
    public static JsonNode of(Document document) {
        return of(answer(document));
    }

    /** A sheet as JSON. */
    public static JsonNode of(Answer sheet) {
        try {
            return JSON.readTree(AnswerJson.write(sheet));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
