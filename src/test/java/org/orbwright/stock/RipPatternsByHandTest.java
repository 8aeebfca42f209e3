package org.orbwright.stock;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Collections;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** What is listed where there is time for a few patterns only, and which of several ways is taken, by hand. */
class RipPatternsByHandTest {
    private static final int MOST = 150;
    private static final int STEPS = 1_000_000;

    private static List<List<Integer>> counts(RipPatterns.Found found) {
        return found.patterns().stream().map(RipPattern::counts).toList();
    }

    /**
     * With its kerf each strip takes 23, 48, 73 or 36 of 161 mm. As many of one width as fit: 7 of 20, 3 of 45, 2 of
     * 70, 4 of 33 mm. Half as many, then what fits of the next width and of the widest: 4 of 20 and one of 45 mm; 2 of
     * 45 mm, no 70, another 45; one of 70 and two of 33 mm; 2 of 33 and 3 of 20 mm. The strips of these are 140, 135,
     * 140, 132, 125, 135 again, 136 and 126 mm wide together.
     */
    @Test
    void aFewPatternsAreFoundAtOnceAndThoseWithMostWoodComeFirst() {
        Ripping ripping = new Ripping(List.of(20.0, 45.0, 70.0, 33.0), List.of(9, 9, 9, 9), 15, 3);
        RipPatterns.Found found = RipPatterns.of(ripping, 158, 15, 0, MOST);
        assertEquals(
                List.of(
                        List.of(0, 0, 2, 0),
                        List.of(7, 0, 0, 0),
                        List.of(0, 0, 1, 2),
                        List.of(0, 3, 0, 0),
                        List.of(0, 0, 0, 4),
                        List.of(3, 0, 0, 2),
                        List.of(4, 1, 0, 0)),
                counts(found));
        assertFalse(found.complete());
    }

    @Test
    @DisplayName("hand calculation: 20 + 3 + 45 + 3 + 33 = 104 mm")
    void aPatternThatIsFoundAtOnceFitsExactly() {
        Ripping ripping = new Ripping(List.of(20.0, 45.0, 33.0), List.of(1, 1, 1), 15, 3);
        assertEquals(List.of(List.of(1, 1, 1)), counts(RipPatterns.of(ripping, 104, 15, 0, MOST)));
        assertFalse(counts(RipPatterns.of(ripping, 103.9, 15, 0, MOST)).contains(List.of(1, 1, 1)));
    }

    /** Eight widths can be sliced from 150 mm in very many ways. */
    @Test
    void aFewWaysToSliceAStickAreEnoughWhereThereIsNoTime() {
        List<Double> widths = IntStream.range(0, 8).mapToObj(i -> 21 + 1.37 * i).toList();
        Ripping ripping = new Ripping(widths, Collections.nCopies(8, 8), 20, 3);
        Set<Lane> sticks = RipPatterns.of(ripping, 150, 150, 0, MOST).patterns().stream()
                .flatMap(pattern -> pattern.lanes().stream())
                .filter(Lane::rotated)
                .collect(Collectors.toSet());
        assertTrue(!sticks.isEmpty() && sticks.size() <= 5, sticks.size() + " sticks");
    }

    /**
     * Two sticks of 20 mm, each sliced to 30 and 20 mm, take 46 mm with their kerfs; strips side by side take 56 mm.
     */
    @Test
    void ofTwoWaysToTheSameStripsTheNarrowerIsTaken() {
        Ripping ripping = new Ripping(List.of(30.0, 20.0), List.of(2, 2), 20, 3);
        RipPatterns.Found found = RipPatterns.of(ripping, 53, 53, STEPS, MOST);
        assertEquals(List.of(List.of(2, 2)), counts(found));
        Lane sliced = new Lane(true, 20, List.of(0, 1));
        assertEquals(List.of(sliced, sliced), found.patterns().get(0).lanes());
    }

    /** 90 mm are three slices of 30 mm; what nobody needs stays in one piece. */
    @Test
    void aStickIsNotSlicedFurtherThanStripsAreNeeded() {
        Ripping ripping = new Ripping(List.of(30.0), List.of(2), 20, 0);
        assertEquals(
                List.of(new Lane(true, 20, List.of(0, 0))),
                RipPatterns.of(ripping, 20, 90, STEPS, MOST).patterns().get(0).lanes());
    }
}
