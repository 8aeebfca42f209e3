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
import org.orbwright.band.WidthSolution;
import org.orbwright.sheet.AssemblyAnswer;
import org.orbwright.sheet.BalanceAnswer;
import org.orbwright.sheet.BodyAnswer;
import org.orbwright.sheet.CutsAnswer;
import org.orbwright.sheet.DiagnosisAnswer;
import org.orbwright.sheet.InlayAnswer;
import org.orbwright.sheet.JigAnswer;
import org.orbwright.sheet.MovementAnswer;
import org.orbwright.sheet.PathAnswer;
import org.orbwright.sheet.PurchasesAnswer;
import org.orbwright.sheet.Sheet;
import org.orbwright.sheet.StockAnswer;
import org.orbwright.sheet.ToleranceAnswer;
import org.orbwright.sheet.TurningAnswer;
import org.orbwright.solid.Solid;
import org.orbwright.wood.Wood;

/** The examples beside the fields of the answers go together: they are what the service says of one worked design. */
@QuarkusTest
class DescribedExamplesTest {
    private static final String DESIGN = "dodecahedron-with-land";
    /** The design above gives no cause for a finding. */
    private static final String FAULTY = "dodecahedron-vanishing-rim";

    @TestFactory
    Stream<DynamicTest> everyExampleIsTheFirstRealAnswer() {
        Map<String, Example> examples = new LinkedHashMap<>();
        collect(post("/v1/sheet", design(DESIGN)), Sheet.class, examples);
        collect(post("/v1/sheet", design(FAULTY)), Sheet.class, examples);
        collect(post("/v1/inlays", request("planInlays/twelve-motifs")), InlayAnswer.class, examples);
        collect(post("/v1/bands/solve", request("solveWidths/what-should-be-seen")), WidthSolution.class, examples);
        collect(post("/v1/movement", request("calculateMovement/winter-and-summer")), MovementAnswer.class, examples);
        collect(post("/v1/turning", request("planTurning/lantern-between-discs")), TurningAnswer.class, examples);
        collect(
                post("/v1/turning/path", request("planToolPath/lantern-on-a-rotary-table")),
                PathAnswer.class,
                examples);
        collect(post("/v1/bodies/sphere?format=json", design(DESIGN)), BodyAnswer.class, examples);
        collect(post("/v1/balance", request("balanceWork/lantern-with-odd-panels")), BalanceAnswer.class, examples);
        collect(post("/v1/jig", request("planJig/lantern-on-a-sine-bar")), JigAnswer.class, examples);
        collect(post("/v1/stock", request("planStock/two-lanterns")), StockAnswer.class, examples);
        collect(post("/v1/stock/cuts", request("planStock/two-lanterns")), CutsAnswer.class, examples);
        collect(post("/v1/stock/purchases", request("planStock/two-lanterns")), PurchasesAnswer.class, examples);
        collect(post("/v1/assembly", request("planAssembly/white-glue")), AssemblyAnswer.class, examples);
        collect(post("/v1/tolerance", request("calculateTolerance/a-careful-saw")), ToleranceAnswer.class, examples);
        collect(post("/v1/diagnosis", request("diagnoseTests/first-test-pieces")), DiagnosisAnswer.class, examples);
        collect(get("/v1/woods/walnut"), Wood.class, examples);
        collect(get("/v1/woods"), WoodsResource.WoodList.class, examples);
        collect(get("/v1/solids/dodecahedron"), Solid.class, examples);
        collect(listed("/v1/solids", "solids", "dodecahedron"), SolidsResource.SolidList.class, examples);
        collect(listed("/v1/designs", "designs", DESIGN), DesignsResource.DesignList.class, examples);
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

    /** Notes the first answer for each field that holds a number, a text, a flag or a list of these. */
    private static void collect(JsonNode answer, Class<?> type, Map<String, Example> examples) {
        for (RecordComponent component : type.getRecordComponents()) {
            JsonNode value = answer.path(component.getName());
            FieldRules field = FieldRules.of(component);
            if (value.isMissingNode() || value.isNull()) {
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

    private static String design(String name) {
        return DesignLibrary.find(name).orElseThrow().json();
    }

    private static String request(String name) {
        int slash = name.indexOf('/');
        return JsonResources.in("requests/" + name.substring(0, slash)).get(name.substring(slash + 1));
    }

    private static JsonNode get(String address) {
        return Contract.json(Contract.request().get(address).asString());
    }

    private static JsonNode post(String address, String body) {
        return Contract.json(Contract.request()
                .contentType(ContentType.JSON)
                .body(body)
                .post(address)
                .asString());
    }
}
