package org.orbwright.turning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.orbwright.design.Design;
import org.orbwright.design.DesignRequest;
import org.orbwright.fixture.Designs;
import org.orbwright.fixture.Slow;
import org.orbwright.notice.Notice;
import org.orbwright.notice.Notice.Kind;
import org.orbwright.quantity.LengthUnit;
import org.orbwright.turning.AxisRequest.Through;
import org.orbwright.turning.ControlRequest.Comments;
import org.orbwright.turning.PathRequest.CutterShape;
import org.orbwright.turning.PathRequest.LimitsRequest;
import org.orbwright.turning.PathRequest.Machine;

/** What a program says and how it begins and ends; a control of the test's own reads it. */
@Slow
class ProgramWriterTest {
    private static PathJob job(Machine machine) {
        return PathJob.of(
                Designs.example("dodecahedron-with-land"),
                machine,
                Through.FACE,
                PathJob.discs(80, 50, 6),
                PathJob.cutter(CutterShape.BALL, 20, null),
                0.5,
                10);
    }

    /** All comments before the first command, as one text. */
    private static String head(PathJob job) {
        StringBuilder head = new StringBuilder();
        for (String line : job.program().split("\n", -1)) {
            if (line.startsWith("G")) {
                break;
            }
            head.append(
                            line,
                            line.startsWith("(...") ? 4 : line.startsWith("(") ? 1 : 0,
                            Math.max(1, line.length() - 1))
                    .append(line.startsWith("(...") ? "" : " ");
        }
        return head.toString().replace(" )", "").replaceAll(" +", " ");
    }

    @Test
    void theTableIsSetToNothingAboveTheWorkAndWoundBackThere() {
        List<String> lines = List.of(job(Machine.ROTARY).program().split("\n", -1));
        int first = lines.indexOf("G0 A0.000");
        int last = lines.lastIndexOf("G0 A0.000");
        assertTrue(lines.get(first - 1).startsWith("G90 G94 G0 Z"));
        assertTrue(lines.stream().limit(first).noneMatch(line -> line.startsWith("G1 ")));
        assertTrue(first < last);
        assertTrue(lines.get(last - 1).startsWith("G90 G94 G0 Z"));
        assertTrue(lines.stream().skip(last + 1).noneMatch(line -> line.startsWith("G1 ")));
    }

    @Test
    void theSpindleIsWaitedForAndStopsAfterThePassInAir() {
        String program = job(Machine.ROTARY).program();
        assertEquals(2, program.split("M3\nG4 P5\n", -1).length - 1);
        assertTrue(program.contains(
                "(Cycle start starts the spindle again. Keep clear.)\nM5\nM0\nS9000 M3\nG4 P5\n(Pass 2 of "));
        assertTrue(program.indexOf("M0") < program.indexOf("(Pass 2 of "));
        String without = job(Machine.ROTARY).with("airPass", null).program();
        assertFalse(without.contains("M0"));
    }

    @Test
    void aProgramBeginsAndEndsAsControlsExpect() {
        List<String> lines = List.of(job(Machine.ROTARY).program().split("\n", -1));
        int unit = lines.indexOf("G21");
        assertEquals(List.of("G21", "G17 G40 G49 G80", "G90 G94", "S9000 M3", "G4 P5"), lines.subList(unit, unit + 5));
        assertEquals(List.of("M5", "M30", "%", ""), lines.subList(lines.size() - 4, lines.size()));
    }

    @Test
    void eachPassSaysItsSphereAndWhetherItGoesInAir() {
        // Corners 110.0443 mm out, a room of 8 mm, and passes of 10 mm to a sphere of 86.3 mm.
        List<String> passes = job(Machine.ROTARY)
                .program()
                .lines()
                .filter(line -> line.startsWith("(Pass ") || line.startsWith("(End "))
                .toList();
        assertEquals(
                List.of(
                        "(Pass 1 of 4, sphere of radius 118.0443, in air)",
                        "(End of the pass in air: the spindle stops and the program waits)",
                        "(Pass 2 of 4, sphere of radius 100.0443)",
                        "(Pass 3 of 4, sphere of radius 90.0443)",
                        "(Pass 4 of 4, sphere of radius 86.3000)"),
                passes);
    }

    @Test
    void noMoreThanHalfOfTheLastDecimalIsWrittenAsNothing() {
        // Four decimals of a millimetre, and five of an inch of 25.4 mm.
        assertEquals(0.00005, ControlRequest.USUAL.filled(LengthUnit.MM).halfStep(LengthUnit.MM), 1e-15);
        assertEquals(0.000127, ControlRequest.USUAL.filled(LengthUnit.IN).halfStep(LengthUnit.IN), 1e-15);
    }

    @Test
    void onlyCirclesNeedTheirMiddleRelative() {
        assertFalse(job(Machine.ROTARY).program().contains("G91.1"));
        assertTrue(job(Machine.THREE_AXIS).program().contains("\nG90 G91.1 G94\n"));
        assertFalse(job(Machine.THREE_AXIS).program().contains(" A"), "no table on three axes");
    }

    @ParameterizedTest
    @EnumSource(Machine.class)
    void theHeadSaysWhatIsTakenForGranted(Machine machine) {
        String head = head(job(machine).with("plungeFeed", null));
        for (String words : List.of(
                "No tool length offset is used",
                "Z0 is touched off with the tip of this cutter",
                "Stock: radius 110.04 mm",
                "Cutter: BALL, diameter 20 mm",
                "has to cut at its centre",
                "Holder: diameter 60 mm",
                "9000 mm is stated",
                "Spindle: 9000 turns a minute. Feed: 1200 mm a minute, straight down 300 mm a minute. Time with feed:",
                "Before the start jog the cutter above the work",
                "The first move goes straight to that height. It does not move X or Y.",
                "Do not start in the middle of the program.",
                "Some controls wait 5 milliseconds.")) {
            assertTrue(head.contains(words), () -> words + " in " + head);
        }
    }

    @Test
    void theHeadSaysWhatEachMachineNeeds() {
        String rotary = head(job(Machine.ROTARY));
        assertTrue(rotary.contains("may count on or wrap at 360 degrees"), rotary);
        assertTrue(rotary.contains("F after G93 is one over the minutes of a turn"), rotary);
        assertTrue(rotary.contains("Disc at plus X: diameter 80 mm, 88.9 mm from the middle, neck 50 mm."), rotary);
        assertTrue(rotary.contains("Room beside each: 6 mm"), rotary);
        String upright = head(job(Machine.THREE_AXIS));
        assertTrue(upright.contains("no disc, no screw and no centre on the upper end"), upright);
        assertTrue(upright.contains("a cup or a bed of the sphere's own radius"), upright);
        assertTrue(upright.contains("conventional cutting"), upright);
        assertFalse(upright.contains("A0"), upright);
        assertTrue(head(job(Machine.ROTARY)
                        .with("cutter", new PathRequest.CutterRequest(CutterShape.BALL, 20.0, null, null, null, null)))
                .contains("none is checked"));
    }

    /** What a caller may write to have a comment carried out, to end it early, or to begin a line of his own. */
    private static final List<String> HOSTILE = List.of(
            "MSG,",
            "py,import os",
            "msg ,x",
            "M S G,",
            "DEBUG,#1",
            "PRINT,",
            "LOG,",
            "LOGOPEN,a",
            "LOGAPPEND,a",
            "LOGCLOSE",
            "PROBEOPEN /tmp/x",
            "PROBECLOSE",
            "py,import os",
            "abort,",
            "RPY 1 2 3",
            "AXIS,stop",
            "(",
            ")",
            "((",
            "))",
            ";",
            "%",
            "!",
            "~",
            "?",
            "!~?",
            "\u0018",
            "\u037e",
            "\uff01",
            "\uff1f",
            "\uff5e",
            "\n%\n",
            "\n",
            "\r",
            "\r\n",
            "\t",
            "\f",
            "\u0085",
            "\u2028",
            "\u2029",
            "\uff08",
            "\uff09",
            "\uff1b",
            "\uff2d\uff33\uff27,",
            "\u2768",
            "M3",
            "G0 Z-50",
            "/",
            "N1",
            "O100",
            "[",
            "{",
            "\u0000",
            " ",
            "x".repeat(130));

    private static List<String> blocks(String program) {
        return program.lines()
                .filter(line -> !line.startsWith("(") && !line.startsWith(";"))
                .toList();
    }

    private static String hostile(Random random, int most) {
        StringBuilder text = new StringBuilder();
        while (text.length() < most) {
            text.append(HOSTILE.get(random.nextInt(HOSTILE.size())));
            text.append(random.nextBoolean() ? " " : "");
        }
        return text.substring(0, most);
    }

    @ParameterizedTest
    @EnumSource(Comments.class)
    void nothingThatACallerWritesIsCarriedOut(Comments comments) {
        Random random = new Random(20261126);
        PathJob job = job(Machine.ROTARY)
                .with(
                        "control",
                        new ControlRequest(null, null, null, null, null, null, null, null, comments, null, null, null));
        ToolPath path = job.path();
        List<String> blocks = blocks(job.program());
        for (int i = 0; i < 300; i++) {
            DesignRequest design = Designs.named(
                    i < HOSTILE.size() ? HOSTILE.get(i) : hostile(random, 1 + random.nextInt(120)),
                    job.designs().request());
            List<Notice> notices = List.of(
                    new Notice(Kind.STOP, "BAND_VANISHES", hostile(random, 300)),
                    new Notice(Kind.WARN, "TEST", HOSTILE.get(i % HOSTILE.size())));
            String program = ProgramWriter.write(job.request(), job.turning(), Design.of(design), path, notices);
            assertFalse(ProgramReader.run(program).isEmpty());
            assertEquals(blocks, blocks(program));
        }
    }

    @Test
    void theControlOfThisTestKnowsWhatIsCarriedOut() {
        for (String line : List.of(
                "(MSG, x)", "( msg,x)", "(M S G,x)", "(probeopen a.txt)", "(PROBECLOSE)", "(logclose)", "(Log,x)")) {
            assertTrue(CarriedOut.comment(line), line);
        }
        assertFalse(CarriedOut.comment("(... MSG, x)"));
        assertFalse(CarriedOut.comment("(STOP TEST: MSG, x)"));
    }

    @Test
    void everyNoticeStandsWholeInTheHeadAndStopsComeFirst() {
        List<Notice> notices = List.of(
                new Notice(
                        Kind.STOP,
                        "BREAK_THROUGH",
                        "The sphere breaks through. ".repeat(12).strip()),
                new Notice(Kind.WARN, "CUTS_AT_CENTRE", "It goes straight down."),
                new Notice(Kind.CAUTION, "GENERAL", "These numbers say what fits."));
        PathJob job = job(Machine.ROTARY);
        String program = ProgramWriter.write(job.request(), job.turning(), job.built(), job.path(), notices);
        List<String> comments = new ArrayList<>();
        for (String line : program.lines().filter(l -> l.startsWith("(")).toList()) {
            String words = line.substring(1, line.length() - 1);
            if (words.startsWith("... ")) {
                comments.set(comments.size() - 1, comments.get(comments.size() - 1) + words.substring(3));
            } else {
                comments.add(words);
            }
        }
        assertEquals(notices.stream().map(Notice::line).toList(), comments.subList(0, notices.size()));
        assertEquals("Design: dodecahedron", comments.get(notices.size()));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Lantern; oak (red) | Lantern, oak [red]",
                "50% oak;50 % ash | 50 percent oak,50 percent ash",
                "\u00c4hre \u00e9t\u00e9 | Ahre ete",
                "\uff08a\uff1bb\uff09 | _a_b_",
                "3\u00bd in of 10\u00b2 | 3_ in of 10_",
                "10 \u00d7 2 \u6728 | 10 _ 2 _",
                "Oak! ~ 3 mm? | Oak. - 3 mm.",
                "() | []"
            })
    void nothingOfATextIsLost(String written, String read) {
        String program = named(written, List.of(new Notice(Kind.STOP, "TEST", "Of " + written + "; that is all.")));
        assertFalse(ProgramReader.run(program).isEmpty());
        assertTrue(program.startsWith("%\n(STOP TEST: Of " + read + ", that is all.)\n"), program);
        assertTrue(program.contains("\n(Design: " + read + ", dodecahedron)\n"), program);
    }

    @Test
    void aNameOfBlanksAloneIsLeftOut() {
        assertTrue(named("\u00a0 ", List.of()).startsWith("%\n(Design: dodecahedron)\n"));
    }

    private static String named(String name, List<Notice> notices) {
        PathJob job = job(Machine.ROTARY);
        DesignRequest design = Designs.named(name, job.designs().request());
        return ProgramWriter.write(job.request(), job.turning(), Design.of(design), job.path(), notices);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.1, 1, 1e5})
    void everyFeedIsMoreThanNothing(double feed) {
        for (String line : job(Machine.ROTARY)
                .with("feed", feed)
                .with("plungeFeed", null)
                .program()
                .split("\n", -1)) {
            int at = line.indexOf(" F");
            if (line.startsWith("G") && at > 0) {
                assertTrue(Double.parseDouble(line.substring(at + 2)) > 0, line);
            }
        }
        // A turn at 0.1 mm a minute takes more than three days.
        ToolPath path = job(Machine.ROTARY).with("feed", 0.1).path();
        assertTrue(path.moves().stream().mapToDouble(PathMove::minutes).max().orElse(0) > 3 * 24 * 60);
    }

    @Test
    void theTableTurnsNoFasterThanItCan() {
        PathJob free =
                job(Machine.ROTARY).with("discs", PathJob.discs(80, 0.1, 6)).with("feed", 10_000.0);
        LimitsRequest limits = new LimitsRequest(200.0, 200.0, 200.0, 200.0, 15.0);
        PathJob limited = free.with("limits", limits);
        double quickest = limited.path().moves().stream()
                .filter(move -> move.kind() == PathMove.Kind.TURN)
                .mapToDouble(PathMove::minutes)
                .min()
                .orElse(0);
        assertEquals(1 / 15.0, quickest, 1e-12);
        assertTrue(limited.path().minutes() > free.path().minutes());
        assertEquals(
                free.path().moves().stream().map(PathMove::z).toList(),
                limited.path().moves().stream().map(PathMove::z).toList());
    }

    @Test
    void straightDownItGoesWithItsOwnFeed() {
        assertTrue(job(Machine.ROTARY).with("plungeFeed", 111.0).program().contains(" F111.0\n"));
        assertEquals(300, job(Machine.ROTARY).with("plungeFeed", null).path().plungeFeed());
    }
}
