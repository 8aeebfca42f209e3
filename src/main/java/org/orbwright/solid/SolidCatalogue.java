package org.orbwright.solid;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** The 31 solids by name: Platonic, then Archimedean, then Catalan in the order of their duals. Computed once. */
public final class SolidCatalogue {
    private static final Map<String, Solid> SOLIDS = build();
    private static final int SUGGESTIONS = 3;

    private SolidCatalogue() {}

    /** All solids, in the order of the catalogue. */
    public static List<Solid> all() {
        return List.copyOf(SOLIDS.values());
    }

    /** All solids in brief. */
    public static List<SolidSummary> summaries() {
        return SOLIDS.values().stream().map(Solid::summary).toList();
    }

    /** The solid of this name. */
    public static Optional<Solid> find(String name) {
        return Optional.ofNullable(SOLIDS.get(name));
    }

    /** The three names of the catalogue that differ least from the given one, the nearest first. */
    public static List<String> nearest(String name) {
        String wanted = name.toLowerCase(Locale.ROOT);
        return SOLIDS.keySet().stream()
                .sorted(Comparator.comparingInt(candidate -> editDistance(wanted, candidate)))
                .limit(SUGGESTIONS)
                .toList();
    }

    private static Map<String, Solid> build() {
        Map<String, Solid> solids = new LinkedHashMap<>();
        platonic(solids, "tetrahedron", "tetrahedron");
        platonic(solids, "cube", "octahedron");
        platonic(solids, "octahedron", "cube");
        platonic(solids, "dodecahedron", "icosahedron");
        platonic(solids, "icosahedron", "dodecahedron");
        List<Solid> catalan = new ArrayList<>();
        catalan.add(pair(solids, "truncated-tetrahedron", "triakis-tetrahedron", false));
        catalan.add(pair(solids, "cuboctahedron", "rhombic-dodecahedron", false));
        catalan.add(pair(solids, "truncated-cube", "triakis-octahedron", false));
        catalan.add(pair(solids, "truncated-octahedron", "tetrakis-hexahedron", false));
        catalan.add(pair(solids, "rhombicuboctahedron", "deltoidal-icositetrahedron", false));
        catalan.add(pair(solids, "truncated-cuboctahedron", "disdyakis-dodecahedron", false));
        catalan.add(pair(solids, "snub-cube", "pentagonal-icositetrahedron", true));
        catalan.add(pair(solids, "icosidodecahedron", "rhombic-triacontahedron", false));
        catalan.add(pair(solids, "truncated-dodecahedron", "triakis-icosahedron", false));
        catalan.add(pair(solids, "truncated-icosahedron", "pentakis-dodecahedron", false));
        catalan.add(pair(solids, "rhombicosidodecahedron", "deltoidal-hexecontahedron", false));
        catalan.add(pair(solids, "truncated-icosidodecahedron", "disdyakis-triacontahedron", false));
        catalan.add(pair(solids, "snub-dodecahedron", "pentagonal-hexecontahedron", true));
        catalan.forEach(solid -> solids.put(solid.name(), solid));
        return solids;
    }

    private static void platonic(Map<String, Solid> solids, String name, String dual) {
        Polyhedron polyhedron = Polyhedron.uniform(ExactCoordinates.of(name));
        solids.put(name, SolidBuilder.build(name, SolidFamily.PLATONIC, dual, false, polyhedron));
    }

    /** Adds an Archimedean solid and returns its Catalan dual. */
    private static Solid pair(Map<String, Solid> solids, String name, String dual, boolean chiral) {
        Polyhedron polyhedron = Polyhedron.uniform(ExactCoordinates.of(name));
        Solid solid = SolidBuilder.build(name, SolidFamily.ARCHIMEDEAN, dual, chiral, polyhedron);
        solids.put(name, solid);
        return SolidBuilder.build(dual, SolidFamily.CATALAN, name, chiral, polyhedron.dual(solid.midradius()));
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
