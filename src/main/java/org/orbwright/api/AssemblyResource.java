package org.orbwright.api;

import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import org.orbwright.document.Document;
import org.orbwright.sheet.Answer;
import org.orbwright.sheet.SheetCalculator;

/** From loose segments to the glued solid. */
@Path("/v1/assembly")
@Consumes(MediaType.APPLICATION_JSON)
@Produces(MediaType.APPLICATION_JSON)
@Tag(name = "Assembly", description = "In which order the parts are glued.")
public class AssemblyResource {
    @POST
    @Operation(
            operationId = "planAssembly",
            summary = "The order of gluing, with glue and open time, and the panels laid flat",
            description = "Stages from strips to blanks, from segments to panels, from panels to two caps of equal"
                    + " number and from the caps to the solid: in each the seams with their lengths and areas, the"
                    + " glue, and the time against the glue's open time, shared out over more stages where it does not"
                    + " fit. Every panel with its number and its neighbours, and a net for each cap: its panels laid flat"
                    + " without overlap, as they are taped together, as far apart as a land holds their rims in the"
                    + " solid, with the seams that close when it is folded up.")
    public Answer plan(Document document) {
        return SheetCalculator.assembly(document);
    }
}
