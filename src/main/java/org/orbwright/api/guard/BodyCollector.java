package org.orbwright.api.guard;

import io.micrometer.core.instrument.MeterRegistry;
import io.quarkus.vertx.http.runtime.filters.Filters;
import io.vertx.core.Context;
import io.vertx.core.buffer.Buffer;
import io.vertx.core.http.HttpHeaders;
import io.vertx.core.http.HttpMethod;
import io.vertx.core.http.HttpServerRequest;
import io.vertx.core.http.HttpVersion;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.event.Observes;
import jakarta.inject.Singleton;
import java.time.Duration;
import java.util.List;
import org.orbwright.api.wire.Limits;
import org.orbwright.api.wire.Problem;
import org.orbwright.api.wire.ProblemKind;
import org.orbwright.api.wire.RequestReader;

/**
 * Collects the whole document of a request before anybody works on it, so that a caller who sends slowly holds no
 * thread. A body that is too large, or not complete in time, is refused. Where too many are unfinished, the oldest of
 * them is sent away.
 */
@Singleton
public class BodyCollector {
    /** After everything that may refuse a request without its body. */
    private static final int LAST = 50;

    private static final int MOST_UNFINISHED = 256;
    /** What is read from a body takes several times its bytes. */
    private static final int SHARE_OF_HEAP = 8;

    private static final int LARGEST_HELD = 2;

    /**
     * Larger documents may take long to read and to check; they must not hold up what shares their connection's thread.
     */
    private static final int SMALL_BYTES = 16 * 1024;

    /** Under which the exchange holds the bytes. */
    static final String BYTES = "orbwright.body";

    private final Limits limits;
    private final Endpoints endpoints;
    private final UnfinishedBodies<Incoming> bodies;

    BodyCollector(Limits limits, Endpoints endpoints, MeterRegistry meters) {
        this.limits = limits;
        this.endpoints = endpoints;
        long heap = Runtime.getRuntime().maxMemory() / SHARE_OF_HEAP;
        bodies = new UnfinishedBodies<>(MOST_UNFINISHED, Math.max(heap, (long) LARGEST_HELD * limits.body()));
        meters.gauge("orbwright.bodies.unfinished", bodies, UnfinishedBodies::count);
    }

    void register(@Observes Filters filters) {
        filters.register(this::collect, LAST);
    }

    private void collect(RoutingContext exchange) {
        HttpServerRequest request = exchange.request();
        if (!request.method().equals(HttpMethod.POST) || !endpoints.takesDocument(exchange.normalizedPath())) {
            exchange.next();
            return;
        }
        if (request.version() == HttpVersion.HTTP_2 && length(request) < 0) {
            // The framework takes no HTTP/2 request whose end has been seen, and only its length tells the end before.
            String detail = "Over HTTP/2 the body has to come with the header Content-Length.";
            EarlyRefusal.send(request, Problem.of(ProblemKind.LENGTH_REQUIRED, detail, request.path(), List.of()));
            return;
        }
        if (HttpHeaders.CONTINUE.toString().equalsIgnoreCase(request.getHeader(HttpHeaders.EXPECT))) {
            exchange.response().writeContinue();
        }
        new Incoming(exchange).begin();
    }

    /** As the header says, less than 0 without it. */
    private static long length(HttpServerRequest request) {
        String length = request.getHeader(HttpHeaders.CONTENT_LENGTH);
        return length == null ? -1 : Long.parseLong(length);
    }

    /** One body. All but {@link #makeRoom} is done by the thread of its connection. */
    private final class Incoming {
        private final RoutingContext exchange;
        private final Context connection;
        private final long began = System.nanoTime();
        private final Buffer bytes = Buffer.buffer();
        private final long length;
        private long timer;
        private boolean ended;

        Incoming(RoutingContext exchange) {
            this.exchange = exchange;
            length = length(exchange.request());
            connection = exchange.vertx().getOrCreateContext();
        }

        void begin() {
            bodies.begin(this).forEach(Incoming::makeRoom);
            exchange.addEndHandler(over -> {
                end();
                bodies.forget(this);
            });
            timer = exchange.vertx().setTimer(limits.bodyTime().toMillis(), late -> refuseSlow());
            if (length == 0) {
                complete();
                return;
            }
            exchange.request()
                    .handler(this::add)
                    .endHandler(over -> complete())
                    .exceptionHandler(gone -> end())
                    .resume();
        }

        private void add(Buffer part) {
            if (ended) {
                return;
            }
            if (bytes.length() + part.length() > limits.body()) {
                refuse(
                        ProblemKind.BODY_TOO_LARGE,
                        RequestReader.tooLarge("The body", limits.body()).getMessage());
                return;
            }
            bytes.appendBuffer(part);
            bodies.grow(this, part.length()).forEach(Incoming::makeRoom);
            if (bytes.length() == length) {
                exchange.request().pause();
                complete();
            }
        }

        private void complete() {
            if (!end()) {
                return;
            }
            bodies.complete(this);
            exchange.put(BYTES, bytes.getBytes());
            if (bytes.length() <= SMALL_BYTES) {
                exchange.next();
            } else {
                exchange.vertx()
                        .executeBlocking(
                                () -> {
                                    exchange.next();
                                    return null;
                                },
                                false);
            }
        }

        /** May be called by the thread of another connection. */
        private void makeRoom() {
            connection.runOnContext(now -> {
                long seconds = Duration.ofNanos(System.nanoTime() - began).toSeconds();
                refuse(
                        ProblemKind.BUSY,
                        "Too many bodies are on their way, and this one was not complete after " + seconds
                                + " s. Send the whole document at once.");
            });
        }

        private void refuseSlow() {
            String detail =
                    "The body was not complete after " + limits.bodyTime().toSeconds() + " s.";
            refuse(ProblemKind.BODY_TOO_SLOW, detail);
        }

        private void refuse(ProblemKind kind, String detail) {
            if (end()) {
                HttpServerRequest request = exchange.request();
                EarlyRefusal.send(request, Problem.of(kind, detail, request.path(), List.of()));
            }
        }

        /** Whether the body was still coming in. */
        private boolean end() {
            boolean first = !ended;
            ended = true;
            exchange.vertx().cancelTimer(timer);
            return first;
        }
    }
}
