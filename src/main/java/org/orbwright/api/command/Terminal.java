package org.orbwright.api.command;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.orbwright.api.wire.DesignLibrary;
import org.orbwright.api.wire.Limits;
import org.orbwright.api.wire.Problem;
import org.orbwright.api.wire.RequestReader;
import org.orbwright.design.Violation;
import org.orbwright.document.Document;

/** What the commands share: a design from a file or by its name, and words for people. */
public final class Terminal {
    static final int DONE = 0;
    static final int FAILED = 1;

    private static final List<String> HELP = List.of("--help", "-h", "help");

    private Terminal() {}

    /** There is nothing to be read. */
    static final class UnreadableSource extends Exception {
        private static final long serialVersionUID = 1L;

        UnreadableSource(String message) {
            super(message);
        }
    }

    /** Whether the help is asked for. */
    static boolean asksForHelp(List<String> words) {
        return words.stream().anyMatch(HELP::contains);
    }

    /** The document in a file, or a worked one by its name. */
    static Document document(String fileOrName, RequestReader reader, Limits limits) throws UnreadableSource {
        return reader.read(design(fileOrName, limits));
    }

    /** The design's bytes as they are: whether they are JSON is for the reader to say. */
    private static byte[] design(String fileOrName, Limits limits) throws UnreadableSource {
        try {
            Path file = Path.of(fileOrName);
            if (Files.isDirectory(file)) {
                throw new UnreadableSource(fileOrName + " is a folder. Name a file with a design.");
            }
            if (Files.exists(file)) {
                if (Files.size(file) > limits.body()) {
                    throw RequestReader.tooLarge("The file", limits.body());
                }
                return Files.readAllBytes(file);
            }
        } catch (IOException e) {
            throw new UnreadableSource("The file " + fileOrName + " cannot be read. Check that you may read it.");
        } catch (InvalidPathException e) {
            // Then it can only be a name.
        }
        Optional<DesignLibrary.WorkedDesign> worked = DesignLibrary.find(fileOrName);
        return worked.orElseThrow(() -> new UnreadableSource("There is no file or worked design named " + fileOrName
                        + ". The worked designs are: "
                        + String.join(", ", DesignLibrary.all().keySet()) + "."))
                .json()
                .getBytes(StandardCharsets.UTF_8);
    }

    static void print(String text) {
        new PrintStream(System.out, true, StandardCharsets.UTF_8).println(text.stripTrailing());
    }

    static int fail(String text) {
        new PrintStream(System.err, true, StandardCharsets.UTF_8).println(text.stripTrailing());
        return FAILED;
    }

    /** Tells people of a problem, each broken rule on a line. */
    static int fail(String what, Problem problem) {
        StringBuilder told = new StringBuilder(what + "\n");
        if (problem.violations().isEmpty()) {
            told.append(problem.detail());
        }
        for (Violation violation : problem.violations()) {
            told.append("- ").append(violation.message()).append('\n');
        }
        return fail(told.toString());
    }
}
