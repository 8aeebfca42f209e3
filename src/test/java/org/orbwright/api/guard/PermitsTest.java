package org.orbwright.api.guard;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.concurrent.CancellationException;
import org.junit.jupiter.api.Test;

/** Permits for long work are waited for, but not by an interrupted thread. */
class PermitsTest {
    @Test
    void anInterruptedThreadTakesNoPermit() {
        Permits permits = new Permits("a test", 1);
        Permits.Permit taken = permits.take();
        Thread.currentThread().interrupt();
        assertThrows(CancellationException.class, permits::take);
        assertTrue(Thread.interrupted(), "whoever interrupted the thread may still ask");
        taken.close();
        assertEquals(1, permits.free());
        permits.take().close();
        assertEquals(1, permits.free());
    }
}
