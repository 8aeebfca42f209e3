package org.orbwright.segment;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.orbwright.source.Kind.CONTRACT;
import static org.orbwright.source.Kind.HAND;
import static org.orbwright.source.Kind.INVARIANT;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.orbwright.fixture.Designs;
import org.orbwright.quantity.LengthUnit;
import org.orbwright.quantity.Quantity;
import org.orbwright.segment.Yield.SpeciesInSphere;
import org.orbwright.segment.Yield.SpeciesYield;
import org.orbwright.segment.Yield.SphereYield;
import org.orbwright.segment.Yield.StripYield;
import org.orbwright.source.Source;

@Source(INVARIANT)
class SpeciesTotalsTest {
    private static final List<String> EXAMPLES = List.of(
            "dodecahedron-two-spheres",
            "dodecahedron-with-land",
            "rhombic-triacontahedron",
            "truncated-icosahedron",
            "truncated-icosidodecahedron",
            "cube-with-chevrons");

    static Stream<String> examples() {
        return EXAMPLES.stream();
    }

    private static SpeciesYield wood(Yield yield, String name) {
        return yield.species().stream()
                .filter(s -> s.species().equals(name))
                .findFirst()
                .orElseThrow();
    }

    @Test
    @DisplayName("10 strips of walnut 1/2 in x 1.1 in x 23 in: 126.5 cubic inches, 0.8785 board feet of 144, 1.277 kg")
    @Source(
            value = HAND,
            text = "a board foot is 144 cubic inches; 1000 kg/m3 x 0.55 x 1.12 for black walnut (USDA Forest "
                    + "Service, FIA, REF_SPECIES)")
    void stripsByDefinition() {
        Yield yield = YieldCalculator.calculate(
                Designs.example("dodecahedron-two-spheres").build());
        SpeciesYield walnut = wood(yield, "black walnut");
        assertEquals(10, walnut.strips());
        assertEquals(230 * 25.4, walnut.stripLength(), 1e-9);
        double cubicInches = 10 * 0.5 * 1.1 * 23;
        assertEquals(cubicInches * 16387.064, walnut.stripVolume(), 1e-6);
        assertEquals(cubicInches / 144, walnut.stripBoardFeet() * Quantity.BOARD_FEET.factor(LengthUnit.IN), 1e-12);
        double cubicMetres = cubicInches * Math.pow(0.0254, 3);
        assertEquals(cubicMetres, walnut.stripCubicMetres() * Quantity.CUBIC_METRES.factor(LengthUnit.IN), 1e-15);
        // Walnut has a specific gravity of 0.55 at 12 %: 616 kg/m3 (USDA FIA, REF_SPECIES; FPL-GTR-190, chapter 4).
        assertEquals(616, walnut.density(), 1e-9);
        assertEquals(616 * cubicMetres, walnut.stripMass(), 1e-12);
    }

    @Test
    @Source(value = HAND, text = "20 strips of 23 in")
    void stripsOfOneWoodInSeveralBandsAreAddedUp() {
        SpeciesYield maple = wood(
                YieldCalculator.calculate(
                        Designs.example("dodecahedron-two-spheres").build()),
                "sugar maple");
        assertEquals(20, maple.strips());
        assertEquals(460 * 25.4, maple.stripLength(), 1e-9);
    }

    @ParameterizedTest
    @MethodSource("examples")
    void finishedWoodIsThatOfAllSpheres(String example) {
        Yield yield = YieldCalculator.calculate(Designs.example(example).build());
        for (SpeciesYield species : yield.species()) {
            double finished = 0;
            for (SphereYield sphere : yield.spheres()) {
                for (SpeciesInSphere wood : sphere.species()) {
                    finished += wood.species().equals(species.species()) ? wood.sphereVolume() * sphere.count() : 0;
                }
            }
            assertEquals(finished, species.finishedVolume(), 1e-9 * finished);
            assertEquals(species.density() * finished * 1e-9, species.finishedMass(), 1e-12 * finished);
        }
    }

    @ParameterizedTest
    @MethodSource("examples")
    void aSphereHoldsTheSumOfItsWoods(String example) {
        Yield yield = YieldCalculator.calculate(Designs.example(example).build());
        for (SphereYield sphere : yield.spheres()) {
            double volume = sphere.species().stream()
                    .mapToDouble(SpeciesInSphere::sphereVolume)
                    .sum();
            double mass = sphere.species().stream()
                    .mapToDouble(SpeciesInSphere::sphereMass)
                    .sum();
            assertEquals(volume, sphere.volume(), 1e-9 * volume);
            assertEquals(mass, sphere.mass(), 1e-9 * mass);
        }
    }

    @ParameterizedTest
    @MethodSource("examples")
    void stripsHoldTheWoodOfTheSolid(String example) {
        Yield yield = YieldCalculator.calculate(Designs.example(example).build());
        double strips =
                yield.species().stream().mapToDouble(SpeciesYield::stripVolume).sum();
        double solids = 0;
        for (SphereYield sphere : yield.spheres()) {
            solids += sphere.count()
                    * sphere.species().stream()
                            .mapToDouble(SpeciesInSphere::solidVolume)
                            .sum();
        }
        assertEquals(1, Math.signum(strips - solids));
        double byHand = yield.laminations().stream()
                .flatMap(l -> l.strips().stream())
                .mapToDouble(s -> s.count() * volume(s))
                .sum();
        assertEquals(byHand, strips, 1e-9 * strips);
    }

    private static double volume(StripYield strip) {
        return strip.width() * strip.thickness() * strip.length();
    }

    @Test
    @Source(CONTRACT)
    void anUnknownDensityLeavesTheMassOut() {
        Yield yield = YieldCalculator.calculate(Designs.of("cube")
                .thickness(60)
                .bands(List.of(
                        Designs.band("teak", 40.0), Designs.band("bog oak", 30.0), Designs.band("red maple", null)))
                .build());
        for (String unknown : List.of("teak", "bog oak")) {
            SpeciesYield wood = wood(yield, unknown);
            assertNull(wood.density());
            assertNull(wood.stripMass());
            assertNull(wood.finishedMass());
            assertNotNull(wood.stripVolume());
            assertNotNull(wood.finishedVolume());
        }
        assertNotNull(wood(yield, "red maple").finishedMass());
        SphereYield sphere = yield.spheres().get(0);
        assertNull(sphere.mass());
        assertNotNull(sphere.volume());
        assertNull(sphere.species().get(0).sphereMass());
        assertNotNull(sphere.species().get(2).sphereMass());
    }

    @Test
    @Source(value = HAND, text = "a cube of 200 mm less its hollow of 150 mm")
    void aSphereThatBreaksThroughHasNoFinishedVolume() {
        Yield yield = YieldCalculator.calculate(Designs.of("cube").thickness(25).build());
        // The hollow's corner is 75 sqrt 3 = 129.9 mm from the centre, the sphere's radius 98 mm.
        SphereYield sphere = yield.spheres().get(0);
        assertNull(sphere.volume());
        assertNull(sphere.mass());
        assertNull(sphere.species().get(0).sphereVolume());
        assertNull(yield.species().get(0).finishedVolume());
        assertNull(yield.species().get(0).finishedMass());
        // The solid itself is 200^3 less the hollow of 150^3.
        assertEquals(8e6 - 3.375e6, sphere.species().get(0).solidVolume(), 1e-6);
    }
}
