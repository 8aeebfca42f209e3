package org.orbwright.api.guard;

import io.vertx.core.http.HttpClosedException;
import io.vertx.ext.web.RoutingContext;
import jakarta.annotation.Priority;
import jakarta.interceptor.AroundInvoke;
import jakarta.interceptor.Interceptor;
import jakarta.interceptor.InvocationContext;
import java.util.concurrent.CancellationException;

/**
 * Lets only so many heavy requests work at once; a few more wait a little, and the others are sent away to come again.
 * Small requests are then answered whatever else is going on. A permit is taken when the request has been read, and is
 * given back when the work has ended. A caller that leaves ends it early ({@link CallerWatch}), but gives the permit
 * back no sooner than the work stands still.
 */
@Heavy
@Interceptor
@Priority(Interceptor.Priority.APPLICATION)
public class Bulkhead {
    private final WorkPermits permits;
    private final RoutingContext exchange;

    Bulkhead(WorkPermits permits, RoutingContext exchange) {
        this.permits = permits;
        this.exchange = exchange;
    }

    @AroundInvoke
    Object take(InvocationContext call) throws Exception {
        CallerWatch watch = CallerWatch.begin(exchange);
        Object answer = null;
        try {
            answer = inPlace(call);
        } catch (CancellationException e) {
            if (!watch.hasLeft()) {
                throw e;
            }
        } finally {
            watch.end();
        }
        if (watch.hasLeft()) {
            throw new HttpClosedException("the caller left before the work was done");
        }
        return answer;
    }

    private Object inPlace(InvocationContext call) throws Exception {
        Permits.Permit permit = permits.work().take(AccessGate.callerOf(exchange));
        try {
            return call.proceed();
        } finally {
            permit.close();
        }
    }
}
