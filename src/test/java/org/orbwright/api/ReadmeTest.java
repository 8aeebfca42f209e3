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
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/** What the README says of the service is so. */
@QuarkusTest
class ReadmeTest {
    private static final String DESIGN =
            DesignLibrary.find("dodecahedron-two-spheres").orElseThrow().json();
    private static final Pattern QUOTED = Pattern.compile("`([^`]*)`");
    private static final Pattern NUMBER = Pattern.compile("[0-9]+(\\.[0-9]+)?");
    /** Numbers of the worked example's table that are no answer: they are parts of the design. */
    private static final Set<String> OF_THE_DESIGN = Set.of("23", "0.75");

    private final String readme = read();

    @Test
    void theExampleIsTheWorkedDesign() {
        String start = "```json\n";
        int from = readme.indexOf(start) + start.length();
        assertEquals(Contract.json(DESIGN), Contract.json(readme.substring(from, readme.indexOf("```", from))));
    }

    /** The hash is recomputed here; the form is what the file of keys demands, the length what its comment advises. */
    @Test
    void theLineThatMakesAKeyWritesOneOfTheFile(@TempDir Path folder) throws Exception {
        String command = readme.lines()
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
        for (List<String> row : table("endpoint")) {
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
        String address = path.replace("{solid}", "dodecahedron")
                .replace("{design}", "dodecahedron-two-spheres")
                .replace("{species}", "walnut")
                .replace("{table}", "bands");
        RequestSpecification request = RestAssured.given();
        Response answer = method.equals("GET")
                ? request.get(address)
                : request.contentType(ContentType.JSON).body(body(path)).post(address);
        assertEquals(200, answer.statusCode(), answer::asString);
    }

    /** The example that the contract has for the address. */
    private static String body(String path) {
        JsonNode contract = Contract.document();
        JsonNode operation =
                contract.path("paths").path(path.replaceFirst("\\?.*", "")).path("post");
        JsonNode example = operation
                .at("/requestBody/content/application~1json/examples")
                .elements()
                .next();
        JsonNode resolved =
                example.has("$ref") ? contract.at(example.path("$ref").asText().substring(1)) : example;
        return resolved.path("value").toString();
    }

    /** Each number in a row is one of those at or below the row's JSON pointers, to the decimals that are written. */
    @TestFactory
    Stream<DynamicTest> theTablesNumbersAreTheAnswers() {
        JsonNode sheet = Contract.json(Contract.request()
                .contentType(ContentType.JSON)
                .body(DESIGN)
                .post("/v1/sheet")
                .asString());
        List<List<String>> rows = table("question");
        assertTrue(rows.size() > 5);
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

    /** The rows of the table whose first heading is this word. */
    private List<List<String>> table(String heading) {
        List<List<String>> rows = new ArrayList<>();
        readme.substring(readme.indexOf("| " + heading + " |"))
                .lines()
                .takeWhile(line -> line.startsWith("|"))
                .skip(2)
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

    private static String read() {
        try {
            return Files.readString(Path.of("README.md"));
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }
}
