package org.orbwright.api;

import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.enums.SchemaType;
import org.eclipse.microprofile.openapi.annotations.media.Content;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponse;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import org.orbwright.workbook.Book;
import org.orbwright.workbook.DesignBook;
import org.orbwright.workbook.OfficeOpenWriter;
import org.orbwright.workbook.OpenDocumentWriter;

/** Hands out the workbook, which asks the very service that it was fetched from. */
@Path("/clients")
@Tag(name = "Clients", description = "Files for the programs of a shop.")
public class ClientsResource {
    private static final String BINARY = "binary";

    @GET
    @Path("/workbook.ods")
    @Produces(OpenDocumentWriter.MEDIA_TYPE)
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
                            mediaType = OpenDocumentWriter.MEDIA_TYPE,
                            schema = @Schema(type = SchemaType.STRING, format = BINARY)))
    public Response openDocument(@Context UriInfo address) {
        return file("workbook.ods", OpenDocumentWriter.write(book(address)));
    }

    @GET
    @Path("/workbook.xlsx")
    @Produces(OfficeOpenWriter.MEDIA_TYPE)
    @Operation(
            operationId = "fetchOfficeOpenWorkbook",
            summary = "The workbook as Office Open XML",
            description = "The same workbook for programs that do not read OpenDocument.")
    @APIResponse(
            responseCode = "200",
            description = "The workbook.",
            content =
                    @Content(
                            mediaType = OfficeOpenWriter.MEDIA_TYPE,
                            schema = @Schema(type = SchemaType.STRING, format = BINARY)))
    public Response officeOpen(@Context UriInfo address) {
        return file("workbook.xlsx", OfficeOpenWriter.write(book(address)));
    }

    private static Book book(UriInfo address) {
        return DesignBook.of(address.getBaseUri().toString().replaceAll("/+$", ""));
    }

    private static Response file(String name, byte[] content) {
        return Response.ok(content)
                .header(HttpHeaders.CONTENT_DISPOSITION, "attachment; filename=\"" + name + "\"")
                .build();
    }
}
