package org.orbwright.turning;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import org.orbwright.design.Band;
import org.orbwright.design.Design;
import org.orbwright.design.ImpossibleDesignException;
import org.orbwright.design.Panel;
import org.orbwright.design.Violation;
import org.orbwright.turning.Balance.DensityTaken;
import org.orbwright.turning.BalanceRequest.OddPanelRequest;
import org.orbwright.turning.BalanceRequest.OtherWoodRequest;
import org.orbwright.turning.BalanceRequest.WoodDensityRequest;
import org.orbwright.wood.WoodSpecies;
import org.orbwright.wood.WoodTable;

/** The densities of the woods in the work, in kilograms per cubic metre. */
final class Densities {
    private final Map<String, DensityTaken> taken = new LinkedHashMap<>();

    /**
     * Looks all of them up.
     *
     * @throws ImpossibleDesignException if the density of one is neither stated nor in the table, or stated twice
     */
    Densities(BalanceRequest request, Design design) {
        Map<String, String> woods = new LinkedHashMap<>();
        for (Panel panel : design.panels()) {
            List<Band> bands = panel.lamination().bands();
            for (int i = 0; i < bands.size(); i++) {
                woods.putIfAbsent(bands.get(i).species(), panel.lamination().pointer() + "/bands/" + i + "/species");
            }
        }
        for (int i = 0; request.panels() != null && i < request.panels().size(); i++) {
            OddPanelRequest panel = request.panels().get(i);
            for (int w = 0; panel.woods() != null && w < panel.woods().size(); w++) {
                woods.putIfAbsent(panel.woods().get(w).by(), "/balance/panels/" + i + "/woods/" + w + "/by");
            }
        }
        List<Violation> broken = new ArrayList<>();
        woods.forEach((wood, pointer) -> take(wood, pointer, request, broken));
        Set<String> seen = new HashSet<>();
        for (int i = 0; request.densities() != null && i < request.densities().size(); i++) {
            String stated = request.densities().get(i).species();
            if (!seen.add(WoodTable.oneName(stated))) {
                broken.add(new Violation(
                        "/balance/densities/" + i + "/species",
                        "WOOD_TWICE",
                        "The density of " + stated + " is stated twice.",
                        stated,
                        "each wood once"));
            }
            if (woods.keySet().stream()
                    .noneMatch(wood -> WoodTable.oneName(wood).equals(WoodTable.oneName(stated)))) {
                broken.add(new Violation(
                        "/balance/densities/" + i + "/species",
                        "NO_SUCH_WOOD",
                        "No part of the work is of " + stated + ".",
                        stated,
                        "one of " + String.join(", ", woods.keySet())));
            }
        }
        if (!broken.isEmpty()) {
            throw new ImpossibleDesignException(broken);
        }
    }

    private void take(String wood, String pointer, BalanceRequest request, List<Violation> broken) {
        for (int i = 0; request.densities() != null && i < request.densities().size(); i++) {
            WoodDensityRequest stated = request.densities().get(i);
            if (WoodTable.oneName(stated.species()).equals(WoodTable.oneName(wood))) {
                taken.put(wood, new DensityTaken(wood, stated.density(), true));
                return;
            }
        }
        OptionalDouble known = WoodTable.find(wood).map(WoodSpecies::density).orElse(OptionalDouble.empty());
        if (known.isPresent()) {
            taken.put(wood, new DensityTaken(wood, known.getAsDouble(), false));
        } else {
            broken.add(new Violation(
                    pointer,
                    "DENSITY_UNKNOWN",
                    "The table of woods has no density for " + wood + ".",
                    wood,
                    "a wood of the table with a density, or its density in densities"));
        }
    }

    /** Density of a wood of the design as it is in a panel. */
    double of(String species, OddPanelRequest panel) {
        if (panel == null) {
            return taken.get(species).density();
        }
        String there = species;
        for (int i = 0; panel.woods() != null && i < panel.woods().size(); i++) {
            OtherWoodRequest other = panel.woods().get(i);
            if (other.species().equals(species)) {
                there = other.by();
            }
        }
        return taken.get(there).density() * (panel.heavier() == null ? 1 : panel.heavier());
    }

    /** All that were taken. */
    List<DensityTaken> taken() {
        return List.copyOf(taken.values());
    }
}
