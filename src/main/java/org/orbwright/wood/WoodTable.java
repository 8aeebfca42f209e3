package org.orbwright.wood;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Predicate;

/**
 * The table of woods. Dimensional change coefficients: Forest Products Laboratory, Wood Handbook, FPL-GTR-190 (2010),
 * Table 13-5. Specific gravities at 12 % moisture content: the same, Table 5-3, from memory; they are good for a first
 * estimate of mass, not for a declaration.
 */
public final class WoodTable {
    private static final String RESOURCE = "wood-species.csv";
    /** Letters by which a misspelt word is still known. */
    private static final int START = 3;

    private static final Map<String, WoodSpecies> SPECIES = read();
    /** Names that the trade uses for one of the table's woods alone. Common practice, no source. */
    private static final Map<String, String> TRADE_NAMES = Map.of(
            "walnut", "black walnut",
            "cherry", "black cherry",
            "hard maple", "sugar maple",
            "soft maple", "red maple",
            "red oak", "red oak (commercial)",
            "white oak", "white oak (commercial)",
            "beech", "american beech",
            "ash", "white ash",
            "basswood", "american basswood",
            "hickory", "pecan hickory");

    private WoodTable() {}

    /** The species of this name or trade name, whatever its case. */
    public static Optional<WoodSpecies> find(String name) {
        String plain = name.strip().toLowerCase(Locale.ROOT);
        return Optional.ofNullable(SPECIES.get(TRADE_NAMES.getOrDefault(plain, plain)));
    }

    /** One name for all names of a wood, whether the table knows it or not. */
    public static String oneName(String name) {
        return find(name).map(WoodSpecies::name).orElse(name.strip().toLowerCase(Locale.ROOT));
    }

    /**
     * Names of the table that share a word with the given one.
     *
     * @param name a name that the table does not know
     * @param wanted what has to be known of the woods
     */
    public static List<String> similar(String name, Predicate<WoodSpecies> wanted) {
        List<String> words = words(name);
        return matching(wanted, words::contains);
    }

    /** Names of the table with a word that starts like one of the given name's: a name may be misspelt. */
    public static List<String> nearest(String name) {
        List<String> starts = words(name).stream().map(WoodTable::start).toList();
        return matching(wood -> true, word -> starts.contains(start(word)));
    }

    private static List<String> matching(Predicate<WoodSpecies> wanted, Predicate<String> word) {
        return SPECIES.values().stream()
                .filter(wanted)
                .map(WoodSpecies::name)
                .filter(known -> words(known).stream().anyMatch(word))
                .toList();
    }

    private static List<String> words(String name) {
        return List.of(name.strip().toLowerCase(Locale.ROOT).split("\\s+", -1));
    }

    private static String start(String word) {
        return word.substring(0, Math.min(START, word.length()));
    }

    /** The trade names that mean this species alone, in the order of the alphabet. */
    public static List<String> tradeNames(String species) {
        return TRADE_NAMES.entrySet().stream()
                .filter(entry -> entry.getValue().equals(species))
                .map(Map.Entry::getKey)
                .sorted()
                .toList();
    }

    /** All species, in the order of the table. */
    public static List<WoodSpecies> all() {
        return List.copyOf(SPECIES.values());
    }

    private static Map<String, WoodSpecies> read() {
        Map<String, WoodSpecies> species = new LinkedHashMap<>();
        try (InputStream in = WoodTable.class.getResourceAsStream(RESOURCE);
                BufferedReader lines = new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))) {
            lines.lines()
                    .filter(line -> !line.startsWith("#"))
                    .skip(1)
                    .map(WoodTable::parse)
                    .forEach(wood -> species.put(wood.name(), wood));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return species;
    }

    private static WoodSpecies parse(String line) {
        String[] fields = line.split(",", -1);
        OptionalDouble gravity =
                fields[3].isBlank() ? OptionalDouble.empty() : OptionalDouble.of(Double.parseDouble(fields[3]));
        return new WoodSpecies(fields[0], Double.parseDouble(fields[1]), Double.parseDouble(fields[2]), gravity);
    }
}
