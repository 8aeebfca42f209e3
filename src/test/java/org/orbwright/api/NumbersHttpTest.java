package org.orbwright.api;

import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.http.ContentType;
import io.restassured.response.ValidatableResponse;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Panels, corners and seams have the same numbers from 1 in every request and in every answer. */
@QuarkusTest
class NumbersHttpTest {
    /** A dodecahedron with every section. */
    private static ObjectNode lantern() {
        return Posted.lantern();
    }

    private static ValidatableResponse posted(String address, JsonNode body, boolean right) {
        return (right ? Contract.request() : Contract.badRequest())
                .contentType(ContentType.JSON)
                .body(body.toString())
                .post(address)
                .then();
    }

    private static JsonNode answer(String address, JsonNode body) {
        return Contract.json(
                posted(address, body, true).statusCode(200).extract().asString());
    }

    private static ObjectNode with(String pointer, String through, int number) {
        ObjectNode body = lantern();
        if (pointer.startsWith("/invertedPanels")) {
            body.put("sets", "BY_PANEL").putArray("invertedPanels").add(number);
        } else if (pointer.startsWith("/inlays/panels")) {
            ((ObjectNode) body.at("/inlays")).remove("motifs");
            ((ObjectNode) body.at("/inlays")).putArray("panels").add(number);
        } else if (pointer.startsWith("/balance")) {
            ((ObjectNode) body.at("/balance"))
                    .putArray("panels")
                    .addObject()
                    .put("panel", number)
                    .put("heavier", 1.2);
        } else if (pointer.endsWith("/faces/0/face")) {
            ArrayNode faces = (ArrayNode) body.at("/diagnosis/faceDistances/faces");
            List<Integer> taken = new ArrayList<>(List.of(number));
            for (int i = 1, next = 1; i < faces.size(); next++) {
                if (next != number) {
                    taken.add(next);
                    i++;
                }
            }
            for (int i = 0; i < faces.size(); i++) {
                ((ObjectNode) faces.get(i)).put("face", taken.get(i)).put("value", 89);
            }
        } else if (pointer.endsWith("discFace")) {
            ((ObjectNode) body.at("/diagnosis/faceDistances")).put("discFace", number);
        } else {
            ((ObjectNode) body.at("/turning/axis")).put("through", through).put("number", number);
        }
        return body;
    }

    /** A dodecahedron has 12 faces, 20 corners and 30 edges. */
    @ParameterizedTest
    @CsvSource({
        "/invertedPanels/0, , 12, /v1/yield, NO_SUCH_PANEL",
        "/inlays/panels/0, , 12, /v1/inlays, UNKNOWN_PANEL",
        "/balance/panels/0/panel, , 12, /v1/balance, NO_SUCH_PANEL",
        "/diagnosis/faceDistances/faces/0/face, , 12, /v1/diagnosis, UNKNOWN_FACE",
        "/diagnosis/faceDistances/discFace, , 12, /v1/diagnosis, UNKNOWN_FACE",
        "/turning/axis/number, FACE, 12, /v1/turning, NO_SUCH_AXIS",
        "/turning/axis/number, CORNER, 20, /v1/turning, NO_SUCH_AXIS",
        "/turning/axis/number, EDGE, 30, /v1/turning, NO_SUCH_AXIS",
    })
    void theFirstIsOneAndTheLastIsTheirCount(String pointer, String through, int count, String address, String code) {
        posted(address, with(pointer, through, 0), false)
                .statusCode(400)
                .body("violations[0].path", equalTo(pointer))
                .body("violations[0].code", equalTo("OUT_OF_RANGE"))
                .body("violations[0].rejected", equalTo("0"))
                .body("violations[0].allowed", equalTo("a whole number, 1 to 200"));
        posted(address, with(pointer, through, 1), true).statusCode(200);
        posted(address, with(pointer, through, count), true).statusCode(200);
        posted(address, with(pointer, through, count + 1), false)
                .statusCode(422)
                .body("violations[0].path", equalTo(pointer))
                .body("violations[0].code", equalTo(code))
                .body("violations[0].rejected", equalTo(String.valueOf(count + 1)))
                .body("violations[0].allowed", containsString("1 to " + count));
    }

    @Test
    void theCatalogueNumbersCornersFacesAndEdgesFromOne() {
        JsonNode solid =
                Contract.json(Contract.request().get("/v1/solids/dodecahedron").asString());
        for (String list : List.of("vertices", "faces", "edges")) {
            List<Integer> numbers = new ArrayList<>();
            solid.at("/" + list).forEach(each -> numbers.add(each.at("/number").asInt()));
            assertEquals(IntStream.rangeClosed(1, numbers.size()).boxed().toList(), numbers, list);
        }
        Set<Integer> corners = new TreeSet<>();
        solid.at("/faces").forEach(face -> face.at("/vertices").forEach(corner -> corners.add(corner.asInt())));
        assertEquals(new TreeSet<>(IntStream.rangeClosed(1, 20).boxed().toList()), corners);
    }

    /** The neighbours of each panel are the same wherever they are answered. */
    @Test
    void panelsAndSeamsHaveTheNumbersOfTheCatalogue() {
        JsonNode edges = Contract.json(
                        Contract.request().get("/v1/solids/dodecahedron").asString())
                .at("/edges");
        JsonNode plan = answer("/v1/assembly", lantern()).at("/assembly");
        ObjectNode plain = with("/inlays/panels/0", null, 1);
        ((ObjectNode) plain.at("/inlays")).remove("panels");
        JsonNode inlaid = answer("/v1/inlays", plain).at("/inlays/panels");
        for (int panel = 1; panel <= 12; panel++) {
            Set<Integer> neighbours = new TreeSet<>();
            Set<Integer> seams = new TreeSet<>();
            for (JsonNode edge : edges) {
                if (edge.at("/face").asInt() == panel || edge.at("/neighbour").asInt() == panel) {
                    neighbours.add(
                            edge.at("/face").asInt() + edge.at("/neighbour").asInt() - panel);
                    seams.add(edge.at("/number").asInt());
                }
            }
            JsonNode glued = plan.at("/panels/" + (panel - 1));
            assertEquals(panel, glued.at("/panel").asInt());
            assertEquals(neighbours, numbers(glued.at("/neighbours"), "/panel"));
            assertEquals(seams, numbers(glued.at("/neighbours"), "/seam"));
            assertEquals(panel, inlaid.at("/" + (panel - 1) + "/panel").asInt());
            assertEquals(neighbours, numbers(inlaid.at("/" + (panel - 1) + "/neighbours"), ""));
        }
    }

    private static Set<Integer> numbers(JsonNode list, String pointer) {
        Set<Integer> numbers = new TreeSet<>();
        list.forEach(each -> numbers.add(each.at(pointer).asInt()));
        return numbers;
    }

    @ParameterizedTest
    @CsvSource({"2", "7", "12"})
    void aNumberThatIsAskedForIsTheOneThatIsAnswered(int panel) {
        assertEquals(
                List.of(panel),
                List.copyOf(numbers(
                        answer("/v1/yield", with("/invertedPanels/0", null, panel))
                                .at("/yield/spheres/0/invertedPanels"),
                        "")));
        assertEquals(
                panel,
                answer("/v1/inlays", with("/inlays/panels/0", null, panel))
                        .at("/inlays/panels/0/panel")
                        .asInt());
        JsonNode turned = answer("/v1/turning", with("/turning/axis/number", "FACE", panel));
        assertEquals(panel, turned.at("/turning/holding/number").asInt());
        assertEquals(panel, turned.at("/document/turning/axis/number").asInt());
        JsonNode centre = answer("/v1/diagnosis", with("/diagnosis/faceDistances/discFace", null, panel));
        assertEquals(panel, centre.at("/diagnosis/faceDistances/discs/face").asInt());
        assertEquals(
                panel,
                centre.at("/diagnosis/faceDistances/deviations/" + (panel - 1) + "/face")
                        .asInt());
        int across = panel == 2 ? 1 : 2;
        JsonNode mass = answer("/v1/balance", with("/balance/panels/0/panel", null, panel));
        assertEquals(panel, mass.at("/balance/panels/" + (panel - 1) + "/panel").asInt());
        double heavy = mass.at("/balance/panels/" + (panel - 1) + "/inSolid").asDouble();
        double other = mass.at("/balance/panels/" + (across - 1) + "/inSolid").asDouble();
        assertEquals(1.2, heavy / other, 1e-3);
    }
}
