package org.orbwright.stock;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.orbwright.design.Band;
import org.orbwright.segment.SegmentPlan.Cut;
import org.orbwright.stock.SeamPlanner.BlankSeams;
import org.orbwright.stock.SeamPlanner.MadeUpStrip;
import org.orbwright.stock.SeamPlanner.SeamPlace;

/** Where the strips of a blank may have seams. */
class SeamPlannerTest {
    private static final double EXACT = 1e-6;

    /** A blank 600 mm long and 60 mm wide: three bands of 20 mm, a kerf of 3 mm, cuts that lean by 40 mm in turn. */
    private static BlankKind blank(boolean turned) {
        return new BlankKind(
                0,
                "A",
                false,
                turned,
                4,
                600,
                List.of(new Band("ash", 20), new Band("oak", 20), new Band("ash", 20)),
                3,
                List.of(
                        new Cut(0, 10, 50),
                        new Cut(1, 90, 50),
                        new Cut(2, 97, 137),
                        new Cut(3, 177, 137),
                        new Cut(4, 184, 224),
                        new Cut(5, 264, 224),
                        new Cut(6, 271, 311),
                        new Cut(7, 351, 311),
                        new Cut(8, 358, 398),
                        new Cut(9, 438, 398),
                        new Cut(10, 445, 485)));
    }

    @Test
    @DisplayName("hand calculation: a lean of 40 in 60 mm makes a kerf of 3 mm take 3.6056 mm along the blank")
    void cutsCrossTheMiddleOfABand() {
        double half = 3 * Math.hypot(60, 40) / 60 / 2;
        assertEquals(1.80278, half, 1e-5);
        // The first band's middle lies a sixth of the way across: 90 - 40 / 6; the kerf lies behind the line.
        assertEquals(83.33333 + half, blank(false).crossing(1, 0), 1e-5);
        assertEquals(70 + half, blank(false).crossing(1, 1), 1e-5);
        // The first cut takes its kerf before the line.
        assertEquals(10 + 40 / 6.0 - half, blank(false).crossing(0, 0), 1e-9);
        // Turned end for end, the third band lies where the first one lay.
        assertEquals(blank(false).crossing(1, 2), blank(true).crossing(1, 0), 1e-12);
    }

    @Test
    @DisplayName("hand calculation: in a band of 20 mm the cut leans by 13.333 mm, its kerf takes 3.606 mm of that")
    void seamsReachBeyondACutThatLeans() {
        assertEquals((40 / 3.0 - 3.60555) / 2, blank(false).beyondKerf(1, 0, 0), 1e-5);
        assertEquals((40 / 3.0 - 3.60555) / 2, blank(true).beyondKerf(2, 2, 0), 1e-5);
        assertEquals((40 + 40 / 3.0 - 3.60555) / 2, blank(false).beyondKerf(1, 0, 40), 1e-5);
    }

    @Test
    void aSeamThatIsNarrowerThanTheKerfIsTakenByTheSaw() {
        BlankKind square = new BlankKind(
                0, "A", false, false, 1, 600, List.of(new Band("ash", 60)), 3, List.of(new Cut(0, 50, 50)));
        assertEquals(0, square.beyondKerf(0, 0, 0));
        assertEquals(0, square.beyondKerf(0, 0, 3));
        assertEquals(1, square.beyondKerf(0, 0, 5), 1e-12);
    }

    @Property(tries = 500, seed = "20261125")
    void anyWaysToMakeUpTwoNeighboursGoTogether(
            @ForAll @DoubleRange(min = 0, max = 60) double overlap,
            @ForAll @DoubleRange(min = 60, max = 290) double smallest,
            @ForAll @DoubleRange(min = 0, max = 200) double clearance,
            @ForAll @IntRange(min = 1, max = 3) int most,
            @ForAll @IntRange(min = 1, max = 3) int places,
            @ForAll @Size(max = 3) List<@DoubleRange(min = 60, max = 500) Double> useful) {
        BlankKind blank = blank(false);
        SeamRules rules = new SeamRules(overlap, smallest, clearance, most);
        BlankSeams seams = SeamPlanner.plan(blank, rules, useful, places);
        for (int band = 0; band < 3; band++) {
            for (MadeUpStrip way : seams.of(band)) {
                assertMakesAStrip(blank, rules, band, way);
            }
        }
        for (int band = 0; band + 1 < 3; band++) {
            for (MadeUpStrip way : seams.of(band)) {
                for (MadeUpStrip other : seams.of(band + 1)) {
                    assertClear(rules, band, way, other);
                }
            }
        }
    }

    private static void assertMakesAStrip(BlankKind blank, SeamRules rules, int band, MadeUpStrip way) {
        assertTrue(way.seams().size() <= rules.most());
        assertEquals(way.seams().size() + 1, way.pieces().size());
        double start = 0;
        for (int piece = 0; piece < way.pieces().size(); piece++) {
            boolean last = piece == way.seams().size();
            double end = last ? blank.length() : way.seams().get(piece).at().get(band) + rules.overlap() / 2;
            assertTrue(end - start >= rules.smallest() - EXACT || way.seams().isEmpty());
            assertTrue(way.pieces().get(piece) >= end - start - EXACT, "the piece reaches over its part of the strip");
            if (!last) {
                SeamPlace place = way.seams().get(piece);
                start = place.at().get(band) - rules.overlap() / 2;
                assertTrue(place.cut() == null
                        || Math.abs(blank.crossing(place.cut(), band)
                                        - place.at().get(band))
                                < EXACT);
            }
        }
    }

    private static void assertClear(SeamRules rules, int band, MadeUpStrip way, MadeUpStrip other) {
        for (SeamPlace one : way.seams()) {
            for (SeamPlace next : other.seams()) {
                double apart = Math.abs(one.at().get(band) - next.at().get(band + 1)) - rules.overlap();
                assertTrue(apart >= rules.clearance() - EXACT, () -> one + " and " + next);
            }
        }
    }

    @Test
    void firstPlaceSuitsTheLengthThatBoardsHaveToSpare() {
        // 240 mm to spare: the longest left piece that ends on a cut is the one of the cut before it.
        BlankSeams seams = SeamPlanner.plan(blank(false), new SeamRules(0, 100, 20, 1), List.of(240.0), 1);
        MadeUpStrip way = seams.of(0).get(1);
        assertEquals(4, way.seams().get(0).cut());
        assertTrue(way.pieces().get(0) <= 240);
        // The even strip has such a piece at its right end.
        MadeUpStrip even = seams.of(1).get(1);
        assertTrue(even.pieces().get(1) <= 240);
        assertNotNull(even.seams().get(0).cut());
    }

    @Test
    void seamLiesWithinASegmentWhereNoCutWillDo() {
        // Both pieces at least 295 mm: the seam has to lie from 295 to 305 mm, and no cut is there in both ash strips.
        BlankSeams seams = SeamPlanner.plan(blank(false), new SeamRules(0, 295, 20, 1), List.of(), 3);
        MadeUpStrip way = seams.of(0).get(1);
        assertNull(way.seams().get(0).cut());
        assertEquals(List.of(300.0, 300.0), way.pieces());
        // The strip between them has to keep 20 mm from there, which leaves it none.
        assertEquals(1, seams.of(1).size());
    }

    @Test
    void stripsAreInOnePieceWhereNoSeamIsAllowed() {
        BlankSeams seams = SeamPlanner.plan(blank(false), new SeamRules(0, 600, 0, 0), List.of(300.0), 3);
        assertEquals(List.of(new MadeUpStrip(List.of(), List.of(600.0))), seams.of(0));
        assertEquals(seams.of(0), seams.of(1));
    }
}
