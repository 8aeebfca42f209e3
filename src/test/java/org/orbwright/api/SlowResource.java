package org.orbwright.api;

import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import java.util.concurrent.CancellationException;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.orbwright.api.guard.Heavy;

/** Long work that ends when a test lets it or when it is interrupted, in tests only. */
@Path("/slow")
@Produces(MediaType.TEXT_PLAIN)
@Heavy
public class SlowResource {
    /** Released once by the work that has begun. */
    static final Semaphore BEGUN = new Semaphore(0);

    /** Released once by the test for each work that may end. */
    static final Semaphore MAY_END = new Semaphore(0);

    /** Released once by each work that was interrupted. */
    static final Semaphore INTERRUPTED = new Semaphore(0);

    /** The thread of the work that began last. */
    static volatile Thread worker;

    @GET
    @Operation(hidden = true)
    public String work() {
        worker = Thread.currentThread();
        BEGUN.release();
        try {
            return MAY_END.tryAcquire(1, TimeUnit.MINUTES) ? "done" : "forgotten";
        } catch (InterruptedException e) {
            INTERRUPTED.release();
            throw new CancellationException();
        }
    }

    /** Forgets what other tests have left. */
    static void reset() {
        BEGUN.drainPermits();
        MAY_END.drainPermits();
        INTERRUPTED.drainPermits();
    }
}
