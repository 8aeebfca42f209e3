package org.orbwright.body;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.orbwright.body.Body.Part;
import org.orbwright.design.BandSet;
import org.orbwright.design.Design;
import org.orbwright.fixture.DesignArbitraries;
import org.orbwright.fixture.Designs;
import org.orbwright.fixture.Slow;

/** Bodies of designs drawn at random: lands, flats, tilted bands, open seams and break-through included. */
class RandomBodiesTest {
    private static final int TRIES = 60;

    @Property(tries = TRIES, seed = "20260301")
    @Slow
    void everyBodyIsClosed(@ForAll("designs") Designs designs) {
        Design design = designs.build();
        double coarse = design.sphereRadius() / 100;
        BodyOptions options = new BodyOptions(BandSet.UPRIGHT, false, coarse);
        check(BodyCalculator.shell(design, options));
        check(BodyCalculator.panel(design, design.panels().get(0).face(), options));
        Body sphere = BodyCalculator.sphere(design, options);
        check(sphere);
        Body one = BodyCalculator.sphere(design, new BodyOptions(BandSet.UPRIGHT, true, coarse));
        check(one);
        double woods =
                sphere.parts().stream().mapToDouble(p -> p.mesh().volume()).sum();
        double whole = one.parts().stream().mapToDouble(p -> p.mesh().volume()).sum();
        double area = one.parts().stream().mapToDouble(p -> p.mesh().area()).sum();
        assertEquals(whole, woods, coarse * area);
    }

    private static void check(Body body) {
        for (Part part : body.parts()) {
            String what = body.title() + ", " + part.name();
            assertTrue(part.mesh().closed(), what);
            if (part.volume() != null) {
                double slack = 1e-6 * Math.cbrt(part.volume()) * part.mesh().area()
                        + body.deviation() * part.mesh().area();
                assertEquals(part.volume(), part.mesh().volume(), slack, what);
            }
        }
    }

    @Provide
    Arbitrary<Designs> designs() {
        return DesignArbitraries.designs();
    }
}
