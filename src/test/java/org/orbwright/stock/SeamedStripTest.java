package org.orbwright.stock;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.orbwright.stock.SeamZone.Range;
import org.orbwright.stock.SeamedStrip.Arrangement;
import org.orbwright.stock.SeamedStrip.Place;

/** Strips of 1000 mm with cuts at 300, 550 and 900 mm; pieces are at least 100 mm long. */
class SeamedStripTest {
    private static final String SEED = "20261125";
    private static final double LENGTH = 1000;
    private static final double SMALLEST = 100;
    private static final List<Double> CUTS = List.of(300.0, 550.0, 900.0);

    private static SeamedStrip strip(double overlap, List<Double> cuts) {
        return new SeamedStrip(LENGTH, new SeamRules(overlap, SMALLEST, 40, 3), cuts);
    }

    private static SeamZone zone(double from, double to) {
        return new SeamZone(List.of(new Range(from, to)));
    }

    private static Arrangement arrangement(List<Double> pieces, Place... seams) {
        return new Arrangement(pieces, List.of(seams));
    }

    private static Place within(double at) {
        return new Place(at, null);
    }

    @Test
    void aStripInOnePieceHasNoSeam() {
        assertEquals(
                List.of(arrangement(List.of(LENGTH))), strip(0, CUTS).arrangements(List.of(LENGTH), SeamZone.ANYWHERE));
    }

    @Test
    @DisplayName("hand calculation: 600 and 500 mm may meet from 500 to 600 mm, 500 and 600 from 400 to 500 mm")
    void twoPiecesMeetOnACutThenAtTheEndsOfWhatTheyReach() {
        assertEquals(
                List.of(
                        arrangement(List.of(600.0, 500.0), new Place(550, 1)),
                        arrangement(List.of(600.0, 500.0), within(500)),
                        arrangement(List.of(600.0, 500.0), within(600)),
                        arrangement(List.of(500.0, 600.0), within(400)),
                        arrangement(List.of(500.0, 600.0), within(500))),
                strip(0, CUTS).arrangements(List.of(600.0, 500.0), SeamZone.ANYWHERE));
    }

    @Test
    @DisplayName("hand calculation: seams 40 mm long, their middles from 1000 - 500 + 20 to 600 - 20 mm")
    void anOverlapIsHalfOnEachSideOfTheMiddle() {
        assertEquals(
                List.of(
                        arrangement(List.of(600.0, 500.0), new Place(550, 1)),
                        arrangement(List.of(600.0, 500.0), within(520)),
                        arrangement(List.of(600.0, 500.0), within(580)),
                        arrangement(List.of(500.0, 600.0), within(420)),
                        arrangement(List.of(500.0, 600.0), within(480))),
                strip(40, CUTS).arrangements(List.of(600.0, 500.0), SeamZone.ANYWHERE));
    }

    @Test
    void piecesThatReachExactlyMeetAtOnePoint() {
        assertEquals(
                List.of(
                        arrangement(List.of(620.0, 420.0), within(600)),
                        arrangement(List.of(420.0, 620.0), within(400))),
                strip(40, List.of()).arrangements(List.of(620.0, 420.0), SeamZone.ANYWHERE));
    }

    @Test
    void piecesThatDoNotReachCannotBeArranged() {
        assertEquals(List.of(), strip(0, CUTS).arrangements(List.of(500.0, 499.0), SeamZone.ANYWHERE));
        assertEquals(List.of(), strip(40, CUTS).arrangements(List.of(539.0, 500.0), SeamZone.ANYWHERE));
    }

    @Test
    @DisplayName("hand calculation: 400 + 400 + 300 mm are 100 mm too long, which either seam or both can have")
    void threePiecesMeetTwice() {
        List<Double> order = List.of(400.0, 400.0, 300.0);
        List<Arrangement> found = strip(0, List.of()).arrangements(order, SeamZone.ANYWHERE);
        assertEquals(
                List.of(
                        arrangement(order, within(300), within(700)),
                        arrangement(order, within(400), within(700)),
                        arrangement(order, within(400), within(800))),
                found.stream().filter(one -> one.pieces().equals(order)).toList());
        assertEquals(
                3,
                found.stream().map(Arrangement::pieces).distinct().count(),
                "orders of two equal pieces and another");
    }

    @Test
    @DisplayName("hand calculation: with seams of 40 mm, 420 + 420 + 260 mm are 1020 mm, 20 mm too long")
    void threePiecesOverlapTwice() {
        List<Double> order = List.of(420.0, 420.0, 260.0);
        assertEquals(
                List.of(
                        arrangement(order, within(380), within(760)),
                        arrangement(order, within(400), within(760)),
                        arrangement(order, within(400), within(780))),
                strip(40, List.of()).arrangements(order, SeamZone.ANYWHERE).stream()
                        .filter(one -> one.pieces().equals(order))
                        .toList());
    }

    @Test
    void bothSeamsAreOnCutsWherePiecesReachThem() {
        List<Arrangement> found = strip(0, CUTS).arrangements(List.of(400.0, 400.0, 500.0), SeamZone.ANYWHERE);
        assertEquals(0, found.stream().mapToInt(Arrangement::within).min().orElseThrow());
    }

    @Test
    @DisplayName("hand calculation: 950 mm are trimmed to 900, so that 100 mm are left of a piece of 500 mm")
    void aLongPieceIsTrimmedForTheOneBesideIt() {
        List<Arrangement> found = strip(0, List.of()).arrangements(List.of(950.0, 500.0), SeamZone.ANYWHERE);
        assertEquals(
                List.of(
                        arrangement(List.of(950.0, 500.0), within(500)),
                        arrangement(List.of(950.0, 500.0), within(900)),
                        arrangement(List.of(500.0, 950.0), within(100)),
                        arrangement(List.of(500.0, 950.0), within(500))),
                found);
    }

    @Property(tries = 400, seed = SEED)
    void noPieceIsTrimmedBelowTheShortestNorLongerThanItIs(
            @ForAll @Size(min = 2, max = 4) List<@DoubleRange(min = SMALLEST, max = 950) Double> pieces,
            @ForAll @Size(max = 5) List<@DoubleRange(min = 1, max = 999) Double> cuts,
            @ForAll @DoubleRange(min = 0, max = SMALLEST) double overlap) {
        for (Arrangement one : strip(overlap, cuts).arrangements(pieces, SeamZone.ANYWHERE)) {
            assertEquals(
                    pieces.stream().sorted().toList(),
                    one.pieces().stream().sorted().toList());
            double from = 0;
            for (int piece = 0; piece < one.pieces().size(); piece++) {
                boolean last = piece == one.seams().size();
                double to = last ? LENGTH : one.seams().get(piece).at() + overlap / 2;
                assertTrue(to - from >= SMALLEST - 1e-5, one::toString);
                assertTrue(to - from <= one.pieces().get(piece) + 1e-5, one::toString);
                from = to - overlap;
            }
        }
    }

    @Property(tries = 400, seed = SEED)
    void twoPiecesThatReachCanAlwaysBeArranged(
            @ForAll @DoubleRange(min = SMALLEST, max = 950) double one,
            @ForAll @DoubleRange(min = SMALLEST, max = 950) double other,
            @ForAll @DoubleRange(min = 0, max = SMALLEST) double overlap) {
        boolean reach = one + other >= LENGTH + overlap;
        assertEquals(
                reach,
                !strip(overlap, CUTS)
                        .arrangements(List.of(one, other), SeamZone.ANYWHERE)
                        .isEmpty());
    }

    @Property(tries = 200, seed = SEED)
    void cutsComeBeforePlacesWithinSegments(
            @ForAll @DoubleRange(min = 300, max = 950) double one,
            @ForAll @DoubleRange(min = 300, max = 950) double other,
            @ForAll @Size(max = 5) List<@DoubleRange(min = 1, max = 999) Double> cuts) {
        List<List<Double>> orders = new ArrayList<>();
        boolean withinBefore = false;
        for (Arrangement found : strip(0, cuts).arrangements(List.of(one, other), SeamZone.ANYWHERE)) {
            boolean next = !orders.contains(found.pieces());
            orders.add(found.pieces());
            assertFalse(!next && withinBefore && found.within() == 0, "a cut after a place within a segment");
            withinBefore = found.within() > 0;
        }
    }

    @Test
    @DisplayName("hand calculation: of 400 to 500 mm the zone up to 450 mm leaves 400 to 450 mm")
    void seamsKeepToTheirZone() {
        assertEquals(
                List.of(
                        arrangement(List.of(500.0, 600.0), within(400)),
                        arrangement(List.of(500.0, 600.0), within(450))),
                strip(0, CUTS).arrangements(List.of(600.0, 500.0), zone(0, 450)));
    }

    @Test
    void aCutBeyondTheZoneIsNoPlace() {
        assertEquals(
                List.of(
                        arrangement(List.of(600.0, 500.0), within(500)),
                        arrangement(List.of(600.0, 500.0), within(540)),
                        arrangement(List.of(500.0, 600.0), within(490)),
                        arrangement(List.of(500.0, 600.0), within(500))),
                strip(0, CUTS).arrangements(List.of(600.0, 500.0), zone(490, 540)));
    }

    @Test
    void aZoneThatIsNotReachedLeavesNoArrangement() {
        assertEquals(List.of(), strip(0, CUTS).arrangements(List.of(600.0, 500.0), zone(0, 390)));
    }

    @Test
    @DisplayName("hand calculation: 300, 250, 350 and 100 mm lie between the cuts and the ends")
    void theWidestGapLiesBetweenTwoCuts() {
        assertEquals(350, strip(0, CUTS).widestGap());
        assertEquals(350, strip(0, List.of(900.0, 300.0, 550.0)).widestGap(), "in any order");
    }

    @Test
    void theWidestGapMayLieAtAnEnd() {
        assertEquals(700, strip(0, List.of(700.0, 900.0)).widestGap());
        assertEquals(700, strip(0, List.of(100.0, 300.0)).widestGap());
    }

    @Test
    void withoutCutsTheGapIsTheStrip() {
        assertEquals(LENGTH, strip(0, List.of()).widestGap());
    }

    @Test
    @DisplayName("hand calculation: 600 mm reach the cut at 550, beyond which are 450 mm; from the other end 550")
    void besideAPieceGoesWhatIsLeftBeyondTheLastCutItReaches() {
        assertEquals(450, strip(0, CUTS).besideOnCut(600), 1e-9);
        assertEquals(450, strip(0, CUTS).besideOnCut(550), 1e-9);
    }

    @Test
    @DisplayName("hand calculation: 549 mm reach the cut at 300 alone, or from the other end that at 550")
    void theEndThatLeavesLessIsTaken() {
        assertEquals(550, strip(0, CUTS).besideOnCut(549), 1e-9);
        assertEquals(900, strip(0, CUTS).besideOnCut(200), 1e-9);
    }

    @Test
    @DisplayName("hand calculation: 600 mm reach 580 mm with half a seam of 40 mm; 1000 - 550 + 20 mm are wanted")
    void besideAPieceGoesHalfASeamMore() {
        assertEquals(470, strip(40, CUTS).besideOnCut(600), 1e-9);
        assertEquals(470, strip(40, CUTS).besideOnCut(570), 1e-9);
        assertEquals(570, strip(40, CUTS).besideOnCut(569), 1e-9);
    }

    @Test
    void besideAPieceThatReachesNoCutGoesNothing() {
        assertEquals(0, strip(0, CUTS).besideOnCut(99));
        assertEquals(0, strip(0, List.of()).besideOnCut(600));
    }

    @Test
    void seamsAreClearFromTheLeastDistanceOn() {
        Arrangement one = arrangement(List.of(400.0, 400.0, 400.0), within(300), within(700));
        Arrangement other = arrangement(List.of(600.0, 500.0), within(740));
        assertTrue(one.isClear(other, 40));
        assertFalse(one.isClear(other, 40.1));
        assertTrue(other.isClear(one, 40));
        assertFalse(other.isClear(one, 40.1));
    }

    @Test
    void aStripWithoutSeamIsClearOfEveryOther() {
        Arrangement whole = arrangement(List.of(LENGTH));
        Arrangement seamed = arrangement(List.of(600.0, 500.0), within(500));
        assertTrue(whole.isClear(seamed, LENGTH));
        assertTrue(seamed.isClear(whole, LENGTH));
        assertTrue(whole.isClear(whole, LENGTH));
    }

    @Test
    void seamsWithinSegmentsAreThoseOnNoCut() {
        assertEquals(
                1,
                arrangement(List.of(400.0, 400.0, 400.0), new Place(300, 0), within(650))
                        .within());
    }
}
