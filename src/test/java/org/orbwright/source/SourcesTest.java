package org.orbwright.source;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.orbwright.source.Kind.COMMON_PRACTICE;
import static org.orbwright.source.Kind.CONTRACT;
import static org.orbwright.source.Kind.HAND;
import static org.orbwright.source.Kind.LIBRARY;
import static org.orbwright.source.Kind.PUBLISHED;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Lists every check of the main capabilities with what it rests on, and fails where one does not say so. */
class SourcesTest {
    private static final List<String> CAPABILITIES = List.of("solid", "design", "segment", "sphere", "band", "sheet");
    /** What names nothing that could be found again. */
    private static final Pattern VAGUE = Pattern.compile(
            "\\btextbooks?\\b|\\bhandbooks\\b|^\\W*(an?|the)?\\s*handbook\\W*$|\\bany table\\b|\\bstandard tables?\\b",
            Pattern.CASE_INSENSITIVE);

    private static final Pattern NUMBER = Pattern.compile("\\d");

    private static List<Check> checks() {
        List<Check> checks = new ArrayList<>();
        for (String capability : CAPABILITIES) {
            List<Check> found = Check.of(capability);
            assertFalse(found.isEmpty(), capability);
            checks.addAll(found);
        }
        checks.sort(Comparator.comparing(Check::capability).thenComparing(Check::name));
        return checks;
    }

    /** What is wrong with how a check states its source; empty if nothing is. */
    private static String fault(Source source) {
        if (source == null) {
            return "states no source";
        }
        if (source.value().named() && source.text().isBlank()) {
            return "has no text";
        }
        if (source.value().dated() && !NUMBER.matcher(source.text()).find()) {
            return "has no year, edition, version or number";
        }
        return VAGUE.matcher(source.text()).find() ? "is vague" : "";
    }

    @Test
    void everyCheckOfTheMainCapabilitiesStatesItsSource() throws IOException {
        List<Check> checks = checks();
        Files.write(
                Path.of("target", "sources.txt"),
                checks.stream().map(Check::toString).toList());
        System.out.println(table(checks));
        assertEquals(
                List.of(),
                checks.stream()
                        .filter(check -> !fault(check.source()).isEmpty())
                        .map(check -> check.name() + " " + fault(check.source()))
                        .toList());
    }

    private static String table(List<Check> checks) {
        Map<String, Map<Kind, Integer>> counts = new TreeMap<>();
        for (Check check : checks) {
            if (check.source() != null) {
                for (String row : List.of(check.capability(), "total")) {
                    counts.computeIfAbsent(row, any -> new EnumMap<>(Kind.class))
                            .merge(check.source().value(), 1, Integer::sum);
                }
            }
        }
        StringBuilder table = new StringBuilder(String.format("%-8s %8s", "checks", "outside"));
        Stream.of(Kind.values()).forEach(kind -> table.append(String.format(" %15s", kind)));
        counts.forEach((row, kinds) -> {
            int outside = kinds.entrySet().stream()
                    .filter(kind -> kind.getKey().outside())
                    .mapToInt(Map.Entry::getValue)
                    .sum();
            table.append(String.format("%n%-8s %8d", row, outside));
            Stream.of(Kind.values()).forEach(kind -> table.append(String.format(" %15d", kinds.getOrDefault(kind, 0))));
        });
        return table.toString();
    }

    @Source(PUBLISHED)
    static final class WithoutText {}

    @Source(value = PUBLISHED, text = "Author, Title")
    static final class WithoutYear {}

    @Source(value = PUBLISHED, text = "Textbooks, about 1950")
    static final class Textbooks {}

    @Source(value = COMMON_PRACTICE, text = "the handbook")
    static final class Handbook {}

    @Source(value = HAND, text = "any table of sines")
    static final class AnyTable {}

    @Source(value = LIBRARY, text = "Commons Geometry 1.0")
    static final class Good {}

    @Source(CONTRACT)
    static final class Promise {}

    static final class Silent {}

    @ParameterizedTest
    @CsvSource({
        "Silent, states no source",
        "WithoutText, has no text",
        "WithoutYear, 'has no year, edition, version or number'",
        "Textbooks, is vague",
        "Handbook, is vague",
        "AnyTable, is vague",
        "Good, ''",
        "Promise, ''"
    })
    void whatNobodyCouldFindAgainIsAFault(String sample, String fault) throws ClassNotFoundException {
        Class<?> stated = Class.forName(SourcesTest.class.getName() + "$" + sample);
        assertEquals(fault, fault(stated.getAnnotation(Source.class)));
    }
}
