package org.orbwright.api;

import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.matchesPattern;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.node.ObjectNode;
import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import io.restassured.http.ContentType;
import io.restassured.response.ValidatableResponse;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadInfo;
import java.lang.management.ThreadMXBean;
import java.net.Socket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.orbwright.api.wire.Problem;
import org.orbwright.fixture.Stocks;

/** One place for long work, and what it keeps away from everybody else. */
@QuarkusTest
@TestProfile(GuardedTest.Guarded.class)
class LongWorkTest {
    private static final String DESIGN = Posted.twoSpheres().toString();

    @TestHTTPResource("/")
    URI address;

    @BeforeEach
    void reset() {
        SlowResource.reset();
    }

    /** Long work holds the only place: small requests go on, another long one is sent away. */
    @Test
    void longWorkWaitsAndIsSentAway() throws Exception {
        try (Socket socket = slowWork()) {
            posted("/v1/sheet").statusCode(200);
            posted("/v1/drawings/panel")
                    .statusCode(503)
                    .header("Retry-After", matchesPattern("[5-9]|1[0-9]"))
                    .body("detail", matchesPattern("All 1 places for long work are taken\\. Ask again in [0-9]+ s\\."));
            SlowResource.MAY_END.release();
            assertTrue(lines(socket).readLine().contains("200"));
        }
        posted("/v1/drawings/panel").statusCode(200);
    }

    /** Work that nobody waits for is interrupted and gives its place back; nobody has to look at the log. */
    @Test
    void longWorkEndsWhenItsCallerLeaves() throws Exception {
        try (ProblemLog log = new ProblemLog()) {
            slowWork().close();
            assertTrue(SlowResource.INTERRUPTED.tryAcquire(20, TimeUnit.SECONDS), "the work goes on");
            posted("/v1/drawings/panel").statusCode(200);
            assertEquals(List.of(), log.messages());
        }
    }

    /** A search for a plan is such work: its solver stands still when its caller has left, and its place is free. */
    @Test
    void aHardSearchEndsWhenItsCallerLeaves() throws Exception {
        byte[] body = hardSearch().toString().getBytes(StandardCharsets.UTF_8);
        long before = searched();
        try (Socket socket = new Socket(address.getHost(), address.getPort())) {
            socket.getOutputStream()
                    .write(("POST /v1/stock HTTP/1.1\r\nHost: localhost\r\nX-API-Key: " + GuardedTest.KEY
                                    + "\r\nContent-Type: application/json\r\nContent-Length: " + body.length
                                    + "\r\n\r\n")
                            .getBytes(StandardCharsets.US_ASCII));
            socket.getOutputStream().write(body);
            for (int i = 0; i < 400 && searched() < before + 300_000_000; i++) {
                Thread.sleep(50);
            }
            assertTrue(searched() >= before + 300_000_000, "the search has begun");
            posted("/v1/drawings/panel").statusCode(503);
        }
        posted("/v1/drawings/panel").statusCode(200);
        long after = searched();
        Thread.sleep(1000);
        assertTrue(searched() - after < 100_000_000, "the solver goes on");
    }

    /** Two lanterns of offcuts with up to two seams in a strip: far more work than a minute holds. */
    private static ObjectNode hardSearch() {
        ObjectNode request = Stocks.example();
        request.remove("offers");
        Stocks.boards(
                request,
                "[{'species':'black walnut','length':510,'width':97,'thickness':38,'count':7},"
                        + "{'species':'black walnut','length':830,'width':140,'thickness':32,'count':3},"
                        + "{'species':'sugar maple','length':470,'width':88,'thickness':20,'count':6},"
                        + "{'species':'black cherry','length':640,'width':71,'thickness':35,'count':5}]");
        ((ObjectNode) request.path("seams")).put("most", 2);
        request.set("search", Stocks.read("{'work':100,'seconds':60}"));
        return Stocks.posted(request);
    }

    /** Processor time of all searches that still have a thread, in nanoseconds. */
    private static long searched() {
        ThreadMXBean threads = ManagementFactory.getThreadMXBean();
        long sum = 0;
        for (ThreadInfo thread : threads.getThreadInfo(threads.getAllThreadIds())) {
            if (thread != null && thread.getThreadName().equals("stock-search")) {
                sum += Math.max(0, threads.getThreadCpuTime(thread.getThreadId()));
            }
        }
        return sum;
    }

    /** A stream that is reset is a caller that leaves; others on its connection go on (RFC 9113, 6.4). */
    @Test
    void longWorkEndsWhenItsStreamIsReset() throws Exception {
        HttpClient client =
                HttpClient.newBuilder().version(HttpClient.Version.HTTP_2).build();
        HttpResponse<String> before = client.send(keyed("/v1/solids"), HttpResponse.BodyHandlers.ofString());
        assertEquals(HttpClient.Version.HTTP_2, before.version());
        Future<?> work = client.sendAsync(keyed("/slow"), HttpResponse.BodyHandlers.discarding());
        assertTrue(SlowResource.BEGUN.tryAcquire(20, TimeUnit.SECONDS));
        work.cancel(true);
        assertTrue(SlowResource.INTERRUPTED.tryAcquire(20, TimeUnit.SECONDS), "the work goes on");
        assertEquals(
                200,
                client.send(keyed("/v1/solids"), HttpResponse.BodyHandlers.ofString())
                        .statusCode());
        posted("/v1/drawings/panel").statusCode(200);
    }

    /** One caller after the other leaves, and none who stays is interrupted for him, whatever thread works for him. */
    @Test
    void callersThatStayAreNotInterrupted() throws Exception {
        for (int i = 0; i < 20; i++) {
            slowWork().close();
            try (Socket staying = slowWork()) {
                SlowResource.MAY_END.release();
                assertEquals("HTTP/1.1 200 OK", lines(staying).readLine());
            }
        }
        assertEquals(20, SlowResource.INTERRUPTED.availablePermits());
    }

    /** Who leaves while he waits for a place takes none: the next caller would wait for his work in vain. */
    @Test
    void whoLeavesWhileWaitingTakesNoPlace() throws Exception {
        try (Socket working = slowWork()) {
            try (Socket waiting = new Socket(address.getHost(), address.getPort())) {
                waiting.getOutputStream().write(get("/slow"));
                Thread.sleep(300);
            }
            SlowResource.MAY_END.release();
            assertEquals("HTTP/1.1 200 OK", lines(working).readLine());
        }
        posted("/v1/drawings/panel").statusCode(200);
    }

    /** An interrupt that comes from elsewhere, as at the end of the service: the caller is still there, and is told. */
    @Test
    void interruptedWorkIsAnsweredAsBusy() throws Exception {
        try (Socket socket = slowWork();
                ProblemLog log = new ProblemLog()) {
            SlowResource.worker.interrupt();
            BufferedReader answer = lines(socket);
            assertEquals("HTTP/1.1 503 Service Unavailable", answer.readLine());
            List<String> head =
                    answer.lines().takeWhile(line -> !line.isEmpty()).toList();
            assertTrue(head.contains("Retry-After: 1"), head.toString());
            assertTrue(
                    head.stream().anyMatch(line -> line.equalsIgnoreCase("Content-Type: " + Problem.MEDIA_TYPE)),
                    head.toString());
            assertEquals(List.of(), log.messages());
        }
        posted("/v1/drawings/panel").statusCode(200);
    }

    /** Batches wait for their callers most of the time, and have places of their own, four for each of long work. */
    @Test
    void openBatchesLeaveLongWorkAlone() throws Exception {
        List<Socket> sockets = new ArrayList<>();
        List<Chunked> batches = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            Socket socket = new Socket(address.getHost(), address.getPort());
            sockets.add(socket);
            batches.add(GuardedTest.keyed(socket, "/v1/batch", "application/x-ndjson"));
            batches.get(i).send("\n" + DESIGN.replace("\n", " ") + "\n");
            assertTrue(lines(socket).readLine().contains("200"));
        }
        posted("/v1/drawings/panel").statusCode(200);
        given().header("X-API-Key", GuardedTest.KEY)
                .contentType("application/x-ndjson")
                .body("\n".getBytes(StandardCharsets.US_ASCII))
                .post("/v1/batch")
                .then()
                .statusCode(503)
                .contentType(Problem.MEDIA_TYPE)
                .header("Retry-After", matchesPattern("[0-9]+"))
                .body("detail", containsString("You hold 4 of the 4 places for answers of many lines"));
        for (int i = 0; i < 4; i++) {
            batches.get(i).end();
            sockets.get(i).close();
        }
        given().header("X-API-Key", GuardedTest.KEY)
                .contentType("application/x-ndjson")
                .body("\n".getBytes(StandardCharsets.US_ASCII))
                .post("/v1/batch")
                .then()
                .statusCode(200);
    }

    /**
     * A caller that pauses longer than the server waits is told so; that is no fault of the service. The server cuts
     * the connection at that, and may be faster than the last line: then the answer has no end and passes for no whole
     * one.
     */
    @Test
    void aBatchThatPausesTooLongEndsWithAProblemOrNotAtAll() throws Exception {
        try (Socket socket = new Socket(address.getHost(), address.getPort())) {
            Chunked batch = GuardedTest.keyed(socket, "/v1/batch?answer=angles", "application/x-ndjson");
            batch.send(DESIGN.replace("\n", " ") + "\n");
            List<String> answer = lines(socket).lines().toList();
            assertTrue(answer.stream().anyMatch(line -> line.startsWith("{\"line\":1,\"angles\":")), answer.toString());
            boolean told = answer.stream()
                    .anyMatch(line -> line.startsWith("{\"line\":2,\"problem\":{") && line.contains("body-too-slow"));
            assertTrue(told || !answer.contains("0"), answer.toString());
        }
    }

    /** Empty lines keep a connection open, but not a place: nobody else could else have it. */
    @Test
    void aBatchOfEmptyLinesEnds() throws Exception {
        try (Socket socket = new Socket(address.getHost(), address.getPort())) {
            socket.setSoTimeout(20_000);
            Chunked batch = GuardedTest.keyed(socket, "/v1/batch?answer=angles", "application/x-ndjson");
            batch.send(DESIGN.replace("\n", " ") + "\n");
            BufferedReader in = lines(socket);
            for (int i = 0; i < 30 && !socket.isClosed(); i++) {
                batch.send("\n");
                Thread.sleep(300);
            }
            batch.end();
            String line = in.readLine();
            assertTrue(line.contains("200"), line);
            while (!line.contains("\"problem\":{")) {
                line = in.readLine();
            }
            assertTrue(line.contains("No line was complete after 4 s, empty ones aside."), line);
        }
    }

    private Socket slowWork() throws Exception {
        Socket socket = new Socket(address.getHost(), address.getPort());
        socket.getOutputStream().write(get("/slow"));
        assertTrue(SlowResource.BEGUN.tryAcquire(10, TimeUnit.SECONDS));
        return socket;
    }

    private HttpRequest keyed(String path) {
        return HttpRequest.newBuilder(address.resolve(path))
                .header("X-API-Key", GuardedTest.KEY)
                .build();
    }

    private static byte[] get(String path) {
        return ("GET " + path + " HTTP/1.1\r\nHost: localhost\r\nX-API-Key: " + GuardedTest.KEY + "\r\n\r\n")
                .getBytes(StandardCharsets.US_ASCII);
    }

    private static BufferedReader lines(Socket socket) throws IOException {
        socket.setSoTimeout(20_000);
        return new BufferedReader(new InputStreamReader(socket.getInputStream(), StandardCharsets.UTF_8));
    }

    private static ValidatableResponse posted(String path) {
        return given().header("X-API-Key", GuardedTest.KEY)
                .contentType(ContentType.JSON)
                .body(DESIGN)
                .post(path)
                .then();
    }
}
