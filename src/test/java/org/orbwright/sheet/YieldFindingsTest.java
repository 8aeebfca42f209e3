package org.orbwright.sheet;

import static org.orbwright.sheet.Finding.Severity.NOTE;
import static org.orbwright.sheet.Finding.Severity.WARN;
import static org.orbwright.sheet.Findings.assertAbsent;
import static org.orbwright.sheet.Findings.assertFound;

import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.orbwright.fixture.Designs;

class YieldFindingsTest {
    @Nested
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
        void absentWhereBandsReadTheSameFromBothEdges() {
            assertAbsent(
                    FindingCode.SET_LEFT_OVER,
                    twoSets.bands(List.of(
                            Designs.band("sugar maple", 20.0),
                            Designs.band("black walnut", null),
                            Designs.band("sugar maple", 20.0))));
        }

        @Test
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
                    "no density for bog oak");
        }

        @Test
        void foundForAWoodWhoseGravityIsNotInTheTable() {
            assertFound(
                    FindingCode.DENSITY_UNKNOWN,
                    NOTE,
                    "/laminations/0/bands/0/species",
                    rim("apple"),
                    "no density for apple");
        }

        @Test
        void absentForAWoodOfTheTableHoweverItIsWritten() {
            assertAbsent(FindingCode.DENSITY_UNKNOWN, rim("black walnut"));
            assertAbsent(FindingCode.DENSITY_UNKNOWN, rim(" Black Walnut "));
        }
    }
}
