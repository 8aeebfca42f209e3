package org.orbwright.sheet;

/** Puts the answers of the capabilities together. */
public final class SheetCalculator {
    private SheetCalculator() {}
}
