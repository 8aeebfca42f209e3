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

/** Setting up the saw for a design. */
@Path("/v1/jig")
@Consumes(MediaType.APPLICATION_JSON)
@Produces(MediaType.APPLICATION_JSON)
@Tag(name = "Set-up", description = "Setting up the saw, and proving each setting in scrap.")
public class JigResource {
    @POST
    @Operation(
            operationId = "planJig",
            summary = "Set-ups of the saw, and how each is proved",
            description = "For each kind of segment it has mitre gauge, stop, the face that is up, and the tip angle."
                    + " For each face kind it has the bevel's tilt, blade height and inset, and the fence shift with"
                    + " the land. Where the tilt is steep it has the same cut with the panel upright. For each angle"
                    + " it names the lines that it is measured from, and the stack under a sine bar. It also has the"
                    + " rise over a run, and what a trial cut shows. A closing test proves a whole panel. These"
                    + " numbers say what fits, not what is safe.")
    public Answer plan(Document document) {
        return SheetCalculator.jig(document);
    }
}
