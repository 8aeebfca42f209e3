package org.orbwright.turning;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import org.orbwright.design.Design;
import org.orbwright.design.ImpossibleDesignException;
import org.orbwright.design.Violation;
import org.orbwright.turning.Balance.DensityTaken;
import org.orbwright.turning.BalanceRequest.OddPanelRequest;
import org.orbwright.turning.BalanceRequest.OtherWoodRequest;
import org.orbwright.turning.BalanceRequest.WoodDensityRequest;
import org.orbwright.wood.Woods;

/** The densities of the woods in the work, in kilograms per cubic metre. */
final class Densities {
    private final Woods known;
    private final Map<String, DensityTaken> taken = new LinkedHashMap<>();

    /**
     * Looks all of them up.
     *
     * @throws ImpossibleDesignException if the density of one is neither stated nor in the table, or stated twice
     */
    Densities(BalanceRequest request, Design design) {
        this.known = design.woods();
        Map<String, String> woods = fields(request, design);
        List<Violation> broken = new ArrayList<>();
        woods.forEach((wood, pointer) -> take(wood, pointer, request, broken));
        Set<String> seen = new HashSet<>();
        for (int i = 0; request.densities() != null && i < request.densities().size(); i++) {
            String stated = request.densities().get(i).species();
            if (!seen.add(known.oneName(stated))) {
                broken.add(new Violation(
                        "/balance/densities/" + i + "/species",
                        "WOOD_TWICE",
                        "The density of " + stated + " is stated twice.",
                        stated,
                        "each wood once"));
            }
            if (woods.keySet().stream().noneMatch(wood -> known.oneName(wood).equals(known.oneName(stated)))) {
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

    /** The woods of the work by their names as written, each with the JSON pointer to the first field with it. */
    static Map<String, String> fields(BalanceRequest request, Design design) {
        Map<String, String> fields = design.woodFields();
        for (int i = 0; request.panels() != null && i < request.panels().size(); i++) {
            OddPanelRequest panel = request.panels().get(i);
            for (int w = 0; panel.woods() != null && w < panel.woods().size(); w++) {
                fields.putIfAbsent(panel.woods().get(w).by(), "/balance/panels/" + i + "/woods/" + w + "/by");
            }
        }
        return fields;
    }

    private void take(String wood, String pointer, BalanceRequest request, List<Violation> broken) {
        for (int i = 0; request.densities() != null && i < request.densities().size(); i++) {
            WoodDensityRequest stated = request.densities().get(i);
            if (known.oneName(stated.species()).equals(known.oneName(wood))) {
                taken.put(wood, new DensityTaken(wood, stated.density(), true));
                return;
            }
        }
        OptionalDouble density = known.density(wood);
        if (density.isPresent()) {
            taken.put(wood, new DensityTaken(wood, density.getAsDouble(), false));
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
