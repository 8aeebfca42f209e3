package org.orbwright.api;

import jakarta.annotation.Priority;
import jakarta.interceptor.AroundInvoke;
import jakarta.interceptor.Interceptor;
import jakarta.interceptor.InvocationContext;

/**
 * Lets only so many heavy requests work at once; a few more wait a little, and the others are sent away to come again.
 * Small requests are then answered whatever else is going on. A place is taken when the request has been read, and is
 * given back when the work is done, whether or not the caller is still there.
 */
@Heavy
@Interceptor
@Priority(Interceptor.Priority.APPLICATION)
public class Bulkhead {
    private final HeavyPlaces places;

    Bulkhead(HeavyPlaces places) {
        this.places = places;
    }

    @AroundInvoke
    Object take(InvocationContext call) throws Exception {
        Places.Place place = places.work().take();
        try {
            return call.proceed();
        } finally {
            place.close();
        }
    }
}
