package org.orbwright.sheet;

import org.orbwright.notice.Notice;
import org.orbwright.quantity.Describe;

/**
 * Something that a design gets wrong or nearly wrong. A finding is no error: the design can be cut.
 *
 * @param code what kind of finding it is
 * @param severity how much it matters
 * @param message one sentence in shop words, with the numbers in it
 * @param field JSON pointer to the field of the document that it is about
 */
@Describe("Something that the design gets wrong or nearly wrong.")
public record Finding(
        @Describe(value = "Stable code of what is wrong or nearly wrong.", example = "\"NO_HALVES\"")
        FindingCode code,

        @Describe(
                value = "STOP: do not cut this. WARN: cut it only if that is meant. NOTE: good to know.",
                example = "\"NOTE\"")
        Severity severity,

        @Describe(
                value = "One sentence in shop words, with the numbers in it.",
                example =
                        "\"The triangle panels have 3 segments, an odd number: there are no two halves to true up on a disc sander before the last joint, so every segment has to close by its saw cut alone.\"")
        String message,

        @Describe(
                value = "JSON pointer (RFC 6901) to the field of the document that it is about.",
                example = "\"/solid\"")
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

    /** The finding as a file tells it. */
    Notice notice() {
        return new Notice(Notice.Kind.valueOf(severity.name()), code.name(), message);
    }
}
