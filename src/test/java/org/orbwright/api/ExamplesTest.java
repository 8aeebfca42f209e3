package org.orbwright.api;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.http.ContentType;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.orbwright.api.wire.IndentedJson;

/** The answers that the contract shows are the answers that the service gives. */
@QuarkusTest
class ExamplesTest {
    private static final Map<String, String> NAMES = Map.of("findSolid", "dodecahedron", "findWood", "hickory");
    /** A longer answer would fill the contract. */
    private static final int LONGEST = 45_000;

    private static final String PROBLEM_EXAMPLES = "/content/application~1problem+json/examples/";

    @TestFactory
    Stream<DynamicTest> everyExampleIsTheRealAnswer() {
        return stream(Contract.document().path("paths"))
                .flatMap(path -> stream(path.getValue())
                        .flatMap(operation -> examples(path.getKey(), operation.getKey(), operation.getValue())));
    }

    @TestFactory
    Stream<DynamicTest> everyShownProblemIsTheRealAnswer() {
        JsonNode answers = Contract.document().at("/components/responses");
        return BadRequests.ALL.entrySet().stream()
                .map(request -> DynamicTest.dynamicTest(
                        request.getKey(),
                        () -> assertEquals(
                                answers.at("/" + request.getKey().replace("/", PROBLEM_EXAMPLES) + "/value"),
                                request.getValue().answer())));
    }

    @Test
    void everyShownProblemIsAskedFor() {
        List<String> shown = stream(Contract.document().at("/components/responses"))
                .flatMap(answer -> stream(answer.getValue().at("/content/application~1problem+json/examples"))
                        .map(example -> answer.getKey() + "/" + example.getKey()))
                .toList();
        assertEquals(BadRequests.ALL.keySet(), new HashSet<>(shown));
    }

    private static boolean answersJson(JsonNode operation) {
        return operation.at("/responses/200/content").has("application/json");
    }

    private static Stream<DynamicTest> examples(String path, String method, JsonNode operation) {
        if (!answersJson(operation)) {
            return Stream.empty();
        }
        JsonNode examples = operation.at("/responses/200/content/application~1json/examples");
        if (examples.isMissingNode()) {
            return Stream.of(DynamicTest.dynamicTest(method + " " + path + " is too long for an example", () -> {
                String answer = answer(path, operation, Posted.MAIN);
                assertTrue(IndentedJson.of(answer).length() > LONGEST, path + " has no example");
            }));
        }
        return stream(examples)
                .map(example -> DynamicTest.dynamicTest(
                        method + " " + path + " " + example.getKey(),
                        () -> assertEquals(
                                resolved(example.getValue()).path("value"),
                                Contract.json(
                                        method.equals("get")
                                                ? read(path, example.getKey())
                                                : answer(path, operation, example.getKey())))));
    }

    private static String read(String path, String name) {
        return Contract.request()
                .get(path.replaceAll("\\{.*}", name))
                .then()
                .statusCode(200)
                .extract()
                .asString();
    }

    private static String answer(String path, JsonNode operation, String name) {
        JsonNode example = operation.at("/requestBody/content/application~1json/examples/" + name);
        return Contract.request()
                .contentType(ContentType.JSON)
                .accept(ContentType.JSON)
                .body(resolved(example).path("value").toString())
                .post(path)
                .then()
                .statusCode(200)
                .extract()
                .asString();
    }

    private static JsonNode resolved(JsonNode example) {
        return example.has("$ref")
                ? Contract.document().at(example.path("$ref").asText().substring(1))
                : example;
    }

    private static Stream<Map.Entry<String, JsonNode>> stream(JsonNode node) {
        return node.properties().stream();
    }

    /** Not a test: {@code mvn test -Dtest=ExamplesTest#record -Dexamples=record} writes the answers down anew. */
    @Test
    @EnabledIfSystemProperty(named = "examples", matches = "record")
    void record() throws IOException {
        for (Map.Entry<String, BadRequests.BadRequest> request : BadRequests.ALL.entrySet()) {
            write(request.getKey(), request.getValue().answer().toString());
        }
        for (Map.Entry<String, JsonNode> path :
                Contract.document().path("paths").properties()) {
            boolean posted = path.getValue().has("post");
            JsonNode operation = path.getValue().path(posted ? "post" : "get");
            String id = operation.path("operationId").asText();
            if (!answersJson(operation) || id.equals("findDesign")) {
                continue;
            }
            if (!posted) {
                String name = NAMES.getOrDefault(id, "all");
                write(id + "/" + name, read(path.getKey(), name));
            } else {
                String answer = answer(path.getKey(), operation, Posted.MAIN);
                if (IndentedJson.of(answer).length() <= LONGEST) {
                    write(id + "/" + Posted.MAIN, answer);
                }
            }
        }
    }

    private static void write(String name, String json) throws IOException {
        Path file = Path.of("src/main/resources/examples", name + ".json");
        Files.createDirectories(file.getParent());
        Files.writeString(file, IndentedJson.of(json) + "\n");
    }
}
