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
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The command that answers a file of designs. */
@QuarkusMainTest
class BatchCommandTest {
    private static final Path WORKED = Path.of("src/main/resources/designs/icosahedron-mixed.json");

    /** The command shuts the port for the whole process, which here is that of other tests too. */
    @AfterAll
    static void openThePortAgain() {
        Main.SETTINGS.keySet().forEach(System::clearProperty);
    }

    private static String line() throws IOException {
        return Files.readString(WORKED).replaceAll("\\s*\\R\\s*", " ").strip() + "\n";
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

    @Test
    @Launch(
            value = {"batch", "no-such-file.ndjson"},
            exitCode = 11)
    void saysThatAFileCannotBeRead(LaunchResult result) {
        assertTrue(result.getErrorOutput().contains("The batch ended early: "), result.getErrorOutput());
        assertTrue(result.getErrorOutput().contains("no-such-file.ndjson"), result.getErrorOutput());
    }

    @Test
    void leavesNoAnswersWhereTheyCannotBeWritten(QuarkusMainLauncher launcher, @TempDir Path folder)
            throws IOException {
        Path designs = Files.writeString(folder.resolve("designs.ndjson"), line());
        LaunchResult result = launcher.launch(
                "batch",
                designs.toString(),
                folder.resolve("nowhere/answers.ndjson").toString());
        assertEquals(11, result.exitCode());
        assertTrue(result.getErrorOutput().contains("nowhere"), result.getErrorOutput());
    }

    @Test
    @Launch(
            value = {"batch", "--answer=weight"},
            exitCode = 11)
    void saysHowItIsUsed(LaunchResult result) {
        assertTrue(
                result.getErrorOutput()
                        .contains("Usage: batch [--answer=PART] [DESIGNS [ANSWERS]] (files with a JSON document a line;"
                                + " PART is one of: sheet, angles, "),
                result.getErrorOutput());
    }
}
