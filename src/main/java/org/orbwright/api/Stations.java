package org.orbwright.api;

/** The number of stations of a profile, as the query states it. */
final class Stations {
    static final String NAME = "stations";
    static final int FEWEST = 2;
    static final int MOST = 91;
    static final String DEFAULT = "9";

    private Stations() {}

    /** Reads the query parameter, null if there is none. */
    static int parse(String query) {
        return Query.whole(NAME, query, FEWEST, MOST, DEFAULT);
    }
}
