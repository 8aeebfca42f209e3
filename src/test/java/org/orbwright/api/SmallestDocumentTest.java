package org.orbwright.api;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.http.ContentType;
import io.restassured.response.Response;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** What each address needs at least: with one member less it says which one is missing. */
@QuarkusTest
class SmallestDocumentTest {
    private static final List<String> ALWAYS = List.of("/unit", "/solid", "/size");
    private static final String THICKNESS = "/panel/thickness";
    private static final String BANDS = "/laminations";
    private static final String KERF = "/saw/kerf";
    private static final String BLANK = "/blank/length";

    /** What the addresses need beside unit, solid and size. */
    private static final Map<List<String>, List<String>> NEEDS = Map.ofEntries(
            Map.entry(
                    List.of(
                            "angles",
                            "segments",
                            "sphere",
                            "sheet",
                            "build",
                            "shop-sheet",
                            "table/{table}",
                            "bodies/solid",
                            "drawings/net",
                            "drawings/panel",
                            "drawings/sphere"),
                    List.of()),
            Map.entry(
                    List.of(
                            "jig",
                            "tolerance",
                            "bodies/segment",
                            "bodies/panel",
                            "bodies/shell",
                            "bodies/sphere",
                            "drawings/segment",
                            "drawings/section"),
                    List.of(THICKNESS)),
            Map.entry(List.of("bands", "drawings/survival"), List.of(BANDS)),
            Map.entry(
                    List.of("assembly", "turning", "balance", "bodies/disc", "drawings/disc", "drawings/templates"),
                    List.of(THICKNESS, BANDS)),
            Map.entry(List.of("drawings/set-up"), List.of(THICKNESS, KERF)),
            Map.entry(List.of("yield"), List.of(THICKNESS, BANDS, KERF, BLANK)),
            Map.entry(List.of("bands/explore"), List.of("/explore")),
            Map.entry(List.of("bands/solve"), List.of("/solve", BANDS)),
            Map.entry(List.of("inlays", "bodies/pocket", "drawings/pocket"), List.of("/inlays", THICKNESS, BANDS)),
            Map.entry(List.of("diagnosis"), List.of("/diagnosis", THICKNESS)),
            Map.entry(List.of("movement"), List.of("/movement", THICKNESS, BANDS)),
            Map.entry(
                    List.of("stock", "stock/cuts", "stock/purchases", "stock/reach", "drawings/board"),
                    List.of("/stock", THICKNESS, BANDS, KERF, BLANK)),
            Map.entry(List.of("turning/path", "turning/program"), List.of("/path")));

    private static Map<String, List<String>> needs() {
        Map<String, List<String>> needs = new LinkedHashMap<>();
        NEEDS.forEach((addresses, needed) -> addresses.forEach(address -> needs.put("/v1/" + address, needed)));
        return needs;
    }

    @Test
    void theTableHasEveryAddress() {
        assertEquals(new TreeSet<>(Addresses.ofDocuments()), new TreeSet<>(needs().keySet()));
    }

    @TestFactory
    Stream<DynamicTest> theSmallestDocumentIsAnswered() {
        return needs().entrySet().stream()
                .map(need -> DynamicTest.dynamicTest(need.getKey(), () -> {
                    Response answer = Addresses.post(need.getKey(), smallest(need.getValue(), ""));
                    assertEquals(200, answer.statusCode(), answer::asString);
                }));
    }

    @TestFactory
    Stream<DynamicTest> oneMemberLessIsMissing() {
        return needs().entrySet().stream()
                .flatMap(need -> Stream.concat(ALWAYS.stream(), need.getValue().stream())
                        .map(member -> DynamicTest.dynamicTest(
                                need.getKey() + " without " + member,
                                () -> isMissing(need.getKey(), need.getValue(), member))));
    }

    private static void isMissing(String address, List<String> needed, String member) {
        Response answer = Contract.badRequest()
                .contentType(ContentType.JSON)
                .body(smallest(needed, member).toString())
                .post(address.replace("{table}", "sheet"));
        assertEquals(ALWAYS.contains(member) ? 400 : 422, answer.statusCode(), answer::asString);
        JsonNode violations = Contract.json(answer.asString()).path("violations");
        assertEquals(List.of(member), violations.findValuesAsText("path"));
        assertEquals(List.of("MISSING"), violations.findValuesAsText("code"));
    }

    /** The main document's members of these pointers, all but one. */
    private static ObjectNode smallest(List<String> needed, String without) {
        ObjectNode worked = Addresses.quick(Posted.worked());
        worked.set(
                "explore",
                Contract.json("{\"vary\":[{\"field\":\"/size/value\",\"values\":[200,210]}],"
                        + "\"outputs\":[\"/sphere/diameter\"]}"));
        List<String> pointers = new ArrayList<>(ALWAYS);
        pointers.addAll(needed);
        pointers.remove(without);
        ObjectNode smallest = Contract.JSON.createObjectNode();
        for (String pointer : pointers) {
            String[] names = pointer.substring(1).split("/", -1);
            ObjectNode parent = names.length == 1 ? smallest : smallest.putObject(names[0]);
            parent.set(names[names.length - 1], worked.at(pointer));
        }
        return smallest;
    }
}
