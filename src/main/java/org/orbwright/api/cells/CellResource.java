package org.orbwright.api.cells;

import io.vertx.core.http.HttpServerRequest;
import jakarta.validation.Validator;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Request;
import jakarta.ws.rs.core.Response;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.enums.SchemaType;
import org.eclipse.microprofile.openapi.annotations.media.Content;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.eclipse.microprofile.openapi.annotations.parameters.Parameter;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponse;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import org.orbwright.api.query.Query;
import org.orbwright.api.query.SetQuery;
import org.orbwright.api.wire.Csv;
import org.orbwright.api.wire.RequestException;
import org.orbwright.cell.Cell;
import org.orbwright.cell.CellTable;
import org.orbwright.cell.Inputs;
import org.orbwright.design.BandSet;
import org.orbwright.document.Document;
import org.orbwright.quantity.Describe;

/** Answers what a spreadsheet's functions can take: one value as plain text, or one table. */
@Path("/v1")
@Tag(
        name = "Cells",
        description = "Single values and tables for spreadsheets. The design is written in the query; what a value does"
                + " not depend on may be left out, and a parameter without a text counts as left out. Lengths may be"
                + " written as 79.4, 79,4, 3 1/8, 3-1/8in or 79.4mm. Answers have a decimal point whatever the"
                + " spreadsheet's language is, and may be kept by caches. A value has no room for a STOP: ask for the"
                + " values severity and finding of the same design beside it. Tables tell every STOP.")
public class CellResource {
    /** What the parameter of the form means. */
    public static final String FORMAT = "csv or xml; without it the header Accept decides, and csv if that does not.";

    private final Validator validator;

    CellResource(Validator validator) {
        this.validator = validator;
    }

    @GET
    @Path("/cell")
    @Produces(MediaType.APPLICATION_JSON)
    @Operation(
            operationId = "listCells",
            summary = "The values and tables that a spreadsheet may ask for",
            description = "Every name that may stand behind /v1/cell/ and /v1/table/, with what it is and with the"
                    + " parameters that it depends on and is chosen by.")
    public CellList cells() {
        return CellList.ALL;
    }

    @GET
    @Path("/cell/{cell}")
    @Produces(MediaType.TEXT_PLAIN)
    @Operation(
            operationId = "readCell",
            summary = "One value of a design's sheet, as plain text",
            description = "A number with a decimal point, or a word; nothing where there is nothing to say, such as the"
                    + " gravest finding of a design without one. In a spreadsheet:"
                    + " =WEBSERVICE(\"http://localhost:8080/v1/cell/blade-tilt?solid=icosahedron\").")
    @APIResponse(
            responseCode = "200",
            description = "The value.",
            content = @Content(mediaType = MediaType.TEXT_PLAIN, schema = @Schema(type = SchemaType.STRING)))
    public Response cell(
            @Parameter(
                            description = "Name of the value (GET /v1/cell).",
                            example = "blade-tilt",
                            schema = @Schema(type = SchemaType.STRING, minLength = 1, maxLength = 60))
                    @PathParam("cell")
                    String cell,
            @Context HttpServerRequest request) {
        return CellAnswer.value(cell, request, validator);
    }

    @GET
    @Path("/table/{table}")
    @Produces({Csv.MEDIA_TYPE, CellTableWriter.XML})
    @Operation(
            operationId = "readTable",
            summary = "One table of a design's sheet",
            description = "Rows of plain values, as comma separated values or as XML. In XML every value is an element"
                    + " named as its column, inside row, inside table: //row[1]/survival."
                    + Csv.STOP_LINES
                    + " In XML each STOP is an element before the rows: //stop is its text, //stop/@code its code.")
    @APIResponse(
            responseCode = "200",
            description = "The table.",
            content = {
                @Content(mediaType = Csv.MEDIA_TYPE, schema = @Schema(type = SchemaType.STRING)),
                @Content(mediaType = CellTableWriter.XML, schema = @Schema(type = SchemaType.STRING))
            })
    public Response table(
            @Parameter(
                            description = "Name of the table (GET /v1/cell).",
                            example = "bands",
                            schema = @Schema(type = SchemaType.STRING, minLength = 1, maxLength = 60))
                    @PathParam("table")
                    String table,
            @Context HttpServerRequest request,
            @Context Request accepted) {
        return CellAnswer.table(table, request, accepted, validator);
    }

    @POST
    @Path("/table/{table}")
    @Consumes(MediaType.APPLICATION_JSON)
    @Produces({Csv.MEDIA_TYPE, CellTableWriter.XML})
    @Operation(
            operationId = "makeTable",
            summary = "One table of the sheet of a whole design",
            description = "The same tables for a design that is posted, for macros that would rather not read JSON."
                    + Csv.STOP_LINES)
    @APIResponse(
            responseCode = "200",
            description = "The table.",
            content = {
                @Content(mediaType = Csv.MEDIA_TYPE, schema = @Schema(type = SchemaType.STRING)),
                @Content(mediaType = CellTableWriter.XML, schema = @Schema(type = SchemaType.STRING))
            })
    public Response table(
            Document document,
            @Parameter(
                            description = "Name of the table (GET /v1/cell).",
                            example = "bands",
                            schema = @Schema(type = SchemaType.STRING, minLength = 1, maxLength = 60))
                    @PathParam("table")
                    String table,
            @Parameter(description = FORMAT, example = "csv") @QueryParam("format") String format,
            @Parameter(description = CellQuery.ERRORS_DESCRIPTION, example = "status") @QueryParam(CellQuery.ERRORS)
                    String errors,
            @Parameter(description = "The set of segments, UPRIGHT or INVERTED.", example = "UPRIGHT")
                    @QueryParam("set")
                    String set,
            @Context Request request) {
        CellTable known = CellAnswer.table(table);
        List<String> choices = Cell.choices(known.path());
        if (set != null && !choices.contains(org.orbwright.cell.Parameter.SET.text())) {
            throw RequestException.invalid(
                    List.of(CellQuery.choosesNothing(org.orbwright.cell.Parameter.SET, set, choices, table)));
        }
        Query.name(CellQuery.ERRORS, errors, List.of(CellQuery.BY_STATUS, CellQuery.AS_TEXT));
        BandSet wanted = Objects.requireNonNullElse(SetQuery.asked(set), BandSet.UPRIGHT);
        String type = CellTableWriter.type(format, request);
        SheetPath path = new SheetPath(Map.of("set", wanted.name()));
        return Response.ok(CellTableWriter.write(known, path, document, type), type + ";charset=UTF-8")
                .build();
    }

    /** What a spreadsheet may ask for. */
    @Describe("What a spreadsheet may ask for.")
    public record CellList(
            @Describe("The values, by /v1/cell/{name}.") List<CellName> cells,

            @Describe("The tables, by /v1/table/{name}.") List<CellName> tables,

            @Describe("The parameters of both.") List<ParameterName> parameters) {

        private static final CellList ALL = new CellList(
                Arrays.stream(Cell.values())
                        .map(cell -> CellName.of(cell.text(), cell.words(), cell.needs(), cell.path()))
                        .toList(),
                Arrays.stream(CellTable.values())
                        .map(table -> CellName.of(table.text(), table.words(), Inputs.DESIGN, table.path()))
                        .toList(),
                Arrays.stream(org.orbwright.cell.Parameter.values())
                        .map(parameter -> new ParameterName(parameter.text(), parameter.words(), parameter.example()))
                        .toList());
    }

    /** A value or a table. */
    @Describe("A value or a table.")
    public record CellName(
            @Describe(value = "Its name in the address.", example = "\"blade-tilt\"")
            String name,

            @Describe(value = "What it is.", example = "\"Tilt of the saw blade for the bevel, degrees.\"")
            String words,

            @Describe(value = "The parameters that it cannot do without.", example = "\"solid\"")
            String needs,

            @Describe(value = "The parameters that choose it; blank if there is only one.", example = "\"face\"")
            String chosenBy) {

        private static CellName of(String name, String words, Inputs needs, String path) {
            return new CellName(name, words, needs.words(), String.join(", ", Cell.choices(path)));
        }
    }

    /** A parameter. */
    @Describe("A parameter.")
    public record ParameterName(
            @Describe(value = "Its name in the query.", example = "\"kerf\"")
            String name,

            @Describe(value = "What it means.", example = "\"Width of the saw cut.\"")
            String words,

            @Describe(value = "A value that it may have.", example = "\"2.6\"")
            String example) {}
}
