package org.orbwright.sheet;

import java.util.List;
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

    /** A sentence with the woods that the table knows instead, with a blank before it; nothing where there are none. */
    static String known(List<String> similar) {
        return similar.isEmpty() ? "" : " The table knows: " + String.join(", ", similar) + ".";
    }

    /** Names with commas and an "or" between them. */
    static String either(List<String> names) {
        int last = names.size() - 1;
        return last == 0 ? names.get(0) : String.join(", ", names.subList(0, last)) + " or " + names.get(last);
    }
}
