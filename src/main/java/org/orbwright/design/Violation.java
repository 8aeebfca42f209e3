package org.orbwright.design;

import java.util.Locale;
import org.orbwright.quantity.Describe;

@Describe("One broken rule of a request.")
public record Violation(
        @Describe(
                value = "JSON pointer (RFC 6901) to the field, empty for the whole body; a query or path parameter by"
                        + " its name.",
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

    private static final String MISSING = "MISSING";

    /**
     * A part that is missing.
     *
     * @param pointer JSON pointer to it
     * @param name what it is called in a sentence
     * @param what what depends on it, as the subject of a sentence: "the yield depends"
     * @param allowed what has to stand there
     */
    public static Violation missing(String pointer, String name, String what, String allowed) {
        String sentence = name + " is missing; " + what + " on it.";
        String message = sentence.substring(0, 1).toUpperCase(Locale.ROOT) + sentence.substring(1);
        return new Violation(pointer, MISSING, message, null, allowed);
    }

    /** Whether it says that a part is missing. */
    public boolean isMissing() {
        return code.equals(MISSING);
    }

    /** The field as sentences name it: {@code panel.thickness}. */
    public String field() {
        return path.substring(1).replace('/', '.');
    }
}
