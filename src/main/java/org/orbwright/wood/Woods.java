package org.orbwright.wood;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BinaryOperator;

/**
 * The woods that the names in a design mean. Upper and lower case are alike. A trade name that may mean several woods
 * is taken for the one whose width moves most: a plan for it allows for the others too. Which others there are stands
 * beside it, so that nothing is chosen in silence.
 */
public final class Woods {
    /** The woods of the table. */
    public static final Woods TABLE = new Woods();

    /** Of woods that move alike the first one is taken. */
    private static final BinaryOperator<WoodSpecies> MOVES_MORE =
            BinaryOperator.maxBy(Comparator.comparingDouble(WoodSpecies::tangentialCoefficient));

    private Woods() {}

    /** What a name means; nothing where no wood is known by it. */
    public Optional<NamedWood> named(String name) {
        List<String> meanings = TradeNames.meanings(name);
        return meanings.stream()
                .map(WoodTable::plain)
                .flatMap(meaning -> WoodTable.species(meaning).stream())
                .reduce(MOVES_MORE)
                .map(taken -> new NamedWood(taken, others(meanings, taken)));
    }

    private static List<String> others(List<String> meanings, WoodSpecies taken) {
        return meanings.stream()
                .filter(meaning -> meanings.size() > 1 && !meaning.equals(taken.name()))
                .toList();
    }

    /** The wood that is taken for a name. */
    public Optional<WoodSpecies> find(String name) {
        return named(name).map(NamedWood::wood);
    }

    /** Density at 12 % moisture content of the wood that is taken for a name, in kilograms per cubic metre. */
    public OptionalDouble density(String name) {
        return find(name).map(WoodSpecies::density).orElse(OptionalDouble.empty());
    }

    /** The same at a moisture content in percent; see {@link WoodSpecies#density(double)}. */
    public OptionalDouble density(String name, double moisture) {
        return find(name).map(wood -> wood.density(moisture)).orElse(OptionalDouble.empty());
    }

    /** Whether two names that are taken for two woods may mean the same one. */
    public boolean mayBeOne(String one, String other) {
        return !oneName(one).equals(oneName(other)) && !Collections.disjoint(meanings(one), meanings(other));
    }

    private List<String> meanings(String name) {
        List<String> meanings =
                new ArrayList<>(named(name).map(NamedWood::others).orElse(List.of()));
        meanings.add(oneName(name));
        return meanings;
    }

    /** One name for all names of a wood, whether it is known or not. */
    public String oneName(String name) {
        return find(name).map(WoodSpecies::name).orElse(WoodTable.plain(name));
    }
}
