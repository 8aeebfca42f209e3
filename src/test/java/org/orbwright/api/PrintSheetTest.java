package org.orbwright.api;

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
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The command that prints a sheet. */
@QuarkusMainTest
class PrintSheetTest {

    @Test
    @Launch({"print-sheet", "icosahedron-mixed"})
    void printsTheSheetOfAWorkedDesign(LaunchResult result) {
        assertTrue(result.getOutput().contains("\"bladeTilt\" : 20.9052"), result.getOutput());
    }

    @Test
    @Launch(
            value = {"print-sheet", "pom.xml"},
            exitCode = 1)
    void printsTheProblemOfAFileThatIsNoDesign(LaunchResult result) {
        assertTrue(result.getOutput().contains("urn:orbwright:problem:unreadable-json"), result.getOutput());
    }

    @Test
    void printsTheProblemOfAFileThatIsNotUnicode(QuarkusMainLauncher launcher, @TempDir Path folder)
            throws IOException {
        Path file = folder.resolve("design.json");
        Files.write(file, "{\"name\": \"K\u00fcche\"}".getBytes(StandardCharsets.ISO_8859_1));
        LaunchResult result = launcher.launch("print-sheet", file.toString());
        assertEquals(1, result.exitCode());
        assertTrue(result.getOutput().contains("urn:orbwright:problem:unreadable-json"), result.getOutput());
        assertFalse(result.getErrorOutput().contains("Exception"), result.getErrorOutput());
    }

    @Test
    @Launch(
            value = {"print-sheet", "dodecahedron"},
            exitCode = 1)
    void namesTheWorkedDesignsWhereThereIsNoneOfThatName(LaunchResult result) {
        assertTrue(
                result.getErrorOutput()
                        .contains(
                                "There is no file or worked design named dodecahedron. The worked designs are: cube-"),
                result.getErrorOutput());
    }

    @Test
    @Launch(
            value = {"print-sheet"},
            exitCode = 1)
    void saysHowItIsUsed(LaunchResult result) {
        assertEquals(1, result.exitCode());
        assertTrue(result.getErrorOutput().contains("Usage: print-sheet FILE_OR_NAME"), result.getErrorOutput());
    }
}
