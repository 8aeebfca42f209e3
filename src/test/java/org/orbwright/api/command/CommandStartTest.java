package org.orbwright.api.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.main.Launch;
import io.quarkus.test.junit.main.LaunchResult;
import io.quarkus.test.junit.main.QuarkusMainLauncher;
import io.quarkus.test.junit.main.QuarkusMainTest;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.MethodOrderer;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestMethodOrder;
import org.junit.jupiter.api.io.TempDir;

/** Each command as it is started: by its name, with what it prints alone on standard output, and its exit code. */
@QuarkusMainTest
@TestMethodOrder(MethodOrderer.OrderAnnotation.class)
class CommandStartTest {
    private static final Path WORKED = Path.of("src/main/resources/designs/icosahedron-mixed.json");

    /** The command shuts the port for the whole process, which here is that of other tests too. */
    @AfterAll
    static void openThePortAgain() {
        Main.SETTINGS.keySet().forEach(System::clearProperty);
    }

    private static String line() throws IOException {
        return Files.readString(WORKED).replaceAll("\\s*\\R\\s*", " ").strip() + "\n";
    }

    private static void assertTold(String text, String... parts) {
        for (String part : parts) {
            assertTrue(text.contains(part), () -> part + " is not in:\n" + text);
        }
        assertFalse(text.contains("Exception"), text);
    }

    /** The numbers are those of the README, and its units. */
    @Test
    @Order(2)
    @Launch({"print-sheet", "icosahedron-mixed"})
    void printsTheSheetOfAWorkedDesignForPeople(LaunchResult result) {
        String text = result.getOutput();
        assertTold(
                text, "Tide lamp (invented)", "  WARN Band 2 (red alder) of the triangle segments is only 5 mm wide.");
        assertTold(text, "Bevel, °   Blade tilt, °", "69.09           20.91");
        assertTold(text, "Thinnest wall                           7.36   mm");
        assertTold(text, "Edge middle, mm", "15.06", "white ash", "1.519");
        List<String> order = List.of(
                "WARN",
                "Angles of the saw",
                "Segments\n",
                "Blanks and strips",
                "Sphere and wall",
                "Bands that",
                "Cautions");
        for (int i = 1; i < order.size(); i++) {
            assertTrue(text.indexOf(order.get(i - 1)) < text.indexOf(order.get(i)), order.get(i));
        }
    }

    @Test
    @Launch(
            value = {"print-sheet", "pom.xml"},
            exitCode = 1)
    void saysWhatIsWrongWithAFileThatIsNoDesign(LaunchResult result) {
        assertEquals("", result.getOutput());
        assertTold(
                result.getErrorOutput(),
                "No sheet can be made of pom.xml.",
                "- The body is not JSON at or just before");
    }

    @Test
    void answersEveryLineOfAFile(QuarkusMainLauncher launcher, @TempDir Path folder) throws IOException {
        Path designs = Files.writeString(folder.resolve("designs.ndjson"), line() + "\n" + line());
        LaunchResult result = launcher.launch("batch", designs.toString());
        assertEquals(0, result.exitCode(), result.getErrorOutput());
        List<String> answers = result.getOutputStream();
        assertEquals(2, answers.size(), result.getOutput());
        assertTrue(answers.get(0).startsWith("{\"line\":1,\"sheet\":{"), answers.get(0));
        assertTrue(answers.get(0).contains("\"bladeTilt\":20.9052"), answers.get(0));
        assertTrue(answers.get(1).startsWith("{\"line\":3,\"sheet\":{"), answers.get(1));
    }

    @Test
    void writesAFileOfAnswersThatIsWholeAndTellsOfProblems(QuarkusMainLauncher launcher, @TempDir Path folder)
            throws IOException {
        Path designs = Files.writeString(folder.resolve("designs.ndjson"), line() + "{}\n" + line());
        Path answers = folder.resolve("answers.ndjson");
        LaunchResult result = launcher.launch("batch", "--answer=sphere", designs.toString(), answers.toString());
        assertEquals(10, result.exitCode(), result.getErrorOutput());
        assertEquals("", result.getOutput());
        List<String> lines = Files.readAllLines(answers);
        assertEquals(3, lines.size());
        assertTrue(lines.get(0).startsWith("{\"line\":1,\"sphere\":{"), lines.get(0));
        assertTrue(lines.get(1).startsWith("{\"line\":2,\"problem\":{"), lines.get(1));
        assertTrue(lines.get(1).contains("size is missing"), lines.get(1));
        assertTrue(lines.get(2).startsWith("{\"line\":3,\"sphere\":{"), lines.get(2));
        assertFalse(Files.exists(folder.resolve("answers.ndjson.part")), "an unfinished file is left behind");
    }

    /** The first and second starts in a process log a line each on standard output: they are of tests that allow it. */
    @Test
    @Order(1)
    void aBuildIsWritten(QuarkusMainLauncher launcher, @TempDir Path place) throws IOException {
        Path design = Files.writeString(
                place.resolve("design.json"),
                "{\"unit\":\"mm\",\"solid\":\"cube\",\"size\":{\"by\":\"ACROSS_FLATS\",\"value\":180}}");
        Path folder = place.resolve("build");
        LaunchResult made = launcher.launch("make", design.toString(), folder.toString());
        assertEquals(0, made.exitCode(), made.getErrorOutput());
        assertTrue(made.getOutput().contains("index.html first: it says what is wrong"), made.getOutput());
        assertTrue(Files.size(folder.resolve("shop-sheet.pdf")) > 10_000);
    }
}
