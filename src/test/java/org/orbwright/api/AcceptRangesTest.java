package org.orbwright.api;

import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.startsWith;
import static org.junit.jupiter.api.Assertions.assertEquals;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.http.ContentType;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.orbwright.api.guard.AcceptRanges;

/** Ranges of media types (RFC 9110, 12.5.1). */
@QuarkusTest
class AcceptRangesTest {
    private static final List<String> TYPES = List.of("application/json", "text/csv", "text/html");

    @Test
    void aRangeBecomesTheTypesThatAreInIt() {
        assertEquals("text/csv, text/html", AcceptRanges.spellOut("text/*", TYPES));
        assertEquals(
                "text/csv;q=0.5, text/html;q=0.5, application/json",
                AcceptRanges.spellOut("text/*;q=0.5,application/json", TYPES));
    }

    @Test
    void whatNoTypeIsInStays() {
        assertEquals("image/*, */*;q=0.1", AcceptRanges.spellOut("image/*, */*;q=0.1", TYPES));
    }

    @Test
    void parametersThatAreNoWeightsAreLeftOut() {
        assertEquals(
                "application/json;q=0.8, text/csv",
                AcceptRanges.spellOut("application/json;v=\"1;q=0.8, text/csv;x", TYPES));
        assertEquals("", AcceptRanges.spellOut(" ;q=1,", TYPES));
    }

    @Test
    void aHeaderThatAsksForNothingIsNoHeader() {
        given().header("Accept", ";")
                .contentType(ContentType.JSON)
                .body(Posted.worked().toString())
                .post("/v1/bands/explore")
                .then()
                .statusCode(200)
                .contentType(startsWith("application/x-ndjson"));
    }

    /** Addresses with several types, and one with a single type. */
    @ParameterizedTest
    @CsvSource({
        "text/*, /v1/turning/path, text/csv",
        "application/*, /v1/turning/path, application/json",
        "application/*, /v1/bands/explore, application/x-ndjson",
        "text/*;q=0.4, /v1/bands/explore, text/csv",
        "application/*, /v1/jig, application/json",
        "application/json;x=\", /v1/turning/path, application/json",
    })
    void aRangeIsAnsweredInATypeThatIsInIt(String range, String path, String type) {
        given().accept(range)
                .contentType(ContentType.JSON)
                .body(Posted.worked().toString())
                .post(path)
                .then()
                .statusCode(200)
                .contentType(startsWith(type));
    }

    @Test
    void theTypeOfProblemsIsLeftOut() {
        assertEquals("text/csv", AcceptRanges.spellOut("application/problem+json, text/csv", TYPES));
        assertEquals("", AcceptRanges.spellOut("application/problem+json", TYPES));
    }

    /** A generated client asks for the only type whose answer has a schema. */
    @ParameterizedTest
    @CsvSource({
        "/v1/drawings/sphere, image/svg+xml",
        "/v1/shop-sheet, application/pdf",
        "/v1/turning/path, application/json",
        "/v1/sheet, application/json",
    })
    void whoAsksForProblemsAloneGetsTheUsualAnswer(String path, String type) {
        given().accept("application/problem+json")
                .contentType(ContentType.JSON)
                .body(Posted.worked().toString())
                .post(path)
                .then()
                .statusCode(200)
                .contentType(startsWith(type));
    }

    @ParameterizedTest
    @CsvSource({
        "text/html, /v1/drawings/panel, dxf, image/vnd.dxf",
        "application/json, /v1/drawings/sphere, png, image/png",
        "image/gif, /v1/shop-sheet, html, text/html",
        "image/gif, /v1/table/bands, xml, application/xml",
        "application/xml;q=0.9, /v1/bodies/panel, 3mf, model/3mf",
    })
    void aFormatGoesBeforeTheHeader(String accepted, String path, String format, String type) {
        given().accept(accepted)
                .contentType(ContentType.JSON)
                .queryParam("format", format)
                .body(Posted.worked().toString())
                .post(path)
                .then()
                .statusCode(200)
                .contentType(startsWith(type));
    }

    @Test
    void anEmptyFormatLeavesTheChoiceToTheHeader() {
        given().accept("image/gif")
                .contentType(ContentType.JSON)
                .queryParam("format", "")
                .body(Posted.worked().toString())
                .post("/v1/drawings/panel")
                .then()
                .statusCode(406);
    }
}
