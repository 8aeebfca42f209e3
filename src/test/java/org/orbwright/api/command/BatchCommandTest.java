package org.orbwright.api.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.orbwright.api.wire.Limits;
import org.orbwright.api.wire.RequestReader;

/** How the command that answers a file of designs fails; {@link CommandStartTest} starts it. */
@QuarkusTest
class BatchCommandTest {
    private static final Path WORKED = Path.of("src/main/resources/designs/icosahedron-mixed.json");

    @Inject
    RequestReader reader;

    @Inject
    Limits limits;

    private CommandRun run(String... arguments) throws Exception {
        return CommandRun.of(new BatchCommand(reader, limits), arguments);
    }

    private static String line() throws IOException {
        return Files.readString(WORKED).replaceAll("\\s*\\R\\s*", " ").strip() + "\n";
    }

    @Test
    void saysThatAFileCannotBeRead() throws Exception {
        CommandRun result = run("batch", "no-such-file.ndjson");
        assertEquals(11, result.exitCode());
        assertTrue(result.errorOutput().contains("The batch ended early: "), result.errorOutput());
        assertTrue(result.errorOutput().contains("no-such-file.ndjson"), result.errorOutput());
    }

    @Test
    void leavesNoAnswersWhereTheyCannotBeWritten(@TempDir Path folder) throws Exception {
        Path designs = Files.writeString(folder.resolve("designs.ndjson"), line());
        CommandRun result = run(
                "batch",
                designs.toString(),
                folder.resolve("nowhere/answers.ndjson").toString());
        assertEquals(11, result.exitCode());
        assertTrue(result.errorOutput().contains("nowhere"), result.errorOutput());
    }

    @Test
    void saysHowItIsUsed() throws Exception {
        CommandRun result = run("batch", "--answer=weight");
        assertEquals(11, result.exitCode());
        assertTrue(
                result.errorOutput()
                        .contains("Usage: batch [--answer=PART] [DESIGNS [ANSWERS]] (files with a JSON document a line;"
                                + " PART is one of: sheet, angles, "),
                result.errorOutput());
    }
}
