package org.orbwright.turning;

import java.util.List;
import java.util.Locale;
import org.orbwright.design.Design;
import org.orbwright.quantity.LengthUnit;
import org.orbwright.quantity.Quantity;
import org.orbwright.turning.PathRequest.Machine;

/**
 * Writes the way of a cutter as a program in the words of ISO 6983 and RS-274: one word list to a line, comments in
 * parentheses. It uses no more than straight moves, full circles and time-inverse feed for turns of the table.
 */
public final class ProgramWriter {
    private static final int MOST_COMMENT = 100;

    private final PathRequest request;
    private final ToolPath path;
    private final LengthUnit unit;
    private final StringBuilder program = new StringBuilder();
    private boolean inverse;

    private ProgramWriter(PathRequest request, Design design, ToolPath path) {
        this.request = request;
        this.path = path;
        this.unit = design.unit();
    }

    /**
     * Writes a program.
     *
     * @param request the request of the path
     * @param design its design
     * @param path the path
     * @param head what stands at its head, a sentence or two each
     */
    public static String write(PathRequest request, Design design, ToolPath path, List<String> head) {
        return new ProgramWriter(request, design, path).write(head);
    }

    private String write(List<String> head) {
        line("%");
        head.forEach(this::comment);
        comment("Lengths in " + (unit == LengthUnit.MM ? "millimetres" : "inches")
                + ". X0 Y0 Z0 is the middle of the sphere.");
        comment(
                request.machine() == Machine.ROTARY
                        ? "A turns the work about X. The first end of the axis points to plus X."
                        : "The first end of the axis points up. This mills the upper half only.");
        comment("Cutter: " + request.cutter().shape().name().replace('_', ' ') + ", diameter "
                + number(request.cutter().diameter(), decimals())
                + ". It is in the spindle, and its length is set: no tool is changed.");
        comment("The work offset that is active is used. A goes on from turn to turn.");
        line(unit == LengthUnit.MM ? "G21" : "G20");
        line("G17 G40 G49 G80");
        line("G90 G91.1 G94");
        line("S" + number(request.spindle(), 0) + " M3");
        line("G0 Z" + length(path.safeHeight()));
        int pass = -1;
        for (PathMove move : path.moves()) {
            if (move.pass() != pass) {
                pass = move.pass();
                comment("Pass " + (pass + 1) + " of " + path.passes().size() + ", sphere of radius "
                        + length(move.sphere()));
            }
            move(move);
        }
        line("M5");
        line("M30");
        line("%");
        return program.toString();
    }

    private void move(PathMove move) {
        String place = "X" + length(move.x()) + " Z" + length(move.z());
        switch (move.kind()) {
            case RAPID -> {
                forward();
                // Up first, then across: the two are never moved together.
                line("G0 Z" + length(move.z()));
                line("G0 X" + length(move.x()) + " Y" + length(0));
            }
            case LINE -> {
                forward();
                line("G1 " + place + " F" + length(request.feed() * unit.millimetres()));
            }
            case TURN -> {
                if (!inverse) {
                    line("G93");
                    inverse = true;
                }
                line("G1 A" + number(move.a() * Quantity.ANGLE.factor(unit), 3) + " F" + number(1 / move.minutes(), 5));
            }
            case CIRCLE ->
                line("G3 " + "X" + length(move.x()) + " Y" + length(0) + " I" + length(-move.x()) + " J" + length(0)
                        + " F" + length(request.feed() * unit.millimetres()));
        }
    }

    /** Back to feeds in length per minute. */
    private void forward() {
        if (inverse) {
            line("G94");
            inverse = false;
        }
    }

    private int decimals() {
        return Quantity.LENGTH.decimals(unit);
    }

    private String length(double millimetres) {
        return number(millimetres / unit.millimetres(), decimals());
    }

    /** A decimal with a point, whatever the machine that this runs on writes. */
    private static String number(double value, int decimals) {
        String text = String.format(Locale.ROOT, "%." + decimals + "f", value);
        return text.matches("-0(\\.0*)?") ? text.substring(1) : text;
    }

    private void line(String words) {
        program.append(words).append('\n');
    }

    /** A comment, in lines that a control can hold; what is not plain, and parentheses, cannot stand in it. */
    private void comment(String text) {
        StringBuilder line = new StringBuilder();
        for (String word : text.replaceAll("[^ -~]|[()%;]", " ").strip().split(" +", -1)) {
            if (line.length() + word.length() > MOST_COMMENT) {
                line("(" + line.toString().strip() + ")");
                line.setLength(0);
            }
            line.append(' ').append(word);
        }
        line("(" + line.toString().strip() + ")");
    }
}
