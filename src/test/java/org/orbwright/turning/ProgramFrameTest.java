package org.orbwright.turning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.orbwright.turning.ControlsTest.FINE;
import static org.orbwright.turning.ControlsTest.FRAME;
import static org.orbwright.turning.ControlsTest.job;
import static org.orbwright.turning.ControlsTest.motion;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.orbwright.quantity.LengthUnit;
import org.orbwright.turning.ControlRequest.Dwell;
import org.orbwright.turning.ControlRequest.RotaryFeed;
import org.orbwright.turning.ControlRequest.Turns;
import org.orbwright.turning.PathRequest.Machine;
import org.orbwright.turning.ProgramReader.Position;

/** The lines around the moves: how a program begins and ends, changes the tool, waits and goes on. */
class ProgramFrameTest {
    @Test
    void framesAreWrittenAsStated() {
        String program =
                job(Machine.ROTARY, LengthUnit.MM).with("control", FRAME).program();
        List<String> lines =
                program.lines().filter(line -> !line.startsWith(";")).toList();
        assertEquals(
                List.of(
                        "N10 G21",
                        "N20 G17 G40 G49 G80",
                        "N30 G90 G94",
                        "N40 G57",
                        "N50 M9",
                        "N60 M5",
                        "N70 T12 M6",
                        "N80 M0",
                        "N90 S9000 M3",
                        "N100 M8",
                        "N110 G4 X5.0"),
                lines.subList(0, 11));
        assertTrue(lines.get(11).matches("N120 G90 G94 G0 Z[0-9]+\\.[0-9]{3}"), lines.get(11));
        assertTrue(
                program.contains("\nN70 T12 M6\n; Look where the cutter stands. Jog it above the work. Cycle start"
                        + " starts the spindle.\nN80 M0\n"),
                program);
        List<String> end = lines.subList(lines.size() - 3, lines.size());
        assertEquals(
                List.of("M9", "M5", "M2"),
                end.stream().map(line -> line.split(" ", 2)[1]).toList());
    }

    @Test
    void lineNumbersBeginAgain() {
        String program =
                job(Machine.THREE_AXIS, LengthUnit.MM).with("control", FINE).program();
        assertTrue(program.contains("\nN99990 "));
        assertTrue(program.indexOf("\nN10 ", program.indexOf("\nN99990 ")) > 0);
        assertFalse(program.contains("\nN100000 "));
    }

    @ParameterizedTest
    @CsvSource({"P_SECONDS,G4 P5", "P_MILLISECONDS,G4 P5000", "X_SECONDS,G4 X5.0"})
    void theSpindleIsWaitedForInTheWordsOfTheControl(Dwell dwell, String block) {
        String program = job(Machine.ROTARY, LengthUnit.MM)
                .with("airPass", true)
                .with(
                        "control",
                        new ControlRequest(null, null, null, null, null, dwell, null, null, null, null, null, null))
                .program();
        assertEquals(
                List.of(block, block),
                program.lines().filter(line -> line.startsWith("G4")).toList());
        assertTrue(program.contains("(" + block + " waits 5 seconds where "), program);
    }

    /** A turn holds A in increments and F for a turn; whoever stops it and goes on at a way up is not to keep them. */
    @ParameterizedTest
    @EnumSource(Turns.class)
    void aWayUpTakesBackWhatATurnLeaves(Turns turns) {
        for (RotaryFeed feed : RotaryFeed.values()) {
            String program = job(Machine.ROTARY, LengthUnit.MM)
                    .with("control", motion(turns, feed, null))
                    .program();
            String kept = (turns == Turns.INCREMENTAL ? "G90 " : "") + (feed == RotaryFeed.INVERSE_TIME ? "G94 " : "");
            List<String> up =
                    program.lines().filter(line -> line.contains("G0 Z")).toList();
            assertTrue(up.size() > 2 && up.stream().allMatch(line -> line.startsWith(kept + "G0 Z")), program);
            List<Position> whole = ProgramReader.run(program);
            // From the last turn before each way up, nothing is read until there.
            String stopped = program.replaceAll("((?:G91 )?G1 A.*\n)(?:G9[04]\n)*(?=.*G0 Z)", "$1");
            assertEquals(turns == Turns.ABSOLUTE, stopped.equals(program));
            assertEquals(whole, ProgramReader.run(stopped));
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"M5", "M0", "G4 P5000"})
    void theControlOfThisTestRefusesAChangeOfTheToolWithout(String block) {
        String program = job(Machine.ROTARY, LengthUnit.MM)
                .with("control", FINE)
                .program()
                .replaceAll("(?m)^N[0-9]+ ", "");
        assertFalse(ProgramReader.run(program).isEmpty());
        assertThrows(AssertionError.class, () -> ProgramReader.run(program.replaceFirst("\n" + block + "\n", "\n")));
    }
}
