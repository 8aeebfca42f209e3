package org.orbwright.band;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.orbwright.source.Kind.HAND;
import static org.orbwright.source.Kind.INVARIANT;

import java.util.List;
import java.util.function.Function;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.orbwright.design.Design;
import org.orbwright.design.Panel;
import org.orbwright.design.Piece;
import org.orbwright.fixture.Designs;
import org.orbwright.solid.Solid;
import org.orbwright.solid.SolidCatalogue;
import org.orbwright.source.Source;
import org.orbwright.sphere.SphereCalculator;

@Source(INVARIANT)
class SegmentVolumeTest {
    static List<Solid> solids() {
        return SolidCatalogue.all();
    }

    private static double total(Design design, Function<Panel, Function<Piece, SegmentVolume>> volumes) {
        double total = 0;
        for (Panel panel : design.panels()) {
            for (Piece piece : panel.pieces()) {
                total += piece.perSphere() * volumes.apply(panel).apply(piece).whole();
            }
        }
        return total;
    }

    private static double solidWood(Design design) {
        return total(design, panel -> piece -> SegmentVolume.ofSolid(panel, piece, design.thickness()));
    }

    private static double sphereWood(Design design) {
        return total(
                design,
                panel -> piece -> SegmentVolume.ofSphere(panel, piece, design.thickness(), design.sphereRadius()));
    }

    /** Each face's part of the hollow is a pyramid over the panel's inner face with its tip in the solid's centre. */
    private static double hollow(Design design) {
        double hollow = 0;
        for (Panel panel : design.panels()) {
            double inner = panel.faceDistance() - design.thickness();
            double scale = design.edge() * inner / panel.jointDistance();
            hollow += panel.kind().count() * panel.kind().area() * scale * scale * inner / 3;
        }
        return hollow;
    }

    /** Panels thick enough that the sphere leaves a wall. */
    private static Designs thick(Designs design) {
        double smallest = SphereCalculator.calculate(design.build()).smallestThickness();
        return design.thickness(smallest);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("solids")
    void theWoodOfTheSolidIsTheSolidLessItsHollow(Solid solid) {
        Design design = Designs.of(solid.name()).build();
        double volume = solid.volume() * Math.pow(design.edge(), 3);
        assertEquals(volume - hollow(design), solidWood(design), 1e-12 * volume);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("solids")
    void whereAllFacesAreEquallyFarTheHollowIsASmallerSolid(Solid solid) {
        if (solid.faceKinds().size() > 1) {
            return;
        }
        Design design = Designs.of(solid.name()).build();
        double volume = solid.volume() * Math.pow(design.edge(), 3);
        assertEquals(volume * (1 - Math.pow(0.75, 3)), solidWood(design), 1e-12 * volume);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("solids")
    void theWoodOfTheSphereIsTheBallLessTheHollow(Solid solid) {
        Design design = thick(Designs.of(solid.name())).build();
        double ball = 4 * Math.PI / 3 * Math.pow(design.sphereRadius(), 3);
        assertEquals(ball - hollow(design), sphereWood(design), 1e-12 * ball);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("solids")
    void theWoodOfTheSphereWithALandIsTheBallLessTheHollow(Solid solid) {
        Design design = thick(Designs.of(solid.name()).land(1.5)).build();
        double ball = 4 * Math.PI / 3 * Math.pow(design.sphereRadius(), 3);
        assertEquals(ball - hollow(design), sphereWood(design), 1e-12 * ball);
    }

    @Test
    @DisplayName(
            "cube of 200 mm and a land of 10: six slabs of 180 x 180 x 10 on a cube of 180, less its hollow of 162")
    @Source(value = HAND, text = "six slabs of 180 x 180 x 10 on a cube of 180, less its hollow of 162")
    void landOfTheCube() {
        // Panels are 19 thick with the land: the hollow is at 100 - 19 = 81, and the seams end at the joint distance
        // 90.
        Design design = Designs.of("cube").thickness(19).land(10).build();
        double expected = Math.pow(180, 3) + 6 * 180 * 180 * 10 - Math.pow(162, 3);
        assertEquals(expected, solidWood(design), 1e-12 * expected);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("solids")
    void allBandsAddUpToTheSegment(Solid solid) {
        for (double angle : new double[] {0, 30, -52, 90}) {
            Design design = thick(Designs.of(solid.name()).land(1).bands(angle, Designs.widths(3.0, 4.0, 2.5, null)))
                    .build();
            for (Panel panel : design.panels()) {
                for (Piece piece : panel.pieces()) {
                    addsUp(panel, piece, SegmentVolume.ofSolid(panel, piece, design.thickness()));
                    addsUp(
                            panel,
                            piece,
                            SegmentVolume.ofSphere(panel, piece, design.thickness(), design.sphereRadius()));
                }
            }
        }
    }

    private static void addsUp(Panel panel, Piece piece, SegmentVolume volume) {
        double angle = panel.lamination().bandAngle();
        double top = piece.top(angle);
        double bottom = piece.bottom(angle);
        double whole = volume.whole();
        assertEquals(whole, volume.below(BandLine.of(top + 1e-9, angle)), 1e-11 * whole, "all below the first edge");
        assertEquals(0, volume.below(BandLine.of(bottom - 1e-9, angle)), 1e-11 * whole, "none below the last edge");
        double before = whole;
        for (int i = 1; i <= 19; i++) {
            double below = volume.below(BandLine.of(top - (top - bottom) * i / 19, angle));
            assertTrue(below <= before + 1e-11 * whole, "a band has no negative volume");
            before = below;
        }
    }
}
