package org.orbwright.api;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import io.restassured.specification.RequestSpecification;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.orbwright.api.query.Format;

/** A STOP stands in every file of every address that the contract has, whatever the format; none stands there else. */
@QuarkusTest
class StopsInFilesTest {
    private static final String JSON = "application/json";

    /** What is wrong with the worked document, and what is then found. */
    private enum Wrong {
        BREAK_THROUGH,
        WALL_BELOW_MINIMUM,
        SEAMS_OPEN,
        BAND_VANISHES,
        BLANK_TOO_SHORT,
        STOCK_SHORT,
        SPEED_ABOVE_GLUE;

        ObjectNode document() {
            ObjectNode document = worked();
            switch (this) {
                case BREAK_THROUGH -> at(document, "/panel").put("thickness", 16);
                case WALL_BELOW_MINIMUM -> at(document, "/panel").put("thickness", 24.7);
                case SEAMS_OPEN -> at(document, "/panel").put("land", 14);
                case BAND_VANISHES -> at(document, "/laminations/0/bands/0").put("width", 2);
                case BLANK_TOO_SHORT -> at(document, "/blank").put("length", 60);
                case STOCK_SHORT -> {
                    at(document, "/stock").remove("offers");
                    document.withArray("/stock/boards").remove(1);
                }
                case SPEED_ABOVE_GLUE -> at(document, "/turning/speed").put("turns", 9000);
            }
            return document;
        }

        private static ObjectNode at(ObjectNode document, String pointer) {
            return (ObjectNode) document.at(pointer);
        }
    }

    private static final List<Wrong> PANELS = List.of(
            Wrong.BREAK_THROUGH,
            Wrong.WALL_BELOW_MINIMUM,
            Wrong.SEAMS_OPEN,
            Wrong.BAND_VANISHES,
            Wrong.BLANK_TOO_SHORT);
    private static final List<Wrong> SPHERE =
            List.of(Wrong.BREAK_THROUGH, Wrong.WALL_BELOW_MINIMUM, Wrong.SEAMS_OPEN, Wrong.BAND_VANISHES);
    private static final List<Wrong> LATHE = List.of(Wrong.BREAK_THROUGH, Wrong.SEAMS_OPEN, Wrong.SPEED_ABOVE_GLUE);
    private static final List<Wrong> WOOD = List.of(
            Wrong.STOCK_SHORT, Wrong.BREAK_THROUGH, Wrong.SEAMS_OPEN, Wrong.BAND_VANISHES, Wrong.BLANK_TOO_SHORT);
    private static final List<Wrong> PATH = List.of(Wrong.BREAK_THROUGH, Wrong.SEAMS_OPEN);

    /** What each address is tried with. */
    private static final Map<String, List<Wrong>> CASES = Map.ofEntries(
            Map.entry("/v1/drawings/panel", PANELS),
            Map.entry("/v1/drawings/segment", PANELS),
            Map.entry("/v1/drawings/set-up", List.of(Wrong.BREAK_THROUGH, Wrong.SEAMS_OPEN)),
            Map.entry("/v1/drawings/sphere", SPHERE),
            Map.entry("/v1/drawings/survival", SPHERE),
            Map.entry("/v1/drawings/section", SPHERE),
            Map.entry("/v1/drawings/net", SPHERE),
            Map.entry("/v1/drawings/disc", LATHE),
            Map.entry("/v1/drawings/templates", LATHE),
            Map.entry("/v1/drawings/pocket", List.of(Wrong.WALL_BELOW_MINIMUM, Wrong.SEAMS_OPEN)),
            Map.entry("/v1/drawings/board", List.of(Wrong.STOCK_SHORT, Wrong.BREAK_THROUGH, Wrong.BAND_VANISHES)),
            Map.entry("/v1/bodies/segment", PANELS),
            Map.entry("/v1/bodies/panel", PANELS),
            Map.entry("/v1/bodies/solid", SPHERE),
            Map.entry("/v1/bodies/shell", SPHERE),
            Map.entry("/v1/bodies/sphere", SPHERE),
            Map.entry("/v1/bodies/disc", LATHE),
            Map.entry("/v1/bodies/pocket", List.of(Wrong.WALL_BELOW_MINIMUM, Wrong.SEAMS_OPEN)),
            Map.entry("/v1/stock/cuts", WOOD),
            Map.entry("/v1/stock/purchases", WOOD),
            Map.entry("/v1/turning/path", PATH),
            Map.entry("/v1/turning/program", PATH),
            Map.entry("/v1/bands/explore", List.of(Wrong.BAND_VANISHES, Wrong.BLANK_TOO_SHORT)),
            Map.entry("/v1/batch", PANELS),
            Map.entry("/v1/shop-sheet", List.of(Wrong.values())),
            Map.entry("/v1/build", List.of(Wrong.values())),
            Map.entry("/v1/table/{table}", PANELS),
            Map.entry("/v1/cell/{cell}", PANELS));

    /** What an address cannot do without, and what makes a mesh small. */
    private static final Map<String, Map<String, String>> PARAMETERS = Map.of(
            "/v1/bodies/disc", Map.of("thickness", "20", "deviation", "1"),
            "/v1/bodies/sphere", Map.of("deviation", "2"));

    /** Files that are about no document; the workbook asks for the cells severity and finding. */
    private static final Set<String> WITHOUT_DOCUMENT = Set.of(
            "/clients/workbook.ods",
            "/clients/workbook.xlsx",
            "/problems",
            "/problems/{problem}",
            "/v1/solids/{solid}/picture");

    /** Formats that have room for codes alone. */
    private static final Set<String> CODES_ALONE =
            Set.of("model/stl /v1/bodies", "text/csv /v1/bands/explore", "application/x-ndjson /v1/bands/explore");

    /** An answer that is no JSON, as the contract has it. */
    private record File(String method, String address, String type) {
        @Override
        public String toString() {
            return method + " " + address + " as " + type;
        }
    }

    private static List<File> files() {
        List<File> files = new ArrayList<>();
        for (Map.Entry<String, JsonNode> path :
                Contract.document().path("paths").properties()) {
            for (Map.Entry<String, JsonNode> operation : path.getValue().properties()) {
                for (Map.Entry<String, JsonNode> content :
                        operation.getValue().at("/responses/200/content").properties()) {
                    if (!content.getKey().equals(JSON)) {
                        files.add(new File(operation.getKey(), path.getKey(), content.getKey()));
                    }
                }
            }
        }
        return files;
    }

    @Test
    void everyAddressThatAnswersNoJsonHasACase() {
        Set<String> addresses = new TreeSet<>(CASES.keySet());
        addresses.addAll(WITHOUT_DOCUMENT);
        Set<String> found = new TreeSet<>();
        files().forEach(file -> found.add(file.address()));
        assertEquals(addresses, found);
    }

    @TestFactory
    Stream<DynamicTest> everyStopStandsInEveryFile() {
        return tried().flatMap(file -> CASES.getOrDefault(file.address(), List.of()).stream()
                .map(wrong -> DynamicTest.dynamicTest(wrong + " " + file, () -> tells(file, wrong))));
    }

    @TestFactory
    Stream<DynamicTest> aFileOfASoundDesignHasNone() {
        return tried().map(file -> DynamicTest.dynamicTest(file.toString(), () -> {
            byte[] answer = answer(file, worked());
            FileText.of(file.type(), answer).forEach((place, words) -> assertFalse(words.contains("STOP"), words));
            if (file.type().equals("image/png")) {
                assertFalse(FileText.beginsWithInk(answer));
            }
        }));
    }

    /** The worked document, which is sound. Its sweep tries spheres that are not, so here it tries its own alone. */
    private static ObjectNode worked() {
        ObjectNode document = Addresses.quick(Posted.worked());
        document.remove("solve");
        ((ObjectNode) document.path("explore"))
                .set("vary", Contract.json("[{\"field\":\"/sphere/diameter\",\"values\":[206.0]}]"));
        return document;
    }

    private static Stream<File> tried() {
        return files().stream().filter(file -> !WITHOUT_DOCUMENT.contains(file.address()));
    }

    private static void tells(File file, Wrong wrong) throws Exception {
        ObjectNode document = wrong.document();
        List<String> said = said(wrong);
        assertFalse(said.isEmpty(), "the worked document is not wrong like this");
        byte[] answer = answer(file, document);
        Map<String, String> told = FileText.of(file.type(), answer);
        for (Map.Entry<String, String> place : told.entrySet()) {
            String words = place.getValue();
            boolean whole = said.stream().anyMatch(words::contains);
            boolean codeAlone = place.getKey().startsWith("bodies/solid.stl")
                    || CODES_ALONE.stream().anyMatch((file.type() + " " + file.address())::startsWith);
            assertTrue(whole || (codeAlone && words.contains(wrong.name())), place::toString);
            assertTrue(words.contains("STOP"), place::toString);
        }
        if (file.type().equals("image/png")) {
            assertTrue(FileText.beginsWithInk(answer));
        }
    }

    /** The sentences that a build has for a STOP; worked out once, as its search and simulation take a while. */
    private static final Map<Wrong, List<String>> SAID = new EnumMap<>(Wrong.class);

    private static List<String> said(Wrong wrong) {
        return SAID.computeIfAbsent(wrong, asked -> {
            JsonNode build =
                    Contract.json(Addresses.post("/v1/build", asked.document()).asString());
            List<String> stops = new ArrayList<>();
            for (JsonNode finding : build.path("findings")) {
                if (finding.path("code").asText().equals(asked.name())
                        && finding.path("severity").asText().equals("STOP")) {
                    stops.add(finding.path("message").asText());
                }
            }
            return stops;
        });
    }

    private static byte[] answer(File file, ObjectNode document) {
        RequestSpecification request = Contract.request().accept(file.type());
        String address = file.address().replace("{table}", "bands").replace("{cell}", "finding");
        Response answer;
        if (file.method().equals("get")) {
            String severity = Contract.request()
                    .queryParams(query(document))
                    .get("/v1/cell/severity")
                    .asString();
            answer = request.queryParams(query(document)).get(address);
            if (file.address().startsWith("/v1/cell/")) {
                return (severity + ": " + answer.asString()).getBytes(StandardCharsets.UTF_8);
            }
        } else if (file.address().equals("/v1/batch")) {
            answer = request.config(Posted.LINES_AS_TEXT)
                    .contentType(Format.NDJSON_TYPE)
                    .body(document + "\n")
                    .post(address);
        } else {
            answer = request.contentType(JSON)
                    .queryParams(PARAMETERS.getOrDefault(address, Map.of()))
                    .body(document.toString())
                    .post(address);
        }
        assertEquals(200, answer.statusCode(), answer::asString);
        assertTrue(answer.contentType().startsWith(file.type()), answer.contentType());
        return answer.asByteArray();
    }

    /** The design as a spreadsheet writes it. */
    private static Map<String, String> query(ObjectNode document) {
        Map<String, String> query = new LinkedHashMap<>();
        query.put("solid", document.path("solid").asText());
        query.put("unit", document.path("unit").asText());
        query.put("acrossFlats", document.at("/size/value").asText());
        query.put("thickness", document.at("/panel/thickness").asText());
        query.put("land", document.at("/panel/land").asText());
        query.put("kerf", document.at("/saw/kerf").asText());
        query.put("endTrim", document.at("/saw/endTrim").asText());
        query.put("blankLength", document.at("/blank/length").asText());
        query.put("diameter", document.at("/sphere/diameter").asText());
        query.put("minimumWall", document.at("/sphere/minimumWall").asText());
        List<String> bands = new ArrayList<>();
        for (JsonNode band : document.at("/laminations/0/bands")) {
            bands.add(band.path("species").asText() + " "
                    + band.path("width").asText("rest").replace("null", "rest"));
        }
        query.put("bands", String.join("; ", bands));
        return query;
    }
}
