package org.orbwright.api;

import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.everyItem;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.hasKey;
import static org.hamcrest.Matchers.hasSize;
import static org.hamcrest.Matchers.not;
import static org.hamcrest.Matchers.nullValue;
import static org.hamcrest.Matchers.startsWith;
import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.http.ContentType;
import io.restassured.response.ValidatableResponse;
import io.restassured.specification.RequestSpecification;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Tips, chips and plugs through HTTP and the contract. */
@QuarkusTest
class InlayHttpTest {
    /** The lantern with this section in place of its own. */
    private static ObjectNode lantern(String inlays) {
        ObjectNode body = Posted.only(Posted.lantern(), "inlays");
        body.set("inlays", Contract.json(inlays));
        return body;
    }

    private static ValidatableResponse post(RequestSpecification request, ObjectNode body) {
        return request.contentType(ContentType.JSON)
                .body(body.toString())
                .post("/v1/inlays")
                .then();
    }

    @Test
    void chipsAreAnsweredWithTheirPlugAndTheDocumentCanBePostedAgain() {
        String first = post(Contract.request(), lantern("{ \"chips\": { \"length\": 2.3 } }"))
                .statusCode(200)
                .body("inlays.chips.hole.tips", equalTo(5))
                .body("inlays.chips.hole.diameter", equalTo(4.6f))
                .body("inlays.chips.plug.smallestDiameter", equalTo(4.6f))
                .body("inlays.chips.plug.diameter", equalTo(5))
                .body("inlays.chips.plug.fits", equalTo(true))
                .body("inlays.chips.recuts", hasSize(1))
                .body("inlays.tips.tips[0].grain", equalTo("ACROSS"))
                .body("inlays.tips.help", hasItem(startsWith("Face the gauge")))
                .body("document.inlays.shape.diameter", equalTo(5))
                .body("document.inlays.chips.measured", equalTo("ALONG_LEG"))
                .body("findings.code", hasItem("TIP_SHORT_GRAIN"))
                .body("cautions.step", hasItem("CROSSCUTTING"))
                .body("cautions.text", everyItem(not(equalTo(""))))
                .extract()
                .asString();
        JsonNode document = Contract.json(first).path("document");
        post(Contract.request(), (ObjectNode) document)
                .statusCode(200)
                .body("inlays.chips.hole.coveredByInlay", equalTo(true))
                .body("inlays.pocket.depth", equalTo(depth(first)));
    }

    private static float depth(String answer) {
        return (float) Contract.json(answer).at("/inlays/pocket/depth").asDouble();
    }

    @Test
    void anEmptySectionAnswersTheTipsAlone() {
        post(Contract.request(), lantern("{}"))
                .statusCode(200)
                .body("inlays", not(hasKey("pocket")))
                .body("inlays", not(hasKey("chips")))
                .body("inlays.covered", hasSize(0))
                .body("document.inlays.shape", nullValue());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "{ \"chips\": { \"length\": 500 } };/inlays/chips/length;CHIP_TOO_LONG",
                "{ \"chips\": { \"length\": 2, \"depth\": 400 } };/inlays/chips/depth;CHIP_TOO_DEEP",
                "{ \"chips\": { \"length\": 2, \"tips\": 6 } };/inlays/chips/tips;MORE_TIPS_THAN_SEGMENTS",
                "{ \"tipDistance\": 500 };/inlays/tipDistance;BEYOND_BASE"
            })
    void whatCannotBreakOffIsRefused(String inlays, String path, String code) {
        post(Contract.request(), lantern(inlays))
                .statusCode(422)
                .body("violations[0].path", equalTo(path))
                .body("violations[0].code", equalTo(code));
    }

    @Test
    void aChipWithoutALengthIsInvalid() {
        post(Contract.badRequest(), lantern("{ \"chips\": { \"depth\": 2 } }"))
                .statusCode(400)
                .body("violations[0].path", equalTo("/inlays/chips/length"));
    }

    @Test
    void theSawsAnswerSaysWhereTheTipLiesInEachCut() {
        Contract.request()
                .contentType(ContentType.JSON)
                .body(Posted.only(Posted.lantern(), "jig").toString())
                .post("/v1/jig")
                .then()
                .statusCode(200)
                .body("jig.faces[0].segments[0].tipCuts", hasSize(4))
                .body("jig.faces[0].segments[0].tipCuts[1].bladeAtTip", equalTo("ENTERS"))
                .body("jig.faces[0].segments[0].tipCuts[1].cornerAngle", equalTo(72))
                .body("jig.faces[0].segments[0].tipCuts[3].bladeAtTip", equalTo("LEAVES"));
    }

    @Test
    void aPocketWithoutAShapeIsRefusedWithItsField() {
        String body = lantern("{}").toString();
        for (String address : new String[] {"/v1/bodies/pocket", "/v1/drawings/pocket"}) {
            String path = Contract.request()
                    .contentType(ContentType.JSON)
                    .body(body)
                    .post(address)
                    .then()
                    .statusCode(422)
                    .extract()
                    .path("violations[0].path");
            assertEquals("/inlays/shape", path);
        }
    }
}
