package org.orbwright.api.query;

import jakarta.ws.rs.QueryParam;
import org.eclipse.microprofile.openapi.annotations.enums.SchemaType;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.eclipse.microprofile.openapi.annotations.parameters.Parameter;
import org.orbwright.design.Design;

/** How far a mesh may lie below what is round. */
public class DeviationQuery {
    static final String NAME = "deviation";
    private static final double FINEST = 1e-6;
    private static final double COARSEST = 1000;

    @QueryParam(NAME)
    @Parameter(
            description = "The farthest that the mesh may lie below what is round, in the design's unit; a"
                    + " two-thousandth of the sphere's diameter if left out.",
            example = "0.1",
            schema = @Schema(type = SchemaType.NUMBER, minimum = "0.000001", maximum = "1000"))
    String deviation;

    /** The deviation in millimetres; null where none is stated. */
    public Double millimetres(Design design) {
        return Query.isEmpty(deviation)
                ? null
                : design.unit().toMillimetres(Query.number(NAME, deviation, FINEST, COARSEST, deviation));
    }

    /** Refuses a deviation for a body without anything round. */
    public void leftOut(String body) {
        Query.leftOut(NAME, deviation, "for the " + body + ", which has nothing round");
    }
}
