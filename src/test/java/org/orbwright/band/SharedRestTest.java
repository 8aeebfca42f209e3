package org.orbwright.band;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.orbwright.band.Wishes.analysed;
import static org.orbwright.band.Wishes.inSteps;
import static org.orbwright.band.Wishes.inverted;
import static org.orbwright.band.Wishes.rest;
import static org.orbwright.band.Wishes.upright;
import static org.orbwright.band.Wishes.wish;
import static org.orbwright.design.RequestSketch.lamination;
import static org.orbwright.design.RequestSketch.sketch;
import static org.orbwright.source.Kind.CONTRACT;
import static org.orbwright.source.Kind.HAND;
import static org.orbwright.source.Kind.INVARIANT;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.orbwright.band.SolveRequest.Measure;
import org.orbwright.band.SolveRequest.WishRequest;
import org.orbwright.band.WidthSolution.Sensitivity;
import org.orbwright.band.WidthSolution.SolvedBand;
import org.orbwright.band.WidthSolution.SolvedWish;
import org.orbwright.band.Wishes.Wished;
import org.orbwright.design.DesignRequest;
import org.orbwright.design.DesignRequest.BandRequest;
import org.orbwright.design.DesignRequest.LaminationRequest;
import org.orbwright.design.Places;
import org.orbwright.design.Sets;
import org.orbwright.design.SizeBy;
import org.orbwright.design.SphereSet;
import org.orbwright.design.Violation;
import org.orbwright.fixture.Designs;
import org.orbwright.source.Source;

/** Several bands that share what the others leave. */
@Source(INVARIANT)
class SharedRestTest {
    private static final double ACCURACY = 1e-9;
    private static final double JUST = 1e-3;
    /** The base distance is 80 mm * 0.688191 = 55.055 mm. */
    private static final DesignRequest FIVE = sketch().size(SizeBy.EDGE, 80)
            .laminations(lamination(null, null, 12.0, 8.0, 10.0, 6.0, null))
            .request();

    @Test
    @Source(value = HAND, text = "a fifth of the pentagon's apothem, 80 / (2 tan 36 degrees)")
    void bandsWithoutAWishShareEqually() {
        SolvedDesign solved = new Wished(FIVE, new SolveRequest(null, null, null, null)).solved();
        for (SolvedBand band : solved.widths().bands()) {
            assertEquals(80 * 0.6881909602355868 / 5, band.width(), ACCURACY);
            assertTrue(band.rest());
        }
    }

    @Test
    @DisplayName("parts 1 and 3 of 55.055 mm beside three wishes, one of them between the two")
    void restsStandInTheStatedProportionAndEveryWishComesTrue() {
        for (SphereSet set : List.of(SphereSet.UPRIGHT, SphereSet.INVERTED)) {
            SolvedDesign solved = new Wished(
                            FIVE,
                            new SolveRequest(
                                    null,
                                    set,
                                    List.of(
                                            wish(5, Measure.SHARE_OF_SPHERE, 0.05),
                                            new WishRequest(4, Measure.REST, 3.0),
                                            wish(3, Measure.CORNER, 6),
                                            wish(1, Measure.EDGE_MIDDLE, 9)),
                                    null))
                    .solved();
            List<SolvedBand> bands = solved.widths().bands();
            assertEquals(set, solved.widths().set());
            assertEquals(3, bands.get(3).width() / bands.get(1).width(), 1e-10);
            assertShown(9, solved, 1, Measure.EDGE_MIDDLE);
            assertShown(6, solved, 3, Measure.CORNER);
            assertShown(0.05, solved, 5, Measure.SHARE_OF_SPHERE);
            assertEquals(
                    80 * 0.6881909602355868,
                    bands.stream().mapToDouble(SolvedBand::width).sum(),
                    ACCURACY);
        }
    }

    @Test
    void answeredDesignLeavesTheLastRestOpenAndCanBeSolvedAgain() {
        WishRequest[] wishes = {wish(1, Measure.EDGE_MIDDLE, 9), wish(3, Measure.CORNER, 6)};
        for (Wished wished : List.of(upright(FIVE, wishes), inverted(FIVE, wishes))) {
            SolvedDesign solved = wished.solved();
            List<BandRequest> bands = solved.design().laminations().get(0).bands();
            assertNull(bands.get(4).width());
            for (int i = 0; i < 4; i++) {
                assertEquals(
                        solved.widths().bands().get(i).width(), bands.get(i).width(), ACCURACY);
            }
            assertEquals(solved, new Wished(solved.design(), wished.request()).solved());
        }
    }

    @Test
    @Source(CONTRACT)
    void statingWhatIsLeftOutChangesNothing() {
        SolveRequest sparse = new SolveRequest(null, null, List.of(wish(3, Measure.CORNER, 6)), null);
        SolvedDesign solved = new Wished(FIVE, sparse).solved();
        SolveRequest filled =
                sparse.filled(solved.widths().face(), solved.widths().set(), 5);
        assertEquals(
                new SolveRequest(
                        "pentagon",
                        Places.ALL,
                        SphereSet.UPRIGHT,
                        List.of(
                                wish(3, Measure.CORNER, SphereSet.UPRIGHT, 6),
                                new WishRequest(1, Measure.REST, 1.0),
                                new WishRequest(2, Measure.REST, 1.0),
                                new WishRequest(4, Measure.REST, 1.0),
                                new WishRequest(5, Measure.REST, 1.0)),
                        null),
                filled);
        assertEquals(filled, filled.filled("pentagon", SphereSet.UPRIGHT, 5));
        assertEquals(solved, new Wished(FIVE, filled).solved());
    }

    @Test
    void partOfALoneRestIsTheWholeRest() {
        WishRequest[] wishes = {wish(1, Measure.EDGE_MIDDLE, 9), wish(3, Measure.CORNER, 6)};
        DesignRequest three = sketch().size(SizeBy.EDGE, 80).request();
        SolvedDesign plain = upright(three, wishes[0], wishes[1], rest(2)).solved();
        assertEquals(
                plain,
                upright(three, wishes[0], wishes[1], new WishRequest(2, Measure.REST, 7.0))
                        .solved());
    }

    @Test
    @Source(CONTRACT)
    void setThatIsLeftOutIsThatOfTheFirstSphere() {
        SolveRequest request = new SolveRequest(null, null, List.of(wish(1, Measure.EDGE_MIDDLE, 9)), null);
        DesignRequest invertedOnly = Designs.of("dodecahedron")
                .sets(Sets.INVERTED)
                .edge(80)
                .bands(Designs.widths(12.0, 8.0, null))
                .request();
        SolvedDesign solved = new Wished(invertedOnly, request).solved();
        assertEquals(SphereSet.INVERTED, solved.widths().set());
        assertShown(9, solved, 1, Measure.EDGE_MIDDLE);
    }

    @ParameterizedTest
    @EnumSource(
            value = Measure.class,
            names = {"EDGE_MIDDLE", "CORNER", "SHARE_OF_SPHERE"})
    void mostBetweenTwoRestsIsTheMostThatComesTrue(Measure measure) {
        double some = measure == Measure.SHARE_OF_SPHERE ? 0.1 : 5;
        WishRequest[] others = {wish(1, Measure.EDGE_MIDDLE, 6), wish(4, Measure.CORNER, 4)};
        double most = Wishes.of(
                        upright(FIVE, others[0], wish(3, measure, some), others[1])
                                .solve(),
                        3)
                .most();
        assertEquals(0, worst(others[0], wish(3, measure, most * (1 - JUST)), others[1]));
        assertTrue(worst(others[0], wish(3, measure, most * (1 + JUST)), others[1]) > JUST / 5);
    }

    private static double worst(WishRequest... wishes) {
        return upright(FIVE, wishes).solve().worst();
    }

    @Test
    void mostsOfAllWishesHoldWhateverSideOfTheRestsTheyAreOn() {
        WidthSolution solution = upright(FIVE, wish(1, Measure.EDGE_MIDDLE, 6), wish(4, Measure.CORNER, 4))
                .solve();
        for (SolvedWish wish : solution.wishes()) {
            WishRequest kept = wish.band() == 1 ? wish(4, Measure.CORNER, 4) : wish(1, Measure.EDGE_MIDDLE, 6);
            assertEquals(0, worst(wish(wish.band(), wish.measure(), wish.most() * (1 - JUST)), kept));
            assertTrue(worst(wish(wish.band(), wish.measure(), wish.most() * (1 + JUST)), kept) > JUST / 5);
        }
    }

    @Test
    @Source(CONTRACT)
    void wishBetweenRestsThatIsTooLargeAloneIsRefusedAlone() {
        Violation violation =
                Wishes.refusal(upright(FIVE, wish(3, Measure.EDGE_MIDDLE, 300), wish(4, Measure.CORNER, 4)));
        assertEquals("/solve/wishes/0/value", violation.path());
        assertEquals("WISH_TOO_LARGE", violation.code());
        assertTrue(violation.message().contains("Band 3 cannot show 300 mm"), violation::message);
    }

    @Test
    @DisplayName("sensitivities against analyses of designs whose rests give way in their proportion of 2 to 1")
    void restsGiveWayInTheirProportion() {
        SolvedDesign solved = upright(
                        FIVE,
                        wish(1, Measure.EDGE_MIDDLE, 9),
                        new WishRequest(2, Measure.REST, 2.0),
                        wish(3, Measure.SHARE_OF_SPHERE, 0.2),
                        wish(5, Measure.SHARE_OF_SPHERE, 0.05))
                .solved();
        double step = 1e-3;
        for (SolvedWish band : solved.widths().wishes()) {
            assertEquals(
                    List.of(1, 3, 5),
                    band.sensitivities().stream().map(Sensitivity::band).toList());
            for (Sensitivity sensitivity : band.sensitivities()) {
                double wider = shown(changed(solved, sensitivity.band(), step), band);
                double narrower = shown(changed(solved, sensitivity.band(), -step), band);
                assertEquals((wider - narrower) / (2 * step), sensitivity.change(), 1e-6, sensitivity::toString);
            }
        }
    }

    @Test
    void wishedBandsTakeWholeStepsAndRestsShareWhatIsLeft() {
        SolvedDesign solved = inSteps(
                        0.5,
                        FIVE,
                        wish(1, Measure.EDGE_MIDDLE, 9.03),
                        new WishRequest(2, Measure.REST, 2.0),
                        wish(3, Measure.CORNER, 6.21),
                        wish(5, Measure.EDGE_MIDDLE, 4.4))
                .solved();
        List<SolvedBand> bands = solved.widths().bands();
        double left = 80 * 0.6881909602355868;
        for (int band : new int[] {1, 3, 5}) {
            double width = bands.get(band - 1).width();
            assertEquals(bands.get(band - 1).steps() * 0.5, width, ACCURACY);
            left -= width;
        }
        assertEquals(left * 2 / 3, bands.get(1).width(), ACCURACY);
        assertEquals(left / 3, bands.get(3).width(), ACCURACY);
        assertNull(bands.get(1).steps());
        for (SolvedBand band : bands) {
            assertEquals(
                    analysed(solved.design(), "pentagon", SphereSet.UPRIGHT, band.band(), Measure.CORNER),
                    band.seen().get(0).corner(),
                    ACCURACY);
        }
    }

    @Test
    @Source(CONTRACT)
    void stepThatLeavesARestTooLittleIsTooCoarse() {
        Violation violation =
                Wishes.refusal(inSteps(27.527, FIVE, wish(1, Measure.EDGE_MIDDLE, 9), wish(3, Measure.EDGE_MIDDLE, 9)));
        assertEquals("/solve/step", violation.path());
        assertEquals("STEP_TOO_COARSE", violation.code());
    }

    @Test
    @DisplayName("bands at 60 deg: a wish that ends beyond the edge middle leaps, and the rests keep 50 to 1")
    void bandThatShowsAllItCanTakesUpWhatIsLeftBeyondIt() {
        DesignRequest tilted = sketch().solid("cube")
                .size(SizeBy.EDGE, 120)
                .laminations(lamination(null, 60.0, 20.0, 20.0, null))
                .request();
        SolvedDesign solved = upright(
                        tilted,
                        new WishRequest(1, Measure.REST, 50.0),
                        wish(2, Measure.EDGE_MIDDLE, 20),
                        new WishRequest(3, Measure.REST, 1.0))
                .solved();
        List<SolvedBand> bands = solved.widths().bands();
        assertShown(20, solved, 2, Measure.EDGE_MIDDLE);
        assertEquals(50, bands.get(0).width() / bands.get(2).width(), 1e-9);
        assertTrue(bands.get(2).width() < 2, "the rest at the tip ends far beyond the centre");
    }

    private static void assertShown(double expected, SolvedDesign solved, int band, Measure measure) {
        double shown = analysed(
                solved.design(), solved.widths().face(), solved.widths().set(), band, measure);
        assertEquals(expected, shown, ACCURACY, () -> "band " + band);
    }

    private static double shown(DesignRequest design, SolvedWish band) {
        return analysed(design, "pentagon", SphereSet.UPRIGHT, band.band(), band.measure());
    }

    /** Band 4, the last of the rest, takes what is left; band 2 gives up two thirds. */
    private static DesignRequest changed(SolvedDesign solved, int wider, double by) {
        LaminationRequest old = solved.design().laminations().get(0);
        List<BandRequest> bands = new ArrayList<>(old.bands());
        bands.set(wider - 1, widened(bands.get(wider - 1), by));
        bands.set(1, widened(bands.get(1), -by * 2 / 3));
        return solved.design().withLaminations(List.of(old.withBands(bands)));
    }

    private static BandRequest widened(BandRequest band, double by) {
        return new BandRequest(band.species(), band.width() + by);
    }
}
