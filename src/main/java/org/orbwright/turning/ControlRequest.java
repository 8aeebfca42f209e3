package org.orbwright.turning;

import static java.util.Objects.requireNonNullElse;

import jakarta.validation.constraints.Max;
import jakarta.validation.constraints.Min;
import java.time.Duration;
import org.orbwright.quantity.Describe;
import org.orbwright.quantity.LengthUnit;
import org.orbwright.quantity.Quantity;

/**
 * How a program is worded for a control. ISO 6983-1 leaves much of it to the maker. What is left out is what the most
 * controls take: those of the sources below, and what is marked "from memory".
 *
 * <ul>
 *   <li>LinuxCNC documentation, "G-code overview": percent signs, line numbers, both kinds of comment, M2 and M30; wiki
 *       page "WrappedRotaryAxes": on a wrapped axis the sign is the direction, and G91 is for a whole turn.
 *   <li>Grbl 1.1, README, "List of Supported G-Codes": G54 to G59, G91.1, G93, G94, M2, M30, M7 to M9, but no M6; its
 *       {@code protocol.c}: semicolons for comments, percent signs not supported.
 *   <li>FANUC B-63534EN/02, 20.2.1 "Rotary axis roll-over": absolute angles go the shortest way, incremental ones are
 *       turned as written; B-63174EN/03, 4.2: the feed of a rotary axis is in degrees a minute.
 *   <li>Haas, "G93 Inverse Time Feed Mode": F is strokes a minute, and the diameters of settings 34 and 79 have no part
 *       in it. Beckhoff TF5200, "Machining time or feedrate": F after G93 is a time in seconds.
 *   <li>NIST RS274/NGC, "Set Distance Mode": I and J are always increments. From memory: Mach-like controls may be set
 *       to take them absolutely, and FANUC and Haas refuse G91.1.
 *   <li>Yaskawa, "G04: Dwell": P in milliseconds. Beckhoff TF5100, "Dwell Time": X in seconds.
 * </ul>
 */
@Describe("How a program is worded for a control. Left out, it is worded as most controls take it. Compare it with the"
        + " manual of the control, and run the program in air first.")
public record ControlRequest(
        @Describe(
                value = "Work offset that the program calls. If left out, the active one is used.",
                example = "\"G54\"",
                optional = true)
        WorkOffset workOffset,

        @Describe(
                value = "Number of the tool. The program then stops the spindle, changes to the tool (T and M6) and"
                        + " waits (M0) before the spindle starts. If left out, no tool is changed.",
                example = "3",
                optional = true)
        @Min(1)
        @Max(9999)
        Integer tool,

        @Describe(
                value = "INCREMENTAL: each turn of the table is 360 degrees more (G91), for tables that count on and"
                        + " for tables that wrap at 360 degrees. ABSOLUTE: A goes on to 360, 720 and so on, for tables"
                        + " that count on only. INCREMENTAL if left out.",
                example = "\"INCREMENTAL\"",
                optional = true)
        Turns turns,

        @Describe(
                value = "INVERSE_TIME: F of a turn is one over its minutes (G93). DEGREES_PER_MINUTE: F of a turn is"
                        + " in degrees a minute (G94), for controls without G93 or with seconds after it. INVERSE_TIME"
                        + " if left out.",
                example = "\"INVERSE_TIME\"",
                optional = true)
        RotaryFeed rotaryFeed,

        @Describe(
                value = "On three axes. CIRCLES: full circles (G3 with I and J), after G91.1. CIRCLES_WITHOUT_G91_1:"
                        + " the same for controls that refuse G91.1; I and J must be taken from the start of the"
                        + " circle. SEGMENTS: straight moves around the circle. Before they are rounded to decimals,"
                        + " they lie at most 0.01 mm outside it and never inside. CIRCLES if left out.",
                example = "\"CIRCLES\"",
                optional = true)
        Arcs arcs,

        @Describe(
                value = "How 5 seconds are written that the program waits for the spindle. P_SECONDS: G4 P5."
                        + " P_MILLISECONDS: G4 P5000. X_SECONDS: G4 X5.0. P_SECONDS if left out.",
                example = "\"P_SECONDS\"",
                optional = true)
        Dwell dwell,

        @Describe(
                value = "OFF: no coolant. MIST: M7, FLOOD: M8, each with M9 whenever the spindle stops. Shops often"
                        + " blow air by one of them (common practice, no source). OFF if left out.",
                example = "\"OFF\"",
                optional = true)
        Coolant coolant,

        @Describe(value = "Last word of the program; M30 if left out.", example = "\"M30\"", optional = true)
        End end,

        @Describe(
                value = "BRACKETS: comments in round brackets. SEMICOLON: comments after a semicolon. Where a control"
                        + " ends its lines with a semicolon, only BRACKETS will do. BRACKETS if left out.",
                example = "\"BRACKETS\"",
                optional = true)
        Comments comments,

        @Describe(
                value = "Whether lines that are no comment are numbered by tens, from N10 to N99990 and again. No if"
                        + " left out.",
                example = "false",
                optional = true)
        Boolean lineNumbers,

        @Describe(
                value = "Whether the first and the last line is a percent sign. Yes if left out.",
                example = "true",
                optional = true)
        Boolean percentSigns,

        @Describe(
                value = "Decimals of lengths, to which the way is rounded. 4 in millimetres and 5 in inches if"
                        + " left out.",
                example = "4",
                optional = true)
        @Min(3)
        @Max(6)
        Integer decimals) {

    /** How long a program waits for the spindle to come to speed. Common practice, no source. */
    static final Duration WAIT = Duration.ofSeconds(5);

    /** What is worded as most controls take it. */
    static final ControlRequest USUAL =
            new ControlRequest(null, null, null, null, null, null, null, null, null, null, null, null);

    /** The same with everything filled in. */
    ControlRequest filled(LengthUnit unit) {
        return new ControlRequest(
                workOffset,
                tool,
                requireNonNullElse(turns, Turns.INCREMENTAL),
                requireNonNullElse(rotaryFeed, RotaryFeed.INVERSE_TIME),
                requireNonNullElse(arcs, Arcs.CIRCLES),
                requireNonNullElse(dwell, Dwell.P_SECONDS),
                requireNonNullElse(coolant, Coolant.OFF),
                requireNonNullElse(end, End.M30),
                requireNonNullElse(comments, Comments.BRACKETS),
                requireNonNullElse(lineNumbers, false),
                requireNonNullElse(percentSigns, true),
                requireNonNullElse(decimals, Quantity.LENGTH.decimals(unit)));
    }

    /**
     * Half of the last decimal that lengths are written to, in millimetres: no more than this is written as nothing.
     *
     * @param unit of the program, which is filled in
     */
    double halfStep(LengthUnit unit) {
        return unit.toMillimetres(Math.pow(10, -decimals) / 2);
    }

    /** Work offsets that ISO 6983-1 has. */
    public enum WorkOffset {
        /** The first. */
        G54,
        /** The second. */
        G55,
        /** The third. */
        G56,
        /** The fourth. */
        G57,
        /** The fifth. */
        G58,
        /** The sixth. */
        G59
    }

    /** How turns of the table are written. */
    public enum Turns {
        /** By 360 degrees more. */
        INCREMENTAL,
        /** To the next multiple of 360 degrees. */
        ABSOLUTE
    }

    /** How the feed of the table is written. */
    public enum RotaryFeed {
        /** As one over minutes. */
        INVERSE_TIME,
        /** As degrees a minute. */
        DEGREES_PER_MINUTE
    }

    /** How circles are written. */
    public enum Arcs {
        /** As full circles, after a word that says how their middle is stated. */
        CIRCLES,
        /** As full circles. */
        CIRCLES_WITHOUT_G91_1,
        /** As straight moves. */
        SEGMENTS
    }

    /** How the wait for the spindle is written. */
    public enum Dwell {
        /** P in seconds. */
        P_SECONDS("P" + WAIT.toSeconds()),
        /** P in milliseconds. */
        P_MILLISECONDS("P" + WAIT.toMillis()),
        /** X in seconds. */
        X_SECONDS("X" + WAIT.toSeconds() + ".0");

        private final String word;

        Dwell(String word) {
            this.word = word;
        }

        /** What stands after G4. */
        String word() {
            return word;
        }
    }

    /** Coolant or air. */
    public enum Coolant {
        /** None. */
        OFF(""),
        /** Mist. */
        MIST("M7"),
        /** Flood. */
        FLOOD("M8");

        private final String word;

        Coolant(String word) {
            this.word = word;
        }

        /** What switches it on; empty for none. */
        String word() {
            return word;
        }
    }

    /** How a program ends. */
    public enum End {
        /** End of program. */
        M2,
        /** End of program with a reset. */
        M30
    }

    /** How comments are marked. */
    public enum Comments {
        /** In round brackets. */
        BRACKETS,
        /** After a semicolon. */
        SEMICOLON
    }
}
