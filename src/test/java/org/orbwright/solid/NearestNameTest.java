package org.orbwright.solid;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.orbwright.source.Kind.CONTRACT;

import java.util.HashSet;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.orbwright.source.Source;

/** Suggestions for a misspelt solid. */
@Source(CONTRACT)
class NearestNameTest {

    @ParameterizedTest
    @CsvSource({
        "dodecahedon, dodecahedron",
        "Dodecahedron, dodecahedron",
        "ICOSAHEDRON, icosahedron",
        "trunc icosahedron, truncated-icosahedron",
        "truncated icosahedron, truncated-icosahedron",
        "rombic-triacontahedron, rhombic-triacontahedron",
        "cubeoctahedron, cuboctahedron",
        "snubcube, snub-cube",
        "kube, cube"
    })
    void nearestNameComesFirst(String asked, String nearest) {
        assertEquals(nearest, SolidCatalogue.nearest(asked).get(0));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"soccer ball", "", "x", "\u7403", "a very long name that no solid has ever had in any book"})
    void everyNameGetsThreeDifferentSuggestionsFromTheCatalogue(String asked) {
        List<String> nearest = SolidCatalogue.nearest(asked);
        assertEquals(3, new HashSet<>(nearest).size());
        assertTrue(nearest.stream().allMatch(name -> SolidCatalogue.find(name).isPresent()));
    }

    @ParameterizedTest
    @MethodSource("org.orbwright.solid.Solids#names")
    void exactNameIsItsOwnNearest(String name) {
        assertEquals(name, SolidCatalogue.nearest(name).get(0));
    }

    @Test
    void namesAreFoundOnlyAsTheyAreWritten() {
        assertTrue(SolidCatalogue.find("Cube").isEmpty());
        assertTrue(SolidCatalogue.find("cube").isPresent());
    }
}
