package org.orbwright.api;

import io.quarkus.vertx.http.runtime.CurrentVertxRequest;
import jakarta.annotation.Priority;
import jakarta.interceptor.AroundInvoke;
import jakarta.interceptor.Interceptor;
import jakarta.interceptor.InvocationContext;
import java.util.List;

/**
 * Lets only so many heavy requests work at once; a few more wait a little, and the others are sent away to come again.
 * Small requests are then answered whatever else is going on. A place is taken when the request has been read and is
 * given back when the answer has been written, or the caller is gone.
 */
@Heavy
@Interceptor
@Priority(Interceptor.Priority.APPLICATION)
public class Bulkhead {
    private final HeavyPlaces places;
    private final CurrentVertxRequest current;

    Bulkhead(HeavyPlaces places, CurrentVertxRequest current) {
        this.places = places;
        this.current = current;
    }

    @AroundInvoke
    Object take(InvocationContext call) throws Exception {
        if (!places.take()) {
            String detail = "All " + places.most() + " places for long work are taken; ask again in a second.";
            throw new RequestException(ProblemKind.BUSY, detail, List.of());
        }
        current.getCurrent().addEndHandler(ended -> places.release());
        return call.proceed();
    }
}
