package org.orbwright.wood;

import java.util.List;

/**
 * What a name means.
 *
 * @param wood the wood that is taken for it
 * @param others other woods that the name may mean; empty where it means one wood alone
 * @param stated what the document states of the wood, or null where its numbers are the table's alone
 */
public record NamedWood(WoodSpecies wood, List<String> others, WoodRequest stated) {
    public NamedWood {
        others = List.copyOf(others);
    }
}
