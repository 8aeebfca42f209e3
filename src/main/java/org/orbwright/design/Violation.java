package org.orbwright.design;

import org.orbwright.quantity.Describe;

/**
 * One broken rule of a request.
 *
 * @param path JSON pointer (RFC 6901) to the field as the caller wrote it, empty for the whole body
 * @param code stable code of the rule
 * @param message what is wrong, in a sentence
 * @param rejected the rejected value as text, shortened
 * @param allowed what is allowed instead
 */
@Describe("One broken rule of a request.")
public record Violation(
        @Describe(
                value = "JSON pointer (RFC 6901) to the field, empty for the whole body; a query or path parameter"
                        + " by its"
                        + " name.",
                example = "\"/size/value\"")
        String path,

        @Describe(value = "Stable code of the broken rule.", example = "\"OUT_OF_RANGE\"")
        String code,

        @Describe(
                value = "What is wrong, in a sentence.",
                example = "\"size.value must be 0.001 to 100000 in the design's unit, but is -3.\"")
        String message,

        @Describe(value = "The rejected value as text, shortened.", example = "\"-3\"", optional = true)
        String rejected,

        @Describe(
                value = "What is allowed instead.",
                example = "\"0.001 to 100000 in the design's unit\"",
                optional = true)
        String allowed) {

    /** The same violation in a part of a larger request. */
    Violation within(String pointer) {
        return new Violation(pointer + path, code, message, rejected, allowed);
    }
}
