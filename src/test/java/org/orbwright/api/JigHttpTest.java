package org.orbwright.api;

import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.everyItem;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.hasSize;
import static org.hamcrest.Matchers.startsWith;
import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.databind.node.ObjectNode;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.http.ContentType;
import io.restassured.specification.RequestSpecification;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.orbwright.api.wire.Problem;

/** Set-ups of the saw through HTTP and the contract. */
@QuarkusTest
class JigHttpTest {
    private static final String FIRST = "jig.faces[0].segments[0].left.mitre.";

    private static ObjectNode example() {
        return Posted.only(Posted.lantern(), "jig");
    }

    private static ObjectNode jig(ObjectNode body) {
        return (ObjectNode) body.path("jig");
    }

    private static ObjectNode with(String field, double value) {
        ObjectNode body = example();
        jig(body).put(field, value);
        return body;
    }

    private static RequestSpecification sent(RequestSpecification request, ObjectNode body) {
        return request.contentType(ContentType.JSON).body(body.toString());
    }

    private static float stack(ObjectNode body) {
        return sent(Contract.request(), body)
                .post("/v1/jig")
                .then()
                .statusCode(200)
                .extract()
                .path(FIRST + "sineBarStack");
    }

    @Test
    void theLanternIsAnsweredWithItsCautions() {
        sent(Contract.request(), example())
                .post("/v1/jig")
                .then()
                .statusCode(200)
                .body(FIRST + "sineBarStack", equalTo(58.7785f))
                .body("jig.faces[0].bevel.tilt.angle", equalTo(31.7175f))
                .body("findings.field", everyItem(startsWith("/")))
                .body("cautions.step", hasItem("BEVELLING"))
                .body("cautions.text", hasItem(startsWith("Where a hold-down presses")))
                .body("cautions.text", hasItem(startsWith("The bevel cut frees a wedge under the panel")))
                .body("cautions.text", hasItem(startsWith("The stop sits on the mitre gauge or the carrier")));
    }

    @Test
    void whatIsLeftOutIsTheUsual() {
        ObjectNode body = example();
        jig(body).remove("sineBar");
        jig(body).putNull("run");
        assertEquals(stack(example()), stack(body));
    }

    @Test
    void twiceTheBarTakesTwiceTheStack() {
        assertEquals(117.5571f, stack(with("sineBar", 200)));
    }

    @ParameterizedTest
    @CsvSource({"sineBar,0", "sineBar,-100", "sineBar,1e9", "run,0", "run,1e300"})
    void absurdLengthsAreRefused(String field, double value) {
        sent(Contract.badRequest(), with(field, value))
                .post("/v1/jig")
                .then()
                .statusCode(400)
                .contentType(Problem.MEDIA_TYPE)
                .body("violations", hasSize(1))
                .body("violations[0].path", equalTo("/jig/" + field));
    }

    @Test
    void aTextForALengthIsRefused() {
        ObjectNode body = example();
        jig(body).put("sineBar", "five inches");
        sent(Contract.badRequest(), body)
                .post("/v1/jig")
                .then()
                .statusCode(400)
                .body("violations[0].path", equalTo("/jig/sineBar"));
    }

    @Test
    void aLandAsThickAsThePanelIsRefusedAtItsPlace() {
        ObjectNode body = example();
        ((ObjectNode) body.at("/panel")).put("land", 28);
        sent(Contract.request(), body)
                .post("/v1/jig")
                .then()
                .statusCode(422)
                .body("violations[0].path", startsWith("/panel"))
                .body("violations[0].code", equalTo("LAND_TOO_HIGH"));
    }
}
