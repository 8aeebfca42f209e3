package org.orbwright.api;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import org.orbwright.quantity.Rounding;

/**
 * A growing buffer of JSON in UTF-8. It exists because an answer is mostly numbers that are rounded to a few decimals:
 * writing the rounded number's digits straight into bytes takes a fraction of the time of a general generator.
 */
final class JsonBytes {
    private static final int LONGEST_NUMBER = 32;
    private static final byte[] HEX = "0123456789abcdef".getBytes(StandardCharsets.US_ASCII);

    private byte[] bytes;
    private int length;

    JsonBytes(int capacity) {
        bytes = new byte[capacity];
    }

    byte[] toArray() {
        return length == bytes.length ? bytes : Arrays.copyOf(bytes, length);
    }

    int length() {
        return length;
    }

    void raw(byte[] text) {
        ensure(text.length);
        System.arraycopy(text, 0, bytes, length, text.length);
        length += text.length;
    }

    void raw(char ascii) {
        ensure(1);
        bytes[length++] = (byte) ascii;
    }

    /** Takes back the last byte. */
    void drop() {
        length--;
    }

    void whole(long value) {
        ensure(LONGEST_NUMBER);
        digits(value, 0);
    }

    /** Writes a number rounded half to even, without trailing zeros; the digits are those of {@link Rounding#round}. */
    void number(double value, int decimals) {
        double scaled = Rounding.scaled(value, decimals);
        if (Math.abs(scaled) < Rounding.LARGEST_SCALED) {
            ensure(LONGEST_NUMBER);
            digits((long) Math.rint(scaled), decimals);
        } else if (Double.isFinite(value)) {
            raw(Double.toString(value).getBytes(StandardCharsets.US_ASCII));
        } else {
            throw new IllegalStateException("an answer holds the number " + value);
        }
    }

    /** Writes a number of so many units of the last decimal, from its last digit to its first. */
    private void digits(long scaled, int decimals) {
        long rest = Math.abs(scaled);
        int places = decimals;
        while (places > 0 && rest % 10 == 0) {
            rest /= 10;
            places--;
        }
        if (scaled < 0) {
            bytes[length++] = '-';
        }
        int at = length + Math.max(digitCount(rest), places + 1) + (places > 0 ? 1 : 0);
        length = at;
        for (int place = 0; place < places; place++) {
            bytes[--at] = (byte) ('0' + rest % 10);
            rest /= 10;
        }
        if (places > 0) {
            bytes[--at] = '.';
        }
        do {
            bytes[--at] = (byte) ('0' + rest % 10);
            rest /= 10;
        } while (rest != 0);
    }

    private static int digitCount(long value) {
        int count = 1;
        for (long limit = 10; count < 19 && value >= limit; limit *= 10) {
            count++;
        }
        return count;
    }

    void text(String text) {
        ensure(6 * text.length() + 2);
        bytes[length++] = '"';
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c < 0x80) {
                ascii(c);
            } else if (Character.isHighSurrogate(c)
                    && i + 1 < text.length()
                    && Character.isLowSurrogate(text.charAt(i + 1))) {
                utf8(Character.toCodePoint(c, text.charAt(++i)));
            } else if (Character.isSurrogate(c)) {
                escape(c);
            } else {
                utf8(c);
            }
        }
        bytes[length++] = '"';
    }

    private void ascii(char c) {
        if (c == '"' || c == '\\') {
            bytes[length++] = '\\';
            bytes[length++] = (byte) c;
        } else if (c < 0x20 || c == 0x7f) {
            escape(c);
        } else {
            bytes[length++] = (byte) c;
        }
    }

    /** A control character, or half of a pair that lost its other half and has no UTF-8. */
    private void escape(char c) {
        bytes[length++] = '\\';
        bytes[length++] = 'u';
        for (int shift = 12; shift >= 0; shift -= 4) {
            bytes[length++] = HEX[(c >> shift) & 0xf];
        }
    }

    private void utf8(int codePoint) {
        if (codePoint < 0x800) {
            bytes[length++] = (byte) (0xc0 | (codePoint >> 6));
        } else {
            if (codePoint < 0x10000) {
                bytes[length++] = (byte) (0xe0 | (codePoint >> 12));
            } else {
                bytes[length++] = (byte) (0xf0 | (codePoint >> 18));
                bytes[length++] = (byte) (0x80 | ((codePoint >> 12) & 0x3f));
            }
            bytes[length++] = (byte) (0x80 | ((codePoint >> 6) & 0x3f));
        }
        bytes[length++] = (byte) (0x80 | (codePoint & 0x3f));
    }

    private void ensure(int more) {
        if (bytes.length - length < more) {
            bytes = Arrays.copyOf(bytes, Math.max(bytes.length * 2, length + more));
        }
    }
}
