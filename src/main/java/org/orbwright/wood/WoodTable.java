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

/** The table of woods, each value with where it was read. What a name means in a design is told by {@link Woods}. */
public final class WoodTable {
    private static final String RESOURCE = "wood-species.csv";
    /** Letters by which a misspelt word is still known. */
    private static final int START = 3;

    private static final Map<String, WoodSpecies> SPECIES = read();

    private WoodTable() {}

    /** The species of exactly this name, written as {@link #plain} writes it. */
    static Optional<WoodSpecies> species(String plain) {
        return Optional.ofNullable(SPECIES.get(plain));
    }

    /** A name without the blanks around it, in lower case: names that differ in nothing else mean the same wood. */
    static String plain(String name) {
        return name.strip().toLowerCase(Locale.ROOT);
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
        return List.of(plain(name).split("\\s+", -1));
    }

    private static String start(String word) {
        return word.substring(0, Math.min(START, word.length()));
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
                    .forEach(wood -> species.put(plain(wood.name()), wood));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return species;
    }

    private static WoodSpecies parse(String line) {
        String[] fields = line.split(",", -1);
        boolean weighed = !fields[4].isBlank();
        return new WoodSpecies(
                fields[0],
                OptionalDouble.of(Double.parseDouble(fields[1])),
                OptionalDouble.of(Double.parseDouble(fields[2])),
                fields[3],
                weighed ? OptionalDouble.of(Double.parseDouble(fields[4])) : OptionalDouble.empty(),
                weighed ? fields[5] : null);
    }
}
