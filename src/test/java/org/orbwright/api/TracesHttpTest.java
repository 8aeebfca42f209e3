package org.orbwright.api;

import static io.restassured.RestAssured.given;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import io.restassured.http.ContentType;
import io.restassured.specification.RequestSpecification;
import java.nio.charset.StandardCharsets;
import java.util.HexFormat;
import org.junit.jupiter.api.Test;
import org.orbwright.api.guard.QueryFreeSpans;

/** What leaves the service for a collector of traces: a collector of the tests' own takes it. */
@QuarkusTest
@TestProfile(GuardedTest.Guarded.class)
class TracesHttpTest {
    private static final String MARKER = "zzmarkerzz";

    /** The caller's trace goes on (W3C Trace Context), under the address's pattern. */
    @Test
    void tracesGoOnUnderThePattern() throws Exception {
        String trace = "4bf92f3577b34da6a3ce929d0e0e4736";
        asked(trace).get("/v1/cell/blade-tilt?solid=icosahedron").then().statusCode(200);
        String received = received(trace);
        assertTrue(received.contains("GET /v1/cell/{cell}"), received);
        assertTrue(received.contains(QueryFreeSpans.LEFT_OUT), received);
        assertFalse(received.contains("icosahedron"), received);
    }

    /** Of an answer and of every sort of refusal. */
    @Test
    void nothingThatACallerMakesUpLeaves() throws Exception {
        String design = Posted.twoSpheres().put("name", MARKER).toString();
        String[] traces = {
            send(200, design, "/v1/sheet"),
            send(400, "{\"" + MARKER + "\": 1}", "/v1/sheet"),
            send(400, MARKER, "/v1/sheet"),
            send(400, design, "/v1/drawings/sphere?format=" + MARKER),
            send(422, Posted.twoSpheres().put("solid", MARKER).toString(), "/v1/sheet"),
            send(404, design, "/v1/" + MARKER),
            send(413, " ".repeat(1_100_000) + MARKER, "/v1/sheet"),
            get(404, "/v1/solids/" + MARKER),
            get(404, "/" + MARKER + "/" + MARKER),
            get(400, "/v1/cell/blade-tilt?solid=cube&" + MARKER + "=1"),
            get(200, "/v1/cell/blade-tilt?solid=" + MARKER + "&errors=text"),
        };
        for (String trace : traces) {
            String received = received(trace);
            assertFalse(received.contains(MARKER), received);
            assertFalse(received.contains("exception.message"), received);
            assertFalse(received.contains("exception.stacktrace"), received);
        }
    }

    private static int next = 1;

    private static RequestSpecification asked(String trace) {
        return given().header("X-API-Key", GuardedTest.KEY)
                .header("User-Agent", MARKER)
                .header("X-Forwarded-For", MARKER)
                .header("Referer", MARKER)
                .header("traceparent", "00-" + trace + "-00f067aa0ba902b7-01");
    }

    private static String fresh() {
        return "5bf92f3577b34da6a3ce929d0e0e%04x".formatted(next++);
    }

    private static String send(int status, String body, String path) {
        String trace = fresh();
        int answered =
                asked(trace).contentType(ContentType.JSON).body(body).post(path).statusCode();
        assertEquals(status, answered, path);
        return trace;
    }

    private static String get(int status, String path) {
        String trace = fresh();
        assertEquals(status, asked(trace).get(path).statusCode(), path);
        return trace;
    }

    /** All that has come in, once that trace has. */
    private static String received(String trace) throws Exception {
        String id = new String(HexFormat.of().parseHex(trace), StandardCharsets.ISO_8859_1);
        String received = "";
        for (int i = 0; i < 100 && !received.contains(id); i++) {
            Thread.sleep(100);
            received = new String(
                    given().get(System.getProperty("test.traces")).asByteArray(), StandardCharsets.ISO_8859_1);
        }
        assertTrue(received.contains(id), "the trace has not arrived");
        return received;
    }
}
