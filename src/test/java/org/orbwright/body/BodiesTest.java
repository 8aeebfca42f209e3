package org.orbwright.body;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.orbwright.body.Body.Part;
import org.orbwright.design.BandSet;
import org.orbwright.design.Design;
import org.orbwright.design.ImpossibleDesignException;
import org.orbwright.fixture.Designs;
import org.orbwright.fixture.Slow;
import org.orbwright.fixture.SolidNames;
import org.orbwright.fixture.Trials;
import org.orbwright.segment.Yield.SpeciesInSphere;
import org.orbwright.segment.YieldCalculator;

/** Every body of every solid is closed, and has the volume that the service reckons without a mesh. */
@Slow
class BodiesTest {
    private static final BodyOptions WOODS = new BodyOptions(BandSet.UPRIGHT, false, null);
    private static final BodyOptions ONE = new BodyOptions(BandSet.UPRIGHT, true, null);
    /** Flat bodies lack nothing but what corners are moved by that are one. */
    private static final double FLAT = 1e-6;

    static Stream<String> solids() {
        return SolidNames.each();
    }

    static Stream<String> worked() {
        return Trials.every(
                3,
                Stream.of(
                        "cube-with-chevrons",
                        "deltoidal-hexecontahedron-upright-bands",
                        "dodecahedron-two-spheres",
                        "dodecahedron-vanishing-rim",
                        "dodecahedron-with-land",
                        "rhombic-triacontahedron",
                        "truncated-icosahedron",
                        "truncated-icosidodecahedron",
                        "truncated-octahedron-alternating"));
    }

    private static Design banded(String solid) {
        Design plain = Designs.of(solid).build();
        double base = plain.panels().stream()
                .mapToDouble(panel -> panel.baseDistance())
                .min()
                .orElseThrow();
        return Designs.of(solid)
                .thickness(40)
                .bands(Designs.widths(base / 5, base / 4, null))
                .build();
    }

    private static void assertSound(Body body) {
        for (Part part : body.parts()) {
            Mesh mesh = part.mesh();
            String what = body.title() + ", " + part.name();
            assertTrue(mesh.closed(), what);
            // Every closed surface of this kind has an even Euler characteristic.
            assertEquals(0, euler(mesh) % 2, what);
            if (part.volume() != null) {
                double below = part.volume() - mesh.volume();
                assertTrue(below >= -FLAT * part.volume(), what + ": " + mesh.volume() + " in " + part.volume());
                double slack = FLAT * part.volume() + body.deviation() * mesh.area();
                assertTrue(below <= slack, what + ": " + mesh.volume() + " in " + part.volume());
            }
        }
    }

    private static int euler(Mesh mesh) {
        return mesh.vertices().size() - mesh.triangles().size() / 2;
    }

    private static double volume(Body body) {
        return body.parts().stream().mapToDouble(part -> part.mesh().volume()).sum();
    }

    @ParameterizedTest
    @MethodSource("solids")
    void bodiesOfEverySolidAreClosedAndOfTheRightVolume(String solid) {
        Design design = banded(solid);
        Body full = BodyCalculator.solid(design);
        assertSound(full);
        // Euler: a convex polyhedron has corners, less edges, plus faces, 2; the catalogue knows its volume.
        assertEquals(2, euler(full.parts().get(0).mesh()));
        double catalogue = design.solid().volume() * Math.pow(design.edge(), 3);
        assertEquals(catalogue, volume(full), catalogue * FLAT);
        Body shell = BodyCalculator.shell(design, ONE);
        assertSound(shell);
        // Two surfaces, one around the other.
        assertEquals(4, euler(shell.parts().get(0).mesh()));
        Body woods = BodyCalculator.shell(design, WOODS);
        assertSound(woods);
        assertEquals(volume(shell), volume(woods), volume(shell) * FLAT);
        Body sphere = BodyCalculator.sphere(design, WOODS);
        assertSound(sphere);
        assertSound(BodyCalculator.sphere(design, ONE));
        design.facePanels().forEach(panel -> {
            assertSound(BodyCalculator.panel(design, panel.face(), WOODS));
            panel.pieces().forEach(piece -> assertSound(BodyCalculator.segment(design, panel, piece, WOODS)));
        });
    }

    @ParameterizedTest
    @MethodSource("worked")
    void bodiesOfWorkedDesignsHaveTheVolumesOfTheYield(String name) {
        Design design = Designs.example(name).build();
        Body shell = BodyCalculator.shell(design, WOODS);
        Body sphere = BodyCalculator.sphere(design, WOODS);
        assertSound(shell);
        assertSound(sphere);
        assertSound(BodyCalculator.sphere(design, new BodyOptions(BandSet.INVERTED, false, null)));
        List<SpeciesInSphere> woods =
                YieldCalculator.calculate(design).spheres().get(0).species();
        for (SpeciesInSphere wood : woods) {
            assertEquals(wood.solidVolume(), volume(shell.only(wood.species())), wood.solidVolume() * FLAT);
            Part turned = sphere.only(wood.species()).parts().get(0);
            assertEquals(wood.sphereVolume(), turned.volume(), wood.sphereVolume() * 1e-12);
        }
    }

    /** Half as deep chords are nearer by the square root of a half: the volume lacks half as much. */
    @Test
    void whatTheMeshOfASphereLacksFallsWithTheDeviation() {
        Design design = Designs.example("dodecahedron-with-land").build();
        double[] lacking = new double[3];
        double[] deviations = {0.4, 0.1, 0.025};
        for (int i = 0; i < lacking.length; i++) {
            BodyOptions options = new BodyOptions(BandSet.UPRIGHT, true, deviations[i]);
            Body sphere = BodyCalculator.sphere(design, options);
            assertTrue(sphere.deviation() <= deviations[i] * (1 + 1e-9), () -> String.valueOf(sphere.deviation()));
            lacking[i] = sphere.parts().get(0).volume() - volume(sphere);
        }
        assertEquals(4, lacking[0] / lacking[1], 1);
        assertEquals(4, lacking[1] / lacking[2], 1);
    }

    @Test
    void cornersOfASphereLieOnItOrInsideAndNoTriangleIsDeeperThanTheDeviation() {
        Design design = Designs.example("truncated-octahedron-alternating").build();
        Body sphere = BodyCalculator.sphere(design, new BodyOptions(BandSet.UPRIGHT, true, 0.2));
        Mesh mesh = sphere.parts().get(0).mesh();
        double radius = design.sphereRadius();
        double inner = design.smallestFaceDistance() - design.thickness();
        for (Triangle triangle : mesh.triangles()) {
            double height = mesh.normal(triangle).dot(mesh.corner(triangle, 0));
            for (int i = 0; i < 3; i++) {
                double norm = mesh.corner(triangle, i).norm();
                assertTrue(norm <= radius + 1e-9);
                assertTrue(norm >= inner - 1e-9);
            }
            // Joints and seams lie in planes through the centre, and the hollow faces it.
            if (height > radius / 2) {
                double nearest = nearest(mesh, triangle);
                assertTrue(nearest >= radius - sphere.deviation() - 1e-9, () -> "down to " + nearest);
            }
        }
    }

    /** The least distance from the centre among points spread over a triangle. */
    private static double nearest(Mesh mesh, Triangle triangle) {
        int steps = 12;
        double nearest = Double.POSITIVE_INFINITY;
        for (int i = 0; i <= steps; i++) {
            for (int j = 0; i + j <= steps; j++) {
                double distance = mesh.corner(triangle, 0)
                        .multiply(i)
                        .add(mesh.corner(triangle, 1).multiply(j))
                        .add(mesh.corner(triangle, 2).multiply(steps - i - j))
                        .norm();
                nearest = Math.min(nearest, distance / steps);
            }
        }
        return nearest;
    }

    @Test
    void aDeviationThatTakesTooManyTrianglesIsRefusedWithOneThatWouldDo() {
        Design design = Designs.example("dodecahedron-two-spheres").build();
        ImpossibleDesignException refused = assertThrows(
                ImpossibleDesignException.class,
                () -> BodyCalculator.sphere(design, new BodyOptions(BandSet.UPRIGHT, false, 0.001)));
        String allowed = refused.violations().get(0).allowed();
        double would = Double.parseDouble(allowed.replaceAll("[^0-9.]", "")) * 25.4;
        Body sphere = BodyCalculator.sphere(design, new BodyOptions(BandSet.UPRIGHT, false, would));
        assertTrue(sphere.triangles() <= BodyCalculator.MOST_TRIANGLES, () -> sphere.triangles() + " triangles");
        // It is rounded up to two digits, by a tenth at most.
        BodyOptions finer = new BodyOptions(BandSet.UPRIGHT, false, would * 0.9);
        assertThrows(ImpossibleDesignException.class, () -> BodyCalculator.sphere(design, finer));
        assertSound(sphere);
    }

    @Test
    void aMeshWithAHoleOrATriangleTooManyIsNotClosed() {
        Mesh full = BodyCalculator.solid(banded("cube")).parts().get(0).mesh();
        List<Triangle> triangles = full.triangles();
        assertTrue(full.closed());
        assertFalse(new Mesh(full.vertices(), triangles.subList(1, triangles.size())).closed());
        List<Triangle> twice = new ArrayList<>(triangles);
        twice.add(triangles.get(0));
        assertFalse(new Mesh(full.vertices(), twice).closed());
    }

    @Test
    void aSegmentIsAPrismOnItsInnerFace() {
        Design design = Designs.example("dodecahedron-with-land").build();
        Body segment = BodyCalculator.segment(
                design, design.panels().get(0), design.panels().get(0).pieces().get(0), ONE);
        BodyNumbers numbers = BodyNumbers.of(segment);
        assertEquals(0, numbers.parts().get(0).low().z(), 1e-9);
        assertEquals(28, numbers.parts().get(0).high().z(), 1e-9);
        assertEquals(
                -design.panels().get(0).baseDistance(),
                numbers.parts().get(0).low().y(),
                1e-9);
        assertEquals(6, numbers.parts().get(0).vertices());
        assertEquals(8, numbers.triangles());
    }
}
