package org.orbwright.segment;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.orbwright.source.Kind.HAND;

import java.util.List;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegrator;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegratorFactory;
import org.junit.jupiter.api.Test;
import org.orbwright.design.Sets;
import org.orbwright.design.SphereSet;
import org.orbwright.fixture.Designs;
import org.orbwright.segment.Yield.SpeciesInSphere;
import org.orbwright.segment.Yield.SphereYield;
import org.orbwright.source.Source;

/**
 * A cube of 200 mm with walls of 60 mm, so that its hollow is a cube of 80 mm. Around the middle of each face a band of
 * width w makes a square of 2 w, which as long as it lies over the hollow is 60 mm thick: 6 (2 w)^2 60 in all.
 */
@Source(
        value = HAND,
        text = "volumes of boxes and a ball; the sphere over a square by Gauss-Legendre quadrature of sqrt(R^2 - x^2 "
                + "- y^2)")
class FinishedWoodTest {
    private static final double RADIUS = 98;
    private static final double HOLLOW = 80;
    private static final double WALNUT = 30;
    private static final double CHERRY = 20;
    private static final Designs CUBE =
            Designs.of("cube").thickness(60).bands(Designs.widths(WALNUT, 100 - WALNUT - CHERRY, CHERRY));
    private static final GaussIntegrator QUADRATURE = new GaussIntegratorFactory().legendre(40, -1, 1);

    private static SpeciesInSphere wood(SphereYield sphere, String name) {
        return sphere.species().stream()
                .filter(wood -> wood.species().equals(name))
                .findFirst()
                .orElseThrow();
    }

    /** The wood under the sphere over squares of a half width around the middle of all six faces. */
    private static double turned(double half) {
        double square = QUADRATURE.integrate(x ->
                QUADRATURE.integrate(y -> Math.sqrt(RADIUS * RADIUS - half * half * (x * x + y * y)) - HOLLOW / 2));
        return 6 * half * half * square;
    }

    private static double boards(double half) {
        return 6 * Math.pow(2 * half, 2) * 60;
    }

    @Test
    void theBandAtTheTipIsASquareAroundTheMiddleOfEachFace() {
        List<SphereYield> spheres =
                YieldCalculator.calculate(CUBE.copies(2).build()).spheres();
        SpeciesInSphere upright = wood(spheres.get(0), "black cherry");
        assertEquals(boards(CHERRY), upright.solidVolume(), 1e-12 * boards(CHERRY));
        assertEquals(turned(CHERRY), upright.sphereVolume(), 1e-12 * turned(CHERRY));
        SpeciesInSphere inverted = wood(spheres.get(1), "black walnut");
        assertEquals(boards(WALNUT), inverted.solidVolume(), 1e-12 * boards(WALNUT));
        assertEquals(turned(WALNUT), inverted.sphereVolume(), 1e-12 * turned(WALNUT));
    }

    @Test
    void theSphereIsWholeButForItsHollow() {
        double sphere = 4 * Math.PI * Math.pow(RADIUS, 3) / 3 - Math.pow(HOLLOW, 3);
        Yield yield = YieldCalculator.calculate(
                Designs.of("cube").thickness(60).copies(3).build());
        assertEquals(sphere, yield.spheres().get(0).volume(), 1e-12 * sphere);
        assertEquals(3 * sphere, yield.species().get(0).finishedVolume(), 3e-12 * sphere);
    }

    @Test
    void theSolidsOfBothSetsAreAddedUp() {
        // Of five solids three have cherry at the tip and two have walnut there; the rim of the others is what the
        // squares within it leave of the whole.
        Yield yield = YieldCalculator.calculate(CUBE.copies(5).build());
        assertEquals(SphereSet.INVERTED, yield.spheres().get(1).set());
        double whole = Math.pow(200, 3) - Math.pow(HOLLOW, 3);
        double beyond = whole - yield.spheres().get(0).species().get(1).solidVolume() - boards(CHERRY);
        assertEquals(3 * beyond + 2 * boards(WALNUT), yield.solidVolume("black walnut"), 1e-11 * whole);
        assertEquals(0, yield.solidVolume("bog oak"));
        double sum = yield.solidVolume("black walnut")
                + yield.solidVolume("sugar maple")
                + yield.solidVolume("black cherry");
        assertEquals(5 * whole, sum, 1e-11 * whole);
    }

    @Test
    void aMixedSphereHasHalfOfTheWoodOfEachSet() {
        List<SphereYield> twins =
                YieldCalculator.calculate(CUBE.copies(2).build()).spheres();
        List<SphereYield> mixed =
                YieldCalculator.calculate(CUBE.sets(Sets.MIXED).build()).spheres();
        assertEquals(1, mixed.size());
        assertEquals(SphereSet.MIXED, mixed.get(0).set());
        assertEquals(3, mixed.get(0).invertedPanels().size());
        for (SpeciesInSphere wood : mixed.get(0).species()) {
            SpeciesInSphere upright = wood(twins.get(0), wood.species());
            SpeciesInSphere inverted = wood(twins.get(1), wood.species());
            double solid = (upright.solidVolume() + inverted.solidVolume()) / 2;
            double sphere = (upright.sphereVolume() + inverted.sphereVolume()) / 2;
            assertEquals(solid, wood.solidVolume(), 1e-12 * solid);
            assertEquals(sphere, wood.sphereVolume(), 1e-12 * sphere);
        }
        // The tips alone: 20 mm of cherry in three faces, 30 mm of walnut in the others.
        double tips = boards(WALNUT) / 2;
        double rims = (Math.pow(200, 3) - Math.pow(HOLLOW, 3)) / 2;
        double maple = wood(twins.get(0), "sugar maple").solidVolume() / 2;
        double walnut = tips + rims - boards(CHERRY) / 2 - maple;
        assertEquals(walnut, wood(mixed.get(0), "black walnut").solidVolume(), 1e-11 * walnut);
        assertEquals(twins.get(0).volume(), mixed.get(0).volume(), 1e-9);
    }
}
