package org.orbwright.api.wire;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonParser;
import java.io.IOException;
import java.io.StringWriter;

/** JSON for people. */
public final class IndentedJson {
    private IndentedJson() {}

    /** Sets JSON out in lines, every number as it stands. */
    public static String of(String json) throws IOException {
        StringWriter text = new StringWriter();
        JsonFactory factory = new JsonFactory();
        try (JsonParser parser = factory.createParser(json);
                JsonGenerator generator = factory.createGenerator(text).useDefaultPrettyPrinter()) {
            while (parser.nextToken() != null) {
                generator.copyCurrentEventExact(parser);
            }
        }
        return text.toString();
    }
}
