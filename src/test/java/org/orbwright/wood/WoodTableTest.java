package org.orbwright.wood;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class WoodTableTest {
    private static WoodSpecies species(String name) {
        return WoodTable.species(WoodTable.plain(name)).orElseThrow();
    }

    @Test
    void theTableIsComplete() {
        List<String> names = WoodTable.all().stream().map(WoodSpecies::name).toList();
        assertEquals(87, names.size());
        assertEquals(87, new HashSet<>(names).size());
        assertEquals("afrormosia", names.get(0));
        assertEquals("yellow-poplar", names.get(86));
    }

    @Test
    void everyWoodMovesMoreAlongItsRingsThanAcrossThem() {
        for (WoodSpecies wood : WoodTable.all()) {
            assertTrue(wood.radialCoefficient().orElseThrow() > 0, wood.name());
            assertTrue(
                    wood.tangentialCoefficient().orElseThrow()
                            > wood.radialCoefficient().orElseThrow(),
                    wood.name());
            assertTrue(wood.tangentialCoefficient().orElseThrow() < 0.006, wood.name());
        }
    }

    @Test
    void everyKnownGravityIsThatOfAWoodThatFloats() {
        for (WoodSpecies wood : WoodTable.all()) {
            double gravity = wood.specificGravity().orElse(0.5);
            assertTrue(gravity > 0.3 && gravity < 0.95, wood.name());
        }
    }

    @Test
    void everyValueNamesItsSource() {
        for (WoodSpecies wood : WoodTable.all()) {
            assertFalse(wood.coefficientsSource().isBlank(), wood.name());
            assertFalse(wood.coefficientsSource().contains("memory"), wood.name());
            if (wood.specificGravity().isPresent()) {
                assertTrue(wood.specificGravitySource().contains("USDA FIA"), wood.name());
            } else {
                assertNull(wood.specificGravitySource(), wood.name());
            }
        }
    }

    @ParameterizedTest(name = "{0}: radial {1}, tangential {2} (Wood Handbook, FPL-GTR-190, Table 13-5)")
    @CsvFileSource(resources = "table-13-5.csv", numLinesToSkip = 1)
    void coefficientsAreThoseOfTheWoodHandbook(String name, double radial, double tangential) {
        WoodSpecies wood = species(name);
        assertEquals(radial, wood.radialCoefficient().orElseThrow());
        assertEquals(tangential, wood.tangentialCoefficient().orElseThrow());
        assertEquals("FPL-GTR-190 Table 13-5", wood.coefficientsSource());
    }

    @ParameterizedTest(name = "{0}: G {1}, {2} kg/m3 (1000 G 1.12, FPL-GTR-190, chapter 4)")
    @CsvSource({
        "black walnut, 0.55, 616",
        "sugar maple, 0.63, 705.6",
        "black cherry, 0.50, 560",
        "live oak, 0.88, 985.6",
        "apple, 0.67, 750.4"
    })
    void densityAtTwelvePercent(String name, double gravity, double density) {
        WoodSpecies wood = species(name);
        assertEquals(gravity, wood.specificGravity().orElseThrow());
        assertEquals(density, wood.density().orElseThrow(), 1e-9);
    }

    @ParameterizedTest
    @ValueSource(strings = {"European ash", "teak", "wenge", "Norway spruce"})
    void anUnknownGravityGivesNoDensity(String name) {
        assertEquals(OptionalDouble.empty(), species(name).density());
    }

    @Test
    @DisplayName("a mass at 8 % over the volume at 12 %: 1000 x 0.63 x 1.08 (FPL-GTR-190, chapter 4)")
    void densityAtAnotherMoistureContent() {
        WoodSpecies maple = species("sugar maple");
        assertEquals(680.4, maple.density(8).orElseThrow(), 1e-9);
        assertEquals(maple.density(), maple.density(12));
    }

    @Test
    void coefficientsBetweenRadialAndTangentialAreMixed() {
        WoodSpecies maple = species("sugar maple");
        assertEquals(0.00353, maple.coefficient(0).orElseThrow());
        assertEquals(0.00165, maple.coefficient(Math.PI / 2).orElseThrow(), 1e-18);
        assertEquals(0.00259, maple.coefficient(Math.PI / 4).orElseThrow(), 1e-15);
    }

    @Test
    void similarNamesShareAWordAndMisspeltOnesItsStart() {
        assertTrue(WoodTable.similar("bog oak", wood -> true).contains("oregon white oak"));
        assertEquals(List.of("black walnut", "European walnut"), WoodTable.similar("french walnut", wood -> true));
        assertEquals(List.of(), WoodTable.similar("walnutt", wood -> true));
        assertEquals(List.of("black walnut", "European walnut"), WoodTable.nearest("walnutt"));
        assertEquals(List.of(), WoodTable.nearest(""));
    }
}
