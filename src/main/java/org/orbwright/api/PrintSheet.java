package org.orbwright.api;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonParser;
import io.quarkus.runtime.QuarkusApplication;
import java.io.IOException;
import java.io.PrintStream;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.orbwright.design.ImpossibleDesignException;
import org.orbwright.design.Violation;
import org.orbwright.paper.TextWriter;
import org.orbwright.sheet.Answer;

/**
 * The command {@code print-sheet [--json] FILE_OR_NAME}: prints the sheet of one design, as text for people or as the
 * JSON that {@code POST /v1/sheet} answers, and ends. It listens at no port. The exit code is 0 for a sheet and 1 for a
 * problem.
 */
public final class PrintSheet implements QuarkusApplication {
    private static final String NAME = "print-sheet";
    private static final String JSON = "--json";
    private static final List<String> HELP = List.of("--help", "-h", "help");
    private static final String INSTANCE = "/v1/sheet";

    private final RequestReader reader;
    private final Limits limits;

    PrintSheet(RequestReader reader, Limits limits) {
        this.reader = reader;
        this.limits = limits;
    }

    @Override
    public int run(String... arguments) throws IOException {
        List<String> words = new ArrayList<>(List.of(arguments));
        if (words.stream().anyMatch(HELP::contains)) {
            print(help());
            return 0;
        }
        boolean named = words.remove(NAME);
        boolean json = words.remove(JSON);
        if (!named || words.size() != 1 || words.get(0).startsWith("-")) {
            return fail(help());
        }
        String source = words.get(0);
        try {
            Answer sheet = SheetJson.answer(reader.read(design(source)));
            print(json ? indented(text(sheet)) : TextWriter.write(sheet));
            return 0;
        } catch (UnreadableSource e) {
            return fail(e.getMessage());
        } catch (RequestException e) {
            return fail(source, Problem.of(e, INSTANCE), json);
        } catch (ImpossibleDesignException e) {
            return fail(source, Problem.of(e, INSTANCE), json);
        }
    }

    private static String help() {
        return """
                Usage: print-sheet [--json] FILE_OR_NAME

                Prints the sheet of a design. Findings come first: STOP, WARN, NOTE.
                Then come the saw's angles, segments, blanks and strips, sphere and wall, and what is seen of the bands.

                  FILE_OR_NAME  a file with a JSON document, or the name of a worked design
                  --json        print the JSON that POST /v1/sheet answers
                  --help        print this text

                The exit code is 0 for a sheet and 1 for a problem.
                Worked designs: %s
                Without a command the service starts. The command batch answers a file of designs.""".formatted(String.join(", ", DesignLibrary.all().keySet()));
    }

    /** There is nothing to be read. */
    private static final class UnreadableSource extends Exception {
        private static final long serialVersionUID = 1L;

        UnreadableSource(String message) {
            super(message);
        }
    }

    /** The design's bytes as they are: whether they are JSON is for the reader to say. */
    private byte[] design(String fileOrName) throws UnreadableSource {
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

    private static void print(String text) {
        new PrintStream(System.out, true, StandardCharsets.UTF_8).println(text.stripTrailing());
    }

    private static int fail(String text) {
        new PrintStream(System.err, true, StandardCharsets.UTF_8).println(text.stripTrailing());
        return 1;
    }

    /** A program reads the problem where it would read the sheet; people are told beside it. */
    private static int fail(String source, Problem problem, boolean json) throws IOException {
        if (json) {
            print(indented(text(problem)));
            return 1;
        }
        StringBuilder told = new StringBuilder("No sheet can be made of " + source + ".\n");
        if (problem.violations().isEmpty()) {
            told.append(problem.detail());
        }
        for (Violation violation : problem.violations()) {
            told.append("- ").append(violation.message()).append('\n');
        }
        return fail(told.toString());
    }

    private static String text(Record answer) {
        return new String(RecordWriter.toJson(answer), StandardCharsets.UTF_8);
    }

    /** Sets JSON out in lines, every number as it stands. */
    static String indented(String json) throws IOException {
        StringWriter text = new StringWriter();
        JsonFactory factory = new JsonFactory();
        try (JsonParser parser = factory.createParser(json);
                JsonGenerator generator = factory.createGenerator(text).useDefaultPrettyPrinter()) {
            while (parser.nextToken() != null) {
                generator.copyCurrentEventExact(parser);
            }
        }
        return text.toString();
    }
}
