package org.orbwright.body;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.orbwright.design.BandSet;
import org.orbwright.design.Design;
import org.orbwright.fixture.Designs;
import org.orbwright.solid.SolidCatalogue;

class BodiesTest {
    static Stream<String> solids() {
        return SolidCatalogue.summaries().stream().map(s -> s.name());
    }

    @ParameterizedTest
    @MethodSource("solids")
    void everyBodyIsClosed(String solid) {
        Design design = Designs.of(solid).build();
        BodyOptions options = new BodyOptions(BandSet.UPRIGHT, false, null);
        check(BodyCalculator.solid(design));
        check(BodyCalculator.shell(design, options));
        check(BodyCalculator.panel(design, design.panels().get(0).face(), options));
        check(BodyCalculator.sphere(design, options));
    }

    static void check(Body body) {
        for (Body.Part part : body.parts()) {
            System.out.printf(
                    "%s %s %d tri, vol %.1f exact %.1f rel %.2e dev %.4f euler %d%n",
                    body.title(),
                    part.name(),
                    part.mesh().triangles().size(),
                    part.mesh().volume(),
                    part.volume(),
                    part.mesh().volume() / part.volume() - 1,
                    body.deviation(),
                    part.mesh().vertices().size() - part.mesh().triangles().size() / 2);
            assertTrue(part.mesh().closed(), body.title());
            assertEquals(1, part.mesh().volume() / part.volume(), body.deviation() == 0 ? 1e-6 : 1e-2, body.title());
        }
    }

    static Stream<String> designs() {
        return Stream.of(
                "cube-with-chevrons",
                "deltoidal-hexecontahedron-upright-bands",
                "dodecahedron-two-spheres",
                "dodecahedron-vanishing-rim",
                "dodecahedron-with-land",
                "rhombic-triacontahedron",
                "truncated-icosahedron",
                "truncated-icosidodecahedron",
                "truncated-octahedron-alternating");
    }

    @ParameterizedTest
    @MethodSource("designs")
    void everyWorkedDesignIsClosed(String name) {
        Design design = Designs.example(name).build();
        BodyOptions options = new BodyOptions(BandSet.UPRIGHT, false, null);
        BodyOptions whole = new BodyOptions(BandSet.UPRIGHT, true, null);
        check(BodyCalculator.solid(design));
        check(BodyCalculator.shell(design, whole));
        check(BodyCalculator.shell(design, options));
        check(BodyCalculator.panel(design, design.panels().get(0).face(), options));
        check(BodyCalculator.sphere(design, options));
        check(BodyCalculator.sphere(design, whole));
        check(BodyCalculator.segment(
                design, design.panels().get(0), design.panels().get(0).pieces().get(0), options));
    }
}
