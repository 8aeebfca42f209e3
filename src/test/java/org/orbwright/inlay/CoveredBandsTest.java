package org.orbwright.inlay;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.orbwright.design.RequestSketch.lamination;
import static org.orbwright.design.RequestSketch.sketch;
import static org.orbwright.inlay.Inlays.disc;
import static org.orbwright.inlay.Inlays.polygon;

import java.util.List;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.orbwright.band.BandCalculator;
import org.orbwright.band.BandSurvival.BandView;
import org.orbwright.design.BandSet;
import org.orbwright.design.Design;
import org.orbwright.design.DesignRequest;
import org.orbwright.design.GeneratedDesigns;
import org.orbwright.design.Panel;
import org.orbwright.design.Sets;
import org.orbwright.design.SizeBy;
import org.orbwright.fixture.Designs;
import org.orbwright.inlay.InlayPlan.CoveredBand;

/** How much of every band an inlay covers. */
class CoveredBandsTest {
    /** What the sum over rays gets right of the inlay's area: a band that a ray grazes costs the step to the 3/2. */
    private static final double OF_RAYS = 3e-5;

    private static final DesignRequest DODECAHEDRON = sketch().size(SizeBy.EDGE, 80)
            .laminations(lamination(null, null, 20.0, 15.0, null))
            .request();

    @Property(tries = 120)
    void coveredAreasAreThoseOfASumOverRays(
            @ForAll("designs") DesignRequest request,
            @ForAll @IntRange(max = 9) int shape,
            @ForAll @DoubleRange(min = 0.1, max = 0.99) double part,
            @ForAll @IntRange(max = 2) int facePlace) {
        Design design = Design.of(request);
        Panel panel = design.panels().get(facePlace % design.panels().size());
        int sides = shape < 3 ? 0 : shape;
        Assume.that(panel.faceDistance() - design.thickness() < 0.95 * design.sphereRadius());
        double largest =
                inlay(request, sides, 0.001).face(panel.face()).plan().largest().diameter();
        double radius = part * Math.min(largest / 2, panel.baseDistance());
        InlayPlan plan = inlay(request, sides, 2 * design.unit().fromMillimetres(radius))
                .face(panel.face())
                .plan();
        double[] expected = new CoverOracle(design, panel, radius, sides).covered();
        double sum = 0;
        for (CoveredBand band : plan.covered()) {
            assertEquals(
                    expected[band.band() - 1],
                    band.area(),
                    OF_RAYS * plan.pocket().area(),
                    band::toString);
            assertTrue(band.share() >= 0 && band.share() <= 1);
            sum += band.area();
        }
        assertEquals(plan.pocket().area(), sum, 1e-11 * plan.pocket().area());
    }

    @Provide
    Arbitrary<DesignRequest> designs() {
        return GeneratedDesigns.designs(GeneratedDesigns.anyBandAngle());
    }

    @Test
    void shareIsOfWhatTheSurvivalCountsOnTheFiveSegmentsOfAPanel() {
        List<BandView> views = BandCalculator.calculate(Design.of(DODECAHEDRON), 2)
                .faces()
                .get(0)
                .segments()
                .get(0)
                .upright();
        for (CoveredBand band : disc(DODECAHEDRON, 60).plan().covered()) {
            double visible = 5 * views.get(band.band() - 1).sphereArea();
            assertEquals(band.area() / visible, band.share(), 1e-12);
        }
    }

    @Test
    void discThatEndsInTheInnermostBandCoversNothingElse() {
        // The innermost band is 80 * 0.688191 - 35 = 20.06 mm wide.
        List<CoveredBand> covered = disc(DODECAHEDRON, 40).plan().covered();
        assertEquals(0, covered.get(0).area());
        assertEquals(0, covered.get(1).area(), 1e-9);
        assertEquals(
                disc(DODECAHEDRON, 40).plan().pocket().area(), covered.get(2).area(), 1e-9);
    }

    @Test
    void pentagonAlongTheBandsCoversTheInnermostBandExactly() {
        // Its sides lie on the line between the second and the third band: corners at 20.0553 / cos(36 deg).
        double inner = 80 * 0.6881909602355868 - 35;
        List<CoveredBand> covered = polygon(DODECAHEDRON, 5, 2 * inner / Math.cos(Math.PI / 5))
                .plan()
                .covered();
        assertEquals(1, covered.get(2).share(), 1e-12);
        assertEquals(0, covered.get(1).share(), 1e-12);
        assertEquals(0, covered.get(0).share(), 1e-12);
    }

    private static Inlays inlay(DesignRequest design, int sides, double diameter) {
        return sides == 0 ? disc(design, diameter) : polygon(design, sides, diameter);
    }

    @Test
    void everySetThatIsUsedIsListed() {
        Designs upright = Designs.of("dodecahedron").bands(Designs.widths(20.0, 15.0, null));
        Designs reversed = Designs.of("dodecahedron")
                .bands(List.of(
                        Designs.band("black cherry", null),
                        Designs.band("sugar maple", 15.0),
                        Designs.band("black walnut", 20.0)));
        List<CoveredBand> one = covered(upright);
        List<CoveredBand> other = covered(reversed);
        assertEquals(List.of(1, 2, 3), one.stream().map(CoveredBand::band).toList());
        List<CoveredBand> mixed = covered(upright.sets(Sets.MIXED));
        assertEquals(one, mixed.subList(0, 3));
        assertEquals(6, mixed.size());
        for (int i = 0; i < 3; i++) {
            CoveredBand band = mixed.get(3 + i);
            assertEquals(BandSet.INVERTED, band.set());
            assertEquals(3 - i, band.band());
            assertEquals(other.get(i).species(), band.species());
            assertEquals(other.get(i).area(), band.area(), 1e-9);
            assertEquals(other.get(i).share(), band.share(), 1e-12);
        }
        assertEquals(mixed, covered(upright.copies(2)));
        assertEquals(mixed.subList(3, 6), covered(upright.sets(Sets.INVERTED)));
    }

    @Test
    void bandsOfOneSetAreUpright() {
        Designs tilted = Designs.of("dodecahedron").bands(30, Designs.widths(20.0, 15.0, null));
        assertEquals(covered(tilted), covered(tilted.sets(Sets.INVERTED)));
        assertTrue(covered(tilted).stream().allMatch(band -> band.set() == BandSet.UPRIGHT));
    }

    private static List<CoveredBand> covered(Designs design) {
        return disc(design.request(), 60).plan().covered();
    }
}
