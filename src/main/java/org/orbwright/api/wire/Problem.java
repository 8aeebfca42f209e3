package org.orbwright.api.wire;

import java.util.List;
import org.orbwright.design.ImpossibleDesignException;
import org.orbwright.design.Violation;
import org.orbwright.quantity.Describe;

/**
 * What the service answers when it cannot do what was asked (RFC 9457): one shape for everything that goes wrong.
 *
 * @param type stable address of a page on this kind of problem
 * @param title the kind of problem in words, always the same for a type
 * @param status the HTTP status
 * @param detail what is wrong this time
 * @param instance the address that was asked for, or a URI of this very occurrence
 * @param requestId the id of the request, null for a document that no request brought
 * @param violations every broken rule, at most {@link #MOST_VIOLATIONS}; empty where the problem has no parts
 */
@Describe("What is wrong with a request, in the form of RFC 9457.")
public record Problem(
        @Describe(
                value = "Stable address of a page on this kind of problem, relative to the service.",
                example = "\"/problems/invalid-request\"")
        String type,

        @Describe(
                value = "The kind of problem in words, always the same for a type.",
                example = "\"The request breaks a rule of the contract\"")
        String title,

        @Describe(value = "The HTTP status.", example = "400", min = 400, max = 599)
        int status,

        @Describe(
                value = "What is wrong this time, in a sentence.",
                example = "\"size.value must be 0.001 to 100000 in the design's unit, but is -3.\"")
        String detail,

        @Describe(
                value = "The address that was asked for, or for a fault of the service a URI of this very occurrence.",
                example = "\"/v1/sheet\"")
        String instance,

        @Describe(
                value = "The id of the request, as the header X-Request-Id of the answer has it and the log.",
                example = "\"0c2f5b1e-7d43-4a86-9b58-3e6d1f0a7c24\"",
                optional = true)
        String requestId,

        @Describe("Every broken rule, in the order of the fields, at most 100; empty where the problem has no parts.")
        List<Violation> violations) {

    /** The most violations that are listed. */
    public static final int MOST_VIOLATIONS = 100;

    /** The media type of a problem. */
    public static final String MEDIA_TYPE = "application/problem+json";

    /** Copies the list of violations and cuts it to the most that are listed. */
    public Problem {
        violations = List.copyOf(violations.subList(0, Math.min(violations.size(), MOST_VIOLATIONS)));
    }

    /** A problem of a kind, under the id of the request that is worked on. */
    public static Problem of(ProblemKind kind, String detail, String instance, List<Violation> violations) {
        return new Problem(kind.uri(), kind.title(), kind.status(), detail, instance, RequestIds.current(), violations);
    }

    /** What is wrong with a request. */
    public static Problem of(RequestException refusal, String instance) {
        return of(refusal.kind(), refusal.getMessage(), instance, refusal.violations());
    }

    /** Why a design cannot be built, or what its document lacks. */
    public static Problem of(ImpossibleDesignException impossible, String instance) {
        String detail = Sentences.summary(impossible.violations());
        boolean incomplete = impossible.violations().stream().allMatch(Violation::isMissing);
        ProblemKind kind = incomplete ? ProblemKind.INCOMPLETE_DOCUMENT : ProblemKind.IMPOSSIBLE_DESIGN;
        return of(kind, detail, instance, impossible.violations());
    }
}
