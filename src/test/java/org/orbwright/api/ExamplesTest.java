package org.orbwright.api;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import com.fasterxml.jackson.databind.JsonNode;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.http.ContentType;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;

/** The answers that the contract shows are the answers that the service gives. */
@QuarkusTest
class ExamplesTest {
    private static final Map<String, String> NAMES = Map.of("findSolid", "dodecahedron");

    @TestFactory
    Stream<DynamicTest> everyExampleIsTheRealAnswer() {
        return stream(Contract.document().path("paths"))
                .flatMap(path -> stream(path.getValue())
                        .flatMap(operation -> examples(path.getKey(), operation.getKey(), operation.getValue())));
    }

    @TestFactory
    Stream<DynamicTest> everyWorkedDesignIsAnsweredByEveryOperation() {
        return stream(Contract.document().path("paths"))
                .filter(path -> path.getValue().has("post"))
                .flatMap(path -> DesignLibrary.all().keySet().stream()
                        .map(name -> DynamicTest.dynamicTest(
                                path.getKey() + " " + name, () -> answer(path.getKey(), "post", name))));
    }

    private static Stream<DynamicTest> examples(String path, String method, JsonNode operation) {
        JsonNode examples = operation.at("/responses/200/content/application~1json/examples");
        assertFalse(examples.isEmpty(), method + " " + path + " has no example");
        return stream(examples)
                .map(example -> DynamicTest.dynamicTest(
                        method + " " + path + " " + example.getKey(),
                        () -> assertEquals(
                                resolved(example.getValue()).path("value"),
                                Contract.json(answer(path, method, example.getKey())))));
    }

    private static String answer(String path, String method, String name) {
        if (method.equals("get")) {
            return Contract.request()
                    .get(path.replaceAll("\\{.*}", name))
                    .then()
                    .statusCode(200)
                    .extract()
                    .asString();
        }
        JsonNode design = Contract.document().at("/components/examples/" + name + "/value");
        return Contract.request()
                .contentType(ContentType.JSON)
                .body(design.toString())
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
        for (Map.Entry<String, JsonNode> path :
                Contract.document().path("paths").properties()) {
            String method = path.getValue().has("post") ? "post" : "get";
            String operation = path.getValue().path(method).path("operationId").asText();
            String name = NAMES.getOrDefault(operation, method.equals("post") ? "dodecahedron-two-spheres" : "all");
            if (!operation.equals("findDesign")) {
                write(operation + "/" + name, answer(path.getKey(), method, name));
            }
        }
    }

    private static void write(String name, String json) throws IOException {
        Path file = Path.of("src/main/resources/examples", name + ".json");
        Files.createDirectories(file.getParent());
        Files.writeString(file, PrintSheet.indented(json) + "\n");
    }
}
