package org.orbwright.api.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.orbwright.api.wire.Limits;
import org.orbwright.api.wire.RequestReader;

/** What the command that prints a sheet says; {@link CommandStartTest} starts it. */
@QuarkusTest
class PrintSheetTest {

    @Inject
    RequestReader reader;

    @Inject
    Limits limits;

    private CommandRun run(String... arguments) throws Exception {
        return CommandRun.of(new PrintSheet(reader, limits), arguments);
    }

    private static void assertTold(String text, String... parts) {
        for (String part : parts) {
            assertTrue(text.contains(part), () -> part + " is not in:\n" + text);
        }
        assertFalse(text.contains("Exception"), text);
    }

    @Test
    void printsTheJsonOfTheSameSheet() throws Exception {
        CommandRun result = run("print-sheet", "--json", "icosahedron-mixed");
        assertEquals(0, result.exitCode());
        assertTold(result.output(), "\"bladeTilt\" : 20.9052", "\"findings\" : [ {");
    }

    @Test
    void printsTheProblemOfAFileThatIsNotUnicode(@TempDir Path folder) throws Exception {
        Path file = folder.resolve("design.json");
        Files.write(file, "{\"name\": \"K\u00fcche\"}".getBytes(StandardCharsets.ISO_8859_1));
        CommandRun result = run("print-sheet", "--json", file.toString());
        assertEquals(1, result.exitCode());
        assertTold(result.output(), "/problems/unreadable-json");
    }

    @Test
    void tellsEveryBrokenRule(@TempDir Path folder) throws Exception {
        Path file = Files.writeString(
                folder.resolve("design.json"),
                "{\"unit\":\"mm\",\"solid\":\"cube\",\"size\":{\"by\":\"EDGE\",\"value\":-3},\"weight\":1}");
        CommandRun result = run("print-sheet", file.toString());
        assertEquals(1, result.exitCode());
        assertTold(result.errorOutput(), "- size.value must be ", "has no field named weight.");
    }

    @Test
    void namesTheWorkedDesignsWhereThereIsNoneOfThatName() throws Exception {
        CommandRun result = run("print-sheet", "dodecahedron");
        assertEquals(1, result.exitCode());
        assertTold(
                result.errorOutput(),
                "There is no file or worked design named dodecahedron. The worked designs are: cube-");
    }

    @Test
    void aFolderIsNoDesign() throws Exception {
        CommandRun result = run("print-sheet", "src");
        assertEquals(1, result.exitCode());
        assertTold(result.errorOutput(), "src is a folder. Name a file with a design.");
    }

    @Test
    void helps() throws Exception {
        CommandRun result = run("print-sheet", "--help");
        assertEquals(0, result.exitCode());
        assertTold(result.output(), "Usage: print-sheet [--json] FILE_OR_NAME", "--json  ", "cube-with-chevrons");
    }

    @Test
    void saysHowItIsUsed() throws Exception {
        CommandRun result = run("print-sheet");
        assertEquals(1, result.exitCode());
        assertTold(result.errorOutput(), "Usage: print-sheet [--json] FILE_OR_NAME");
    }
}
