package org.orbwright.wood;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class WoodTableTest {
    @Test
    void theTableIsComplete() {
        List<String> names = WoodTable.all().stream().map(WoodSpecies::name).toList();
        assertEquals(48, names.size());
        assertEquals(48, new HashSet<>(names).size());
        assertEquals("red alder", names.get(0));
        assertEquals("black walnut", names.get(47));
    }

    @Test
    void everyWoodMovesMoreAlongItsRingsThanAcrossThem() {
        for (WoodSpecies wood : WoodTable.all()) {
            assertTrue(wood.radialCoefficient() > 0, wood.name());
            assertTrue(wood.tangentialCoefficient() > wood.radialCoefficient(), wood.name());
            assertTrue(wood.tangentialCoefficient() < 0.006, wood.name());
        }
    }

    @Test
    void everyKnownGravityIsThatOfAWoodThatFloats() {
        for (WoodSpecies wood : WoodTable.all()) {
            double gravity = wood.specificGravity().orElse(0.5);
            assertTrue(gravity > 0.3 && gravity < 0.95, wood.name());
        }
    }

    @ParameterizedTest(name = "{0}: radial {1}, tangential {2} (FPL Wood Handbook, FPL-GTR-190, Table 13-5)")
    @CsvSource({
        "black walnut, 0.00190, 0.00274", "sugar maple, 0.00165, 0.00353", "black cherry, 0.00126, 0.00248",
        "american beech, 0.00190, 0.00431", "red alder, 0.00151, 0.00256", "white ash, 0.00169, 0.00274"
    })
    void coefficients(String name, double radial, double tangential) {
        WoodSpecies wood = WoodTable.find(name).orElseThrow();
        assertEquals(radial, wood.radialCoefficient());
        assertEquals(tangential, wood.tangentialCoefficient());
    }

    @ParameterizedTest(name = "{0}: G {1}, {2} kg/m3 (1000 G 1.12, Wood Handbook's relation, from memory)")
    @CsvSource({
        "black walnut, 0.55, 616",
        "sugar maple, 0.63, 705.6",
        "black cherry, 0.50, 560",
        "live oak, 0.88, 985.6"
    })
    void densityAtTwelvePercent(String name, double gravity, double density) {
        WoodSpecies wood = WoodTable.find(name).orElseThrow();
        assertEquals(gravity, wood.specificGravity().orElseThrow());
        assertEquals(density, wood.density().orElseThrow(), 1e-9);
    }

    @ParameterizedTest
    @ValueSource(strings = {"apple", "river birch", "honeylocust", "tanoak"})
    void anUnknownGravityGivesNoDensity(String name) {
        assertEquals(OptionalDouble.empty(), WoodTable.find(name).orElseThrow().density());
    }

    @ParameterizedTest
    @ValueSource(strings = {"black walnut", "Black Walnut", "BLACK WALNUT", "  black walnut\t"})
    void lookUpIgnoresCaseAndBlanks(String name) {
        assertEquals("black walnut", WoodTable.find(name).orElseThrow().name());
    }

    @Test
    @DisplayName("case is folded without regard to where the service runs: a Turkish I finds its wood")
    void lookUpDoesNotDependOnTheLocale() {
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag("tr"));
            assertTrue(WoodTable.find("RIVER BIRCH").isPresent());
        } finally {
            Locale.setDefault(before);
        }
    }

    @Test
    void anUnknownNameFindsNothing() {
        assertTrue(WoodTable.find("unobtainable").isEmpty());
        assertTrue(WoodTable.find("").isEmpty());
    }

    @Test
    @DisplayName("a mass at 8 % over the volume at 12 %: 1000 x 0.63 x 1.08 (Wood Handbook's relation, from memory)")
    void densityAtAnotherMoistureContent() {
        WoodSpecies maple = WoodTable.find("sugar maple").orElseThrow();
        assertEquals(680.4, maple.density(8).orElseThrow(), 1e-9);
        assertEquals(maple.density(), maple.density(12));
    }

    @Test
    void coefficientsBetweenRadialAndTangentialAreMixed() {
        WoodSpecies maple = WoodTable.find("sugar maple").orElseThrow();
        assertEquals(0.00353, maple.coefficient(0));
        assertEquals(0.00165, maple.coefficient(Math.PI / 2), 1e-18);
        assertEquals(0.00259, maple.coefficient(Math.PI / 4), 1e-15);
    }

    @Test
    void everyTradeNameFindsTheWoodThatItIsANameOf() {
        int names = 0;
        for (WoodSpecies wood : WoodTable.all()) {
            for (String name : WoodTable.tradeNames(wood.name())) {
                assertEquals(wood, WoodTable.find(name).orElseThrow());
                names++;
            }
        }
        assertEquals(10, names);
        assertEquals(List.of("walnut"), WoodTable.tradeNames("black walnut"));
    }

    @Test
    void similarNamesShareAWordAndMisspeltOnesItsStart() {
        assertTrue(WoodTable.similar("bog oak", wood -> true).contains("oregon white oak"));
        assertEquals(List.of("black walnut"), WoodTable.similar("french walnut", wood -> true));
        assertEquals(List.of(), WoodTable.similar("walnutt", wood -> true));
        assertEquals(List.of("black walnut"), WoodTable.nearest("walnutt"));
        assertEquals(List.of(), WoodTable.nearest(""));
    }
}
