package org.orbwright.api;

import com.fasterxml.jackson.databind.ObjectMapper;
import io.quarkus.runtime.util.ClassPathUtils;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;

/** The worked designs that come with the service, by name. */
final class DesignLibrary {
    private static final String SUFFIX = ".json";
    private static final Map<String, WorkedDesign> DESIGNS = load();

    private DesignLibrary() {}

    /**
     * A worked design.
     *
     * @param title the design's own name for itself
     * @param json the design as it is written
     */
    record WorkedDesign(String title, String json) {}

    /** All designs in the order of their names. */
    static Map<String, WorkedDesign> all() {
        return DESIGNS;
    }

    static Optional<WorkedDesign> find(String name) {
        return Optional.ofNullable(DESIGNS.get(name));
    }

    private static Map<String, WorkedDesign> load() {
        Map<String, WorkedDesign> designs = new TreeMap<>();
        try {
            ClassPathUtils.consumeAsPaths(
                    DesignLibrary.class.getClassLoader(), "designs", folder -> addAll(folder, designs));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return Collections.unmodifiableMap(designs);
    }

    private static void addAll(Path folder, Map<String, WorkedDesign> designs) {
        try (Stream<Path> files = Files.list(folder)) {
            for (Path file :
                    files.filter(path -> path.toString().endsWith(SUFFIX)).toList()) {
                String name = file.getFileName().toString();
                String json = Files.readString(file);
                String title = new ObjectMapper().readTree(json).path("name").asText();
                designs.put(name.substring(0, name.length() - SUFFIX.length()), new WorkedDesign(title, json));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
