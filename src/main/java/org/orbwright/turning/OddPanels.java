package org.orbwright.turning;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.orbwright.design.Design;
import org.orbwright.design.ImpossibleDesignException;
import org.orbwright.design.Panel;
import org.orbwright.design.Violation;
import org.orbwright.quantity.Numbering;
import org.orbwright.solid.Face;
import org.orbwright.turning.BalanceRequest.OddPanelRequest;
import org.orbwright.turning.BalanceRequest.OtherWoodRequest;

/** Checks the panels that differ against the design. */
final class OddPanels {
    private final Design design;
    private final List<Violation> broken = new ArrayList<>();
    private final Map<Integer, OddPanelRequest> panels = new HashMap<>();

    private OddPanels(Design design) {
        this.design = design;
    }

    /**
     * The panels that differ, by their place among the faces.
     *
     * @throws ImpossibleDesignException if there is no such panel or wood, or one of them is there twice
     */
    static Map<Integer, OddPanelRequest> of(BalanceRequest request, Design design) {
        OddPanels odd = new OddPanels(design);
        for (int i = 0; request.panels() != null && i < request.panels().size(); i++) {
            odd.add(request.panels().get(i), "/balance/panels/" + i);
        }
        if (!odd.broken.isEmpty()) {
            throw new ImpossibleDesignException(odd.broken);
        }
        return odd.panels;
    }

    private void add(OddPanelRequest panel, String pointer) {
        List<Face> faces = design.solid().faces();
        if (panel.panel() > faces.size()) {
            broken.add(new Violation(
                    pointer + "/panel",
                    "NO_SUCH_PANEL",
                    "The " + design.solid().name() + " has " + faces.size() + " panels, numbered from 1.",
                    String.valueOf(panel.panel()),
                    "a whole number, 1 to " + faces.size()));
            return;
        }
        if (panels.put(Numbering.place(panel.panel()), panel) != null) {
            broken.add(new Violation(
                    pointer + "/panel",
                    "PANEL_TWICE",
                    "Panel " + panel.panel() + " is there twice.",
                    String.valueOf(panel.panel()),
                    "each panel once"));
        }
        List<Panel> halves = design.panels().stream()
                .filter(half -> half.face()
                        .equals(faces.get(Numbering.place(panel.panel())).kind()))
                .toList();
        Set<String> seen = new HashSet<>();
        for (int i = 0; panel.woods() != null && i < panel.woods().size(); i++) {
            String replaced = panel.woods().get(i).species();
            if (!seen.add(replaced)) {
                broken.add(new Violation(
                        pointer + "/woods/" + i + "/species",
                        "WOOD_TWICE",
                        "Two woods stand in panel " + panel.panel() + " for " + replaced + ".",
                        replaced,
                        "each wood once"));
            }
            wood(panel.woods().get(i), halves, pointer + "/woods/" + i + "/species");
        }
    }

    private void wood(OtherWoodRequest wood, List<Panel> halves, String pointer) {
        List<String> woods = halves.stream()
                .flatMap(half -> half.lamination().bands().stream())
                .map(band -> band.species())
                .distinct()
                .toList();
        if (woods.stream().noneMatch(wood.species()::equals)) {
            broken.add(new Violation(
                    pointer,
                    "NO_SUCH_WOOD",
                    "No band of the " + halves.get(0).face() + " panels is of " + wood.species() + ".",
                    wood.species(),
                    "one of " + String.join(", ", woods)));
        }
    }
}
