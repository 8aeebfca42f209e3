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
            description = "Per face kind and kind of segment: mitre gauge, stop and the face that is up; the bevel's"
                    + " tilt, blade height, inset and fence shift with the land, and the same cut with the panel"
                    + " upright where the tilt is steep; for each angle the lines it is measured from, the stack under"
                    + " a sine bar, the rise over a run and what a trial cut shows; the tip angle of each segment; and"
                    + " the closing test of a whole panel. These numbers say what fits, not what is safe.")
    public Answer plan(Document document) {
        return SheetCalculator.jig(document);
    }
}
