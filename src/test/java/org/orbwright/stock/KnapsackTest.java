package org.orbwright.stock;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Small knapsacks by hand. */
class KnapsackTest {
    private static double bound(double room, List<Double> sizes, List<Double> worth) {
        return Knapsack.bound(128, room, sizes, worth);
    }

    @Test
    void whatFitsExactlyFits() {
        assertEquals(4, bound(100, List.of(25.0), List.of(1.0)));
        assertArrayEquals(new int[] {4}, Knapsack.choice(100, List.of(25.0), List.of(1.0)));
    }

    /** A sum of lengths and kerfs that should be 100 mm may be a hair more. */
    @Test
    void aThingAsLargeAsTheRoomFitsWhateverItsLastDigit() {
        assertEquals(7, bound(100, List.of(100.0000005), List.of(7.0)));
        assertArrayEquals(new int[] {1}, Knapsack.choice(100, List.of(100.0000005), List.of(7.0)));
        assertEquals(0, bound(100, List.of(100.001), List.of(7.0)));
        assertArrayEquals(new int[] {0}, Knapsack.choice(100, List.of(100.001), List.of(7.0)));
    }

    @Test
    void nothingFitsIntoNoRoom() {
        assertEquals(0, bound(0, List.of(25.0), List.of(1.0)));
        assertEquals(0, bound(-3, List.of(25.0), List.of(1.0)));
        assertArrayEquals(new int[] {0}, Knapsack.choice(0, List.of(25.0), List.of(1.0)));
    }

    @Test
    void whatIsWorthNothingIsNotChosen() {
        assertArrayEquals(new int[] {0, 1}, Knapsack.choice(100, List.of(10.0, 60.0), List.of(0.0, 1.0)));
    }

    /** What fills the room was put in first, and makes way for what is worth more though it leaves some room. */
    @Test
    void aBetterThingTakesThePlaceOfOneThatFillsTheRoom() {
        assertArrayEquals(new int[] {0, 1}, Knapsack.choice(100, List.of(100.0, 70.0), List.of(1.0, 5.0)));
    }

    /** 2 of 30 and 1 of 40 are worth 11; 3 of 30 are worth 9, 2 of 40 are worth 10. */
    @Test
    void thingsOfBothKindsAreWorthMost() {
        List<Double> sizes = List.of(30.0, 40.0);
        List<Double> worth = List.of(3.0, 5.0);
        assertEquals(11, bound(100.5, sizes, worth));
        assertArrayEquals(new int[] {2, 1}, Knapsack.choice(100.5, sizes, worth));
    }

    /** Of two choices that are worth the same the one that was found first stays. */
    @Test
    void equalChoicesAreLeftAsTheyAre() {
        assertArrayEquals(new int[] {2, 0}, Knapsack.choice(100, List.of(50.0, 50.0), List.of(3.0, 3.0)));
    }
}
