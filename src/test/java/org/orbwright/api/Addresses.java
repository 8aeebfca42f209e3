package org.orbwright.api;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.restassured.http.ContentType;
import io.restassured.response.Response;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.orbwright.document.Section;

/** The addresses that take a document, as the contract has them, and the sections that each of them uses. */
final class Addresses {
    /** The sections of the addresses that use any; those of the first two are all that there are. */
    private static final Map<String, List<String>> USES = Map.ofEntries(
            Map.entry("/v1/build", all()),
            Map.entry("/v1/shop-sheet", all()),
            Map.entry("/v1/bands/solve", List.of("solve")),
            Map.entry("/v1/bands/explore", List.of("explore")),
            Map.entry("/v1/inlays", List.of("inlays")),
            Map.entry("/v1/drawings/pocket", List.of("inlays")),
            Map.entry("/v1/bodies/pocket", List.of("inlays")),
            Map.entry("/v1/jig", List.of("jig")),
            Map.entry("/v1/drawings/set-up", List.of("jig")),
            Map.entry("/v1/tolerance", List.of("tolerance")),
            Map.entry("/v1/diagnosis", List.of("diagnosis")),
            Map.entry("/v1/movement", List.of("movement")),
            Map.entry("/v1/stock", List.of("stock")),
            Map.entry("/v1/stock/cuts", List.of("stock")),
            Map.entry("/v1/stock/purchases", List.of("stock")),
            Map.entry("/v1/stock/reach", List.of("stock")),
            Map.entry("/v1/drawings/board", List.of("stock")),
            Map.entry("/v1/assembly", List.of("assembly")),
            Map.entry("/v1/turning", List.of("turning")),
            Map.entry("/v1/drawings/disc", List.of("turning")),
            Map.entry("/v1/drawings/templates", List.of("turning")),
            Map.entry("/v1/bodies/disc", List.of("turning")),
            Map.entry("/v1/turning/path", List.of("turning", "path")),
            Map.entry("/v1/turning/program", List.of("turning", "path")),
            Map.entry("/v1/balance", List.of("turning", "balance")));

    private Addresses() {}

    private static List<String> all() {
        List<String> names = new ArrayList<>();
        for (Section section : Section.values()) {
            names.add(section.text());
        }
        return names;
    }

    /** All addresses that a document is posted to. */
    static List<String> ofDocuments() {
        return Contract.document().path("paths").properties().stream()
                .filter(path -> path.getValue()
                        .at("/post/requestBody/content/application~1json/schema/$ref")
                        .asText()
                        .endsWith("/Document"))
                .map(Map.Entry::getKey)
                .toList();
    }

    /** The sections that an answer of an address depends on. */
    static List<String> uses(String address) {
        return USES.getOrDefault(address, List.of());
    }

    /** Posts a document to an address, with the parameters that it cannot do without. */
    static Response post(String address, JsonNode document) {
        boolean disc = address.equals("/v1/bodies/disc");
        return Contract.request()
                .contentType(ContentType.JSON)
                .queryParams(disc ? Map.of("thickness", "1") : Map.of())
                .body(document.toString())
                .post(address.replace("{table}", "sheet"));
    }

    /** A document whose searches and simulations are short, and end where they end on every machine. */
    static ObjectNode quick(ObjectNode document) {
        if (document.has("stock")) {
            ((ObjectNode) document.path("stock")).set("search", Contract.json("{\"work\":0.05,\"seconds\":60}"));
        }
        if (document.has("tolerance")) {
            ((ObjectNode) document.path("tolerance")).put("samples", 1000);
        }
        return document;
    }
}
