package org.orbwright.body;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class LoopsTest {
    /** A loop that runs from any corner, with a way out and back put in anywhere, is the same loop. */
    @ParameterizedTest
    @ValueSource(ints = {3, 4, 7})
    void aWayOutAndBackIsTakenAway(int corners) {
        for (int at = 0; at < corners; at++) {
            for (int turn = 0; turn < corners + 4; turn++) {
                List<Integer> loop = new ArrayList<>();
                for (int i = 0; i < corners; i++) {
                    loop.add(i);
                    if (i == at) {
                        loop.addAll(List.of(100, 101, 100, i));
                    }
                }
                Collections.rotate(loop, turn);
                List<Integer> left = Loops.withoutSpurs(loop);
                assertEquals(corners, left.size(), loop::toString);
                assertEquals(
                        List.of(0, 1, 2),
                        rotatedTo(0, left).subList(0, 3),
                        () -> loop + " runs the other way afterwards");
            }
        }
    }

    @Test
    void aLoopThatOnlyRunsToAndFroIsEmpty() {
        assertEquals(List.of(), Loops.withoutSpurs(List.of(1, 2, 3, 2)));
        assertEquals(List.of(), Loops.withoutSpurs(List.of(2, 3, 2, 1)));
        assertEquals(List.of(), Loops.withoutSpurs(List.of(1, 2)));
        assertEquals(List.of(), Loops.withoutSpurs(List.of(1, 1)));
        assertEquals(List.of(), Loops.withoutSpurs(List.of(1)));
        assertEquals(List.of(), Loops.withoutSpurs(List.of()));
        assertEquals(List.of(5, 6, 7), Loops.withoutSpurs(List.of(5, 5, 6, 7, 7, 5)));
    }

    @Test
    void allWaysToWriteALoopAreOne() {
        List<Integer> loop = List.of(4, 9, 2, 7, 5);
        Set<String> canonical = new TreeSet<>();
        int turned = 0;
        for (int turn = 0; turn < loop.size(); turn++) {
            List<Integer> ahead = new ArrayList<>(loop);
            Collections.rotate(ahead, turn);
            List<Integer> back = Loops.reversed(ahead);
            assertNotEquals(Loops.isTurned(ahead), Loops.isTurned(back));
            assertEquals(loop.size(), Set.copyOf(Loops.canonical(ahead)).size());
            canonical.add(Loops.canonical(ahead).toString());
            canonical.add(Loops.canonical(back).toString());
            turned += Loops.isTurned(ahead) ? 1 : 0;
        }
        // From 2 to the smaller of its neighbours, 7 and 9.
        assertEquals(Set.of("[2, 7, 5, 4, 9]"), canonical);
        assertTrue(turned == 0 || turned == loop.size());
    }

    private static List<Integer> rotatedTo(int first, List<Integer> loop) {
        List<Integer> rotated = new ArrayList<>(loop);
        Collections.rotate(rotated, -loop.indexOf(first));
        return rotated;
    }
}
