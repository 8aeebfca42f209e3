package org.orbwright.band;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.orbwright.band.SolveRequest.Measure.CORNER;
import static org.orbwright.band.SolveRequest.Measure.EDGE_MIDDLE;
import static org.orbwright.band.SolveRequest.Measure.REST;
import static org.orbwright.band.SolveRequest.Measure.SHARE_OF_SPHERE;
import static org.orbwright.band.Wishes.wish;
import static org.orbwright.design.RequestSketch.lamination;
import static org.orbwright.design.RequestSketch.sketch;
import static org.orbwright.design.SphereSet.INVERTED;
import static org.orbwright.design.SphereSet.MIXED;
import static org.orbwright.design.SphereSet.UPRIGHT;
import static org.orbwright.source.Kind.HAND;
import static org.orbwright.source.Kind.ORACLE;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.orbwright.band.SolveRequest.WishRequest;
import org.orbwright.band.WidthSolution.SolvedBand;
import org.orbwright.band.WidthSolution.SolvedWish;
import org.orbwright.band.Wishes.Wished;
import org.orbwright.design.DesignRequest;
import org.orbwright.design.Sets;
import org.orbwright.design.SizeBy;
import org.orbwright.fixture.Designs;
import org.orbwright.quantity.LengthUnit;
import org.orbwright.source.Source;

/** Compromises between wishes that contradict each other, against a search through all widths. */
@Source(value = ORACLE, text = "every width in the step is tried, and analysed by BandCalculator alone")
class CompromiseTest {
    private static final double ACCURACY = 2e-8;
    /** Proofs are rounded down to 6 decimals. */
    private static final double PROVED = 1e-6 + ACCURACY;
    /** Gains below this are not told. */
    private static final double WORTH = 1e-4;

    private static final DesignRequest DODECAHEDRON =
            sketch().size(SizeBy.EDGE, 80).copies(2).request();
    private static final DesignRequest CORNERS_FLAT =
            sketch().size(SizeBy.EDGE, 80).copies(2).diameter(195.0).request();

    /** Wishes on a face kind, with the step in which the search goes through all widths. */
    record Case(String name, Wished wished, String face, double step) {
        @Override
        public String toString() {
            return name;
        }
    }

    static Stream<Case> cases() {
        return Stream.of(
                new Case(
                        "dodecahedron, every band on both spheres",
                        wished(
                                DODECAHEDRON,
                                wish(1, EDGE_MIDDLE, UPRIGHT, 10),
                                wish(2, EDGE_MIDDLE, UPRIGHT, 12),
                                wish(3, EDGE_MIDDLE, UPRIGHT, 20),
                                wish(1, EDGE_MIDDLE, INVERTED, 15),
                                wish(2, EDGE_MIDDLE, INVERTED, 16),
                                wish(3, EDGE_MIDDLE, INVERTED, 13)),
                        "pentagon",
                        1),
                new Case(
                        "dodecahedron, one band twice and its neighbour",
                        wished(
                                DODECAHEDRON,
                                wish(2, EDGE_MIDDLE, UPRIGHT, 9),
                                wish(2, CORNER, INVERTED, 14),
                                wish(1, SHARE_OF_SPHERE, UPRIGHT, 0.45)),
                        "pentagon",
                        1),
                new Case(
                        "dodecahedron with flats, shares that add up to too much",
                        wished(
                                CORNERS_FLAT,
                                wish(1, SHARE_OF_SPHERE, UPRIGHT, 0.7),
                                wish(3, SHARE_OF_SPHERE, UPRIGHT, 0.2),
                                wish(2, SHARE_OF_SPHERE, INVERTED, 0.6)),
                        "pentagon",
                        1),
                new Case(
                        "mixed icosahedron, widths and shares of one sphere",
                        wished(
                                mixed("icosahedron", 200),
                                wish(1, EDGE_MIDDLE, MIXED, 14),
                                wish(2, SHARE_OF_SPHERE, MIXED, 0.5),
                                wish(3, CORNER, MIXED, 6),
                                wish(3, EDGE_MIDDLE, UPRIGHT, 15)),
                        "triangle",
                        0.75),
                new Case(
                        "rhombic triacontahedron, segments with uneven sides",
                        wished(
                                rhombic(0.0),
                                wish(1, CORNER, UPRIGHT, 5),
                                wish(2, CORNER, UPRIGHT, 12),
                                wish(1, EDGE_MIDDLE, INVERTED, 20),
                                wish(3, EDGE_MIDDLE, INVERTED, 9)),
                        "rhombus",
                        0.75),
                new Case(
                        "tilted bands, the edge middle against the corner",
                        wished(
                                rhombic(25.0),
                                wish(1, SHARE_OF_SPHERE, UPRIGHT, 0.3),
                                wish(2, EDGE_MIDDLE, UPRIGHT, 12),
                                wish(2, CORNER, UPRIGHT, 4)),
                        "rhombus",
                        1.5),
                new Case(
                        "truncated icosahedron in inches, one of two face kinds",
                        wished(
                                twoFaces(),
                                wish(1, EDGE_MIDDLE, UPRIGHT, 0.4),
                                wish(3, SHARE_OF_SPHERE, UPRIGHT, 0.2),
                                wish(3, EDGE_MIDDLE, INVERTED, 0.5),
                                wish(2, EDGE_MIDDLE, INVERTED, 0.7)),
                        "hexagon",
                        1 / 16.0),
                new Case(
                        "four bands in inches",
                        wished(
                                inches(),
                                wish(1, EDGE_MIDDLE, UPRIGHT, 0.85),
                                wish(2, EDGE_MIDDLE, UPRIGHT, 0.1875),
                                wish(3, EDGE_MIDDLE, UPRIGHT, 0.5),
                                wish(4, EDGE_MIDDLE, INVERTED, 0.2)),
                        "pentagon",
                        1 / 16.0),
                new Case(
                        "two rests in proportion around a band that is wished for twice",
                        wished(
                                sketch().size(SizeBy.EDGE, 80)
                                        .copies(2)
                                        .laminations(lamination(null, null, 9.0, 9.0, 9.0, null))
                                        .request(),
                                wish(1, EDGE_MIDDLE, UPRIGHT, 9),
                                new WishRequest(2, REST, 2.0),
                                wish(3, EDGE_MIDDLE, UPRIGHT, 10),
                                wish(3, EDGE_MIDDLE, INVERTED, 14)),
                        "pentagon",
                        0.5));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("cases")
    void inStepsTheWorstWishIsAsNearAsASearchOfAllWidthsFinds(Case of) {
        WidthSolution solution = stepped(of.wished(), of.step()).solve();
        double best = new GridSearch(of.wished(), of.face()).best(of.step());
        assertEquals(best, solution.worst(), ACCURACY);
        assertTrue(solution.proved() <= best + ACCURACY);
        assertEquals(best, solution.proved(), PROVED);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("cases")
    void withoutAStepNoWidthsThatAreTriedBeatTheWorstWish(Case of) {
        WidthSolution solution = of.wished().solve();
        GridSearch search = new GridSearch(of.wished(), of.face());
        assertTrue(solution.worst() > WORTH, "the case is no compromise");
        assertTrue(solution.worst() - solution.proved() < WORTH, () -> "a gap beside " + solution.worst());
        assertEquals(solution.worst(), stepped(of.wished(), of.step()).solve().worstWithoutStep());
        double[] widths = solution.bands().stream()
                .mapToDouble(band -> of.wished().design().unit().fromMillimetres(band.width()))
                .toArray();
        assertEquals(solution.worst(), search.worst(widths), ACCURACY);
        assertTrue(search.best(of.step()) >= solution.proved() - ACCURACY);
        Random random = new Random(7);
        for (int i = 0; i < 3000; i++) {
            double[] tried = widths.clone();
            double scale = Math.pow(10, -6 * random.nextDouble());
            for (int band = 0; band < tried.length; band++) {
                tried[band] *= 1 + scale * (2 * random.nextDouble() - 1);
            }
            assertTrue(search.worst(tried) >= solution.proved() - ACCURACY);
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("cases")
    void droppingAWishHelpsByAsMuchAsASearchOfAllWidthsFinds(Case of) {
        WidthSolution solution = stepped(of.wished(), of.step()).solve();
        List<WishRequest> wishes = of.wished().request().wishes();
        for (SolvedWish dropped : solution.wishes().subList(0, 2)) {
            List<WishRequest> others = new ArrayList<>(wishes);
            WishRequest left = others.remove(dropped.wish() - 1);
            if (others.stream().noneMatch(wish -> wish.band().equals(left.band()))) {
                continue;
            }
            Wished without = new Wished(of.wished().design(), new SolveRequest(of.face(), null, others, null));
            double best = new GridSearch(without, of.face()).best(of.step());
            if (best < solution.worst() - WORTH - ACCURACY) {
                assertEquals(best, dropped.worstWithout(), ACCURACY);
            } else {
                assertNull(dropped.worstWithout());
            }
        }
    }

    @Test
    @DisplayName("12 mm and 18 mm for the same width share the deviation: 14.4 mm is a fifth from both")
    @Source(value = HAND, text = "w / 12 - 1 = 1 - w / 18 for w = 14.4")
    void twoWishesForOneWidthShareTheDeviation() {
        Wished wished = wished(DODECAHEDRON, wish(3, EDGE_MIDDLE, UPRIGHT, 12), wish(3, CORNER, UPRIGHT, 18));
        WidthSolution solution = wished.solve();
        assertEquals(0.2, solution.worst(), ACCURACY);
        assertEquals(0.2, solution.wishes().get(0).deviation(), ACCURACY);
        assertEquals(-0.2, solution.wishes().get(1).deviation(), ACCURACY);
        assertEquals(14.4, solution.bands().get(2).seen().get(0).edgeMiddle(), 1e-6);
        assertEquals(0, solution.wishes().get(0).worstWithout());
        assertEquals(0, solution.wishes().get(1).worstWithout());
    }

    @Test
    @DisplayName("beside two wishes that contradict each other a third one comes true, and the rest is not pressed")
    void wishesThatAreFreeToComeTrueDo() {
        Wished wished = wished(
                DODECAHEDRON,
                wish(1, EDGE_MIDDLE, UPRIGHT, 11),
                wish(3, EDGE_MIDDLE, UPRIGHT, 12),
                wish(3, CORNER, UPRIGHT, 18));
        WidthSolution solution = wished.solve();
        assertEquals(0, solution.wishes().get(0).deviation());
        assertNull(solution.wishes().get(0).worstWithout());
        SolvedBand rest = solution.bands().get(1);
        assertTrue(rest.rest() && rest.width() > 10);
    }

    private static Wished wished(DesignRequest design, WishRequest... wishes) {
        boolean several = design.laminations().size() > 1;
        String face = several ? design.laminations().get(0).face() : null;
        return new Wished(design, new SolveRequest(face, null, List.of(wishes), null));
    }

    private static Wished stepped(Wished wished, double step) {
        SolveRequest request = wished.request();
        return new Wished(wished.design(), new SolveRequest(request.face(), null, request.wishes(), step));
    }

    private static DesignRequest mixed(String solid, double flats) {
        return Designs.of(solid)
                .sets(Sets.MIXED)
                .acrossFlats(flats)
                .bands(Designs.widths(12.0, 8.0, null))
                .request();
    }

    private static DesignRequest rhombic(Double angle) {
        return sketch().solid("rhombic-triacontahedron")
                .size(SizeBy.EDGE, 70)
                .panel(20, null)
                .copies(2)
                .laminations(lamination(null, angle, 10.0, 6.0, null))
                .request();
    }

    private static DesignRequest twoFaces() {
        return sketch().unit(LengthUnit.IN)
                .solid("truncated-icosahedron")
                .size(SizeBy.EDGE, 2)
                .panel(1, null)
                .copies(2)
                .allowance(0.1)
                .wall(0.2)
                .laminations(
                        lamination("hexagon", null, 0.5, 0.25, null), lamination("pentagon", null, 0.5, 0.25, null))
                .request();
    }

    private static DesignRequest inches() {
        return sketch().unit(LengthUnit.IN)
                .size(SizeBy.SPHERE_DIAMETER, 6.5)
                .panel(1, 0.125)
                .copies(2)
                .allowance(0.06)
                .wall(0.3)
                .laminations(lamination(null, null, 0.625, 0.1875, 0.5, null))
                .request();
    }
}
