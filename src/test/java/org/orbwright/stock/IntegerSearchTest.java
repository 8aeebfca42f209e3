package org.orbwright.stock;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import java.util.Arrays;
import java.util.Random;
import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicReference;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.parallel.Isolated;

@Isolated("looks at the clock, and at the threads of all searches")
class IntegerSearchTest {
    private static final long LONG = 600_000_000_000L;

    private static Effort ample() {
        return new Effort(1000, LONG);
    }

    /** A market split: equations over zeros and ones that take all solvers far more than minutes. */
    private static CpModel hard() {
        CpModel model = IntegerSearch.model();
        Random random = new Random(1);
        IntVar[] take = new IntVar[60];
        Arrays.setAll(take, i -> model.newIntVar(0, 1, "take"));
        LinearExprBuilder off = LinearExpr.newBuilder();
        for (int row = 0; row < 7; row++) {
            LinearExprBuilder sum = LinearExpr.newBuilder();
            long all = 0;
            for (IntVar one : take) {
                long share = random.nextInt(10_000);
                all += share;
                sum.addTerm(one, share);
            }
            IntVar more = model.newIntVar(0, all, "more");
            IntVar less = model.newIntVar(0, all, "less");
            sum.addTerm(more, -1).addTerm(less, 1);
            model.addEquality(sum.build(), all / 2);
            off.addTerm(more, 1).addTerm(less, 1);
        }
        model.minimize(off.build());
        return model;
    }

    /** A multiple of 3, up to 9, as small as can be between two limits. */
    private static CpModel easy(long least, long most) {
        CpModel model = IntegerSearch.model();
        IntVar three = model.newIntVar(0, 3, "three");
        LinearExpr sum = LinearExpr.newBuilder().addTerm(three, 3).build();
        model.addGreaterOrEqual(sum, least);
        model.addLessOrEqual(sum, most);
        model.minimize(sum);
        return model;
    }

    @Test
    void theLeastIsFoundAndProved() {
        IntegerSearch.Outcome outcome = IntegerSearch.solve(easy(4, 9), ample());
        assertTrue(outcome.found() && outcome.ended());
        assertEquals(6, outcome.bound());
    }

    @Test
    void withoutSolutionNoBoundIsKnown() {
        IntegerSearch.Outcome outcome = IntegerSearch.solve(easy(4, 5), ample());
        assertFalse(outcome.found());
        assertTrue(outcome.ended());
        assertEquals(0, outcome.bound());
    }

    @Test
    void theWorkOfASearchIsSpent() {
        Effort effort = new Effort(0.2, LONG);
        IntegerSearch.Outcome outcome = IntegerSearch.solve(hard(), effort);
        assertFalse(outcome.ended());
        assertTrue(effort.isSpent());
        assertFalse(effort.endedByClock());
    }

    @Test
    void equalSearchesComeToTheSameBound() {
        assertEquals(
                IntegerSearch.solve(hard(), new Effort(0.2, LONG)).bound(),
                IntegerSearch.solve(hard(), new Effort(0.2, LONG)).bound());
    }

    @Test
    void aSearchThatTheClockEndsSaysSo() {
        Effort effort = new Effort(1000, 200_000_000);
        assertFalse(IntegerSearch.solve(hard(), effort).ended());
        assertTrue(effort.endedByClock());
    }

    @Test
    @Timeout(60)
    void anInterruptedThreadEndsItsSearch() throws InterruptedException {
        AtomicReference<Throwable> thrown = new AtomicReference<>();
        Thread caller =
                new Thread(() -> thrown.set(assertThrows(Throwable.class, () -> IntegerSearch.solve(hard(), ample()))));
        caller.start();
        while (searches() == 0) {
            Thread.sleep(10);
        }
        Thread.sleep(300);
        caller.interrupt();
        caller.join();
        assertInstanceOf(CancellationException.class, thrown.get());
        awaitNoSearch();
    }

    /** The interrupt comes before the solver has begun. */
    @Test
    @Timeout(60)
    void aThreadThatIsInterruptedAlreadyBeginsNoLongSearch() throws InterruptedException {
        CpModel model = hard();
        Thread.currentThread().interrupt();
        assertThrows(CancellationException.class, () -> IntegerSearch.solve(model, ample()));
        assertTrue(Thread.interrupted(), "the thread stays interrupted");
        awaitNoSearch();
    }

    private static void awaitNoSearch() throws InterruptedException {
        int quiet = 0;
        while (quiet < 20) {
            quiet = searches() == 0 ? quiet + 1 : 0;
            Thread.sleep(10);
        }
    }

    /** Threads that are in the solver. */
    private static long searches() {
        return Thread.getAllStackTraces().values().stream()
                .filter(stack -> Arrays.stream(stack)
                        .anyMatch(call -> call.getClassName().endsWith(".CpSolver")
                                && call.getMethodName().equals("solve")))
                .count();
    }
}
