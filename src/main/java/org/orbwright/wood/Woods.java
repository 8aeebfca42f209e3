package org.orbwright.wood;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BinaryOperator;

/**
 * The woods that the names in a design mean: first those that the document states itself, then those of the table.
 * Upper and lower case are alike. A trade name that may mean several woods is taken for the one whose width moves most:
 * a plan for it allows for the others too. Which others there are stands beside it, so that nothing is chosen in
 * silence.
 */
public final class Woods {
    /** The woods of the table. */
    public static final Woods TABLE = new Woods(List.of());

    /** Of woods that move alike the first one is taken. */
    private static final BinaryOperator<WoodSpecies> MOVES_MORE = BinaryOperator.maxBy(
            Comparator.comparingDouble(wood -> wood.tangentialCoefficient().orElse(0)));

    private final Map<String, WoodRequest> own = new LinkedHashMap<>();

    private Woods(List<WoodRequest> own) {
        own.forEach(wood -> this.own.put(identity(wood.name()), wood));
    }

    /**
     * The woods of a document.
     *
     * @param own what it states itself, each wood once; null for nothing
     */
    public static Woods of(List<WoodRequest> own) {
        return own == null ? TABLE : new Woods(own);
    }

    /**
     * What a name is known by: a trade name that means one wood alone by that wood's name, every other name by itself,
     * in lower case. Two names that agree in it are one.
     */
    public static String identity(String name) {
        List<String> meanings = TradeNames.meanings(name);
        return WoodTable.plain(meanings.size() == 1 ? meanings.get(0) : name);
    }

    /** What a name means; nothing where no wood is known by it. */
    public Optional<NamedWood> named(String name) {
        String identity = identity(name);
        if (own.containsKey(identity)) {
            return Optional.of(new NamedWood(species(identity).orElseThrow(), List.of(), own.get(identity)));
        }
        List<String> meanings = TradeNames.meanings(name);
        return meanings.stream()
                .flatMap(meaning -> species(WoodTable.plain(meaning)).stream())
                .reduce(MOVES_MORE)
                .map(taken -> new NamedWood(taken, others(meanings, taken), own.get(identity(taken.name()))));
    }

    /** A wood as the document states it, with what it leaves out from the table; as the table has it otherwise. */
    private Optional<WoodSpecies> species(String identity) {
        Optional<WoodSpecies> known = WoodTable.species(identity);
        WoodRequest stated = own.get(identity);
        return stated == null ? known : Optional.of(WoodSpecies.of(stated, known.orElse(null)));
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

    /**
     * Which of some woods a name may mean, each by its one name: the wood that is taken for it where that is among
     * them, else all that it may mean, or that may mean it.
     *
     * @param others names of the woods that there are
     */
    public List<String> among(String name, Collection<String> others) {
        String one = oneName(name);
        boolean there = others.stream().map(this::oneName).anyMatch(one::equals);
        List<String> meanings = meanings(name);
        return there
                ? List.of(one)
                : others.stream()
                        .filter(other -> !Collections.disjoint(meanings, meanings(other)))
                        .map(this::oneName)
                        .distinct()
                        .toList();
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
