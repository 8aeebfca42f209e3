package org.orbwright.stock;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.orbwright.stock.StockRequest.SearchRequest;

class EffortTest {
    private static final long LONG = 600_000_000_000L;

    @Test
    void aShareIsSpentInTheWhole() {
        Effort whole = new Effort(10, LONG);
        whole.share(0.5).spend(2, false);
        assertEquals(8, whole.work(), 1e-12);
    }

    @Test
    void aShareOfAShareIsSpentInAll() {
        Effort whole = new Effort(10, LONG);
        Effort share = whole.share(0.5);
        share.share(0.5).spend(1, false);
        assertEquals(4, share.work(), 1e-12);
        assertEquals(9, whole.work(), 1e-12);
    }

    @Test
    @DisplayName("hand calculation: a quarter of 10 is 2.5; once 4 are spent, a quarter of what is left is 1.5")
    void aShareIsOneOfWhatIsLeft() {
        Effort whole = new Effort(10, LONG);
        assertEquals(2.5, whole.share(0.25).work(), 1e-12);
        whole.spend(4, false);
        assertEquals(1.5, whole.share(0.25).work(), 1e-12);
    }

    @Test
    @DisplayName("hand calculation: 2 % of 10 is 0.2")
    void itIsSpentOnceTwoPercentAreLeft() {
        Effort effort = new Effort(10, LONG);
        effort.spend(9.7, false);
        assertFalse(effort.isSpent());
        effort.spend(0.2, false);
        assertTrue(effort.isSpent());
        assertFalse(effort.endedByClock());
    }

    @Test
    void aShareIsSpentByItself() {
        Effort whole = new Effort(10, LONG);
        Effort share = whole.share(0.1);
        share.spend(1, false);
        assertTrue(share.isSpent());
        assertFalse(whole.isSpent());
    }

    @Test
    void aSearchThatTheClockEndedIsNotedInTheWhole() {
        Effort whole = new Effort(10, LONG);
        whole.share(0.5).share(0.5).spend(1, true);
        assertTrue(whole.endedByClock());
    }

    @Test
    void theClockOfOneShareIsNotNotedInAnother() {
        Effort whole = new Effort(10, LONG);
        Effort other = whole.share(0.5);
        whole.share(0.5).spend(1, true);
        assertFalse(other.endedByClock());
    }

    @Test
    void withoutTimeItIsSpentByTheClock() {
        Effort effort = new Effort(10, 0);
        assertEquals(0, effort.seconds());
        assertTrue(effort.isSpent());
        assertTrue(effort.endedByClock());
    }

    @Test
    void theTimeOfAShareIsThatOfTheWhole() {
        Effort whole = new Effort(10, 0);
        assertTrue(whole.share(0.5).isSpent());
        assertTrue(whole.endedByClock());
    }

    @Test
    void withoutWorkItIsNotTheClockThatEndedIt() {
        Effort effort = new Effort(0, 0);
        assertTrue(effort.isSpent());
        assertFalse(effort.endedByClock());
    }

    @Test
    void aRequestSaysHowMuchThereIs() {
        Effort effort = Effort.of(new SearchRequest(3.0, 60.0), 2);
        assertEquals(6, effort.work(), 1e-12);
        assertTrue(effort.seconds() > 50 && effort.seconds() <= 60);
        assertEquals(3, Effort.of(new SearchRequest(3.0, 60.0)).work(), 1e-12);
    }
}
