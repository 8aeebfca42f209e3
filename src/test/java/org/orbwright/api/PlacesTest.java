package org.orbwright.api;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.concurrent.CancellationException;
import org.junit.jupiter.api.Test;

/** Places for long work are waited for, but not by an interrupted thread. */
class PlacesTest {
    @Test
    void anInterruptedThreadTakesNoPlace() {
        Places places = new Places("a test", 1);
        Places.Place taken = places.take();
        Thread.currentThread().interrupt();
        assertThrows(CancellationException.class, places::take);
        assertTrue(Thread.interrupted(), "whoever interrupted the thread may still ask");
        taken.close();
        assertEquals(1, places.free());
        places.take().close();
        assertEquals(1, places.free());
    }
}
