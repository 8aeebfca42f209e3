package org.orbwright.api.contract;

import jakarta.ws.rs.core.HttpHeaders;
import java.util.List;
import org.eclipse.microprofile.openapi.OASFactory;
import org.eclipse.microprofile.openapi.models.Components;
import org.eclipse.microprofile.openapi.models.media.MediaType;
import org.eclipse.microprofile.openapi.models.media.Schema;
import org.eclipse.microprofile.openapi.models.responses.APIResponse;
import org.eclipse.microprofile.openapi.models.responses.APIResponses;
import org.orbwright.api.wire.Problem;

/** The problems as the contract declares them: which operation may answer with which, in the order of their status. */
enum ProblemAnswers {
    INVALID_REQUEST("400", When.ALWAYS, "The body is not JSON, or the request breaks a rule of the contract."),
    UNAUTHENTICATED("401", When.ALWAYS, "A key or a token is needed, or the one that was sent is not known."),
    UNKNOWN_NAME("404", When.NAME, "There is nothing of that name; the nearest names are listed."),
    NOT_ACCEPTABLE("406", When.ALWAYS, "The answer is asked for in a form that it does not come in."),
    BODY_TOO_SLOW("408", When.BODY, "The body came in too slowly."),
    LENGTH_REQUIRED("411", When.BODY, "The body came over HTTP/2 without the header Content-Length."),
    BODY_TOO_LARGE("413", When.BODY, "The body is larger than is accepted."),
    ADDRESS_TOO_LONG("414", When.ALWAYS, "The address is longer than is accepted."),
    UNSUPPORTED_MEDIA_TYPE("415", When.BODY, "The body is not declared as what the address takes."),
    IMPOSSIBLE_DESIGN(
            "422",
            When.BODY,
            "The document is well written, but its design cannot exist or lacks what this answer depends on; every"
                    + " reason is listed."),
    HEADERS_TOO_LARGE("431", When.ALWAYS, "The headers are larger than is accepted."),
    INTERNAL_ERROR("500", When.ALWAYS, "The service made a mistake; the id of the occurrence is given."),
    BUSY("503", When.ALWAYS, "All places for such work are taken, or tokens cannot be checked at the moment.");

    private enum When {
        ALWAYS,
        NAME,
        BODY
    }

    private final String status;
    private final When when;
    private final String description;

    ProblemAnswers(String status, When when, String description) {
        this.status = status;
        this.when = when;
        this.description = description;
    }

    /** Declares every problem once. */
    static void addTo(Components components) {
        for (ProblemAnswers problem : values()) {
            components.addResponse(problem.name(), problem.response());
        }
    }

    /** Adds the problems of one operation. */
    static void addTo(APIResponses answers, boolean hasName, boolean hasBody) {
        for (ProblemAnswers problem : values()) {
            if (problem.when == When.ALWAYS
                    || (problem.when == When.NAME && hasName)
                    || (problem.when == When.BODY && hasBody)) {
                answers.addAPIResponse(
                        problem.status, OASFactory.createAPIResponse().ref("#/components/responses/" + problem.name()));
            }
        }
    }

    /** Adds what may be wrong with a design that stands in a query. */
    static void addRefusals(APIResponses answers) {
        for (ProblemAnswers problem : List.of(INVALID_REQUEST, IMPOSSIBLE_DESIGN)) {
            answers.addAPIResponse(
                    problem.status, OASFactory.createAPIResponse().ref("#/components/responses/" + problem.name()));
        }
    }

    private APIResponse response() {
        MediaType problem =
                OASFactory.createMediaType().schema(OASFactory.createSchema().ref("#/components/schemas/Problem"));
        Examples.addAnswers(name(), problem);
        APIResponse response = OASFactory.createAPIResponse();
        if (this == BUSY) {
            response.addHeader(
                    HttpHeaders.RETRY_AFTER,
                    OASFactory.createHeader()
                            .description("Seconds after which to ask again.")
                            .required(true)
                            .schema(OASFactory.createSchema().addType(Schema.SchemaType.INTEGER)));
        }
        return response.description(description)
                .content(OASFactory.createContent().addMediaType(Problem.MEDIA_TYPE, problem));
    }
}
