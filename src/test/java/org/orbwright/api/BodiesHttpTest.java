package org.orbwright.api;

import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.empty;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.not;
import static org.hamcrest.Matchers.startsWith;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.http.ContentType;
import io.restassured.specification.RequestSpecification;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Bodies and outlines over HTTP: their forms by header and by query, and parameters that are refused in words. */
@QuarkusTest
class BodiesHttpTest {
    private static RequestSpecification with(RequestSpecification request, String body) {
        return request.contentType(ContentType.JSON).body(body);
    }

    private static RequestSpecification design() {
        return with(Contract.request(), worked());
    }

    private static RequestSpecification badDesign() {
        return with(Contract.badRequest(), worked());
    }

    private static String worked() {
        return Posted.twoSpheres().toString();
    }

    private static String lantern() {
        return Posted.lantern().toString();
    }

    @ParameterizedTest
    @ValueSource(strings = {"segment", "panel", "solid", "shell", "sphere"})
    void aBodyIsAnStlOfAllWoodUnlessAnotherFormIsAskedFor(String body) {
        byte[] stl = design().post("/v1/bodies/" + body)
                .then()
                .statusCode(200)
                .contentType("model/stl")
                .extract()
                .asByteArray();
        int triangles = ByteBuffer.wrap(stl).order(ByteOrder.LITTLE_ENDIAN).getInt(80);
        assertEquals(84 + 50 * triangles, stl.length);
        int counted = design().accept(ContentType.JSON)
                .queryParam("parts", "ONE")
                .post("/v1/bodies/" + body)
                .jsonPath()
                .getInt("body.triangles");
        assertEquals(counted, triangles);
    }

    @ParameterizedTest
    @CsvSource({"obj, model/obj", "3mf, model/3mf", "glb, model/gltf-binary", "stl, model/stl", "json, application/json"
    })
    void aFormIsAskedForByHeaderOrByQuery(String format, String type) {
        byte[] byQuery = design().queryParam("format", format)
                .post("/v1/bodies/panel")
                .then()
                .statusCode(200)
                .contentType(startsWith(type))
                .extract()
                .asByteArray();
        byte[] byHeader = design().accept(type).post("/v1/bodies/panel").asByteArray();
        assertEquals(
                new String(byQuery, StandardCharsets.ISO_8859_1), new String(byHeader, StandardCharsets.ISO_8859_1));
    }

    /** The width of the panel along the first axis is read by the rules of each format alone. */
    @ParameterizedTest
    @CsvSource({"stl, Lengths in mm", "obj, lengths in mm", "3mf, ''"})
    void aBodyIsInTheUnitThatIsAskedFor(String format, String says) {
        double inches = width(format, "in", says.replace("mm", "in"));
        assertEquals(25.4, width(format, "mm", says) / inches, 1e-4);
        assertEquals(inches, width(format, "", says.replace("mm", "in")), 0);
    }

    private static double width(String format, String unit, String says) {
        byte[] file = design().queryParam("format", format)
                .queryParams(unit.isEmpty() ? Map.of() : Map.of("unit", unit))
                .queryParam("parts", "ONE")
                .post("/v1/bodies/panel")
                .then()
                .statusCode(200)
                .extract()
                .asByteArray();
        assertTrue(new String(file, StandardCharsets.ISO_8859_1).contains(says));
        double[] across = FileWidth.of(format, file);
        return across[1] - across[0];
    }

    @ParameterizedTest
    @CsvSource({
        "bodies/panel, stl, cm, 'one of mm, in'",
        "bodies/panel, json, mm, left out of a form that has one unit alone",
        "bodies/sphere, glb, mm, left out of a form that has one unit alone",
        "bodies/solid, obj, IN, 'one of mm, in'",
        "drawings/panel, dxf, metre, 'one of mm, in'",
        "drawings/panel, svg, mm, left out of a form that has one unit alone",
        "drawings/segment, png, in, left out of a form that has one unit alone"
    })
    void aUnitThatIsNotToBeHadIsRefused(String address, String format, String unit, String allowed) {
        badDesign()
                .queryParam("format", format)
                .queryParam("unit", unit)
                .post("/v1/" + address)
                .then()
                .statusCode(400)
                .body("violations[0].path", equalTo("unit"))
                .body("violations[0].rejected", equalTo(unit))
                .body("violations[0].allowed", equalTo(allowed));
    }

    @ParameterizedTest
    @CsvSource({"mm, 4", "in, 1"})
    void aDxfIsInTheUnitThatIsAskedForAndSaysSo(String unit, String number) {
        String dxf = design().queryParam("format", "dxf")
                .queryParam("unit", unit)
                .post("/v1/drawings/panel")
                .asString();
        // Autodesk, DXF Reference: $INSUNITS is 1 for inches and 4 for millimetres.
        assertTrue(dxf.contains("$INSUNITS\n 70\n" + number + "\n"), dxf.substring(0, 300));
        assertTrue(dxf.startsWith("999\n")
                && dxf.lines().skip(1).findFirst().orElseThrow().endsWith("in " + unit));
        String[] lines = dxf.split("\n", -1);
        int most = Arrays.asList(lines).indexOf("$EXTMAX");
        double right = Double.parseDouble(lines[most + 2]);
        double radius = design().queryParam("format", "json")
                .post("/v1/bodies/panel")
                .jsonPath()
                .getDouble("body.parts[0].high.x");
        assertEquals(unit.equals("mm") ? 25.4 * radius : radius, right, 1e-3 * right);
    }

    @Test
    void oneWoodCanBeHadByItself() {
        byte[] stl = design().queryParam("species", "black cherry")
                .post("/v1/bodies/sphere")
                .then()
                .statusCode(200)
                .extract()
                .asByteArray();
        assertTrue(new String(stl, 0, 80, StandardCharsets.US_ASCII).startsWith("Lengths in in; black cherry"));
    }

    @ParameterizedTest
    @CsvSource({
        "sphere, species, oak, 'one of sugar maple, black cherry, black walnut'",
        "sphere, deviation, 0, 0.000001 to 1000",
        "sphere, deviation, fine, 0.000001 to 1000",
        "sphere, parts, SOME, 'one of WOODS, ONE'",
        "shell, set, BOTH, 'one of UPRIGHT, INVERTED'",
        "panel, face, square, one of pentagon",
        "segment, segment, Z, one of A",
        "solid, format, step, 'one of stl, obj, 3mf, glb, json'"
    })
    void aWrongParameterIsNamedWithWhatIsAllowed(String body, String name, String value, String allowed) {
        badDesign()
                .queryParam(name, value)
                .queryParam(name.equals("format") ? "parts" : "format", name.equals("format") ? "ONE" : "json")
                .post("/v1/bodies/" + body)
                .then()
                .statusCode(400)
                .body("violations[0].path", equalTo(name))
                .body("violations[0].rejected", equalTo(value))
                .body("violations[0].allowed", equalTo(allowed));
    }

    @ParameterizedTest
    @CsvSource({
        "'', solid, set, INVERTED, 'left out for the solid, which has one part and no bands'",
        "'', solid, species, solid, 'left out for the solid, which has one part and no bands'",
        "'', solid, parts, WOODS, ONE or left out for the solid",
        "lantern, disc, set, UPRIGHT, 'left out for the disc, which has one part and no bands'",
        "lantern, pocket, species, pocket, 'left out for the pocket, which has one part and no bands'"
    })
    void aParameterThatMeansNothingForABodyIsRefused(
            String document, String body, String name, String value, String allowed) {
        with(Contract.badRequest(), document.isEmpty() ? worked() : lantern())
                .queryParam(name, value)
                .post("/v1/bodies/" + body)
                .then()
                .statusCode(400)
                .body("violations[0].code", equalTo("NOT_APPLICABLE"))
                .body("violations[0].path", equalTo(name))
                .body("violations[0].rejected", equalTo(value))
                .body("violations[0].allowed", equalTo(allowed));
    }

    @Test
    void aDeviationIsRefusedWhereNothingIsRound() {
        String inlay = lantern().replace("\"DISC\"", "\"POLYGON\", \"sides\": 6");
        with(Contract.badRequest(), inlay)
                .queryParam("deviation", "0.1")
                .post("/v1/bodies/pocket")
                .then()
                .statusCode(400)
                .body(
                        "violations[0].allowed",
                        equalTo("left out for the pocket with 6 sides, which has nothing round"));
    }

    @Test
    void aWoodIsNotChosenWhereAllWoodIsOnePart() {
        badDesign()
                .queryParam("parts", "ONE")
                .queryParam("species", "sphere")
                .post("/v1/bodies/sphere")
                .then()
                .statusCode(400)
                .body("violations[0].allowed", equalTo("left out where parts is ONE"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"stl", "obj", "3mf", "glb"})
    void aSphereOfWhichNothingIsLeftIsNoFile(String format) {
        with(Contract.request(), allHollow())
                .queryParam("format", format)
                .post("/v1/bodies/sphere")
                .then()
                .statusCode(422)
                .body("violations[0].code", equalTo("BREAK_THROUGH"))
                .body("violations[0].path", equalTo("/panel/thickness"))
                .body("violations[0].message", startsWith("Nothing is left of the sphere"));
    }

    @Test
    void aSphereOfWhichNothingIsLeftHasNumbers() {
        with(Contract.request(), allHollow())
                .queryParam("format", "json")
                .post("/v1/bodies/sphere")
                .then()
                .statusCode(200)
                .body("body.parts", empty())
                .body("findings[0].message", startsWith("Nothing of the 5.8 in sphere is left"));
    }

    /** Panels of 0.45 in whose inner faces lie 3.05 in from the centre, and a sphere of 2.9 in in radius. */
    private static String allHollow() {
        return worked().replaceFirst("\"thickness\": *1.1", "\"thickness\": 0.45")
                .replaceFirst("\"turningAllowance\": *0.08", "\"turningAllowance\": 0.6");
    }

    @Test
    void anStlHoldsOnePart() {
        badDesign()
                .queryParam("parts", "WOODS")
                .post("/v1/bodies/sphere")
                .then()
                .statusCode(400)
                .body("violations[0].path", equalTo("species"))
                .body("violations[0].allowed", equalTo("one of sugar maple, black cherry, black walnut"));
    }

    @Test
    void aDeviationThatTakesTooManyTrianglesIsRefusedWithOneThatWouldDo() {
        String allowed = design().queryParam("deviation", "0.00001")
                .queryParam("format", "json")
                .post("/v1/bodies/sphere")
                .then()
                .statusCode(422)
                .body("violations[0].code", equalTo("TOO_MANY_TRIANGLES"))
                .extract()
                .path("violations[0].allowed");
        design().queryParam("deviation", allowed.replaceAll("[^0-9.]", ""))
                .queryParam("format", "json")
                .post("/v1/bodies/sphere")
                .then()
                .statusCode(200);
    }

    @Test
    void aDiscNeedsAThicknessWhereNoScrewsAskForOne() {
        String plain = worked();
        with(Contract.badRequest(), plain)
                .post("/v1/bodies/disc")
                .then()
                .statusCode(400)
                .body("violations[0].path", equalTo("thickness"));
        with(Contract.request(), plain)
                .queryParam("thickness", "0.75")
                .queryParam("format", "json")
                .post("/v1/bodies/disc")
                .then()
                .statusCode(200)
                .body("body.parts[0].high.z", equalTo(0.75f));
        with(Contract.request(), lantern())
                .queryParam("end", "TAIL")
                .post("/v1/bodies/disc")
                .then()
                .statusCode(200)
                .contentType("model/stl");
    }

    @ParameterizedTest
    @CsvSource({"panel, ''", "segment, ''", "disc, lantern", "templates, lantern", "pocket, lantern"})
    void anOutlineIsAPictureOrADrawingInterchangeFile(String drawing, String document) {
        String body = document.isEmpty() ? worked() : lantern();
        String address = "/v1/drawings/" + drawing;
        with(Contract.request(), body)
                .post(address)
                .then()
                .statusCode(200)
                .contentType(startsWith("image/svg+xml"))
                .body(containsString("<title id=\"title\">"));
        String dxf = with(Contract.request(), body)
                .queryParam("format", "dxf")
                .post(address)
                .then()
                .statusCode(200)
                .contentType("image/vnd.dxf")
                .extract()
                .asString();
        assertTrue(dxf.endsWith("EOF\n"), dxf);
        assertEquals(
                dxf,
                with(Contract.request(), body)
                        .accept("image/vnd.dxf")
                        .post(address)
                        .asString());
    }

    @ParameterizedTest
    @CsvSource({"panel, ''", "segment, ''", "disc, lantern", "templates, lantern", "pocket, lantern"})
    void whatIsCutIsAnSvgWithoutLetters(String drawing, String document) {
        with(Contract.request(), document.isEmpty() ? worked() : lantern())
                .queryParam("format", "cut")
                .queryParam("unit", "mm")
                .post("/v1/drawings/" + drawing)
                .then()
                .statusCode(200)
                .contentType(startsWith("image/svg+xml"))
                .body(containsString("<g id=\"OUTLINE\""))
                .body(containsString("mm\" viewBox=\"0 0 "))
                .body(not(containsString("<text")));
    }

    @Test
    void aStopStandsInTheDescriptionOfWhatIsCut() {
        with(Contract.request(), allHollow())
                .queryParam("format", "cut")
                .post("/v1/drawings/panel")
                .then()
                .statusCode(200)
                .body(containsString("<desc>Lengths in in. STOP BREAK_THROUGH: "));
    }

    @Test
    void theMacroIsServed() {
        given().get("/clients/fetch_bodies.FCMacro").then().statusCode(200).body(containsString("/v1/bodies/"));
    }
}
