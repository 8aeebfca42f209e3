package org.orbwright.api.command;

import io.quarkus.runtime.QuarkusApplication;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;

/** What a command ends with and says. It runs inside the service of the tests, as a start of its own takes seconds. */
record CommandRun(int exitCode, String output, String errorOutput) {

    /** Runs a command with all its words, its name first. */
    static CommandRun of(QuarkusApplication command, String... arguments) throws Exception {
        PrintStream out = System.out;
        PrintStream err = System.err;
        ByteArrayOutputStream said = new ByteArrayOutputStream();
        ByteArrayOutputStream wrong = new ByteArrayOutputStream();
        try {
            System.setOut(new PrintStream(said, true, StandardCharsets.UTF_8));
            System.setErr(new PrintStream(wrong, true, StandardCharsets.UTF_8));
            int exitCode = command.run(arguments);
            return new CommandRun(
                    exitCode, said.toString(StandardCharsets.UTF_8), wrong.toString(StandardCharsets.UTF_8));
        } finally {
            System.setOut(out);
            System.setErr(err);
        }
    }
}
