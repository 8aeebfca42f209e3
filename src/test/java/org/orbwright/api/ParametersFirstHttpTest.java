package org.orbwright.api;

import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.equalTo;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.http.ContentType;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * A wrong parameter is refused before anything is worked out. The document has no section: whatever would be worked out
 * of it is refused as incomplete, with another status.
 */
@QuarkusTest
class ParametersFirstHttpTest {
    private static final String BARE =
            "{\"unit\": \"mm\", \"solid\": \"cube\", \"size\": {\"by\": \"EDGE\", \"value\": 90}}";

    @ParameterizedTest
    @CsvSource({
        "drawings/sphere",
        "drawings/survival",
        "drawings/section",
        "drawings/board",
        "drawings/net",
        "drawings/set-up",
        "drawings/panel",
        "drawings/segment",
        "drawings/disc",
        "drawings/templates",
        "drawings/pocket",
        "bodies/segment",
        "bodies/panel",
        "bodies/shell",
        "bodies/sphere",
        "bodies/disc",
        "bodies/pocket",
        "bodies/solid",
        "shop-sheet",
        "build"
    })
    void aWrongFormIsRefusedFirst(String address) {
        refused(address + "?format=bogus", "format");
    }

    @Test
    void soAreAWrongWidthBoardAndUnit() {
        refused("drawings/board?format=png&width=99", "width");
        refused("drawings/board?format=svg&width=500", "width");
        refused("drawings/board?board=0", "board");
        refused("drawings/disc?format=dxf&unit=ell", "unit");
        refused("drawings/templates?format=svg&dxf=R12", "dxf");
        refused("bodies/disc?format=stl&unit=ell", "unit");
    }

    private static void refused(String address, String parameter) {
        given().contentType(ContentType.JSON)
                .body(BARE)
                .post("/v1/" + address)
                .then()
                .statusCode(400)
                .body("violations[0].path", equalTo(parameter));
    }

    /** The same document is refused as incomplete where the parameters are right: the checks above can fail. */
    @Test
    void theDocumentIsIncomplete() {
        given().contentType(ContentType.JSON)
                .body(BARE)
                .post("/v1/drawings/board?format=svg")
                .then()
                .statusCode(422);
    }
}
