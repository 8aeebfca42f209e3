package org.orbwright.api;

import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.startsWith;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.http.ContentType;
import io.restassured.specification.RequestSpecification;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.Map;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Drawings over HTTP: chosen by the header Accept, and with query parameters that are refused in words. */
@QuarkusTest
class DrawingsHttpTest {
    private static RequestSpecification design(RequestSpecification request, String name) {
        return request.contentType(ContentType.JSON).body(Posted.worked(name).toString());
    }

    private static RequestSpecification design() {
        return design(Contract.request(), "truncated-octahedron-alternating");
    }

    @ParameterizedTest
    @ValueSource(strings = {"panel", "sphere", "survival", "section", "net", "set-up"})
    void anSvgIsAnsweredUnlessAnotherFormIsAskedFor(String drawing) {
        design().post("/v1/drawings/" + drawing)
                .then()
                .statusCode(200)
                .contentType(startsWith("image/svg+xml"))
                .header("Vary", containsString("Accept"))
                .body(containsString("<title id=\"title\">"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"panel", "sphere", "survival", "section", "net", "set-up"})
    void aPngHasTheWidthAskedFor(String drawing) throws IOException {
        byte[] png = design().accept("image/png")
                .queryParam("width", 321)
                .post("/v1/drawings/" + drawing)
                .then()
                .statusCode(200)
                .contentType("image/png")
                .extract()
                .asByteArray();
        BufferedImage image = ImageIO.read(new ByteArrayInputStream(png));
        assertEquals(321, image.getWidth());
    }

    @ParameterizedTest
    @ValueSource(strings = {"panel", "sphere", "survival", "section", "net", "set-up"})
    void aToolThatCannotSetTheHeaderAsksByQuery(String drawing) {
        design().queryParam("format", "png")
                .queryParam("width", 100)
                .post("/v1/drawings/" + drawing)
                .then()
                .statusCode(200)
                .contentType("image/png");
    }

    @Test
    void theSphereTurnsWithTheEye() {
        String front = design().post("/v1/drawings/sphere").asString();
        String side = design().queryParam("azimuth", "-97.5")
                .queryParam("elevation", "-10")
                .post("/v1/drawings/sphere")
                .asString();
        assertNotEquals(front, side);
    }

    @Test
    void everyOtherSegmentsLaminationHasASurvivalOfItsOwn() {
        String odd = design().queryParam("face", "hexagon")
                .post("/v1/drawings/survival")
                .asString();
        String even = design().queryParam("face", "hexagon")
                .queryParam("places", "EVEN")
                .post("/v1/drawings/survival")
                .asString();
        assertNotEquals(odd, even);
    }

    @ParameterizedTest
    @CsvSource({
        "panel, face, pentagon, 'one of square, hexagon'",
        "panel, set, sideways, 'one of UPRIGHT, INVERTED'",
        "sphere, numbers, no, 'one of false, true'",
        "sphere, set, TWINS, 'one of UPRIGHT, INVERTED, BOTH'",
        "sphere, light, on, 'one of false, true'",
        "sphere, azimuth, north, -360 to 360",
        "sphere, elevation, 90.5, -90 to 90",
        "survival, stations, 1, 'a whole number, 2 to 91'",
        "survival, places, SOME, one of ALL",
        "net, set, BOTH, 'one of UPRIGHT, INVERTED'",
        "net, width, wide, 'a whole number, 100 to 4000'",
        "net, format, dxf, 'one of svg, png'",
        "panel, dxf, R14, 'one of R2000, R12'",
        "section, width, 99999, 'a whole number, 100 to 4000'"
    })
    void aWrongParameterIsNamedWithWhatIsAllowed(String drawing, String name, String value, String allowed) {
        design(Contract.badRequest(), "truncated-octahedron-alternating")
                .accept(name.equals("width") ? "image/png" : name.equals("dxf") ? "image/vnd.dxf" : "*/*")
                .queryParam(name, value)
                .post("/v1/drawings/" + drawing)
                .then()
                .statusCode(400)
                .contentType("application/problem+json")
                .body("violations[0].path", equalTo(name))
                .body("violations[0].rejected", equalTo(value))
                .body("violations[0].allowed", equalTo(allowed));
    }

    @ParameterizedTest
    @CsvSource({"'', AC1015", "R2000, AC1015", "R12, AC1009"})
    void aDxfHasTheReleaseThatIsAskedFor(String release, String version) {
        design().queryParam("format", "dxf")
                .queryParam("face", "hexagon")
                .queryParams(release.isEmpty() ? Map.of() : Map.of("dxf", release))
                .post("/v1/drawings/panel")
                .then()
                .statusCode(200)
                .body(containsString("\n  1\n" + version + "\n"));
    }

    @Test
    void aReleaseIsRefusedWhereNoDxfIsAskedFor() {
        design(Contract.badRequest(), "cube-with-chevrons")
                .queryParam("dxf", "R12")
                .post("/v1/drawings/panel")
                .then()
                .statusCode(400)
                .body("violations[0].code", equalTo("NOT_APPLICABLE"))
                .body("violations[0].allowed", equalTo("left out of what is not a DXF"));
    }

    @Test
    void aFormThatIsNotToBeHadIsRefusedWithThoseThatAre() {
        design(Contract.badRequest(), "cube-with-chevrons")
                .accept("image/gif")
                .post("/v1/drawings/panel")
                .then()
                .statusCode(406)
                .body(
                        "detail",
                        equalTo("/v1/drawings/panel answers with image/svg+xml or image/png or image/vnd.dxf,"
                                + " not image/gif."));
    }

    @Test
    void aPanelIsNamedInsteadOfADirection() {
        String facing =
                design().queryParam("panel", 3).post("/v1/drawings/sphere").asString();
        String front = design().post("/v1/drawings/sphere").asString();
        assertNotEquals(front, facing);
        design(Contract.badRequest(), "truncated-octahedron-alternating")
                .queryParam("panel", 15)
                .post("/v1/drawings/sphere")
                .then()
                .statusCode(400)
                .body("detail", containsString("1 to 14"));
        design(Contract.badRequest(), "truncated-octahedron-alternating")
                .queryParam("panel", 3)
                .queryParam("azimuth", 25)
                .post("/v1/drawings/sphere")
                .then()
                .statusCode(400)
                .body("detail", containsString("left out where a panel is named"));
    }

    @Test
    void bothSetsAreShownSideBySide() {
        String both = design(Contract.request(), "truncated-octahedron-alternating")
                .queryParam("set", "BOTH")
                .queryParam("light", true)
                .post("/v1/drawings/sphere")
                .then()
                .statusCode(200)
                .header("Content-Disposition", containsString("sphere BOTH.svg"))
                .extract()
                .asString();
        for (String set : new String[] {"upright segments", "inverted segments"}) {
            assertEquals(2, both.split(">" + set + "<", -1).length, set);
        }
    }

    /** Mixed spheres; and chevrons, whose bands are not straight, so that sawing gives one set. */
    @ParameterizedTest
    @CsvSource({"icosahedron-mixed, /sets, SETS_MIXED", "cube-with-chevrons, /laminations, ONE_SET"})
    void bothSetsAreRefusedWhereThereAreNoTwoSpheres(String design, String path, String code) {
        design(Contract.request(), design)
                .queryParam("set", "BOTH")
                .post("/v1/drawings/sphere")
                .then()
                .statusCode(422)
                .contentType("application/problem+json")
                .body("violations[0].path", equalTo(path))
                .body("violations[0].code", equalTo(code));
    }

    @Test
    void aCutIsOneOfThree() {
        design(Contract.badRequest(), "truncated-octahedron-alternating")
                .queryParam("cut", "TIP")
                .post("/v1/drawings/set-up")
                .then()
                .statusCode(400)
                .body("detail", containsString("LEFT_LEG, RIGHT_LEG, BEVEL"));
    }
}
