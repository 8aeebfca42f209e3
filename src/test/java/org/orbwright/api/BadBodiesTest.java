package org.orbwright.api;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.http.ContentType;
import io.restassured.response.Response;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.orbwright.api.wire.Problem;

/** Bodies that are no design: which problem each gets, at which path, in which words. */
@QuarkusTest
class BadBodiesTest {
    /** Shortest good design: each case breaks one thing in it. */
    private static final String GOOD = "{'unit':'mm','solid':'cube','size':{'by':'ACROSS_FLATS','value':100},"
            + "'panel':{'thickness':30},'laminations':[{'bands':[{'species':'ash','width':null}]}],"
            + "'saw':{'kerf':3},'blank':{'length':600},'sphere':{'turningAllowance':2,'minimumWall':6}}";

    @Test
    void theGoodDesignIsGood() {
        assertEquals(200, post(GOOD).statusCode());
    }

    @ParameterizedTest(name = "{0} -> {1}")
    @MethodSource
    void brokenRules(String what, String with, String path, String code, String message, String rejected) {
        Response answer = post(GOOD.replaceFirst(what, with));
        JsonNode problem = problem(answer, 400, "invalid-request");
        JsonNode violation = problem.at("/violations/0");
        assertEquals(path, violation.path("path").asText());
        assertEquals(code, violation.path("code").asText());
        assertEquals(message, violation.path("message").asText());
        assertEquals(rejected, violation.path("rejected").asText(null));
        assertEquals(1, problem.path("violations").size(), problem::toString);
        assertEquals(message, problem.path("detail").asText());
    }

    static List<Arguments> brokenRules() {
        String range = "size.value must be 0.001 to 100000 in the design's unit, but is ";
        String unit = "unit must be one of mm, in, but is ";
        return List.of(
                rule("'value':100", "'value':0", "/size/value", "OUT_OF_RANGE", range + "0.", "0"),
                rule("'value':100", "'value':-3", "/size/value", "OUT_OF_RANGE", range + "-3.", "-3"),
                rule("'value':100", "'value':1e5000", "/size/value", "OUT_OF_RANGE", range + "1e5000.", "1e5000"),
                rule("'value':100", "'value':1e-300", "/size/value", "OUT_OF_RANGE", range + "1.0E-300.", "1.0E-300"),
                rule("'value':100", "'value':null", "/size/value", "MISSING", "size.value is missing.", null),
                rule(",'value':100", "", "/size/value", "MISSING", "size.value is missing.", null),
                rule(
                        "'value':100",
                        "'value':'100'",
                        "/size/value",
                        "WRONG_TYPE",
                        "size.value must be a number, but is a text.",
                        "100"),
                rule(
                        "'value':100",
                        "'value':true",
                        "/size/value",
                        "WRONG_TYPE",
                        "size.value must be a number, but is true or false.",
                        "true"),
                rule(
                        "'value':100",
                        "'value':[100]",
                        "/size/value",
                        "WRONG_TYPE",
                        "size.value must be a number, but is a list.",
                        null),
                rule(
                        "'value':100",
                        "'value':100,'value':100",
                        "/size/value",
                        "REPEATED_FIELD",
                        "size.value is written more than once.",
                        "value"),
                rule(
                        "'value':100",
                        "'value':100,'Value':5",
                        "/size/Value",
                        "UNKNOWN_FIELD",
                        "size has no field named Value.",
                        "Value"),
                rule("'unit':'mm'", "'unit':'cm'", "/unit", "UNKNOWN_VALUE", unit + "\"cm\".", "cm"),
                rule("'unit':'mm'", "'unit':'MM'", "/unit", "UNKNOWN_VALUE", unit + "\"MM\".", "MM"),
                rule("'unit':'mm'", "'unit':0", "/unit", "WRONG_TYPE", "unit must be a text, but is a number.", "0"),
                rule(
                        "'unit':'mm'",
                        "'unit':'mm','a/b~':{}",
                        "/a~1b~0",
                        "UNKNOWN_FIELD",
                        "The body has no field named a/b~.",
                        "a/b~"),
                rule(
                        "'unit':'mm'",
                        "'unit':'mm','copies':1.9",
                        "/copies",
                        "WRONG_TYPE",
                        "copies must be a whole number, but is a number with a fraction.",
                        "1.9"),
                rule(
                        "'unit':'mm'",
                        "'unit':'mm','copies':0",
                        "/copies",
                        "OUT_OF_RANGE",
                        "copies must be a whole number, 1 to 1000, but is 0.",
                        "0"),
                rule(
                        "'unit':'mm'",
                        "'unit':'mm','copies':99999999999",
                        "/copies",
                        "OUT_OF_RANGE",
                        "copies must be a whole number, 1 to 1000, but is 99999999999.",
                        "99999999999"),
                rule("'cube'", "5", "/solid", "WRONG_TYPE", "solid must be a text, but is a number.", "5"),
                rule("'cube'", "'  '", "/solid", "BLANK", "solid must not be blank.", "  "),
                rule(
                        "'cube'",
                        "'" + "c".repeat(100) + "'",
                        "/solid",
                        "WRONG_LENGTH",
                        "solid must be a text of 1 to 60 characters, but has 100.",
                        "c".repeat(64)),
                rule(
                        "\\{'thickness':30}",
                        "30",
                        "/panel",
                        "WRONG_TYPE",
                        "panel must be an object, but is a number.",
                        "30"),
                rule(
                        "'width':null",
                        "'width':-1",
                        "/laminations/0/bands/0/width",
                        "OUT_OF_RANGE",
                        "laminations[0].bands[0].width must be 0.001 to 10000 in the design's unit, but is -1.",
                        "-1"),
                rule(
                        "\\{'species':'ash','width':null}",
                        "null",
                        "/laminations/0/bands/0",
                        "MISSING",
                        "laminations[0].bands[0] is missing.",
                        null),
                rule(
                        "\\{'species':'ash','width':null}",
                        "7",
                        "/laminations/0/bands/0",
                        "WRONG_TYPE",
                        "laminations[0].bands[0] must be an object, but is a number.",
                        "7"),
                rule(
                        "\\{'species':'ash','width':null}",
                        "",
                        "/laminations/0/bands",
                        "WRONG_LENGTH",
                        "laminations[0].bands must be a list of 1 to 60, but has 0.",
                        null));
    }

    private static Arguments rule(String what, String with, String path, String code, String message, String rejected) {
        return Arguments.of(what, with, path, code, message, rejected);
    }

    /** A character outside the basic plane is one, as the contract counts. */
    @Test
    void lengthsAreCountedInCharacters() {
        String wood = "\ud83e\udeb5";
        assertEquals(
                200,
                post(GOOD.replace("{'unit'", "{'name':'" + wood.repeat(120) + "','unit'"))
                        .statusCode());
        JsonNode problem = problem(
                post(GOOD.replace("{'unit'", "{'name':'" + wood.repeat(121) + "','unit'")), 400, "invalid-request");
        assertEquals(
                "name must be a text of 0 to 120 characters, but has 121.",
                problem.path("detail").asText());
    }

    @Test
    void bodyThatIsNoObject() {
        JsonNode problem = problem(post("[1, 2]"), 400, "invalid-request");
        assertEquals(
                "The body must be an object, but is a list.",
                problem.path("detail").asText());
    }

    @Test
    void allBrokenRulesComeAtOnceInTheOrderOfTheirPaths() {
        JsonNode problem = problem(
                post("{'unit':'cm','copies':1.5,'laminations':[null,{'bands':[{'width':-1}]}],'blank':{'length':'x'}}"),
                400,
                "invalid-request");
        assertEquals(
                List.of(
                        "/blank/length",
                        "/copies",
                        "/laminations/0",
                        "/laminations/1/bands/0/species",
                        "/laminations/1/bands/0/width",
                        "/size",
                        "/solid",
                        "/unit"),
                problem.path("violations").findValuesAsText("path"));
        assertEquals(
                "blank.length must be a number, but is a text. And 7 more rules are broken.",
                problem.path("detail").asText());
    }

    @Test
    void unknownFieldNamesTheKnownOnes() {
        JsonNode problem = problem(post(GOOD.replace("'kerf':3", "'kerf':3,'curf':3")), 400, "invalid-request");
        assertEquals("one of kerf, endTrim", problem.at("/violations/0/allowed").asText());
    }

    @Test
    void answerDoesNotGrowWithTheRequest() {
        String bands = "{'x':1},".repeat(20_000);
        Response answer = post("{'laminations':[{'bands':[" + bands + "{}]}]}");
        JsonNode problem = problem(answer, 400, "invalid-request");
        assertEquals(Problem.MOST_VIOLATIONS, problem.path("violations").size());
        assertTrue(answer.asByteArray().length < 50_000);
    }

    @Test
    void impossibleDesignIsNoBadRequest() {
        JsonNode problem = problem(post(GOOD.replace("cube", "qube")), 422, "impossible-design");
        assertEquals("/solid", problem.at("/violations/0/path").asText());
        assertEquals("qube", problem.at("/violations/0/rejected").asText());
    }

    @Test
    void noMessageSpeaksJava() {
        brokenRules().forEach(rule -> {
            String text = post(GOOD.replaceFirst((String) rule.get()[0], (String) rule.get()[1]))
                    .asString();
            assertTrue(
                    !text.contains("java") && !text.contains("orbwright.design") && !text.contains("Exception"), text);
        });
    }

    private static Response post(String body) {
        return Contract.badRequest()
                .contentType(ContentType.JSON)
                .body(body.replace('\'', '"').getBytes(StandardCharsets.UTF_8))
                .post("/v1/sheet");
    }

    private static JsonNode problem(Response answer, int status, String type) {
        JsonNode problem = Contract.json(answer.asString());
        assertEquals(status, answer.statusCode(), problem::toString);
        assertEquals("application/problem+json", answer.contentType());
        assertEquals("/problems/" + type, problem.path("type").asText());
        assertEquals("/v1/sheet", problem.path("instance").asText());
        return problem;
    }
}
