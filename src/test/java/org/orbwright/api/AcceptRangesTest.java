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
}
