package org.orbwright.turning;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.Locale;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.orbwright.design.Design;
import org.orbwright.design.ImpossibleDesignException;
import org.orbwright.design.Violation;
import org.orbwright.notice.Notice;
import org.orbwright.quantity.LengthUnit;
import org.orbwright.quantity.Quantity;
import org.orbwright.turning.ControlRequest.Arcs;
import org.orbwright.turning.ControlRequest.RotaryFeed;
import org.orbwright.turning.ControlRequest.Turns;
import org.orbwright.turning.PathMove.Kind;
import org.orbwright.turning.PathRequest.Machine;

/**
 * Writes the way of a cutter as a program in the words of ISO 6983-1:2009 and RS-274, from memory: one word list to a
 * line. It uses no more than straight moves, and full circles where the control is not to have straight ones.
 */
public final class ProgramWriter {
    private static final MathContext FEED_DIGITS = new MathContext(6);
    private static final int ANGLE_DECIMALS = 3;
    private static final double FULL_TURN = 360;
    /** Some 20 MB of text. */
    private static final int MOST_SEGMENTS = 500_000;

    private final PathRequest request;
    private final ControlRequest control;
    private final TurningRequest turning;
    private final Design design;
    private final ToolPath path;
    private final LengthUnit unit;
    private final boolean rotary;
    private final ProgramText program;
    private boolean inverse;
    private double angle = Double.NaN;

    private ProgramWriter(PathRequest request, TurningRequest turning, Design design, ToolPath path) {
        this.request = request;
        this.control = request.control();
        this.turning = turning;
        this.design = design;
        this.path = path;
        this.unit = design.unit();
        this.rotary = request.machine() == Machine.ROTARY;
        this.program = new ProgramText(control);
    }

    /**
     * Writes a program.
     *
     * @param request the section of the path
     * @param turning the axis and the discs that the work is held by
     * @param notices what stands at its head
     * @throws ImpossibleDesignException if its circles are more straight moves than are answered
     */
    public static String write(
            PathRequest request, TurningRequest turning, Design design, ToolPath path, List<Notice> notices) {
        return new ProgramWriter(request.filled(design.unit()), turning, design, path).write(notices);
    }

    private String write(List<Notice> notices) {
        checkSegments();
        ProgramHead.lines(request, turning, design, path, notices).forEach(program::comment);
        begin();
        int pass = -1;
        for (PathMove move : path.moves()) {
            if (move.pass() != pass) {
                if (pass >= 0 && path.passes().get(pass).inAir()) {
                    program.comment("End of the pass in air: the spindle stops and the program waits");
                    program.comment("Cycle start starts the spindle again. Keep clear.");
                    stop();
                    program.block("M0");
                    spin();
                }
                pass = move.pass();
                program.comment("Pass " + (pass + 1) + " of " + path.passes().size() + ", sphere of radius "
                        + length(move.sphere()) + (path.passes().get(pass).inAir() ? ", in air" : ""));
            }
            move(move);
        }
        stop();
        program.block(control.end().name());
        return program.end();
    }

    private void checkSegments() {
        long segments = control.arcs() == Arcs.SEGMENTS
                ? path.moves().stream()
                        .filter(move -> move.kind() == Kind.CIRCLE)
                        .mapToLong(move -> RingSegments.sides(move.x()))
                        .sum()
                : 0;
        if (segments > MOST_SEGMENTS) {
            throw new ImpossibleDesignException(List.of(new Violation(
                    "/path/control/arcs",
                    "TOO_MANY_SEGMENTS",
                    "The circles would be " + segments + " straight moves, of which at most " + MOST_SEGMENTS
                            + " are written.",
                    Arcs.SEGMENTS.name(),
                    "circles, higher ridges, deeper passes or a larger cutter")));
        }
    }

    private void begin() {
        program.block(unit == LengthUnit.MM ? "G21" : "G20");
        program.block("G17 G40 G49 G80");
        // Only circles have a middle that I and J could be taken from absolutely.
        program.block(rotary || control.arcs() != Arcs.CIRCLES ? "G90 G94" : "G90 G91.1 G94");
        if (control.workOffset() != null) {
            program.block(control.workOffset().name());
        }
        if (control.tool() != null) {
            stop();
            program.block("T" + control.tool() + " M6");
            program.comment("Look where the cutter stands. Jog it above the work. Cycle start starts the spindle.");
            program.block("M0");
        }
        spin();
    }

    private void spin() {
        program.block("S" + number(request.spindle(), 0) + " M3");
        if (!control.coolant().word().isEmpty()) {
            program.block(control.coolant().word());
        }
        program.block("G4 " + control.dwell().word());
    }

    private void stop() {
        if (!control.coolant().word().isEmpty()) {
            program.block("M9");
        }
        program.block("M5");
    }

    private void move(PathMove move) {
        String place = "X" + length(move.x()) + " Z" + length(move.z());
        switch (move.kind()) {
            case RAPID -> rapid(move);
            case LINE -> {
                forward();
                program.block("G1 " + place + " F" + feed(request.feed()));
            }
            case PLUNGE -> {
                forward();
                program.block("G1 " + place + " F" + feed(path.plungeFeed() / unit.millimetres()));
            }
            case TURN -> turn(move);
            case CIRCLE -> circle(move.x());
        }
        angle = move.a();
    }

    private void rapid(PathMove move) {
        inverse = false;
        // Up first, then the table, then across: the cutter is above the work before anything else moves.
        program.block(undone() + "G0 Z" + length(move.z()));
        if (rotary && move.a() != angle) {
            program.block("G0 A" + degrees(move.a()));
        }
        program.block("G0 X" + length(move.x()) + " Y" + length(0));
    }

    private void turn(PathMove move) {
        boolean degrees = control.rotaryFeed() == RotaryFeed.DEGREES_PER_MINUTE;
        if (!degrees && !inverse) {
            program.block("G93");
            inverse = true;
        }
        String speed = " F" + feed((degrees ? FULL_TURN : 1) / move.minutes());
        if (control.turns() == Turns.ABSOLUTE) {
            program.block("G1 A" + degrees(move.a()) + speed);
        } else {
            program.block("G91 G1 A" + number(FULL_TURN, ANGLE_DECIMALS) + speed);
            program.block("G90");
        }
    }

    private void circle(double radius) {
        String speed = " F" + feed(request.feed());
        if (control.arcs() == Arcs.SEGMENTS) {
            for (Vector2D end : RingSegments.ends(radius)) {
                program.block("G1 X" + length(end.getX()) + " Y" + length(end.getY()) + speed);
            }
        } else {
            program.block(
                    "G3 X" + length(radius) + " Y" + length(0) + " I" + length(-radius) + " J" + length(0) + speed);
        }
    }

    /** Takes back what holds within a turn, even where a stop there has kept the program from doing so. */
    private String undone() {
        return (rotary && control.turns() == Turns.INCREMENTAL ? "G90 " : "")
                + (rotary && control.rotaryFeed() == RotaryFeed.INVERSE_TIME ? "G94 " : "");
    }

    /** Back to feeds in length per minute. */
    private void forward() {
        if (inverse) {
            program.block("G94");
            inverse = false;
        }
    }

    private String length(double millimetres) {
        return number(millimetres / unit.millimetres(), control.decimals());
    }

    private String degrees(double radians) {
        return number(radians * Quantity.ANGLE.factor(unit), ANGLE_DECIMALS);
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
}
