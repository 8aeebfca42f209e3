package org.orbwright.api;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import io.quarkus.test.junit.QuarkusTest;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** The contract says of everything what it is. */
@QuarkusTest
class ContractTest {
    private JsonNode contract;

    /** Not when the test is made: the service's port is not known then. */
    @BeforeEach
    void read() {
        contract = Contract.document();
    }

    @Test
    void isOfTheVersionThatEveryToolReads() {
        assertEquals("3.0.3", contract.path("openapi").asText());
        assertEquals("/", contract.at("/servers/0/url").asText());
    }

    @Test
    void everyOperationIsDescribedAndDeclaresItsProblems() {
        Set<String> ids = new HashSet<>();
        assertAll(operations().map(operation -> () -> {
            String id = operation.path("operationId").asText();
            assertTrue(ids.add(id), "operationId " + id + " is missing or used twice");
            assertFalse(operation.path("summary").asText().isBlank(), id);
            assertFalse(operation.path("description").asText().isBlank(), id);
            List<String> statuses = new ArrayList<>();
            operation.path("responses").fieldNames().forEachRemaining(statuses::add);
            assertEquals("200", statuses.get(0), id);
            assertTrue(statuses.containsAll(List.of("406", "414", "431", "500")), id);
            if (operation.has("requestBody")) {
                assertTrue(statuses.containsAll(List.of("400", "413", "415", "422")), id);
                assertTrue(operation.at("/requestBody/required").asBoolean(), id);
            }
        }));
    }

    /** A generator makes a method without a result of an answer without a schema. */
    @Test
    void everyAnswerHasASchemaAndFilesAreBinary() {
        assertAll(operations().map(operation -> () -> {
            JsonNode content = operation.at("/responses/200/content");
            assertFalse(content.isEmpty(), operation.path("operationId").asText());
            for (Map.Entry<String, JsonNode> form : content.properties()) {
                String where = operation.path("operationId").asText() + " as " + form.getKey();
                JsonNode schema = form.getValue().path("schema");
                assertTrue(schema.has("$ref") || schema.has("type"), where);
                boolean file = form.getKey().matches("(image|model)/.*|application/(pdf|zip|vnd\\..*)");
                assertEquals(file ? "binary" : "", schema.path("format").asText(), where);
            }
        }));
    }

    @Test
    void everyProblemHasTheOneShape() {
        contract.at("/components/responses")
                .forEach(answer -> assertEquals(
                        "#/components/schemas/Problem",
                        answer.at("/content/application~1problem+json/schema/$ref")
                                .asText()));
    }

    @Test
    void everySchemaIsDescribedAndClosed() {
        assertAll(schemas().map(schema -> () -> {
            JsonNode value = schema.getValue();
            assertFalse(value.path("description").asText().isBlank(), schema.getKey());
            assertTrue(value.has("enum") || value.path("additionalProperties").isBoolean(), schema.getKey());
            assertFalse(value.path("additionalProperties").asBoolean(), schema.getKey());
        }));
    }

    @Test
    void everyPropertyIsDescribedAndScalarsHaveAnExample() {
        assertAll(properties().map(property -> () -> {
            JsonNode value = property.getValue();
            assertFalse(
                    resolved(value).path("description").asText().isBlank(), property.getKey() + " has no description");
            boolean scalar = !value.has("$ref") && !value.path("type").asText().equals("array");
            assertTrue(!scalar || value.has("example"), property.getKey() + " has no example");
            assertFalse(value.has("oneOf") || value.has("anyOf") || value.has("allOf"), property.getKey());
        }));
    }

    /** Unbounded numbers overflow somewhere inside sooner or later. */
    @Test
    void everyNumberTextAndListOfARequestIsBounded() {
        Deque<String> open = new ArrayDeque<>(List.of("Document"));
        while (!open.isEmpty()) {
            String name = open.pop();
            for (Map.Entry<String, JsonNode> property :
                    schema(name).path("properties").properties()) {
                JsonNode value = property.getValue();
                String where = name + "." + property.getKey();
                switch (value.path("type").asText()) {
                    case "number", "integer" -> assertTrue(value.has("minimum") && value.has("maximum"), where);
                    case "string" -> assertTrue(value.has("maxLength"), where);
                    case "array" -> {
                        assertTrue(value.has("minItems") && value.has("maxItems"), where);
                        if (value.path("items").has("$ref")) {
                            open.push(name(value.path("items")));
                        } else {
                            JsonNode item = value.path("items");
                            assertTrue(item.has("maxLength") || (item.has("minimum") && item.has("maximum")), where);
                        }
                    }
                    default -> open.push(name(value));
                }
            }
        }
    }

    private Stream<JsonNode> operations() {
        return contract.path("paths").properties().stream()
                .flatMap(path -> path.getValue().properties().stream())
                .map(Map.Entry::getValue);
    }

    private Stream<Map.Entry<String, JsonNode>> schemas() {
        return contract.at("/components/schemas").properties().stream();
    }

    private Stream<Map.Entry<String, JsonNode>> properties() {
        return schemas()
                .flatMap(schema -> schema.getValue().path("properties").properties().stream()
                        .map(property -> Map.entry(schema.getKey() + "." + property.getKey(), property.getValue())));
    }

    private JsonNode resolved(JsonNode schema) {
        return schema.has("$ref") ? schema(name(schema)) : schema;
    }

    private JsonNode schema(String name) {
        return contract.at("/components/schemas/" + name);
    }

    private static String name(JsonNode reference) {
        return reference.path("$ref").asText().replace("#/components/schemas/", "");
    }
}
