package org.orbwright.api;

import com.fasterxml.jackson.core.JsonLocation;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.orbwright.design.Violation;

/** The refusals of a body that is no JSON, each with the line and the column where reading ended. */
final class UnreadableJson {
    private static final int LONGEST_SNIPPET = 20;

    private UnreadableJson() {}

    static RequestException empty() {
        return refusal("The body is empty; it has to be a design as JSON.", "EMPTY_BODY", null, "a design as JSON");
    }

    static RequestException malformed(byte[] body, JsonLocation location) {
        return refusal(
                "The body is not JSON" + place(body, location) + ".",
                "MALFORMED",
                snippet(body, location),
                "JSON as in RFC 8259");
    }

    static RequestException endsEarly(byte[] body, JsonLocation location) {
        return refusal(
                "The JSON ends too early" + place(body, location) + ": a bracket, a brace or a quote is not closed.",
                "ENDS_EARLY",
                null,
                "JSON as in RFC 8259");
    }

    static RequestException trailing(byte[] body, JsonLocation location) {
        return refusal(
                "After the end of the design there is more text" + place(body, location) + ".",
                "TRAILING_TEXT",
                snippet(body, location),
                "one design and nothing after it");
    }

    static RequestException beyondLimits(byte[] body, JsonLocation location, int levels, int number, int text) {
        String allowed = "at most " + levels + " levels, numbers of " + number + " characters, texts of " + text;
        return refusal(
                "The JSON is nested too deep, or a number, a name or a text in it is too long" + place(body, location)
                        + ".",
                "BEYOND_LIMITS",
                null,
                allowed);
    }

    private static RequestException refusal(String message, String code, String rejected, String allowed) {
        return new RequestException(
                ProblemKind.UNREADABLE_JSON, message, List.of(new Violation("", code, message, rejected, allowed)));
    }

    /** Line and column, counted in characters from 1; the parser counts bytes. */
    private static String place(byte[] body, JsonLocation location) {
        int offset = offset(body, location);
        if (offset < 0) {
            return "";
        }
        String before = new String(body, 0, offset, StandardCharsets.UTF_8);
        int lineStart = before.lastIndexOf('\n') + 1;
        long line = before.chars().filter(c -> c == '\n').count() + 1;
        int column = before.codePointCount(lineStart, before.length()) + 1;
        return " at line " + line + ", column " + column;
    }

    private static String snippet(byte[] body, JsonLocation location) {
        int offset = offset(body, location);
        if (offset < 0) {
            return null;
        }
        String after =
                new String(body, offset, Math.min(4 * LONGEST_SNIPPET, body.length - offset), StandardCharsets.UTF_8);
        return after.isEmpty() ? null : after.substring(0, Math.min(LONGEST_SNIPPET, after.length()));
    }

    private static int offset(byte[] body, JsonLocation location) {
        return location == null ? -1 : (int) Math.min(location.getByteOffset(), body.length);
    }
}
