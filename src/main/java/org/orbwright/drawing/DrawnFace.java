package org.orbwright.drawing;

import java.util.List;
import java.util.Locale;
import org.orbwright.design.Design;
import org.orbwright.design.ImpossibleDesignException;
import org.orbwright.design.Panel;
import org.orbwright.design.Places;
import org.orbwright.design.Violation;

/** The face kind that a drawing is asked for, and what it is called. */
final class DrawnFace {
    private DrawnFace() {}

    /**
     * The panel of a face kind; null for a design that has only one.
     *
     * @throws ImpossibleDesignException if the design has none of this name, or several and none was named
     */
    static Panel of(Design design, String face) {
        List<Panel> panels = design.facePanels();
        if (face == null && panels.size() == 1) {
            return panels.get(0);
        }
        return panels.stream().filter(p -> p.face().equals(face)).findFirst().orElseThrow(() -> {
            String names = String.join(", ", panels.stream().map(Panel::face).toList());
            return new ImpossibleDesignException(List.of(new Violation(
                    "face", "UNKNOWN_FACE", "This solid has no such face kind.", face, "one of " + names)));
        });
    }

    /** The panel of a face kind, or the half of it whose segments have a lamination of their own. */
    static Panel of(Design design, String face, Places places) {
        Panel first = of(design, face);
        return places == Places.EVEN ? design.panelAt(first.face(), 1) : first;
    }

    /** The face kind, with the half of its segments that is meant. */
    static String name(Panel panel) {
        return panel.places() == Places.ALL
                ? panel.face()
                : panel.face() + "'s " + panel.places().name().toLowerCase(Locale.ROOT) + " segments";
    }
}
