package org.orbwright.band;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.orbwright.band.Wishes.analysed;
import static org.orbwright.band.Wishes.wish;
import static org.orbwright.source.Kind.CONTRACT;
import static org.orbwright.source.Kind.INVARIANT;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.orbwright.band.SolveRequest.Measure;
import org.orbwright.band.SolveRequest.WishRequest;
import org.orbwright.band.WidthSolution.Seen;
import org.orbwright.band.WidthSolution.SolvedBand;
import org.orbwright.band.Wishes.Wished;
import org.orbwright.design.Design;
import org.orbwright.design.DesignRequest;
import org.orbwright.design.GeneratedDesigns;
import org.orbwright.design.Sets;
import org.orbwright.design.SphereSet;
import org.orbwright.fixture.Designs;
import org.orbwright.fixture.Slow;
import org.orbwright.source.Source;

/** Wishes for the spheres of both sets at once, and for one sphere of both. */
@Source(INVARIANT)
class BothSpheresTest {
    private static final double ACCURACY = 1e-9;
    private static final Measure[] MEASURES = {Measure.EDGE_MIDDLE, Measure.CORNER, Measure.SHARE_OF_SPHERE};

    /** Everything that both spheres show of a design, wished for again, gives the widths of the design. */
    @Property(tries = 150)
    @Slow
    void whatBothSpheresShowGivesTheWidthsAgain(
            @ForAll("designs") DesignRequest design, @ForAll @IntRange(max = 2) int first) {
        Design built = Design.of(design);
        String face = design.laminations().get(0).face();
        BandSurvival survival = BandCalculator.calculate(built, 2);
        int bands = design.laminations().get(0).bands().size();
        List<WishRequest> wishes = new ArrayList<>();
        for (int band = 1; band <= bands; band++) {
            for (SphereSet set : List.of(SphereSet.UPRIGHT, SphereSet.INVERTED)) {
                Measure measure = MEASURES[(first + band + wishes.size()) % 3];
                double shown = analysed(built, survival, face, set, band, measure);
                boolean share = measure == Measure.SHARE_OF_SPHERE;
                if (shown > (share ? 1e-3 : 0.05)) {
                    wishes.add(wish(
                            band, measure, set, share ? shown : built.unit().fromMillimetres(shown)));
                }
            }
        }
        for (int band = 1; band < bands; band++) {
            int number = band;
            Assume.that(wishes.stream().anyMatch(wish -> wish.band() == number));
        }
        SolvedDesign solved = new Wished(design, new SolveRequest(face, null, wishes, null)).solved();
        assertEquals(0, solved.widths().worst());
        for (int i = 0; i < bands; i++) {
            double width = built.panels().get(0).lamination().bands().get(i).width();
            assertEquals(width, solved.widths().bands().get(i).width(), 1e-5, "band " + (i + 1));
        }
        assertReportIsThatOfTheAnalysis(solved, face);
    }

    @Test
    void reportOfAMixedSphereIsThatOfTheAnalysis() {
        for (Sets sets : List.of(Sets.MIXED, Sets.TWINS, Sets.INVERTED)) {
            for (String solid : List.of("icosahedron", "cuboctahedron", "rhombic-dodecahedron")) {
                Designs designs = Designs.of(solid).sets(sets).copies(2);
                DesignRequest design =
                        designs.bands(Designs.widths(9.0, 6.0, null)).request();
                String face = design.laminations().get(0).face();
                SolvedDesign solved = new Wished(
                                design,
                                new SolveRequest(
                                        face,
                                        null,
                                        List.of(wish(1, Measure.EDGE_MIDDLE, 6), wish(2, Measure.SHARE_OF_SPHERE, 0.1)),
                                        null))
                        .solved();
                assertEquals(0, solved.widths().worst());
                assertReportIsThatOfTheAnalysis(solved, face);
            }
        }
    }

    @Test
    @Source(CONTRACT)
    void everyKindOfSphereThatIsMadeIsReported() {
        assertEquals(List.of(SphereSet.UPRIGHT, SphereSet.INVERTED), reported(Sets.TWINS, 2));
        assertEquals(List.of(SphereSet.UPRIGHT), reported(Sets.TWINS, 1));
        assertEquals(List.of(SphereSet.INVERTED), reported(Sets.INVERTED, 1));
        assertEquals(List.of(SphereSet.UPRIGHT, SphereSet.INVERTED, SphereSet.MIXED), reported(Sets.MIXED, 1));
    }

    private static List<SphereSet> reported(Sets sets, int copies) {
        DesignRequest design = Designs.of("cube")
                .sets(sets)
                .copies(copies)
                .bands(Designs.widths(9.0, 6.0, null))
                .request();
        SolveRequest request = new SolveRequest(null, null, List.of(wish(1, Measure.EDGE_MIDDLE, 6)), null);
        return new Wished(design, request)
                .solve().bands().get(0).seen().stream().map(Seen::set).toList();
    }

    private static void assertReportIsThatOfTheAnalysis(SolvedDesign solved, String face) {
        Design built = Design.of(solved.design());
        BandSurvival survival = BandCalculator.calculate(built, 2);
        for (SolvedBand band : solved.widths().bands()) {
            for (Seen seen : band.seen()) {
                double[] numbers = {seen.edgeMiddle(), seen.corner(), seen.shareOfSphere()};
                for (int i = 0; i < numbers.length; i++) {
                    double shown = analysed(built, survival, face, seen.set(), band.band(), MEASURES[i]);
                    assertEquals(shown, numbers[i], ACCURACY, seen.set() + " " + MEASURES[i]);
                }
            }
        }
    }

    @Provide
    Arbitrary<DesignRequest> designs() {
        return GeneratedDesigns.designs(Arbitraries.just(0.0));
    }
}
