package org.orbwright.api;

import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import java.io.InputStream;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.enums.SchemaType;
import org.eclipse.microprofile.openapi.annotations.media.Content;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.eclipse.microprofile.openapi.annotations.parameters.Parameter;
import org.eclipse.microprofile.openapi.annotations.parameters.RequestBody;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponse;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import org.orbwright.api.query.Format;
import org.orbwright.api.query.Query;
import org.orbwright.api.query.Stations;
import org.orbwright.api.wire.CallerInput;
import org.orbwright.api.wire.Limits;
import org.orbwright.api.wire.RequestReader;
import org.orbwright.document.Document;
import org.orbwright.sheet.Answer;
import org.orbwright.sheet.SheetCalculator;

/** Answers many designs in one request, as they come in. */
@Path(BatchResource.PATH)
@Consumes(Format.NDJSON_TYPE)
@Produces(Format.NDJSON_TYPE)
@Tag(name = "Batch", description = "Many designs at once, line by line.")
public class BatchResource {
    static final String PATH = "/v1/batch";

    private static final int STATIONS = Stations.parse(null);
    /** What can be answered to a document, by name. */
    public static final Map<String, Function<Document, Answer>> PARTS = new LinkedHashMap<>();

    static {
        PARTS.put("sheet", document -> SheetCalculator.sheet(document, STATIONS));
        PARTS.put("angles", SheetCalculator::angles);
        PARTS.put("segments", SheetCalculator::segments);
        PARTS.put("yield", SheetCalculator::yields);
        PARTS.put("sphere", SheetCalculator::sphere);
        PARTS.put("bands", document -> SheetCalculator.bands(document, STATIONS));
    }

    private final RequestReader reader;
    private final Limits limits;

    BatchResource(RequestReader reader, Limits limits) {
        this.reader = reader;
        this.limits = limits;
    }

    @POST
    @Operation(
            operationId = "answerBatch",
            summary = "Many designs, a line each",
            description = "A document a line comes in, and a line goes out for each in the same order, as soon as it is"
                    + " known: {\"line\":1,\"sheet\":{...}} or {\"line\":2,\"problem\":{...}}. A wrong line"
                    + " does not stop"
                    + " the rest; an empty one is skipped. Read the answer while you send: the service takes lines only"
                    + " as fast as its answers are taken.")
    @RequestBody(content = @Content(mediaType = Format.NDJSON_TYPE, schema = @Schema(type = SchemaType.STRING)))
    @APIResponse(
            responseCode = "200",
            description = "The answers.",
            content = @Content(mediaType = Format.NDJSON_TYPE, schema = @Schema(type = SchemaType.STRING)))
    public Batch batch(
            InputStream lines,
            @Parameter(
                            description = "What is answered to each document: sheet, angles, segments, yield, sphere or"
                                    + " bands; sheet if left out.",
                            example = "sheet")
                    @QueryParam("answer")
                    String answer) {
        String part = Query.name("answer", answer, List.copyOf(PARTS.keySet()));
        return new Batch(new CallerInput(lines), reader, limits, limits.batch(), part, PARTS.get(part));
    }
}
