package org.orbwright.band;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.orbwright.band.Wishes.inverted;
import static org.orbwright.band.Wishes.refusal;
import static org.orbwright.band.Wishes.rest;
import static org.orbwright.band.Wishes.upright;
import static org.orbwright.band.Wishes.wish;
import static org.orbwright.design.RequestSketch.lamination;
import static org.orbwright.design.RequestSketch.sketch;
import static org.orbwright.source.Kind.CONTRACT;
import static org.orbwright.source.Kind.HAND;
import static org.orbwright.source.Kind.INVARIANT;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.orbwright.band.SolveRequest.Measure;
import org.orbwright.design.DesignRequest;
import org.orbwright.design.SizeBy;
import org.orbwright.design.SphereSet;
import org.orbwright.design.Violation;
import org.orbwright.quantity.LengthUnit;
import org.orbwright.source.Source;

/** The most that a band can show: a wish just below it comes true, one just above it is refused with it. */
@Source(
        value = HAND,
        text = "the arc from the panel's centre is R asin(a / rho) to the seam and R asin(a / c) to a corner")
class WidthSolverMostTest {
    /** A dodecahedron's base distance, seam radius and corner radius: 1 / (2 tan 36), phi^2 / 2 and phi sqrt 3 / 2. */
    private static final double BASE = 0.6881909602355868;

    private static final double SEAM = 1.3090169943749475;
    private static final double CORNER = 1.4012585384440737;

    /** A dodecahedron of edge 80 with a sphere of 170 mm, below the faces at 178.2 mm. */
    private static final DesignRequest BELOW_THE_FACES = dodecahedron(170);
    /** The same with flats: the sphere of 190 mm reaches beyond the faces, but not beyond the seams at 209.4 mm. */
    private static final DesignRequest WITH_FLATS = dodecahedron(190);

    private static final double JUST = 1e-3;
    /** The least width of the rest, in the design's unit. At the tip just as much of it is seen. */
    private static final double REST = 1e-3;
    /** What a most is found to, as a share, and the last of the six decimals that it is rounded down to. */
    private static final double ACCURACY = 2e-6;

    @Test
    @DisplayName("the most at the edge middle is the arc from the panel's centre to the seam, R asin(a / rho)")
    void mostAtTheEdgeMiddleIsTheArcToTheSeam() {
        assertMost(85 * Math.asin(BASE / SEAM), BELOW_THE_FACES, Measure.EDGE_MIDDLE, 10);
    }

    @Test
    @DisplayName("the most at the corner is the arc from the panel's centre to the corner, square to the bands")
    void mostAtTheCornerIsTheArcToIt() {
        assertMost(85 * Math.asin(BASE / CORNER), BELOW_THE_FACES, Measure.CORNER, 10);
    }

    @Test
    @DisplayName("over a flat the arc is the flat's radius and the sphere's arc beyond it")
    @Source(value = HAND, text = "Pythagoras for the flat's radius, and the arc beyond it")
    void mostOverAFlatIsTheFlatAndTheArcBeyondIt() {
        double face = 80 * 1.1135163644116068;
        double flat = Math.sqrt(95 * 95 - face * face);
        double seam = flat + 95 * (Math.asin(BASE / SEAM) - Math.asin(flat / 95));
        assertMost(seam, WITH_FLATS, Measure.EDGE_MIDDLE, 10);
    }

    @Test
    @Source(INVARIANT)
    void mostOfTheSphereIsAllOfIt() {
        assertMost(1, BELOW_THE_FACES, Measure.SHARE_OF_SPHERE, 0.3);
        assertMost(1, WITH_FLATS, Measure.SHARE_OF_SPHERE, 0.3);
    }

    @Test
    void mostIsInTheDesignsUnit() {
        DesignRequest inches = sketch().unit(LengthUnit.IN)
                .size(SizeBy.EDGE, 3)
                .panel(1, null)
                .allowance(0.1)
                .wall(0.2)
                .diameter(6.5)
                .laminations(lamination(null, null, 0.5, null))
                .request();
        assertMost(3.25 * Math.asin(BASE / SEAM), inches, Measure.EDGE_MIDDLE, 0.5);
    }

    @ParameterizedTest
    @EnumSource(
            value = Measure.class,
            names = {"EDGE_MIDDLE", "CORNER", "SHARE_OF_SPHERE"})
    @Source(INVARIANT)
    void justBelowTheMostComesTrueAndJustAboveIsRefused(Measure measure) {
        for (DesignRequest design : new DesignRequest[] {BELOW_THE_FACES, WITH_FLATS}) {
            double most = most(design, measure, 0.1);
            WidthSolution below = assertDoesNotThrow(() -> upright(design, wish(1, measure, most * (1 - JUST)), rest(2))
                    .solve());
            assertTrue(below.bands().get(1).width() > 0);
            Violation above = refusal(upright(design, wish(1, measure, most * (1 + JUST)), rest(2)));
            assertEquals("WISH_TOO_LARGE", above.code());
            assertEquals("/solve/wishes/0/value", above.path());
            assertTrue(above.allowed().startsWith("at most "), above::toString);
        }
    }

    @Test
    void refusalSaysTheWishAndTheMostInTheCallersUnit() {
        // 85 mm * asin(0.688191 / 1.309017) = 85 mm * 0.553574 = 47.054 mm.
        Violation width = refusal(upright(BELOW_THE_FACES, rest(1), wish(2, Measure.EDGE_MIDDLE, 55)));
        assertEquals("55", width.rejected());
        assertTrue(width.message().contains("Band 2 cannot show 55 mm"), width::message);
        assertTrue(width.message().contains("47.05 mm at most"), width::message);
        assertEquals("at most 47.05 mm", width.allowed());
        Violation share = refusal(upright(BELOW_THE_FACES, wish(2, Measure.SHARE_OF_SPHERE, 1.25), rest(1)));
        assertEquals("1.25", share.rejected());
        assertTrue(share.message().contains("125 % of the sphere"), share::message);
        assertEquals("at most 100 % of the sphere", share.allowed());
    }

    @Test
    @Source(INVARIANT)
    void mostIsTheSameFromTheTipAsFromTheBase() {
        for (Measure measure : new Measure[] {Measure.EDGE_MIDDLE, Measure.CORNER, Measure.SHARE_OF_SPHERE}) {
            double fromBase = most(BELOW_THE_FACES, measure, 0.1);
            WidthSolution fromTip =
                    upright(BELOW_THE_FACES, rest(1), wish(2, measure, 0.1)).solve();
            WidthSolution turned =
                    inverted(BELOW_THE_FACES, wish(2, measure, 0.1), rest(1)).solve();
            assertEquals(fromBase, Wishes.of(fromTip, 2).most(), 2 * REST);
            assertEquals(fromBase, Wishes.of(turned, 2).most(), 2 * REST);
            assertEquals(SphereSet.INVERTED, turned.set());
        }
    }

    @Test
    @DisplayName("bands from tip to base are not crossed on the way to the edge middle: nothing can be wished there")
    @Source(CONTRACT)
    void nothingCanBeWishedAcrossBandsThatRunFromTipToBase() {
        DesignRequest upright =
                sketch().laminations(lamination(null, 90.0, 20.0, null)).request();
        Violation violation = refusal(upright(upright, wish(1, Measure.EDGE_MIDDLE, 1), rest(2)));
        assertEquals("WISH_TOO_LARGE", violation.code());
        assertEquals("at most 0 mm", violation.allowed());
    }

    private static void assertMost(double expected, DesignRequest design, Measure measure, double wish) {
        double rest = measure == Measure.SHARE_OF_SPHERE ? 0 : REST;
        assertEquals(expected - rest, most(design, measure, wish), ACCURACY * Math.max(1, expected));
    }

    private static double most(DesignRequest design, Measure measure, double wish) {
        WidthSolution solution =
                upright(design, wish(1, measure, wish), rest(2)).solve();
        return Wishes.of(solution, 1).most();
    }

    private static DesignRequest dodecahedron(double sphere) {
        return sketch().size(SizeBy.EDGE, 80)
                .diameter(sphere)
                .laminations(lamination(null, null, 10.0, null))
                .request();
    }
}
