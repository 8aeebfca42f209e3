package org.orbwright.api;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import io.restassured.specification.RequestSpecification;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/** Each operation answers what its page of documentation fills in: the examples of body and parameters together. */
@QuarkusTest
class FilledInTest {
    private JsonNode contract;

    @TestFactory
    Stream<DynamicTest> theExamplesOfAnOperationGoTogether() {
        contract = Contract.document();
        return contract.path("paths").properties().stream()
                .flatMap(path -> path.getValue().properties().stream()
                        .map(method -> DynamicTest.dynamicTest(
                                method.getKey() + " " + path.getKey(),
                                () -> isAnswered(path.getKey(), method.getKey(), method.getValue()))));
    }

    private void isAnswered(String path, String method, JsonNode operation) {
        String first = operation.at("/responses/200/content").fieldNames().next();
        RequestSpecification request =
                Contract.request().config(Posted.LINES_AS_TEXT).accept(first);
        for (JsonNode parameter : operation.path("parameters")) {
            String name = parameter.path("name").asText();
            if (parameter.has("example")) {
                String example = parameter.path("example").asText();
                request = parameter.path("in").asText().equals("path")
                        ? request.pathParam(name, example)
                        : request.queryParam(name, example);
            }
        }
        for (Map.Entry<String, JsonNode> body :
                operation.at("/requestBody/content").properties()) {
            request = request.contentType(body.getKey()).body(body(body.getValue()));
        }
        Response answer = request.request(method, path);
        assertEquals(200, answer.statusCode(), answer::asString);
    }

    private String body(JsonNode media) {
        if (media.has("example")) {
            return media.path("example").asText();
        }
        JsonNode first = media.path("examples").properties().iterator().next().getValue();
        ObjectNode document = contract.at(first.path("$ref").asText().substring(1))
                .path("value")
                .deepCopy();
        return Addresses.quick(document).toString();
    }
}
