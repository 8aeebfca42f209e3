package org.orbwright.api.guard;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.vertx.core.AsyncResult;
import io.vertx.core.Future;
import io.vertx.core.Handler;
import io.vertx.core.http.HttpServerResponse;
import io.vertx.ext.web.RoutingContext;
import java.lang.reflect.Proxy;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** A thread is interrupted for a caller only while it works for him. */
class CallerWatchTest {
    private final List<Handler<AsyncResult<Void>>> endHandlers = new ArrayList<>();

    @AfterEach
    void clearInterrupt() {
        Thread.interrupted();
    }

    @Test
    void interruptsTheWorkOfACallerThatLeaves() {
        CallerWatch watch = CallerWatch.begin(exchange(false));
        assertFalse(Thread.currentThread().isInterrupted());
        assertFalse(watch.hasLeft());
        end();
        assertTrue(Thread.currentThread().isInterrupted());
        watch.end();
        assertTrue(watch.hasLeft());
        assertFalse(Thread.currentThread().isInterrupted(), "the thread goes on to the next request");
    }

    @Test
    void interruptsTheWorkOfACallerThatLeftBefore() {
        CallerWatch watch = CallerWatch.begin(exchange(true));
        assertTrue(Thread.currentThread().isInterrupted());
        watch.end();
        assertFalse(Thread.currentThread().isInterrupted());
    }

    @Test
    void leavesTheThreadAloneOnceTheWorkHasEnded() {
        CallerWatch watch = CallerWatch.begin(exchange(false));
        watch.end();
        end();
        assertFalse(Thread.currentThread().isInterrupted());
        assertFalse(watch.hasLeft());
    }

    @Test
    void leavesTheNextRequestOfTheThreadAlone() {
        CallerWatch.begin(exchange(false)).end();
        CallerWatch next = CallerWatch.begin(exchange(false));
        endHandlers.get(0).handle(Future.failedFuture("Connection closed"));
        assertFalse(Thread.currentThread().isInterrupted());
        next.end();
    }

    private void end() {
        endHandlers.forEach(handler -> handler.handle(Future.failedFuture("Connection closed")));
    }

    /** An exchange that keeps its end handlers here, and whose connection is closed or not. */
    private RoutingContext exchange(boolean closed) {
        HttpServerResponse response = fake(HttpServerResponse.class, Map.of("closed", arguments -> closed));
        return fake(
                RoutingContext.class,
                Map.of("response", arguments -> response, "addEndHandler", arguments -> keep(arguments[0])));
    }

    @SuppressWarnings("unchecked")
    private int keep(Object handler) {
        endHandlers.add((Handler<AsyncResult<Void>>) handler);
        return endHandlers.size();
    }

    private static <T> T fake(Class<T> type, Map<String, Function<Object[], Object>> methods) {
        return type.cast(Proxy.newProxyInstance(
                type.getClassLoader(),
                new Class<?>[] {type},
                (self, method, arguments) -> methods.get(method.getName()).apply(arguments)));
    }
}
