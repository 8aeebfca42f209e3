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
        @Describe(value = "Stable code of what is wrong or nearly wrong.", example = "\"BAND_THINNED\"")
        FindingCode code,

        @Describe(
                value = "STOP: do not cut this. WARN: cut it only if that is meant. NOTE: good to know.",
                example = "\"WARN\"")
        Severity severity,

        @Describe(
                value = "One sentence in shop words, with the numbers in it.",
                example = "\"Band 5 (black walnut, 12.47 mm wide) is thinned below half in the"
                        + " inverted segments of the pentagon panels: at most 6 mm of its width"
                        + " can be seen on the sphere, and 31 % of its area.\"")
        String message,

        @Describe(
                value = "JSON pointer (RFC 6901) to the field of the request that it is about.",
                example = "\"/laminations/0/bands/4/width\"")
        String field) {

    /** The same finding about a design that is part of a request. */
    Finding within(String pointer) {
        return new Finding(code, severity, message, pointer + field);
    }

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
