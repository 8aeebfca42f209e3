package org.orbwright.api.wire;

import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.orbwright.design.Violation;

/** The refusals of a body that is no JSON, each with the line and the column where reading ended. */
final class UnreadableJson {
    private static final int SNIPPET_BEFORE = 24;
    private static final int SNIPPET_AFTER = 8;
    private static final int LONGEST_VALUE = 64;

    /** What other programs write for numbers that JSON does not have. */
    private static final Pattern NO_SUCH_NUMBER = Pattern.compile("[-+]?(?i:nan|inf|infinity)");

    private static final Pattern DECIMAL_COMMA = Pattern.compile("-?[0-9]{1,20},[0-9]{1,20}");

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
        String word = valueAt(body, offset);
        if (NO_SUCH_NUMBER.matcher(word).matches()) {
            String message = "JSON has no number " + word + place(body, offset) + ".";
            return refusal(message, "NO_SUCH_NUMBER", word, "a number in digits");
        }
        if (DECIMAL_COMMA.matcher(word).matches()) {
            String point = word.replace(',', '.');
            String message = "JSON has no decimal comma" + place(body, offset) + ": write " + point + " with a point.";
            return refusal(message, "DECIMAL_COMMA", word, point);
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

    static RequestException beyondLimits(byte[] body, JsonParser json, StreamConstraintsException refusal) {
        Optional<JsonLimit> limit = JsonLimit.exceededIn(refusal);
        // A long text is read in parts, and refused some parts too late: its start is what can be found.
        JsonLocation location =
                limit.filter(JsonLimit.TEXT::equals).isPresent() ? json.currentTokenLocation() : json.currentLocation();
        String exceeded = limit.map(JsonLimit::exceeded).orElse("A part of the JSON is too large");
        return refusal(
                exceeded + place(body, offset(body, location)) + ".",
                "BEYOND_LIMITS",
                null,
                limit.map(JsonLimit::allowed).orElse("less of it"));
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

    /** The value around a place, from the sign before it to the blank, bracket or brace after it; empty if too long. */
    private static String valueAt(byte[] body, int offset) {
        int start = Math.max(offset, 0);
        int end = start;
        while (start > 0 && isInValue(body[start - 1]) && end - start < LONGEST_VALUE) {
            start--;
        }
        while (offset >= 0 && end < body.length && isInValue(body[end]) && end - start < LONGEST_VALUE) {
            end++;
        }
        // In a list a comma stands between two numbers.
        boolean ofField = start > 0 && isAfterColon(body, start);
        return ofField ? new String(body, start, end - start, StandardCharsets.US_ASCII).replaceAll(",$", "") : "";
    }

    private static boolean isInValue(byte b) {
        return Character.isLetterOrDigit(b) || b == '-' || b == '+' || b == '.' || b == ',';
    }

    private static boolean isAfterColon(byte[] body, int start) {
        int before = start - 1;
        while (before > 0 && Character.isWhitespace(body[before])) {
            before--;
        }
        return body[before] == ':';
    }

    private static boolean isBlank(byte[] body, int offset) {
        return new String(body, offset, body.length - offset, StandardCharsets.UTF_8).isBlank();
    }

    private static int offset(byte[] body, JsonLocation location) {
        return location == null ? -1 : (int) Math.max(0, Math.min(location.getByteOffset(), body.length));
    }
}
