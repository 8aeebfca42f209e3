package org.orbwright.api.wire;

import java.util.Locale;

/**
 * The kinds of problem, each with a status, a title and what to do about it. The type of a problem is the address of a
 * page that says so (RFC 9457, 3.1.1). It is relative, as the service does not know the name that it is reached by.
 */
public enum ProblemKind {
    UNREADABLE_JSON(
            400,
            "The body is not JSON that can be read",
            "The detail names the line and the column. Look there for a missing comma, quote or bracket, a decimal"
                    + " comma, or a name that stands twice. The file has to be in UTF-8."),
    INVALID_REQUEST(
            400,
            "The request breaks a rule of the contract",
            "Each violation names a field, its value and what is allowed. Mend all of them and ask again."),
    UNAUTHENTICATED(
            401,
            "A key or a token is needed",
            "This service answers only to those it knows. Send the key in the header X-API-Key, or a token as a"
                    + " bearer. Ask its keeper for one."),
    UNKNOWN_SOLID(
            404,
            "There is no solid of that name",
            "GET /v1/solids lists the names. Similar names stand in the detail."),
    UNKNOWN_DESIGN(404, "There is no design of that name", "GET /v1/designs lists the worked documents."),
    UNKNOWN_WOOD(
            404,
            "There is no wood of that name",
            "GET /v1/woods lists the names. A wood that is not there can be stated in woods of the document."),
    UNKNOWN_CELL(404, "There is no cell or table of that name", "GET /v1/cell lists what a spreadsheet may ask for."),
    NOT_FOUND(404, "There is nothing at that address", "The contract at /q/openapi lists all addresses."),
    METHOD_NOT_ALLOWED(
            405, "That method is not for this address", "The header Allow says which methods the address takes."),
    NOT_ACCEPTABLE(
            406,
            "The answer does not come in that form",
            "The detail lists the forms. Name one by the parameter format or by the header Accept."),
    BODY_TOO_SLOW(
            408,
            "The body came in too slowly",
            "Send the whole document at once, without pauses. The keeper of the service sets how long a body may take."),
    LENGTH_REQUIRED(
            411,
            "The length of the body is missing",
            "Send the header Content-Length, or use HTTP/1.1. Most programs do so by themselves."),
    BODY_TOO_LARGE(
            413,
            "The body is too large",
            "The detail says how large a body may be. A usual document has some kilobytes."),
    ADDRESS_TOO_LONG(
            414, "The address is too long", "Post the design as a document instead of writing it in the address."),
    UNSUPPORTED_MEDIA_TYPE(
            415,
            "The body is not declared as it has to be",
            "Send the header Content-Type: application/json, and the body as it is, not packed."),
    IMPOSSIBLE_DESIGN(
            422,
            "The design, or what is stated or measured of it, cannot exist",
            "The document can be read, but no such thing can be built. Each violation names the field, its value and"
                    + " what would do."),
    INCOMPLETE_DOCUMENT(
            422,
            "The document lacks what this answer depends on",
            "Each violation names a field to add. /v1/sheet and /v1/build answer what depends on nothing else."),
    PICTURE_TOO_LARGE(
            422,
            "The picture takes more memory than the service has",
            "Ask for a smaller width: the detail says which one fits. A picture as SVG takes little memory."),
    HEADERS_TOO_LARGE(431, "The headers are too large", "Send fewer or shorter headers. Cookies are of no use here."),
    INTERNAL_ERROR(
            500,
            "The service made a mistake",
            "It is not your fault. Tell the keeper of the service the instance or the request id: the log has it."),
    BUSY(
            503,
            "The service is busy",
            "Too much heavy work is under way. Ask again after the time in the header Retry-After."),
    REFUSED(400, "The request cannot be handled", "The request is no proper HTTP. The detail says what is wrong.");

    /** Where the pages are. */
    public static final String PAGES = "/problems";

    private final int status;
    private final String title;
    private final String help;

    ProblemKind(int status, String title, String help) {
        this.status = status;
        this.title = title;
        this.help = help;
    }

    /** The HTTP status. */
    public int status() {
        return status;
    }

    /** The kind in words. */
    public String title() {
        return title;
    }

    /** What to do about it. */
    public String help() {
        return help;
    }

    /** Its name in its address. */
    public String slug() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** The address of the page on this kind. */
    public String uri() {
        return PAGES + "/" + slug();
    }
}
