package org.orbwright.api;

import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.RestAssured;
import io.restassured.http.ContentType;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import java.io.BufferedReader;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.net.Socket;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Random;
import java.util.concurrent.CancellationException;
import org.junit.jupiter.api.Test;
import org.orbwright.api.query.Format;
import org.orbwright.api.wire.Limits;
import org.orbwright.api.wire.RequestReader;
import org.orbwright.sheet.Answer;
import org.orbwright.sheet.SheetCalculator;

/** Batches over HTTP: a line out for each line in, in their order, while lines still come in. */
@QuarkusTest
class BatchHttpTest {
    @TestHTTPResource("/v1/batch")
    URI address;

    @Inject
    RequestReader reader;

    @Inject
    Limits limits;

    private static String design(double size) {
        ObjectNode design = Posted.twoSpheres();
        ((ObjectNode) design.path("size")).put("value", size);
        return design.toString();
    }

    private static List<JsonNode> answered(String lines, String answer) {
        Response response = Contract.request()
                .config(Posted.LINES_AS_TEXT)
                .contentType(Format.NDJSON_TYPE)
                .queryParam("answer", answer)
                .body(lines.getBytes(StandardCharsets.UTF_8))
                .post("/v1/batch");
        assertEquals(200, response.statusCode(), response::asString);
        return response.asString().lines().map(Contract::json).toList();
    }

    /** Random designs and faults; each line's answer is what a request of its own gets. */
    @Test
    void everyLineHasItsOwnAnswerInItsPlace() {
        Random random = new Random(3);
        List<String> lines = new ArrayList<>();
        for (int i = 0; i < 60; i++) {
            lines.add(
                    switch (random.nextInt(5)) {
                        case 0 -> "{\"unit\":";
                        case 1 -> "";
                        case 2 -> design(1);
                        default -> design(6 + random.nextDouble());
                    });
        }
        List<JsonNode> answers = answered(String.join("\n", lines), "sphere");
        int next = 0;
        for (int i = 0; i < lines.size(); i++) {
            if (!lines.get(i).isEmpty()) {
                Response alone = Contract.badRequest()
                        .contentType(ContentType.JSON)
                        .body(lines.get(i))
                        .post("/v1/sphere");
                JsonNode answer = answers.get(next++);
                assertEquals(i + 1, answer.path("line").asInt());
                if (alone.statusCode() == 200) {
                    assertEquals(Contract.json(alone.asString()), answer.path("sphere"));
                } else {
                    JsonNode problem = answer.path("problem");
                    assertEquals(Contract.json(alone.asString()).path("violations"), problem.path("violations"));
                    assertEquals(
                            "/v1/batch#line-" + (i + 1),
                            problem.path("instance").asText());
                }
            }
        }
        assertEquals(next, answers.size());
    }

    @Test
    void everyPartCanBeHad() {
        for (String part : List.of("sheet", "angles", "segments", "yield", "sphere", "bands")) {
            JsonNode alone = Contract.json(Contract.request()
                    .contentType(ContentType.JSON)
                    .body(design(7))
                    .post("/v1/" + part)
                    .asString());
            assertEquals(alone, answered(design(7) + "\r\n", part).get(0).path(part));
        }
        Contract.badRequest()
                .config(Posted.LINES_AS_TEXT)
                .contentType(Format.NDJSON_TYPE)
                .body(design(7))
                .post("/v1/batch?answer=stock")
                .then()
                .statusCode(400)
                .body("violations[0].allowed", equalTo("one of sheet, angles, segments, yield, sphere, bands"));
    }

    @Test
    void aLineThatIsTooLongDoesNotStopTheRest() {
        List<JsonNode> answers = answered("x".repeat(1_048_577) + "\n" + design(7), "angles");
        assertEquals(413, answers.get(0).at("/problem/status").asInt());
        assertTrue(answers.get(1).has("angles"));
    }

    @Test
    void aBatchOfNothingIsAnsweredWithNothing() {
        RestAssured.given()
                .config(Posted.LINES_AS_TEXT)
                .contentType(Format.NDJSON_TYPE)
                .body("\n \r\n\n")
                .post("/v1/batch")
                .then()
                .statusCode(200)
                .body(equalTo(""));
    }

    @Test
    void anotherMediaTypeIsRefused() {
        Contract.badRequest()
                .contentType(ContentType.JSON)
                .body(design(7))
                .post("/v1/batch")
                .then()
                .statusCode(415)
                .body("detail", containsString("application/x-ndjson, not application/json"));
    }

    /** The first line is answered while the second is not sent yet: neither side waits for the end of the other. */
    @Test
    void linesAreAnsweredAsTheyCome() throws IOException {
        try (Socket socket = new Socket(address.getHost(), address.getPort())) {
            socket.setSoTimeout(20_000);
            Chunked request = new Chunked(socket.getOutputStream(), "/v1/batch?answer=bands", Format.NDJSON_TYPE);
            BufferedReader in =
                    new BufferedReader(new InputStreamReader(socket.getInputStream(), StandardCharsets.UTF_8));
            for (int line = 1; line <= 3; line++) {
                request.send(design(6 + line) + "\n");
                String answer = in.readLine();
                while (!answer.startsWith("{\"line\":" + line)) {
                    answer = in.readLine();
                }
            }
            request.end();
        }
    }

    /** Callers that hang up in the middle, with a reset as a killed program sends it: nobody has to look at the log. */
    @Test
    void aCallerThatLeavesIsNoFault() throws IOException, InterruptedException {
        try (ProblemLog log = new ProblemLog()) {
            for (int i = 0; i < 60; i++) {
                leave(i);
            }
            // Work that was begun ends before the next answer of all threads, or soon after.
            Thread.sleep(1000);
            assertEquals(List.of(), log.messages());
        }
    }

    /** Work that is stopped has no answer, and a problem of the line would hide that the rest was not worked on. */
    @Test
    void anInterruptedLineEndsTheBatch() throws IOException {
        InputStream lines =
                new ByteArrayInputStream((design(7) + "\n").repeat(3).getBytes(StandardCharsets.UTF_8));
        Iterator<Answer> answers = List.of(
                        SheetCalculator.angles(reader.read(design(7).getBytes(StandardCharsets.UTF_8))))
                .iterator();
        Batch batch = new Batch(lines, reader, limits, Long.MAX_VALUE, "angles", document -> {
            if (!answers.hasNext()) {
                throw new CancellationException();
            }
            return answers.next();
        });
        ByteArrayOutputStream body = new ByteArrayOutputStream();
        assertThrows(CancellationException.class, () -> batch.answer(body, () -> false));
        assertEquals(1, body.toString(StandardCharsets.UTF_8).lines().count());
        assertEquals(0, batch.problems());
    }

    private void leave(int number) throws IOException, InterruptedException {
        try (Socket socket = new Socket(address.getHost(), address.getPort())) {
            socket.setSoLinger(true, 0);
            Chunked request = new Chunked(socket.getOutputStream(), "/v1/batch", Format.NDJSON_TYPE);
            if (number % 3 > 0) {
                request.send((design(7) + "\n").repeat(number % 3 == 1 ? 1 : 50));
            }
            Thread.sleep(number % 2 == 0 ? 0 : 30);
        }
    }
}
