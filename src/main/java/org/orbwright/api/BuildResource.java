package org.orbwright.api;

import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Request;
import jakarta.ws.rs.core.Response;
import java.util.List;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.enums.SchemaType;
import org.eclipse.microprofile.openapi.annotations.media.Content;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.eclipse.microprofile.openapi.annotations.parameters.Parameter;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponse;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import org.orbwright.api.guard.Heavy;
import org.orbwright.api.query.Format;
import org.orbwright.api.query.Query;
import org.orbwright.api.query.Stations;
import org.orbwright.document.Document;
import org.orbwright.sheet.Answer;
import org.orbwright.sheet.SheetCalculator;

/** A whole build, as one answer or as files. */
@Path("/v1/build")
@Consumes(MediaType.APPLICATION_JSON)
@Produces({MediaType.APPLICATION_JSON, Format.ZIP_TYPE})
@Tag(name = "Design")
@Heavy
public class BuildResource {
    private static final List<Format> FORMS = List.of(Format.JSON, Format.ZIP);

    @POST
    @Operation(
            operationId = "answerBuild",
            summary = "A whole build at once",
            description =
                    "Any build has the sheet, the set-ups of the saw, the gluing and the work on the lathe. It has"
                            + " every other part that the document has a section for. All findings stand in the order"
                            + " of the"
                            + " work, and the cautions by step. A part that waits for something is left out with a note."
                            + " A sweep (explore) is many builds, and is answered at its own address alone."
                            + " /v1/shop-sheet prints this very answer. As an archive it is all files of the build:"
                            + " paper, lists, pictures, outlines, bodies, program and the completed document. The page"
                            + " index.html lists them.")
    @APIResponse(
            responseCode = "200",
            description = "The build.",
            content = {
                @Content(mediaType = MediaType.APPLICATION_JSON, schema = @Schema(implementation = Answer.class)),
                @Content(mediaType = Format.ZIP_TYPE, schema = @Schema(type = SchemaType.STRING, format = "binary"))
            })
    public Response build(
            Document document,
            @QueryParam(Stations.NAME) String stations,
            @Parameter(
                            description = Format.DESCRIPTION,
                            example = "json",
                            schema =
                                    @Schema(
                                            type = SchemaType.STRING,
                                            enumeration = {"json", "zip"}))
                    @QueryParam(Format.PARAMETER)
                    String format,
            @Context Request http) {
        if (Format.wanted(format, http, FORMS) == Format.JSON) {
            return Response.ok(SheetCalculator.build(document, Stations.parse(stations)), MediaType.APPLICATION_JSON)
                    .build();
        }
        Query.leftOut(Stations.NAME, stations, "of an archive");
        return Response.ok(BuildFiles.zip(document), Format.ZIP_TYPE).build();
    }
}
