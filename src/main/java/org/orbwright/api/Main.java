package org.orbwright.api;

import io.quarkus.runtime.Quarkus;
import io.quarkus.runtime.annotations.QuarkusMain;

/**
 * Starts the service; or, with {@code print-sheet}, prints the sheet of one design and ends; or, with {@code batch},
 * answers a file of designs and ends.
 */
@QuarkusMain
public final class Main {
    private Main() {}

    /** Serves until it is stopped, if there are no arguments. */
    public static void main(String... arguments) {
        if (arguments.length > 0 && arguments[0].equals(BatchCommand.NAME)) {
            BatchCommand.prepare();
            Quarkus.run(BatchCommand.class, arguments);
        } else if (arguments.length > 0) {
            PrintSheet.prepare();
            Quarkus.run(PrintSheet.class, arguments);
        } else {
            Quarkus.run(arguments);
        }
    }

    /** For commands, which no one shares out requests to: the end needs no warning. */
    static void endAtOnce() {
        System.setProperty("quarkus.shutdown.delay", "0s");
    }
}
