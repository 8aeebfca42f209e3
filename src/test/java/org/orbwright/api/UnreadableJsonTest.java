package org.orbwright.api;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.databind.JsonNode;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.http.ContentType;
import io.restassured.response.Response;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Bodies that are no JSON: what is said of each, and where. */
@QuarkusTest
class UnreadableJsonTest {

    @ParameterizedTest(name = "{0}")
    @MethodSource
    void unreadableJson(String body, String code, String detail) {
        JsonNode problem = problem(body);
        assertEquals(detail, problem.path("detail").asText());
        assertEquals(code, problem.at("/violations/0/code").asText());
        assertEquals("", problem.at("/violations/0/path").asText("missing"));
    }

    static List<Arguments> unreadableJson() {
        String notJson = "The body is not JSON at or just before line ";
        String early = ": a bracket, a brace or a quote is not closed, or a value is missing.";
        String place = " at or just before line 1, column ";
        String deep = "The JSON is nested more than 64 levels deep";
        return List.of(
                Arguments.of("", "EMPTY_BODY", "The body is empty; it has to be a design as JSON."),
                Arguments.of(" \n ", "EMPTY_BODY", "The body is empty; it has to be a design as JSON."),
                Arguments.of("{'unit': 'mm',\n  'sölid': }", "MALFORMED", notJson + "2, column 12."),
                Arguments.of("{'copies': NaN}", "NO_SUCH_NUMBER", "JSON has no number NaN" + place + "15."),
                Arguments.of("{'copies': -Infinity}", "NO_SUCH_NUMBER", "JSON has no number -Infinity" + place + "21."),
                Arguments.of("{'x': [1, Infinity]}", "MALFORMED", notJson + "1, column 19."),
                Arguments.of("{'copies': NaNa}", "MALFORMED", notJson + "1, column 12."),
                comma("{'size': {'value': 177,8}}", "177.8", 24),
                comma("{'size':{'value':-0,75,'by':'EDGE'}}", "-0.75", 21),
                comma("{'kerf':3,2\n}", "3.2", 11),
                Arguments.of("{'vary':[177,8 9]}", "MALFORMED", notJson + "1, column 16."),
                Arguments.of("{'name':'177,8' 9}", "MALFORMED", notJson + "1, column 17."),
                Arguments.of("{'copies': 01}", "MALFORMED", notJson + "1, column 13."),
                Arguments.of(
                        "{'unit': 'mm',\n",
                        "ENDS_EARLY",
                        "The JSON ends too early at or just before line 2, column 1" + early),
                Arguments.of(
                        "{'unit': 'm",
                        "ENDS_EARLY",
                        "The JSON ends too early at or just before line 1, column 12" + early),
                Arguments.of(
                        "{} x",
                        "TRAILING_TEXT",
                        "After the end of the design there is more text at or just before line 1, column 4."),
                Arguments.of(
                        "{} {}",
                        "TRAILING_TEXT",
                        "After the end of the design there is more text at or just before line 1, column 4."),
                Arguments.of("[".repeat(200) + "]".repeat(200), "BEYOND_LIMITS", deep + place + "66."),
                Arguments.of(
                        "{'copies': " + "1".repeat(70) + "}",
                        "BEYOND_LIMITS",
                        "A number in the JSON has more than 64 characters" + place + "82."),
                Arguments.of(
                        "{'name': '" + "n".repeat(200_000) + "'}",
                        "BEYOND_LIMITS",
                        "A text in the JSON has more than 100000 characters" + place + "10."),
                Arguments.of(
                        "{'" + "n".repeat(300) + "': 1}",
                        "BEYOND_LIMITS",
                        "A field's name in the JSON has more than 256 characters" + place + "304."));
    }

    private static Arguments comma(String body, String number, int column) {
        String place = " at or just before line 1, column " + column;
        return Arguments.of(
                body, "DECIMAL_COMMA", "JSON has no decimal comma" + place + ": write " + number + " with a point.");
    }

    private static JsonNode problem(String body) {
        Response answer = Contract.badRequest()
                .contentType(ContentType.JSON)
                .body(body.replace('\'', '"').getBytes(StandardCharsets.UTF_8))
                .post("/v1/sheet");
        assertEquals(400, answer.statusCode(), answer::asString);
        JsonNode problem = Contract.json(answer.asString());
        assertEquals("/problems/unreadable-json", problem.path("type").asText());
        return problem;
    }
}
