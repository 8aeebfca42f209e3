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

/** From the boards on the rack to the last strip. */
@Path("/v1/stock")
@Consumes(MediaType.APPLICATION_JSON)
@Produces({MediaType.APPLICATION_JSON, Csv.MEDIA_TYPE})
@Tag(name = "Stock", description = "Whether the wood is enough, how to cut it and what to buy.")
@Heavy
public class StockResource {
    private static final String AS_CSV =
            " As comma separated values (RFC 4180) by the header Accept: a heading with the names of the fields, then a"
                    + " row each, with the same numbers; the last column is the design's unit, in which the lengths are"
                    + " stated. In inches a column more stands behind each length, named like it with Fraction at the"
                    + " end. It gives the nearest 1/64 and what the true length is more (+) or less (-), for example"
                    + " 3 9/64 + 0.003 in. Decimals follow a point, and a cell is empty where a field is left out. A"
                    + " spreadsheet might take a text for a formula if it begins with =, +, -, @, a tab or a line"
                    + " break. Such a text has an apostrophe put before it."
                    + Csv.STOP_LINES
                    + " All other findings, and the cautions, stand in the JSON: read them first.";

    @POST
    @Operation(
            operationId = "planStock",
            summary = "How the boards are cut, whether they are enough, and what to buy",
            description =
                    "For each wood the plan with the fewest missing strips, then the least of what is asked for. It is"
                            + " found by integer programming, and the answer says what is proved of it. A board is"
                            + " crosscut to sections, and a section is ripped into lanes. A lane is sliced or resawn"
                            + " once. All strips of a resawn lane have one width. Strips are in one piece or made up"
                            + " of"
                            + " pieces. Which strips are glued side by side is a part of the plan, so that seams keep"
                            + " their clearance. The answer also says what to buy from the offers, and what is left of"
                            + " the wood at every stage. Where strips are missing it says why, and what would help."
                            + " The cut list is /v1/stock/cuts. The document comes back with blanks as short as their"
                            + " segments allow, unless strips have seams.")
    @Produces(MediaType.APPLICATION_JSON)
    public Answer plan(Document document) {
        return SheetCalculator.stock(document);
    }

    @POST
    @Path("/reach")
    @Operation(
            operationId = "findReach",
            summary = "What the boards on the rack give",
            description =
                    "What can be made of the boards on the rack, without the offers. The largest size of the design is"
                            + " found with all bands in proportion, and with the bands without a width taking up what"
                            + " is more. The most copies and the length of blanks that suits the boards best come"
                            + " next, then the single extra board that helps most. Sizes and numbers are found by"
                            + " halving, each by a plan of its own. What is proved impossible is said.")
    @Produces(MediaType.APPLICATION_JSON)
    public Answer reach(Document document) {
        return SheetCalculator.reach(document);
    }

    @POST
    @Path("/cuts")
    @Operation(
            operationId = "listCuts",
            summary = "The cut list",
            description =
                    "The steps from the boards to the strips in working order, one board after the other: surfacing,"
                            + " edges and ends, all crosscuts, then section by section the rips and what is sliced or"
                            + " resawn. Each section, stick and strip is what comes of exactly one step, and so is wood"
                            + " that is left over and kept. Settings are"
                            + " measured from the cut before; positions as the part lay in the board."
                            + AS_CSV)
    @APIResponse(
            responseCode = "200",
            description = "The cut list.",
            content = {
                @Content(mediaType = MediaType.APPLICATION_JSON, schema = @Schema(implementation = Answer.class)),
                @Content(mediaType = Csv.MEDIA_TYPE, schema = @Schema(type = SchemaType.STRING))
            })
    public Answer cuts(Document document) {
        return SheetCalculator.cuts(document);
    }

    @POST
    @Path("/purchases")
    @Operation(
            operationId = "listPurchases",
            summary = "The shopping list",
            description =
                    "What to buy from the offers, with the total, and the strips that are short after all. The rows of"
                            + " the CSV are told apart by their first column: PURCHASE, TOTAL, MISSING, or"
                            + " UNPLANNED for the"
                            + " segments of a lamination whose blank is too short; costEach is the cost of one board."
                            + AS_CSV)
    @APIResponse(
            responseCode = "200",
            description = "The shopping list.",
            content = {
                @Content(mediaType = MediaType.APPLICATION_JSON, schema = @Schema(implementation = Answer.class)),
                @Content(mediaType = Csv.MEDIA_TYPE, schema = @Schema(type = SchemaType.STRING))
            })
    public Answer purchases(Document document) {
        return SheetCalculator.purchases(document);
    }
}
