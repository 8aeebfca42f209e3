package org.orbwright.turning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.orbwright.design.ImpossibleDesignException;
import org.orbwright.design.Violation;
import org.orbwright.fixture.Designs;
import org.orbwright.fixture.Slow;
import org.orbwright.fixture.Trials;
import org.orbwright.notice.Notice;
import org.orbwright.notice.Notice.Kind;
import org.orbwright.quantity.LengthUnit;
import org.orbwright.turning.AxisRequest.Through;
import org.orbwright.turning.ControlRequest.Arcs;
import org.orbwright.turning.ControlRequest.Comments;
import org.orbwright.turning.ControlRequest.Coolant;
import org.orbwright.turning.ControlRequest.Dwell;
import org.orbwright.turning.ControlRequest.End;
import org.orbwright.turning.ControlRequest.RotaryFeed;
import org.orbwright.turning.ControlRequest.Turns;
import org.orbwright.turning.ControlRequest.WorkOffset;
import org.orbwright.turning.PathRequest.CutterShape;
import org.orbwright.turning.PathRequest.Machine;
import org.orbwright.turning.ProgramReader.Position;
import org.orbwright.turning.ProgramReader.Table;

/**
 * Programs for several controls. A control of the test's own reads each, and all have to move the cutter the same way.
 */
@Slow
class ControlsTest {
    /** Turns, feed of the table, arcs; the rest is left out. */
    static ControlRequest motion(Turns turns, RotaryFeed feed, Arcs arcs) {
        return new ControlRequest(null, null, turns, feed, arcs, null, null, null, null, null, null, null);
    }

    static final ControlRequest FRAME = new ControlRequest(
            WorkOffset.G57,
            12,
            null,
            null,
            null,
            Dwell.X_SECONDS,
            Coolant.FLOOD,
            End.M2,
            Comments.SEMICOLON,
            true,
            false,
            3);
    static final ControlRequest FINE = new ControlRequest(
            WorkOffset.G54,
            1,
            Turns.INCREMENTAL,
            RotaryFeed.DEGREES_PER_MINUTE,
            Arcs.SEGMENTS,
            Dwell.P_MILLISECONDS,
            Coolant.MIST,
            End.M30,
            Comments.BRACKETS,
            true,
            true,
            6);

    /** A way of writing, on a table of a kind, for a machine. */
    record Variant(String name, PathJob job, Table table) {
        @Override
        public String toString() {
            return name + " " + job + " " + job.built().unit() + " " + table;
        }
    }

    static PathJob job(Machine machine, LengthUnit unit) {
        boolean inches = unit == LengthUnit.IN;
        double scale = inches ? 1 / 25.4 : 1;
        Designs lantern = Designs.example("dodecahedron-with-land");
        PathJob job = PathJob.of(
                inches ? lantern.times(scale).in(LengthUnit.IN) : lantern,
                machine,
                Through.FACE,
                PathJob.discs(80 * scale, 50 * scale, 6 * scale),
                PathJob.cutter(CutterShape.BALL, 16 * scale, null),
                0.4 * scale,
                9 * scale);
        return job.with("leave", 0.3 * scale)
                .with("feed", 1200 * scale)
                .with("plungeFeed", 250 * scale)
                .with("clearHeight", 16 * scale);
    }

    static Stream<Variant> variants() {
        return Trials.every(
                3,
                Stream.of(LengthUnit.values())
                        .flatMap(unit -> Stream.concat(rotary(job(Machine.ROTARY, unit)), upright(unit))));
    }

    private static Stream<Variant> rotary(PathJob job) {
        PathJob absolute = job.with("control", motion(Turns.ABSOLUTE, RotaryFeed.INVERSE_TIME, null));
        PathJob degrees = job.with("control", motion(Turns.INCREMENTAL, RotaryFeed.DEGREES_PER_MINUTE, null));
        PathJob both = job.with("control", motion(Turns.ABSOLUTE, RotaryFeed.DEGREES_PER_MINUTE, null));
        return Stream.of(
                new Variant("usual", job, Table.WRAPS),
                new Variant("absolute", absolute, Table.COUNTS_ON),
                new Variant("degrees", degrees, Table.WRAPS),
                new Variant("degrees", degrees, Table.COUNTS_ON),
                new Variant("absolute degrees", both, Table.COUNTS_ON),
                new Variant("frame", job.with("control", FRAME), Table.WRAPS),
                new Variant("fine", job.with("control", FINE), Table.COUNTS_ON));
    }

    private static Stream<Variant> upright(LengthUnit unit) {
        PathJob job = job(Machine.THREE_AXIS, unit);
        return Stream.of(
                new Variant(
                        "unstated",
                        job.with("control", motion(null, null, Arcs.CIRCLES_WITHOUT_G91_1)),
                        Table.COUNTS_ON),
                new Variant("segments", job.with("control", motion(null, null, Arcs.SEGMENTS)), Table.COUNTS_ON),
                new Variant("frame", job.with("control", FRAME), Table.COUNTS_ON),
                new Variant("fine", job.with("control", FINE), Table.COUNTS_ON));
    }

    @ParameterizedTest
    @MethodSource("variants")
    void allMoveTheCutterTheSameWay(Variant variant) {
        PathJob usual = variant.job().with("control", null);
        List<Position> expected = usual.run();
        List<Position> found = variant.job().run(variant.table());
        assertEquals(expected.size(), found.size());
        double written = 1.001 * (usual.halfStep() + variant.job().halfStep());
        double parked = found.get(0).a() - expected.get(0).a();
        double minutes = 0;
        for (int i = 0; i < found.size(); i++) {
            Position one = expected.get(i);
            Position other = found.get(i);
            assertEquals(one.motion(), other.motion());
            assertEquals(one.x(), other.x(), written);
            assertEquals(one.y(), other.y(), written);
            assertEquals(one.z(), other.z(), written);
            if (one.ring()) {
                // How far the table turns: a table that wraps is not wound back.
                assertEquals(
                        one.a() - expected.get(i - 1).a(),
                        other.a() - found.get(i - 1).a(),
                        1e-9);
            }
            minutes += other.minutes();
        }
        assertEquals(0, parked, 0);
        assertEquals(usual.path().minutes(), minutes, 2e-3 * minutes);
    }

    @ParameterizedTest
    @MethodSource("variants")
    void noneGougesOrMeetsWhatStands(Variant variant) {
        PathSimulation simulation = new PathSimulation(variant.job(), variant.table());
        simulation.cutterNeverGoesIntoTheSphere();
        simulation.cutterStaysClearOfDiscsAndNecks();
        simulation.rapidMovesAreAboveAllAndOneAxisAtATime();
        simulation.plungesAreNoDeeperThanAPassAndTheHolderMeetsNothing();
    }

    @ParameterizedTest
    @MethodSource("variants")
    void theCutterPassesTheWoodAtTheStatedFeed(Variant variant) {
        PathJob job = variant.job();
        double feed = job.millimetres(job.request().feed());
        double ball = job.cutter().radius();
        double sphere = job.path().sphere();
        int seen = 0;
        for (Position at : job.run(variant.table())) {
            boolean last = Math.abs(Math.hypot(at.x(), at.z() + ball) - sphere - ball) < 4 * job.halfStep() + 1e-3;
            if (at.ring() && last && job.rotary()) {
                // The ball touches the sphere on the line between their middles.
                double around = 2 * Math.PI * sphere * (at.z() + ball) / (sphere + ball);
                assertEquals(feed, around / at.minutes(), 5e-4 * feed);
                seen++;
            } else if (at.ring() && last && at.x() > 1) {
                assertEquals(feed, 2 * Math.PI * at.x() / at.minutes(), 1e-2 * feed);
                seen++;
            }
        }
        assertTrue(seen > 20, () -> "rings of the last pass in " + variant);
    }

    @Test
    void theTableOfThisTestThatWrapsDoesNotTurnForWholeTurnsThatAreAbsolute() {
        PathJob job = job(Machine.ROTARY, LengthUnit.MM)
                .with("control", motion(Turns.ABSOLUTE, RotaryFeed.DEGREES_PER_MINUTE, null));
        assertTrue(job.run(Table.COUNTS_ON).stream().anyMatch(Position::ring));
        // A is not even at 0 at the end: nothing was turned at all.
        assertThrows(AssertionError.class, () -> job.run(Table.WRAPS));
    }

    @Test
    void theControlOfThisTestRefusesWhatItDoesNotKnow() {
        String program = job(Machine.ROTARY, LengthUnit.MM).program();
        for (String wrong : List.of("G90 G95", "G90 G94 H1", "G90 G94 M8", "(MSG, x)", "G92 X0", "M4", "X5")) {
            String changed = program.replaceFirst("G90 G94\n", wrong + "\n");
            assertFalse(changed.equals(program));
            assertThrows(AssertionError.class, () -> ProgramReader.run(changed), wrong);
        }
        assertThrows(AssertionError.class, () -> ProgramReader.run(program.replace("G90", "G91")), "increments");
        assertThrows(
                AssertionError.class,
                () -> ProgramReader.run(program.replaceFirst("G93\n", "").replaceFirst("G91 G1", "G93 G91 G2")));
    }

    @ParameterizedTest
    @MethodSource("variants")
    void theHeadIsReadAloud(Variant variant) {
        PathJob job = variant.job();
        String program = ProgramWriter.write(job.request(), job.turning(), job.built(), job.path(), List.of());
        String head = program.lines()
                .filter(line -> line.startsWith("(") || line.startsWith(";"))
                .takeWhile(line -> !line.contains("Pass 1 of"))
                .map(line -> line.replaceAll("^(\\(|; )|\\)$", ""))
                .collect(Collectors.joining("\n"))
                .replace("\n...", "");
        for (String sentence : head.split("\\. |\n", -1)) {
            assertTrue(sentence.split(" ", -1).length <= 25, sentence);
        }
    }

    @ParameterizedTest
    @EnumSource(Comments.class)
    void stopsStandInTheHeadHoweverCommentsAreMarked(Comments comments) {
        PathJob job = job(Machine.ROTARY, LengthUnit.MM)
                .with(
                        "control",
                        new ControlRequest(null, null, null, null, null, null, null, null, comments, null, null, null));
        Notice stop = new Notice(Kind.STOP, "BREAK_THROUGH", "MSG, it (breaks); through.\nG0 Z-9\n;py,x");
        String program = ProgramWriter.write(job.request(), job.turning(), job.built(), job.path(), List.of(stop));
        assertFalse(ProgramReader.run(program).isEmpty());
        assertTrue(program.contains("STOP BREAK_THROUGH: MSG, it [breaks], through. G0 Z-9 ,py,x"), program);
    }

    @Test
    void theHeadWarnsOfWhatControlsTakeInSeveralWays() {
        PathJob rotary = job(Machine.ROTARY, LengthUnit.MM);
        String degrees =
                rotary.with("control", FINE).program().replace(")\n(...", "").replaceAll("\\s+", " ");
        assertTrue(degrees.contains("Some controls take it for a length at a diameter that is set in them"), degrees);
        assertTrue(
                degrees.contains(
                        "G4 P5000 waits 5 seconds where P is in milliseconds. Some controls wait 5000 seconds."),
                degrees);
        assertTrue(degrees.contains("T1 is changed to: Z0 is touched off"), degrees);
        assertTrue(degrees.contains("some controls apply a tool offset with M6"), degrees);
        String absolute =
                rotary.with("control", motion(Turns.ABSOLUTE, null, null)).program();
        assertTrue(absolute.contains("not wrapped at 360 degrees"), absolute);
        assertTrue(absolute.replace(")\n(...", "").contains("cutter goes down and nothing turns"), absolute);
        String unstated = job(Machine.THREE_AXIS, LengthUnit.MM)
                .with("control", motion(null, null, Arcs.CIRCLES_WITHOUT_G91_1))
                .program();
        assertFalse(unstated.contains("\nG90 G91.1"));
        assertTrue(unstated.replace(")\n(...", "").contains("takes them from zero cuts into the sphere"), unstated);
    }

    @Test
    void segmentsThatAreTooManyAreRefused() {
        PathJob job = PathJob.cube(Machine.THREE_AXIS).with("passDepth", 0.2).with("scallop", 0.05);
        assertTrue(job.program().length() > 0);
        PathJob straight = job.with("control", motion(null, null, Arcs.SEGMENTS));
        Violation violation = assertThrows(ImpossibleDesignException.class, straight::program)
                .violations()
                .get(0);
        assertEquals("/path/control/arcs", violation.path());
        assertEquals("TOO_MANY_SEGMENTS", violation.code());
        assertTrue(violation.message().matches("The circles would be [0-9]{6,} straight moves, of which .*"));
    }

    @Test
    void segmentsGoBeyondLimitsBeforeCirclesDo() {
        PathJob job = PathJob.cube(Machine.THREE_AXIS);
        double farthest = job.path().farthest();
        PathJob limited = job.with(
                "limits", new PathRequest.LimitsRequest(farthest + 0.005, farthest + 0.005, 900.0, 900.0, null));
        assertEquals(farthest, limited.path().farthest());
        List<Violation> violations = assertThrows(
                        ImpossibleDesignException.class,
                        limited.with("control", motion(null, null, Arcs.SEGMENTS))::path)
                .violations();
        assertEquals(
                List.of("/path/limits/x", "/path/limits/y"),
                violations.stream().map(Violation::path).toList());
    }
}
