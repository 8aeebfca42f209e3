package org.orbwright.stock;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

class RipPatternsTest {
    private static final int MOST = 150;
    private static final int STEPS = 1_000_000;
    private static final String SEED = "20261125";

    private static Ripping ripping(List<Double> widths, int needed, double stick, double kerf) {
        return new Ripping(widths, Collections.nCopies(widths.size(), needed), stick, kerf);
    }

    private static Set<List<Integer>> counts(RipPatterns.Found found) {
        return found.patterns().stream().map(RipPattern::counts).collect(Collectors.toSet());
    }

    @Property(tries = 300, seed = SEED)
    void lanesFitTheBoardAndGiveWhatIsCounted(
            @ForAll @Size(min = 1, max = 4) List<@DoubleRange(min = 5, max = 80) Double> widths,
            @ForAll @IntRange(min = 1, max = 12) int needed,
            @ForAll @DoubleRange(min = 5, max = 40) double stick,
            @ForAll @DoubleRange(min = 0, max = 4) double kerf,
            @ForAll @DoubleRange(min = 1, max = 220) double width,
            @ForAll @DoubleRange(min = 1, max = 90) double thickness) {
        Ripping ripping = ripping(widths, needed, stick, kerf);
        for (RipPattern pattern :
                RipPatterns.of(ripping, width, thickness, STEPS, MOST).patterns()) {
            double across = pattern.lanes().stream().mapToDouble(Lane::width).sum();
            assertTrue(across + kerf * (pattern.lanes().size() - 1) <= width + 1e-6);
            pattern.lanes().forEach(lane -> assertSliced(ripping, lane, thickness));
            for (int item = 0; item < widths.size(); item++) {
                int i = item;
                int given = pattern.lanes().stream()
                        .mapToInt(lane -> Collections.frequency(lane.items(), i))
                        .sum();
                assertEquals(Math.min(needed, given), pattern.counts().get(item));
            }
        }
    }

    /** A lane of strips one above the other has their width; a stick that was turned has their thickness. */
    private static void assertSliced(Ripping ripping, Lane lane, double thickness) {
        double deep = ripping.kerf() * (lane.items().size() - 1);
        for (int item : lane.items()) {
            double strip = ripping.widths().get(item);
            assertEquals(lane.rotated() ? ripping.stick() : strip, lane.width());
            deep += lane.rotated() ? strip : ripping.stick();
        }
        assertTrue(deep <= thickness + 1e-6);
    }

    @Property(tries = 300, seed = SEED)
    void noPatternOfACompleteListReplacesAnother(
            @ForAll @Size(min = 1, max = 3) List<@DoubleRange(min = 10, max = 60) Double> widths,
            @ForAll @IntRange(min = 1, max = 8) int needed,
            @ForAll @DoubleRange(min = 10, max = 40) double stick,
            @ForAll @DoubleRange(min = 1, max = 200) double width,
            @ForAll @DoubleRange(min = 1, max = 80) double thickness) {
        RipPatterns.Found found = RipPatterns.of(ripping(widths, needed, stick, 3), width, thickness, STEPS, MOST);
        if (found.complete()) {
            Set<RipPattern> patterns = Set.copyOf(found.patterns());
            assertEquals(found.patterns().size(), patterns.size());
            for (RipPattern one : patterns) {
                for (RipPattern other : patterns) {
                    assertTrue(one.equals(other) || !one.replaces(other), () -> one + " replaces " + other);
                }
            }
        }
    }

    @Test
    @DisplayName("hand calculation: 108 mm give two strips of 40, or one and two of 25 (96 mm), or three of 25")
    void stripsSideBySide() {
        RipPatterns.Found found = RipPatterns.of(ripping(List.of(40.0, 25.0), 3, 20, 3), 108, 20, STEPS, MOST);
        assertEquals(Set.of(List.of(2, 0), List.of(1, 2), List.of(0, 3)), counts(found));
        assertTrue(found.complete());
    }

    @Test
    @DisplayName("hand calculation: 20 + 3 + 20 mm resaw to two strips, 0.01 mm less to one")
    void resawnStrips() {
        Ripping ripping = ripping(List.of(60.0), 9, 20, 3);
        assertEquals(Set.of(List.of(2)), counts(RipPatterns.of(ripping, 60, 43, STEPS, MOST)));
        assertEquals(Set.of(List.of(1)), counts(RipPatterns.of(ripping, 60, 42.99, STEPS, MOST)));
    }

    @Test
    @DisplayName(
            "hand calculation: a stick of 20 mm from a board 53 mm thick is sliced to 30 + 3 + 20 mm or 20 + 3 + 20")
    void slicedSticks() {
        Ripping ripping = ripping(List.of(30.0, 20.0), 9, 20, 3);
        // The turned stick gives one strip of each width. A lane of 30 mm would give two, but the board is too narrow.
        RipPatterns.Found found = RipPatterns.of(ripping, 20, 53, STEPS, MOST);
        assertEquals(Set.of(List.of(1, 1), List.of(0, 2)), counts(found));
    }

    @Test
    void aStripThatFitsUpToTheLastBitsFits() {
        // Ten strips and nine kerfs, whose sum in floating point is not exactly the board's width.
        Ripping ripping = ripping(List.of(0.1 + 0.2), 10, 20, 0.1);
        assertEquals(Set.of(List.of(10)), counts(RipPatterns.of(ripping, 10 * 0.3 + 9 * 0.1, 20, STEPS, MOST)));
    }

    @Test
    void noMoreStripsAreCountedThanAreNeeded() {
        assertEquals(
                Set.of(List.of(2)), counts(RipPatterns.of(ripping(List.of(20.0), 2, 20, 0), 200, 100, STEPS, MOST)));
    }

    @Test
    void aBoardThatIsTooThinOrTooNarrowGivesNothing() {
        Ripping ripping = ripping(List.of(30.0), 5, 20, 3);
        for (RipPatterns.Found found : List.of(
                RipPatterns.of(ripping, 300, 19.99, STEPS, MOST), RipPatterns.of(ripping, 19.99, 300, STEPS, MOST))) {
            assertTrue(found.patterns().stream()
                    .allMatch(pattern -> pattern.lanes().isEmpty()));
            assertTrue(found.complete());
        }
    }

    @Test
    void aListThatIsTooLongIsNotComplete() {
        List<Double> widths = new ArrayList<>();
        IntStream.range(0, 8).forEach(i -> widths.add(20 + 1.37 * i));
        RipPatterns.Found found = RipPatterns.of(ripping(widths, 8, 20, 3), 150, 21, STEPS, MOST);
        assertFalse(found.complete());
        assertEquals(150, found.patterns().size());
    }

    @Test
    void aListForWhichTheStepsDoNotSufficeStillGivesEveryWidth() {
        List<Double> widths = new ArrayList<>();
        IntStream.range(0, 30).forEach(i -> widths.add(4 + 0.71 * i));
        RipPatterns.Found found = RipPatterns.of(ripping(widths, 40, 20, 3), 300, 55, 1000, MOST);
        assertFalse(found.complete());
        for (int item = 0; item < widths.size(); item++) {
            int width = item;
            assertTrue(found.patterns().stream()
                    .anyMatch(pattern -> pattern.counts().get(width) > 0));
        }
        for (RipPattern pattern : found.patterns()) {
            double across = pattern.lanes().stream().mapToDouble(Lane::width).sum();
            assertTrue(across + 3 * (pattern.lanes().size() - 1) <= 300 + 1e-6);
        }
    }
}
