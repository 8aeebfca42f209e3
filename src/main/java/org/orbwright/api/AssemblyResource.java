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
            description = "The stages lead from strips to blanks, from segments to panels, from panels to two caps,"
                    + " and from the caps to the solid. Both caps have equal numbers of panels. Each stage has its"
                    + " seams with their lengths and areas,"
                    + " its glue, and its time. Work that does not fit into the open time is shared out over more"
                    + " stages. Every panel has its number and its neighbours. Each cap has a net: its panels laid"
                    + " flat as they are taped together, without overlap. A land holds their rims apart.")
    public Answer plan(Document document) {
        return SheetCalculator.assembly(document);
    }
}
