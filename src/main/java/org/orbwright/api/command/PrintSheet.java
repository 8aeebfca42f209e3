package org.orbwright.api.command;

import io.quarkus.runtime.QuarkusApplication;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.orbwright.api.cells.SheetJson;
import org.orbwright.api.command.Terminal.UnreadableSource;
import org.orbwright.api.wire.AnswerJson;
import org.orbwright.api.wire.DesignLibrary;
import org.orbwright.api.wire.IndentedJson;
import org.orbwright.api.wire.Limits;
import org.orbwright.api.wire.Problem;
import org.orbwright.api.wire.RequestException;
import org.orbwright.api.wire.RequestReader;
import org.orbwright.design.ImpossibleDesignException;
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
        if (Terminal.asksForHelp(words)) {
            Terminal.print(help());
            return Terminal.DONE;
        }
        boolean named = words.remove(NAME);
        boolean json = words.remove(JSON);
        if (!named || words.size() != 1 || words.get(0).startsWith("-")) {
            return Terminal.fail(help());
        }
        String source = words.get(0);
        try {
            Answer sheet = SheetJson.answer(Terminal.document(source, reader, limits));
            Terminal.print(json ? IndentedJson.of(text(sheet)) : TextWriter.write(sheet));
            return Terminal.DONE;
        } catch (UnreadableSource e) {
            return Terminal.fail(e.getMessage());
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
                Without a command the service starts. The command make writes a whole build as files.
                The command batch answers a file of designs.""".formatted(String.join(", ", DesignLibrary.all().keySet()));
    }

    /** A program reads the problem where it would read the sheet; people are told beside it. */
    private static int fail(String source, Problem problem, boolean json) throws IOException {
        if (json) {
            Terminal.print(IndentedJson.of(text(problem)));
            return Terminal.FAILED;
        }
        return Terminal.fail("No sheet can be made of " + source + ".", problem);
    }

    private static String text(Record answer) {
        return new String(AnswerJson.write(answer), StandardCharsets.UTF_8);
    }
}
