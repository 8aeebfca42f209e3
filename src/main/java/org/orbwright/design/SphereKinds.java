package org.orbwright.design;

import static java.util.Objects.requireNonNullElse;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.orbwright.quantity.Numbering;
import org.orbwright.solid.PanelMix;
import org.orbwright.solid.Solid;

/** Finds which spheres are made of a design: from which set each panel of them. */
final class SphereKinds {
    private static final String PANELS = "/invertedPanels";

    private SphereKinds() {}

    /** The spheres, those that are alike together; of one kind where sawing gives one set. */
    static List<SphereKind> of(DesignRequest request, Solid solid, boolean twoSets, Violations violations) {
        int copies = requireNonNullElse(request.copies(), 1);
        Sets sets = requireNonNullElse(request.sets(), Sets.TWINS);
        Set<Integer> listed = listed(request, sets, solid, violations);
        if (!twoSets) {
            return List.of(SphereKind.of(BandSet.UPRIGHT, copies, solid));
        }
        return switch (sets) {
            case TWINS -> twins(copies, solid);
            case UPRIGHT -> List.of(SphereKind.of(BandSet.UPRIGHT, copies, solid));
            case INVERTED -> List.of(SphereKind.of(BandSet.INVERTED, copies, solid));
            case MIXED -> List.of(SphereKind.mixed(PanelMix.inverted(solid), copies, solid));
            case BY_PANEL -> List.of(SphereKind.mixed(listed, copies, solid));
        };
    }

    private static List<SphereKind> twins(int copies, Solid solid) {
        List<SphereKind> kinds = new ArrayList<>();
        kinds.add(SphereKind.of(BandSet.UPRIGHT, copies - copies / 2, solid));
        if (copies > 1) {
            kinds.add(SphereKind.of(BandSet.INVERTED, copies / 2, solid));
        }
        return kinds;
    }

    private static Set<Integer> listed(DesignRequest request, Sets sets, Solid solid, Violations violations) {
        List<Integer> numbers = request.invertedPanels();
        if ((sets == Sets.BY_PANEL) != (numbers != null)) {
            violations.add(
                    PANELS,
                    numbers == null ? "MISSING" : "NOT_APPLICABLE",
                    numbers == null
                            ? "Sets are chosen by panel, but the inverted panels are not listed."
                            : "Inverted panels are listed, but sets is " + sets + ", which chooses them.",
                    null,
                    numbers == null ? "numbers of panels from 1" : "nothing, or sets BY_PANEL");
        }
        Set<Integer> listed = new HashSet<>();
        for (int i = 0; numbers != null && i < numbers.size(); i++) {
            int number = numbers.get(i);
            boolean known = number <= solid.faces().size();
            if (!known || !listed.add(Numbering.place(number))) {
                violations.add(
                        PANELS + "/" + i,
                        known ? "PANEL_TWICE" : "NO_SUCH_PANEL",
                        known
                                ? "Panel " + number + " is listed twice."
                                : "The " + solid.name() + " has "
                                        + solid.faces().size() + " panels, numbered from 1.",
                        String.valueOf(number),
                        "each number from 1 to " + solid.faces().size() + " once at most");
            }
        }
        return listed;
    }
}
