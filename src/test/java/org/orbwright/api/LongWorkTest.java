package org.orbwright.api;

import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.equalTo;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import io.restassured.http.ContentType;
import io.restassured.response.ValidatableResponse;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.net.Socket;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;

/** One place for long work, and what it keeps away from everybody else. */
@QuarkusTest
@TestProfile(GuardedTest.Guarded.class)
class LongWorkTest {
    private static final String DESIGN = Posted.twoSpheres().toString();

    @TestHTTPResource("/")
    URI address;

    /** Long work holds the only place: small requests go on, another long one is sent away. */
    @Test
    void longWorkWaitsAndIsSentAway() throws Exception {
        try (Socket socket = slowWork()) {
            posted("/v1/sheet").statusCode(200);
            posted("/v1/drawings/panel")
                    .statusCode(503)
                    .header("Retry-After", "1")
                    .body("detail", equalTo("All 1 places for long work are taken; ask again in a second."));
            SlowResource.MAY_END.release();
            assertTrue(lines(socket).readLine().contains("200"));
        }
        posted("/v1/drawings/panel").statusCode(200);
    }

    /** Who leaves keeps the place until the work is done, and who leaves while waiting takes none with him. */
    @Test
    void callersThatLeaveTakeNoPlaceWithThem() throws Exception {
        slowWork().close();
        try (Socket waiting = new Socket(address.getHost(), address.getPort())) {
            waiting.getOutputStream().write(get("/slow"));
            Thread.sleep(300);
        }
        assertTrue(GuardedTest.metrics().contains("orbwright_heavy_places_free 0.0"), "the work goes on");
        SlowResource.MAY_END.release(2);
        assertTrue(SlowResource.BEGUN.tryAcquire(10, TimeUnit.SECONDS), "who waited has begun after all");
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
                .header("Retry-After", "1");
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

    private Socket slowWork() throws Exception {
        Socket socket = new Socket(address.getHost(), address.getPort());
        socket.getOutputStream().write(get("/slow"));
        assertTrue(SlowResource.BEGUN.tryAcquire(10, TimeUnit.SECONDS));
        return socket;
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
