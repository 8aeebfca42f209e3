package org.orbwright.api;

import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.hasSize;
import static org.hamcrest.Matchers.notNullValue;
import static org.hamcrest.Matchers.nullValue;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.http.ContentType;
import io.restassured.response.ValidatableResponse;
import io.restassured.specification.RequestSpecification;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.orbwright.api.wire.Problem;

/** What boards give, over HTTP: inside the contract, and refused in words. */
@QuarkusTest
class ReachHttpTest {
    private static final String PATH = "/v1/stock/reach";

    private static ObjectNode worked() {
        return Addresses.quick(Posted.worked(Posted.MAIN));
    }

    private static ArrayNode boards(ObjectNode document) {
        return ((ObjectNode) document.path("stock")).withArray("boards");
    }

    private static ValidatableResponse posted(RequestSpecification request, ObjectNode document) {
        return request.contentType(ContentType.JSON)
                .body(document.toString())
                .post(PATH)
                .then();
    }

    @Test
    void aWorkedDesignIsAnswered() {
        posted(Contract.request(), worked())
                .statusCode(200)
                .body("reach.size.by", notNullValue())
                .body("reach.copies.most", notNullValue())
                .body("reach.blank.tried", notNullValue())
                .body("reach.endedByClock", equalTo(false));
    }

    @Test
    void withoutBoardsThereIsNothingToReach() {
        ObjectNode document = worked();
        document.remove("stock");
        posted(Contract.badRequest(), document)
                .statusCode(422)
                .contentType(Problem.MEDIA_TYPE)
                .body("violations", hasSize(1))
                .body("violations[0].path", equalTo("/stock"));
    }

    @Test
    void moreBoardsThanAnAnswerHoldsAreRefused() {
        ObjectNode document = worked();
        ObjectNode board = (ObjectNode) boards(document).path(0);
        board.put("count", 200);
        for (int i = 0; i < 10; i++) {
            boards(document).add(board.deepCopy());
        }
        posted(Contract.badRequest(), document)
                .statusCode(422)
                .contentType(Problem.MEDIA_TYPE)
                .body("violations[0].path", equalTo("/stock/boards"))
                .body("violations[0].code", equalTo("TOO_MANY_BOARDS"))
                .body("violations[0].rejected", equalTo("2202"))
                .body("violations[0].allowed", equalTo("at most 2000 boards"));
    }

    @ParameterizedTest
    @CsvSource({
        "length, 1e-9, 0.000000001",
        "length, -5, -5",
        "width, 1e9, 1000000000",
        "thickness, '\"thick\"', thick",
        "count, 0, 0",
        "count, 1.5, 1.5"
    })
    void absurdBoardsAreRefusedWithFieldValueAndLimit(String field, String value, String rejected) {
        ObjectNode document = worked();
        ((ObjectNode) boards(document).path(1)).set(field, Contract.json(value));
        posted(Contract.badRequest(), document)
                .statusCode(400)
                .contentType(Problem.MEDIA_TYPE)
                .body("violations[0].path", equalTo("/stock/boards/1/" + field))
                .body("violations[0].rejected", equalTo(rejected))
                .body("violations[0].allowed", notNullValue());
    }

    @Test
    void anEmptyRackGivesNothingAndSaysSo() {
        ObjectNode document = worked();
        boards(document).removeAll();
        posted(Contract.request(), document)
                .statusCode(200)
                .body("reach.size.largest", nullValue())
                .body("reach.copies.most", equalTo(0))
                .body("findings.findAll { it.code == 'STOCK_SHORT' }.severity", hasItem("STOP"));
    }
}
