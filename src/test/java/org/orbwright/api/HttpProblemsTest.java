package org.orbwright.api;

import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasSize;
import static org.hamcrest.Matchers.matchesPattern;
import static org.hamcrest.Matchers.not;
import static org.hamcrest.Matchers.startsWith;

import com.fasterxml.jackson.databind.JsonNode;
import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.http.ContentType;
import io.restassured.response.Response;
import io.restassured.response.ValidatableResponse;
import io.restassured.specification.RequestSpecification;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.orbwright.api.wire.ProblemKind;

/** Everything that can go wrong around a request, apart from what is in its body. */
@QuarkusTest
class HttpProblemsTest {
    private static final String DESIGN = Posted.twoSpheres().toString();

    @TestHTTPResource("/v1/sheet")
    URI sheet;

    @Test
    void unknownAddress() {
        problem(Contract.badRequest().get("/v1/nothing").then(), 404, "not-found")
                .body("detail", equalTo("There is nothing at /v1/nothing. The addresses are listed at /q/openapi."))
                .body("instance", equalTo("/v1/nothing"))
                .body("violations", hasSize(0));
    }

    @Test
    void unknownSolidNamesTheNearest() {
        problem(Contract.request().get("/v1/solids/dodecahedrn").then(), 404, "unknown-solid")
                .body(
                        "detail",
                        startsWith("There is no solid named \"dodecahedrn\"; the nearest names: dodecahedron, "))
                .body("violations[0].path", equalTo("solid"))
                .body("violations[0].rejected", equalTo("dodecahedrn"))
                .body("violations[0].allowed", startsWith("one of dodecahedron, "));
    }

    @Test
    void unknownDesignNamesTheDesigns() {
        problem(Contract.request().get("/v1/designs/none").then(), 404, "unknown-design")
                .body("violations[0].allowed", containsString(Posted.MAIN));
    }

    /** RFC 9110, 15.5.6: the answer has to list the methods that are allowed. */
    @TestFactory
    Stream<DynamicTest> wrongMethodIsToldTheRightOnes() {
        return Contract.document().path("paths").properties().stream()
                .map(path -> DynamicTest.dynamicTest(path.getKey(), () -> wrongMethod(path)));
    }

    private static void wrongMethod(Map.Entry<String, JsonNode> path) {
        String allowed = !path.getValue().has("get")
                ? "OPTIONS, POST"
                : path.getValue().has("post") ? "GET, HEAD, OPTIONS, POST" : "GET, HEAD, OPTIONS";
        String address = path.getKey().replaceAll("\\{.*}", "cube");
        given().options(address).then().statusCode(200).header("Allow", equalTo(allowed));
        String detail = "DELETE is not for " + address + "; it takes " + allowed + ".";
        if (address.startsWith("/v1/cell/")) {
            given().delete(address)
                    .then()
                    .statusCode(405)
                    .header("Allow", equalTo(allowed))
                    .body(equalTo("ERROR: " + detail));
            return;
        }
        problem(Contract.badRequest().delete(address).then(), 405, "method-not-allowed")
                .header("Allow", equalTo(allowed))
                .body("detail", equalTo(detail));
    }

    /** One that is misspelt would be a silent default. */
    @TestFactory
    Stream<DynamicTest> queryParametersThatAreNotDeclaredAreRefused() {
        return Contract.document().path("paths").properties().stream()
                .flatMap(path -> path.getValue().properties().stream()
                        .map(operation -> DynamicTest.dynamicTest(
                                operation.getKey() + " " + path.getKey(),
                                () -> undeclared(path.getKey(), operation.getKey(), operation.getValue()))));
    }

    private static void undeclared(String path, String method, JsonNode operation) {
        String address = path.replaceAll("\\{.*}", path.contains("cell") ? "edge" : "bands");
        RequestSpecification request = Contract.badRequest().queryParam("fase", "pentagon");
        if (operation.has("requestBody")) {
            String type = operation.at("/requestBody/content").fieldNames().next();
            request.config(Posted.LINES_AS_TEXT).contentType(type).body("{}");
        }
        Response answer = request.request(method, address);
        Assertions.assertEquals(400, answer.statusCode(), answer::asString);
        Assertions.assertTrue(
                answer.asString().contains("There is no ") && answer.asString().contains("fase"), answer::asString);
    }

    @Test
    void aQueryParameterIsStatedOnce() {
        problem(
                        Contract.badRequest()
                                .contentType(ContentType.JSON)
                                .body(DESIGN)
                                .post("/v1/sheet?stations=5&stations=9")
                                .then(),
                        400,
                        "invalid-request")
                .body("violations[0].code", equalTo("REPEATED"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"sphere?width=300", "panel?width=300", "panel?width=300&format=dxf"})
    void aWidthIsForAPng(String drawing) {
        problem(
                        Contract.badRequest()
                                .contentType(ContentType.JSON)
                                .body(DESIGN)
                                .post("/v1/drawings/" + drawing)
                                .then(),
                        400,
                        "invalid-request")
                .body(
                        "detail",
                        equalTo("The query parameter width must be left out of what is not a PNG, but is \"300\"."));
    }

    /** Macros belong to the service that hands them out: an old one must not be used with a new service. */
    @ParameterizedTest
    @ValueSource(strings = {"orbwright.bas", "batch.py", "workbook.ods"})
    void filesForClientsAreAskedForAgain(String file) {
        given().get("/clients/" + file).then().statusCode(200).header("Cache-Control", equalTo("no-cache"));
    }

    @Test
    void headAsksForTheHeadersOfAnAnswer() {
        given().head("/v1/solids").then().statusCode(200).contentType(ContentType.JSON);
    }

    /** RFC 4647, 2.1: a language range begins with a letter or is an asterisk, so a lone hyphen is none. */
    @Test
    void languageThatIsNoneIsPassedOver() {
        problem(
                Contract.badRequest()
                        .contentType(ContentType.JSON)
                        .header("Accept-Language", "-")
                        .body("{}")
                        .post("/v1/sheet")
                        .then(),
                400,
                "invalid-request");
    }

    @Test
    void answersInNoOtherForm() {
        problem(
                        Contract.badRequest()
                                .contentType(ContentType.JSON)
                                .accept("text/csv")
                                .body(DESIGN)
                                .post("/v1/sheet")
                                .then(),
                        406,
                        "not-acceptable")
                .body("detail", equalTo("/v1/sheet answers with application/json, not text/csv."));
    }

    @Test
    void bodyOfAnotherType() {
        problem(
                        Contract.badRequest()
                                .contentType("text/xml")
                                .body(DESIGN)
                                .post("/v1/sheet")
                                .then(),
                        415,
                        "unsupported-media-type")
                .body(
                        "detail",
                        startsWith("The body has to be sent with the header Content-Type: application/json,"
                                + " not text/xml"));
    }

    @Test
    void bodyOfNoType() throws IOException, InterruptedException {
        HttpResponse<String> answer =
                send(HttpRequest.newBuilder(sheet).POST(HttpRequest.BodyPublishers.ofString(DESIGN)));
        Assertions.assertEquals(415, answer.statusCode());
        Assertions.assertEquals(
                "The body has to be sent with the header Content-Type: application/json.",
                Contract.json(answer.body()).path("detail").asText());
    }

    @Test
    void tooLargeBodyOfStatedLength() {
        problem(
                        Contract.badRequest()
                                .contentType(ContentType.JSON)
                                .body(" ".repeat(2_000_000))
                                .post("/v1/sheet")
                                .then(),
                        413,
                        "body-too-large")
                .body("detail", equalTo("The body has 2000000 bytes. At most 1048576 are accepted."));
    }

    /** Only the length tells the end of a body over HTTP/2 early enough. */
    @Test
    void bodyWithoutLengthOverHttp2() throws IOException, InterruptedException {
        HttpResponse<String> answer = send(HttpRequest.newBuilder(sheet)
                .version(HttpClient.Version.HTTP_2)
                .header("Content-Type", "application/json")
                .POST(HttpRequest.BodyPublishers.ofInputStream(() -> new ByteArrayInputStream(new byte[20]))));
        Assertions.assertEquals(411, answer.statusCode());
        Assertions.assertEquals(
                "Over HTTP/2 the body has to come with the header Content-Length.",
                Contract.json(answer.body()).path("detail").asText());
    }

    @Test
    void tooLargeBodyInChunks() throws IOException, InterruptedException {
        HttpResponse<String> answer = send(HttpRequest.newBuilder(sheet)
                .version(HttpClient.Version.HTTP_1_1)
                .header("Content-Type", "application/json")
                .POST(HttpRequest.BodyPublishers.ofInputStream(() -> new ByteArrayInputStream(new byte[2_000_000]))));
        Assertions.assertEquals(413, answer.statusCode());
        Assertions.assertEquals(
                "The body has more than 1048576 bytes, which is the most that is accepted.",
                Contract.json(answer.body()).path("detail").asText());
    }

    @Test
    void tooLongAddress() {
        problem(Contract.badRequest().get("/v1/solids/" + "a".repeat(5000)).then(), 414, "address-too-long")
                .body("detail", equalTo("The address has 5011 characters. At most 4096 are accepted."));
    }

    @Test
    void tooLargeHeaders() {
        problem(
                        Contract.badRequest()
                                .header("X", "a".repeat(20_000))
                                .get("/v1/solids")
                                .then(),
                        431,
                        "headers-too-large")
                .body("detail", equalTo("The headers have more than 16384 characters together."));
    }

    @ParameterizedTest
    @ValueSource(strings = {"1", "92", "-5", "nine", "9.0", "1e1"})
    void wrongNumberOfStations(String stations) {
        problem(
                        Contract.badRequest()
                                .contentType(ContentType.JSON)
                                .body(DESIGN)
                                .post("/v1/bands?stations=" + stations)
                                .then(),
                        400,
                        "invalid-request")
                .body(
                        "detail",
                        equalTo("The query parameter stations must be a whole number, 2 to 91, but is \"" + stations
                                + "\"."))
                .body("violations[0].path", equalTo("stations"));
    }

    /** Our own mistakes are never the caller's, and never show how the service is made. */
    @ParameterizedTest
    @ValueSource(strings = {"/faulty/answer", "/faulty/code"})
    void faultOfTheService(String path) {
        problem(given().get(path).then(), 500, "internal-error")
                .body("instance", matchesPattern("urn:uuid:[0-9a-f-]{36}"))
                .body("detail", containsString("Please report the id"))
                .body(not(containsString("secret")))
                .body(not(containsString("Exception")));
    }

    /** Every kind's type is the address of a page that says what to do. */
    @ParameterizedTest
    @EnumSource(ProblemKind.class)
    void everyTypeHasAPage(ProblemKind kind) {
        Contract.request()
                .get(kind.uri())
                .then()
                .statusCode(200)
                .contentType("text/html;charset=UTF-8")
                .body("html.body.h1", equalTo(kind.title()));
        Contract.request().get("/problems").then().statusCode(200).body(containsString("href=\"" + kind.uri() + "\""));
    }

    @Test
    void anUnknownKindHasNoPage() {
        problem(given().get("/problems/moonshine").then(), 404, "not-found")
                .body("detail", containsString("/problems lists"));
    }

    private static HttpResponse<String> send(HttpRequest.Builder request) throws IOException, InterruptedException {
        return HttpClient.newHttpClient().send(request.build(), HttpResponse.BodyHandlers.ofString());
    }

    private static ValidatableResponse problem(ValidatableResponse answer, int status, String type) {
        return answer.statusCode(status)
                .contentType("application/problem+json")
                .body("status", equalTo(status))
                .body("requestId", equalTo(answer.extract().header("X-Request-Id")))
                .body("type", equalTo("/problems/" + type));
    }
}
