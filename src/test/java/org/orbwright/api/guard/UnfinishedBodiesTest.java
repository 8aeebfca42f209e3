package org.orbwright.api.guard;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** The oldest unfinished body makes room, and never more is held than is allowed. */
class UnfinishedBodiesTest {
    @Test
    void theOldestUnfinishedBodyMakesRoom() {
        UnfinishedBodies<String> bodies = new UnfinishedBodies<>(2, 100);
        assertEquals(List.of(), bodies.begin("a"));
        assertEquals(List.of(), bodies.begin("b"));
        bodies.complete("a");
        assertEquals(List.of(), bodies.begin("c"));
        assertEquals(List.of("b"), bodies.begin("d"));
        bodies.forget("b");
        assertEquals(2, bodies.count());
    }

    @Test
    void bytesCountUntilTheRequestIsAnswered() {
        UnfinishedBodies<String> bodies = new UnfinishedBodies<>(9, 100);
        bodies.begin("a");
        assertEquals(List.of(), bodies.grow("a", 60));
        bodies.complete("a");
        bodies.begin("b");
        assertEquals(List.of(), bodies.grow("b", 40));
        assertEquals(List.of("b"), bodies.grow("b", 1), "none but itself can go");
        bodies.forget("b");
        bodies.forget("a");
        bodies.begin("c");
        assertEquals(List.of(), bodies.grow("c", 100));
    }

    /** Callers come and go in any order; the bounds hold whenever those who have to go have gone. */
    @Test
    void theBoundsHoldInAnyOrder() {
        int most = 5;
        int mostBytes = 50;
        Random random = new Random(7);
        UnfinishedBodies<Integer> bodies = new UnfinishedBodies<>(most, mostBytes);
        List<Integer> coming = new ArrayList<>();
        for (int i = 0; i < 10_000; i++) {
            List<Integer> gone;
            if (coming.isEmpty() || random.nextInt(3) == 0) {
                coming.add(i);
                gone = bodies.begin(i);
            } else {
                Integer one = coming.get(random.nextInt(coming.size()));
                gone = bodies.grow(one, random.nextInt(20));
            }
            gone.forEach(bodies::forget);
            gone.forEach(one -> coming.remove(one));
            assertEquals(coming.size(), bodies.count());
            assertTrue(bodies.count() <= most && bodies.bytes() <= mostBytes);
        }
    }
}
