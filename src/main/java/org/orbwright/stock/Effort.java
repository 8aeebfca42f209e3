package org.orbwright.stock;

import org.orbwright.stock.StockRequest.SearchRequest;

/**
 * What is left of the work and of the time that the searches of one request may take. Work is counted by the solver in
 * the same way on every machine and under every load, so that a search that is ended by it always ends at the same
 * plan; the time is the outer limit.
 */
final class Effort {
    /** Less than this share of the work is not worth a search any more. */
    private static final double LITTLE = 0.02;

    private final long end;
    private final Effort whole;
    private final double all;
    private double work;
    private boolean byClock;

    /** Work in units of the solver, some seconds of an idle machine each, and time in nanoseconds from now on. */
    Effort(double work, long nanoseconds) {
        this(work, System.nanoTime() + nanoseconds, null);
    }

    /** What a request allows. */
    static Effort of(SearchRequest search) {
        return of(search, 1);
    }

    /** So many times the work that a request allows, in the same time. */
    static Effort of(SearchRequest search, double times) {
        return new Effort(times * search.work(), Math.round(search.seconds() * 1e9));
    }

    private Effort(double work, long end, Effort whole) {
        this.all = work;
        this.work = work;
        this.end = end;
        this.whole = whole;
    }

    /** Work that is left. */
    double work() {
        return work;
    }

    /** Seconds that are left, 0 if there are none. */
    double seconds() {
        return Math.max(0, (end - System.nanoTime()) / 1e9);
    }

    /** Whether there is nothing left of the one or the other; notes it if that is the time. */
    boolean isSpent() {
        boolean late = seconds() == 0 && work > 0;
        spend(0, late);
        return work <= LITTLE * all || late;
    }

    /** Whether the time ended a search, so that another machine might come to another plan. */
    boolean endedByClock() {
        return byClock;
    }

    /** Takes off the work of a search. */
    void spend(double done, boolean endedByClock) {
        work -= done;
        byClock |= endedByClock;
        if (whole != null) {
            whole.spend(done, endedByClock);
        }
    }

    /** The same, or so much work if that is more. */
    Effort atLeast(double least) {
        return work >= least ? this : new Effort(least, end, whole);
    }

    /** A share of the work that is left, and all of the time; what it spends is spent here too. */
    Effort share(double share) {
        return new Effort(work * share, end, this);
    }
}
