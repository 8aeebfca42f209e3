package org.orbwright.api;

import com.fasterxml.jackson.databind.JsonNode;
import io.restassured.http.ContentType;
import io.restassured.specification.RequestSpecification;
import java.util.LinkedHashMap;
import java.util.Map;
import org.orbwright.api.wire.DesignLibrary;
import org.orbwright.api.wire.RequestIds;

/** The requests whose problems the contract shows: a good request with one thing wrong. */
final class BadRequests {
    private static final String DESIGN =
            DesignLibrary.find(Posted.MAIN).orElseThrow().json();

    /** An id that is the same whenever the problems are asked for. */
    private static final String ID = "0c2f5b1e-7d43-4a86-9b58-3e6d1f0a7c24";

    /** By the declared answer that the problem belongs to and the example's name in it. */
    static final Map<String, BadRequest> ALL = all();

    private BadRequests() {}

    /** A request and what is wrong with it; without a body it is read. */
    record BadRequest(String address, String body) {
        JsonNode answer() {
            RequestSpecification request = Contract.badRequest().header(RequestIds.HEADER, ID);
            return Contract.json(
                    body == null
                            ? request.get(address).asString()
                            : request.contentType(ContentType.JSON)
                                    .body(body)
                                    .post(address)
                                    .asString());
        }
    }

    private static Map<String, BadRequest> all() {
        Map<String, BadRequest> requests = new LinkedHashMap<>();
        requests.put("INVALID_REQUEST/decimal-comma", posted("212.0 }", "212,0 }"));
        requests.put("INVALID_REQUEST/size-below-zero", posted("212.0 }", "-3 }"));
        requests.put("UNKNOWN_NAME/misspelt-solid", new BadRequest("/v1/solids/dodecahedrn", null));
        requests.put("UNKNOWN_NAME/misspelt-design", new BadRequest("/v1/designs/icosahedron", null));
        requests.put("UNKNOWN_NAME/misspelt-wood", new BadRequest("/v1/woods/walnutt", null));
        requests.put("IMPOSSIBLE_DESIGN/misspelt-solid", posted("\"icosahedron\"", "\"icosahedrn\""));
        requests.put("IMPOSSIBLE_DESIGN/bands-too-wide", posted("17.0", "47.0"));
        return requests;
    }

    private static BadRequest posted(String what, String with) {
        if (!DESIGN.contains(what)) {
            throw new IllegalStateException("the design has no " + what);
        }
        return new BadRequest("/v1/sheet", DESIGN.replace(what, with));
    }
}
