package org.orbwright.design;

/**
 * A design checked against its solid.
 *
 * @param request the request, with everything filled in that was left out
 */
public record Design(DesignRequest request) {

    /** Checks a request against its solid. */
    public static Design of(DesignRequest request) {
        return new Design(request);
    }
}
