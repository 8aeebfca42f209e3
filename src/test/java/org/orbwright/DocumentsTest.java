package org.orbwright;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Properties;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** The documents hang together: with each other, with the packages, and with the contract. */
class DocumentsTest {
    private static final Path DEVELOPERS = Path.of("DEVELOPERS.md");
    private static final Path PAGES = Path.of("src/docs");
    private static final Path PACKAGES = Path.of("src/main/java/org/orbwright");

    private static final Pattern FENCE = Pattern.compile("(?ms)^ *```.*?^ *```$");
    private static final Pattern LINK = Pattern.compile("\\]\\(([^)\\s]+)\\)");
    private static final Pattern ELSEWHERE = Pattern.compile("[a-z]+:.*");
    private static final Pattern HEADING = Pattern.compile("(?m)^#+ +(.*)$");
    private static final Pattern LAYOUT_ROW = Pattern.compile("(?m)^\\| `([a-z.]+)` \\|[^|]*\\|([^|]*)\\|$");
    private static final Pattern QUOTED = Pattern.compile("`([^`]*)`");
    private static final Pattern POLICY_OF_THE_CONTRACT = Pattern.compile("(?s)Versions: (.*?)\n\n");
    private static final Pattern POLICY_OF_THE_PAGE = Pattern.compile("(?s)\n## Versions\n(.*?)\n## ");

    static List<Path> documents() throws IOException {
        try (Stream<Path> pages = Files.list(PAGES)) {
            return Stream.concat(Stream.of(Path.of("README.md"), DEVELOPERS), pages.sorted())
                    .toList();
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("documents")
    void everyLinkLeadsToAFileAndToAHeadingInIt(Path document) throws IOException {
        List<String> broken = new ArrayList<>();
        for (String link : links(document)) {
            if (!leadsSomewhere(document, link)) {
                broken.add(link);
            }
        }
        assertEquals(List.of(), broken);
    }

    @Test
    @DisplayName("every page is linked from the README, or from a page that is")
    void everyPageCanBeReached() throws IOException {
        Set<Path> reached = new TreeSet<>();
        List<Path> open = new ArrayList<>(List.of(Path.of("README.md")));
        while (!open.isEmpty()) {
            Path document = open.remove(0);
            if (document.toString().endsWith(".md") && reached.add(document)) {
                for (String link : links(document)) {
                    open.add(target(document, link));
                }
            }
        }
        assertEquals(new TreeSet<>(documents()), reached);
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "Threats, threats",
        "The numbers and how exact they are, the-numbers-and-how-exact-they-are",
        "'1.0.0, not released', 100-not-released"
    })
    @DisplayName("anchors are written as public servers of Git write them, from memory")
    void anchors(String heading, String anchor) {
        assertEquals(anchor, anchor(heading));
    }

    @ParameterizedTest(name = "{0} has at most {1} lines")
    @CsvSource({"README.md, 125", "DEVELOPERS.md, 170"})
    void documentsStayShort(Path document, int most) throws IOException {
        int lines = Files.readAllLines(document).size();
        assertTrue(lines <= most, () -> document + " has " + lines + " lines; move what one package is about there");
    }

    @Test
    void theLayoutNamesEveryPackage() throws IOException {
        assertEquals(packages(), layout().keySet());
    }

    static Set<String> packages() throws IOException {
        try (Stream<Path> folders = Files.walk(PACKAGES)) {
            return new TreeSet<>(folders.filter(Files::isDirectory)
                    .filter(folder -> !folder.equals(PACKAGES))
                    .map(folder -> PACKAGES.relativize(folder).toString().replace('/', '.'))
                    .toList());
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("packages")
    @DisplayName("where to start is a class of the package, and the package's own comment says the same")
    void thereIsSomewhereToStart(String name) throws IOException {
        Path folder = PACKAGES.resolve(name.replace('.', '/'));
        String comment = Files.readString(folder.resolve("package-info.java"));
        List<String> starts = layout().getOrDefault(name, List.of());
        assertFalse(starts.isEmpty());
        for (String start : starts) {
            assertTrue(Files.exists(folder.resolve(start + ".java")), start);
            assertTrue(
                    Pattern.compile("\\b" + name + "\\." + start + "\\b")
                            .matcher(comment)
                            .find(),
                    () -> "the comment of the package does not name " + start);
        }
    }

    @Test
    void thePolicyOfVersionsIsThatOfTheContract() throws IOException {
        Properties settings = new Properties();
        try (var file = Files.newBufferedReader(Path.of("src/main/resources/application.properties"))) {
            settings.load(file);
        }
        String contract = settings.getProperty("quarkus.smallrye-openapi.info-description");
        String page = Files.readString(PAGES.resolve("changes.md"));
        assertEquals(
                words(matches(POLICY_OF_THE_CONTRACT, contract).get(0).group(1)),
                words(matches(POLICY_OF_THE_PAGE, page).get(0).group(1)));
        String version = settings.getProperty("quarkus.smallrye-openapi.info-version");
        assertTrue(headings(page).stream().anyMatch(heading -> heading.startsWith(version)), version);
    }

    private static String words(String text) {
        return text.strip().replaceAll("\\s+", " ").toLowerCase(Locale.ROOT);
    }

    /** The links to what is a part of the project. */
    private static List<String> links(Path document) throws IOException {
        return matches(LINK, withoutExamples(Files.readString(document))).stream()
                .map(match -> match.group(1))
                .filter(link -> !ELSEWHERE.matcher(link).matches())
                .toList();
    }

    private static Path target(Path document, String link) {
        String file = link.replaceFirst("#.*", "");
        return file.isEmpty() ? document : document.resolveSibling(file).normalize();
    }

    private static boolean leadsSomewhere(Path document, String link) throws IOException {
        Path target = target(document, link);
        if (!Files.exists(target)) {
            return false;
        }
        int hash = link.indexOf('#');
        return hash < 0
                || headings(Files.readString(target)).stream()
                        .anyMatch(heading -> anchor(heading).equals(link.substring(hash + 1)));
    }

    private static List<String> headings(String text) {
        return matches(HEADING, withoutExamples(text)).stream()
                .map(match -> match.group(1))
                .toList();
    }

    private static String anchor(String heading) {
        return heading.strip()
                .toLowerCase(Locale.ROOT)
                .replaceAll("[^\\p{L}\\p{N} _-]", "")
                .replace(' ', '-');
    }

    /** A line of a shell that begins with # is no heading. */
    private static String withoutExamples(String text) {
        return FENCE.matcher(text).replaceAll("");
    }

    /** The classes to start with, by package. */
    private static Map<String, List<String>> layout() throws IOException {
        Map<String, List<String>> layout = new TreeMap<>();
        for (MatchResult row : matches(LAYOUT_ROW, Files.readString(DEVELOPERS))) {
            layout.put(
                    row.group(1),
                    matches(QUOTED, row.group(2)).stream()
                            .map(match -> match.group(1))
                            .toList());
        }
        return layout;
    }

    private static List<MatchResult> matches(Pattern pattern, String text) {
        return pattern.matcher(text).results().toList();
    }
}
