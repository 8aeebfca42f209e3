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
import org.orbwright.api.query.Format;
import org.orbwright.api.wire.Csv;
import org.orbwright.document.Document;
import org.orbwright.explore.Sweep;
import org.orbwright.sheet.Answer;
import org.orbwright.sheet.SheetCalculator;

/** Turns the analysis of bands round: from what should be seen to the design. */
@Path("/v1")
@Consumes(MediaType.APPLICATION_JSON)
@Tag(name = "Pattern", description = "From what should be seen on the sphere to the design.")
public class BandDesignResource {

    @POST
    @Path("/bands/solve")
    @Produces(MediaType.APPLICATION_JSON)
    @Operation(
            operationId = "solveWidths",
            summary = "Flat widths from what should be seen",
            description = "A band's wish is a visible width at the edge middle or at the corner, or a share of the"
                    + " sphere. It is for the upright sphere, the inverted one or a mixed one. Bands without a wish share what"
                    + " is left, in a stated proportion. The answer has the flat strip widths that make all wishes come"
                    + " true. Where they contradict each other, the wish that is farthest off comes as near as it can."
                    + " The answer says how near, what is proved, and which wish to drop. With a step, strips are"
                    + " whole multiples of it, chosen for the wishes and not rounded afterwards. All kinds of spheres"
                    + " that are made are reported, with what is found of their bands.")
    public Answer solve(Document document) {
        return SheetCalculator.solve(document);
    }

    @POST
    @Path("/bands/explore")
    @Produces({Format.NDJSON_TYPE, Csv.MEDIA_TYPE})
    @Operation(
            operationId = "exploreDesigns",
            summary = "A sweep over designs, a row each",
            description =
                    "One or two number fields of the design are varied over lists or ranges, at most 10,000 designs."
                            + " The wanted numbers of each sheet are answered as a stream of rows: JSON objects, one a"
                            + " line, or comma separated values. Their names are the JSON pointers asked for. The codes of a design's findings stand under stops, warns"
                            + " and notes by their severity. They are lists that are left out where empty, or one"
                            + " cell with blanks between. A design that cannot exist has a"
                            + " problem instead of numbers; a number that the sheet lacks is left out.")
    @APIResponse(
            responseCode = "200",
            description = "The rows.",
            content = {
                @Content(mediaType = Format.NDJSON_TYPE, schema = @Schema(type = SchemaType.STRING)),
                @Content(mediaType = Csv.MEDIA_TYPE, schema = @Schema(type = SchemaType.STRING))
            })
    public Sweep explore(Document document) {
        return Sweep.of(document);
    }

    @POST
    @Path("/inlays")
    @Produces(MediaType.APPLICATION_JSON)
    @Operation(
            operationId = "planInlays",
            summary = "Tips that chip, inlays and their pockets",
            description =
                    "A disc or a regular polygon let into the panels. The answer has the depth of the pocket, so that"
                            + " the inlay survives the turning and does not reach the hollow. It has the largest that"
                            + " fits, what it covers of each band, and motifs shared out over the panels. It also says which tips break most easily at the"
                            + " saw and what helps there. For chips of a given size it says what hole they leave on"
                            + " the sphere and which plug hides it. It says how much larger a segment is sawn to be"
                            + " cut again. A"
                            + " section with chips and no shape gets that plug.")
    public Answer inlays(Document document) {
        return SheetCalculator.inlays(document);
    }
}
