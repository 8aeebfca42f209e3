package org.orbwright.api.query;

import jakarta.ws.rs.QueryParam;
import org.eclipse.microprofile.openapi.annotations.parameters.Parameter;
import org.orbwright.design.BandSet;

/** Which set of segments is asked for. */
public class SetQuery {
    /** The query parameter. */
    public static final String NAME = "set";

    static final String DESCRIPTION =
            "The set of segments, UPRIGHT or INVERTED; if left out, what the first sphere of the design is made from.";

    @QueryParam(NAME)
    @Parameter(description = DESCRIPTION, example = "UPRIGHT")
    String set;

    /** The set, or null where none is named. */
    public BandSet asked() {
        return asked(set);
    }

    /** The set that a text names, or null where it is empty. */
    public static BandSet asked(String set) {
        return Query.constant(NAME, set, BandSet.class, null);
    }
}
