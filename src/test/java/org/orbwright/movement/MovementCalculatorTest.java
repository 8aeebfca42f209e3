package org.orbwright.movement;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;

import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.orbwright.design.DesignRequest.BandRequest;
import org.orbwright.fixture.Designs;
import org.orbwright.movement.LaminationMovement.BandJoint;
import org.orbwright.movement.LaminationMovement.BandMovement;
import org.orbwright.movement.Movement.AngleChange;
import org.orbwright.movement.Movement.LengthChange;
import org.orbwright.movement.Movement.OpensAt;
import org.orbwright.movement.Movement.PanelMovement;
import org.orbwright.movement.Movement.Season;
import org.orbwright.segment.Yield;
import org.orbwright.segment.YieldCalculator;

class MovementCalculatorTest {
    /** A cube with segments 100 mm high, one flat-sawn board of sugar maple each, and a wall of 23 mm. */
    private static final Designs MAPLE = Designs.of("cube").bands(List.of(Designs.band("sugar maple", 100.0)));

    private static BandMovement band(Movement movement, int number) {
        return movement.laminations().get(0).bands().get(number - 1);
    }

    @Test
    @DisplayName("hand calculation: flat-sawn sugar maple, 100 mm wide, from 8 % to 12 %: 100 x 0.00353 x 4 = 1.412 mm")
    void flatSawnBoard() {
        Movement movement = Movements.of(MAPLE).moisture(8, 8, 12).move();
        BandMovement board = band(movement, 1);
        assertEquals(1.412, board.widthChange().toDampest(), 1e-12);
        assertEquals(0, board.widthChange().toDriest());
        assertEquals(1.412, board.widthChange().betweenSeasons(), 1e-12);
        // Through its thickness it moves radially: 25 x 0.00165 x 4 = 0.165 mm.
        assertEquals(0.165, board.thicknessChange().toDampest(), 1e-12);
        assertEquals(1.412, movement.laminations().get(0).widthChange().toDampest(), 1e-12);
        assertEquals(Season.DAMPEST, movement.moisture().worse());
    }

    @Test
    @DisplayName(
            "hand calculation: 8 % stock in a home of 6 % to 12 %: -0.706 and 1.412 mm, 2.118 mm from one to the other")
    void fromTheDriestSeasonToTheDampest() {
        Movement movement = Movements.of(MAPLE).moisture(8, 6, 12).move();
        LengthChange width = band(movement, 1).widthChange();
        assertEquals(-0.706, width.toDriest(), 1e-12);
        assertEquals(2.118, width.betweenSeasons(), 1e-12);
        AngleChange tip = movement.laminations().get(0).segments().get(0).tipAngleChange();
        double between = 2 * Math.atan(100 / 101.412) - 2 * Math.atan(100 / 99.294);
        assertEquals(between, tip.betweenSeasons(), 1e-12);
    }

    @Test
    @DisplayName("hand calculation beyond 6 % to 14 %: 100 mm of sugar maple from 16 % to 4 %, equation 13-3 with 1 / C"
            + " = 283.286: 100 x -12 / (283.286 - 10 + 16) = -4.1481 mm (Wood Handbook, FPL-GTR-190)")
    void beyondTheTable() {
        Movement movement = Movements.of(MAPLE).moisture(16, 4, 12).move();
        LengthChange width = band(movement, 1).widthChange();
        assertEquals(-4.1481, width.toDriest(), 5e-5);
        // From 16 % the dampest season too is reached by equation 13-3: 100 x -4 / 289.286 = -1.3827 mm.
        assertEquals(-1.3827, width.toDampest(), 5e-5);
        AngleChange tip = movement.laminations().get(0).segments().get(0).tipAngleChange();
        assertEquals(2 * Math.atan(100 / (100 - 4.1481)) - Math.PI / 2, tip.toDriest(), 1e-6);
    }

    @Test
    void greenStockMovesFromFibreSaturationAndTheWorseSeasonIsTheOneThatMovesIt() {
        Movement green = Movements.of(MAPLE).moisture(70, 8, 12).move();
        Movement saturated = Movements.of(MAPLE).moisture(30, 8, 12).move();
        assertEquals(band(saturated, 1).widthChange(), band(green, 1).widthChange());
        assertEquals(Season.DRIEST, green.moisture().worse());
        // To 90 % is further in water, to 8 % in size.
        assertEquals(
                Season.DRIEST,
                Movements.of(MAPLE).moisture(20, 8, 90).move().moisture().worse());
    }

    @Test
    @DisplayName("hand calculation: quarter-sawn it moves 100 x 0.00165 x 4 = 0.66 mm, rift-sawn 1.036 mm")
    void turnedStrips() {
        Movement quarter = Movements.of(MAPLE)
                .moisture(8, 8, 12)
                .grain(null, null, 1, GrainOrientation.QUARTER_SAWN, null)
                .move();
        assertEquals(0.66, band(quarter, 1).widthChange().toDampest(), 1e-12);
        assertEquals(0.353, band(quarter, 1).thicknessChange().toDampest(), 1e-12);
        Movement rift = Movements.of(MAPLE)
                .moisture(8, 8, 12)
                .grain(null, null, 1, GrainOrientation.RIFT_SAWN, null)
                .move();
        assertEquals(1.036, band(rift, 1).widthChange().toDampest(), 1e-12);
        assertEquals(0.259, band(rift, 1).thicknessChange().toDampest(), 1e-12);
        assertEquals(45, Math.toDegrees(band(rift, 1).ringAngle()), 1e-12);
    }

    @Test
    @DisplayName("hand calculation: 30 degrees off the rings take 3/4 tangential and 1/4 radial")
    void ringAngle() {
        Movement movement =
                Movements.of(MAPLE).grain("square", null, 1, null, 30.0).move();
        assertEquals(0.75 * 0.00353 + 0.25 * 0.00165, band(movement, 1).widthCoefficient(), 1e-15);
        assertEquals(0.25 * 0.00353 + 0.75 * 0.00165, band(movement, 1).thicknessCoefficient(), 1e-15);
    }

    @Test
    @DisplayName("hand calculation: a base of 200 mm, 101.412 mm high, has a tip angle of 2 atan(100 / 101.412)")
    void tipAngle() {
        Movement movement = Movements.of(MAPLE).moisture(8, 8, 12).move();
        double change = 2 * Math.atan(100 / 101.412) - Math.PI / 2;
        AngleChange segment = movement.laminations().get(0).segments().get(0).tipAngleChange();
        assertEquals(change, segment.toDampest(), 1e-12);
        assertEquals(0, segment.toDriest());
        PanelMovement panel = movement.panels().get(0);
        assertEquals(4 * change, panel.angleSumChange().toDampest(), 1e-12);
        assertEquals(-400 * change, panel.dampest().gap(), 1e-9);
        assertEquals(OpensAt.RIM, panel.dampest().opensAt());
        assertEquals(0, panel.driest().gap());
        assertEquals(OpensAt.NOWHERE, panel.driest().opensAt());
    }

    @Test
    void shrunkSegmentsGapeAtTheTips() {
        PanelMovement panel =
                Movements.of(MAPLE).moisture(12, 8, 12).move().panels().get(0);
        assertEquals(OpensAt.TIPS, panel.driest().opensAt());
        assertEquals(
                4 * (2 * Math.atan(100 / 98.588) - Math.PI / 2),
                panel.angleSumChange().toDriest(),
                1e-12);
    }

    @Test
    @DisplayName("hand calculation: bands from tip to base move along the base: 2 atan(101.412 / 100)")
    void bandsFromTipToBase() {
        Designs upright = Designs.of("cube").bands(90, List.of(Designs.band("sugar maple", 200.0)));
        Movement movement = Movements.of(upright).moisture(8, 8, 12).move();
        double change = 2 * Math.atan(101.412 / 100) - Math.PI / 2;
        assertEquals(
                change,
                movement.laminations().get(0).segments().get(0).tipAngleChange().toDampest(),
                1e-12);
        assertEquals(2.824, movement.laminations().get(0).widthChange().toDampest(), 1e-12);
        assertEquals(OpensAt.TIPS, movement.panels().get(0).dampest().opensAt());
    }

    @Test
    @DisplayName("hand calculation: at 45 degrees one leg runs along the bands and the other across them")
    void bandsAlongALeg() {
        Designs tilted = Designs.of("cube").bands(45, List.of(Designs.band("sugar maple", 150.0)));
        Movement movement = Movements.of(tilted).moisture(8, 8, 12).move();
        // A leg that is only stretched does not turn, and one along the grain does not move.
        assertEquals(
                0,
                movement.laminations().get(0).segments().get(0).tipAngleChange().toDampest(),
                1e-12);
    }

    @Test
    @DisplayName(
            "hand calculation: walnut beside maple, both flat-sawn, 4 points drier: (0.0019 - 0.00165) x 4 = 0.001")
    void stepBetweenBands() {
        Designs two = Designs.of("cube").diameter(196.0).bands(Designs.widths(40.0, null));
        Movement movement = Movements.of(two).moisture(10, 6, 10).move();
        BandJoint joint = movement.laminations().get(0).joints().get(0);
        assertEquals(-0.025, joint.panelStep(), 1e-12);
        assertEquals(-0.023, joint.wallStep(), 1e-12);
        assertEquals(1, joint.band());
        assertEquals(Season.DRIEST, movement.moisture().worse());
        assertEquals(1, movement.laminations().get(0).joints().size());
    }

    @Test
    void aSphereBelowTheHollowHasNoStepOnItsWall() {
        Designs gone = Designs.of("cube").diameter(140.0).bands(Designs.widths(40.0, null));
        Movement movement = Movements.of(gone).move();
        assertNotNull(movement.laminations().get(0).joints().get(0).panelStep());
        assertNull(movement.laminations().get(0).joints().get(0).wallStep());
        assertNull(movement.species().get(0).spheresAtStock());
    }

    @Test
    void aWoodThatTheTableDoesNotKnowLeavesOutWhatDependsOnIt() {
        List<BandRequest> bands = List.of(
                Designs.band("sugar maple", 30.0),
                Designs.band("bog oak", 30.0),
                Designs.band("black cherry", 20.0),
                Designs.band("black walnut", null));
        Movement movement = Movements.of(Designs.of("cube").bands(bands)).move();
        LaminationMovement lamination = movement.laminations().get(0);
        assertAll(
                () -> assertNull(lamination.widthChange()),
                () -> assertNotNull(lamination.bands().get(0).widthChange()),
                () -> assertNull(lamination.bands().get(1).widthChange()),
                () -> assertNull(lamination.bands().get(1).thicknessCoefficient()),
                () -> assertNull(lamination.joints().get(0).panelStep()),
                () -> assertNull(lamination.joints().get(1).panelStep()),
                () -> assertNotNull(lamination.joints().get(2).panelStep()),
                () -> assertNull(lamination.segments().get(0).tipAngleChange()),
                () -> assertNull(movement.panels().get(0).angleSumChange()),
                () -> assertNull(movement.panels().get(0).driest()),
                () -> assertNull(movement.species().get(1).blanksAtStock()),
                () -> assertNotNull(movement.species().get(0).blanksAtStock()));
    }

    @Test
    @DisplayName("a glued-up cube of maple, 150 mm hollow: 1000 x 0.63 x (0.2^3 - 0.15^3) m3 x 1.08 (Wood Handbook)")
    void massAtTheStocksAndTheHomesMoisture() {
        Movement movement = Movements.of(MAPLE.copies(3)).moisture(8, 6, 12).move();
        SpeciesMass maple = movement.species().get(0);
        double dry = 3 * 1000 * 0.63 * (Math.pow(0.2, 3) - Math.pow(0.15, 3));
        assertEquals(dry * 1.08, maple.solidsAtStock(), 1e-9);
        assertEquals(dry * 1.09, maple.solidsAtHome(), 1e-9);
    }

    @Test
    void massAtTwelvePercentIsThatOfTheYield() {
        Designs design = Designs.example("dodecahedron-with-land");
        Yield yield = YieldCalculator.calculate(design.build());
        List<SpeciesMass> masses =
                Movements.of(design).moisture(12, 12, 12).move().species();
        for (int i = 0; i < masses.size(); i++) {
            assertEquals(yield.species().get(i).species(), masses.get(i).species());
            assertEquals(yield.species().get(i).stripMass(), masses.get(i).blanksAtStock(), 1e-12);
            assertEquals(yield.species().get(i).finishedMass(), masses.get(i).spheresAtHome(), 1e-12);
        }
    }

    @Test
    void halvesOfAPanelMoveTogether() {
        Movement movement = Movements.of(Designs.example("truncated-octahedron-alternating"))
                .moisture(8, 8, 12)
                .move();
        double odd = change(movement, 1);
        double even = change(movement, 2);
        assertEquals(
                3 * odd + 3 * even, movement.panels().get(1).angleSumChange().toDampest(), 1e-12);
    }

    private static double change(Movement movement, int lamination) {
        return movement.laminations()
                .get(lamination)
                .segments()
                .get(0)
                .tipAngleChange()
                .toDampest();
    }

    @Test
    void moistureFromTheAirIsTheEquilibrium() {
        Movement movement = Movements.of(MAPLE)
                .home(Movements.air(21.1, 30.0), Movements.air(21.1, 65.0))
                .move();
        assertEquals(6.2, movement.moisture().driest(), 0.1);
        assertEquals(12.0, movement.moisture().dampest(), 0.1);
        LengthChange change = band(movement, 1).widthChange();
        assertEquals(100 * 0.00353 * (movement.moisture().driest() - 8), change.toDriest(), 1e-12);
    }

    @Test
    void bothSetsMoveAlike() {
        // The same bands lie between tip and base, whichever of them is at the tip.
        Movement upright = Movements.of(Designs.of("dodecahedron")
                        .bands(List.of(
                                Designs.band("black walnut", 20.0),
                                Designs.band("sugar maple", 15.0),
                                Designs.band("black cherry", null))))
                .moisture(12, 6, 10)
                .move();
        Movement inverted = Movements.of(Designs.of("dodecahedron")
                        .bands(List.of(
                                Designs.band("black cherry", null),
                                Designs.band("sugar maple", 15.0),
                                Designs.band("black walnut", 20.0))))
                .moisture(12, 6, 10)
                .move();
        PanelMovement one = upright.panels().get(0);
        PanelMovement other = inverted.panels().get(0);
        assertEquals(one.angleSumChange().toDriest(), other.angleSumChange().toDriest(), 1e-12);
        assertEquals(one.driest().gap(), other.driest().gap(), 1e-10);
        assertEquals(one.driest().opensAt(), other.driest().opensAt());
        assertEquals(one.dampest().gap(), other.dampest().gap(), 1e-10);
    }
}
