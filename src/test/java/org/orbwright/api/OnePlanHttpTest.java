package org.orbwright.api;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.http.ContentType;
import io.restassured.specification.RequestSpecification;
import java.util.List;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.orbwright.fixture.Stocks;

/** One request has one plan, at whichever address it is asked for, even where the clock ended its search. */
@QuarkusTest
class OnePlanHttpTest {
    private static final String DOCUMENT = document().toString();

    /** Much work, and no time for it. */
    private static ObjectNode document() {
        ObjectNode request = Stocks.example();
        request.remove("offers");
        Stocks.boards(
                request,
                "[{'species':'black walnut','length':510,'width':97,'thickness':38,'count':7},"
                        + "{'species':'black walnut','length':830,'width':140,'thickness':32,'count':3},"
                        + "{'species':'sugar maple','length':470,'width':88,'thickness':20,'count':6},"
                        + "{'species':'black cherry','length':640,'width':71,'thickness':35,'count':5}]");
        ((ObjectNode) request.path("seams")).put("most", 2);
        request.set("search", Stocks.read("{'work':100,'seconds':0.05}"));
        return Stocks.posted(request);
    }

    private static RequestSpecification posted() {
        return Contract.request().contentType(ContentType.JSON).body(DOCUMENT);
    }

    private static JsonNode json(String path) {
        return Contract.json(
                posted().post(path).then().statusCode(200).extract().asString());
    }

    @Test
    void plansCutListsAndPicturesShowTheSamePlan() {
        JsonNode cuts = json("/v1/stock/cuts");
        String csv = csv();
        JsonNode stock = json("/v1/stock");
        int boards = stock.at("/stock/boards").size();
        assertTrue(boards > 0);
        assertTrue(
                stock.path("findings").findValuesAsText("code").contains("SEARCH_ENDED_BY_CLOCK"),
                "the clock ended the search");
        assertEquals(cuts, json("/v1/stock/cuts"));
        assertEquals(csv, csv());
        assertEquals(stock, json("/v1/stock"));

        TreeSet<Integer> numbers = new TreeSet<>();
        int strips = 0;
        for (JsonNode cut : cuts.path("cuts")) {
            numbers.add(cut.path("board").asInt());
            strips += cut.path("label").asText().isEmpty() ? 0 : 1;
        }
        assertEquals(boards, numbers.size());
        assertEquals(boards, numbers.last());
        int stops = (int) cuts.path("findings").findValuesAsText("severity").stream()
                .filter("STOP"::equals)
                .count();
        List<List<String>> rows = CsvReader.read(csv);
        assertEquals(stops + 1 + cuts.path("cuts").size(), rows.size());
        assertTrue(strips > 0);
        for (int i = 0; i < cuts.path("cuts").size(); i++) {
            assertEquals(
                    cuts.at("/cuts/" + i + "/label").asText(""),
                    rows.get(stops + 1 + i).get(rows.get(stops).indexOf("label")));
        }
        posted().queryParam("board", boards).post("/v1/drawings/board").then().statusCode(200);
        Contract.badRequest()
                .contentType(ContentType.JSON)
                .body(DOCUMENT)
                .queryParam("board", boards + 1)
                .post("/v1/drawings/board")
                .then()
                .statusCode(400);
    }

    private static String csv() {
        return posted().accept("text/csv")
                .post("/v1/stock/cuts")
                .then()
                .statusCode(200)
                .extract()
                .asString();
    }
}
