package org.orbwright.api;

import java.util.List;
import org.orbwright.design.Violation;

/** The number of stations of a profile, as the query states it. */
final class Stations {
    static final String NAME = "stations";
    static final int FEWEST = 2;
    static final int MOST = 91;
    static final String DEFAULT = "9";

    private Stations() {}

    /** Reads the query parameter, null if there is none; it is taken as text so that a wrong one can be named. */
    static int parse(String query) {
        String text = query == null ? DEFAULT : query;
        if (text.matches("[0-9]{1,3}")) {
            int stations = Integer.parseInt(text);
            if (stations >= FEWEST && stations <= MOST) {
                return stations;
            }
        }
        String allowed = "a whole number, " + FEWEST + " to " + MOST;
        String rejected = Sentences.cut(text);
        throw RequestException.invalid(List.of(new Violation(
                NAME,
                "OUT_OF_RANGE",
                "The query parameter stations must be " + allowed + ", but is \"" + rejected + "\".",
                rejected,
                allowed)));
    }
}
