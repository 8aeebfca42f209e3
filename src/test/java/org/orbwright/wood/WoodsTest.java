package org.orbwright.wood;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.parallel.Isolated;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What the names in a design mean. */
@Isolated("sets the locale of all that runs")
class WoodsTest {
    private static NamedWood named(String name) {
        return Woods.TABLE.named(name).orElseThrow();
    }

    @Nested
    class NamesOfTheTable {
        @ParameterizedTest
        @ValueSource(strings = {"black walnut", "Black Walnut", "BLACK WALNUT", "  black walnut\t"})
        void lookUpIgnoresCaseAndBlanks(String name) {
            assertEquals("black walnut", named(name).wood().name());
        }

        @ParameterizedTest
        @ValueSource(strings = {"European ash", "european ash", "EUROPEAN ASH"})
        void properNamesKeepTheirCapitals(String name) {
            assertEquals("European ash", named(name).wood().name());
        }

        @Test
        @DisplayName("case is folded without regard to where the service runs: a Turkish I finds its wood")
        void lookUpDoesNotDependOnTheLocale() {
            Locale before = Locale.getDefault();
            try {
                Locale.setDefault(Locale.forLanguageTag("tr"));
                assertTrue(Woods.TABLE.find("RIVER BIRCH").isPresent());
            } finally {
                Locale.setDefault(before);
            }
        }

        @Test
        void everyNameOfTheTableMeansItsWoodAlone() {
            for (WoodSpecies wood : WoodTable.all()) {
                assertEquals(new NamedWood(wood, List.of(), null), named(wood.name()));
            }
        }

        @ParameterizedTest
        @ValueSource(strings = {"unobtainable", "", "pine", "larch"})
        void aNameThatTheTableCannotSettleFindsNothing(String name) {
            assertTrue(Woods.TABLE.named(name).isEmpty());
            assertEquals(name, Woods.TABLE.oneName(name));
        }
    }

    @Nested
    class WoodsOfTheDocument {
        private static Woods woods(WoodRequest... own) {
            return Woods.of(List.of(own));
        }

        private static WoodRequest own(String name, Double radial, Double tangential, Double density) {
            return new WoodRequest(name, radial, tangential, density);
        }

        @Test
        void aWoodThatTheTableDoesNotHaveIsFound() {
            Woods woods = woods(own(" Garden Plum ", 0.0018, 0.0035, 720.0));
            WoodSpecies plum = woods.find("garden plum").orElseThrow();
            assertEquals("Garden Plum", plum.name());
            assertEquals(0.0018, plum.radialCoefficient().orElseThrow());
            assertEquals(0.0035, plum.tangentialCoefficient().orElseThrow());
            assertEquals(720, plum.density().orElseThrow(), 1e-9);
            assertEquals("Garden Plum", woods.oneName("GARDEN PLUM"));
            assertTrue(woods.find("black walnut").isPresent(), "those of the table stay");
        }

        @Test
        @DisplayName("720 kg/m3 at 12 % are 720 x 1.06 / 1.12 at 6 %, over the volume at 12 % (FPL-GTR-190, chapter 4)")
        void densityAtAnotherMoistureContent() {
            assertEquals(
                    720 * 1.06 / 1.12,
                    woods(own("plum", null, null, 720.0)).density("plum", 6).orElseThrow(),
                    1e-9);
        }

        @Test
        void whatIsNotStatedIsNotKnown() {
            WoodSpecies plum =
                    woods(own("plum", null, 0.0035, null)).find("plum").orElseThrow();
            assertEquals(OptionalDouble.empty(), plum.density());
            assertEquals(0.0035, plum.coefficient(0).orElseThrow());
            assertEquals(OptionalDouble.empty(), plum.coefficient(0.1));
            assertEquals(OptionalDouble.empty(), plum.coefficient(Math.PI / 2));
            WoodSpecies pear =
                    woods(own("pear", 0.0016, null, null)).find("pear").orElseThrow();
            assertEquals(0.0016, pear.coefficient(Math.PI / 2).orElseThrow(), 1e-18);
            assertEquals(OptionalDouble.empty(), pear.coefficient(0));
        }

        @Test
        void aNameOfTheTableIsOverruledAndKeepsWhatIsNotStated() {
            NamedWood walnut = woods(own("BLACK walnut", null, null, 640.0))
                    .named("black walnut")
                    .orElseThrow();
            assertEquals("black walnut", walnut.wood().name());
            assertEquals(640, walnut.wood().density().orElseThrow(), 1e-9);
            assertEquals(0.00274, walnut.wood().tangentialCoefficient().orElseThrow());
            assertEquals(640.0, walnut.stated().density());
        }

        @Test
        void aTradeNameOfOneWoodIsThatWood() {
            Woods woods = woods(own("red oak", null, 0.004, null));
            assertEquals(
                    0.004,
                    woods.find("Red Oak (Commercial)")
                            .orElseThrow()
                            .tangentialCoefficient()
                            .orElseThrow());
        }

        @Test
        void aTradeNameOfSeveralWoodsIsAWoodOfItsOwn() {
            NamedWood walnut =
                    woods(own("walnut", null, 0.003, null)).named("Walnut").orElseThrow();
            assertEquals("walnut", walnut.wood().name());
            assertEquals(List.of(), walnut.others());
            assertEquals(OptionalDouble.empty(), walnut.wood().radialCoefficient(), "nothing is taken from the table");
            assertEquals(OptionalDouble.empty(), walnut.wood().density());
        }

        @Test
        void aTradeNameIsTakenForTheWoodThatMovesMostAsTheDocumentHasIt() {
            Woods woods = woods(own("pecan hickory", null, 0.005, null));
            NamedWood hickory = woods.named("hickory").orElseThrow();
            assertEquals("pecan hickory", hickory.wood().name());
            assertEquals(List.of("true hickory"), hickory.others());
            assertEquals(0.005, hickory.stated().tangentialCoefficient());
        }
    }

    @Nested
    class NamesOfTheTrade {
        private static final Set<String> NOT_IN_THE_TABLE = Set.of("European cherry", "European maple");

        @Test
        @DisplayName("hickory is true hickory, 0.00411, and not pecan hickory, 0.00315 (FPL-GTR-190, Table 13-5)")
        void plainHickoryIsTrueHickory() {
            assertEquals("true hickory", named("Hickory").wood().name());
            assertEquals(
                    0.00411, named("hickory").wood().tangentialCoefficient().orElseThrow());
            assertEquals(List.of("pecan hickory"), named("hickory").others());
            assertEquals(List.of(), named("true hickory").others());
            assertEquals(List.of(), named("pecan hickory").others());
        }

        @ParameterizedTest
        @CsvSource({
            "ash, European ash, 6",
            "aspen, bigtooth aspen, 1",
            "beech, american beech, 1",
            "birch, European birch, 4",
            "cherry, black cherry, 1",
            "elm, cedar elm, 5",
            "hard maple, sugar maple, 1",
            "maple, sugar maple, 5",
            "oak, red oak (commercial), 2",
            "poplar, European poplar, 1",
            "soft maple, red maple, 2",
            "walnut, European walnut, 1",
            "basswood, american basswood, 0",
            "red oak, red oak (commercial), 0",
            "white oak, white oak (commercial), 0"
        })
        void theOneThatMovesMostIsTaken(String name, String taken, int others) {
            assertEquals(taken, named(name).wood().name());
            assertEquals(others, named(name).others().size());
        }

        @Test
        void noWoodThatANameMayMeanMovesMoreThanTheOneThatIsTaken() {
            for (String name : tradeNames()) {
                WoodSpecies taken = named(name).wood();
                for (String other : named(name).others()) {
                    assertFalse(other.equals(taken.name()), name);
                    Woods.TABLE
                            .find(other)
                            .ifPresentOrElse(
                                    wood -> assertTrue(
                                            wood.tangentialCoefficient().orElseThrow()
                                                    <= taken.tangentialCoefficient()
                                                            .orElseThrow(),
                                            name),
                                    () -> assertTrue(NOT_IN_THE_TABLE.contains(other), other));
                }
            }
        }

        @Test
        void noTradeNameIsTheNameOfAWood() {
            tradeNames().forEach(name -> assertTrue(WoodTable.species(name).isEmpty(), name));
        }

        @Test
        void everyWoodIsFoundByTheTradeNamesThatMayMeanIt() {
            assertEquals(18, tradeNames().size());
            assertEquals(List.of("hard maple", "maple"), TradeNames.of("sugar maple"));
            for (WoodSpecies wood : WoodTable.all()) {
                for (String name : TradeNames.of(wood.name())) {
                    NamedWood named = named(name);
                    assertTrue(named.wood().equals(wood) || named.others().contains(wood.name()), name);
                }
            }
        }

        private static Set<String> tradeNames() {
            Set<String> names = new TreeSet<>();
            WoodTable.all().forEach(wood -> names.addAll(TradeNames.of(wood.name())));
            return names;
        }

        @Test
        void aNameIsFoundAmongOthers() {
            assertEquals(List.of("true hickory"), among("Hickory", "true hickory", "pecan hickory"));
            assertEquals(List.of("pecan hickory"), among("hickory", "pecan hickory"));
            assertEquals(List.of("black walnut"), among("walnut", "Black Walnut", "black walnut", "sugar maple"));
            assertEquals(List.of("European walnut"), among("black walnut", "walnut"));
            assertEquals(List.of("black ash", "white ash"), among("ash", "black ash", "white ash", "plum"));
            assertEquals(List.of("plum"), among("Plum", "walnut", "plum"));
            assertEquals(List.of(), among("black walnut", "European walnut", "plum"));
        }

        private static List<String> among(String name, String... others) {
            return Woods.TABLE.among(name, List.of(others));
        }
    }
}
