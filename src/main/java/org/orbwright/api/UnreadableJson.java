package org.orbwright.api;

import com.fasterxml.jackson.core.JsonLocation;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.orbwright.design.Violation;

/** The refusals of a body that is no JSON, each with the line and the column where reading ended. */
final class UnreadableJson {
    private static final int SNIPPET_BEFORE = 24;
    private static final int SNIPPET_AFTER = 8;

    private UnreadableJson() {}

    static RequestException empty() {
        return refusal("The body is empty; it has to be a design as JSON.", "EMPTY_BODY", null, "a design as JSON");
    }

    /** The parser has often read the offending word already when it gives up, hence "at or just before". */
    static RequestException malformed(byte[] body, JsonLocation location) {
        int offset = offset(body, location);
        if (offset >= 0 && isBlank(body, offset)) {
            return endsEarly(body, offset);
        }
        String message = offset < 0 ? "The body is not JSON." : "The body is not JSON" + place(body, offset) + ".";
        return refusal(message, "MALFORMED", around(body, offset), "JSON as in RFC 8259");
    }

    private static RequestException endsEarly(byte[] body, int offset) {
        return refusal(
                "The JSON ends too early" + place(body, offset)
                        + ": a bracket, a brace or a quote is not closed, or a value is missing.",
                "ENDS_EARLY",
                around(body, offset),
                "JSON as in RFC 8259");
    }

    static RequestException trailing(byte[] body, JsonLocation location) {
        int offset = offset(body, location);
        return refusal(
                "After the end of the design there is more text" + place(body, offset) + ".",
                "TRAILING_TEXT",
                around(body, offset),
                "one design and nothing after it");
    }

    static RequestException beyondLimits(byte[] body, JsonLocation location, int levels, int number, int text) {
        String allowed = "at most " + levels + " levels, numbers of " + number + " characters, texts of " + text;
        int offset = offset(body, location);
        return refusal(
                "The JSON is nested too deep, or a number, a name or a text in it is too long" + place(body, offset)
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
    private static String place(byte[] body, int offset) {
        String before = new String(body, 0, offset, StandardCharsets.UTF_8);
        int lineStart = before.lastIndexOf('\n') + 1;
        long line = before.chars().filter(c -> c == '\n').count() + 1;
        int column = before.codePointCount(lineStart, before.length()) + 1;
        return " at or just before line " + line + ", column " + column;
    }

    /** The end of what was read and the start of what follows, or null where the place is not known. */
    private static String around(byte[] body, int offset) {
        if (offset < 0) {
            return null;
        }
        int start = Math.max(0, offset - SNIPPET_BEFORE);
        int end = Math.min(body.length, offset + SNIPPET_AFTER);
        return new String(body, start, end - start, StandardCharsets.UTF_8);
    }

    private static boolean isBlank(byte[] body, int offset) {
        return new String(body, offset, body.length - offset, StandardCharsets.UTF_8).isBlank();
    }

    private static int offset(byte[] body, JsonLocation location) {
        return location == null ? -1 : (int) Math.max(0, Math.min(location.getByteOffset(), body.length));
    }
}
