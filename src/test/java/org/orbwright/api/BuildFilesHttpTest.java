package org.orbwright.api;

import static org.hamcrest.Matchers.containsString;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.http.ContentType;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** A whole build as an archive of files, each beside the answer of its own address. */
@QuarkusTest
class BuildFilesHttpTest {
    private static final Pattern LINK = Pattern.compile("href=\"([^\"]+)\"");

    private static byte[] archive;

    private static ObjectNode worked() {
        return Addresses.quick(Posted.worked());
    }

    private static byte[] post(String address, JsonNode document) {
        return post(address, "*/*", document);
    }

    private static byte[] post(String address, String type, JsonNode document) {
        return Contract.request()
                .accept(type)
                .contentType(ContentType.JSON)
                .body(document.toString())
                .post(address)
                .then()
                .statusCode(200)
                .extract()
                .asByteArray();
    }

    /** The archive of the worked document, made once for all tests. */
    private static byte[] archive() {
        if (archive == null) {
            archive = post("/v1/build?format=zip", worked());
        }
        return archive;
    }

    private static String text(byte[] bytes) {
        return new String(bytes, StandardCharsets.UTF_8);
    }

    @Test
    void theFilesAreWhatTheirOwnAddressesAnswer() throws IOException {
        ObjectNode document = worked();
        Map<String, byte[]> files = FileText.entries(archive());
        assertArrayEquals(post("/v1/shop-sheet?format=pdf", document), files.get("shop-sheet.pdf"));
        assertEquals(text(post("/v1/stock/cuts", "text/csv", document)), text(files.get("lists/cut-list.csv")));
        assertEquals(
                text(post("/v1/stock/purchases", "text/csv", document)), text(files.get("lists/shopping-list.csv")));
        assertEquals(
                text(post("/v1/table/bands?format=csv&set=INVERTED", document)),
                text(files.get("lists/sheet-bands-inverted.csv")));
        JsonNode build = Contract.json(text(post("/v1/build", document)));
        assertEquals(build, Contract.json(text(files.get("build.json"))));
        assertEquals(build.path("document"), Contract.json(text(files.get("design.json"))));
        assertEquals("PK", text(files.get("bodies/sphere-mixed.3mf")).substring(0, 2));
        for (String name : Set.of(
                "pictures/sphere-mixed.svg",
                "pictures/board-3.svg",
                "outlines/segment-triangle-a-inverted.dxf",
                "outlines/pocket-cut.svg",
                "bodies/sphere-mixed.glb",
                "programs/sphere.nc")) {
            assertTrue(files.containsKey(name), name + " is none of " + files.keySet());
        }
    }

    @Test
    void thePageListsEveryFileThatIsThere() throws IOException {
        Map<String, byte[]> files = FileText.entries(archive());
        String page = text(files.get("index.html"));
        assertEquals("index.html", files.keySet().iterator().next());
        Set<String> listed = new TreeSet<>(Set.of("index.html"));
        Matcher link = LINK.matcher(page);
        while (link.find()) {
            listed.add(link.group(1));
        }
        assertEquals(new TreeSet<>(files.keySet()), listed);
    }

    @Test
    void theSameDocumentGivesTheSameBytes() {
        assertArrayEquals(archive(), post("/v1/build?format=zip", worked()));
    }

    /** Three lines have no thickness, no saw and no stock: what waits for them is not there. */
    @Test
    void aSmallDocumentGivesFewFiles() throws IOException {
        ObjectNode document = (ObjectNode)
                Contract.json("{\"unit\":\"mm\",\"solid\":\"cube\",\"size\":{\"by\":\"ACROSS_FLATS\",\"value\":180}}");
        Set<String> names =
                FileText.entries(post("/v1/build?format=zip", document)).keySet();
        assertTrue(
                names.containsAll(Set.of("index.html", "shop-sheet.pdf", "design.json", "bodies/solid.stl")),
                names::toString);
        assertTrue(names.stream().noneMatch(name -> name.contains("board") || name.contains("3mf")), names::toString);
    }

    @Test
    void stationsAreForTheJsonAlone() {
        Contract.badRequest()
                .contentType(ContentType.JSON)
                .body(worked().toString())
                .post("/v1/build?format=zip&stations=5")
                .then()
                .statusCode(400)
                .body(containsString("left out of an archive"));
    }
}
