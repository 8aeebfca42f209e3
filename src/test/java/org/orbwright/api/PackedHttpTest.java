package org.orbwright.api;

import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.emptyString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.nullValue;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.http.ContentType;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.util.zip.GZIPInputStream;
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
            strings = {
                "/solids",
                "/solids/cube",
                "/solids/cube/picture",
                "/solids/cube/picture?format=png",
                "/designs",
                "/designs/icosahedron-mixed",
                "/woods",
                "/woods/hickory"
            })
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

    @TestHTTPResource("/")
    URI base;

    /** Text is packed for who can unpack it, and is the same text. */
    @ParameterizedTest
    @ValueSource(strings = {"/v1/sheet", "/v1/drawings/panel?format=dxf", "/v1/drawings/sphere?format=svg"})
    void textIsPackedForWhoCanUnpackIt(String address) throws IOException, InterruptedException {
        HttpResponse<byte[]> plain = post(address, "identity");
        HttpResponse<byte[]> packed = post(address, "gzip");
        assertEquals("gzip", packed.headers().firstValue("Content-Encoding").orElse(""));
        assertEquals("", plain.headers().firstValue("Content-Encoding").orElse(""));
        assertTrue(packed.body().length * 3 < plain.body().length);
        try (InputStream unpacked = new GZIPInputStream(new ByteArrayInputStream(packed.body()))) {
            assertArrayEquals(plain.body(), unpacked.readAllBytes());
        }
    }

    private HttpResponse<byte[]> post(String address, String encoding) throws IOException, InterruptedException {
        HttpRequest request = HttpRequest.newBuilder(base.resolve(address))
                .header("Content-Type", "application/json")
                .header("Accept-Encoding", encoding)
                .POST(HttpRequest.BodyPublishers.ofString(Posted.worked().toString()))
                .build();
        return HttpClient.newHttpClient().send(request, HttpResponse.BodyHandlers.ofByteArray());
    }
}
