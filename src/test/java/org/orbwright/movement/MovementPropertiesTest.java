package org.orbwright.movement;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import org.orbwright.design.Panel;
import org.orbwright.fixture.DesignArbitraries;
import org.orbwright.fixture.Designs;
import org.orbwright.movement.LaminationMovement.BandJoint;
import org.orbwright.movement.LaminationMovement.BandMovement;
import org.orbwright.movement.LaminationMovement.SegmentMovement;
import org.orbwright.movement.Movement.OpensAt;
import org.orbwright.movement.Movement.PanelMovement;
import org.orbwright.quantity.LengthUnit;
import org.orbwright.solid.FaceKind;

/** What holds for the movement of every design. */
class MovementPropertiesTest {
    private static final int TRIES = 100;

    @Provide
    Arbitrary<Designs> designs() {
        return DesignArbitraries.designs();
    }

    private static Movement move(Designs design, double from, double to) {
        return Movements.of(design)
                .moisture(from, Math.min(from, to), Math.max(from, to))
                .grain(design.laminations().get(0).face(), null, 1, null, 20.0)
                .move();
    }

    @Property(tries = TRIES, edgeCases = EdgeCasesMode.NONE)
    void widthsAndThicknessesMoveBackExactly(
            @ForAll("designs") Designs design,
            @ForAll @DoubleRange(min = 6, max = 10) double dry,
            @ForAll @DoubleRange(min = 10, max = 14) double damp) {
        Movement swelling = move(design, dry, damp);
        Movement shrinking = move(design, damp, dry);
        for (int i = 0; i < swelling.laminations().size(); i++) {
            LaminationMovement up = swelling.laminations().get(i);
            LaminationMovement down = shrinking.laminations().get(i);
            assertEquals(up.widthChange().toDampest(), -down.widthChange().toDriest());
            for (int j = 0; j < up.bands().size(); j++) {
                BandMovement swollen = up.bands().get(j);
                BandMovement shrunk = down.bands().get(j);
                assertEquals(
                        swollen.widthChange().toDampest(), -shrunk.widthChange().toDriest());
                assertEquals(
                        swollen.thicknessChange().toDampest(),
                        -shrunk.thicknessChange().toDriest());
            }
            angles(up, down, damp - dry);
        }
    }

    /** Angles move back to first order: what is left is of the second, in strains of at most half a percent a point. */
    private static void angles(LaminationMovement up, LaminationMovement down, double points) {
        double strain = 0.005 * points;
        for (int i = 0; i < up.segments().size(); i++) {
            assertEquals(
                    up.segments().get(i).tipAngleChange().toDampest(),
                    -down.segments().get(i).tipAngleChange().toDriest(),
                    2 * strain * strain);
        }
    }

    @Property(tries = TRIES, edgeCases = EdgeCasesMode.NONE)
    void nothingMovesWhereMoistureStays(
            @ForAll("designs") Designs design, @ForAll @DoubleRange(min = 0, max = 60) double moisture) {
        Movement still = move(design, moisture, moisture);
        for (LaminationMovement lamination : still.laminations()) {
            assertEquals(0, lamination.widthChange().betweenSeasons());
            lamination
                    .bands()
                    .forEach(band -> assertEquals(0, band.thicknessChange().toDriest()));
            lamination.joints().forEach(joint -> assertEquals(0, Math.abs(joint.panelStep())));
            lamination
                    .segments()
                    .forEach(segment -> assertEquals(0, segment.tipAngleChange().toDampest()));
        }
        for (PanelMovement panel : still.panels()) {
            assertEquals(0, panel.driest().gap());
            assertEquals(OpensAt.NOWHERE, panel.dampest().opensAt());
        }
    }

    /** Equation 13-3 of the Wood Handbook is a ratio of two dimensions, so the way back gives the first one again. */
    @Property(tries = TRIES, edgeCases = EdgeCasesMode.NONE)
    void beyondTheTableWidthsMoveBackToWhatTheyWere(
            @ForAll("designs") Designs design,
            @ForAll @DoubleRange(min = 0, max = 9) double dry,
            @ForAll @DoubleRange(min = 15, max = 40) double damp) {
        LaminationMovement up = move(design, dry, damp).laminations().get(0);
        LaminationMovement down = move(design, damp, dry).laminations().get(0);
        for (int i = 0; i < up.bands().size(); i++) {
            double width = up.bands().get(i).width();
            double swollen = 1 + up.bands().get(i).widthChange().toDampest() / width;
            double shrunk = 1 + down.bands().get(i).widthChange().toDriest() / width;
            assertEquals(1, swollen * shrunk, 1e-12);
        }
    }

    @Property(tries = TRIES, edgeCases = EdgeCasesMode.NONE)
    void everyBandGrowsWithTheMoistureOfTheSeason(
            @ForAll("designs") Designs design,
            @ForAll @DoubleRange(min = 0, max = 10) double stock,
            @ForAll @DoubleRange(min = 14.1, max = 25) double damp) {
        Movement less = move(design, stock, damp);
        Movement more = move(design, stock, damp + 1);
        for (int i = 0; i < less.laminations().size(); i++) {
            List<BandMovement> bands = less.laminations().get(i).bands();
            for (int j = 0; j < bands.size(); j++) {
                BandMovement grown = more.laminations().get(i).bands().get(j);
                assertTrue(grown.widthChange().toDampest()
                        > bands.get(j).widthChange().toDampest());
                assertTrue(grown.thicknessChange().toDampest()
                        > bands.get(j).thicknessChange().toDampest());
            }
        }
    }

    @Property(tries = TRIES, edgeCases = EdgeCasesMode.NONE)
    void lengthsScaleAndAnglesStay(
            @ForAll("designs") Designs design, @ForAll @DoubleRange(min = 0.25, max = 8) double factor) {
        assertScaled(move(design, 7, 12), move(design.times(factor), 7, 12), factor, design);
    }

    @Property(tries = TRIES, edgeCases = EdgeCasesMode.NONE)
    void millimetresAndInchesAgree(@ForAll("designs") Designs design) {
        Designs inches = design.times(1 / 25.4).in(LengthUnit.IN);
        assertScaled(move(design, 12, 7), move(inches, 12, 7), 1, design);
    }

    private static void assertScaled(Movement plain, Movement scaled, double factor, Designs design) {
        double length = 1e-9 * factor * design.size().value();
        for (int i = 0; i < plain.laminations().size(); i++) {
            LaminationMovement one = plain.laminations().get(i);
            LaminationMovement other = scaled.laminations().get(i);
            assertEquals(
                    factor * one.widthChange().betweenSeasons(),
                    other.widthChange().betweenSeasons(),
                    length);
            for (int j = 0; j < one.joints().size(); j++) {
                BandJoint joint = one.joints().get(j);
                assertEquals(factor * joint.panelStep(), other.joints().get(j).panelStep(), length);
            }
            for (int j = 0; j < one.segments().size(); j++) {
                SegmentMovement segment = one.segments().get(j);
                SegmentMovement same = other.segments().get(j);
                assertEquals(segment.tipAngle(), same.tipAngle(), 1e-9);
                assertEquals(
                        segment.tipAngleChange().betweenSeasons(),
                        same.tipAngleChange().betweenSeasons(),
                        1e-9);
            }
        }
        for (int i = 0; i < plain.panels().size(); i++) {
            assertEquals(
                    factor * plain.panels().get(i).driest().gap(),
                    scaled.panels().get(i).driest().gap(),
                    10 * length);
        }
    }

    /** Each segment as often as the sphere has it, and each panel as often as the solid has its face. */
    @Property(tries = TRIES, edgeCases = EdgeCasesMode.NONE)
    void tipAnglesCloseTheCirclesAndTheirChangesAddUpToThePanels(@ForAll("designs") Designs design) {
        Movement movement = move(design, 8, 12);
        Map<String, Double> circles = new HashMap<>();
        Map<String, Double> changes = new HashMap<>();
        for (int i = 0; i < movement.laminations().size(); i++) {
            Panel panel = design.build().panels().get(i);
            for (int j = 0; j < panel.pieces().size(); j++) {
                int count = panel.pieces().get(j).perSphere();
                SegmentMovement segment =
                        movement.laminations().get(i).segments().get(j);
                circles.merge(panel.face(), count * segment.tipAngle(), Double::sum);
                changes.merge(panel.face(), count * segment.tipAngleChange().toDampest(), Double::sum);
            }
        }
        for (PanelMovement panel : movement.panels()) {
            FaceKind kind = kind(design, panel.face());
            int count = panel.mirrored() ? kind.mirroredCount() : kind.count() - kind.mirroredCount();
            circles.merge(panel.face(), -2 * Math.PI * count, Double::sum);
            changes.merge(panel.face(), -panel.angleSumChange().toDampest() * count, Double::sum);
        }
        circles.forEach((face, rest) -> assertEquals(0, rest, 1e-9, face));
        changes.forEach((face, rest) -> assertEquals(0, rest, 1e-9, face));
    }

    private static FaceKind kind(Designs design, String face) {
        return Designs.solid(design.solid()).faceKinds().stream()
                .filter(kind -> kind.face().equals(face))
                .findFirst()
                .orElseThrow();
    }
}
