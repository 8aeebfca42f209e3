package org.orbwright.api;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.restassured.config.EncoderConfig;
import io.restassured.config.RestAssuredConfig;
import io.restassured.http.ContentType;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Arrays;
import java.util.HashSet;
import java.util.Set;
import org.orbwright.api.query.Format;
import org.orbwright.api.wire.DesignLibrary;
import org.orbwright.document.Section;

/** Documents to post, each a copy of its own: the worked ones, and the tests' own with numbers worked out by hand. */
final class Posted {
    /** For requests whose body is lines of JSON. */
    static final RestAssuredConfig LINES_AS_TEXT = RestAssuredConfig.config()
            .encoderConfig(EncoderConfig.encoderConfig().encodeContentTypeAs(Format.NDJSON_TYPE, ContentType.TEXT));

    /** The worked document with every section. */
    static final String MAIN = "icosahedron-mixed";

    // Not that of the contract, which is read from the running service.
    private static final ObjectMapper JSON = new ObjectMapper();

    private Posted() {}

    /** A worked document. */
    static ObjectNode worked(String name) {
        try {
            return (ObjectNode)
                    JSON.readTree(DesignLibrary.find(name).orElseThrow().json());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The worked document with every section. */
    static ObjectNode worked() {
        return worked(MAIN);
    }

    /** A document of the tests' own. */
    static ObjectNode fixture(String name) {
        try (InputStream in = Posted.class.getResourceAsStream("/fixtures/" + name + ".json")) {
            return (ObjectNode) JSON.readTree(in);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** A dodecahedron with every section but that of the stock, whose numbers are worked out by hand here and there. */
    static ObjectNode lantern() {
        return fixture("boathouse-lantern");
    }

    /** Two spheres from dodecahedra, in inches and without a section. */
    static ObjectNode twoSpheres() {
        return fixture("dodecahedron-two-spheres");
    }

    /** The design of a document with these sections alone. */
    static ObjectNode only(ObjectNode document, String... sections) {
        Set<String> others = new HashSet<>();
        for (Section section : Section.values()) {
            others.add(section.text());
        }
        Arrays.asList(sections).forEach(others::remove);
        return document.remove(others);
    }

    /** A design with a section of another document. */
    static ObjectNode with(ObjectNode design, String section, ObjectNode other) {
        return design.set(section, other.path(section));
    }
}
