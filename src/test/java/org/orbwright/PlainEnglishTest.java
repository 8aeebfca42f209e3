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
import org.orbwright.sheet.Caution;

/** The contract, the cautions and the answers of the examples speak in short sentences and plain words. */
class PlainEnglishTest {
    private static final Path CONTRACT = Path.of("openapi/openapi.yaml");
    private static final Path EXAMPLES = Path.of("src/main/resources/examples");
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
