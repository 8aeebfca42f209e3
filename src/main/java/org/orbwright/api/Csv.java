package org.orbwright.api;

import java.math.BigDecimal;
import java.util.List;
import java.util.regex.Pattern;

/** Comma separated values as RFC 4180 has them: lines that end in CR LF, texts in quotes where they need them. */
final class Csv {
    static final String MEDIA_TYPE = "text/csv";

    private static final String LINE_END = "\r\n";
    /** What a spreadsheet would compute instead of showing it, or might after it has taken blanks away. */
    private static final Pattern FORMULA = Pattern.compile("(\\s*[=+\\-@]|[\t\r\n]).*", Pattern.DOTALL);

    private static final Pattern PLAIN = Pattern.compile("[^\",\r\n]*");

    private Csv() {}

    /** One line of cells that are already written. */
    static String line(List<String> cells) {
        return String.join(",", cells) + LINE_END;
    }

    /** A text; one that a spreadsheet might take for a formula follows an apostrophe. */
    static String text(String text) {
        String shown = FORMULA.matcher(text).matches() ? "'" + text : text;
        return PLAIN.matcher(shown).matches() ? shown : '"' + shown.replace("\"", "\"\"") + '"';
    }

    /** The shortest digits that stand for the number, without an exponent: some spreadsheets read that as text. */
    static String plain(double number) {
        BigDecimal exact = BigDecimal.valueOf(number);
        return exact.signum() == 0 ? "0" : exact.stripTrailingZeros().toPlainString();
    }
}
