package org.orbwright.api;

import static io.restassured.RestAssured.given;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.atlassian.oai.validator.OpenApiInteractionValidator;
import com.atlassian.oai.validator.model.Request;
import com.atlassian.oai.validator.model.SimpleRequest;
import com.atlassian.oai.validator.model.SimpleResponse;
import com.atlassian.oai.validator.report.ValidationReport;
import com.fasterxml.jackson.databind.JsonNode;
import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.zip.GZIPInputStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/**
 * Throws made-up documents at the service, every second of them damaged at one place, and requests of every operation
 * with odd bytes, headers and parameters. The contract is the judge, read by a library that knows nothing of the
 * service: a body that fits it is answered or is an impossible design, any other is a bad request, every answer fits it
 * too, and nothing is the service's own fault. {@code -Dfuzz.cases} says how many requests there are, half of each
 * kind.
 */
@QuarkusTest
class FuzzTest {
    private static final int CASES = Integer.getInteger("fuzz.cases", 1500) / 2;
    private static final long SEED = 20260101;
    /** The operations; those that are quick are thrown at more often. */
    private static final List<String> QUICK = List.of(
            "angles",
            "segments",
            "yield",
            "sphere",
            "bands",
            "sheet",
            "jig",
            "assembly",
            "inlays",
            "turning",
            "balance",
            "movement",
            "diagnosis",
            "drawings/panel",
            "drawings/panel?format=dxf",
            "drawings/segment",
            "drawings/segment?format=dxf",
            "drawings/disc",
            "drawings/pocket?format=dxf",
            "drawings/pocket?format=cut",
            "drawings/survival",
            "drawings/section",
            "drawings/net",
            "drawings/set-up",
            "bodies/segment",
            "bodies/panel?format=3mf",
            "bodies/panel?format=glb",
            "bodies/solid?format=json",
            "bodies/pocket?format=json",
            "table/bands",
            "table/sheet");

    private static final List<String> LONG = List.of(
            "build",
            "bands/solve",
            "bands/explore",
            "tolerance",
            "stock",
            "stock/cuts",
            "stock/purchases",
            "stock/reach",
            "turning/path",
            "turning/program",
            "drawings/board",
            "drawings/sphere",
            "drawings/templates?format=dxf",
            "bodies/shell?format=json",
            "bodies/sphere?format=json",
            "bodies/disc?format=json&thickness=20",
            "shop-sheet");

    @TestHTTPResource("/")
    URI base;

    private final Random random = new Random(SEED);
    private final HttpClient client = HttpClient.newHttpClient();
    private final Map<Integer, Integer> statuses = new TreeMap<>();
    private OpenApiInteractionValidator contract;
    private DesignMaker designs;
    private OddRequestMaker odd;

    @BeforeEach
    void readContract() {
        String text = given().get("/q/openapi?format=json").asString();
        contract = OpenApiInteractionValidator.createForInlineApiSpecification(text)
                .build();
        designs = new DesignMaker(Contract.json(text), random);
        odd = new OddRequestMaker(Contract.json(text), random, designs);
    }

    @Test
    void contractAndServiceAgreeOnEveryBody() throws IOException, InterruptedException {
        for (int i = 0; i < CASES; i++) {
            List<String> operations = random.nextInt(3) > 0 ? QUICK : LONG;
            JsonNode request = designs.make();
            if (i % 2 == 1) {
                designs.damage(request);
            }
            check(operations.get(random.nextInt(operations.size())), request.toString());
        }
        assertTrue(statuses.get(200) > CASES / 10, statuses::toString);
        assertTrue(statuses.get(400) > CASES / 10, statuses::toString);
        assertTrue(statuses.get(422) > CASES / 10, statuses::toString);
    }

    @Test
    void everyOddRequestIsAnsweredAsTheContractSays() throws IOException, InterruptedException {
        for (int i = 0; i < CASES; i++) {
            OddRequest request = odd.make(i);
            HttpResponse<byte[]> answer = send(request);
            int status = answer.statusCode();
            statuses.merge(status, 1, Integer::sum);
            assertTrue(status < 500 || status == 503, () -> status + " for " + request + "\n" + text(answer));
            assertFits(request.anyPath(), Request.Method.valueOf(request.method()), answer, request);
        }
        for (int expected : List.of(200, 400, 404, 406, 415, 422)) {
            assertTrue(statuses.getOrDefault(expected, 0) > CASES / 200, statuses::toString);
        }
    }

    private HttpResponse<byte[]> send(OddRequest request) throws IOException, InterruptedException {
        HttpRequest.Builder builder = HttpRequest.newBuilder(base.resolve(request.address()))
                .method(
                        request.method(),
                        request.method().equals("GET")
                                ? HttpRequest.BodyPublishers.noBody()
                                : HttpRequest.BodyPublishers.ofByteArray(request.body()));
        request.headers().forEach(builder::header);
        return client.send(builder.build(), HttpResponse.BodyHandlers.ofByteArray());
    }

    /** The answer's text, unpacked where the request could take a packed one. */
    private static String text(HttpResponse<byte[]> answer) {
        if (!answer.headers().firstValue("Content-Encoding").orElse("").equals("gzip")) {
            return new String(answer.body(), StandardCharsets.UTF_8);
        }
        try (InputStream unpacked = new GZIPInputStream(new ByteArrayInputStream(answer.body()))) {
            return new String(unpacked.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void assertFits(String path, Request.Method method, HttpResponse<byte[]> answer, Object request) {
        SimpleResponse.Builder response = SimpleResponse.Builder.status(answer.statusCode());
        answer.headers().firstValue("Content-Type").ifPresent(response::withContentType);
        ValidationReport report = contract.validateResponse(
                path, method, response.withBody(text(answer)).build());
        assertFalse(
                report.hasErrors(),
                () -> answer.statusCode() + " " + report.getMessages() + " in the answer for " + request);
    }

    private void check(String operation, String body) throws IOException, InterruptedException {
        String path = "/v1/" + operation.replaceFirst("\\?.*", "");
        boolean fits = !contract.validateRequest(SimpleRequest.Builder.post(path)
                        .withContentType("application/json")
                        .withBody(body)
                        .build())
                .hasErrors();
        HttpResponse<byte[]> answer = send(new OddRequest(
                "POST",
                path,
                "/v1/" + operation,
                Map.of("Content-Type", "application/json"),
                body.getBytes(StandardCharsets.UTF_8)));
        int status = answer.statusCode();
        statuses.merge(status, 1, Integer::sum);
        assertEquals(fits, status == 200 || status == 422, () -> status + " for " + body + "\n" + text(answer));
        assertFits(path, Request.Method.POST, answer, body);
    }
}
