package org.orbwright.api;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.orbwright.api.wire.DesignLibrary;
import org.orbwright.document.Section;

/** One file is enough for a whole build: every address takes it, and all of them say the same of it. */
@QuarkusTest
class OneDocumentTest {
    /** The parts of a build by the last part of their address, which is the name of the part too. */
    private static final List<String> PARTS = List.of(
            "angles",
            "segments",
            "yield",
            "sphere",
            "bands",
            "bands/solve",
            "inlays",
            "jig",
            "tolerance",
            "diagnosis",
            "movement",
            "stock",
            "stock/cuts",
            "stock/purchases",
            "assembly",
            "turning",
            "turning/path",
            "balance");

    /** What an answer that works out the whole document or is about all of it repeats beside what it used. */
    private static final Set<String> WHOLE = Set.of("/v1/bands/solve", "/v1/build", "/v1/diagnosis", "/v1/stock");

    private static final Set<String> MAY_BE_MISSING = parts();

    /** Answers in JSON by document and address, each asked for once: the tests look at them from several sides. */
    private static final Map<List<String>, Response> KNOWN = new HashMap<>();

    private static Response answer(String name, String address) {
        List<String> key = List.of(name, address);
        if (KNOWN.containsKey(key)) {
            return KNOWN.get(key);
        }
        Response answer = Addresses.post(address, Addresses.quick(Posted.worked(name)));
        if (answer.contentType().startsWith("application/json")) {
            KNOWN.put(key, answer);
        }
        return answer;
    }

    private static Set<String> parts() {
        Set<String> pointers = new TreeSet<>(Set.of("/panel/thickness", "/laminations", "/saw/kerf", "/blank/length"));
        for (Section section : Section.values()) {
            pointers.add(section.pointer());
        }
        return pointers;
    }

    @TestFactory
    Stream<DynamicTest> everyAddressTakesEveryWorkedDocument() {
        List<String> addresses = Addresses.ofDocuments();
        assertTrue(addresses.size() > 35, addresses::toString);
        return DesignLibrary.all().keySet().stream()
                .flatMap(name -> addresses.stream()
                        .map(address -> DynamicTest.dynamicTest(name + " " + address, () -> isTaken(name, address))));
    }

    private static void isTaken(String name, String address) {
        Response answer = answer(name, address);
        if (answer.statusCode() == 200) {
            return;
        }
        assertEquals(422, answer.statusCode(), answer::asString);
        JsonNode violations = Contract.json(answer.asString()).path("violations");
        assertFalse(violations.isEmpty());
        for (JsonNode violation : violations) {
            assertEquals("MISSING", violation.path("code").asText(), violation::toString);
            assertTrue(MAY_BE_MISSING.contains(violation.path("path").asText()), violation::toString);
        }
    }

    @Test
    void theMainDocumentIsAnsweredEverywhere() {
        for (String address : Addresses.ofDocuments()) {
            Response answer = answer(Posted.MAIN, address);
            assertEquals(200, answer.statusCode(), () -> address + ": " + answer.asString());
        }
    }

    @TestFactory
    Stream<DynamicTest> aBuildHoldsWhatTheSingleAddressesAnswer() {
        return DesignLibrary.all().keySet().stream()
                .map(name -> DynamicTest.dynamicTest(name, () -> holdsTheSingleAnswers(name)));
    }

    private static void holdsTheSingleAnswers(String name) {
        ObjectNode document = Addresses.quick(Posted.worked(name));
        JsonNode build = Contract.json(
                answer(name, "/v1/build").then().statusCode(200).extract().asString());
        Map<String, JsonNode> single = new TreeMap<>();
        Set<JsonNode> findings = new TreeSet<>((one, other) -> one.toString().compareTo(other.toString()));
        for (String address : PARTS) {
            String part = address.substring(address.lastIndexOf('/') + 1);
            Response answer = answer(name, "/v1/" + address);
            if (answer.statusCode() == 200) {
                JsonNode said = Contract.json(answer.asString());
                assertTrue(said.has(part), () -> address + " does not answer " + part);
                single.put(part, said.path(part));
                if (!part.equals("solve")) {
                    said.path("findings").forEach(findings::add);
                }
            }
        }
        Map<String, JsonNode> held = new TreeMap<>();
        for (Map.Entry<String, JsonNode> part : build.properties()) {
            if (!Set.of("document", "findings", "cautions").contains(part.getKey())) {
                held.put(part.getKey(), part.getValue());
            }
        }
        // A part without a section that it could do without is left to those who ask for it.
        single.keySet().removeIf(part -> Set.of("tolerance", "balance").contains(part) && !document.has(part));
        assertEquals(single.keySet(), held.keySet());
        single.forEach((part, said) -> assertEquals(said, held.get(part), part));
        List<JsonNode> told = new ArrayList<>();
        build.path("findings").forEach(told::add);
        if (document.has("tolerance") && document.has("balance")) {
            assertEquals(findings.size(), told.size());
            assertTrue(findings.containsAll(told), told::toString);
        }
    }

    @TestFactory
    Stream<DynamicTest> whatAnAddressDoesNotUseChangesNothing() {
        return Addresses.ofDocuments().stream()
                .map(address -> DynamicTest.dynamicTest(address, () -> dependsOnWhatItUses(address)));
    }

    private static void dependsOnWhatItUses(String address) {
        List<String> used = Addresses.uses(address);
        Response full = answer(Posted.MAIN, address);
        Response reduced =
                Addresses.post(address, Posted.only(Addresses.quick(Posted.worked()), used.toArray(String[]::new)));
        if (!WHOLE.contains(address)) {
            assertEquals(200, reduced.statusCode(), reduced::asString);
            assertArrayEquals(full.asByteArray(), reduced.asByteArray());
        } else {
            assertEquals(withoutDocument(full), withoutDocument(reduced));
        }
        if (full.contentType().startsWith("application/json") && !WHOLE.contains(address)) {
            assertEquals(Set.copyOf(used), sections(Contract.json(full.asString())));
        }
    }

    private static JsonNode withoutDocument(Response answer) {
        ObjectNode said = (ObjectNode) Contract.json(answer.asString());
        assertTrue(said.has("document"));
        said.remove("document");
        return said;
    }

    /** The sections that the answer says it has used. */
    private static Set<String> sections(JsonNode answer) {
        Set<String> sections = new TreeSet<>();
        for (Section section : Section.values()) {
            if (answer.path("document").has(section.text())) {
                sections.add(section.text());
            }
        }
        return sections;
    }

    /** An answer that says how the document should be is a document to post again. */
    @Test
    void theDocumentThatIsAnsweredCanBePostedAgain() {
        for (String address : Addresses.ofDocuments()) {
            Response first = answer(Posted.MAIN, address);
            if (first.contentType().startsWith("application/json")) {
                JsonNode document = Contract.json(first.asString()).path("document");
                Response second = Addresses.post(address, document);
                assertEquals(200, second.statusCode(), () -> address + ": " + second.asString());
                if (!address.equals("/v1/bands/solve")) {
                    assertEquals(document, Contract.json(second.asString()).path("document"), address);
                }
            }
        }
    }
}
