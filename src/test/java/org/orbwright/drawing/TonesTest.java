package org.orbwright.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.HashSet;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class TonesTest {

    @Test
    void suitWoodsByTheirNames() {
        assertEquals(List.of(1, 0, 6, 4), Tones.of(List.of("black walnut", "sugar maple", "Cherry", "white ash")));
    }

    @Test
    void giveTheNextFreeOneWhereNoneSuits() {
        assertEquals(List.of(0, 1, 5, 2), Tones.of(List.of("wood 1", "wenge", "ebony", "walnut")));
    }

    @Test
    void readWholeWordsOnly() {
        assertEquals(List.of(0), Tones.of(List.of("washed-up plank")));
    }

    @Test
    void differForUpTo64Woods() {
        List<String> woods = IntStream.range(0, 64)
                .mapToObj(i -> (i % 2 == 0 ? "maple " : "wood ") + i)
                .toList();
        List<Integer> tones = Tones.of(woods);
        assertEquals(64, new HashSet<>(tones).size());
        assertEquals(
                64,
                tones.stream()
                        .map(t -> Tones.fill(t) + Tones.hatch(t))
                        .distinct()
                        .count());
    }
}
