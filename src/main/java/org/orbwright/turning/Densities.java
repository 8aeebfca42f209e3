package org.orbwright.turning;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.orbwright.design.Design;
import org.orbwright.design.ImpossibleDesignException;
import org.orbwright.design.Violation;
import org.orbwright.turning.Balance.DensityTaken;
import org.orbwright.turning.BalanceRequest.OddPanelRequest;
import org.orbwright.turning.BalanceRequest.OtherWoodRequest;
import org.orbwright.wood.NamedWood;

/** The densities of the woods in the work, in kilograms per cubic metre. */
final class Densities {
    private final Map<String, DensityTaken> taken = new LinkedHashMap<>();

    /**
     * Looks all of them up.
     *
     * @throws ImpossibleDesignException if the density of one is not known
     */
    Densities(BalanceRequest request, Design design) {
        List<Violation> broken = new ArrayList<>();
        fields(request, design).forEach((wood, pointer) -> take(wood, pointer, design, broken));
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

    private void take(String wood, String pointer, Design design, List<Violation> broken) {
        OptionalDouble density = design.woods().density(wood);
        if (density.isPresent()) {
            boolean stated = design.woods()
                    .named(wood)
                    .map(NamedWood::stated)
                    .filter(own -> own.density() != null)
                    .isPresent();
            taken.put(wood, new DensityTaken(wood, density.getAsDouble(), stated));
        } else {
            broken.add(new Violation(
                    pointer,
                    "DENSITY_UNKNOWN",
                    "The density of " + wood + " is not known.",
                    wood,
                    "a wood of the table with a density, or its density in woods"));
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
