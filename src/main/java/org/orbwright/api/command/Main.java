package org.orbwright.api.command;

import io.quarkus.runtime.Quarkus;
import io.quarkus.runtime.annotations.QuarkusMain;
import java.util.Map;

/**
 * Starts the service; or, with {@code print-sheet}, prints the sheet of one design and ends; or, with {@code make},
 * writes a build as files and ends; or, with {@code batch}, answers a file of designs and ends; or, with {@code sweep},
 * writes the rows of a sweep and ends.
 */
@QuarkusMain
public final class Main {
    /**
     * Of commands: they listen at no port, keep the log out of what they print, and end at once, as no one shares out
     * requests to them. They have to be set before the service starts.
     */
    static final Map<String, String> SETTINGS = Map.of(
            "quarkus.http.host-enabled", "false",
            "quarkus.log.level", "WARN",
            "quarkus.log.console.stderr", "true",
            "quarkus.shutdown.delay", "0s");

    private Main() {}

    /** Serves until it is stopped, if there are no arguments. */
    public static void main(String... arguments) {
        if (arguments.length > 0 && arguments[0].equals(BatchCommand.NAME)) {
            SETTINGS.forEach(System::setProperty);
            Quarkus.run(BatchCommand.class, arguments);
        } else if (arguments.length > 0 && arguments[0].equals(MakeCommand.NAME)) {
            SETTINGS.forEach(System::setProperty);
            Quarkus.run(MakeCommand.class, arguments);
        } else if (arguments.length > 0 && arguments[0].equals(SweepCommand.NAME)) {
            SETTINGS.forEach(System::setProperty);
            Quarkus.run(SweepCommand.class, arguments);
        } else if (arguments.length > 0) {
            SETTINGS.forEach(System::setProperty);
            Quarkus.run(PrintSheet.class, arguments);
        } else {
            Quarkus.run(arguments);
        }
    }
}
