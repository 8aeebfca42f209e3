package org.orbwright.api;

import static org.hamcrest.MatcherAssert.assertThat;
import static org.hamcrest.Matchers.closeTo;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.endsWith;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.hasItems;
import static org.hamcrest.Matchers.not;
import static org.hamcrest.Matchers.nullValue;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.node.ObjectNode;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.http.ContentType;
import io.restassured.response.ValidatableResponse;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The work on the lathe through HTTP and the contract. */
@QuarkusTest
class TurningHttpTest {
    private static ObjectNode example() {
        return Posted.only(Posted.lantern(), "balance", "turning");
    }

    private static ValidatableResponse balance(ObjectNode body) {
        return Contract.request()
                .contentType(ContentType.JSON)
                .body(body.toString())
                .post("/v1/balance")
                .then();
    }

    @Test
    void theHeavySideIsNamedWithItsForceAndTheCautions() {
        ObjectNode body = example();
        body.set("woods", Contract.json("[{\"name\":\"sugar maple\",\"density\":690}]"));
        balance(body)
                .statusCode(200)
                .body("balance.solid.heavyPanel", equalTo(4))
                .body("balance.densities.find { it.species == 'sugar maple' }.stated", equalTo(true))
                .body("findings.code", hasItem("OFF_BALANCE"))
                .body("findings[0].message", containsString("towards panel 4"))
                .body("findings[0].message", containsString("To balance it, put "))
                .body("findings[0].message", containsString(" on the opposite side, for example "))
                .body("findings[0].message", endsWith(" g at 100 mm."))
                .body("cautions.step", hasItem("TURNING"));
    }

    @Test
    void aForceAboveTheWeightIsWarnedOf() {
        ObjectNode body = example();
        ((ObjectNode) body.at("/turning/speed")).put("turns", 3000);
        balance(body)
                .statusCode(200)
                .body("findings[0].code", equalTo("IMBALANCE_LIFTS"))
                .body("findings[0].severity", equalTo("WARN"))
                .body("findings[0].field", equalTo("/turning/speed/turns"));
    }

    @Test
    void imbalanceIsInGramMillimetresWhateverTheUnit() {
        ObjectNode inches = example();
        inches.remove("turning");
        double millimetres = balance(inches).extract().jsonPath().getDouble("balance.solid.imbalance");
        inches.put("unit", "in");
        ((ObjectNode) inches.path("size")).put("value", 7.0);
        inches.set("panel", Contract.json("{\"thickness\":" + 28 / 25.4 + ",\"land\":" + 4 / 25.4 + "}"));
        double[] widths = {20, 4, 12, 4};
        for (int band = 0; band < widths.length; band++) {
            ((ObjectNode) inches.at("/laminations/0/bands/" + band)).put("width", widths[band] / 25.4);
        }
        inches.set("saw", Contract.json("{\"kerf\":0.125,\"endTrim\":0.5}"));
        inches.set("blank", Contract.json("{\"length\":23}"));
        inches.set(
                "sphere",
                Contract.json("{\"diameter\":" + 172 / 25.4 + ",\"turningAllowance\":0.05,\"minimumWall\":0.25}"));
        double found = balance(inches).statusCode(200).extract().jsonPath().getDouble("balance.solid.imbalance");
        assertThat(found, closeTo(millimetres, 0.01));
    }

    @Test
    void aBrokenThroughSphereIsLeftOut() {
        ObjectNode body = example();
        ((ObjectNode) body.at("/sphere")).put("diameter", 130);
        balance(body)
                .statusCode(200)
                .body("balance.sphere", nullValue())
                .body("balance.panels[0].inSphere", nullValue())
                .body("findings.find { it.code == 'BREAK_THROUGH' }.field", equalTo("/panel/thickness"));
    }

    private static ObjectNode turning() {
        return Posted.only(Posted.lantern(), "turning");
    }

    private static ObjectNode turning(ObjectNode body) {
        return (ObjectNode) body.path("turning");
    }

    private static ValidatableResponse turned(ObjectNode body) {
        return Contract.request()
                .contentType(ContentType.JSON)
                .body(body.toString())
                .post("/v1/turning")
                .then();
    }

    @Test
    void theWholePlanIsAnsweredWithItsCautions() {
        turned(turning())
                .statusCode(200)
                .body("turning.roughing.profiles.sides", equalTo(List.of(4, 8, 16, 32)))
                .body("turning.holding.tail.number", equalTo(10))
                .body("findings.code", equalTo(List.of("SCREW_IN_SPHERE")))
                .body("findings[0].message", containsString("5.2 mm deep"))
                .body("turning.roughing.depths[-1].afterReversing", equalTo(true))
                .body("turning.speeds.lowest", equalTo(702.2f))
                .body("cautions.step", hasItems("MOUNTING", "TURNING", "REVERSING", "SANDING", "FINISHING"));
    }

    @Test
    void whatIsLeftOutIsTheUsual() {
        ObjectNode body = turning();
        body.remove("turning");
        turned(body)
                .statusCode(200)
                .body("turning.cups", nullValue())
                .body("turning.finish", nullValue())
                .body("turning.time", nullValue())
                .body("turning.roughing.passes", equalTo(List.of()))
                .body("turning.holding.head.disc", equalTo(104.9422f))
                .body("findings", equalTo(List.of()));
    }

    /** Speeds: 6000 and 9000 inches a minute over a diameter of 8.545 in (common practice, no source). */
    @ParameterizedTest
    @CsvSource({
        "/turning/speed/turns, 800, SPEED_ABOVE_THUMB, WARN, is 702 turns",
        "/turning/speed/turns, 1053, SPEED_ABOVE_THUMB, WARN, is 702 turns",
        "/turning/speed/turns, 1054, SPEED_ABOVE_THUMB, STOP, is 1053 turns",
        "/turning/speed/turns, 6000, SPEED_ABOVE_THUMB, STOP, Segmented and hollow work stays below 702",
        "/turning/speed/turns, 1400, SPEED_ABOVE_GLUE, STOP, The limit is 1283 turns a minute",
        "/turning/discs/diameter, 120, DISC_OVERHANGS, NOTE, inscribed circle is 104.94 mm",
        "/turning/discs/diameter, 218, DISC_OVERHANGS, WARN, wider than the solid",
        "/turning/discs/clearance, 60, REACH_SMALL, WARN, the tool reaches",
        "/turning/finish/grits/1/grit, 80, GRITS_OUT_OF_ORDER, WARN, coarser",
        "/turning/discs/screws/bite, 29, SCREW_IN_SPHERE, WARN, into the hollow",
        "/turning/cup/rim, 150, CUPS_LEAVE_PATCHES, WARN, of the sphere unturned",
        "/turning/finish/grits/0/allowance, 9, SANDING_LEAVES_FLATS, NOTE, more than the largest of 177.8 mm",
        "/sphere/diameter, 179, FLATS_LEFT, WARN, flat"
    })
    void whatIsWrongIsFound(String field, double value, String code, String severity, String words) {
        ObjectNode body = turning();
        int cut = field.lastIndexOf('/');
        ObjectNode parent = (ObjectNode) body.at(field.substring(0, cut));
        if (field.endsWith("/grit")) {
            parent.put(field.substring(cut + 1), (int) value);
        } else {
            parent.put(field.substring(cut + 1), value);
        }
        turned(body)
                .statusCode(200)
                .body("findings.find { it.code == '" + code + "' }.severity", equalTo(severity))
                .body("findings.find { it.code == '" + code + "' }.message", containsString(words));
    }

    @Test
    void discsAreJudgedOnBothEnds() {
        ObjectNode body = turning();
        body.put("solid", "truncated-tetrahedron");
        body.remove("sphere");
        body.set("sphere", Contract.json("{\"turningAllowance\":2,\"minimumWall\":6}"));
        body.set(
                "laminations",
                Contract.json("[{\"face\":\"triangle\",\"bands\":[{\"species\":\"black walnut\",\"width\":null}]},"
                        + "{\"face\":\"hexagon\",\"bands\":[{\"species\":\"black walnut\",\"width\":null}]}]"));
        turning(body).set("axis", Contract.json("{\"through\":\"FACE\",\"number\":1}"));
        turning(body).set("discs", Contract.json("{\"diameter\":90}"));
        List<String> messages = turned(body)
                .statusCode(200)
                .extract()
                .jsonPath()
                .getList("findings.findAll { it.code == 'DISC_OVERHANGS' }.message");
        assertEquals(1, messages.size());
        assertTrue(messages.get(0).contains("on the other end"), messages::toString);
    }

    @Test
    void whatIsNotCheckedOfTheGlueIsSaid() {
        ObjectNode unknown = turning();
        ((ObjectNode) unknown.at("/laminations/0/bands/0")).put("species", "moonwood");
        turned(unknown)
                .statusCode(200)
                .body("findings.find { it.code == 'GLUE_NOT_CHECKED' }.message", containsString("density"));
        ObjectNode broken = turning();
        ((ObjectNode) broken.at("/sphere")).put("diameter", 130);
        turned(broken)
                .statusCode(200)
                .body("findings.find { it.code == 'GLUE_NOT_CHECKED' }.message", containsString("breaks through"));
        ((ObjectNode) broken.at("/turning/speed")).remove("glueStrength");
        turned(broken).statusCode(200).body("findings.code", not(hasItem("GLUE_NOT_CHECKED")));
    }

    @Test
    void aBandThatIsGoneIsFoundBeforeItIsFinished() {
        ObjectNode body = turning();
        double[] widths = {44, 2, 2, 2};
        for (int band = 0; band < widths.length; band++) {
            ((ObjectNode) body.at("/laminations/0/bands/" + band)).put("width", widths[band]);
        }
        turned(body)
                .statusCode(200)
                .body("findings.findAll { it.code == 'BAND_VANISHES' }.field", hasItem("/laminations/0/bands/4/width"));
        turning(body).remove("finish");
        turned(body).statusCode(200).body("findings.code", not(hasItem("BAND_VANISHES")));
    }

    @Test
    void discsThatHideMostOfTheSphereAreFound() {
        ObjectNode body = turning();
        body.remove("turning");
        body.put("solid", "tetrahedron");
        body.set("sphere", Contract.json("{\"turningAllowance\":2,\"minimumWall\":6}"));
        body.set("laminations", Contract.json("[{\"bands\":[{\"species\":\"black walnut\",\"width\":null}]}]"));
        turned(body)
                .statusCode(200)
                .body("findings.find { it.code == 'REACH_SMALL' }.severity", equalTo("WARN"))
                .body("findings.find { it.code == 'REACH_SMALL' }.message", containsString("nothing on one side"));
        body.set("turning", Contract.json("{\"discs\":{\"diameter\":60,\"neck\":40}}"));
        turned(body).statusCode(200).body("findings.code", not(hasItem("REACH_SMALL")));
    }

    private static ObjectNode path() {
        return Posted.only(Posted.lantern(), "turning", "path");
    }

    private static ValidatableResponse posted(ObjectNode body, String accept, String address) {
        return Contract.request()
                .contentType(ContentType.JSON)
                .accept(accept)
                .body(body.toString())
                .post(address)
                .then();
    }

    @Test
    void aPathIsHadAsJsonAsCsvAndAsAProgram() {
        ValidatableResponse json = posted(path(), "application/json", "/v1/turning/path")
                .statusCode(200)
                .body("cautions.text", hasItem(containsString("run it in air first")));
        int moves = json.extract().jsonPath().getList("path.moves").size();
        String csv = posted(path(), "text/csv", "/v1/turning/path")
                .statusCode(200)
                .extract()
                .asString();
        assertEquals(moves + 1, csv.lines().count());
        assertTrue(csv.contains(",PLUNGE,"));
        assertTrue(csv.startsWith("pass,sphere,kind,x,z,a,minutes,unit"));
        String program = posted(path(), "text/plain", "/v1/turning/program")
                .statusCode(200)
                .extract()
                .asString();
        assertTrue(program.startsWith("%\n(CAUTION GENERAL: These numbers say what fits, not what is safe."));
        assertTrue(program.contains("\n(Design: Boathouse lantern [invented], dodecahedron)\n"));
        assertTrue(program.contains("run it in air first"));
        assertTrue(program.endsWith("M5\nM30\n%\n"));
        assertTrue(program.contains("\nG21\n"));
    }

    @Test
    void whatIsWrongWithTheSphereStandsInTheProgramsHead() {
        ObjectNode body = path();
        ((ObjectNode) body.at("/sphere")).put("diameter", 150);
        String program = posted(body, "text/plain", "/v1/turning/program")
                .statusCode(200)
                .extract()
                .asString();
        assertTrue(program.startsWith("%\n(STOP "), program);
        assertTrue(program.contains("\n(STOP BREAK_THROUGH: "), program);
        assertTrue(program.indexOf("(STOP BREAK_THROUGH: ") < program.indexOf("(CAUTION "), program);
        assertTrue(program.indexOf("(CAUTION ") < program.indexOf("\nG21\n"), program);
    }

    @Test
    void aMachineThatIsTooSmallIsToldByHowMuch() {
        ObjectNode body = path();
        ((ObjectNode) body.at("/path/limits")).put("highest", 100).put("x", 50);
        Contract.badRequest()
                .contentType(ContentType.JSON)
                .body(body.toString())
                .post("/v1/turning/program")
                .then()
                .statusCode(422)
                .body("violations.path", equalTo(List.of("/path/limits/x", "/path/limits/highest")))
                .body("violations[1].message", equalTo("Z goes up to 130.04 mm."))
                .body("violations[1].allowed", equalTo("at least 130.05 mm, or a lower clearHeight"));
    }

    @ParameterizedTest
    @CsvSource({
        "/path/leave, 3, MILLING_LEAVES_FLATS, /path/leave",
        "/path/machine, THREE_AXIS, UPPER_END_FREE, /path/machine",
        "/path/cutter/shape, FLAT, CUTS_AT_CENTRE, /path/cutter/shape"
    })
    void whatAPathGetsWrongIsFound(String field, String value, String code, String where) {
        posted(path(), "application/json", "/v1/turning/path")
                .statusCode(200)
                .body("findings.code", not(hasItem(code)));
        ObjectNode body = path();
        int cut = field.lastIndexOf('/');
        ObjectNode parent = (ObjectNode) body.at(field.substring(0, cut));
        if (value.matches("[0-9.]+")) {
            parent.put(field.substring(cut + 1), Double.parseDouble(value));
        } else {
            parent.put(field.substring(cut + 1), value);
        }
        posted(body, "application/json", "/v1/turning/path")
                .statusCode(200)
                .body("findings.find { it.code == '" + code + "' }.severity", equalTo("WARN"))
                .body("findings.find { it.code == '" + code + "' }.field", equalTo(where));
        String program =
                posted(body, "text/plain", "/v1/turning/program").extract().asString();
        int warned = program.indexOf("(WARN " + code + ": ");
        assertTrue(warned > 0 && warned < program.indexOf("\nG21\n"), program);
    }

    @Test
    void aBeltThatStaysIsFound() {
        ObjectNode body = path();
        ((ObjectNode) body.path("path")).put("machine", "THREE_AXIS");
        ((ObjectNode) body.at("/turning/discs")).put("clearance", 100);
        ValidatableResponse answer =
                posted(body, "application/json", "/v1/turning/path").statusCode(200);
        double latitude = answer.extract().jsonPath().getDouble("path.reachedTail");
        assertTrue(latitude < 0);
        answer.body(
                "findings.find { it.code == 'BELT_LEFT' }.message",
                containsString("a belt of " + Math.round(-2 * latitude * 100) / 100.0 + " degrees"));
        ((ObjectNode) body.at("/turning/discs")).put("clearance", 70);
        posted(body, "application/json", "/v1/turning/path")
                .statusCode(200)
                .body("path.reachedTail", equalTo(0))
                .body("findings.code", not(hasItem("BELT_LEFT")));
    }
}
