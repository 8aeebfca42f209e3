package org.orbwright.api;

import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.startsWith;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import io.quarkus.test.junit.QuarkusTest;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.Map;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Pictures of the catalogue's solids over HTTP. */
@QuarkusTest
class SolidPictureHttpTest {
    private static final String CUBE = "/v1/solids/cube/picture";

    @Test
    void anSvgIsAnsweredUnlessAnotherFormIsAskedFor() {
        Contract.request()
                .get(CUBE)
                .then()
                .statusCode(200)
                .contentType(startsWith("image/svg+xml"))
                .header("Vary", containsString("Accept"))
                .body(containsString("<title id=\"title\">A cube</title>"));
    }

    @ParameterizedTest
    @CsvSource({"*/*, png", "image/png, ''"})
    void aPngHasTheWidthAskedFor(String accept, String format) throws IOException {
        byte[] png = Contract.request()
                .accept(accept)
                .queryParams(format.isEmpty() ? Map.of() : Map.of("format", format))
                .queryParam("width", 240)
                .get(CUBE)
                .then()
                .statusCode(200)
                .contentType("image/png")
                .extract()
                .asByteArray();
        BufferedImage image = ImageIO.read(new ByteArrayInputStream(png));
        assertEquals(240, image.getWidth());
    }

    @Test
    void svgAndPngAreKeptApart() {
        String svg = Contract.request().get(CUBE).header("ETag");
        String png = Contract.request().accept("image/png").get(CUBE).header("ETag");
        assertNotEquals(svg, png);
        Contract.request()
                .accept("image/png")
                .header("If-None-Match", svg)
                .get(CUBE)
                .then()
                .statusCode(200);
        Contract.request()
                .accept("image/png")
                .header("If-None-Match", png)
                .get(CUBE)
                .then()
                .statusCode(304);
    }

    @Test
    void anUnknownSolidIsAnsweredLikeAtItsSibling() {
        Contract.request()
                .get("/v1/solids/dodecahedrn/picture")
                .then()
                .statusCode(404)
                .contentType("application/problem+json")
                .body("violations[0].code", equalTo("UNKNOWN_SOLID"))
                .body("violations[0].allowed", startsWith("one of dodecahedron"));
    }

    @ParameterizedTest
    @CsvSource({
        "format, dxf, 'one of svg, png'",
        "width, 240, 'left out of what is not a PNG'",
    })
    void aWrongParameterIsNamedWithWhatIsAllowed(String name, String value, String allowed) {
        Contract.badRequest()
                .queryParam(name, value)
                .get(CUBE)
                .then()
                .statusCode(400)
                .body("violations[0].path", equalTo(name))
                .body("violations[0].allowed", equalTo(allowed));
    }

    @Test
    void aWrongMethodIsToldTheRightOnes() {
        Contract.badRequest().post(CUBE).then().statusCode(405).header("Allow", "GET, HEAD, OPTIONS");
    }
}
