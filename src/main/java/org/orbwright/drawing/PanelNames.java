package org.orbwright.drawing;

import java.util.Locale;
import org.orbwright.design.Panel;
import org.orbwright.design.Places;

/** What a panel is called in titles, where every other segment may have a lamination of its own. */
final class PanelNames {
    private PanelNames() {}

    /** The face kind, with the half of its segments that is meant. */
    static String of(Panel panel) {
        return panel.places() == Places.ALL
                ? panel.face()
                : panel.face() + "'s " + panel.places().name().toLowerCase(Locale.ROOT) + " segments";
    }
}
