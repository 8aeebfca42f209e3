package org.orbwright.design;

import java.util.List;
import org.orbwright.quantity.LengthUnit;

/**
 * A design checked against its solid.
 *
 * @param request the request, with everything filled in that was left out
 */
public record Design(DesignRequest request) {

    /** Checks a request against its solid. */
    public static Design of(DesignRequest request) {
        if (!request.solid().equals("dodecahedron")) {
            throw new ImpossibleDesignException(List.of(new Violation(
                    "/solid",
                    "UNKNOWN_SOLID",
                    "There is no solid named " + request.solid() + ".",
                    request.solid(),
                    "dodecahedron")));
        }
        return new Design(request);
    }

    /** The unit. */
    public LengthUnit unit() {
        return request.unit();
    }
}
