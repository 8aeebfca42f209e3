package org.orbwright.api;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.MissingNode;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.RestAssured;
import io.restassured.http.ContentType;
import io.restassured.response.Response;
import io.restassured.specification.RequestSpecification;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;
import org.orbwright.api.wire.DesignLibrary;

/** What the README and the pages in {@code src/docs} say of the service is so. */
@QuarkusTest
class ReadmeTest {
    private static final Path README = Path.of("README.md");
    private static final String DESIGN = worked("icosahedron-mixed");
    private static final Pattern QUOTED = Pattern.compile("`([^`]*)`");
    private static final Pattern NUMBER = Pattern.compile("[0-9]+(\\.[0-9]+)?");
    private static final Pattern POSTED = Pattern.compile("--data @(\\S+)");
    private static final Pattern ACCEPTED = Pattern.compile("-H 'Accept: ([^']*)'");
    private static final Pattern ASKED = Pattern.compile("http://localhost:8080([^'\\s]+)");
    /** Numbers of the worked example's table that are no answer: they are parts of the design. */
    private static final Set<String> OF_THE_DESIGN = Set.of("720", "17");

    private final Map<Path, String> pages = pages();

    private static String worked(String name) {
        return DesignLibrary.find(name).orElseThrow().json();
    }

    @Test
    void theBandThatVanishesIsFound() {
        String sheet = Contract.request()
                .contentType(ContentType.JSON)
                .body(worked("icosahedron-vanishing-rim"))
                .post("/v1/sheet")
                .asString();
        assertTrue(
                Contract.json(sheet).path("findings").findValuesAsText("code").contains("BAND_VANISHES"), sheet);
    }

    @Test
    void theThreeLinesSayWhatTheyWaitFor() {
        String told = pages.get(README).replace('\n', ' ').replaceFirst(".*says why: \"([^\"]*)\".*", "$1");
        assertTrue(
                sheet(threeLines()).path("findings").findValuesAsText("message").contains(told), told);
    }

    /** The commands that post a worked document. */
    @TestFactory
    Stream<DynamicTest> everyCommandAnswers() {
        List<DynamicTest> tests = new ArrayList<>();
        pages.forEach((page, text) -> text.replace("\\\n", "")
                .lines()
                .filter(line -> POSTED.matcher(line).find())
                .forEach(line -> tests.add(DynamicTest.dynamicTest(page + " " + line, () -> commandAnswers(line)))));
        assertFalse(tests.isEmpty());
        return tests.stream();
    }

    private static void commandAnswers(String command) throws IOException {
        RequestSpecification request = RestAssured.given().urlEncodingEnabled(false);
        matches(ACCEPTED, command, 1).forEach(request::accept);
        Response answer = request.contentType(ContentType.JSON)
                .body(Files.readString(Path.of(matches(POSTED, command, 1).get(0))))
                .post(matches(ASKED, command, 1).get(0));
        assertEquals(200, answer.statusCode(), answer::asString);
    }

    /** The hash is recomputed here; the form is what the file of keys demands, the length what its comment advises. */
    @Test
    void theLineThatMakesAKeyWritesOneOfTheFile(@TempDir Path folder) throws Exception {
        String command = pages.get(Path.of("src/docs/security.md"))
                .lines()
                .filter(line -> line.startsWith("key=$("))
                .findFirst()
                .orElseThrow();
        Process shell = new ProcessBuilder("sh", "-c", command)
                .directory(folder.toFile())
                .redirectErrorStream(true)
                .start();
        String key = new String(shell.getInputStream().readAllBytes(), StandardCharsets.UTF_8).strip();
        assertEquals(0, shell.waitFor());
        assertTrue(key.matches("[0-9a-f]{64}"), key);
        byte[] hash = MessageDigest.getInstance("SHA-256").digest(key.getBytes(StandardCharsets.UTF_8));
        assertEquals(List.of("bench " + HexFormat.of().formatHex(hash)), Files.readAllLines(folder.resolve("keys")));
    }

    @TestFactory
    Stream<DynamicTest> everyAddressAnswers() {
        List<DynamicTest> tests = new ArrayList<>();
        for (List<String> row : table("address")) {
            String method = quoted(row.get(0)).get(0).startsWith("POST") ? "POST" : "GET";
            for (String address : quoted(row.get(0))) {
                String path = address.replaceFirst("^(GET|POST) ", "");
                tests.add(DynamicTest.dynamicTest(method + " " + path, () -> answers(method, path)));
            }
        }
        assertFalse(tests.isEmpty());
        return tests.stream();
    }

    private static void answers(String method, String path) {
        String address = path.replace("{solid}", "icosahedron")
                .replace("{design}", "icosahedron-mixed")
                .replace("{species}", "ash")
                .replace("{table}", "bands");
        RequestSpecification request = RestAssured.given();
        Response answer = method.equals("GET")
                ? request.get(address)
                : request.contentType(ContentType.JSON).body(DESIGN).post(address);
        assertEquals(200, answer.statusCode(), answer::asString);
    }

    @TestFactory
    Stream<DynamicTest> theNumbersOfTheThreeLinesAreTheAnswers() {
        return numbersAreTheAnswers("asked of three lines", threeLines());
    }

    @TestFactory
    Stream<DynamicTest> theNumbersOfTheWorkedExampleAreTheAnswers() {
        return numbersAreTheAnswers("question", DESIGN);
    }

    private String threeLines() {
        String start = "```json\n";
        String readme = pages.get(README);
        int from = readme.indexOf(start) + start.length();
        return readme.substring(from, readme.indexOf("```", from));
    }

    private static JsonNode sheet(String document) {
        return Contract.json(Contract.request()
                .contentType(ContentType.JSON)
                .body(document)
                .post("/v1/sheet")
                .asString());
    }

    /** Each number in a row is one of those at or below the row's JSON pointers, to the decimals that are written. */
    private Stream<DynamicTest> numbersAreTheAnswers(String heading, String document) {
        JsonNode sheet = sheet(document);
        List<List<String>> rows = table(heading);
        assertTrue(rows.size() > 4);
        return rows.stream()
                .map(row -> DynamicTest.dynamicTest(row.get(0), () -> {
                    List<BigDecimal> answers = new ArrayList<>();
                    String parent = "";
                    for (String pointer : quoted(row.get(1))) {
                        String absolute = pointer.startsWith("/") ? pointer : parent + "/" + pointer;
                        parent = absolute.substring(0, absolute.lastIndexOf('/'));
                        JsonNode answer = sheet.at(absolute);
                        assertFalse(answer instanceof MissingNode, absolute);
                        numbers(answer, answers);
                    }
                    List<String> written = matches(NUMBER, row.get(2), 0);
                    assertFalse(written.isEmpty());
                    for (String number : written) {
                        assertTrue(
                                OF_THE_DESIGN.contains(number)
                                        || answers.stream().anyMatch(answer -> rounds(answer, number)),
                                number + " is none of " + answers);
                    }
                }));
    }

    private static boolean rounds(BigDecimal answer, String written) {
        BigDecimal number = new BigDecimal(written);
        return answer.setScale(number.scale(), RoundingMode.HALF_EVEN).compareTo(number) == 0;
    }

    private static void numbers(JsonNode answer, List<BigDecimal> numbers) {
        if (answer.isNumber()) {
            numbers.add(new BigDecimal(answer.asText()));
        }
        answer.forEach(part -> numbers(part, numbers));
    }

    /** The rows of all tables whose first heading is this. */
    private List<List<String>> table(String heading) {
        List<List<String>> rows = new ArrayList<>();
        Pattern table = Pattern.compile("\\| " + heading + " \\|.*\\n.*\\n((?:\\|.*\\n)*)");
        pages.values().stream()
                .flatMap(text -> matches(table, text, 1).stream())
                .flatMap(String::lines)
                .forEach(line -> rows.add(Stream.of(line.substring(1).split("\\|", -1))
                        .map(String::strip)
                        .toList()));
        return rows;
    }

    private static List<String> quoted(String cell) {
        return matches(QUOTED, cell, 1);
    }

    private static List<String> matches(Pattern pattern, String text, int group) {
        return pattern.matcher(text)
                .results()
                .map((MatchResult match) -> match.group(group))
                .toList();
    }

    private static Map<Path, String> pages() {
        Map<Path, String> pages = new TreeMap<>();
        try (Stream<Path> docs = Files.list(Path.of("src/docs"))) {
            for (Path page : Stream.concat(Stream.of(README), docs).toList()) {
                pages.put(page, Files.readString(page));
            }
        } catch (IOException e) {
            throw new AssertionError(e);
        }
        return pages;
    }
}
