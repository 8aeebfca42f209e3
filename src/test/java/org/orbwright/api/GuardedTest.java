package org.orbwright.api;

import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.matchesPattern;
import static org.hamcrest.Matchers.notNullValue;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.QuarkusTestProfile;
import io.quarkus.test.junit.TestProfile;
import io.restassured.http.ContentType;
import io.restassured.response.ValidatableResponse;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.net.Socket;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.security.MessageDigest;
import java.util.HexFormat;
import java.util.Map;
import org.junit.jupiter.api.Test;

/**
 * The service with everything on that is off by default: keys, tokens, traces, one place for long work, little time for
 * bodies.
 */
@QuarkusTest
@TestProfile(GuardedTest.Guarded.class)
class GuardedTest {
    private static final String KEY = "0f7b1f3f0c2e4a5b8d9e6a7c1b2d3e4f0f7b1f3f0c2e4a5b8d9e6a7c1b2d3e4f";
    private static final String SECOND = "second-" + KEY;
    private static final String DESIGN =
            DesignLibrary.find("dodecahedron-two-spheres").orElseThrow().json();

    @TestHTTPResource("/")
    URI address;

    /** The settings. */
    public static final class Guarded implements QuarkusTestProfile {
        @Override
        public Map<String, String> getConfigOverrides() {
            try {
                Path keys = Files.createTempFile("keys", ".txt");
                write(keys, "# a bench\nbench " + sha256(KEY) + "\n");
                TokenIssuer issuer = new TokenIssuer();
                // The test reads them back: the service runs with a class loader of its own.
                System.setProperty("test.keys", keys.toString());
                System.setProperty("test.token", issuer.token(600));
                System.setProperty("test.expired", issuer.token(-600));
                System.setProperty("test.forged", issuer.forged());
                TraceCollector collector = new TraceCollector();
                System.setProperty("test.traces", collector.address() + "/received");
                return Map.of(
                        "orbwright.access.keys", keys.toString(),
                        "orbwright.access.tokens", "true",
                        "quarkus.oidc.auth-server-url", issuer.address(),
                        "quarkus.otel.sdk.disabled", "false",
                        "quarkus.otel.exporter.otlp.endpoint", collector.address(),
                        "quarkus.otel.bsp.schedule.delay", "100ms",
                        "orbwright.limits.heavy", "1",
                        "orbwright.limits.body-time", "2s");
            } catch (Exception e) {
                throw new IllegalStateException(e);
            }
        }
    }

    private static void write(Path keys, String lines) throws IOException {
        Files.writeString(keys, lines);
    }

    private static String sha256(String key) throws Exception {
        return HexFormat.of()
                .formatHex(MessageDigest.getInstance("SHA-256").digest(key.getBytes(StandardCharsets.UTF_8)));
    }

    private static ValidatableResponse solids(String header, String value) {
        return given().header(header, value).get("/v1/solids").then();
    }

    @Test
    void withoutAKeyNothingIsToldButHealth() {
        for (String path : new String[] {
            "/v1/solids",
            "/v1/cell/blade-tilt?solid=cube",
            "/q/metrics",
            "/q/openapi",
            "/nix",
            "/clients/workbook.ods",
            "/q/healthy",
            "/q/health/../metrics"
        }) {
            given().urlEncodingEnabled(false)
                    .get(path)
                    .then()
                    .statusCode(401)
                    .contentType(Problem.MEDIA_TYPE)
                    .header("WWW-Authenticate", containsString("Basic"))
                    .body("type", equalTo("urn:orbwright:problem:unauthenticated"));
        }
        given().get("/q/health/ready").then().statusCode(200).body("status", equalTo("UP"));
        given().get("/q/health/live").then().statusCode(200);
        given().get("/q/health/started").then().statusCode(200);
    }

    @Test
    void aKeyOpensInThreeWays() {
        solids("X-API-Key", KEY).statusCode(200);
        solids("Authorization", "Bearer " + KEY).statusCode(200);
        given().auth()
                .preemptive()
                .basic("anybody", KEY)
                .get("/v1/solids")
                .then()
                .statusCode(200);
        solids("X-API-Key", KEY + "0")
                .statusCode(401)
                .body("detail", equalTo("The key or token is not known, or no longer."));
        solids("Authorization", "Basic %%%").statusCode(401);
        solids("Authorization", "Digest x").statusCode(401);
    }

    @Test
    void keysComeAndGoWhileTheServiceRuns() throws Exception {
        Path keys = Path.of(System.getProperty("test.keys"));
        solids("X-API-Key", SECOND).statusCode(401);
        change(keys, "bench " + sha256(KEY) + "\nsecond " + sha256(SECOND) + "\n", 1);
        solids("X-API-Key", SECOND).statusCode(200);
        change(keys, "a line that is none\n", 2);
        solids("X-API-Key", SECOND).statusCode(200);
        change(keys, "bench " + sha256(KEY) + "\n", 3);
        solids("X-API-Key", SECOND).statusCode(401);
        solids("X-API-Key", KEY).statusCode(200);
    }

    /** The file's time is looked at once a second at most. */
    private static void change(Path keys, String lines, int hours) throws Exception {
        write(keys, lines);
        Files.setLastModifiedTime(keys, FileTime.fromMillis(System.currentTimeMillis() + hours * 3_600_000L));
        Thread.sleep(1100);
    }

    @Test
    void aTokenOpensWhileItHolds() {
        solids("Authorization", "Bearer " + System.getProperty("test.token")).statusCode(200);
        solids("Authorization", "Bearer " + System.getProperty("test.expired")).statusCode(401);
        solids("Authorization", "Bearer " + System.getProperty("test.forged")).statusCode(401);
        solids("Authorization", "Bearer a.b.c").statusCode(401);
    }

    @Test
    void everyAnswerHasAnIdAndForbidsWhatItIsNot() {
        solids("X-API-Key", KEY)
                .header("X-Request-Id", matchesPattern("[0-9a-f-]{36}"))
                .header("X-Content-Type-Options", "nosniff")
                .header("Content-Security-Policy", containsString("default-src 'none'"));
        given().header("X-API-Key", KEY)
                .header("X-Request-Id", "bench-7")
                .get("/v1/solids")
                .then()
                .header("X-Request-Id", "bench-7");
        given().header("X-API-Key", KEY)
                .header("X-Request-Id", "a\"b")
                .get("/v1/solids")
                .then()
                .header("X-Request-Id", matchesPattern("[0-9a-f-]{36}"));
        solids("X-API-Key", KEY).header("Access-Control-Allow-Origin", org.hamcrest.Matchers.nullValue());
    }

    /** A batch that is not at its end holds the only place: small requests go on, another long one is sent away. */
    @Test
    void longWorkWaitsAndIsSentAway() throws Exception {
        try (Socket socket = new Socket(address.getHost(), address.getPort())) {
            Chunked request = keyed(socket, "/v1/batch", "application/x-ndjson");
            request.send("\n" + DESIGN.replace("\n", " ") + "\n");
            socket.setSoTimeout(20_000);
            BufferedReader in =
                    new BufferedReader(new InputStreamReader(socket.getInputStream(), StandardCharsets.UTF_8));
            assertTrue(in.readLine().contains("200"));
            given().header("X-API-Key", KEY)
                    .contentType(ContentType.JSON)
                    .body(DESIGN)
                    .post("/v1/sheet")
                    .then()
                    .statusCode(200);
            given().header("X-API-Key", KEY)
                    .contentType(ContentType.JSON)
                    .body(DESIGN)
                    .post("/v1/drawings/sphere")
                    .then()
                    .statusCode(503)
                    .header("Retry-After", "1")
                    .body("detail", equalTo("All 1 places for long work are taken; ask again in a second."));
            request.end();
            while (!in.readLine().equals("0")) {
                // To the last chunk.
            }
        }
        given().header("X-API-Key", KEY)
                .contentType(ContentType.JSON)
                .body(DESIGN)
                .post("/v1/drawings/sphere")
                .then()
                .statusCode(200);
    }

    /** A little now and then must not hold a worker for ever. */
    @Test
    void aBodyThatDripsIsRefused() throws Exception {
        try (Socket socket = new Socket(address.getHost(), address.getPort())) {
            socket.setSoTimeout(20_000);
            Chunked request = keyed(socket, "/v1/sheet", "application/json");
            BufferedReader in =
                    new BufferedReader(new InputStreamReader(socket.getInputStream(), StandardCharsets.UTF_8));
            for (int i = 0; i < 60 && !in.ready(); i++) {
                request.send("{\"name\": \"" + " ".repeat(i));
                Thread.sleep(100);
            }
            assertEquals("HTTP/1.1 408 Request Timeout", in.readLine());
        }
    }

    @Test
    void latenciesAndSizesAreMeasured() {
        given().header("X-API-Key", KEY)
                .contentType(ContentType.JSON)
                .body(DESIGN)
                .post("/v1/sheet")
                .then()
                .statusCode(200);
        String metrics = given().header("X-API-Key", KEY)
                .get("/q/metrics")
                .then()
                .statusCode(200)
                .body(notNullValue())
                .extract()
                .asString();
        assertTrue(metrics.contains("orbwright_design_bands_bucket{le=\"5.0\"}"), metrics);
        assertTrue(metrics.contains("orbwright_request_size_bytes_count"));
        assertTrue(metrics.contains("http_server_requests_seconds_bucket{method=\"POST\""));
        assertTrue(metrics.contains("orbwright_heavy_places_free 1.0"));
    }

    /** The caller's trace goes on (W3C Trace Context), under the address's pattern, and tells nothing of the design. */
    @Test
    void tracesGoOnAndTellNothingOfADesign() throws Exception {
        String trace = "4bf92f3577b34da6a3ce929d0e0e4736";
        given().header("X-API-Key", KEY)
                .header("traceparent", "00-" + trace + "-00f067aa0ba902b7-01")
                .get("/v1/cell/blade-tilt?solid=icosahedron")
                .then()
                .statusCode(200);
        String id = new String(HexFormat.of().parseHex(trace), StandardCharsets.ISO_8859_1);
        String received = "";
        for (int i = 0; i < 100 && !received.contains(id); i++) {
            Thread.sleep(100);
            received = new String(
                    given().get(System.getProperty("test.traces")).asByteArray(), StandardCharsets.ISO_8859_1);
        }
        assertTrue(received.contains(id), "the trace has not arrived");
        assertTrue(received.contains("GET /v1/cell/{cell}"), received);
        assertTrue(received.contains(QueryFreeSpans.LEFT_OUT), received);
        assertFalse(received.contains("icosahedron"), received);
    }

    private static Chunked keyed(Socket socket, String path, String type) throws IOException {
        return new Chunked(socket.getOutputStream(), path, type, "X-API-Key: " + KEY);
    }
}
