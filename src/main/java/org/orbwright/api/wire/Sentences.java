package org.orbwright.api.wire;

import java.util.List;
import org.orbwright.design.Violation;

/** The words of problems: paths as a person says them, and text of the caller's that is safe to repeat. */
public final class Sentences {
    private static final int LONGEST_QUOTE = 64;

    private Sentences() {}

    /** The first violation's sentence, and how many more there are. */
    static String summary(List<Violation> violations) {
        String first = violations.get(0).message();
        int more = violations.size() - 1;
        return more == 0
                ? first
                : first + " And " + more + (more == 1 ? " more rule is broken." : " more rules are broken.");
    }

    /** A JSON pointer in words: {@code /laminations/0/bands} is {@code laminations[0].bands}. */
    public static String field(String pointer) {
        if (pointer.isEmpty()) {
            return "The body";
        }
        StringBuilder words = new StringBuilder();
        for (String step : pointer.substring(1).split("/", -1)) {
            if (!step.isEmpty() && step.chars().allMatch(c -> c >= '0' && c <= '9')) {
                words.append('[').append(step).append(']');
            } else {
                words.append(words.length() == 0 ? "" : ".")
                        .append(step.replace("~1", "/").replace("~0", "~"));
            }
        }
        return words.toString();
    }

    /** A step of a JSON pointer (RFC 6901). */
    static String step(String name) {
        return "/" + cut(name).replace("~", "~0").replace("/", "~1");
    }

    /** The caller's own text, cut so that an answer does not grow with it. */
    public static String cut(String text) {
        if (text.length() <= LONGEST_QUOTE) {
            return text;
        }
        int end = Character.isHighSurrogate(text.charAt(LONGEST_QUOTE - 1)) ? LONGEST_QUOTE - 1 : LONGEST_QUOTE;
        return text.substring(0, end);
    }
}
