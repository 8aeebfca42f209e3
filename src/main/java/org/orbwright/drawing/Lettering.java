package org.orbwright.drawing;

import java.util.ArrayList;
import java.util.List;
import org.orbwright.quantity.LengthUnit;

/** How much room letters take. The font is the reading program's, so widths are estimates, rather too wide. */
final class Lettering {
    private static final double NARROW = 0.38;
    private static final double USUAL = 0.63;
    private static final double CAPITAL = 0.78;
    private static final double WIDE = 1.0;
    private static final String CUT = "...";

    private Lettering() {}

    /** Width of a line of text. */
    static double width(String text, double size) {
        return size * text.chars().mapToDouble(Lettering::width).sum();
    }

    private static double width(int letter) {
        if ("iljtfrI.,:;'|!() ".indexOf(letter) >= 0) {
            return NARROW;
        }
        if ("mwMW@%".indexOf(letter) >= 0 || letter > 0x2000) {
            return WIDE;
        }
        return Character.isUpperCase(letter) ? CAPITAL : USUAL;
    }

    /** A blank at which no line ends. */
    private static final char NO_BREAK = '\u00a0';

    /** A text that stays on one line, such as a number with its fraction. */
    static String unbroken(String text) {
        return text.replace(' ', NO_BREAK);
    }

    /** A length with its unit, in inches with its fraction in brackets, which stays on one line. */
    static String length(LengthUnit unit, double millimetres) {
        String fraction = unit.fraction(millimetres);
        boolean whole = fraction.isEmpty() || fraction.equals(unit.sayNumber(millimetres));
        return unit.say(millimetres) + (whole ? "" : " " + unbroken("(" + fraction + ")"));
    }

    /** The text in lines that are no wider than the room for them; a word that is wider is cut. */
    static List<String> wrap(String text, double room, double size) {
        List<String> lines = new ArrayList<>();
        String line = "";
        for (String word : text.split(" ", -1)) {
            String longer = line.isEmpty() ? word : line + " " + word;
            if (width(longer, size) <= room) {
                line = longer;
            } else {
                if (!line.isEmpty()) {
                    lines.add(line);
                }
                line = fit(word, room, size);
            }
        }
        lines.add(line);
        return lines;
    }

    /** The text, with its end cut off if it is wider than the room for it. */
    static String fit(String text, double room, double size) {
        if (width(text, size) <= room) {
            return text;
        }
        int[] letters = text.codePoints().toArray();
        int kept = letters.length;
        while (kept > 0 && width(new String(letters, 0, kept) + CUT, size) > room) {
            kept--;
        }
        return new String(letters, 0, kept) + CUT;
    }

    /** The largest size, up to a given one, at which the text fits into the room for it. */
    static double size(String text, double room, double largest) {
        return Math.min(largest, room / width(text, 1));
    }
}
