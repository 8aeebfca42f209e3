package org.orbwright.api;

import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.matchesPattern;
import static org.hamcrest.Matchers.notNullValue;
import static org.hamcrest.Matchers.startsWith;
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
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.security.MessageDigest;
import java.util.HexFormat;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.orbwright.api.wire.Problem;

/**
 * The service with everything on that is off by default: keys, tokens, traces, one place for long work, little time for
 * bodies.
 */
@QuarkusTest
@TestProfile(GuardedTest.Guarded.class)
class GuardedTest {
    static final String KEY = "0f7b1f3f0c2e4a5b8d9e6a7c1b2d3e4f0f7b1f3f0c2e4a5b8d9e6a7c1b2d3e4f";
    private static final String SECOND = "second-" + KEY;
    private static final String DESIGN = Posted.twoSpheres().toString();

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
                Path log = Files.createTempDirectory("log");
                System.setProperty("test.log", log.toString());
                return Map.ofEntries(
                        PageExample.setting("settings.md"),
                        Map.entry("orbwright.access.keys", keys.toString()),
                        Map.entry("orbwright.access.tokens", "true"),
                        Map.entry("quarkus.oidc.auth-server-url", issuer.address()),
                        Map.entry("quarkus.otel.sdk.disabled", "false"),
                        Map.entry("quarkus.otel.exporter.otlp.endpoint", collector.address()),
                        Map.entry("quarkus.otel.bsp.schedule.delay", "100ms"),
                        Map.entry("quarkus.http.access-log.enabled", "true"),
                        Map.entry("quarkus.http.access-log.log-to-file", "true"),
                        Map.entry("quarkus.http.access-log.log-directory", log.toString()),
                        Map.entry("quarkus.http.access-log.base-file-name", "access"),
                        Map.entry("quarkus.http.read-timeout", "8s"),
                        Map.entry("orbwright.limits.heavy", "1"),
                        Map.entry("orbwright.limits.share", "4"),
                        Map.entry("orbwright.limits.line-time", "4s"),
                        Map.entry("orbwright.limits.body-time", "2s"));
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
                    .header("X-Request-Id", matchesPattern("[0-9a-f-]{36}"))
                    .body("requestId", matchesPattern("[0-9a-f-]{36}"))
                    .body("type", equalTo("/problems/unauthenticated"));
        }
        given().get("/problems/unauthenticated").then().statusCode(200).body(containsString("Ask its keeper for one."));
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
        // A new key under the old one's name, in a file as some editors write it.
        change(keys, "\uFEFFbench " + sha256(KEY) + "\r\nbench " + sha256(SECOND) + "\r\n", 1);
        solids("X-API-Key", SECOND).statusCode(200);
        solids("X-API-Key", KEY).statusCode(200);
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

    /** A connection header is forbidden in HTTP/2 (RFC 9113, 8.2.2); clients take such an answer for broken. */
    @Test
    void refusalsKeepTheRulesOfHttp2() throws Exception {
        HttpResponse<String> answer = HttpClient.newHttpClient()
                .send(
                        HttpRequest.newBuilder(address.resolve("/v1/solids"))
                                .version(HttpClient.Version.HTTP_2)
                                .build(),
                        HttpResponse.BodyHandlers.ofString());
        assertEquals(HttpClient.Version.HTTP_2, answer.version());
        assertEquals(401, answer.statusCode());
        assertTrue(answer.body().contains("unauthenticated"), answer.body());
    }

    @Test
    void aCellWithoutAKeySaysSo() {
        given().get("/v1/cell/blade-tilt?solid=cube&errors=text")
                .then()
                .statusCode(200)
                .body(startsWith("ERROR: A key is needed"));
    }

    /** Names that a caller makes up would else fill the memory, before any key is looked at. */
    @Test
    void whatACallerMakesUpIsMeasuredUnderOneName() {
        given().get("/v1/solids/made-up").then().statusCode(401);
        given().get("/made-up").then().statusCode(401);
        given().request("MADEUP", "/v1/solids").then().statusCode(401);
        String metrics = metrics();
        assertFalse(metrics.contains("made-up"));
        assertFalse(metrics.contains("MADEUP"));
        assertTrue(metrics.contains("status=\"401\",uri=\"/v1/solids/{solid}\""));
        assertTrue(metrics.contains("status=\"401\",uri=\"OTHER\""));
        assertTrue(metrics.contains("method=\"OTHER\",outcome=\"CLIENT_ERROR\",status=\"401\""));
    }

    static String metrics() {
        return given().header("X-API-Key", KEY)
                .get("/q/metrics")
                .then()
                .statusCode(200)
                .body(notNullValue())
                .extract()
                .asString();
    }

    @Test
    void theLogNamesTheCallerAndTellsNothingOfADesign() throws Exception {
        given().header("X-API-Key", KEY)
                .get("/v1/cell/blade-tilt?solid=tetrahedron")
                .then()
                .statusCode(200);
        Path log = Path.of(System.getProperty("test.log"), "access.log");
        String written = "";
        for (int i = 0; i < 100 && !written.contains("GET /v1/cell/blade-tilt 200"); i++) {
            Thread.sleep(100);
            written = Files.exists(log) ? Files.readString(log) : "";
        }
        assertTrue(written.contains("GET /v1/cell/blade-tilt 200"), written);
        assertFalse(written.contains("tetrahedron"), written);
        assertTrue(written.contains(" by bench"), written);
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
        String metrics = metrics();
        assertTrue(metrics.contains("orbwright_design_bands_bucket{le=\"5.0\"}"), metrics);
        assertTrue(metrics.contains("orbwright_request_size_bytes_count"));
        assertTrue(metrics.contains("http_server_requests_seconds_bucket{method=\"POST\""));
        assertTrue(metrics.contains("orbwright_heavy_places_free 1.0"));
    }

    static Chunked keyed(Socket socket, String path, String type) throws IOException {
        return new Chunked(socket.getOutputStream(), path, type, "X-API-Key: " + KEY);
    }
}
