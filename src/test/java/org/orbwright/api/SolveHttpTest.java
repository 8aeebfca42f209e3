package org.orbwright.api;

import static org.hamcrest.Matchers.closeTo;
import static org.hamcrest.Matchers.contains;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.greaterThan;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.hasItems;
import static org.hamcrest.Matchers.lessThan;
import static org.hamcrest.Matchers.not;
import static org.hamcrest.Matchers.nullValue;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.http.ContentType;
import io.restassured.response.ValidatableResponse;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import org.junit.jupiter.api.Test;

/** Widths for what both spheres show, over HTTP: a design whose wishes for one sphere spoil its twin. */
@QuarkusTest
class SolveHttpTest {
    private static final String PATH = "/v1/bands/solve";

    /** Two spheres; every wish is about the upright one, and the last band is left to take what remains. */
    private static ObjectNode twins() {
        try (InputStream in = SolveHttpTest.class.getResourceAsStream("/cases/solve-spoils-the-twin.json")) {
            return (ObjectNode) new ObjectMapper().readTree(in);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static ArrayNode wishes(ObjectNode document) {
        return document.withObject("/solve").withArray("wishes");
    }

    private static ValidatableResponse solved(ObjectNode document) {
        return Contract.request()
                .contentType(ContentType.JSON)
                .body(document.toString())
                .post(PATH)
                .then();
    }

    /** The same with a wish for the inverted sphere's rim in place of the rest. */
    private static ObjectNode withTheTwinsRim() {
        ObjectNode document = twins();
        wishes(document).remove(3);
        wishes(document)
                .addObject()
                .put("band", 4)
                .put("measure", "EDGE_MIDDLE")
                .put("set", "INVERTED")
                .put("value", 0.2);
        return document;
    }

    @Test
    void rimThatTheTwinLosesIsFound() {
        solved(twins())
                .statusCode(200)
                .body("solve.bands[3].seen.set", contains("UPRIGHT", "INVERTED"))
                .body("solve.bands[3].seen[1].edgeMiddle.toDouble()", equalTo(0.0))
                .body("findings.code", hasItems("BAND_VANISHES", "BAND_NOT_WISHED"))
                .body(
                        "findings.find { it.code == 'WISHES_NOT_MET' }.message",
                        containsString("The step leaves wish 2 3.57 % off. Without a step all wishes come true."))
                .body(
                        "findings.find { it.code == 'BAND_NOT_WISHED' }.message",
                        containsString("band 4 (wenge) in the inverted segments"))
                .body("solve.worstWithoutStep.toDouble()", equalTo(0.0));
    }

    @Test
    void aWishForTheTwinKeepsItsRim() {
        solved(withTheTwinsRim())
                .statusCode(200)
                .body("solve.bands[3].seen[1].edgeMiddle.toDouble()", greaterThan(0.15))
                .body("findings.code", not(hasItem("BAND_VANISHES")))
                .body("findings.code", hasItem("WISHES_NOT_MET"))
                .body("findings.find { it.code == 'WISHES_NOT_MET' }.message", containsString("Without wish 1"))
                .body("solve.worst.toDouble()", closeTo(0.1, 0.05))
                .body("solve.wishes.set", contains("UPRIGHT", "UPRIGHT", "UPRIGHT", "INVERTED"))
                .body("document.laminations[0].bands[3].width", nullValue());
    }

    @Test
    void theAnsweredDocumentIsAnsweredAlikeByTheBands() {
        String document = Contract.json(solved(withTheTwinsRim()).extract().asString())
                .path("document")
                .toString();
        double rim = solved(withTheTwinsRim()).extract().jsonPath().getDouble("solve.bands[3].seen[1].edgeMiddle");
        Contract.request()
                .contentType(ContentType.JSON)
                .body(document)
                .post("/v1/bands")
                .then()
                .statusCode(200)
                .body("bands.faces[0].segments[0].inverted[0].visibleWidth.edgeMiddle.toDouble()", closeTo(rim, 2e-5))
                .body("findings.size()", lessThan(10));
    }

    @Test
    void aMixedSphereThatIsNotMadeIsRefused() {
        ObjectNode document = twins();
        ((ObjectNode) wishes(document).get(0)).put("set", "MIXED");
        solved(document)
                .statusCode(422)
                .body("violations[0].path", equalTo("/solve/wishes/0/set"))
                .body("violations[0].code", equalTo("SET_NOT_MADE"))
                .body("violations[0].rejected", equalTo("MIXED"))
                .body("violations[0].allowed", containsString("UPRIGHT or INVERTED"));
    }

    @Test
    void withMixedSetsTheWishesAreAboutTheOneSphere() {
        ObjectNode document = twins();
        document.put("copies", 1).put("sets", "MIXED");
        solved(document)
                .statusCode(200)
                .body("solve.set", equalTo("MIXED"))
                .body("solve.wishes.set", contains("MIXED", "MIXED", "MIXED"))
                .body("solve.bands[0].seen.set", contains("UPRIGHT", "INVERTED", "MIXED"));
    }
}
