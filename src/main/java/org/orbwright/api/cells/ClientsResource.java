package org.orbwright.api.cells;

import jakarta.validation.Validator;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.enums.SchemaType;
import org.eclipse.microprofile.openapi.annotations.media.Content;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponse;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import org.orbwright.workbook.Contents;
import org.orbwright.workbook.Workbook;

/** Hands out the workbook, which asks the very service that it was fetched from. */
@Path("/clients")
@Tag(name = "Clients", description = "Files for the programs of a shop.")
public class ClientsResource {
    private static final String BINARY = "binary";

    private final Validator validator;
    /** What the cells of the design that the workbook starts with are answered, by their names and queries. */
    private final Map<String, String> answers = new ConcurrentHashMap<>();

    ClientsResource(Validator validator) {
        this.validator = validator;
    }

    @GET
    @Path("/workbook.ods")
    @Produces(Workbook.OPEN_DOCUMENT_TYPE)
    @Operation(
            operationId = "fetchOpenDocumentWorkbook",
            summary = "The workbook as an OpenDocument spreadsheet",
            description =
                    "A design to fill in, the numbers that the service answers, and what is left of the bands with"
                            + " a chart. Its cells ask the service that it was fetched from; the spreadsheet"
                            + " has to be allowed"
                            + " to fetch.")
    @APIResponse(
            responseCode = "200",
            description = "The workbook.",
            content =
                    @Content(
                            mediaType = Workbook.OPEN_DOCUMENT_TYPE,
                            schema = @Schema(type = SchemaType.STRING, format = BINARY)))
    public Response openDocument(@Context UriInfo address) {
        return file(Workbook.OPEN_DOCUMENT, address);
    }

    @GET
    @Path("/workbook.xlsx")
    @Produces(Workbook.OFFICE_OPEN_TYPE)
    @Operation(
            operationId = "fetchOfficeOpenWorkbook",
            summary = "The workbook as Office Open XML",
            description = "The same workbook for programs that do not read OpenDocument.")
    @APIResponse(
            responseCode = "200",
            description = "The workbook.",
            content =
                    @Content(
                            mediaType = Workbook.OFFICE_OPEN_TYPE,
                            schema = @Schema(type = SchemaType.STRING, format = BINARY)))
    public Response officeOpen(@Context UriInfo address) {
        return file(Workbook.OFFICE_OPEN, address);
    }

    private Response file(Workbook workbook, UriInfo address) {
        String service = address.getBaseUri().toString().replaceAll("/+$", "");
        Contents contents = new Contents(service, asked -> answers.computeIfAbsent(asked, this::answer));
        return Response.ok(workbook.write(contents))
                .header(HttpHeaders.CONTENT_DISPOSITION, "attachment; filename=\"" + workbook.file() + "\"")
                .build();
    }

    private String answer(String asked) {
        String[] cell = asked.split("\\?", 2);
        return CellAnswer.shown(cell[0], cell[1], validator);
    }
}
