package org.orbwright.stock;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.orbwright.stock.SeamZone.Pair;
import org.orbwright.stock.SeamZone.Range;

class SeamZoneTest {
    private static final String SEED = "20261125";

    @Property(tries = 500, seed = SEED)
    void everyPlaceOfAZoneIsApartFromTheOtherZone(
            @ForAll @DoubleRange(min = 100, max = 3000) double length,
            @ForAll @DoubleRange(min = 0, max = 1.2) double share) {
        double apart = share * length;
        for (Pair pair : SeamZone.pairs(length, apart)) {
            for (Range odd : pair.odd().within(0, length)) {
                for (Range even : pair.even().within(0, length)) {
                    double between = Math.max(odd.from() - even.to(), even.from() - odd.to());
                    assertTrue(between >= apart - 1e-5, pair + " are not " + apart + " apart");
                }
            }
        }
    }

    @Property(tries = 500, seed = SEED)
    void theMiddleHasAsMuchOfTheBlankAsBothEnds(
            @ForAll @DoubleRange(min = 100, max = 3000) double length,
            @ForAll @DoubleRange(min = 0, max = 0.5) double share) {
        Pair pair = SeamZone.pairs(length, share * length).get(1);
        assertEquals(width(pair.odd(), length), width(pair.even(), length), 1e-6 * length);
    }

    private static double width(SeamZone zone, double length) {
        return zone.within(0, length).stream()
                .mapToDouble(range -> range.to() - range.from())
                .sum();
    }

    @Test
    @DisplayName("hand calculation: of 1000 mm, 100 mm apart: halves of 450 mm, a middle of 400 mm and ends of 200 mm")
    void halvesThenMiddleAndEndsEitherWayRound() {
        SeamZone middle = new SeamZone(List.of(new Range(300, 700)));
        SeamZone ends = new SeamZone(List.of(new Range(0, 200), new Range(800, 1000)));
        assertEquals(
                List.of(
                        new Pair(new SeamZone(List.of(new Range(0, 450))), new SeamZone(List.of(new Range(550, 1000)))),
                        new Pair(middle, ends),
                        new Pair(ends, middle)),
                SeamZone.pairs(1000, 100));
    }

    @Test
    void bandsHaveTheZonesInTurn() {
        Pair pair = SeamZone.pairs(1000, 100).get(0);
        assertSame(pair.odd(), pair.of(0));
        assertSame(pair.even(), pair.of(1));
        assertSame(pair.odd(), pair.of(2));
    }

    @Test
    void ofARangeThePartsInTheZoneAreLeft() {
        SeamZone ends = new SeamZone(List.of(new Range(0, 200), new Range(800, 1000)));
        assertEquals(List.of(new Range(150, 200), new Range(800, 850)), ends.within(150, 850));
        assertEquals(List.of(new Range(810, 850)), ends.within(810, 850));
        assertEquals(List.of(), ends.within(201, 799));
    }

    @Test
    void aRangeThatTouchesTheZoneLeavesAPoint() {
        SeamZone zone = new SeamZone(List.of(new Range(300, 700)));
        assertEquals(List.of(new Range(300, 300)), zone.within(200, 300));
        assertEquals(List.of(new Range(700, 700)), zone.within(700, 900));
    }

    @Test
    void anywhereLeavesAnyRangeAsItIs() {
        assertEquals(List.of(new Range(-5, 12)), SeamZone.ANYWHERE.within(-5, 12));
    }

    @Test
    void aRangeThatEndsBeforeItBeginsIsEmpty() {
        assertEquals(List.of(), SeamZone.ANYWHERE.within(12, 11));
    }

    @Test
    void aRangeHoldsItsEnds() {
        Range range = new Range(300, 700);
        assertTrue(range.holds(300) && range.holds(700));
        assertFalse(range.holds(299.9) || range.holds(700.1));
    }
}
