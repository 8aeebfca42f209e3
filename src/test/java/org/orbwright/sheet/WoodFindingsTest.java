package org.orbwright.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.orbwright.source.Kind.CONTRACT;

import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.orbwright.document.Document;
import org.orbwright.document.Section;
import org.orbwright.fixture.Designs;
import org.orbwright.movement.Movements;
import org.orbwright.source.Source;
import org.orbwright.turning.BalanceRequest;
import org.orbwright.turning.BalanceRequest.OddPanelRequest;
import org.orbwright.turning.BalanceRequest.OtherWoodRequest;
import org.orbwright.wood.WoodRequest;

/** Which woods were taken for the names in a document, told wherever a number depends on them. */
@Source(CONTRACT)
class WoodFindingsTest {
    private static Document document(Designs design) {
        return Movements.of(design).document();
    }

    private static Designs cube(String... species) {
        return Designs.of("cube")
                .bands(Stream.of(species)
                        .map(name -> Designs.band(name, name.equals(species[0]) ? null : 20.0))
                        .toList());
    }

    private static List<Finding> found(FindingCode code, Answer answer) {
        return answer.findings().stream()
                .filter(finding -> finding.code() == code)
                .toList();
    }

    static Stream<Named<Function<Document, Answer>>> wherever() {
        return Stream.of(
                Named.of("movement", SheetCalculator::movement),
                Named.of("yield", SheetCalculator::yields),
                Named.of("sheet", document -> SheetCalculator.sheet(document, 2)),
                Named.of("turning", SheetCalculator::turning),
                Named.of("balance", SheetCalculator::balance));
    }

    @Nested
    class OfTheDocument {
        static Stream<Named<Function<Document, Answer>>> wherever() {
            return WoodFindingsTest.wherever();
        }

        @ParameterizedTest
        @MethodSource("wherever")
        void overrulingTheTableIsTold(Function<Document, Answer> address) {
            Designs design = cube("sugar maple", "White Ash")
                    .woods(
                            new WoodRequest("plum", 0.0018, 0.0035, 720.0),
                            new WoodRequest("white ash", null, 0.003, 650.0),
                            new WoodRequest("black cherry", 0.0013, null, null));
            assertEquals(
                    List.of(new Finding(
                            FindingCode.OWN_WOOD,
                            Finding.Severity.NOTE,
                            "The document states numbers of its own for white ash: tangential coefficient, density."
                                    + " They are used in place of those of the table of woods.",
                            "/woods/1")),
                    found(FindingCode.OWN_WOOD, address.apply(document(design))));
        }

        @Test
        void fillingAGapOfTheTableOverrulesNothing() {
            Designs design = cube("European ash").woods(new WoodRequest("European ash", null, null, 690.0));
            Answer answer = SheetCalculator.yields(document(design));
            assertEquals(List.of(), found(FindingCode.OWN_WOOD, answer));
            assertEquals(List.of(), found(FindingCode.DENSITY_UNKNOWN, answer));
            assertEquals(690, answer.yield().species().get(0).density(), 1e-9);
        }

        @Test
        void anAnswerRepeatsTheWoods() {
            Designs design = cube("plum").woods(new WoodRequest("plum", null, 0.0035, 720.0));
            Document repeated = SheetCalculator.movement(document(design)).document();
            assertEquals(design.request().woods(), repeated.woods());
            assertEquals(
                    SheetCalculator.movement(document(design)).movement(),
                    SheetCalculator.movement(repeated).movement());
        }
    }

    @Nested
    class Unclear {
        static Stream<Named<Function<Document, Answer>>> wherever() {
            return WoodFindingsTest.wherever();
        }

        @ParameterizedTest
        @MethodSource("wherever")
        void isToldOnceWithWhatElseTheNameMayMean(Function<Document, Answer> address) {
            List<Finding> found = found(
                    FindingCode.WOOD_NAME_UNCLEAR,
                    address.apply(document(cube("sugar maple", "hickory", "black walnut", "hickory"))));
            assertEquals(
                    List.of(new Finding(
                            FindingCode.WOOD_NAME_UNCLEAR,
                            Finding.Severity.NOTE,
                            "The name hickory may mean several woods. The numbers here are those of true hickory,"
                                    + " whose width moves most. It may also mean pecan hickory. Write the name of the"
                                    + " wood that you have.",
                            "/laminations/0/bands/1/species")),
                    found);
        }

        @ParameterizedTest
        @ValueSource(strings = {"true hickory", "Pecan Hickory", "red oak", "sugar maple", "bog oak"})
        void absentForANameThatMeansOneWoodOrNone(String name) {
            assertEquals(
                    List.of(), found(FindingCode.WOOD_NAME_UNCLEAR, SheetCalculator.movement(document(cube(name)))));
        }

        @Test
        void theWoodOfAnOddPanelIsToldToo() {
            OddPanelRequest odd = new OddPanelRequest(2, null, List.of(new OtherWoodRequest("sugar maple", "hickory")));
            Document document =
                    document(cube("sugar maple")).with(Section.BALANCE, new BalanceRequest(List.of(odd), null));
            assertEquals(
                    List.of("/balance/panels/0/woods/0/by"),
                    found(FindingCode.WOOD_NAME_UNCLEAR, SheetCalculator.balance(document)).stream()
                            .map(Finding::field)
                            .toList());
        }
    }
}
