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
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/**
 * Throws made-up designs at the service, every second of them damaged at one place. The contract is the judge, read by
 * a library that knows nothing of the service: a body that fits it is answered or is an impossible design, any other is
 * a bad request, and every answer fits it too.
 */
@QuarkusTest
class FuzzTest {
    private static final int CASES = 3000;
    private static final long SEED = 20260101;
    /** The operations by the schema of their request; those that take a design are thrown at most often. */
    private static final Map<String, List<String>> OPERATIONS = new TreeMap<>(Map.ofEntries(
            Map.entry(
                    "DesignRequest",
                    List.of(
                            "angles",
                            "segments",
                            "yield",
                            "sphere",
                            "bands",
                            "sheet",
                            "drawings/panel",
                            "drawings/panel?format=dxf",
                            "drawings/segment",
                            "drawings/segment?format=dxf",
                            "bodies/segment",
                            "bodies/panel?format=3mf",
                            "bodies/solid?format=json",
                            "bodies/shell?format=json",
                            "bodies/sphere?format=json",
                            "drawings/sphere",
                            "drawings/survival",
                            "drawings/section",
                            "drawings/net",
                            "table/bands",
                            "table/sheet")),
            Map.entry("AssemblyRequest", List.of("assembly")),
            Map.entry("WidthRequest", List.of("bands/solve")),
            Map.entry("InlayRequest", List.of("inlays", "drawings/pocket?format=dxf", "bodies/pocket?format=json")),
            Map.entry("JigRequest", List.of("jig")),
            Map.entry("MovementRequest", List.of("movement")),
            Map.entry("StockRequest", List.of("stock", "stock/cuts", "stock/purchases", "drawings/board")),
            Map.entry("ToleranceRequest", List.of("tolerance")),
            Map.entry("DiagnosisRequest", List.of("diagnosis")),
            Map.entry("SweepRequest", List.of("bands/explore")),
            Map.entry("BalanceRequest", List.of("balance")),
            Map.entry(
                    "TurningRequest",
                    List.of(
                            "turning",
                            "drawings/disc",
                            "drawings/templates?format=dxf",
                            "bodies/disc?format=json&thickness=20")),
            Map.entry("PathRequest", List.of("turning/path", "turning/program")),
            Map.entry("ShopSheetRequest", List.of("shop-sheet"))));

    @TestHTTPResource("/v1/")
    URI base;

    private final Random random = new Random(SEED);
    private final HttpClient client = HttpClient.newHttpClient();
    private final Map<Integer, Integer> statuses = new TreeMap<>();
    private OpenApiInteractionValidator contract;
    private DesignMaker designs;

    @BeforeEach
    void readContract() {
        String text = given().get("/q/openapi?format=json").asString();
        contract = OpenApiInteractionValidator.createForInlineApiSpecification(text)
                .build();
        designs = new DesignMaker(Contract.json(text), random);
    }

    @Test
    void contractAndServiceAgreeOnEveryBody() throws IOException, InterruptedException {
        for (int i = 0; i < CASES; i++) {
            List<String> schemas = List.copyOf(OPERATIONS.keySet());
            String schema = random.nextInt(3) > 0 ? "DesignRequest" : schemas.get(random.nextInt(schemas.size()));
            List<String> operations = OPERATIONS.get(schema);
            JsonNode request = designs.make(schema);
            if (i % 2 == 1) {
                designs.damage(request);
            }
            check(operations.get(random.nextInt(operations.size())), request.toString());
        }
        assertTrue(statuses.get(200) > CASES / 10, statuses::toString);
        assertTrue(statuses.get(400) > CASES / 10, statuses::toString);
        assertTrue(statuses.get(422) > CASES / 10, statuses::toString);
    }

    private void check(String operation, String body) throws IOException, InterruptedException {
        String path = "/v1/" + operation.replaceFirst("\\?.*", "");
        boolean fits = !contract.validateRequest(SimpleRequest.Builder.post(path)
                        .withContentType("application/json")
                        .withBody(body)
                        .build())
                .hasErrors();
        HttpResponse<String> answer = client.send(
                HttpRequest.newBuilder(base.resolve(operation))
                        .header("Content-Type", "application/json")
                        .POST(HttpRequest.BodyPublishers.ofString(body))
                        .build(),
                HttpResponse.BodyHandlers.ofString());
        int status = answer.statusCode();
        statuses.merge(status, 1, Integer::sum);
        assertEquals(fits, status == 200 || status == 422, () -> status + " for " + body + "\n" + answer.body());
        ValidationReport report = contract.validateResponse(
                path,
                Request.Method.POST,
                SimpleResponse.Builder.status(status)
                        .withContentType(
                                answer.headers().firstValue("Content-Type").orElse(""))
                        .withBody(answer.body())
                        .build());
        assertFalse(report.hasErrors(), () -> report.getMessages() + " in the answer for " + body);
    }
}
