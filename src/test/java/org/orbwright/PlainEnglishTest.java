package org.orbwright;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.orbwright.fixture.PlainWords;
import org.orbwright.fixture.Prose;
import org.orbwright.fixture.Slow;
import org.orbwright.fixture.Wordings;
import org.orbwright.sheet.Caution;

/** Everything that a person reads speaks in short sentences and plain words. */
@Slow
class PlainEnglishTest {
    private static final Path CONTRACT = Path.of("openapi/openapi.yaml");
    private static final Path EXAMPLES = Path.of("src/main/resources/examples");
    private static final Path CODE = Path.of("src/main/java/org/orbwright");
    private static final Path PAGES = Path.of("src/docs");
    private static final Path CLIENTS = Path.of("src/main/resources/META-INF/resources/clients");
    private static final Path WORKBOOK = Path.of("src/main/resources/workbook");
    private static final Set<String> IN_THE_CONTRACT = Set.of("description", "summary");
    private static final Set<String> IN_AN_ANSWER = Set.of("message", "title", "detail", "text", "help");
    /** What these hold is data, which the examples' own test reads. */
    private static final Set<String> DATA = Set.of("example", "examples");

    @Test
    void theContract() throws IOException {
        JsonNode contract = new ObjectMapper(new YAMLFactory()).readTree(CONTRACT.toFile());
        Map<String, String> texts = new TreeMap<>();
        collect(contract, "", IN_THE_CONTRACT, texts);
        assertPlain(texts, 1500);
    }

    @Test
    void theCautions() {
        Map<String, String> texts = new TreeMap<>();
        for (Caution.Step step : Caution.Step.values()) {
            for (Caution caution : step.cautions()) {
                texts.put(step + " " + texts.size(), caution.text());
            }
        }
        assertPlain(texts, 80);
    }

    @Test
    void theAnswersOfTheExamples() throws IOException {
        Map<String, String> texts = new TreeMap<>();
        try (Stream<Path> files = Files.walk(EXAMPLES)) {
            for (Path file :
                    files.filter(path -> path.toString().endsWith(".json")).toList()) {
                String place = EXAMPLES.relativize(file).toString();
                collect(new ObjectMapper().readTree(file.toFile()), place, IN_AN_ANSWER, texts);
            }
        }
        assertPlain(texts, 500);
    }

    /** Findings, refusals and titles of all kinds, also those that no example has, in every way they can be worded. */
    @Test
    void everyWordingOfEveryTextInTheCode() throws IOException {
        Map<String, String> texts = new TreeMap<>();
        for (Path file : files(CODE, ".java")) {
            // Its texts are those of commands, which have lines of their own, and of problems, which have a test.
            if (!file.startsWith(CODE.resolve("api"))) {
                for (String text : Wordings.of(file)) {
                    texts.put(file.getFileName() + " " + texts.size(), text);
                }
            }
        }
        assertPlain(texts, 5000);
    }

    @Test
    void theDocuments() throws IOException {
        Map<String, String> texts = new TreeMap<>();
        for (Path file : Stream.concat(
                        Stream.of("README.md", "DEVELOPERS.md").map(Path::of), files(PAGES, ".md").stream())
                .toList()) {
            texts.put(file.toString(), Prose.ofMarkdown(Files.readString(file)));
        }
        assertPlain(texts, 14);
    }

    @Test
    void theCommentsOfThePackages() throws IOException {
        Map<String, String> texts = new TreeMap<>();
        for (Path file : files(CODE, "package-info.java")) {
            texts.put(file.toString(), Prose.ofJavadoc(Files.readString(file)));
        }
        assertPlain(texts, 27);
    }

    /** Scripts and macros that the service hands out, and the cells of its workbook. */
    @Test
    void whatIsHandedOut() throws IOException {
        Map<String, String> texts = new TreeMap<>();
        for (Path file : files(CLIENTS, "")) {
            Prose.ofScript(Files.readString(file)).forEach(text -> texts.put(file + " " + texts.size(), text));
        }
        for (Path file : files(WORKBOOK, ".xml")) {
            Prose.ofXml(Files.readString(file)).forEach(text -> texts.put(file + " " + texts.size(), text));
        }
        assertPlain(texts, 300);
    }

    private static List<Path> files(Path folder, String end) throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            return files.filter(
                            file -> Files.isRegularFile(file) && file.toString().endsWith(end))
                    .sorted()
                    .toList();
        }
    }

    @ParameterizedTest
    @CsvSource({"25, 0", "26, 1"})
    void aSentenceHasAtMost25Words(int words, int faults) {
        String sentence = "Saw" + " 0.5".repeat(words - 1) + ".";
        assertEquals(
                faults,
                PlainWords.faults("a place", "Before. " + sentence + " After.").size());
        assertEquals(
                faults, PlainWords.faults("a place", sentence + "\n\nAfter").size());
    }

    @ParameterizedTest
    @ValueSource(strings = {". ", "! ", "? ", ": ", "; ", " (common practice, no source) ", " (A Book, 1919, p. 15): "})
    void aMarkWithABlankEndsASentenceAndABracketThatNamesASourceIsNoPartOfIt(String between) {
        String half = "Saw" + " it".repeat(between.startsWith(" ") ? 11 : 24);
        assertEquals(List.of(), PlainWords.faults("a place", half + between + half));
        assertEquals(
                1,
                PlainWords.faults("a place", half + " it it, (and more) " + half)
                        .size());
    }

    @ParameterizedTest
    @ValueSource(strings = {"Saw it, whereby it falls.", "Thus it falls.", "It falls, e.g. now.", "Utilize a stop."})
    void aWordThatPuzzlesIsRefused(String text) {
        assertEquals(1, PlainWords.faults("a place", text).size());
    }

    @Test
    void aWordWithinAnotherIsNotRefused() {
        assertEquals(List.of(), PlainWords.faults("a place", "The enthusiast departed from there to here."));
    }

    private static void assertPlain(Map<String, String> texts, int atLeast) {
        assertTrue(texts.size() >= atLeast, texts.size() + " texts were found");
        List<String> faults = new ArrayList<>();
        texts.forEach((place, text) -> faults.addAll(PlainWords.faults(place, text)));
        assertTrue(faults.isEmpty(), () -> String.join("\n", faults));
    }

    private static void collect(JsonNode node, String place, Set<String> wanted, Map<String, String> texts) {
        node.properties().forEach(member -> {
            String below = place + "/" + member.getKey();
            if (wanted.contains(member.getKey()) && member.getValue().isTextual()) {
                texts.put(below, member.getValue().textValue());
            } else if (!DATA.contains(member.getKey())) {
                collect(member.getValue(), below, wanted, texts);
            }
        });
        if (node.isArray()) {
            for (int i = 0; i < node.size(); i++) {
                collect(node.get(i), place + "/" + i, wanted, texts);
            }
        }
    }
}
