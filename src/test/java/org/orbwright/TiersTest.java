package org.orbwright;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** No test falls out of all tiers of {@code pom.xml}, and none of the core starts the service. */
class TiersTest {
    private static final Path TESTS = Path.of("src/test/java");
    private static final Path SERVICE = TESTS.resolve("org/orbwright/api");
    private static final Pattern STARTS_THE_SERVICE =
            Pattern.compile("(?m)^ *@Quarkus(Main|Integration|Component|Dev|Unit)?Test\\b");
    private static final Pattern TEST = Pattern.compile(
            "(?m)^ *@(Test|ParameterizedTest|RepeatedTest|TestFactory|TestTemplate|Property|Example)\\b");

    private static List<Path> sources(Pattern pattern, Predicate<Path> which) throws IOException {
        try (Stream<Path> files = Files.walk(TESTS)) {
            return files.filter(file -> file.toString().endsWith(".java") && contains(file, pattern))
                    .filter(which)
                    .toList();
        }
    }

    private static boolean contains(Path file, Pattern pattern) {
        try {
            return pattern.matcher(Files.readString(file)).find();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Test
    void whatStartsTheServiceIsInThePackageOfTheService() throws IOException {
        assertFalse(
                sources(STARTS_THE_SERVICE, file -> file.startsWith(SERVICE)).isEmpty());
        assertEquals(List.of(), sources(STARTS_THE_SERVICE, file -> !file.startsWith(SERVICE)));
    }

    /** Surefire takes classes by that name. */
    @Test
    void everyTestIsInAClassWhoseNameEndsInTest() throws IOException {
        assertFalse(sources(TEST, file -> true).isEmpty());
        assertEquals(List.of(), sources(TEST, file -> !file.toString().endsWith("Test.java")));
    }
}
