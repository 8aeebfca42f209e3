package org.orbwright.api.query;

import jakarta.ws.rs.QueryParam;
import org.eclipse.microprofile.openapi.annotations.parameters.Parameter;
import org.orbwright.design.Design;
import org.orbwright.design.Panel;

/** Which face kind of a solid is asked for. */
public class FaceQuery {
    @QueryParam("face")
    @Parameter(description = "Name of the face kind; the first of the solid if left out.", example = "triangle")
    String face;

    /** The panel of the face kind, the first where none is named. */
    public Panel panel(Design design) {
        return DesignQuery.panel(design, face);
    }
}
