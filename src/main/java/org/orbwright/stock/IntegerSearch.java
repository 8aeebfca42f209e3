package org.orbwright.stock;

import com.google.ortools.Loader;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverStatus;
import java.util.concurrent.Callable;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.concurrent.locks.LockSupport;

/**
 * One search of the CP-SAT solver, in one thread and from a fixed seed, so that the same question always has the same
 * answer unless the clock ends it. A thread that waits for a search can be interrupted; that ends the search too.
 */
final class IntegerSearch {
    /** A search with less work than this would not even look at its problem. */
    private static final double LEAST_WORK = 1e-3;

    /** Bounds of whole numbers come as doubles. */
    private static final double ROUNDING = 1e-6;

    /** Seconds that a search may go on beyond its time. */
    private static final double GRACE = 0.3;
    /** A search takes a processor, and memory beside the heap, some 250 MB for large racks. */
    private static final Semaphore PROCESSORS =
            new Semaphore(Runtime.getRuntime().availableProcessors(), true);
    /** Nanoseconds between two calls to stop. */
    private static final long STEP = 1_000_000;

    private IntegerSearch() {}

    /** The native library, which is loaded when the first search is made: a service that plans no stock never does. */
    private static final class Native {
        static final ExecutorService THREADS = Executors.newCachedThreadPool(task -> {
            Thread thread = new Thread(task, "stock-search");
            thread.setDaemon(true);
            return thread;
        });

        static {
            Loader.loadNativeLibraries();
        }

        private Native() {}

        static CpModel model() {
            return new CpModel();
        }
    }

    /** An empty model. Its variables need the native library, which is loaded first. */
    static CpModel model() {
        return Native.model();
    }

    /**
     * What came of a search. The solver holds the best solution, if one was found; it is null if the search did not end
     * in time. A search that ended found the best solution, or that there is none.
     */
    record Outcome(CpSolver solver, boolean found, boolean ended) {
        /** What no solution has less of; 0 if nothing is known, or if there is no solution. */
        long bound() {
            if (solver == null || (ended && !found)) {
                return 0;
            }
            return (long) Math.ceil(solver.bestObjectiveBound() - ROUNDING);
        }
    }

    /**
     * Searches for the best solution of a model, when there is a processor for it.
     *
     * @throws CancellationException if the thread is interrupted
     */
    static Outcome solve(CpModel model, Effort effort) {
        try {
            return PROCESSORS.tryAcquire(Math.round(effort.seconds() * 1e9), TimeUnit.NANOSECONDS)
                    ? solve(model, effort, PROCESSORS::release)
                    : late(effort);
        } catch (InterruptedException interrupted) {
            throw cancelled();
        }
    }

    /**
     * The same for a model that takes hardly any work, which waits for nothing.
     *
     * @throws CancellationException if the thread is interrupted
     */
    static Outcome solveNow(CpModel model, Effort effort) {
        return solve(model, effort, () -> {});
    }

    private static Outcome solve(CpModel model, Effort effort, Runnable atEnd) {
        CpSolver solver = new CpSolver();
        solver.getParameters()
                .setNumWorkers(1)
                .setRandomSeed(1)
                .setCatchSigintSignal(false)
                .setMaxDeterministicTime(Math.max(LEAST_WORK, effort.work()))
                .setMaxTimeInSeconds(effort.seconds());
        Future<CpSolverStatus> search = submit(
                () -> {
                    try {
                        return solver.solve(model);
                    } finally {
                        atEnd.run();
                    }
                },
                atEnd);
        CpSolverStatus status = await(search, solver, effort.seconds() + GRACE);
        if (status == null) {
            return late(effort);
        }
        boolean ended = status == CpSolverStatus.OPTIMAL || status == CpSolverStatus.INFEASIBLE;
        effort.spend(solver.response().getDeterministicTime(), !ended && effort.seconds() == 0);
        boolean found = status == CpSolverStatus.OPTIMAL || status == CpSolverStatus.FEASIBLE;
        return new Outcome(solver, found, ended);
    }

    private static Future<CpSolverStatus> submit(Callable<CpSolverStatus> search, Runnable ifNot) {
        try {
            return Native.THREADS.submit(search);
        } catch (Error | RuntimeException noThread) {
            ifNot.run();
            throw noThread;
        }
    }

    private static Outcome late(Effort effort) {
        effort.spend(0, true);
        return new Outcome(null, false, false);
    }

    /** Waits for a search; one that does not end in time is stopped and left alone, as it may take its time to stop. */
    private static CpSolverStatus await(Future<CpSolverStatus> search, CpSolver solver, double seconds) {
        try {
            return search.get(Math.round(seconds * 1e9), TimeUnit.NANOSECONDS);
        } catch (TimeoutException late) {
            Native.THREADS.execute(() -> stop(search, solver));
            return null;
        } catch (InterruptedException interrupted) {
            stop(search, solver);
            throw cancelled();
        } catch (ExecutionException failed) {
            throw new IllegalStateException("The search failed.", failed.getCause());
        }
    }

    /** Tells a search to stop until it has: one that has not begun yet does not hear it. */
    private static void stop(Future<CpSolverStatus> search, CpSolver solver) {
        while (!search.isDone()) {
            solver.stopSearch();
            LockSupport.parkNanos(STEP);
            Thread.interrupted();
        }
    }

    private static CancellationException cancelled() {
        Thread.currentThread().interrupt();
        return new CancellationException("The search was stopped.");
    }
}
