package org.orbwright.band;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.orbwright.band.Agreement.assertAreas;
import static org.orbwright.source.Kind.HAND;
import static org.orbwright.source.Kind.ORACLE;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.orbwright.fixture.Trials;
import org.orbwright.source.Source;

/** A sphere larger than the seam radius, which a land makes possible: the panel's outline ends the surface. */
@Source(
        value = ORACLE,
        text = "tanh-sinh quadrature of the surface's definition, SurfaceOracle, which is held to band-areas.csv")
class SphereBeyondTheSeamTest {

    /** Once broken: at some directions rounding took the outline for the seam, and 141.9 became 176.0. */
    @Test
    @Source(value = HAND, text = "area of a triangle: base times height over 2")
    void surfaceThatIsAllFlatHasTheAreaOfThePanel() {
        SegmentSurface surface = new SegmentSurface(
                54.09351143380333,
                54.42435886265512,
                10.786185618006597,
                14.081557229228405,
                12.22525710134097,
                62.020092291301594);
        double panel = 10.786185618006597 * (14.081557229228405 + 12.22525710134097) / 2;
        assertEquals(panel, surface.whole().visible(), 1e-12 * panel);
        assertEquals(panel, surface.whole().flat(), 1e-12 * panel);
        assertEquals(panel, surface.whole().plan(), 1e-12 * panel);
    }

    @ParameterizedTest
    @ValueSource(doubles = {1.0001, 1.001, 1.01, 1.02, 1.05, 1.1, 1.2, 1.5, 3})
    void wholeSurfaceOfADodecahedronsSegmentAgreesWithQuadrature(double seamRadii) {
        double seam = Math.hypot(1.1135163644116068, 0.6881909602355868) * 50;
        SurfaceOracle oracle =
                new SurfaceOracle(50 * 1.1135163644116068, 60, 50 * 0.6881909602355868, 25, 25, seam * seamRadii);
        assertAreas(oracle.whole(), surface(oracle).whole(), surface(oracle).whole(), oracle::toString);
    }

    @Test
    void surfaceEndsAtTheOutlineWhateverTheSegment() {
        Random random = new Random(3);
        for (int i = 0; i < Trials.of(1000); i++) {
            double joint = 10 + 190 * random.nextDouble();
            double base = joint * (0.05 + 2.45 * random.nextDouble());
            double seam = Math.hypot(joint, base);
            double face = joint + (seam - joint) * 1.5 * random.nextDouble();
            double left = base * (0.05 + 2.95 * random.nextDouble());
            double right = base * (0.05 + 2.95 * random.nextDouble());
            double radius = seam * (1 + 0.5 * random.nextDouble());
            SurfaceOracle oracle = new SurfaceOracle(joint, face, base, left, right, radius);
            Area whole = surface(oracle).whole();
            assertAreas(oracle.whole(), whole, whole, oracle::toString);
            double offset = (base + left) * (random.nextDouble() - 0.4);
            BandLine line = BandLine.of(offset, 2 * Math.PI * random.nextDouble());
            assertAreas(oracle.below(line), surface(oracle).below(line), whole, () -> oracle + " " + line);
        }
    }

    private static SegmentSurface surface(SurfaceOracle o) {
        return new SegmentSurface(o.joint(), o.face(), o.base(), o.left(), o.right(), o.radius());
    }
}
