package org.orbwright.sheet;

import org.orbwright.design.Places;

/** Words that several findings share. */
final class Words {
    private Words() {}

    /** Which half of a panel's segments is meant, with a blank behind it; nothing where it is all of them. */
    static String half(Places places) {
        return switch (places) {
            case ALL -> "";
            case ODD -> "odd ";
            case EVEN -> "even ";
        };
    }
}
