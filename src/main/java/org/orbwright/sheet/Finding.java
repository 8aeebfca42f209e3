package org.orbwright.sheet;

import org.orbwright.quantity.Describe;

/**
 * Something that a design gets wrong or nearly wrong. A finding is no error: the design can be cut.
 *
 * @param code what kind of finding it is
 * @param severity how much it matters
 * @param message one sentence in shop words, with the numbers in it
 * @param field JSON pointer to the field of the request that it is about
 */
@Describe("Something that the design gets wrong or nearly wrong.")
public record Finding(
        @Describe(value = "Stable code.", example = "\"BREAK_THROUGH\"")
        FindingCode code,

        @Describe(
                value = "STOP: do not cut this. WARN: cut it only if that is meant. NOTE: good to know.",
                example = "\"STOP\"")
        Severity severity,

        @Describe(
                value = "One sentence in shop words, with the numbers in it.",
                example = "\"The sphere of 172 mm breaks through at the corners of the pentagon panels.\"")
        String message,

        @Describe(
                value = "JSON pointer (RFC 6901) to the field of the request that it is about.",
                example = "\"/panel/thickness\"")
        String field) {

    /** How much a finding matters. */
    public enum Severity {
        /** Do not cut this. */
        STOP,
        /** Cut it only if that is meant. */
        WARN,
        /** Good to know. */
        NOTE
    }
}
