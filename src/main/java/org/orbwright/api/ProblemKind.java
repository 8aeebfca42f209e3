package org.orbwright.api;

import java.util.Locale;

/** The kinds of problem, each with a status, a stable URI and a title. */
enum ProblemKind {
    UNREADABLE_JSON(400, "The body is not JSON that can be read"),
    INVALID_REQUEST(400, "The request breaks a rule of the contract"),
    UNAUTHENTICATED(401, "A key or a token is needed"),
    UNKNOWN_SOLID(404, "There is no solid of that name"),
    UNKNOWN_DESIGN(404, "There is no design of that name"),
    UNKNOWN_WOOD(404, "There is no wood of that name"),
    UNKNOWN_CELL(404, "There is no cell or table of that name"),
    NOT_FOUND(404, "There is nothing at that address"),
    METHOD_NOT_ALLOWED(405, "That method is not for this address"),
    NOT_ACCEPTABLE(406, "The answer is not to be had in that form"),
    BODY_TOO_SLOW(408, "The body came in too slowly"),
    BODY_TOO_LARGE(413, "The body is too large"),
    ADDRESS_TOO_LONG(414, "The address is too long"),
    UNSUPPORTED_MEDIA_TYPE(415, "The body is not declared as it has to be"),
    IMPOSSIBLE_DESIGN(422, "The design, or what is stated or measured of it, cannot exist"),
    INCOMPLETE_DOCUMENT(422, "The document lacks what this answer depends on"),
    HEADERS_TOO_LARGE(431, "The headers are too large"),
    INTERNAL_ERROR(500, "The service made a mistake"),
    BUSY(503, "The service is busy"),
    REFUSED(400, "The request cannot be handled");

    private final int status;
    private final String title;

    ProblemKind(int status, String title) {
        this.status = status;
        this.title = title;
    }

    int status() {
        return status;
    }

    String title() {
        return title;
    }

    String uri() {
        return "urn:orbwright:problem:" + name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
