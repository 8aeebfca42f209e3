package org.orbwright.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

class TicksTest {

    @Test
    void areRoundValuesInsideTheRange() {
        assertEquals(List.of(-20.0, 0.0, 20.0, 40.0), Ticks.between(-25, 45, 6));
    }

    @Test
    void holdTheEndsOfARoundRange() {
        assertEquals(
                List.of("0", "0.1", "0.2", "0.3"),
                Ticks.between(0, 0.3, 5).stream().map(Ticks::write).toList());
    }

    @Test
    void stepByOneTwoOrFive() {
        assertEquals(1, Ticks.step(1));
        assertEquals(2, Ticks.step(1.01));
        assertEquals(50, Ticks.step(20.5));
        assertEquals(0.1, Ticks.step(0.07), 1e-15);
    }
}
