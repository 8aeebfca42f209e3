package org.orbwright.api;

import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import org.eclipse.microprofile.openapi.annotations.Operation;

/** Long work that ends when a test lets it, in tests only. */
@Path("/slow")
@Produces(MediaType.TEXT_PLAIN)
@Heavy
public class SlowResource {
    /** Released once by the work that has begun. */
    static final Semaphore BEGUN = new Semaphore(0);

    /** Released once by the test for each work that may end. */
    static final Semaphore MAY_END = new Semaphore(0);

    @GET
    @Operation(hidden = true)
    public String work() throws InterruptedException {
        BEGUN.release();
        return MAY_END.tryAcquire(1, TimeUnit.MINUTES) ? "done" : "forgotten";
    }
}
