package org.orbwright.wood;

import java.util.List;

/**
 * What a name means.
 *
 * @param wood the wood that is taken for it
 * @param others other woods that the name may mean; empty where it means one wood alone
 */
public record NamedWood(WoodSpecies wood, List<String> others) {
    /** Copies the list. */
    public NamedWood {
        others = List.copyOf(others);
    }
}
