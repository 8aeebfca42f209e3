package org.orbwright.api;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.databind.JsonNode;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.http.ContentType;
import java.lang.reflect.RecordComponent;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.orbwright.api.wire.FieldRules;
import org.orbwright.api.wire.Problem;
import org.orbwright.sheet.Answer;
import org.orbwright.solid.Solid;
import org.orbwright.wood.Wood;

/**
 * The examples beside the fields of the answers go together: they are what the service says of the main worked
 * document.
 */
@QuarkusTest
class DescribedExamplesTest {
    @TestFactory
    Stream<DynamicTest> everyExampleIsTheFirstRealAnswer() {
        Map<String, Example> examples = new LinkedHashMap<>();
        for (String address : List.of(
                "sheet",
                "inlays",
                "bands/solve",
                "movement",
                "turning",
                "turning/path",
                "bodies/sphere?format=json",
                "balance",
                "jig",
                "stock",
                "stock/cuts",
                "stock/purchases",
                "stock/reach",
                "assembly",
                "tolerance",
                "diagnosis")) {
            collect(post("/v1/" + address), Answer.class, examples);
        }
        collect(get("/v1/woods/hickory"), Wood.class, examples);
        collect(get("/v1/woods"), WoodsResource.WoodList.class, examples);
        collect(get("/v1/solids/dodecahedron"), Solid.class, examples);
        collect(listed("/v1/solids", "solids", "dodecahedron"), SolidsResource.SolidList.class, examples);
        collect(listed("/v1/designs", "designs", Posted.MAIN), DesignsResource.DesignList.class, examples);
        collect(BadRequests.ALL.get("INVALID_REQUEST/size-below-zero").answer(), Problem.class, examples);
        return examples.entrySet().stream()
                .map(example -> DynamicTest.dynamicTest(
                        example.getKey(),
                        () -> assertEquals(
                                example.getValue().answered(),
                                example.getValue().stated(),
                                example.getKey())));
    }

    /** An example as the description states it, and the service's answer. */
    private record Example(JsonNode stated, JsonNode answered) {}

    /**
     * Notes the first answer for each field that holds a number, a text, a flag or a list of these; none of the
     * document.
     */
    private static void collect(JsonNode answer, Class<?> type, Map<String, Example> examples) {
        for (RecordComponent component : type.getRecordComponents()) {
            JsonNode value = answer.path(component.getName());
            FieldRules field = FieldRules.of(component);
            if (value.isMissingNode() || value.isNull() || FieldRules.isRequest(field.element())) {
                continue;
            }
            if (field.element().isRecord()) {
                Iterable<JsonNode> parts = field.isList() ? value : List.of(value);
                parts.forEach(part -> collect(part, field.element(), examples));
            } else {
                examples.putIfAbsent(
                        type.getSimpleName() + "." + component.getName(),
                        new Example(Contract.json(field.describe().example()), value));
            }
        }
    }

    /** A list whose only item is the one of this name. */
    private static JsonNode listed(String address, String list, String name) {
        JsonNode answer = get(address);
        for (JsonNode item : answer.path(list)) {
            if (item.path("name").asText().equals(name)) {
                return Contract.JSON
                        .createObjectNode()
                        .set(list, Contract.JSON.createArrayNode().add(item));
            }
        }
        throw new AssertionError(address + " lists no " + name);
    }

    private static JsonNode get(String address) {
        return Contract.json(Contract.request().get(address).asString());
    }

    private static JsonNode post(String address) {
        return Contract.json(Contract.request()
                .contentType(ContentType.JSON)
                .body(Posted.worked().toString())
                .post(address)
                .asString());
    }
}
