package org.orbwright.api;

import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.startsWith;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.MissingNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.http.ContentType;
import io.restassured.specification.RequestSpecification;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Sheets over HTTP: their form by header and by query, and their numbers beside the answers in JSON. */
@QuarkusTest
class PaperHttpTest {
    private static final String ADDRESS = "/v1/shop-sheet";

    private static ObjectNode body(String fixture) {
        return Posted.fixture(fixture);
    }

    private static RequestSpecification request(RequestSpecification request, JsonNode body) {
        return request.contentType(ContentType.JSON).body(body.toString());
    }

    private static byte[] pdf(JsonNode body) {
        return request(Contract.request(), body)
                .post(ADDRESS)
                .then()
                .statusCode(200)
                .contentType("application/pdf")
                .extract()
                .asByteArray();
    }

    private static String text(byte[] pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            return new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
        }
    }

    @Test
    void partsAreChosenByName() throws IOException {
        ObjectNode body = body("boathouse-lantern");
        body.set("paper", Contract.json("{\"parts\":[\"BEVELS\"]}"));
        String text = text(pdf(body));
        assertTrue(text.contains("Bevelling the panels") && !text.contains("Crosscutting the segments"), text);
        body.set("paper", Contract.json("{\"parts\":[\"BEVELS\",\"COVER\"]}"));
        request(Contract.badRequest(), body)
                .post(ADDRESS)
                .then()
                .statusCode(400)
                .body("violations[0].path", equalTo("/paper/parts/1"))
                .body("violations[0].code", equalTo("UNKNOWN_VALUE"))
                .body("violations[0].allowed", startsWith("one of SUMMARY, BANDS"));
    }

    private static JsonNode answer(String address, JsonNode body) {
        return Contract.json(
                request(Contract.request(), body).post("/v1/" + address).asString());
    }

    @Test
    void aPdfIsAnsweredUnlessHtmlIsAskedFor() {
        JsonNode body = body("dodecahedron-with-land");
        assertEquals("%PDF-", new String(pdf(body), 0, 5, StandardCharsets.US_ASCII));
        request(Contract.request(), body)
                .accept("text/html")
                .post(ADDRESS)
                .then()
                .statusCode(200)
                .contentType(startsWith("text/html"))
                .header("Vary", containsString("Accept"))
                .body(containsString("<h1>Boathouse lantern (invented)</h1>"));
    }

    @ParameterizedTest
    @CsvSource({"html, application/pdf, text/html", "pdf, text/html, application/pdf", "html, */*, text/html"})
    void formatGoesBeforeTheHeader(String format, String accept, String answered) {
        request(Contract.badRequest(), body("cube-with-chevrons"))
                .accept(accept)
                .queryParam("format", format)
                .post(ADDRESS)
                .then()
                .statusCode(200)
                .contentType(startsWith(answered));
    }

    @Test
    void theSameRequestGivesTheSameBytes() {
        JsonNode body = body("truncated-icosahedron");
        assertArrayEquals(pdf(body), pdf(body));
    }

    /** To the decimals that a sheet has: hundredths of a millimetre and of a degree, thousandths of an inch. */
    @ParameterizedTest
    @ValueSource(strings = {"dodecahedron-two-spheres", "dodecahedron-with-land"})
    void theNumbersAreThoseOfTheAnswersInJson(String design) throws IOException {
        JsonNode body = body(design);
        String text = text(pdf(body));
        int decimals = body.path("unit").asText().equals("mm") ? 2 : 3;
        JsonNode sheet = answer("sheet", body);
        JsonNode jig = answer("jig", body).path("jig");
        JsonNode turning = answer("turning", body).path("turning");
        for (String pointer : List.of(
                "/sphere/acrossFlats",
                "/sphere/edge",
                "/sphere/swingDiameter",
                "/sphere/diameter",
                "/sphere/thinnestWall",
                "/segments/faces/0/baseDistance",
                "/segments/faces/0/segments/0/base",
                "/segments/faces/0/segments/0/legLeft",
                "/segments/faces/0/segments/0/lengthUsed",
                "/segments/faces/0/segments/0/lengthLeft",
                "/yield/laminations/0/blanks",
                "/yield/laminations/0/strips/0/width",
                "/yield/laminations/0/strips/3/width")) {
            assertSaid(sheet.at(pointer), decimals, text, pointer);
        }
        for (String pointer : List.of(
                "/faces/0/segments/0/stopDistance",
                "/faces/0/segments/0/left/mitre/sineBarStack",
                "/faces/0/segments/0/left/mitre/rise",
                "/faces/0/segments/0/left/mitre/trialPairChord",
                "/faces/0/bevel/bladeHeight",
                "/faces/0/bevel/seamWidth",
                "/faces/0/bevel/inset",
                "/faces/0/closing/gap")) {
            assertSaid(jig.at(pointer), decimals, text, pointer);
        }
        assertSaid(jig.at("/faces/0/segments/0/left/mitre/angle"), 2, text, "mitre");
        assertSaid(jig.at("/faces/0/bevel/tilt/angle"), 2, text, "tilt");
        assertSaid(turning.at("/speeds/solid/thumbLow"), 0, text, "speed");
        for (JsonNode station : turning.at("/roughing/depths")) {
            assertSaid(station.path("diameter"), decimals, text, "station");
            assertSaid(station.path("depth"), decimals, text, "station");
        }
        for (JsonNode gauge : turning.at("/roughing/gauges")) {
            assertSaid(gauge.path("sagitta"), decimals, text, "gauge");
        }
    }

    private static void assertSaid(JsonNode answer, int decimals, String text, String what) {
        assertTrue(answer.isNumber() && !(answer instanceof MissingNode), what);
        BigDecimal rounded = new BigDecimal(answer.asText()).setScale(decimals, RoundingMode.HALF_EVEN);
        String number =
                rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
        assertTrue((" " + text).contains(" " + number), what + ": " + number + " is not on the sheet");
    }

    @Test
    void whatIsWrongIsPointedAt() {
        ObjectNode paper = body("cube-with-chevrons");
        paper.putObject("paper").put("size", "A5");
        request(Contract.badRequest(), paper)
                .post(ADDRESS)
                .then()
                .statusCode(400)
                .body("violations[0].path", equalTo("/paper/size"))
                .body("violations[0].allowed", equalTo("one of A4, LETTER"));
        ObjectNode impossible = body("cube-with-chevrons");
        ((ObjectNode) impossible.path("panel")).put("land", 50);
        request(Contract.badRequest(), impossible)
                .post(ADDRESS)
                .then()
                .statusCode(422)
                .body("violations[0].path", equalTo("/panel/land"));
    }

    @Test
    void aFormatThatIsNotKnownIsNamed() {
        request(Contract.badRequest(), body("cube-with-chevrons"))
                .queryParam("format", "docx")
                .post(ADDRESS)
                .then()
                .statusCode(400)
                .body("violations[0].path", equalTo("format"))
                .body("violations[0].allowed", equalTo("one of pdf, html"));
        request(Contract.badRequest(), body("cube-with-chevrons"))
                .accept("application/json")
                .post(ADDRESS)
                .then()
                .statusCode(406)
                .body("detail", containsString("application/pdf or text/html"));
    }

    @Test
    void findingsStandOnTheFirstPage() throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf(body("dodecahedron-vanishing-rim")))) {
            PDFTextStripper reader = new PDFTextStripper();
            reader.setEndPage(1);
            String first = reader.getText(document).replaceAll("\\s+", " ");
            JsonNode sheet = answer("sheet", body("dodecahedron-vanishing-rim"));
            for (JsonNode finding : sheet.path("findings")) {
                assertTrue(first.contains(finding.path("message").asText()), finding::toString);
            }
        }
    }
}
