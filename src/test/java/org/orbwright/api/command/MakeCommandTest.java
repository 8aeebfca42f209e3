package org.orbwright.api.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.orbwright.api.wire.Limits;
import org.orbwright.api.wire.RequestReader;

/** What the command that writes a build as files writes and says; {@link CommandStartTest} starts it. */
@QuarkusTest
class MakeCommandTest {
    private static final String SMALL =
            "{\"unit\":\"mm\",\"solid\":\"%s\",\"size\":{\"by\":\"ACROSS_FLATS\",\"value\":180}}";

    @Inject
    RequestReader reader;

    @Inject
    Limits limits;

    private CommandRun run(String... arguments) throws Exception {
        return CommandRun.of(new MakeCommand(reader, limits), arguments);
    }

    @Test
    void writesTheFilesAndReplacesThoseOfAnEarlierBuild(@TempDir Path place) throws Exception {
        Path design = Files.writeString(place.resolve("design.json"), SMALL.formatted("cube"));
        Path folder = place.resolve("build");
        CommandRun made = run("make", design.toString(), folder.toString());
        assertEquals(0, made.exitCode(), made.errorOutput());
        assertTrue(made.output().contains("index.html first: it says what is wrong"), made.output());
        assertTrue(Files.size(folder.resolve("shop-sheet.pdf")) > 10_000);
        assertTrue(Files.exists(folder.resolve("pictures/panel-square-upright.svg")));

        CommandRun again = run("make", design.toString(), folder.toString());
        assertEquals(1, again.exitCode());
        assertTrue(again.errorOutput().contains("is not empty, and nothing was written."), again.errorOutput());

        Path foreign = Files.createDirectory(place.resolve("pages"));
        Path about = Files.writeString(foreign.resolve("about.html"), "mine");
        Files.writeString(foreign.resolve("index.html"), "<a href=\"about.html\">about</a>");
        CommandRun refused = run("make", "--replace", design.toString(), foreign.toString());
        assertEquals(1, refused.exitCode());
        assertTrue(Files.exists(about));

        Path note = Files.writeString(folder.resolve("my-note.txt"), "glue on Friday");
        Files.writeString(design, SMALL.formatted("octahedron"));
        CommandRun replaced = run("make", "--replace", design.toString(), folder.toString());
        assertEquals(0, replaced.exitCode(), replaced.errorOutput());
        assertTrue(Files.exists(note));
        assertTrue(Files.exists(folder.resolve("pictures/panel-triangle-upright.svg")));
        assertFalse(Files.exists(folder.resolve("pictures/panel-square-upright.svg")));
    }

    @Test
    void saysWhatIsWrong(@TempDir Path place) throws Exception {
        Path design = Files.writeString(place.resolve("design.json"), SMALL.formatted("cuboid"));
        CommandRun result =
                run("make", design.toString(), place.resolve("build").toString());
        assertEquals(1, result.exitCode());
        assertTrue(result.errorOutput().contains("No build can be made of "), result.errorOutput());
        assertTrue(result.errorOutput().contains("cuboid"), result.errorOutput());
        CommandRun help = run("make");
        assertEquals(1, help.exitCode());
        assertTrue(help.errorOutput().contains("Usage: make [--replace] FILE_OR_NAME FOLDER"));
    }
}
