package org.orbwright.api;

import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.is;
import static org.hamcrest.Matchers.not;
import static org.hamcrest.Matchers.startsWith;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.RestAssured;
import io.restassured.http.ContentType;
import io.restassured.response.Response;
import io.restassured.specification.RequestSpecification;
import java.io.ByteArrayInputStream;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.xpath.XPathFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.orbwright.api.cells.CellQuery;
import org.orbwright.api.wire.Problem;
import org.orbwright.cell.Cell;
import org.orbwright.cell.Parameter;
import org.orbwright.solid.FaceKind;
import org.orbwright.solid.Solid;
import org.orbwright.solid.SolidCatalogue;
import org.w3c.dom.Document;

/** Cells and tables over HTTP: the sheet's own digits, in forms that spreadsheets take. */
@QuarkusTest
class CellHttpTest {
    private static final String POINTERS = "/cells.csv";

    /** What a number may depend on, but has a default. */
    private static final Set<String> OPTIONAL = Set.of("copies", "turningAllowance", "minimumWall");

    /** The worked design of two spheres, as a spreadsheet writes it. */
    private static Map<String, String> design() {
        Map<String, String> design = new LinkedHashMap<>();
        design.put("solid", "dodecahedron");
        design.put("unit", "in");
        design.put("copies", "2");
        design.put("acrossFlats", "7");
        design.put("thickness", "1.1");
        design.put("bands", "sugar maple 3/4; black cherry 1/4; black walnut 0,5; sugar maple rest");
        design.put("kerf", "1/8");
        design.put("blankLength", "584.2mm");
        design.put("turningAllowance", "0.08");
        design.put("minimumWall", "1/4");
        return design;
    }

    private static JsonNode sheet() {
        ObjectNode design = Posted.twoSpheres();
        return Contract.json(Contract.request()
                .contentType(ContentType.JSON)
                .body(design.toString())
                .post("/v1/sheet")
                .asString());
    }

    private static Response cell(String name, Map<String, String> query) {
        return Contract.request().queryParams(query).get("/v1/cell/" + name);
    }

    private static RequestSpecification bad(Map<String, String> query) {
        return Contract.badRequest().queryParams(query);
    }

    private static Map<String, String> with(String name, String text) {
        Map<String, String> design = design();
        design.put(name, text);
        return design;
    }

    /** The pointers were written by hand, from the contract. */
    @ParameterizedTest
    @CsvFileSource(resources = POINTERS)
    void everyCellHasTheSheetsDigits(String name, String pointer, String needs) {
        Response answer = cell(name, design());
        assertEquals(200, answer.statusCode());
        assertEquals("text/plain;charset=UTF-8", answer.contentType());
        JsonNode expected = sheet().at(pointer);
        String text = expected.isNumber() ? new BigDecimal(expected.asText()).toPlainString() : expected.asText();
        assertEquals(text, answer.asString());
    }

    @Test
    void everyCellIsInTheList() {
        JsonNode list = Contract.json(Contract.request().get("/v1/cell").asString());
        List<String> names = list.path("cells").findValuesAsText("name");
        assertEquals(Cell.names(), names);
        assertEquals(Cell.names().size(), new HashSet<>(names).size());
    }

    /** What a cell does not need may be left out, and nothing changes; what it needs is asked for. */
    @ParameterizedTest
    @CsvFileSource(resources = POINTERS)
    void aCellNeedsNoMoreThanItSays(String name, String pointer, String needs) {
        List<String> needed = List.of(needs.split(" "));
        Map<String, String> query = design();
        boolean measured = needed.contains("unit");
        query.keySet()
                .removeIf(parameter -> !needed.contains(parameter) && !(measured && OPTIONAL.contains(parameter)));
        assertEquals(cell(name, design()).asString(), cell(name, query).asString());
        for (String parameter : needed) {
            Map<String, String> less = new LinkedHashMap<>(query);
            less.remove(parameter);
            String word = parameter.equals("acrossFlats") ? "size" : parameter;
            bad(less)
                    .get("/v1/cell/" + name)
                    .then()
                    .statusCode(400)
                    .contentType("text/plain")
                    .body(startsWith("ERROR: "), containsString(word), containsString("missing"));
        }
    }

    @Test
    void theThreeSizesAreOfOneSolid() {
        Map<String, String> byEdge = with("edge", "3.1432");
        byEdge.remove("acrossFlats");
        assertEquals("3.1432", cell("edge", byEdge).asString());
        Map<String, String> bySphere = with("sphereDiameter", "6.84");
        bySphere.remove("acrossFlats");
        assertEquals("7", cell("across-flats", bySphere).asString());
        bad(with("edge", "3"))
                .get("/v1/cell/base")
                .then()
                .statusCode(400)
                .body(equalTo("ERROR: The size is stated by acrossFlats and edge; only one of them can hold."));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "thickness | 1/0 | 400 | ERROR: thickness must be a length such as 79.4, 3 1/8, 3-1/8in or"
                        + " 79.4mm, but is"
                        + " \"1/0\".",
                "thickness | -1 | 400 | ERROR: thickness must be 0.001 to 10000 in the design's unit, but is -1.",
                "acrossFlats | 0 | 400 | ERROR: acrossFlats must be 0.001 to 100000 in the design's unit, but is 0.",
                "blankLength | 1e9 | 400 | ERROR: blankLength must be 0.001 to 100000 in the design's unit, but is"
                        + " 1000000000.",
                "unit | ft | 400 | ERROR: unit must be mm or in, but is \"ft\".",
                "copies | 1.5 | 400 | ERROR: copies must be a whole number, 1 to 1000, but is \"1.5\".",
                "copies | 0 | 400 | ERROR: copies must be a whole number, 1 to 1000, but is 0.",
                "bandAngle | steep | 400 | ERROR: bandAngle must be a number such as 12.5, but is \"steep\".",
                "bandAngle | 91 | 400 | ERROR: bandAngle must be -90 to 90, but is 91.",
                "bands | maple | 400 | ERROR: bands has no wood and width in \"maple\"; it takes woods with"
                        + " widths, separated by ;, such as white ash 17; red alder rest.",
                "bands | a: maple 1: b | 400 | ERROR: bands has two colons in \"a: maple 1: b\"; it takes woods with"
                        + " widths, separated by ;, such as white ash 17; red alder rest.",
                "bands | maple 3/4, oak rest | 400 | ERROR: bands has a comma or a number within a wood's name in"
                        + " \"maple 3/4, oak rest\"; it takes woods with widths, separated by ;, such as white ash 17;"
                        + " red alder rest.",
                "bands | hexagon: maple rest | 422 | ERROR: This solid has no face kind named \"hexagon\"; those"
                        + " that it has are: pentagon.",
                "bands | ODD: maple rest | 422 | ERROR: The pentagon panels have 5 segments, an odd number, so that"
                        + " two alike would lie side by side.",
                "bands | ; | 400 | ERROR: bands names no wood in \";\"; it takes woods with widths, separated by"
                        + " ;, such as"
                        + " white ash 17; red alder rest.",
                "bands | maple 0.0001; oak rest | 400 | ERROR: the width of strip 1 in bands must be 0.001 to"
                        + " 10000 in the"
                        + " design's unit, but is 0.0001.",
                "bands | maple 9; oak rest | 422 | ERROR: The other bands of the pentagon lamination already"
                        + " add up to 9"
                        + " in; nothing is left of the base distance 2.163 in.",
                "solid | dodecahedro | 422 | ERROR: There is no solid named \"dodecahedro\". The nearest names are:"
                        + " dodecahedron, octahedron, tetrahedron.",
                "kerv | 1 | 400 | ERROR: There is no parameter kerv; GET /v1/cell lists them.",
                "band | 9 | 400 | ERROR: band must be one of 1, 2, 3, 4, but is \"9\".",
                "sets | BY_PANEL | 400 | ERROR: sets must be TWINS or UPRIGHT or INVERTED or MIXED, but is"
                        + " \"BY_PANEL\".",
                "set | LEFT | 400 | ERROR: The query parameter set must be one of UPRIGHT, INVERTED, but is \"LEFT\".",
                "species | oak | 400 | ERROR: species chooses nothing of survival, which is chosen by face, places,"
                        + " segment, set, band.",
                "errors | loud | 400 | ERROR: The query parameter errors must be one of status, text, but is \"loud\".",
            })
    void aWrongTextIsNamed(String parameter, String text, int status, String message) {
        Map<String, String> query = with(parameter, text);
        bad(query)
                .get("/v1/cell/survival")
                .then()
                .statusCode(status)
                .header("Cache-Control", "no-store")
                .body(equalTo(message));
        if (!parameter.equals("errors")) {
            query.put("errors", "text");
            bad(query).get("/v1/cell/survival").then().statusCode(200).body(equalTo(message));
        }
    }

    @Test
    void anUnknownCellIsNamed() {
        bad(Map.of())
                .get("/v1/cell/blade-tild")
                .then()
                .statusCode(404)
                .body(equalTo("ERROR: There is no cell named \"blade-tild\". The names are listed at /v1/cell."));
        bad(Map.of("errors", "text"))
                .get("/v1/cell/blade-tild")
                .then()
                .statusCode(200)
                .body(startsWith("ERROR: "));
    }

    @Test
    void choicesChoose() {
        JsonNode bands = sheet().at("/bands/faces/0/segments/0/inverted");
        Map<String, String> query = with("set", "INVERTED");
        for (JsonNode band : bands) {
            query.put("band", band.path("band").asText());
            assertEquals(band.path("survival").asText(), cell("survival", query).asString());
        }
        assertEquals("black walnut", cell("band-species", with("band", "3")).asString());
        Map<String, String> soccer = design();
        soccer.put("solid", "truncated-icosahedron");
        soccer.put("bands", "pentagon: maple 1/4; walnut rest | hexagon: walnut rest");
        soccer.put("face", "hexagon");
        assertEquals("walnut", cell("band-species", soccer).asString());
        soccer.put("bands", "Pentagon: maple rest | Hexagon ODD: oak rest | hexagon even: walnut rest");
        assertEquals("oak", cell("band-species", soccer).asString());
        soccer.put("places", "EVEN");
        assertEquals("walnut", cell("band-species", soccer).asString());
        assertEquals(
                "30",
                cell("mitre-gauge-left", Map.of("solid", "truncated-icosahedron", "face", "hexagon"))
                        .asString());
    }

    /** Two spheres need the blanks of both sets as twins, and twice those of one set alone; the sheet says the same. */
    @Test
    void theSetsAreThoseOfTheDocument() {
        for (String sets : List.of("TWINS", "UPRIGHT", "INVERTED", "MIXED")) {
            JsonNode wanted = Contract.json(Contract.request()
                    .contentType(ContentType.JSON)
                    .body(Posted.twoSpheres().put("sets", sets).toString())
                    .post("/v1/sheet")
                    .asString());
            String text = sets.substring(0, 1) + sets.substring(1).toLowerCase(Locale.ROOT);
            assertEquals(
                    wanted.at("/yield/laminations/0/blanks").asText(),
                    cell("blanks", with("sets", text)).asString());
            assertEquals(
                    wanted.at("/yield/spheres/0/mass").asText(),
                    cell("sphere-mass", with("sets", text)).asString());
        }
        assertEquals("20", cell("blanks", with("sets", "UPRIGHT")).asString());
        assertEquals("10", cell("blanks", with("sets", "TWINS")).asString());
    }

    /** As people write names: with capitals, and with blanks in place of hyphens. */
    @Test
    void namesMayBeWrittenAsPeopleWriteThem() {
        Map<String, String> query = design();
        query.put("solid", "truncated-icosahedron");
        query.put("bands", "pentagon: white ash rest | hexagon: red alder 0.1; white ash rest");
        query.put("face", "hexagon");
        String expected = cell("survival", query).asString();
        query.put("solid", " Truncated  Icosahedron");
        query.put("unit", "IN");
        query.put("bands", "Pentagon: White Ash Rest | Hexagon: Red Alder 0.1; White Ash REST");
        query.put("face", "Hexagon");
        assertEquals(expected, cell("survival", query).asString());
        assertEquals(
                cell("dihedral", Map.of("solid", "snub-cube")).asString(),
                cell("dihedral", Map.of("solid", "Snub_Cube")).asString());
        bad(with("solid", "Dodeca hedro"))
                .get("/v1/cell/bevel")
                .then()
                .statusCode(422)
                .body(startsWith("ERROR: There is no solid named \"dodeca-hedro\"."));
    }

    @Test
    void anUnknownWoodIsToldWhereItWouldBeWeighed() {
        String told = "ERROR: The density of moonwood is not known, so masses with it are left out."
                + " GET /v1/woods lists the woods that are known.";
        Map<String, String> query = with("bands", "moonwood 3/4; black cherry rest");
        bad(query).get("/v1/cell/sphere-mass").then().statusCode(400).body(startsWith(told));
        query.put("errors", "text");
        bad(query).get("/v1/cell/sphere-mass").then().statusCode(200).body(startsWith(told));
        assertEquals("moonwood", cell("band-species", query).asString());
        Map<String, String> thin = with("thickness", "0.2");
        assertEquals("STOP", cell("severity", thin).asString());
        RestAssured.given()
                .queryParams(thin)
                .get("/v1/cell/sphere-mass")
                .then()
                .statusCode(200)
                .body(is(""));
    }

    private static Stream<Solid> solids() {
        return SolidCatalogue.all().stream();
    }

    /** One list is for every face kind, and a list for each gives each its own; the sheet has the same digits. */
    @ParameterizedTest
    @MethodSource("solids")
    void everySolidHasBandsInACell(Solid solid) {
        Map<String, String> query = design();
        query.put("solid", solid.name());
        query.put("bands", "white ash 0.1; red alder rest");
        assertEquals(31, SolidCatalogue.all().size());
        StringBuilder named = new StringBuilder();
        for (FaceKind kind : solid.faceKinds()) {
            query.put("face", kind.face());
            query.put("band", "1");
            assertEquals("0.1", cell("band-width", query).asString(), kind.face());
            named.append(named.length() == 0 ? "" : " | ")
                    .append(kind.face())
                    .append(": red alder 0.1; white ash rest");
        }
        query.put("bands", named.toString());
        for (FaceKind kind : solid.faceKinds()) {
            query.put("face", kind.face());
            assertEquals("red alder", cell("band-species", query).asString(), kind.face());
        }
        query.keySet().removeAll(List.of("face", "band"));
        assertTrue(Double.parseDouble(cell("board-feet", query).asString()) > 0);
        assertTrue(Integer.parseInt(cell("blanks", query).asString()) > 0);
    }

    /**
     * An edge's two faces have no order. The angles are those of archimedean-edges.csv, made by mpmath; the
     * cuboctahedron's is the arc cosine of -1 / sqrt 3.
     */
    @ParameterizedTest
    @CsvSource({
        "truncated-icosahedron, pentagon, hexagon, 142.6226",
        "truncated-icosahedron, hexagon, pentagon, 142.6226",
        "truncated-icosahedron, hexagon, hexagon, 138.1897",
        "cuboctahedron, triangle, square, 125.2644",
        "cuboctahedron, square, triangle, 125.2644",
        "cuboctahedron, square, , 125.2644",
        "cuboctahedron, , square, 125.2644",
        "truncated-icosidodecahedron, decagon, , 142.6226",
        "truncated-icosidodecahedron, decagon, square, 148.2825",
        "truncated-icosidodecahedron, square, decagon, 148.2825",
    })
    void aDihedralIsFoundFromEitherFace(String solid, String face, String neighbour, String degrees) {
        Map<String, String> query = new LinkedHashMap<>(Map.of("solid", solid));
        if (face != null) {
            query.put("face", face);
        }
        if (neighbour != null) {
            query.put("neighbour", neighbour);
        }
        assertEquals(degrees, cell("dihedral", query).asString());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "square | square | ERROR: neighbour must be one of triangle, but is \"square\".",
                "square | hexagon | ERROR: neighbour must be one of triangle, but is \"hexagon\".",
                "hexagon | square | ERROR: face must be one of square, triangle, but is \"hexagon\".",
            })
    void onlyFacesThatMeetAreListed(String face, String neighbour, String message) {
        bad(Map.of("solid", "cuboctahedron", "face", face, "neighbour", neighbour))
                .get("/v1/cell/dihedral")
                .then()
                .statusCode(400)
                .body(equalTo(message));
    }

    @Test
    void whatIsUselessIsRefused() {
        bad(with("band", "1"))
                .get("/v1/cell/edge")
                .then()
                .statusCode(400)
                .body(equalTo("ERROR: band chooses nothing of edge, of which there is only one."));
        bad(with("format", "csv"))
                .get("/v1/cell/edge")
                .then()
                .statusCode(400)
                .body(equalTo("ERROR: There is no parameter format; GET /v1/cell lists them."));
        Contract.badRequest()
                .contentType(ContentType.JSON)
                .body(named(null).toString())
                .queryParam("set", "INVERTED")
                .post("/v1/table/angles")
                .then()
                .statusCode(400)
                .body("detail", equalTo("set chooses nothing of angles, of which there is only one."));
    }

    /** An angle needs no size, but one that is stated has to have a meaning. */
    @Test
    void aSizeThatIsNotNeededIsReadAllTheSame() {
        bad(Map.of("solid", "dodecahedron", "edge", "3"))
                .get("/v1/cell/blade-tilt")
                .then()
                .statusCode(400)
                .body(equalTo("ERROR: unit is missing, for example unit=mm."));
        bad(Map.of("solid", "dodecahedron", "edge", "3", "acrossFlats", "4", "unit", "in"))
                .get("/v1/cell/blade-tilt")
                .then()
                .statusCode(400)
                .body(startsWith("ERROR: The size is stated by acrossFlats and edge"));
        assertEquals(
                "31.7175",
                cell("blade-tilt", Map.of("solid", "dodecahedron", "edge", "3in"))
                        .asString());
    }

    @Test
    void pastedTextsAreRead() {
        Map<String, String> query = with("acrossFlats", "7\u00a0IN");
        query.put("bands", "sugar\u00a0maple\u00a0\u00be; black walnut rest");
        query.put("thickness", "1\u202f1/8");
        assertEquals("sugar maple", cell("band-species", query).asString());
        assertEquals("7", cell("across-flats", query).asString());
    }

    /** RFC 9110, 13.1.2: If-None-Match compares weakly, since what compresses an answer makes its tag weak. */
    @ParameterizedTest
    @ValueSource(strings = {"%s", "W/%s", "\"other\", W/%s", "*"})
    void aKnownAnswerIsNotSentAgain(String known) {
        String tag = cell("base", design()).header("ETag");
        Contract.request()
                .queryParams(design())
                .header("If-None-Match", String.format(known, tag))
                .get("/v1/cell/base")
                .then()
                .statusCode(304)
                .header("ETag", tag);
    }

    /** A cell shows texts only, whatever goes wrong. */
    @Test
    void aCellIsToldInTextWhateverIsWrong() {
        Contract.badRequest()
                .accept("application/json")
                .get("/v1/cell/edge")
                .then()
                .statusCode(406)
                .contentType("text/plain")
                .body(equalTo("ERROR: /v1/cell/edge answers with text/plain, not application/json."));
        RestAssured.given()
                .delete("/v1/cell/edge")
                .then()
                .statusCode(405)
                .contentType("text/plain")
                .header("Allow", "GET, HEAD, OPTIONS")
                .body(startsWith("ERROR: DELETE is not for "));
        bad(with("species", "x".repeat(5000)))
                .get("/v1/cell/edge")
                .then()
                .statusCode(414)
                .contentType("text/plain")
                .body(startsWith("ERROR: The address has "));
        bad(Map.of("species", "x".repeat(5000), "errors", "text"))
                .get("/v1/cell/edge")
                .then()
                .statusCode(200)
                .body(startsWith("ERROR: The address has "));
    }

    /** Calc sends OPTIONS, HEAD and GET for each cell. */
    @Test
    void theWaysOfASpreadsheetAreAnswered() {
        RestAssured.given()
                .queryParams(design())
                .options("/v1/cell/base")
                .then()
                .statusCode(200)
                .header("Allow", "GET, HEAD, OPTIONS");
        Response get = cell("base", design());
        RestAssured.given()
                .queryParams(design())
                .head("/v1/cell/base")
                .then()
                .statusCode(200)
                .header("ETag", get.header("ETag"))
                .body(is(""));
        get.then().header("Cache-Control", "max-age=3600");
        Contract.request()
                .queryParams(design())
                .header("If-None-Match", get.header("ETag"))
                .get("/v1/cell/base")
                .then()
                .statusCode(304)
                .body(is(""));
        Contract.request()
                .queryParams(with("acrossFlats", "8"))
                .header("If-None-Match", get.header("ETag"))
                .get("/v1/cell/base")
                .then()
                .statusCode(200)
                .header("ETag", not(get.header("ETag")));
    }

    /** Written by hand, as a formula without ENCODEURL does it. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "bands=maple%203/4;walnut%20rest",
                "bands=maple+3/4%3Bwalnut+rest",
                "bands=maple%203/4;walnut%20rest;&&x",
            })
    void aSemicolonPartsBandsAndNotParameters(String bands) {
        String address = "/v1/cell/band-species?solid=dodecahedron&unit=in&acrossFlats=7&turningAllowance=0&band=2&"
                + bands.replace("&&x", "&&");
        Contract.badRequest()
                .urlEncodingEnabled(false)
                .get(address)
                .then()
                .statusCode(200)
                .body(equalTo("walnut"));
    }

    @ParameterizedTest
    @CsvSource({
        "angles, /angles/faces/0/segments, bladeTilt, 31.7175",
        "edges, /angles/edges, dihedral, 116.5651",
        "segments, /segments/faces/0/segments, base, 3.1432",
        "cuts, /segments/faces/0/segments/0/cuts, lastBandEdge, 1.5716",
        "blanks, /yield/laminations, blanks, 10",
        "strips, /yield/laminations/0/strips, count, 10",
        "woods, /yield/species, strips, 20",
        "walls, /sphere/faces, wallCorner, 0.39982",
        "bands, /bands/faces/0/segments/0/upright, visibleWidthEdgeMiddle, 0.43645",
        "profile, /bands/faces/0/segments/0/upright/0/profile, along, 0",
        "findings, /findings, code, SMALL_SEGMENT",
    })
    void tablesHaveARowForEachItem(String table, String pointer, String column, String first) throws Exception {
        int rows = sheet().at(pointer).size() * (table.equals("profile") ? 4 : 1);
        List<List<String>> csv = CsvReader.read(table(table, "csv"));
        assertEquals(rows, csv.size() - 1);
        assertEquals(first, csv.get(1).get(csv.get(0).indexOf(column)));
        assertEquals("in", csv.get(1).get(csv.get(0).indexOf("unit")));
        Document xml = DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(new ByteArrayInputStream(table(table, "xml").getBytes(StandardCharsets.UTF_8)));
        assertEquals(rows, xml.getElementsByTagName("row").getLength());
        assertEquals(first, XPathFactory.newInstance().newXPath().evaluate("//row[1]/" + column, xml));
        assertEquals(
                table(table, "csv"),
                Contract.request()
                        .contentType(ContentType.JSON)
                        .body(named(null).toString())
                        .post("/v1/table/" + table)
                        .asString());
    }

    private static String table(String table, String format) {
        Response answer = Contract.request()
                .queryParams(design())
                .queryParam("format", format)
                .get("/v1/table/" + table);
        assertEquals(200, answer.statusCode(), answer::asString);
        return answer.asString();
    }

    private static ObjectNode named(String name) {
        ObjectNode design = Posted.twoSpheres();
        return name == null ? design : design.put("name", name);
    }

    @Test
    void theWholeSheetIsATableOfPointers() {
        String name = "=1+1, \"quoted\"\u0001";
        String body = named(name).toString();
        JsonNode sheet = Contract.json(Contract.request()
                .contentType(ContentType.JSON)
                .body(body)
                .post("/v1/sheet")
                .asString());
        List<List<String>> rows = CsvReader.read(Contract.request()
                .contentType(ContentType.JSON)
                .body(body)
                .post("/v1/table/sheet")
                .asString());
        for (List<String> row : rows.subList(1, rows.size())) {
            String text = sheet.at(row.get(0)).asText();
            String expected = row.get(0).equals("/document/name") ? "'" + text : text;
            assertTrue(
                    expected.equals(row.get(1)) || new BigDecimal(text).compareTo(new BigDecimal(row.get(1))) == 0,
                    () -> row + " is not " + expected);
        }
        assertEquals(leaves(sheet), rows.size() - 1);
        String xml = Contract.request()
                .contentType(ContentType.JSON)
                .accept("application/xml")
                .body(body)
                .post("/v1/table/sheet")
                .asString();
        assertTrue(xml.contains("=1+1, \"quoted\"\ufffd"), xml::toString);
    }

    /** The units were written by hand, from the contract's words. */
    @Test
    void everyValueOfTheSheetHasItsOwnUnit() throws Exception {
        List<List<String>> rows = CsvReader.read(table("sheet", "csv"));
        assertEquals(List.of("pointer", "value", "unit"), rows.get(0));
        Map<String, String> units = new LinkedHashMap<>();
        rows.subList(1, rows.size()).forEach(row -> units.put(row.get(0), row.get(2)));
        Map<String, String> expected = new LinkedHashMap<>();
        expected.put("/document/size/value", "in");
        expected.put("/document/laminations/0/bandAngle", "degrees");
        expected.put("/document/laminations/0/bands/0/width", "in");
        expected.put("/document/solid", "");
        expected.put("/angles/faces/0/bladeTilt", "degrees");
        expected.put("/angles/faces/0/sides", "");
        expected.put("/segments/faces/0/segments/0/base", "in");
        expected.put("/segments/faces/0/segments/0/area", "in2");
        expected.put("/segments/faces/0/segments/0/cuts/0/number", "");
        expected.put("/yield/laminations/0/blanks", "");
        expected.put("/yield/spheres/0/mass", "kg");
        expected.put("/yield/spheres/0/volume", "in3");
        expected.put("/yield/species/0/stripBoardFeet", "board feet");
        expected.put("/yield/species/0/stripCubicMetres", "m3");
        expected.put("/yield/species/0/density", "kg/m3");
        expected.put("/sphere/faces/0/wall/corner", "in");
        expected.put("/bands/faces/0/segments/0/upright/0/visibleWidth/edgeMiddle", "in");
        expected.put("/bands/faces/0/segments/0/upright/0/survival", "share");
        expected.put("/findings/0/message", "");
        expected.forEach((pointer, unit) -> assertEquals(unit, units.get(pointer), pointer));
        String xml = table("sheet", "xml");
        assertTrue(
                xml.replaceAll("\\s+", "")
                        .contains("<pointer>/angles/faces/0/bladeTilt</pointer><value>31.7175</value>"
                                + "<unit>degrees</unit>"),
                xml);
    }

    private static int leaves(JsonNode node) {
        if (node.isValueNode()) {
            return 1;
        }
        int leaves = 0;
        for (JsonNode child : node) {
            leaves += leaves(child);
        }
        return leaves;
    }

    @Test
    void aTableTellsWhatIsWrong() {
        bad(with("kerf", "wide"))
                .get("/v1/table/bands")
                .then()
                .statusCode(400)
                .contentType(Problem.MEDIA_TYPE)
                .body("violations[0].path", equalTo("kerf"));
        Map<String, String> query = with("kerf", "wide");
        query.put("errors", "text");
        String message = "ERROR: kerf must be a length such as 79.4, 3 1/8, 3-1/8in or 79.4mm, but is \"wide\".";
        bad(query)
                .get("/v1/table/bands")
                .then()
                .statusCode(200)
                .body(equalTo("\"" + message.replace("\"", "\"\"") + "\"\r\n"));
        query.put("format", "xml");
        bad(query).get("/v1/table/bands").then().statusCode(200).body("table.error", equalTo(message));
        bad(with("format", "pdf"))
                .get("/v1/table/bands")
                .then()
                .statusCode(400)
                .body("violations[0].allowed", equalTo("one of csv, xml"));
        bad(design()).get("/v1/table/rows").then().statusCode(404).body("violations[0].path", equalTo("table"));
    }

    /** Whatever stands in the query, the answer is one of the contract's. */
    @Test
    void noQueryBreaksIt() {
        Random random = new Random(5);
        List<String> texts = List.of(
                "",
                " ",
                "0",
                "-1",
                "1e308",
                "9999999999",
                "NaN",
                "1/0",
                "\u0000",
                "\u2028",
                "%",
                "<b>",
                "rest",
                "mm",
                ";",
                "|",
                ":",
                "a 1; b rest",
                "a: b 1 | c: d rest",
                "cube",
                "x".repeat(3000),
                "\uD83E\uDEB5 1",
                "1/3",
                "3-1/8in",
                "90");
        List<String> names = Stream.concat(
                        Arrays.stream(Parameter.values()).map(Parameter::text), CellQuery.OF_A_TABLE.stream())
                .toList();
        for (int i = 0; i < 500; i++) {
            Map<String, String> query = design();
            for (int changes = random.nextInt(4); changes >= 0; changes--) {
                query.put(names.get(random.nextInt(names.size())), texts.get(random.nextInt(texts.size())));
            }
            String cell = Cell.names().get(random.nextInt(Cell.names().size()));
            String address = random.nextInt(4) > 0 ? "/v1/cell/" + cell : "/v1/table/bands";
            Response answer = bad(query).get(address);
            assertTrue(
                    List.of(200, 400, 404, 422, 414).contains(answer.statusCode()),
                    () -> query + ": " + answer.asString());
        }
    }
}
