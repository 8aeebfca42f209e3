package org.orbwright.sheet;

import java.util.List;
import org.orbwright.design.Design;
import org.orbwright.design.Panel;
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

    /** JSON pointer to the first band of a species. */
    static String firstBand(Design design, String species) {
        for (Panel panel : design.panels()) {
            for (int i = 0; i < panel.lamination().bands().size(); i++) {
                if (panel.lamination().bands().get(i).species().equals(species)) {
                    return panel.lamination().pointer() + "/bands/" + i + "/species";
                }
            }
        }
        return "/laminations";
    }
}
