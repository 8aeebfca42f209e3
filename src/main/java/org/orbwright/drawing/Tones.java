package org.orbwright.drawing;

/**
 * The tones by which woods are told apart: a colour, a lightness that differs from the neighbours' when printed in
 * black and white, and a hatch. Eight of each; after eight woods the hatches move on, so that 64 can be told apart.
 */
final class Tones {
    private static final String[] FILLS = {
        "#f3ead3", "#5b3f2b", "#c58a55", "#8fa08a", "#e3c39a", "#7d8590", "#a4563f", "#d9d9d9"
    };
    private static final String[] LINES = {
        "#b9a678", "#a98b6f", "#6e4622", "#4f5d4b", "#9a7442", "#c9ced6", "#e0b3a4", "#6f6f6f"
    };
    /** Side of the square that a hatch is drawn in. */
    static final double HATCH_SIZE = 8;

    /** Hatches in a square of eight by eight, those across drawn beyond its corners so that tiles join. */
    private static final String[] HATCHES = {
        "",
        "M-2 10L10 -2M-2 2L2 -2M6 10L10 6",
        "M0 4H8",
        "M4 0V8",
        "M-2 -2L10 10M-2 6L2 10M6 -2L10 2",
        "M-2 10L10 -2M-2 -2L10 10",
        "M0 2H8M0 6H8",
        "M0 4H8M4 0V8"
    };

    private Tones() {}

    /** The colour of the wood of this number. */
    static String fill(int tone) {
        return FILLS[tone % FILLS.length];
    }

    /** The colour of its hatch. */
    static String line(int tone) {
        return LINES[tone % LINES.length];
    }

    /** Path data of its hatch, in a square of eight by eight; empty for none. */
    static String hatch(int tone) {
        return HATCHES[(tone + tone / FILLS.length) % HATCHES.length];
    }
}
