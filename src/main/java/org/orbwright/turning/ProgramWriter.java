package org.orbwright.turning;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.Locale;
import org.orbwright.design.Design;
import org.orbwright.notice.Notice;
import org.orbwright.quantity.LengthUnit;
import org.orbwright.quantity.Quantity;
import org.orbwright.turning.PathRequest.Machine;

/**
 * Writes the way of a cutter as a program in the words of ISO 6983-1:2009 and RS-274, from memory: one word list to a
 * line, comments in parentheses. It uses no more than straight moves, full circles and time-inverse feed for turns of
 * the table.
 */
public final class ProgramWriter {
    /** Seconds on controls that read P in seconds; others take it for milliseconds, which the head says. */
    private static final int DWELL = 5;

    private static final MathContext FEED_DIGITS = new MathContext(6);

    private final PathRequest request;
    private final TurningRequest turning;
    private final Design design;
    private final ToolPath path;
    private final LengthUnit unit;
    private final boolean rotary;
    private final StringBuilder program = new StringBuilder();
    private boolean inverse;
    private double angle = Double.NaN;

    private ProgramWriter(PathRequest request, TurningRequest turning, Design design, ToolPath path) {
        this.request = request;
        this.turning = turning;
        this.design = design;
        this.path = path;
        this.unit = design.unit();
        this.rotary = request.machine() == Machine.ROTARY;
    }

    /**
     * Writes a program.
     *
     * @param request the section of the path
     * @param turning the axis and the discs that the work is held by
     * @param design the design
     * @param path the path
     * @param notices what stands at its head
     */
    public static String write(
            PathRequest request, TurningRequest turning, Design design, ToolPath path, List<Notice> notices) {
        return new ProgramWriter(request.filled(design.unit()), turning, design, path).write(notices);
    }

    /**
     * Half of the last decimal that lengths are written to, in millimetres: no more than this is written as nothing.
     */
    static double halfStep(LengthUnit unit) {
        return unit.toMillimetres(Math.pow(10, -Quantity.LENGTH.decimals(unit)) / 2);
    }

    private String write(List<Notice> notices) {
        line("%");
        ProgramHead.lines(request, turning, design, path, notices).forEach(this::line);
        line(unit == LengthUnit.MM ? "G21" : "G20");
        line("G17 G40 G49 G80");
        // Only circles have a middle that I and J could be taken from absolutely.
        line(rotary ? "G90 G94" : "G90 G91.1 G94");
        spin();
        int pass = -1;
        for (PathMove move : path.moves()) {
            if (move.pass() != pass) {
                if (pass >= 0 && path.passes().get(pass).inAir()) {
                    line("(End of the pass in air: the spindle stops and the program waits)");
                    line("M5");
                    line("M0");
                    spin();
                }
                pass = move.pass();
                line("(Pass " + (pass + 1) + " of " + path.passes().size() + ", sphere of radius "
                        + length(move.sphere()) + (path.passes().get(pass).inAir() ? ", in air)" : ")"));
            }
            move(move);
        }
        line("M5");
        line("M30");
        line("%");
        return program.toString();
    }

    private void spin() {
        line("S" + number(request.spindle(), 0) + " M3");
        line("G4 P" + DWELL);
    }

    private void move(PathMove move) {
        String place = "X" + length(move.x()) + " Z" + length(move.z());
        switch (move.kind()) {
            case RAPID -> {
                forward();
                // Up first, then the table, then across: the cutter is above the work before anything else moves.
                line("G0 Z" + length(move.z()));
                if (rotary && move.a() != angle) {
                    line("G0 A" + degrees(move.a()));
                }
                line("G0 X" + length(move.x()) + " Y" + length(0));
            }
            case LINE -> {
                forward();
                line("G1 " + place + " F" + feed(request.feed()));
            }
            case PLUNGE -> {
                forward();
                line("G1 " + place + " F" + feed(path.plungeFeed() / unit.millimetres()));
            }
            case TURN -> {
                if (!inverse) {
                    line("G93");
                    inverse = true;
                }
                line("G1 A" + degrees(move.a()) + " F" + feed(1 / move.minutes()));
            }
            case CIRCLE ->
                line("G3 X" + length(move.x()) + " Y" + length(0) + " I" + length(-move.x()) + " J" + length(0) + " F"
                        + feed(request.feed()));
        }
        angle = move.a();
    }

    /** Back to feeds in length per minute. */
    private void forward() {
        if (inverse) {
            line("G94");
            inverse = false;
        }
    }

    private String length(double millimetres) {
        return number(millimetres / unit.millimetres(), Quantity.LENGTH.decimals(unit));
    }

    private String degrees(double radians) {
        return number(radians * Quantity.ANGLE.factor(unit), 3);
    }

    /** A feed with its first digits, however small it is: no control takes a feed of nothing. */
    private static String feed(double value) {
        String text =
                new BigDecimal(value).round(FEED_DIGITS).stripTrailingZeros().toPlainString();
        return text.contains(".") ? text : text + ".0";
    }

    /** A decimal with a point, whatever the machine that this runs on writes. */
    private static String number(double value, int decimals) {
        String text = String.format(Locale.ROOT, "%." + decimals + "f", value);
        return text.matches("-0(\\.0*)?") ? text.substring(1) : text;
    }

    private void line(String words) {
        program.append(words).append('\n');
    }
}
