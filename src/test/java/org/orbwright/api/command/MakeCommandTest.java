package org.orbwright.api.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.main.LaunchResult;
import io.quarkus.test.junit.main.QuarkusMainLauncher;
import io.quarkus.test.junit.main.QuarkusMainTest;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The command that writes a build as files. */
@QuarkusMainTest
class MakeCommandTest {
    private static final String SMALL =
            "{\"unit\":\"mm\",\"solid\":\"%s\",\"size\":{\"by\":\"ACROSS_FLATS\",\"value\":180}}";

    /** The command shuts the port for the whole process, which here is that of other tests too. */
    @AfterAll
    static void openThePortAgain() {
        Main.SETTINGS.keySet().forEach(System::clearProperty);
    }

    @Test
    void writesTheFilesAndReplacesThoseOfAnEarlierBuild(QuarkusMainLauncher launcher, @TempDir Path place)
            throws IOException {
        Path design = Files.writeString(place.resolve("design.json"), SMALL.formatted("cube"));
        Path folder = place.resolve("build");
        LaunchResult made = launcher.launch("make", design.toString(), folder.toString());
        assertEquals(0, made.exitCode(), made.getErrorOutput());
        assertTrue(made.getOutput().contains("index.html first: it says what is wrong"), made.getOutput());
        assertTrue(Files.size(folder.resolve("shop-sheet.pdf")) > 10_000);
        assertTrue(Files.exists(folder.resolve("pictures/panel-square-upright.svg")));

        LaunchResult again = launcher.launch("make", design.toString(), folder.toString());
        assertEquals(1, again.exitCode());
        assertTrue(again.getErrorOutput().contains("is not empty, and nothing was written."), again.getErrorOutput());

        Path foreign = Files.createDirectory(place.resolve("pages"));
        Path about = Files.writeString(foreign.resolve("about.html"), "mine");
        Files.writeString(foreign.resolve("index.html"), "<a href=\"about.html\">about</a>");
        LaunchResult refused = launcher.launch("make", "--replace", design.toString(), foreign.toString());
        assertEquals(1, refused.exitCode());
        assertTrue(Files.exists(about));

        Path note = Files.writeString(folder.resolve("my-note.txt"), "glue on Friday");
        Files.writeString(design, SMALL.formatted("octahedron"));
        LaunchResult replaced = launcher.launch("make", "--replace", design.toString(), folder.toString());
        assertEquals(0, replaced.exitCode(), replaced.getErrorOutput());
        assertTrue(Files.exists(note));
        assertTrue(Files.exists(folder.resolve("pictures/panel-triangle-upright.svg")));
        assertFalse(Files.exists(folder.resolve("pictures/panel-square-upright.svg")));
    }

    @Test
    void saysWhatIsWrong(QuarkusMainLauncher launcher, @TempDir Path place) throws IOException {
        Path design = Files.writeString(place.resolve("design.json"), SMALL.formatted("cuboid"));
        LaunchResult result = launcher.launch(
                "make", design.toString(), place.resolve("build").toString());
        assertEquals(1, result.exitCode());
        assertTrue(result.getErrorOutput().contains("No build can be made of "), result.getErrorOutput());
        assertTrue(result.getErrorOutput().contains("cuboid"), result.getErrorOutput());
        LaunchResult help = launcher.launch("make");
        assertEquals(1, help.exitCode());
        assertTrue(help.getErrorOutput().contains("Usage: make [--replace] FILE_OR_NAME FOLDER"));
    }
}
