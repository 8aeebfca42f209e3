package org.orbwright.drawing;

import java.util.Locale;
import org.orbwright.drawing.Outline.At;
import org.orbwright.quantity.LengthUnit;
import org.orbwright.quantity.Rounding;

/** The pairs of a group code and a value that a drawing interchange file is made of. */
final class DxfPairs {
    private static final int DECIMALS = 8;

    private final DxfRelease release;
    private final LengthUnit unit;
    private final StringBuilder text = new StringBuilder();
    private int handles;

    DxfPairs(DxfRelease release, LengthUnit unit) {
        this.release = release;
        this.unit = unit;
    }

    void put(int code, String value) {
        text.append(String.format(Locale.ROOT, "%3d", code))
                .append('\n')
                .append(value)
                .append('\n');
    }

    void put(int code, int value) {
        put(code, String.valueOf(value));
    }

    /** A pair that release 12 does not have. */
    void modern(int code, String value) {
        if (release != DxfRelease.R12) {
            put(code, value);
        }
    }

    /** Writes, and returns, a new handle, and writes that of its owner; release 12 has neither. */
    String handle(int code, String owner) {
        String handle = next();
        modern(code, handle);
        modern(330, owner);
        return handle;
    }

    /** The next handle that is free, which takes it. */
    String next() {
        handles++;
        return Integer.toHexString(handles).toUpperCase(Locale.ROOT);
    }

    void section(String name) {
        put(0, "SECTION");
        put(2, name);
    }

    void point(At at) {
        point(10, at);
        put(30, "0");
    }

    /** A point of the plane, whose second code is ten more than its first. */
    void point(int code, At at) {
        length(code, at.x());
        length(code + 10, at.y());
    }

    void length(int code, double millimetres) {
        number(code, unit.fromMillimetres(millimetres));
    }

    void number(int code, double value) {
        put(code, Rounding.plain(value, DECIMALS));
    }

    /** All pairs so far. */
    @Override
    public String toString() {
        return text.toString();
    }
}
