package org.orbwright.stock;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.orbwright.design.Band;
import org.orbwright.segment.SegmentPlan.Cut;
import org.orbwright.stock.SeamPlanner.BlankSeams;
import org.orbwright.stock.SeamPlanner.MadeUpStrip;
import org.orbwright.stock.SeamPlanner.SeamPlace;

/** Seams of a blank 600 mm long, worked by hand; its saw takes no kerf, so that a cut lies where its line does. */
class SeamPlannerByHandTest {
    private static final List<Double> NO_SPARE = List.of();

    /** A blank with bands of 20 mm. */
    private static BlankKind blank(int bands, Cut... cuts) {
        return new BlankKind(
                0, "A", false, false, 1, 600, Collections.nCopies(bands, new Band("ash", 20)), 0, Arrays.asList(cuts));
    }

    /** A blank with bands of 20 mm and cuts square across it. */
    private static BlankKind square(int bands, double... cuts) {
        return blank(
                bands,
                IntStream.range(0, cuts.length)
                        .mapToObj(cut -> new Cut(cut, cuts[cut], cuts[cut]))
                        .toArray(Cut[]::new));
    }

    /** Where ways of one seam have it, in the first band. */
    private static List<Double> singleSeams(List<MadeUpStrip> ways) {
        return ways.stream()
                .filter(way -> way.seams().size() == 1)
                .map(way -> way.seams().get(0).at().get(0))
                .toList();
    }

    /** The cuts that ways of one seam have it on; null for a seam on none. */
    private static List<Integer> cuts(List<MadeUpStrip> ways) {
        List<Integer> cuts = new ArrayList<>();
        ways.stream()
                .filter(way -> way.seams().size() == 1)
                .forEach(way -> cuts.add(way.seams().get(0).cut()));
        return cuts;
    }

    private static List<List<Double>> pieces(List<MadeUpStrip> ways) {
        return ways.stream().map(MadeUpStrip::pieces).toList();
    }

    @Test
    @DisplayName("hand calculation: a seam at 190 + 10 = 200 mm, its neighbour's at 230 + 30 = 260 mm")
    void onlyStripsThatHaveTheSeamHaveToKeepClear() {
        // Both cuts lean by 40 mm: a quarter of that, 10 mm, in the middle of the first band, 30 mm in the second.
        BlankKind blank = blank(2, new Cut(0, 190, 230), new Cut(1, 230, 270));
        BlankSeams seams = SeamPlanner.plan(blank, new SeamRules(0, 100, 50, 1), NO_SPARE, 1);
        // The odd strip has its seam at 190 + 10, the even one at 230 + 30: 60 mm apart. That the first cut crosses the
        // even strip at 220 mm and the second one the odd strip at 240 mm is of no account: no seam is there.
        assertEquals(List.of(0), cuts(seams.odd()));
        assertEquals(List.of(1), cuts(seams.even()));
        assertEquals(List.of(200.0, 220.0), seams.odd().get(1).seams().get(0).at());
        assertEquals(List.of(240.0, 260.0), seams.even().get(1).seams().get(0).at());
    }

    @Test
    @DisplayName("hand calculation: seams at 190, 150, 230 and 190 mm are 40 or 80 mm from their neighbours'")
    void stripsThatDoNotTouchMayHaveTheirSeamsSideBySide() {
        // Both cuts lean by 80 mm: 10, 30, 50 and 70 mm in the middles of the four bands.
        BlankKind blank = blank(4, new Cut(0, 120, 200), new Cut(1, 180, 260));
        BlankSeams seams = SeamPlanner.plan(blank, new SeamRules(0, 100, 40, 1), NO_SPARE, 1);
        // The first strip and the last one have theirs at 190 mm, with two strips between them.
        assertEquals(
                List.of(190.0, 210.0, 230.0, 250.0),
                seams.odd().get(1).seams().get(0).at());
        assertEquals(
                List.of(130.0, 150.0, 170.0, 190.0),
                seams.even().get(1).seams().get(0).at());
    }

    @Test
    @DisplayName("hand calculation: thirds and half of 600 mm are 200, 400 and 300 mm")
    void seamsLieNearestToAThirdThenTwoThirdsThenTheMiddle() {
        BlankKind blank = square(2, 100, 190, 310, 405, 480);
        SeamRules rules = new SeamRules(0, 100, 0, 1);
        BlankSeams one = SeamPlanner.plan(blank, rules, NO_SPARE, 1);
        // Neighbours begin at opposite ends, to be far apart.
        assertEquals(List.of(190.0), singleSeams(one.odd()));
        assertEquals(List.of(405.0), singleSeams(one.even()));
        BlankSeams two = SeamPlanner.plan(blank, rules, NO_SPARE, 2);
        assertEquals(List.of(190.0, 405.0), singleSeams(two.odd()));
        assertEquals(List.of(190.0, 405.0), singleSeams(two.even()));
        BlankSeams three = SeamPlanner.plan(blank, rules, NO_SPARE, 3);
        assertEquals(List.of(190.0, 310.0, 405.0), singleSeams(three.odd()));
        assertEquals(List.of(190.0, 310.0, 405.0), singleSeams(three.even()));
    }

    @Test
    void aCutThatLeansIsAsFarFromAThirdAsInTheStripWhereItIsFarthest() {
        // In four bands a lean of 40 mm puts a cut 5, 15, 25 and 35 mm along.
        BlankKind blank =
                blank(4, new Cut(0, 190, 190), new Cut(1, 195, 235), new Cut(2, 384, 384), new Cut(3, 385, 425));
        BlankSeams seams = SeamPlanner.plan(blank, new SeamRules(0, 100, 0, 1), NO_SPARE, 1);
        // The second cut is right at 200 mm in the first strip, but 20 mm off in the third; the square one is 10 off.
        assertEquals(List.of(0), cuts(seams.odd()));
        // The last cut is right at 400 mm in the second strip, but 20 mm off in the fourth; the square one is 16 off.
        assertEquals(List.of(2), cuts(seams.even()));
    }

    @Test
    @DisplayName("hand calculation: of 240 mm to spare, 20 mm lie beyond the middle of a scarf of 40 mm")
    void aScarfIsPutWhereThePieceToSpareReachesToItsEnd() {
        BlankKind blank = square(2, 100, 180, 220, 260, 340, 380, 420, 500);
        BlankSeams seams = SeamPlanner.plan(blank, new SeamRules(40, 100, 0, 1), List.of(240.0), 1);
        // From the left end, 240 - 20 = 220 mm; from the right end, 600 - 220 = 380 mm.
        assertEquals(List.of(220.0), singleSeams(seams.odd()));
        assertEquals(List.of(380.0), singleSeams(seams.even()));
        assertEquals(List.of(List.of(600.0), List.of(240.0, 400.0)), pieces(seams.odd()));
        assertEquals(List.of(List.of(600.0), List.of(400.0, 240.0)), pieces(seams.even()));
    }

    @Test
    void aPieceToSpareIsLaidAsOftenAsAStripMayHaveSeams() {
        BlankKind blank = square(2, 120, 200, 240, 300, 360, 400, 480);
        // Beside 200, 300 and 400 mm, one seam lies 240 mm from an end,
        BlankSeams once = SeamPlanner.plan(blank, new SeamRules(0, 100, 0, 1), List.of(240.0), 9);
        assertEquals(List.of(200.0, 240.0, 300.0, 400.0), singleSeams(once.odd()));
        assertEquals(List.of(200.0, 300.0, 360.0, 400.0), singleSeams(once.even()));
        // and where two seams are allowed, another one 240 mm from the first.
        BlankSeams twice = SeamPlanner.plan(blank, new SeamRules(0, 100, 0, 2), List.of(240.0), 9);
        assertEquals(List.of(200.0, 240.0, 300.0, 400.0, 480.0), singleSeams(twice.odd()));
        assertEquals(List.of(120.0, 200.0, 300.0, 360.0, 400.0), singleSeams(twice.even()));
    }

    @Test
    @DisplayName("hand calculation: two pieces of 240 mm with an overlap of 40 mm reach 240 + 200 = 440 mm")
    void twoPiecesToSpareOverlapInTheirScarf() {
        BlankKind blank = square(2, 140, 180, 220, 380, 420, 460);
        BlankSeams seams = SeamPlanner.plan(blank, new SeamRules(40, 100, 0, 2), List.of(240.0), 2);
        // The second scarf's middle is 20 mm before the end of the second piece, at 420 mm, and so from the other end.
        assertEquals(List.of(220.0, 420.0), singleSeams(seams.odd()));
        assertEquals(List.of(180.0, 380.0), singleSeams(seams.even()));
    }

    @Test
    @DisplayName("hand calculation: sixteenths of 600 mm are 37.5 mm; 300 - 37.5 = 262.5, 300 + 37.5 = 337.5 mm")
    void aSeamOffTheCutsLiesAsNearTheMiddleAsItsNeighbourLets() {
        SeamRules rules = new SeamRules(0, 100, 60, 1);
        // 300 mm is only 50 mm from the neighbour's seam; the next places are on both sides of the middle.
        BlankSeams left = SeamPlanner.plan(square(2, 350), rules, NO_SPARE, 3);
        assertEquals(List.of(0), cuts(left.odd()));
        assertEquals(List.of(262.5), singleSeams(left.even()));
        BlankSeams right = SeamPlanner.plan(square(2, 250), rules, NO_SPARE, 3);
        assertEquals(List.of(0), cuts(right.odd()));
        assertEquals(List.of(337.5), singleSeams(right.even()));
        // It is as far from the first end in all strips, and on no cut.
        assertEquals(
                new SeamPlace(null, List.of(337.5, 337.5)),
                right.even().get(1).seams().get(0));
    }

    @Test
    void neighboursMayBeAsNearAsTheClearance() {
        BlankKind blank = square(2, 200, 250);
        // Seams 50 mm apart keep a clearance of 50 mm, and one that is greater by no more than the last digits of sums.
        for (double clearance : new double[] {50, 50.000001}) {
            BlankSeams near = SeamPlanner.plan(blank, new SeamRules(0, 100, clearance, 1), NO_SPARE, 1);
            assertEquals(List.of(0), cuts(near.odd()));
            assertEquals(List.of(1), cuts(near.even()));
        }
        BlankSeams off = SeamPlanner.plan(blank, new SeamRules(0, 100, 50.00001, 1), NO_SPARE, 1);
        assertEquals(List.of(0), cuts(off.odd()));
        assertEquals(List.of(300.0), singleSeams(off.even()));
    }

    @Test
    @DisplayName("hand calculation: between the ends of scarfs of 20 mm whose middles are 50 mm apart lie 30 mm")
    void scarfsAreApartBetweenTheirNearestPoints() {
        BlankKind blank = square(2, 200, 250);
        BlankSeams near = SeamPlanner.plan(blank, new SeamRules(20, 100, 30, 1), NO_SPARE, 1);
        assertEquals(List.of(1), cuts(near.even()));
        BlankSeams off = SeamPlanner.plan(blank, new SeamRules(20, 100, 30.00001, 1), NO_SPARE, 1);
        assertEquals(List.of(300.0), singleSeams(off.even()));
    }

    @Test
    void piecesMayBeAsShortAsTheShortest() {
        // 100 mm from the left end, and 100 mm from the right end.
        for (double cut : new double[] {100, 500}) {
            for (double smallest : new double[] {100, 100.000001}) {
                BlankSeams on = SeamPlanner.plan(square(2, cut), new SeamRules(0, smallest, 0, 1), NO_SPARE, 1);
                assertEquals(List.of(cut), singleSeams(on.odd()));
                assertEquals(List.of(cut), singleSeams(on.even()));
            }
            BlankSeams off = SeamPlanner.plan(square(2, cut), new SeamRules(0, 100.00001, 0, 1), NO_SPARE, 1);
            assertEquals(List.of(300.0), singleSeams(off.odd()));
            assertEquals(List.of(300.0), singleSeams(off.even()));
        }
    }

    @Test
    @DisplayName("hand calculation: two pieces of 320 mm with an overlap of 40 mm make a strip of 600 mm")
    void theLongestShortestPieceLeavesASeamInTheMiddle() {
        BlankSeams seams = SeamPlanner.plan(square(2, 290), new SeamRules(40, 320, 0, 1), NO_SPARE, 3);
        assertEquals(List.of(List.of(600.0), List.of(320.0, 320.0)), pieces(seams.odd()));
    }

    @Test
    @DisplayName("hand calculation: a cut that leans by 60 mm lies at 280, 300 and 320 mm in three bands")
    void piecesAreCrosscutToWhatTheirOwnStripsNeed() {
        BlankKind blank = blank(3, new Cut(0, 270, 330));
        BlankSeams seams = SeamPlanner.plan(blank, new SeamRules(0, 100, 0, 1), NO_SPARE, 1);
        // The left piece is longest in the third strip, the right one in the first.
        assertEquals(List.of(List.of(600.0), List.of(320.0, 320.0)), pieces(seams.odd()));
        // The strip between them needs no more than its half.
        assertEquals(List.of(List.of(600.0), List.of(300.0, 300.0)), pieces(seams.even()));
    }

    @Test
    void aStripMayHaveAnySeamsThatLeaveItsPiecesLongEnough() {
        BlankKind blank = square(1, 120, 200, 290, 400, 480);
        BlankSeams two = SeamPlanner.plan(blank, new SeamRules(0, 100, 0, 2), NO_SPARE, 3);
        // Between 200 and 290 mm there is no room for a piece of 100 mm; everything else goes.
        assertEquals(
                List.of(
                        List.of(600.0),
                        List.of(200.0, 400.0),
                        List.of(200.0, 200.0, 200.0),
                        List.of(290.0, 310.0),
                        List.of(290.0, 110.0, 200.0),
                        List.of(400.0, 200.0)),
                pieces(two.odd()));
        // Where pieces may be as short as 90 mm, all three go together.
        BlankSeams three = SeamPlanner.plan(blank, new SeamRules(0, 90, 0, 3), NO_SPARE, 3);
        assertEquals(List.of(200.0, 90.0, 110.0, 200.0), three.odd().get(3).pieces());
    }

    @Test
    void aBlankOfOneStripHasNoEvenStripsToMakeUp() {
        BlankSeams seams = SeamPlanner.plan(square(1, 200, 400), new SeamRules(0, 100, 50, 2), List.of(200.0), 3);
        assertEquals(List.of(200.0, 400.0), singleSeams(seams.odd()));
        assertEquals(List.of(List.of(600.0)), pieces(seams.even()));
    }
}
