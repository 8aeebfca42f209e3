package org.orbwright.turning;

import java.util.List;
import java.util.Locale;

/**
 * Knows comments that controls carry out. A control looks at what stands first, whatever its case and wherever white
 * space is put: LinuxCNC documentation, "G-code overview", sections Messages, Probe Logging, Logging, Debug Messages
 * and Print Messages; T. R. Kramer, F. M. Proctor, E. Messina, The NIST RS274NGC Interpreter, version 3 (NISTIR 6556),
 * 3.3.4.
 */
final class CarriedOut {
    /** Those of the documentation, then those that LinuxCNC's sources and its screen Axis know beside them. */
    private static final List<String> FIRST = List.of(
            "msg",
            "probeopen",
            "probeclose",
            "logopen",
            "logappend",
            "logclose",
            "log",
            "debug",
            "print",
            "py",
            "abort",
            "rpy",
            "axis",
            "preview");

    private CarriedOut() {}

    /** Whether a control might carry a comment out. */
    static boolean comment(String line) {
        String first = line.substring(1).replaceAll("\\s", "").toLowerCase(Locale.ROOT);
        return FIRST.stream().anyMatch(first::startsWith);
    }
}
