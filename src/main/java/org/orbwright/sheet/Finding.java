package org.orbwright.sheet;

import org.orbwright.notice.Notice;
import org.orbwright.quantity.Describe;

/** Something that a design gets wrong or nearly wrong. A finding is no error: the design can be cut. */
@Describe("Something that the design gets wrong or nearly wrong.")
public record Finding(
        @Describe(value = "Stable code of what is wrong or nearly wrong.", example = "\"NARROW_STRIP\"")
        FindingCode code,

        @Describe(
                value = "STOP: do not cut this. WARN: cut it only if that is meant. NOTE: good to know.",
                example = "\"WARN\"")
        Severity severity,

        @Describe(
                value = "One sentence or a few in shop words, with the numbers in them.",
                example =
                        "\"Band 2 (red alder) of the triangle segments is only 5 mm wide. Between fence and blade strips narrower than 6.35 mm can shatter and kick back (WOOD magazine, The skinny on cutting thin parts). The guard leaves no room for a push stick there. Saw it off the free side of a wider strip or at the band saw, as the saw's manual shows.\"")
        String message,

        @Describe(
                value = "JSON pointer (RFC 6901) to the field of the document that it is about.",
                example = "\"/laminations/0/bands/1/width\"")
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

    /** Whether the design must not be cut. */
    boolean isStop() {
        return severity == Severity.STOP;
    }

    /** The finding as a file tells it. */
    Notice notice() {
        return new Notice(Notice.Kind.valueOf(severity.name()), code.name(), message);
    }
}
