package org.orbwright.api;

import io.smallrye.common.annotation.NonBlocking;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import java.util.List;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.enums.SchemaType;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.eclipse.microprofile.openapi.annotations.parameters.Parameter;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import org.orbwright.api.guard.Kept;
import org.orbwright.api.wire.ProblemKind;
import org.orbwright.api.wire.RequestException;
import org.orbwright.api.wire.Sentences;
import org.orbwright.design.Violation;
import org.orbwright.document.Document;
import org.orbwright.quantity.Describe;
import org.orbwright.sheet.Answer;
import org.orbwright.sheet.SheetCalculator;
import org.orbwright.wood.Wood;
import org.orbwright.wood.WoodSources;
import org.orbwright.wood.WoodTable;
import org.orbwright.wood.Woods;

/** The table of woods, and how the wood of a design moves. */
@Kept
@Path("/v1")
@Produces(MediaType.APPLICATION_JSON)
@Tag(name = "Woods", description = "The table of woods, and how the wood of a design moves.")
@NonBlocking
public class WoodsResource {

    @GET
    @Path("/woods")
    @Operation(
            operationId = "listWoods",
            summary = "The table of woods",
            description = "The species of which movement is known, with dimensional change coefficients, and with"
                    + " specific gravity and density where they are known. Each value names its source; the head names"
                    + " the works in full.")
    public WoodList woods() {
        return new WoodList(
                WoodSources.stated(), WoodTable.all().stream().map(Wood::of).toList());
    }

    @GET
    @Path("/woods/{species}")
    @Operation(
            operationId = "findWood",
            summary = "One wood",
            description = "What the table of woods says of a species, by its name or by a trade name. A trade name that"
                    + " may mean several woods is answered by the one whose width moves most, and mayAlsoMean names"
                    + " the others.")
    public Wood wood(
            @Parameter(
                            description = "The species' name in the table, or a trade name; upper and lower case are"
                                    + " alike.",
                            example = "hickory",
                            schema = @Schema(type = SchemaType.STRING, minLength = 1, maxLength = 60))
                    @PathParam("species")
                    String species) {
        return Woods.TABLE.named(species).map(Wood::of).orElseThrow(() -> unknown(species));
    }

    @POST
    @Path("/movement")
    @Consumes(MediaType.APPLICATION_JSON)
    @Operation(
            operationId = "calculateMovement",
            summary = "Movement of the wood between stock and home",
            description = "It goes by the moisture of the stock, the home's driest and dampest season, and how the"
                    + " growth rings lie in the strips. It says how far every band moves in width and"
                    + " thickness, and what the joints of each panel have to take. It has the steps along the glue"
                    + " lines, and the mass of each wood."
                    + " Temperatures are in degrees Celsius whatever the unit of lengths is.")
    public Answer movement(Document document) {
        return SheetCalculator.movement(document);
    }

    private static RequestException unknown(String species) {
        String name = Sentences.cut(species);
        List<String> nearest = WoodTable.nearest(species);
        boolean alone = nearest.isEmpty();
        String message = "There is no wood named \"" + name + "\" in the table. "
                + (alone ? "The names are listed at /v1/woods." : "Similar names: " + String.join(", ", nearest) + ".");
        String allowed = alone ? "one of the names at /v1/woods" : "one of " + String.join(", ", nearest);
        return new RequestException(
                ProblemKind.UNKNOWN_WOOD,
                message,
                List.of(new Violation("species", "UNKNOWN_WOOD", message, name, allowed)));
    }

    /** The table of woods. */
    @Describe("The table of woods.")
    public record WoodList(
            @Describe("Where its numbers come from.") WoodSources sources,

            @Describe("The woods, in the order of the table.")
            List<Wood> woods) {}
}
