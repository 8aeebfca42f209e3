package org.orbwright.api.guard;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.concurrent.CancellationException;
import org.junit.jupiter.api.Test;
import org.orbwright.api.wire.RequestException;

/** Permits for long work are waited for, but not by an interrupted thread. */
class PermitsTest {
    @Test
    void anInterruptedThreadTakesNoPermit() {
        Permits permits = new Permits("a test", 1, 9);
        Permits.Permit taken = permits.take("a");
        Thread.currentThread().interrupt();
        assertThrows(CancellationException.class, () -> permits.take("a"));
        assertTrue(Thread.interrupted(), "whoever interrupted the thread may still ask");
        taken.close();
        assertEquals(1, permits.free());
        permits.take("a").close();
        assertEquals(1, permits.free());
    }

    /** A caller who holds his share is sent away at once, and another is not. */
    @Test
    void noCallerHoldsMoreThanHisShare() {
        Permits permits = new Permits("a test", 4, 2);
        Permits.Permit first = permits.take("a");
        permits.take("a");
        RequestException refused = assertThrows(RequestException.class, () -> permits.take("a"));
        assertEquals(
                "You hold 2 of the 4 places for a test, which is your share. End one of them first.",
                refused.getMessage());
        permits.take("b").close();
        first.close();
        first.close();
        permits.take("a");
        assertEquals(2, permits.free());
        assertThrows(RequestException.class, () -> permits.take("a"));
    }

    /** With one place that is held for two seconds already, nobody is told to come back in one. */
    @Test
    void theTimeToWaitGrowsWithTheWork() throws InterruptedException {
        Permits permits = new Permits("a test", 1, 9);
        assertEquals(1, permits.secondsToWait());
        Permits.Permit taken = permits.take("a");
        Thread.sleep(2100);
        assertTrue(permits.secondsToWait() >= 3, "as long again as it has taken");
        taken.close();
        permits.take("a").close();
        assertTrue(permits.secondsToWait() >= 2, "quick work afterwards does not make the slow one forgotten at once");
    }
}
