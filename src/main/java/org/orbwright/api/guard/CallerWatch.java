package org.orbwright.api.guard;

import io.vertx.ext.web.RoutingContext;

/**
 * Interrupts the thread that works for a caller when that caller leaves: a search that nobody waits for would keep one
 * of the few places for long work, and a processor, to its end. Threads go on to the next request afterwards, so that
 * none is interrupted once its work has ended, and none keeps the mark of an interrupt.
 *
 * <p>An end handler of the exchange tells of a broken connection as well as of a stream that is reset, and stands
 * beside the framework's own handlers; a close handler of the response would be replaced by whoever sets the next one.
 */
final class CallerWatch {
    private Thread worker = Thread.currentThread();
    private boolean left;

    /** Watches the caller while this thread works for him. */
    static CallerWatch begin(RoutingContext exchange) {
        CallerWatch watch = new CallerWatch();
        exchange.addEndHandler(end -> watch.callerLeft());
        // Who has left before is not told of by the handler. Connections close first and tell afterwards, so that
        // nobody leaves unseen between the two lines.
        if (exchange.response().closed()) {
            watch.callerLeft();
        }
        return watch;
    }

    /** Interrupts the work, unless it has ended. */
    synchronized void callerLeft() {
        if (worker != null) {
            left = true;
            worker.interrupt();
        }
    }

    /** Whether the caller left before the work had ended. */
    synchronized boolean hasLeft() {
        return left;
    }

    /** Ends the watch; has to be called by the thread that worked. */
    synchronized void end() {
        worker = null;
        Thread.interrupted();
    }
}
