package org.orbwright.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.orbwright.sheet.Finding.Severity.NOTE;
import static org.orbwright.sheet.Finding.Severity.WARN;
import static org.orbwright.source.Kind.CONTRACT;
import static org.orbwright.source.Kind.PUBLISHED;

import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.orbwright.fixture.Designs;
import org.orbwright.movement.GrainOrientation;
import org.orbwright.movement.Movements;
import org.orbwright.quantity.LengthUnit;
import org.orbwright.source.Source;
import org.orbwright.wood.WoodRequest;

@Source(CONTRACT)
class MovementFindingsTest {
    private static final Designs MAPLE = Designs.of("cube").bands(List.of(Designs.band("sugar maple", null)));

    private static List<Finding> found(FindingCode code, Movements movements) {
        return SheetCalculator.movement(movements.document()).findings().stream()
                .filter(finding -> finding.code() == code)
                .toList();
    }

    private static void assertFound(
            FindingCode code, Finding.Severity severity, String field, Movements movements, String... says) {
        List<Finding> found = found(code, movements);
        assertFalse(found.isEmpty(), code + " is found");
        assertEquals(severity, found.get(0).severity());
        assertEquals(field, found.get(0).field());
        for (String words : says) {
            assertTrue(
                    found.get(0).message().contains(words), () -> found.get(0).message() + " says " + words);
        }
        assertTrue(found.get(0).message().endsWith("."));
    }

    private static void assertAbsent(FindingCode code, Movements movements) {
        assertEquals(List.of(), found(code, movements));
    }

    @Nested
    class StockMoistureFar {
        @Test
        void dampStockIsToldToLoseWeight() {
            assertFound(
                    FindingCode.STOCK_MOISTURE_FAR,
                    WARN,
                    "/movement/stock",
                    Movements.of(MAPLE).moisture(12, 7, 10),
                    "3.5 percentage points above",
                    "7 % to 10 %",
                    "air as dry",
                    "stops losing weight");
        }

        @Test
        void dryStockIsToldToGainWeight() {
            assertFound(
                    FindingCode.STOCK_MOISTURE_FAR,
                    WARN,
                    "/movement/stock",
                    Movements.of(MAPLE).moisture(6, 8, 12),
                    "4 percentage points below",
                    "air as damp",
                    "stops gaining weight");
        }

        @Test
        void twoPointsAreNearEnough() {
            assertAbsent(FindingCode.STOCK_MOISTURE_FAR, Movements.of(MAPLE).moisture(10, 6, 10));
            assertAbsent(FindingCode.STOCK_MOISTURE_FAR, Movements.of(MAPLE).moisture(6, 6, 10));
            assertEquals(
                    1,
                    found(FindingCode.STOCK_MOISTURE_FAR, Movements.of(MAPLE).moisture(10.01, 6, 10))
                            .size());
        }
    }

    @Nested
    class MoistureOutsideTable {
        @Test
        void eachIsNotedAtItsField() {
            Movements outside = Movements.of(MAPLE).moisture(14.5, 5.5, 15);
            assertFound(
                    FindingCode.MOISTURE_OUTSIDE_TABLE,
                    NOTE,
                    "/movement/stock",
                    outside,
                    "stock is 14.5 %",
                    "hold for 6 % to 14 %",
                    "Movement from it follows equation 13-3",
                    "approximate");
            assertEquals(
                    List.of("/movement/stock", "/movement/home/driest", "/movement/home/dampest"),
                    found(FindingCode.MOISTURE_OUTSIDE_TABLE, outside).stream()
                            .map(Finding::field)
                            .toList());
        }

        @Test
        void woodAboveFibreSaturationIsSaidNotToMove() {
            Movements green = Movements.of(MAPLE).moisture(60, 8, 12);
            assertFound(
                    FindingCode.MOISTURE_OUTSIDE_TABLE,
                    NOTE,
                    "/movement/stock",
                    green,
                    "stock is 60 %",
                    "Above 30 % wood does not move, so movement is counted from there.");
            assertEquals(1, found(FindingCode.MOISTURE_OUTSIDE_TABLE, green).size());
        }

        @Test
        void absentFromSixToFourteen() {
            assertAbsent(FindingCode.MOISTURE_OUTSIDE_TABLE, Movements.of(MAPLE).moisture(6, 6, 14));
        }
    }

    @Nested
    @Source(
            value = PUBLISHED,
            text = "Wood Handbook, FPL-GTR-190, 2010, Table 13-5: black walnut 0.00190 and 0.00274, black cherry "
                    + "0.00126 and 0.00248")
    class MovementMismatch {
        /** A wall of 23 mm, so that walnut and flat-sawn cherry differ by 0.00064 x 23 = 0.01472 mm a point. */
        private final Designs design = Designs.of("cube")
                .bands(List.of(Designs.band("black walnut", 40.0), Designs.band("black cherry", null)));

        @Test
        @DisplayName("hand calculation: 4 points drier leave cherry 0.0589 mm proud of walnut, 3 points just 0.0442 mm")
        void onBothSidesOfTheLimit() {
            assertFound(
                    FindingCode.MOVEMENT_MISMATCH,
                    WARN,
                    "/laminations/0/bands/1/species",
                    Movements.of(design).moisture(10, 6, 10),
                    "In the driest season band 2 (black cherry) stands up to 0.06 mm above band 1 (black walnut)",
                    "square panels");
            assertAbsent(FindingCode.MOVEMENT_MISMATCH, Movements.of(design).moisture(9, 6, 10));
        }

        @Test
        void turnedRoundInTheDampestSeason() {
            assertFound(
                    FindingCode.MOVEMENT_MISMATCH,
                    WARN,
                    "/laminations/0/bands/1/species",
                    Movements.of(design).moisture(6, 6, 10),
                    "In the dampest season band 1 (black walnut) stands up to 0.06 mm above band 2 (black cherry)");
        }

        @Test
        void absentWhereTheTwoAreTurnedToMoveAlike() {
            // Cherry at 90 degrees moves 0.00248 in thickness, walnut at 60 degrees 0.00253.
            assertAbsent(
                    FindingCode.MOVEMENT_MISMATCH,
                    Movements.of(design)
                            .moisture(10, 6, 10)
                            .grain(null, null, 1, null, 60.0)
                            .grain(null, null, 2, GrainOrientation.QUARTER_SAWN, null));
        }

        @Test
        @Source(CONTRACT)
        void saysInchesInInches() {
            assertFound(
                    FindingCode.MOVEMENT_MISMATCH,
                    WARN,
                    "/laminations/0/bands/1/species",
                    Movements.of(design.times(1 / 25.4).in(LengthUnit.IN)).moisture(10, 6, 10),
                    "0.002 in");
        }
    }

    /**
     * Strains at which sound wood yields and fails: 0.004, and 0.009 or more (The Structural Conservation of Panel
     * Paintings, Getty Conservation Institute 1998, on the transport of panels). Sugar maple moves 0.00353 a point
     * along its rings (Wood Handbook, FPL-GTR-190, Table 13-5).
     */
    @Nested
    class PanelStrained {
        private Finding found(Movements movements) {
            return MovementFindingsTest.found(FindingCode.PANEL_STRAINED, movements)
                    .get(0);
        }

        /** A square panel's base distance of 100 mm becomes 98.588 mm, and half a base stays at 100 mm. */
        @Test
        @DisplayName(
                "hand calculation: 4 points drier are 1.412 %, and 8 atan(1 / 0.98588) is 3.26 degrees more than a circle")
        void threeDegreesAreAsLoudAsAStep() {
            assertFound(
                    FindingCode.PANEL_STRAINED,
                    WARN,
                    "/movement/stock",
                    Movements.of(MAPLE).moisture(10, 6, 10),
                    "In the driest season the joints of a square panel would open by 3.3 degrees in all",
                    "which is 5.69 mm at the tips",
                    "across its grain by up to about 1.41 %",
                    "yields at about 0.4 %, and fails at 0.9 % or more",
                    "Do not count on the panel to survive");
        }

        @Test
        @DisplayName("2 points are 0.71 %: beyond 0.4 %, below 0.9 %")
        void betweenTheStrainsNothingIsPromised() {
            Finding strained = found(Movements.of(MAPLE).moisture(8, 6, 8));
            assertEquals(WARN, strained.severity());
            assertTrue(strained.message().contains("A sound panel may survive it with a lasting set."));
        }

        @Test
        @DisplayName("1 point is 0.353 %: wood bears it")
        void belowTheYieldPointItIsANote() {
            Finding strained = found(Movements.of(MAPLE).moisture(8, 7, 8));
            assertEquals(NOTE, strained.severity());
            assertTrue(strained.message().endsWith("A sound panel is likely to survive this."));
        }

        @Test
        void theWorseSeasonIsTold() {
            assertTrue(found(Movements.of(MAPLE).moisture(7, 6, 10)).message().startsWith("In the dampest season"));
        }

        @Test
        void absentWhereNothingMovesOrNothingIsKnown() {
            assertAbsent(FindingCode.PANEL_STRAINED, Movements.of(MAPLE).moisture(8, 8, 8));
            assertAbsent(FindingCode.PANEL_STRAINED, Movements.of(MAPLE.bands(List.of(Designs.band("bog oak", null)))));
        }

        @Test
        void saidOnceForPanelsAndTheirMirrorImages() {
            Designs chiral = Designs.of("pentagonal-icositetrahedron")
                    .bands(30, List.of(Designs.band("sugar maple", 60.0), Designs.band("black cherry", 60.0)));
            assertEquals(
                    1,
                    MovementFindingsTest.found(
                                    FindingCode.PANEL_STRAINED,
                                    Movements.of(chiral).moisture(10, 6, 10))
                            .size());
        }
    }

    @Nested
    class UnknownWoods {
        private Movements of(String species) {
            return Movements.of(
                    Designs.of("cube").bands(List.of(Designs.band("sugar maple", 40.0), Designs.band(species, null))));
        }

        @Test
        void foundForAWoodThatIsNotInTheTable() {
            Movements bogOak = of("bog oak");
            assertFound(
                    FindingCode.MOVEMENT_UNKNOWN,
                    NOTE,
                    "/laminations/0/bands/1/species",
                    bogOak,
                    "The radial and tangential coefficients of bog oak are not known",
                    "State them in woods.",
                    "The table knows: black oak");
            assertFound(
                    FindingCode.DENSITY_UNKNOWN,
                    NOTE,
                    "/laminations/0/bands/1/species",
                    bogOak,
                    "The density of bog oak is not known");
        }

        @Test
        void movementIsKnownOfAWoodWithoutAGravity() {
            assertAbsent(FindingCode.MOVEMENT_UNKNOWN, of("teak"));
            assertFound(
                    FindingCode.DENSITY_UNKNOWN,
                    NOTE,
                    "/laminations/0/bands/1/species",
                    of("teak"),
                    "The density of teak is not known");
        }

        @Test
        void theCoefficientThatAWoodOfTheDocumentLacksIsNamed() {
            Movements plum = Movements.of(Designs.of("cube")
                    .bands(List.of(Designs.band("plum", null)))
                    .woods(new WoodRequest("plum", null, 0.0035, null)));
            assertFound(
                    FindingCode.MOVEMENT_UNKNOWN,
                    NOTE,
                    "/laminations/0/bands/0/species",
                    plum,
                    "The radial coefficient of plum is not known, so movements that depend on it are left out. State it"
                            + " in woods.");
        }

        @Test
        void absentForTradeNames() {
            assertAbsent(FindingCode.MOVEMENT_UNKNOWN, of("Hard Maple"));
            assertAbsent(FindingCode.DENSITY_UNKNOWN, of("Hard Maple"));
        }
    }
}
