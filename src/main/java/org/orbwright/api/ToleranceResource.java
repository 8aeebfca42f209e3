package org.orbwright.api;

import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import org.orbwright.api.guard.Heavy;
import org.orbwright.document.Document;
import org.orbwright.sheet.Answer;
import org.orbwright.sheet.SheetCalculator;

/** From errors of cutting to gaps, and from gaps back to the settings. */
@Path("/v1")
@Consumes(MediaType.APPLICATION_JSON)
@Produces(MediaType.APPLICATION_JSON)
@Tag(name = "Tolerance", description = "How exactly the saw has to be set, and what gaps say of its settings.")
@Heavy
public class ToleranceResource {
    @POST
    @Path("/tolerance")
    @Operation(
            operationId = "calculateTolerance",
            summary = "What errors of cutting do to joints, seams, size and bands",
            description =
                    "A design and its errors of setting and scatter. In closed form, to first order, it has the gaps"
                            + " of panels and seams, and the steps between panels. It has the shifts of across flats,"
                            + " of the largest sphere, of the wall and of every line between bands. Each has its"
                            + " sensitivities and its combined uncertainty. It also has the largest setting errors"
                            + " that the glue forgives. By simulation"
                            + " with a seed: percentiles of the gaps, and how likely it is that the glue bridges all of"
                            + " them.")
    public Answer tolerance(Document document) {
        return SheetCalculator.tolerance(document);
    }

    @POST
    @Path("/diagnosis")
    @Operation(
            operationId = "diagnoseTests",
            summary = "From gaps and sizes that were measured to settings and centre",
            description = "From the gap of a test panel to the tip angle and mitre gauge; from the gaps of a pair or"
                    + " trio of panels to the bevel and blade tilt; from measures across flats to the largest"
                    + " sphere; from distances of faces to the best centre and the shift of the mounting discs;"
                    + " from an angle gauge to the interval of the gap. Every answer has its uncertainty.")
    public Answer diagnosis(Document document) {
        return SheetCalculator.diagnosis(document);
    }
}
