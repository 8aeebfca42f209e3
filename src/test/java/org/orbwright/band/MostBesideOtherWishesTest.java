package org.orbwright.band;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.orbwright.band.Wishes.rest;
import static org.orbwright.band.Wishes.upright;
import static org.orbwright.band.Wishes.wish;
import static org.orbwright.design.RequestSketch.lamination;
import static org.orbwright.design.RequestSketch.sketch;
import static org.orbwright.source.Kind.CONTRACT;
import static org.orbwright.source.Kind.HAND;
import static org.orbwright.source.Kind.INVARIANT;

import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.orbwright.band.SolveRequest.Measure;
import org.orbwright.band.SolveRequest.WishRequest;
import org.orbwright.band.WidthSolution.SolvedBand;
import org.orbwright.band.WidthSolution.SolvedWish;
import org.orbwright.band.Wishes.Wished;
import org.orbwright.design.DesignRequest;
import org.orbwright.design.SizeBy;
import org.orbwright.design.Violation;
import org.orbwright.source.Source;

/** The most of one wish while the other wishes are kept. */
@Source(INVARIANT)
class MostBesideOtherWishesTest {
    private static final DesignRequest DODECAHEDRON =
            sketch().size(SizeBy.EDGE, 80).diameter(170.0).request();
    /** From the panel's centre to the seam along a sphere of 170 mm: 85 asin(0.688191 / 1.309017). */
    private static final double ARC = 85 * Math.asin(0.6881909602355868 / 1.3090169943749475);

    private static final double JUST = 1e-3;
    /** The least width of the rest. */
    private static final double REST = 1e-3;

    @Test
    @DisplayName("widths at the edge middle add up to the arc of 47.05 mm: beside 10 mm the most is 37.05 mm")
    @Source(value = HAND, text = "the arc from the panel's centre to the seam is R asin(a / rho)")
    void widthsAtTheEdgeMiddleShareOneArc() {
        assertMosts(ARC - 10, ARC - 12, wish(1, Measure.EDGE_MIDDLE, 12), wish(2, Measure.EDGE_MIDDLE, 10), rest(3));
        assertMosts(ARC - 10, ARC - 12, wish(1, Measure.EDGE_MIDDLE, 12), rest(2), wish(3, Measure.EDGE_MIDDLE, 10));
        assertMosts(ARC - 10, ARC - 12, rest(1), wish(2, Measure.EDGE_MIDDLE, 12), wish(3, Measure.EDGE_MIDDLE, 10));
    }

    @Test
    void justBelowTheMostComesTrueBesideTheOthersAndJustAboveDoesNot() {
        Measure[] measures = {Measure.EDGE_MIDDLE, Measure.CORNER, Measure.SHARE_OF_SPHERE};
        for (Measure first : measures) {
            for (Measure second : measures) {
                for (int rest = 1; rest <= 3; rest++) {
                    justBelow(rest, first, second);
                }
            }
        }
    }

    private static void justBelow(int rest, Measure first, Measure second) {
        int one = rest == 1 ? 2 : 1;
        int other = rest == 3 ? 2 : 3;
        double wished = first == Measure.SHARE_OF_SPHERE ? 0.2 : 8;
        WishRequest kept = wish(other, second, second == Measure.SHARE_OF_SPHERE ? 0.2 : 8);
        WidthSolution solution = upright(DODECAHEDRON, rest(rest), wish(one, first, wished), kept)
                .solve();
        double most = Wishes.of(solution, one).most();
        assertEquals(0, worst(rest, wish(one, first, most * (1 - JUST)), kept));
        assertTrue(worst(rest, wish(one, first, most * (1 + JUST)), kept) > JUST / 4);
    }

    private static double worst(int rest, WishRequest... wishes) {
        WishRequest[] all = {wishes[0], wishes[1], rest(rest)};
        return upright(DODECAHEDRON, all).solve().worst();
    }

    @Test
    @DisplayName(
            "bands at 60 deg show nothing more at the edge middle once they pass the centre: the rest keeps 21.96 mm")
    @Source(value = HAND, text = "half a square at 60 degrees: from the centre to the corner 60 (sqrt 3 / 2 + 1 / 2)")
    void mostItselfComesTrueWithTheLeastWidthThatShowsIt() {
        DesignRequest tilted = sketch().solid("cube")
                .size(SizeBy.EDGE, 120)
                .laminations(lamination(null, 60.0, 20.0, null))
                .request();
        double most = Wishes.of(
                        upright(tilted, wish(1, Measure.EDGE_MIDDLE, 1), rest(2))
                                .solve(),
                        1)
                .most();
        List<SolvedBand> bands = upright(tilted, wish(1, Measure.EDGE_MIDDLE, most), rest(2))
                .solve()
                .bands();
        assertEquals(60 * (Math.sqrt(3) / 2 + 0.5), bands.get(0).width(), 1e-4);
        assertTrue(bands.get(1).width() > 21.9);
    }

    @Test
    @Source(CONTRACT)
    void faceKindThatTheSolidLacksIsUnknownWhereTheLaminationNamesNone() {
        Violation violation = Wishes.refusal(new Wished(
                DODECAHEDRON,
                new SolveRequest(
                        "hexagon",
                        null,
                        List.of(wish(1, Measure.CORNER, 5), rest(2), wish(3, Measure.CORNER, 5)),
                        null)));
        assertEquals("/solve/face", violation.path());
        assertEquals("UNKNOWN_FACE", violation.code());
    }

    private static void assertMosts(double first, double second, WishRequest... wishes) {
        List<SolvedWish> solved = upright(DODECAHEDRON, wishes).solve().wishes();
        assertEquals(first, solved.get(0).most(), 2 * REST);
        assertEquals(second, solved.get(1).most(), 2 * REST);
    }
}
