package org.orbwright.api.wire;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.orbwright.notice.Notice;

/** Comma separated values as RFC 4180 has them: lines that end in CR LF, texts in quotes where they need them. */
public final class Csv {
    /** The media type. */
    public static final String MEDIA_TYPE = "text/csv";

    /** What the contract says of {@link #stops}. */
    public static final String STOP_LINES =
            " Each STOP has a line before the heading: the word STOP, its code, its text, and"
                    + " empty cells. Without a STOP the heading is the first line.";

    private static final String LINE_END = "\r\n";
    /** What a spreadsheet would compute instead of showing it, or might after it has taken blanks away. */
    private static final Pattern FORMULA = Pattern.compile("(\\s*[=+\\-@]|[\t\r\n]).*", Pattern.DOTALL);

    private static final Pattern PLAIN = Pattern.compile("[^\",\r\n]*");

    private Csv() {}

    /** One line of cells that are already written. */
    public static String line(List<String> cells) {
        return String.join(",", cells) + LINE_END;
    }

    /**
     * A line for each STOP, before the heading: the word STOP, its code and its text.
     *
     * @param stops the STOPs
     * @param width cells of the other lines, to which these are filled up with empty ones
     */
    public static String stops(List<Notice> stops, int width) {
        StringBuilder lines = new StringBuilder();
        for (Notice stop : stops) {
            List<String> cells = new ArrayList<>(List.of(stop.kind().name(), stop.code(), text(stop.text())));
            while (cells.size() < width) {
                cells.add("");
            }
            lines.append(line(cells));
        }
        return lines.toString();
    }

    /** A text; one that a spreadsheet might take for a formula follows an apostrophe. */
    public static String text(String text) {
        String shown = FORMULA.matcher(text).matches() ? "'" + text : text;
        return PLAIN.matcher(shown).matches() ? shown : '"' + shown.replace("\"", "\"\"") + '"';
    }

    /** The shortest digits that stand for the number, without an exponent: some spreadsheets read that as text. */
    public static String plain(double number) {
        BigDecimal exact = BigDecimal.valueOf(number);
        return exact.signum() == 0 ? "0" : exact.stripTrailingZeros().toPlainString();
    }
}
