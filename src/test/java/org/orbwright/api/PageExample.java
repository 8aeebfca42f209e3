package org.orbwright.api;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * A command of a page in {@code src/docs} and the answer that stands below it. What an answer shows is so. It may leave
 * out members, elements and lines where it says {@code ...}, and nothing else.
 *
 * @param command the command, a call of curl
 * @param kind the language of the answer: json or another
 * @param answer the answer as the page shows it
 */
record PageExample(String command, String kind, String answer) {
    static final Path PAGES = Path.of("src/docs");

    private static final String LINES = "((?:(?!```).*\\n)*)";
    /** At most one line of words stands between a command and its answer. */
    private static final Pattern EXAMPLE = Pattern.compile(
            "(?m)^```shell\\n" + LINES + "```\\n(?:(?!```).*\\n)?```(?!shell)(\\w+)\\n" + LINES + "```$");

    private static final Pattern SETTING = Pattern.compile("(?m)^java -D([a-z.-]+)=(\\S+) ");
    private static final Pattern CALL = Pattern.compile("(?ms)^curl .*");
    private static final Pattern WORD = Pattern.compile("'([^']*)'|\"([^\"]*)\"|([^\\s'\"]+)");
    private static final String LEFT_OUT = "...";
    private static final ObjectMapper JSON =
            new ObjectMapper().enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS);

    /** The pages, by name. */
    static List<String> pages() throws IOException {
        try (Stream<Path> pages = Files.list(PAGES)) {
            return pages.map(page -> page.getFileName().toString()).sorted().toList();
        }
    }

    static List<PageExample> of(String page) throws IOException {
        return EXAMPLE.matcher(Files.readString(PAGES.resolve(page)))
                .results()
                .map(match -> new PageExample(match.group(1), match.group(2), match.group(3)))
                .toList();
    }

    /** The setting with which a page starts the service. */
    static Map.Entry<String, String> setting(String page) throws IOException {
        return SETTING.matcher(Files.readString(PAGES.resolve(page)))
                .results()
                .map(match -> Map.entry(match.group(1), match.group(2)))
                .findFirst()
                .orElseThrow();
    }

    /**
     * Sends the request of the command, and compares the answer.
     *
     * @param service where the service is
     * @param variables values of the shell's variables
     * @param headers headers that this service asks for beside those of the page
     */
    void check(URI service, Map<String, String> variables, Map<String, String> headers) throws Exception {
        HttpRequest.Builder request = HttpRequest.newBuilder();
        headers.forEach(request::header);
        Iterator<String> words = words(variables).iterator();
        boolean addressed = false;
        while (words.hasNext()) {
            String word = words.next();
            switch (word) {
                case "curl", "-s", "--retry-connrefused" -> {}
                case "--retry" -> words.next();
                case "-H" -> {
                    String[] header = words.next().split(": ", 2);
                    request.header(header[0], header[1]);
                }
                case "--data", "--data-binary" -> request.POST(body(words.next()));
                default -> {
                    assertTrue(word.startsWith("http://localhost:8080/"), word);
                    request.uri(service.resolve(word.substring("http://localhost:8080".length())));
                    addressed = true;
                }
            }
        }
        assertTrue(addressed, command);
        HttpResponse<String> response =
                HttpClient.newHttpClient().send(request.build(), HttpResponse.BodyHandlers.ofString());
        compare(response.statusCode(), response.body());
    }

    private static HttpRequest.BodyPublisher body(String word) throws IOException {
        return word.startsWith("@")
                ? HttpRequest.BodyPublishers.ofFile(Path.of(word.substring(1)))
                : HttpRequest.BodyPublishers.ofString(word);
    }

    private List<String> words(Map<String, String> variables) {
        String call = CALL.matcher(command).results().findFirst().orElseThrow().group();
        for (Map.Entry<String, String> variable : variables.entrySet()) {
            call = call.replace("$" + variable.getKey(), variable.getValue());
        }
        return WORD.matcher(call.replace("\\\n", " "))
                .results()
                .map(word -> word.group().matches("(?s)['\"].*")
                        ? word.group().substring(1, word.group().length() - 1)
                        : word.group())
                .toList();
    }

    private void compare(int status, String told) throws IOException {
        if (!kind.equals("json")) {
            assertEquals(200, status, told);
            lines(told.replace("\r\n", "\n"));
            return;
        }
        List<JsonNode> shown = values(marked(answer));
        List<JsonNode> real = values(told);
        assertEquals(shown.get(0).path("status").asInt(200), status, told);
        assertEquals(shown.size(), real.size(), told);
        for (int i = 0; i < shown.size(); i++) {
            assertSame(shown.get(i), real.get(i), "");
        }
    }

    /** Lines that stand together follow each other in the answer; others come later in it. */
    private void lines(String told) {
        int from = 0;
        for (String run : answer.split("(?m)^\\.\\.\\.\\n", -1)) {
            int at = told.indexOf(run.strip(), from);
            assertTrue(at >= 0, () -> run + " does not come next in " + told);
            from = at + run.strip().length();
        }
        assertTrue(answer.endsWith("...\n") || told.strip().length() == from, told);
    }

    private static List<JsonNode> values(String text) throws IOException {
        try (var values = JSON.readerFor(JsonNode.class).<JsonNode>readValues(text)) {
            return values.readAll();
        }
    }

    /** JSON in which what is left out is a member or an element of its own. */
    private static String marked(String text) {
        StringBuilder json = new StringBuilder();
        List<Character> open = new ArrayList<>();
        boolean quoted = false;
        for (int i = 0; i < text.length(); i++) {
            char sign = text.charAt(i);
            quoted ^= sign == '"';
            if (!quoted && (sign == '{' || sign == '[')) {
                open.add(sign);
            } else if (!quoted && (sign == '}' || sign == ']')) {
                open.remove(open.size() - 1);
            }
            if (!quoted && text.startsWith(LEFT_OUT, i)) {
                json.append(open.get(open.size() - 1) == '{' ? "\"...\": 0" : "\"...\"");
                i += LEFT_OUT.length() - 1;
            } else {
                json.append(sign);
            }
        }
        return json.toString();
    }

    private static void assertSame(JsonNode shown, JsonNode real, String place) {
        assertNotNull(real, place);
        if (shown.isObject()) {
            shown.properties().stream()
                    .filter(member -> !member.getKey().equals(LEFT_OUT))
                    .forEach(member ->
                            assertSame(member.getValue(), real.get(member.getKey()), place + "/" + member.getKey()));
            assertTrue(shown.has(LEFT_OUT) || shown.size() == real.size(), () -> place + " is " + real);
        } else if (shown.isArray()) {
            assertSameElements(shown, real, place);
        } else if (shown.isNumber()) {
            assertTrue(real.isNumber(), place);
            assertEquals(0, shown.decimalValue().compareTo(real.decimalValue()), () -> place + " is " + real);
        } else {
            assertEquals(shown, real, place);
        }
    }

    /** The elements at the start of a list. Those behind them may be left out. */
    private static void assertSameElements(JsonNode shown, JsonNode real, String place) {
        boolean more = shown.size() > 0
                && shown.get(shown.size() - 1).isTextual()
                && shown.get(shown.size() - 1).textValue().equals(LEFT_OUT);
        int count = more ? shown.size() - 1 : shown.size();
        assertTrue(more || real.size() == count, () -> place + " is " + real);
        for (int i = 0; i < count; i++) {
            assertSame(shown.get(i), real.get(i), place + "/" + i);
        }
    }
}
