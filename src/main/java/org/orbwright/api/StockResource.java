package org.orbwright.api;

import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import org.orbwright.sheet.SheetCalculator;
import org.orbwright.sheet.StockAnswer;
import org.orbwright.stock.StockRequest;

/** From the boards on the rack to the last strip. */
@Path("/v1/stock")
@Consumes(MediaType.APPLICATION_JSON)
@Produces(MediaType.APPLICATION_JSON)
@Tag(name = "Stock", description = "Whether the wood is enough, how to cut it and what to buy.")
public class StockResource {
    @POST
    @Operation(
            operationId = "planStock",
            summary = "How the boards are cut, whether they are enough, and what to buy",
            description =
                    "A design and the boards at hand: for each wood the plan that costs least, with its bound, found by"
                            + " integer programming over the ways to crosscut and rip each board; per board the cuts in"
                            + " their order, what is missing, what to buy from the offers, and what is left of the wood"
                            + " at every stage. Strips are in one piece, or made up of pieces whose seams fall on cuts between"
                            + " segments; the places for seams are chosen before the search.")
    public StockAnswer plan(StockRequest request) {
        return SheetCalculator.stock(request);
    }
}
