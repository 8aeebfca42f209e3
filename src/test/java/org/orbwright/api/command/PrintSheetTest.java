package org.orbwright.api.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.main.Launch;
import io.quarkus.test.junit.main.LaunchResult;
import io.quarkus.test.junit.main.QuarkusMainLauncher;
import io.quarkus.test.junit.main.QuarkusMainTest;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The command that prints a sheet. */
@QuarkusMainTest
class PrintSheetTest {

    /** The command shuts the port for the whole process, which here is that of other tests too. */
    @AfterAll
    static void openThePortAgain() {
        Main.SETTINGS.keySet().forEach(System::clearProperty);
    }

    private static void assertTold(String text, String... parts) {
        for (String part : parts) {
            assertTrue(text.contains(part), () -> part + " is not in:\n" + text);
        }
        assertFalse(text.contains("Exception"), text);
    }

    /** The numbers are those of the README, and its units. */
    @Test
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
    @Launch({"print-sheet", "--json", "icosahedron-mixed"})
    void printsTheJsonOfTheSameSheet(LaunchResult result) {
        assertTold(result.getOutput(), "\"bladeTilt\" : 20.9052", "\"findings\" : [ {");
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
    void printsTheProblemOfAFileThatIsNotUnicode(QuarkusMainLauncher launcher, @TempDir Path folder)
            throws IOException {
        Path file = folder.resolve("design.json");
        Files.write(file, "{\"name\": \"K\u00fcche\"}".getBytes(StandardCharsets.ISO_8859_1));
        LaunchResult result = launcher.launch("print-sheet", "--json", file.toString());
        assertEquals(1, result.exitCode());
        assertTold(result.getOutput(), "/problems/unreadable-json");
    }

    @Test
    void tellsEveryBrokenRule(QuarkusMainLauncher launcher, @TempDir Path folder) throws IOException {
        Path file = Files.writeString(
                folder.resolve("design.json"),
                "{\"unit\":\"mm\",\"solid\":\"cube\",\"size\":{\"by\":\"EDGE\",\"value\":-3},\"weight\":1}");
        LaunchResult result = launcher.launch("print-sheet", file.toString());
        assertEquals(1, result.exitCode());
        assertTold(result.getErrorOutput(), "- size.value must be ", "has no field named weight.");
    }

    @Test
    @Launch(
            value = {"print-sheet", "dodecahedron"},
            exitCode = 1)
    void namesTheWorkedDesignsWhereThereIsNoneOfThatName(LaunchResult result) {
        assertTold(
                result.getErrorOutput(),
                "There is no file or worked design named dodecahedron. The worked designs are: cube-");
    }

    @Test
    @Launch(
            value = {"print-sheet", "src"},
            exitCode = 1)
    void aFolderIsNoDesign(LaunchResult result) {
        assertTold(result.getErrorOutput(), "src is a folder. Name a file with a design.");
    }

    @Test
    @Launch({"print-sheet", "--help"})
    void helps(LaunchResult result) {
        assertTold(result.getOutput(), "Usage: print-sheet [--json] FILE_OR_NAME", "--json  ", "cube-with-chevrons");
    }

    @Test
    @Launch(
            value = {"print-sheet"},
            exitCode = 1)
    void saysHowItIsUsed(LaunchResult result) {
        assertTold(result.getErrorOutput(), "Usage: print-sheet [--json] FILE_OR_NAME");
    }
}
