package org.orbwright.api.wire;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.Collections;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** The worked designs that come with the service, by name. */
public final class DesignLibrary {
    private static final Map<String, WorkedDesign> DESIGNS = load();

    private DesignLibrary() {}

    /**
     * A worked design.
     *
     * @param title the design's own name for itself
     * @param json the design as it is written
     */
    public record WorkedDesign(String title, String json) {}

    /** All designs in the order of their names. */
    public static Map<String, WorkedDesign> all() {
        return DESIGNS;
    }

    /** The design of that name, if there is one. */
    public static Optional<WorkedDesign> find(String name) {
        return Optional.ofNullable(DESIGNS.get(name));
    }

    private static Map<String, WorkedDesign> load() {
        Map<String, WorkedDesign> designs = new TreeMap<>();
        JsonResources.in("designs").forEach((name, json) -> designs.put(name, new WorkedDesign(title(json), json)));
        return Collections.unmodifiableMap(designs);
    }

    private static String title(String json) {
        try {
            return new ObjectMapper().readTree(json).path("name").asText();
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("a worked design is not JSON", e);
        }
    }
}
