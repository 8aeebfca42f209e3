package org.orbwright.api;

import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.emptyString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.nullValue;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.http.ContentType;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Bodies that are packed, and answers that a caller has already (RFC 9110, 8.4 and 13.1.2). */
@QuarkusTest
class PackedHttpTest {
    @ParameterizedTest
    @ValueSource(strings = {"gzip", "br", "GZIP, identity"})
    void aPackedBodyIsRefused(String encoding) {
        Contract.badRequest()
                .header("Content-Encoding", encoding)
                .contentType(ContentType.JSON)
                .body(Posted.worked().toString())
                .post("/v1/sheet")
                .then()
                .statusCode(415)
                .body(
                        "detail",
                        equalTo("The body has to be sent as it is, without the header Content-Encoding, not " + encoding
                                + "."));
    }

    @ParameterizedTest
    @ValueSource(strings = {"identity", "Identity"})
    void aBodyThatSaysItIsNotPackedIsTaken(String encoding) {
        given().header("Content-Encoding", encoding)
                .contentType(ContentType.JSON)
                .body(Posted.worked().toString())
                .post("/v1/angles")
                .then()
                .statusCode(200);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"/solids", "/solids/cube", "/designs", "/designs/icosahedron-mixed", "/woods", "/woods/hickory"})
    void whoeverHasTheCatalogueIsToldSo(String address) {
        String tag = Contract.request()
                .get("/v1" + address)
                .then()
                .statusCode(200)
                .header("Cache-Control", equalTo("max-age=3600"))
                .header("Vary", containsString("ccept-"))
                .extract()
                .header("ETag");
        Contract.request()
                .header("If-None-Match", tag)
                .get("/v1" + address)
                .then()
                .statusCode(304)
                .header("ETag", equalTo(tag))
                .body(emptyString());
        Contract.request()
                .header("If-None-Match", "\"other\"")
                .get("/v1" + address)
                .then()
                .statusCode(200);
    }

    @Test
    void aProblemIsNotKept() {
        Contract.request().get("/v1/solids/cub").then().statusCode(404).header("ETag", nullValue());
    }
}
