package org.orbwright.api;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import io.quarkus.test.junit.QuarkusTest;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.orbwright.api.query.Format;
import org.orbwright.api.wire.DesignLibrary;
import org.orbwright.sheet.Caution;
import org.orbwright.sheet.Caution.Step;

/** Every answer about a step of the work carries the cautions of that step. */
@QuarkusTest
class CautionsHttpTest {
    private static final Set<Step> STOCK =
            EnumSet.of(Step.SURFACING, Step.RIPPING, Step.RESAWING, Step.GLUING, Step.CROSSCUTTING);

    /** What is done with each answer, beside what is heeded always. */
    private static final Map<String, Set<Step>> DONE = Map.ofEntries(
            Map.entry("/v1/angles", EnumSet.of(Step.SETTING_UP, Step.CROSSCUTTING, Step.DISC_SANDING, Step.BEVELLING)),
            Map.entry("/v1/segments", EnumSet.of(Step.CROSSCUTTING)),
            Map.entry("/v1/yield", EnumSet.of(Step.SURFACING, Step.RIPPING, Step.GLUING, Step.CROSSCUTTING)),
            Map.entry("/v1/sphere", EnumSet.of(Step.MOUNTING, Step.TURNING)),
            Map.entry("/v1/bands", EnumSet.of(Step.RIPPING)),
            Map.entry("/v1/bands/solve", EnumSet.of(Step.RIPPING)),
            Map.entry("/v1/sheet", EnumSet.allOf(Step.class)),
            Map.entry("/v1/build", EnumSet.allOf(Step.class)),
            Map.entry("/v1/inlays", EnumSet.of(Step.CROSSCUTTING, Step.INLAYING, Step.TURNING)),
            Map.entry("/v1/jig", EnumSet.of(Step.SETTING_UP, Step.CROSSCUTTING, Step.BEVELLING)),
            Map.entry("/v1/tolerance", EnumSet.of(Step.CROSSCUTTING, Step.BEVELLING, Step.GLUING)),
            Map.entry("/v1/diagnosis", EnumSet.of(Step.SETTING_UP, Step.CROSSCUTTING, Step.BEVELLING, Step.MOUNTING)),
            Map.entry("/v1/movement", EnumSet.of(Step.RIPPING, Step.GLUING)),
            Map.entry("/v1/stock", STOCK),
            Map.entry("/v1/stock/cuts", STOCK),
            Map.entry("/v1/stock/purchases", STOCK),
            Map.entry("/v1/stock/reach", STOCK),
            Map.entry("/v1/assembly", EnumSet.of(Step.SURFACING, Step.GLUING, Step.DISC_SANDING, Step.BEVELLING)),
            Map.entry(
                    "/v1/turning",
                    EnumSet.of(Step.MOUNTING, Step.TURNING, Step.REVERSING, Step.SANDING, Step.FINISHING)),
            Map.entry("/v1/turning/path", EnumSet.of(Step.MOUNTING, Step.REVERSING, Step.MILLING)),
            Map.entry("/v1/balance", EnumSet.of(Step.MOUNTING, Step.BALANCING, Step.TURNING)),
            Map.entry("/v1/bodies/segment", EnumSet.of(Step.OUTLINES)),
            Map.entry("/v1/bodies/panel", EnumSet.of(Step.OUTLINES)),
            Map.entry("/v1/bodies/solid", EnumSet.of(Step.OUTLINES)),
            Map.entry("/v1/bodies/shell", EnumSet.of(Step.OUTLINES)),
            Map.entry("/v1/bodies/sphere", EnumSet.of(Step.OUTLINES)),
            Map.entry("/v1/bodies/disc", EnumSet.of(Step.OUTLINES, Step.MOUNTING)),
            Map.entry("/v1/bodies/pocket", EnumSet.of(Step.OUTLINES, Step.INLAYING)));

    private static JsonNode operation(String address) {
        return Contract.document().path("paths").path(address).path("post");
    }

    private static JsonNode answers(String address) {
        return operation(address).at("/responses/200/content");
    }

    /** The addresses whose JSON has cautions, as the contract has them. */
    private static Set<String> cautioned() {
        Set<String> addresses = new TreeSet<>();
        for (String address : Addresses.ofDocuments()) {
            String schema =
                    answers(address).at("/application~1json/schema/$ref").asText();
            String name = schema.substring(schema.lastIndexOf('/') + 1);
            if (Contract.document()
                    .path("components")
                    .path("schemas")
                    .path(name)
                    .path("properties")
                    .has("cautions")) {
                addresses.add(address);
            }
        }
        return addresses;
    }

    @Test
    void everyAddressWithCautionsIsLookedAt() {
        assertEquals(new TreeSet<>(DONE.keySet()), cautioned());
    }

    @TestFactory
    Stream<DynamicTest> everyAnswerHasTheCautionsOfItsSteps() {
        return DONE.entrySet().stream()
                .map(done -> DynamicTest.dynamicTest(
                        done.getKey(), () -> assertEquals(expected(done.getValue()), answered(done.getKey()))));
    }

    private static List<String> expected(Set<Step> done) {
        Set<Step> steps = EnumSet.of(Step.GENERAL);
        steps.addAll(done);
        return steps.stream()
                .flatMap(step -> step.cautions().stream())
                .map(caution -> caution.step() + ": " + caution.text())
                .toList();
    }

    private static List<String> answered(String address) {
        String json = Contract.request()
                .contentType("application/json")
                .accept("application/json")
                .queryParams(address.equals("/v1/bodies/disc") ? Map.of("thickness", "20") : Map.of())
                .body(Addresses.quick(Posted.worked()).toString())
                .post(address)
                .then()
                .statusCode(200)
                .extract()
                .asString();
        List<String> cautions = new ArrayList<>();
        Contract.json(json)
                .path("cautions")
                .forEach(caution -> cautions.add(caution.path("step").asText() + ": "
                        + caution.path("text").asText()));
        return cautions;
    }

    /** What a comment of a program can hold of a text. */
    private static String plain(String text) {
        return text.replaceAll("[^A-Za-z0-9]+", " ").strip();
    }

    @Test
    void theHeadOfAProgramHasThemToo() {
        String program = Addresses.post("/v1/turning/program", Addresses.quick(Posted.worked()))
                .then()
                .statusCode(200)
                .extract()
                .asString();
        String head = plain(program.substring(0, program.indexOf("\nG")));
        for (Step step : List.of(Step.GENERAL, Step.MOUNTING, Step.REVERSING, Step.MILLING)) {
            for (Caution caution : step.cautions()) {
                assertTrue(head.contains(plain(caution.text())), caution.text() + " in " + head);
            }
        }
    }

    @Test
    void paperHasThoseOfAllSteps() {
        String html = Contract.request()
                .contentType("application/json")
                .queryParam("format", "html")
                .body(Addresses.quick(Posted.worked()).toString())
                .post("/v1/shop-sheet")
                .then()
                .statusCode(200)
                .extract()
                .asString();
        // Three panels of a side each are not made in halves, and nothing is trued at the disc sander.
        for (Step step : EnumSet.complementOf(EnumSet.of(Step.DISC_SANDING))) {
            for (Caution caution : step.cautions()) {
                assertTrue(html.contains("Caution:</strong> " + caution.text()), caution.text());
            }
        }
    }

    /** DXF, STL, OBJ and 3MF have no place for cautions. */
    @Test
    void addressesOfFilesForMachinesSayThemInTheContract() {
        Set<String> files = new LinkedHashSet<>();
        for (String address : Addresses.ofDocuments()) {
            if (answers(address).has(Format.DXF_TYPE) || answers(address).has(Format.STL_TYPE)) {
                files.add(address);
                String description = operation(address).path("description").asText();
                for (Caution caution : Step.OUTLINES.cautions()) {
                    assertTrue(description.contains(caution.text()), address + ": " + description);
                }
            }
        }
        assertEquals(12, files.size(), files::toString);
    }

    /** A normal build can be cut; only the design that shows a vanishing band is stopped, by that. */
    @TestFactory
    Stream<DynamicTest> workedDocumentsAreNotStopped() {
        return DesignLibrary.all().keySet().stream()
                .map(name -> DynamicTest.dynamicTest(name, () -> {
                    String build = Addresses.post("/v1/build", Addresses.quick(Posted.worked(name)))
                            .then()
                            .statusCode(200)
                            .extract()
                            .asString();
                    Set<String> stops = new TreeSet<>();
                    Contract.json(build).path("findings").forEach(finding -> {
                        if (finding.path("severity").asText().equals("STOP")) {
                            stops.add(finding.path("code").asText());
                        }
                    });
                    assertEquals(name.equals("icosahedron-vanishing-rim") ? Set.of("BAND_VANISHES") : Set.of(), stops);
                }));
    }
}
