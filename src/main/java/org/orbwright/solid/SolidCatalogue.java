package org.orbwright.solid;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * The 31 solids by name: Platonic, then Archimedean, then Catalan in the order of their duals. Each is computed once,
 * when it is first asked for: a service is mostly asked for few of them, and is not to start later for the rest.
 */
public final class SolidCatalogue {
    private static final Map<String, Lazy<Solid>> SOLIDS = build();
    private static final int SUGGESTIONS = 3;

    private SolidCatalogue() {}

    /** All solids, in the order of the catalogue. */
    public static List<Solid> all() {
        return SOLIDS.values().stream().map(Lazy::get).toList();
    }

    /** All solids in brief. */
    public static List<SolidSummary> summaries() {
        return all().stream().map(Solid::summary).toList();
    }

    /** The solid of this name. */
    public static Optional<Solid> find(String name) {
        return Optional.ofNullable(SOLIDS.get(name)).map(Lazy::get);
    }

    /** The three names of the catalogue that differ least from the given one, the nearest first. */
    public static List<String> nearest(String name) {
        String wanted = name.toLowerCase(Locale.ROOT);
        return SOLIDS.keySet().stream()
                .sorted(Comparator.comparingInt(candidate -> editDistance(wanted, candidate)))
                .limit(SUGGESTIONS)
                .toList();
    }

    private static Map<String, Lazy<Solid>> build() {
        Map<String, Lazy<Solid>> solids = new LinkedHashMap<>();
        platonic(solids, "tetrahedron", "tetrahedron");
        platonic(solids, "cube", "octahedron");
        platonic(solids, "octahedron", "cube");
        platonic(solids, "dodecahedron", "icosahedron");
        platonic(solids, "icosahedron", "dodecahedron");
        Map<String, Lazy<Solid>> catalan = new LinkedHashMap<>();
        pair(solids, catalan, "truncated-tetrahedron", "triakis-tetrahedron", false);
        pair(solids, catalan, "cuboctahedron", "rhombic-dodecahedron", false);
        pair(solids, catalan, "truncated-cube", "triakis-octahedron", false);
        pair(solids, catalan, "truncated-octahedron", "tetrakis-hexahedron", false);
        pair(solids, catalan, "rhombicuboctahedron", "deltoidal-icositetrahedron", false);
        pair(solids, catalan, "truncated-cuboctahedron", "disdyakis-dodecahedron", false);
        pair(solids, catalan, "snub-cube", "pentagonal-icositetrahedron", true);
        pair(solids, catalan, "icosidodecahedron", "rhombic-triacontahedron", false);
        pair(solids, catalan, "truncated-dodecahedron", "triakis-icosahedron", false);
        pair(solids, catalan, "truncated-icosahedron", "pentakis-dodecahedron", false);
        pair(solids, catalan, "rhombicosidodecahedron", "deltoidal-hexecontahedron", false);
        pair(solids, catalan, "truncated-icosidodecahedron", "disdyakis-triacontahedron", false);
        pair(solids, catalan, "snub-dodecahedron", "pentagonal-hexecontahedron", true);
        solids.putAll(catalan);
        return solids;
    }

    private static void platonic(Map<String, Lazy<Solid>> solids, String name, String dual) {
        solids.put(
                name, new Lazy<>(() -> SolidBuilder.build(name, SolidFamily.PLATONIC, dual, false, polyhedron(name))));
    }

    /** Adds an Archimedean solid and its Catalan dual. */
    private static void pair(
            Map<String, Lazy<Solid>> archimedean,
            Map<String, Lazy<Solid>> catalan,
            String name,
            String dual,
            boolean chiral) {
        Lazy<Polyhedron> polyhedron = new Lazy<>(() -> polyhedron(name));
        Lazy<Solid> solid =
                new Lazy<>(() -> SolidBuilder.build(name, SolidFamily.ARCHIMEDEAN, dual, chiral, polyhedron.get()));
        archimedean.put(name, solid);
        catalan.put(
                dual,
                new Lazy<>(() -> SolidBuilder.build(
                        dual,
                        SolidFamily.CATALAN,
                        name,
                        chiral,
                        polyhedron.get().dual(solid.get().midradius()))));
    }

    private static Polyhedron polyhedron(String name) {
        return Polyhedron.uniform(ExactCoordinates.of(name));
    }

    /** Levenshtein's distance: the fewest letters to insert, delete or change. */
    private static int editDistance(String from, String to) {
        int[] row = new int[to.length() + 1];
        for (int j = 0; j <= to.length(); j++) {
            row[j] = j;
        }
        for (int i = 1; i <= from.length(); i++) {
            int diagonal = row[0];
            row[0] = i;
            for (int j = 1; j <= to.length(); j++) {
                int change = diagonal + (from.charAt(i - 1) == to.charAt(j - 1) ? 0 : 1);
                diagonal = row[j];
                row[j] = Math.min(change, Math.min(row[j], row[j - 1]) + 1);
            }
        }
        return row[to.length()];
    }
}
