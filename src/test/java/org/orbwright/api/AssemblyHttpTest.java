package org.orbwright.api;

import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.hasSize;
import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.http.ContentType;
import io.restassured.response.ValidatableResponse;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.orbwright.api.wire.Problem;
import org.orbwright.solid.Solid;
import org.orbwright.solid.SolidCatalogue;

/** The order of gluing through HTTP and the contract. */
@QuarkusTest
class AssemblyHttpTest {
    private static ObjectNode example() {
        return Posted.only(Posted.lantern(), "assembly");
    }

    private static ObjectNode glue(ObjectNode request) {
        return (ObjectNode) request.at("/assembly/glue");
    }

    private static ValidatableResponse answered(JsonNode request) {
        return Contract.request()
                .contentType(ContentType.JSON)
                .body(request.toString())
                .post("/v1/assembly")
                .then()
                .statusCode(200);
    }

    private static ValidatableResponse refused(JsonNode request, int status, String path, String code) {
        return Contract.badRequest()
                .contentType(ContentType.JSON)
                .body(request.toString())
                .post("/v1/assembly")
                .then()
                .statusCode(status)
                .contentType(Problem.MEDIA_TYPE)
                .body("violations", hasSize(1))
                .body("violations[0].path", equalTo(path))
                .body("violations[0].code", equalTo(code));
    }

    @Test
    void theStagesOfTheDodecahedron() {
        answered(example())
                .body("assembly.stages.work", equalTo(List.of("FIRST_CAP", "SECOND_CAP", "CLOSING")))
                .body("assembly.stages.glue.seams", equalTo(List.of(10, 10, 10)))
                .body("assembly.stages[0].seams[0].length", equalTo(76.245f))
                .body("assembly.panelGluings[0].stages.work", equalTo(List.of("WHOLE")))
                .body("assembly.spheres.set", equalTo(List.of("UPRIGHT", "INVERTED")))
                .body("assembly.nets.cap", equalTo(List.of("FIRST", "SECOND")))
                .body("assembly.nets[0].hinges", hasSize(5))
                .body("assembly.nets[0].folding", hasSize(5))
                .body("assembly.nets[0].last", hasSize(10))
                .body("cautions.step", hasItem("GLUING"));
    }

    /** White glue stays open for 3 to 5 minutes, yellow glue for 5 to 6 (Canadian Woodworking, "Glues"). */
    @Test
    void glueMayBeLeftOut() {
        ObjectNode request = example();
        request.remove("assembly");
        answered(request)
                .body("assembly.glue.spread", equalTo(200))
                .body("assembly.glue.openTime", equalTo(3))
                .body("assembly.glue.mostSeams", equalTo(9));
        request.set("assembly", Contract.json("{\"glue\": {\"openTime\": null}}"));
        answered(request).body("assembly.glue.openTime", equalTo(3));
    }

    @Test
    void glueIsInGramsAndAreaInTheUnitOfTheDesign() {
        ObjectNode inches = Posted.with(Posted.twoSpheres(), "assembly", Posted.lantern());
        JsonNode totals = Contract.json(answered(inches).extract().asString()).at("/assembly/totals");
        double squareMetres = totals.path("glueArea").asDouble() * 25.4 * 25.4 * 1e-6;
        assertEquals(180 * squareMetres, totals.path("glueMass").asDouble(), 0.001);
        assertEquals(
                2 * totals.path("glueMass").asDouble()
                        + totals.path("blankMass").asDouble(),
                totals.path("glueMassOfCopies").asDouble(),
                0.002);
    }

    @Test
    void aShortOpenTimeIsFound() {
        ObjectNode request = example();
        glue(request).put("openTime", 0.1);
        answered(request)
                .body("assembly.glue.mostSeams", equalTo(0))
                .body("findings[0].code", equalTo("OPEN_TIME_SHORT"))
                .body("findings[0].message", containsString("open time of 0.1 min"));
        glue(request).put("openTime", 3.6);
        answered(request).body("findings.code", hasItem("STAGES_ADDED"));
    }

    @ParameterizedTest
    @CsvSource({"tetrahedron, 6", "cuboctahedron, 24", "deltoidal-icositetrahedron, 48"})
    void otherSolidsHaveAnswersThatKeepTheContract(String name, int seams) {
        ObjectNode request = example();
        Solid solid = SolidCatalogue.find(name).orElseThrow();
        request.put("solid", name);
        request.set(
                "laminations",
                Contract.JSON.valueToTree(solid.faceKinds().stream()
                        .map(kind -> Contract.json("{\"face\": \"" + kind.face()
                                + "\", \"bands\": [{\"species\": \"sugar maple\", \"width\": null}]}"))
                        .toList()));
        answered(request)
                .body("assembly.panels", hasSize(solid.faces().size()))
                .body("assembly.totals.seams", equalTo(seams));
    }

    @ParameterizedTest
    @CsvSource({
        "spread, 0, OUT_OF_RANGE, 1 to 2000 in grams per square metre",
        "spread, 1e308, OUT_OF_RANGE, 1 to 2000 in grams per square metre",
        "openTime, -3, OUT_OF_RANGE, 0.1 to 1440 in minutes",
        "openTime, true, WRONG_TYPE, 0.1 to 1440 in minutes",
        "seamsPerMinute, 0, OUT_OF_RANGE, 0.01 to 60",
        "seamsPerMinute, [], WRONG_TYPE, 0.01 to 60"
    })
    void aWrongNumberIsNamedWithWhatIsAllowed(String field, String value, String code, String allowed) {
        ObjectNode request = example();
        glue(request).set(field, Contract.json(value));
        refused(request, 400, "/assembly/glue/" + field, code).body("violations[0].allowed", equalTo(allowed));
    }

    @Test
    void whatIsUnknownOrMissingIsNamed() {
        ObjectNode request = example();
        glue(request).put("clamps", 4);
        refused(request, 400, "/assembly/glue/clamps", "UNKNOWN_FIELD");
        ObjectNode missing = example();
        missing.remove("size");
        refused(missing, 400, "/size", "MISSING");
    }

    @Test
    void anImpossibleDesignIsPointedAt() {
        ObjectNode request = example();
        request.put("solid", "qube");
        refused(request, 422, "/solid", "UNKNOWN_SOLID");
        ObjectNode thick = example();
        ((ObjectNode) thick.at("/panel")).put("thickness", 500);
        refused(thick, 422, "/panel/thickness", "PANEL_TOO_THICK");
    }
}
