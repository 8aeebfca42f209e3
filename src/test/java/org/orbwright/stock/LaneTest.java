package org.orbwright.stock;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Which lanes and patterns make others superfluous. */
class LaneTest {
    private static Lane lane(double width, Integer... items) {
        return new Lane(false, width, List.of(items));
    }

    @Test
    void aLaneReplacesOneThatGivesNoMoreFromAsMuch() {
        assertTrue(lane(20, 0, 1, 1).replaces(lane(20, 0, 1)));
        assertTrue(lane(20, 0, 0, 1).replaces(lane(21, 1)));
        assertTrue(lane(20, 0, 1).replaces(lane(20, 0, 1)));
        assertTrue(lane(20, 0, 2).replaces(lane(20, 2)));
    }

    @Test
    void aLaneDoesNotReplaceOneThatIsNarrowerOrGivesMore() {
        assertFalse(lane(20.5, 0, 1).replaces(lane(20, 0, 1)));
        assertFalse(lane(20, 0, 1).replaces(lane(20, 1, 1)));
        assertFalse(lane(20, 0, 2).replaces(lane(20, 1)));
        assertFalse(lane(20, 1).replaces(lane(20, 0)));
        assertFalse(lane(20, 0).replaces(lane(20, 0, 0)));
    }

    @Test
    void aPatternReplacesOneThatGivesNoMoreOfAnyWidth() {
        RipPattern pattern = RipPattern.of(List.of(), List.of(2, 1));
        assertTrue(pattern.replaces(RipPattern.of(List.of(), List.of(2, 1))));
        assertTrue(pattern.replaces(RipPattern.of(List.of(), List.of(2, 0))));
        assertFalse(pattern.replaces(RipPattern.of(List.of(), List.of(1, 2))));
        assertFalse(pattern.replaces(RipPattern.of(List.of(), List.of(3, 0))));
    }

    /** Wide lanes first, and of lanes of a width the flat ones before those on edge, so that the fence moves seldom. */
    @Test
    void lanesLieInTheOrderOfTheFence() {
        Lane narrow = lane(20, 1);
        Lane other = lane(20, 0);
        Lane wide = lane(45, 0);
        Lane turned = new Lane(true, 20, List.of(0));
        assertEquals(
                List.of(wide, other, narrow, turned),
                RipPattern.of(List.of(narrow, turned, wide, other), List.of(2, 1))
                        .lanes());
    }
}
