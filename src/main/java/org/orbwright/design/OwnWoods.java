package org.orbwright.design;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.orbwright.wood.WoodRequest;
import org.orbwright.wood.Woods;

/** Checks the woods that a document states itself. */
final class OwnWoods {
    private OwnWoods() {}

    /**
     * Checks that each wood is stated once, and that something is said of it.
     *
     * @param woods the woods, or null for none
     * @param violations where broken rules are added
     */
    static void check(List<WoodRequest> woods, Violations violations) {
        Set<String> seen = new HashSet<>();
        for (int i = 0; woods != null && i < woods.size(); i++) {
            WoodRequest wood = woods.get(i);
            if (wood.radialCoefficient() == null && wood.tangentialCoefficient() == null && wood.density() == null) {
                violations.add(
                        "/woods/" + i,
                        "WOOD_WITHOUT_NUMBERS",
                        "Nothing is said of " + wood.name() + " but its name.",
                        wood.name(),
                        "a radialCoefficient, a tangentialCoefficient or a density");
            }
            if (!seen.add(Woods.identity(wood.name()))) {
                violations.add(
                        "/woods/" + i + "/name",
                        "WOOD_TWICE",
                        "The wood " + wood.name() + " is stated twice.",
                        wood.name(),
                        "each wood once");
            }
        }
    }
}
