package org.orbwright.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.orbwright.sheet.Finding.Severity.NOTE;
import static org.orbwright.sheet.Finding.Severity.WARN;
import static org.orbwright.sheet.Findings.assertAbsent;
import static org.orbwright.sheet.Findings.assertFound;
import static org.orbwright.source.Kind.CONTRACT;
import static org.orbwright.source.Kind.HAND;

import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.orbwright.design.Sets;
import org.orbwright.document.Document;
import org.orbwright.fixture.Designs;
import org.orbwright.source.Source;

@Source(CONTRACT)
class YieldFindingsTest {
    @Nested
    @Source(
            value = HAND,
            text = "counting: blanks of 19 segments, 10 of one set and 9 of the other; a dodecahedron takes 60")
    class SetLeftOver {
        private final Designs twoSets = Designs.of("dodecahedron").bands(Designs.widths(20.0, 8.0, null));

        @Test
        @DisplayName("one sphere of 60 at 19 a blank takes 6 blanks, 60 upright and 54 inverted")
        void found() {
            assertFound(
                    FindingCode.SET_LEFT_OVER,
                    WARN,
                    "/copies",
                    twoSets,
                    "pentagon lamination",
                    "54 inverted ones are not used up",
                    "even number of copies");
        }

        @Test
        void threeSpheresLeaveOneTooTwoAndFourDoNot() {
            assertFound(FindingCode.SET_LEFT_OVER, WARN, "/copies", twoSets.copies(3), "48 inverted");
            assertAbsent(FindingCode.SET_LEFT_OVER, twoSets.copies(2));
            assertAbsent(FindingCode.SET_LEFT_OVER, twoSets.copies(4));
        }

        @Test
        void namesEverySetThatIsLeftOver() {
            assertFound(
                    FindingCode.SET_LEFT_OVER,
                    WARN,
                    "/sets",
                    twoSets.sets(Sets.UPRIGHT).copies(2),
                    "108 inverted ones are not used up",
                    "Sets MIXED uses both in each sphere.");
            assertFound(
                    FindingCode.SET_LEFT_OVER,
                    WARN,
                    "/sets",
                    twoSets.sets(Sets.INVERTED),
                    "54 upright ones are not used up");
        }

        @Test
        @DisplayName("mixed, one sphere takes 4 blanks of 10 and 9, and leaves 10 and 6")
        void mixedSpheresUseBothUp() {
            assertAbsent(FindingCode.SET_LEFT_OVER, twoSets.sets(Sets.MIXED));
            assertAbsent(FindingCode.SET_LEFT_OVER, twoSets.sets(Sets.MIXED).copies(3));
        }

        @Test
        @DisplayName("eleven panels of one set and one of the other: 6 blanks of 10 and 9 leave 5 and 49")
        void byPanelItDependsOnTheirNumber() {
            List<Finding> one = leftOver(List.of(1));
            assertEquals(1, one.size());
            assertEquals("/sets", one.get(0).field());
            assertTrue(one.get(0).message().contains("49 inverted"), one::toString);
            assertEquals(List.of(), leftOver(List.of(1, 2, 3, 4, 5, 6)));
            assertEquals(List.of(), leftOver(List.of(1, 2, 3, 4, 5)));
        }

        private List<Finding> leftOver(List<Integer> inverted) {
            Document document = Document.of(twoSets.sets(Sets.BY_PANEL, inverted));
            return SheetCalculator.sheet(document, 2).findings().stream()
                    .filter(finding -> finding.code() == FindingCode.SET_LEFT_OVER)
                    .toList();
        }

        @Test
        @Source(CONTRACT)
        void absentWhereBandsReadTheSameFromBothEdges() {
            assertAbsent(
                    FindingCode.SET_LEFT_OVER,
                    twoSets.bands(List.of(
                            Designs.band("sugar maple", 20.0),
                            Designs.band("black walnut", null),
                            Designs.band("sugar maple", 20.0))));
        }

        @Test
        @Source(CONTRACT)
        void absentForTiltedBands() {
            assertAbsent(FindingCode.SET_LEFT_OVER, twoSets.bands(30, Designs.widths(20.0, 8.0, null)));
        }

        @Test
        @DisplayName("absent where a blank of 100 mm gives one segment of 89.8 mm: all are cut upright")
        void oneSegmentABlank() {
            assertAbsent(FindingCode.SET_LEFT_OVER, twoSets.blank(100));
        }
    }

    @Nested
    class OneSetOnly {
        private final Designs plain = Designs.of("cuboctahedron");
        private final Designs tilted = plain.bands(30, Designs.widths(20.0, 8.0, null));

        @Test
        void foundWhereBandsReadTheSameFromBothEdges() {
            assertFound(
                    FindingCode.ONE_SET_ONLY,
                    NOTE,
                    "/sets",
                    plain.sets(Sets.MIXED),
                    "The bands read the same from both edges, so there is one set, and sets makes no difference.");
            assertFound(FindingCode.ONE_SET_ONLY, NOTE, "/sets", plain.sets(Sets.INVERTED));
        }

        @Test
        void foundWhereBandsAreTilted() {
            assertFound(
                    FindingCode.ONE_SET_ONLY,
                    NOTE,
                    "/sets",
                    tilted.sets(Sets.MIXED),
                    "The bands are tilted, so there is one set");
        }

        @Test
        void saysBothWhereBothOccur() {
            Designs both = plain.laminations(List.of(
                    Designs.lamination("triangle", 0, List.of(Designs.band("sugar maple", null))),
                    Designs.lamination("square", 30, Designs.widths(20.0, 8.0, null))));
            assertFound(
                    FindingCode.ONE_SET_ONLY,
                    NOTE,
                    "/sets",
                    both.sets(Sets.MIXED),
                    "The bands are tilted or read the same from both edges, so");
        }

        @Test
        void absentWhereNothingWasChosenOrThereAreTwoSets() {
            assertAbsent(FindingCode.ONE_SET_ONLY, plain);
            assertAbsent(FindingCode.ONE_SET_ONLY, plain.sets(Sets.UPRIGHT));
            assertAbsent(
                    FindingCode.ONE_SET_ONLY,
                    plain.bands(Designs.widths(20.0, null)).sets(Sets.MIXED));
        }
    }

    /** A cube of 200 mm: a blank of 1000 mm gives 8 segments, so that 3 blanks are just enough for one. */
    @Nested
    class NothingToSpare {
        private final Designs cube = Designs.of("cube");

        @Test
        void foundWhereTheBlanksAreJustEnough() {
            assertFound(
                    FindingCode.NOTHING_TO_SPARE,
                    NOTE,
                    "/spares",
                    cube,
                    "Nothing is to spare: one spoilt segment A of the square panels would be missing.");
        }

        @Test
        void namesTheSetWhereThereAreTwo() {
            Designs two = cube.bands(Designs.widths(20.0, null));
            assertFound(FindingCode.NOTHING_TO_SPARE, NOTE, "/spares", two.copies(2), "one spoilt upright segment A");
            assertEquals(
                    1, Findings.of(FindingCode.NOTHING_TO_SPARE, two.copies(2)).size());
            // Eight segments of each set from one blank are upright ones only by half: six blanks leave inverted ones.
            assertFound(FindingCode.NOTHING_TO_SPARE, NOTE, "/spares", two, "one spoilt upright segment A");
            assertFound(
                    FindingCode.NOTHING_TO_SPARE,
                    NOTE,
                    "/spares",
                    two.sets(Sets.INVERTED),
                    "one spoilt inverted segment A");
        }

        @Test
        void absentWhereAnythingIsLeftOrSparesAreMade() {
            assertAbsent(FindingCode.NOTHING_TO_SPARE, cube.blank(1040));
            assertAbsent(FindingCode.NOTHING_TO_SPARE, cube.spares(1, 0));
            // Seven spares more are a blank that is used up again, by spares.
            assertAbsent(FindingCode.NOTHING_TO_SPARE, cube.spares(8, 0));
        }

        @Test
        void absentWhereNothingCanBeCut() {
            assertAbsent(FindingCode.NOTHING_TO_SPARE, cube.blank(100));
        }
    }

    @Nested
    class DensityUnknown {
        private Designs rim(String species) {
            return Designs.of("cube")
                    .thickness(60)
                    .bands(List.of(Designs.band(species, 60.0), Designs.band("sugar maple", null)));
        }

        @Test
        void foundForAWoodThatIsNotInTheTable() {
            assertFound(
                    FindingCode.DENSITY_UNKNOWN,
                    NOTE,
                    "/laminations/0/bands/0/species",
                    rim("bog oak"),
                    "The density of bog oak is not known");
        }

        @Test
        void foundForAWoodWhoseGravityIsNotInTheTable() {
            assertFound(
                    FindingCode.DENSITY_UNKNOWN,
                    NOTE,
                    "/laminations/0/bands/0/species",
                    rim("teak"),
                    "The density of teak is not known");
        }

        @Test
        void absentForAWoodOfTheTableHoweverItIsWritten() {
            assertAbsent(FindingCode.DENSITY_UNKNOWN, rim("black walnut"));
            assertAbsent(FindingCode.DENSITY_UNKNOWN, rim(" Black Walnut "));
        }
    }
}
