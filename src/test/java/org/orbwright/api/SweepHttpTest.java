package org.orbwright.api;

import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.startsWith;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.http.ContentType;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.net.HttpURLConnection;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.orbwright.api.query.Format;

/** Sweeps over HTTP: rows as lines of JSON or as comma separated values, streamed. */
@QuarkusTest
class SweepHttpTest {
    private static final String WALL = "/sphere/thinnestWall";

    @TestHTTPResource("/v1/bands/explore")
    URI address;

    private static ObjectNode sweep() {
        return Posted.only(Posted.lantern(), "explore");
    }

    private static ObjectNode explore(ObjectNode sweep) {
        return (ObjectNode) sweep.path("explore");
    }

    private static ObjectNode sweep(int spheres, int thicknesses) {
        ObjectNode sweep = sweep();
        ArrayNode vary = explore(sweep).putArray("vary");
        vary.addObject()
                .put("field", "/sphere/diameter")
                .put("from", 150)
                .put("to", 170)
                .put("count", spheres);
        vary.addObject()
                .put("field", "/panel/thickness")
                .put("from", 20)
                .put("to", 40)
                .put("count", thicknesses);
        return sweep;
    }

    @Test
    void linesOfJsonHoldWhatASingleSheetHolds() {
        List<String> lines = Contract.request()
                .contentType(ContentType.JSON)
                .body(sweep().toString())
                .post("/v1/bands/explore")
                .then()
                .statusCode(200)
                .contentType(startsWith("application/x-ndjson"))
                .extract()
                .asString()
                .lines()
                .toList();
        assertEquals(14, lines.size());
        JsonNode row = Contract.json(lines.get(3));
        ObjectNode design = sweep();
        ((ObjectNode) design.path("sphere"))
                .put("diameter", row.path("/sphere/diameter").asDouble());
        ((ObjectNode) design.path("panel"))
                .put("thickness", row.path("/panel/thickness").asDouble());
        Contract.request()
                .contentType(ContentType.JSON)
                .body(design.toString())
                .post("/v1/sphere")
                .then()
                .body("sphere.thinnestWall", equalTo(row.path(WALL).floatValue()));
    }

    @Test
    void commaSeparatedValuesHaveThePointersAsHeadingAndAProblemColumn() {
        ObjectNode sweep = sweep();
        ObjectNode vary = explore(sweep).putArray("vary").addObject().put("field", "/sphere/diameter");
        vary.putArray("values").add(172).add(400);
        explore(sweep).putArray("outputs").add(WALL);
        List<String> lines = Contract.request()
                .contentType(ContentType.JSON)
                .accept("text/csv")
                .body(sweep.toString())
                .post("/v1/bands/explore")
                .then()
                .statusCode(200)
                .contentType(startsWith("text/csv"))
                .extract()
                .asString()
                .lines()
                .toList();
        assertEquals("/sphere/diameter,/sphere/thinnestWall,stops,warns,notes,problem", lines.get(0));
        assertEquals("172,9.3629,,BAND_THINNED NARROW_STRIP SMALL_SEGMENT,NO_HALVES NOTHING_TO_SPARE,", lines.get(1));
        assertTrue(lines.get(2).startsWith("400,,,,,"), lines.get(2));
        assertTrue(lines.get(2).contains("larger than the seams allow"), lines.get(2));
    }

    @Test
    void everyFindingOfASheetHasItsCodeInTheRowBySeverity() {
        ObjectNode sweep = sweep();
        ObjectNode vary = explore(sweep).putArray("vary").addObject().put("field", "/panel/thickness");
        vary.putArray("values").add(28).add(12).add(8);
        explore(sweep).putArray("outputs").add(WALL);
        List<String> lines = rows(sweep, Format.NDJSON_TYPE).lines().toList();
        List<String> table = rows(sweep, "text/csv").lines().toList();
        Set<String> severities = new TreeSet<>();
        for (int i = 0; i < lines.size(); i++) {
            ObjectNode design = sweep();
            JsonNode row = Contract.json(lines.get(i));
            ((ObjectNode) design.path("panel"))
                    .put("thickness", row.path("/panel/thickness").asDouble());
            Map<String, Set<String>> codes =
                    new TreeMap<>(Map.of("stops", new TreeSet<>(), "warns", new TreeSet<>(), "notes", new TreeSet<>()));
            for (JsonNode finding :
                    Contract.json(rows("/v1/sheet", design, "application/json")).path("findings")) {
                String severity = finding.path("severity").asText();
                severities.add(severity);
                codes.get(severity.toLowerCase(Locale.ROOT) + "s")
                        .add(finding.path("code").asText());
            }
            List<String> cells = List.of(table.get(i + 1).split(",", -1));
            List<String> heading = List.of(table.get(0).split(",", -1));
            codes.forEach((name, expected) -> {
                Set<String> found = new TreeSet<>();
                row.path(name).forEach(code -> found.add(code.asText()));
                assertEquals(expected, found, row::toString);
                assertEquals(!expected.isEmpty(), row.has(name));
                String cell = cells.get(heading.indexOf(name));
                assertEquals(expected, cell.isEmpty() ? Set.of() : new TreeSet<>(List.of(cell.split(" ", -1))));
            });
        }
        assertEquals(Set.of("STOP", "WARN", "NOTE"), severities, "all are tried");
    }

    private static String rows(ObjectNode sweep, String type) {
        return rows("/v1/bands/explore", sweep, type);
    }

    private static String rows(String address, ObjectNode document, String type) {
        return Contract.request()
                .contentType(ContentType.JSON)
                .accept(type)
                .body(document.toString())
                .post(address)
                .then()
                .statusCode(200)
                .extract()
                .asString();
    }

    @Test
    void aSweepThatCannotBeIsRefusedBeforeItStarts() {
        ObjectNode sweep = sweep(101, 100);
        explore(sweep).putArray("outputs").add("/sphere/nothing").add("/document/copies");
        Contract.badRequest()
                .contentType(ContentType.JSON)
                .body(sweep.toString())
                .post("/v1/bands/explore")
                .then()
                .statusCode(422)
                .body(
                        "violations.code",
                        equalTo(List.of("TOO_MANY_DESIGNS", "NOT_A_NUMBER_OF_THE_SHEET", "NOT_A_NUMBER_OF_THE_SHEET")));
    }

    @Test
    void rowsArriveBeforeTheSweepIsOverAndACallerMayLeave() throws IOException {
        HttpURLConnection connection = (HttpURLConnection) address.toURL().openConnection();
        connection.setDoOutput(true);
        connection.setRequestProperty("Content-Type", "application/json");
        connection.getOutputStream().write(sweep(100, 100).toString().getBytes(StandardCharsets.UTF_8));
        assertEquals(200, connection.getResponseCode());
        assertEquals("chunked", connection.getHeaderField("transfer-encoding"));
        try (BufferedReader rows =
                new BufferedReader(new InputStreamReader(connection.getInputStream(), StandardCharsets.UTF_8))) {
            assertFalse(Contract.json(rows.readLine()).path(WALL).isMissingNode());
            // Leaving the stream half read is what this test is about.
            connection.disconnect();
        }
        Contract.request()
                .contentType(ContentType.JSON)
                .body(sweep().toString())
                .post("/v1/bands/explore")
                .then()
                .statusCode(200);
    }
}
