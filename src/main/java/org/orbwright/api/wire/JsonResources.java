package org.orbwright.api.wire;

import io.quarkus.runtime.util.ClassPathUtils;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

/** The JSON files of a folder among the service's resources. */
public final class JsonResources {
    private static final String SUFFIX = ".json";

    private JsonResources() {}

    /** The files' contents by their names without the suffix, in the order of the names. */
    public static Map<String, String> in(String folder) {
        Map<String, String> contents = new TreeMap<>();
        try {
            ClassPathUtils.consumeAsPaths(JsonResources.class.getClassLoader(), folder, path -> addAll(path, contents));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return Collections.unmodifiableMap(contents);
    }

    private static void addAll(Path folder, Map<String, String> contents) {
        try (Stream<Path> files = Files.list(folder)) {
            for (Path file :
                    files.filter(path -> path.toString().endsWith(SUFFIX)).toList()) {
                String name = file.getFileName().toString();
                contents.put(name.substring(0, name.length() - SUFFIX.length()), Files.readString(file));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
