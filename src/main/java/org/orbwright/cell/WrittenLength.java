package org.orbwright.cell;

import java.text.Normalizer;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.orbwright.quantity.LengthUnit;

/**
 * A length as people write it: {@code 79.4}, {@code 79,4}, {@code 3 1/8}, {@code 3-1/8in}, {@code 79.4mm}. A comma is a
 * decimal sign, since a spreadsheet joins numbers to texts in its own language, and never with signs for thousands.
 * Capitals, a plus sign and the single signs for fractions are taken as pasted cells have them.
 */
final class WrittenLength {
    /** What may stand in a refusal. */
    static final String ALLOWED = "a length such as 79.4, 3 1/8, 3-1/8in or 79.4mm";

    static final String NUMBER = "[0-9]{1,9}(?:[.,][0-9]{0,15})?(?:[eE][+-]?[0-9]{1,2})?|[.,][0-9]{1,15}";

    private static final Pattern LENGTH = Pattern.compile(
            "(?<sign>[+-]?)\\s*(?:(?:(?<whole>[0-9]{1,9})(?:\\s+|\\s*-\\s*))?"
                    + "(?<over>[0-9]{1,6})\\s*/\\s*(?<under>[0-9]{1,6})|(?<number>" + NUMBER + "))"
                    + "\\s*(?<unit>mm|cm|m|in|inch|inches|\"|\u2033|)",
            Pattern.CASE_INSENSITIVE);

    /** The single signs for fractions in Unicode's blocks Latin-1 Supplement and Number Forms. */
    private static final Pattern FRACTION = Pattern.compile("[\u00bc-\u00be\u2150-\u215e\u2189]");

    private WrittenLength() {}

    /** The length in a unit, or nothing if the text is none; a text without a unit is in that one. */
    static OptionalDouble read(String text, LengthUnit unit) {
        Matcher length = LENGTH.matcher(spelt(text).strip());
        if (!length.matches()) {
            return OptionalDouble.empty();
        }
        double value;
        if (length.group("number") != null) {
            value = number(length.group("number"));
        } else {
            double under = Double.parseDouble(length.group("under"));
            if (under == 0) {
                return OptionalDouble.empty();
            }
            value = (length.group("whole") == null ? 0 : Double.parseDouble(length.group("whole")))
                    + Double.parseDouble(length.group("over")) / under;
        }
        double signed = length.group("sign").equals("-") ? -value : value;
        return OptionalDouble.of(
                switch (length.group("unit").toLowerCase(Locale.ROOT)) {
                    case "" -> signed;
                    case "mm" -> unit == LengthUnit.MM ? signed : unit.fromMillimetres(signed);
                    case "cm" -> unit.fromMillimetres(signed * 10);
                    case "m" -> unit.fromMillimetres(signed * 1000);
                    default -> unit == LengthUnit.IN ? signed : LengthUnit.IN.toMillimetres(signed);
                });
    }

    /** Whether a length names its unit. */
    static boolean namesUnit(String text) {
        Matcher length = LENGTH.matcher(spelt(text).strip());
        return length.matches() && !length.group("unit").isEmpty();
    }

    /** With single signs for fractions spelt out: their compatibility form (UAX 15) is 1, a fraction slash, and 2. */
    private static String spelt(String text) {
        return FRACTION.matcher(text)
                .replaceAll(sign -> " " + Normalizer.normalize(sign.group(), Normalizer.Form.NFKC))
                .replace('\u2044', '/');
    }

    /** A number that matches {@link #NUMBER}. */
    static double number(String text) {
        return Double.parseDouble(text.replace(',', '.'));
    }
}
