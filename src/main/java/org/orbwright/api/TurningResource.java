package org.orbwright.api;

import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import org.orbwright.sheet.BalanceAnswer;
import org.orbwright.sheet.SheetCalculator;
import org.orbwright.sheet.TurningAnswer;
import org.orbwright.turning.BalanceRequest;
import org.orbwright.turning.TurningRequest;

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
            description =
                    "Blocking discs and what the tool reaches between them; cups and how the positions overlap; the polygon"
                            + " method, diameters for callipers, ring gauges and passes; speeds to stay under, with what"
                            + " they rest on; sanding, finish and time by the caller's rates. It states measures and"
                            + " limits, and calls nothing safe.")
    public TurningAnswer plan(TurningRequest request) {
        return SheetCalculator.turning(request);
    }

    @POST
    @Path("/balance")
    @Operation(
            operationId = "balanceWork",
            summary = "Centre of mass and imbalance of the held work",
            description =
                    "A design with panels that differ: by their set, by other woods, by heavier boards. In closed form,"
                            + " for the glued-up solid and for the finished sphere: mass, where the centre of mass lies"
                            + " about the axis, the imbalance and which panel is heavy, and at a stated speed the force"
                            + " and the balance quality grade. It states what there is, not what would be safe.")
    public BalanceAnswer balance(BalanceRequest request) {
        return SheetCalculator.balance(request);
    }
}
