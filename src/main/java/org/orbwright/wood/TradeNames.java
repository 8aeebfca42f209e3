package org.orbwright.wood;

import java.util.List;
import java.util.Map;

/**
 * Names that the trade uses, and the woods that each may mean. Common practice, no source. Where the table has a group
 * as the trade sells it (red oak, true hickory), the group stands for its members.
 */
final class TradeNames {
    /** A wood that is not in the table is listed too, so that a caller reads what else the name may mean. */
    private static final Map<String, List<String>> MEANINGS = Map.ofEntries(
            Map.entry(
                    "ash",
                    List.of(
                            "white ash",
                            "green ash",
                            "black ash",
                            "blue ash",
                            "oregon ash",
                            "pumpkin ash",
                            "European ash")),
            Map.entry("aspen", List.of("quaking aspen", "bigtooth aspen")),
            Map.entry("basswood", List.of("american basswood")),
            Map.entry("beech", List.of("american beech", "European beech")),
            Map.entry("birch", List.of("yellow birch", "sweet birch", "paper birch", "river birch", "European birch")),
            Map.entry("cherry", List.of("black cherry", "European cherry")),
            Map.entry("cottonwood", List.of("eastern cottonwood", "black cottonwood")),
            Map.entry(
                    "elm",
                    List.of("american elm", "cedar elm", "rock elm", "slippery elm", "winged elm", "European elm")),
            Map.entry("hickory", List.of("true hickory", "pecan hickory")),
            Map.entry("hard maple", List.of("sugar maple", "black maple")),
            Map.entry("soft maple", List.of("red maple", "silver maple", "bigleaf maple")),
            Map.entry(
                    "maple",
                    List.of(
                            "sugar maple",
                            "black maple",
                            "red maple",
                            "silver maple",
                            "bigleaf maple",
                            "European maple")),
            Map.entry("oak", List.of("red oak (commercial)", "white oak (commercial)", "European oak")),
            Map.entry("red oak", List.of("red oak (commercial)")),
            Map.entry("white oak", List.of("white oak (commercial)")),
            Map.entry("poplar", List.of("yellow-poplar", "European poplar")),
            Map.entry("tupelo", List.of("black tupelo", "water tupelo")),
            Map.entry("walnut", List.of("black walnut", "European walnut")));

    private TradeNames() {}

    /** The woods that a name may mean: those of a trade name, or the wood of that very name. */
    static List<String> meanings(String name) {
        return MEANINGS.getOrDefault(WoodTable.plain(name), List.of(name));
    }

    /** The trade names that may mean a wood of the table, in the order of the alphabet. */
    static List<String> of(String species) {
        return MEANINGS.entrySet().stream()
                .filter(entry -> entry.getValue().contains(species))
                .map(Map.Entry::getKey)
                .sorted()
                .toList();
    }
}
