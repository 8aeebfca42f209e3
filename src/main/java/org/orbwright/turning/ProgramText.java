package org.orbwright.turning;

import java.text.Normalizer;
import org.orbwright.notice.Notice;
import org.orbwright.turning.ControlRequest.Comments;

/**
 * The lines of a program, with comments and line numbers as a control takes them.
 *
 * <p>Controls carry out some comments, and know them by what stands first in them: {@code (MSG, text)},
 * {@code (PROBEOPEN file)}, {@code (LOGCLOSE)} (LinuxCNC documentation, "G-code overview", sections Messages to Print
 * Messages). So a comment begins with a word of ours, and each further line of it with {@link #GOES_ON}: no word of the
 * caller's stands first, whatever a control takes for a command.
 *
 * <p>Grbl takes {@code !}, {@code ~} and {@code ?} for commands wherever they stand, even within comments (gnea/grbl
 * issue 916, grbl/grbl issue 118): none of them is written.
 */
final class ProgramText {
    private static final int MOST_COMMENT = 100;
    private static final String GOES_ON = "... ";
    private static final int NUMBER_STEP = 10;
    /** Five digits are what controls have room for. From memory. */
    private static final int LAST_NUMBER = 99_990;

    private final ControlRequest control;
    private final StringBuilder text = new StringBuilder();
    private int number;

    /**
     * Begins a program.
     *
     * @param control filled in
     */
    ProgramText(ControlRequest control) {
        this.control = control;
        percent();
    }

    /** A line of words. */
    void block(String words) {
        if (control.lineNumbers()) {
            number = number == LAST_NUMBER ? NUMBER_STEP : number + NUMBER_STEP;
            text.append('N').append(number).append(' ');
        }
        text.append(words).append('\n');
    }

    /**
     * A comment, in lines that a control can hold.
     *
     * @param words begin with a word of ours
     */
    void comment(String words) {
        boolean brackets = control.comments() == Comments.BRACKETS;
        String start = "";
        for (String line : Notice.wrapped(plain(words), MOST_COMMENT)) {
            text.append(brackets ? "(" : "; ").append(start).append(line).append(brackets ? ")\n" : "\n");
            start = GOES_ON;
        }
    }

    /**
     * A text in letters that every control takes. Accents go. What would end a comment or the program, or is a command
     * wherever it stands, is written in another way. Any other letter is written as a low line: so nobody takes the
     * rest for the whole.
     */
    static String plain(String text) {
        return Normalizer.normalize(text, Normalizer.Form.NFD)
                .replaceAll("\\p{M}", "")
                .replace(';', ',')
                .replace('(', '[')
                .replace(')', ']')
                .replace('!', '.')
                .replace('?', '.')
                .replace('~', '-')
                .replace("%", " percent")
                .replaceAll("[\\p{Cntrl}\\p{Z}]+", " ")
                .replaceAll("[^ -~]", "_")
                .strip();
    }

    /** The whole program. */
    String end() {
        percent();
        return text.toString();
    }

    private void percent() {
        if (control.percentSigns()) {
            text.append("%\n");
        }
    }
}
