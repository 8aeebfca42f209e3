package org.orbwright.api.query;

import jakarta.ws.rs.QueryParam;
import java.util.List;
import org.eclipse.microprofile.openapi.annotations.enums.SchemaType;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.eclipse.microprofile.openapi.annotations.parameters.Parameter;
import org.orbwright.design.BandSet;
import org.orbwright.design.Design;
import org.orbwright.drawing.Drawing;
import org.orbwright.drawing.SphereDrawing;
import org.orbwright.drawing.SphereLook;

/** The spheres of which sets are shown. */
public class SphereSetQuery {
    private static final String BOTH = "BOTH";

    @QueryParam(SetQuery.NAME)
    @Parameter(
            description = "The set of segments, UPRIGHT or INVERTED, or BOTH for a sphere of each side by side; if left"
                    + " out, what the first sphere of the design is made from. BOTH is refused where sawing gives one"
                    + " set, and where each sphere has panels of both sets.",
            example = "UPRIGHT",
            schema =
                    @Schema(
                            type = SchemaType.STRING,
                            enumeration = {"UPRIGHT", "INVERTED", BOTH}))
    String set;

    /** The picture of the spheres that are asked for. */
    public Drawing draw(Design design, SphereLook look) {
        if (Query.isEmpty(set)) {
            return SphereDrawing.draw(design, design.sphere(null), look);
        }
        String asked = Query.name(SetQuery.NAME, set, List.of("UPRIGHT", "INVERTED", BOTH));
        return asked.equals(BOTH)
                ? SphereDrawing.sideBySide(design, design.sphereOfEachSet(), look)
                : SphereDrawing.draw(design, design.sphere(BandSet.valueOf(asked)), look);
    }
}
