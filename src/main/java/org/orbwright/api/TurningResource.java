package org.orbwright.api;

import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.enums.SchemaType;
import org.eclipse.microprofile.openapi.annotations.media.Content;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponse;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import org.orbwright.api.guard.Heavy;
import org.orbwright.api.wire.Csv;
import org.orbwright.document.Document;
import org.orbwright.sheet.Answer;
import org.orbwright.sheet.SheetCalculator;

/** The work on the lathe. */
@Path("/v1")
@Consumes(MediaType.APPLICATION_JSON)
@Produces(MediaType.APPLICATION_JSON)
@Tag(name = "Turning", description = "The work on the lathe.")
public class TurningResource {
    @POST
    @Path("/turning")
    @Operation(
            operationId = "planTurning",
            summary = "Holding, roughing, turning and finishing the sphere",
            description = "Mounting discs and what the tool reaches between them; cups and how the positions overlap;"
                    + " the polygon"
                    + " method, diameters for callipers, ring gauges and passes; speeds to stay under,"
                    + " with what"
                    + " they rest on; sanding, finish and time by the caller's rates. It states measures and"
                    + " limits, and calls nothing safe.")
    public Answer plan(Document document) {
        return SheetCalculator.turning(document);
    }

    @POST
    @Path("/turning/path")
    @Produces({MediaType.APPLICATION_JSON, Csv.MEDIA_TYPE})
    @Operation(
            operationId = "planToolPath",
            summary = "The way of a cutter over the sphere",
            description = "Passes of rings from the corners to the sphere, for a rotary table or three axes. The"
                    + " ridges are no higher than stated. The path is clear of the discs and of wood that the holder"
                    + " would meet. As CSV by the"
                    + " header Accept: a move a row, in the design's unit, degrees and minutes."
                    + Csv.STOP_LINES)
    @APIResponse(
            responseCode = "200",
            description = "The path.",
            content = {
                @Content(mediaType = MediaType.APPLICATION_JSON, schema = @Schema(implementation = Answer.class)),
                @Content(mediaType = Csv.MEDIA_TYPE, schema = @Schema(type = SchemaType.STRING))
            })
    @Heavy
    public Answer path(Document document) {
        return SheetCalculator.path(document);
    }

    @POST
    @Path("/turning/program")
    @Produces(MediaType.TEXT_PLAIN)
    @Operation(
            operationId = "writeProgram",
            summary = "The same as a program (ISO 6983, RS-274)",
            description = "Straight moves, circles and turns of the table, worded as path.control says, in the design's"
                    + " unit. All findings and cautions are comments at its head, STOPs first. No tool is changed"
                    + " unless path.control states one. It is refused where the machine's limits, the cutter or its"
                    + " holder do not suffice.")
    @APIResponse(
            responseCode = "200",
            description = "The program.",
            content = @Content(mediaType = MediaType.TEXT_PLAIN, schema = @Schema(type = SchemaType.STRING)))
    @Heavy
    public String program(Document document) {
        return SheetCalculator.program(document);
    }

    @POST
    @Path("/balance")
    @Operation(
            operationId = "balanceWork",
            summary = "Centre of mass and imbalance of the held work",
            description =
                    "A design with panels that differ: by their set, by other woods, by heavier boards. The answer is"
                            + " in closed form, for the glued-up solid and for the finished sphere. It has the mass,"
                            + " where the centre of mass lies about the axis, the imbalance, and which panel is heavy."
                            + " At a stated speed it has the force and the balance quality grade. It states what there"
                            + " is, not what would be safe.")
    public Answer balance(Document document) {
        return SheetCalculator.balance(document);
    }
}
