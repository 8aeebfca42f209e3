package org.orbwright.api;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.main.Launch;
import io.quarkus.test.junit.main.LaunchResult;
import io.quarkus.test.junit.main.QuarkusMainTest;
import org.junit.jupiter.api.Test;

/** The command that prints a sheet. */
@QuarkusMainTest
class PrintSheetTest {

    @Test
    @Launch({"print-sheet", "dodecahedron-two-spheres"})
    void printsTheSheetOfAWorkedDesign(LaunchResult result) {
        assertTrue(result.getOutput().contains("\"bladeTilt\" : 31.7175"), result.getOutput());
    }

    @Test
    @Launch(
            value = {"print-sheet", "pom.xml"},
            exitCode = 1)
    void printsTheProblemOfAFileThatIsNoDesign(LaunchResult result) {
        assertTrue(result.getOutput().contains("urn:orbwright:problem:unreadable-json"), result.getOutput());
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
