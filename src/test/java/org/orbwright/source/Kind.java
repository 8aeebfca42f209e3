package org.orbwright.source;

/** Kinds of what a check rests on, the strongest first. */
public enum Kind {
    /** A standard, a handbook, a paper or a reference work. */
    PUBLISHED(true, true, true),
    /** An independent library works it out. */
    LIBRARY(true, true, true),
    /** Numbers that were made by another program, by another way. */
    REFERENCE(true, true, true),
    /** Worked out by hand from a formula that the text names. */
    HAND(true, true, false),
    /** The test itself works it out by another way, straight from the definition: the text names the way. */
    ORACLE(false, true, false),
    /** A fact of the trade, for which no source was found. */
    COMMON_PRACTICE(false, true, false),
    /** Recalled, and not found again. */
    FROM_MEMORY(false, true, false),
    /** A property that has to hold, whatever the numbers are. */
    INVARIANT(false, false, false),
    /** What this project promises: refusals, words, order, defaults. Nothing outside can tell. */
    CONTRACT(false, false, false);

    private final boolean outside;
    private final boolean named;
    private final boolean dated;

    Kind(boolean outside, boolean named, boolean dated) {
        this.outside = outside;
        this.named = named;
        this.dated = dated;
    }

    /** Whether such a check would tell if the project and its tests were wrong in the same way. */
    boolean outside() {
        return outside;
    }

    /** Whether a text has to say where it comes from. */
    boolean named() {
        return named;
    }

    /** Whether the text has to have a number: a year, an edition, a version, a table. */
    boolean dated() {
        return dated;
    }
}
