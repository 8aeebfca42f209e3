package org.orbwright.api;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import java.net.URI;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** The pages in {@code src/docs} show examples that are carried out here, word by word. */
@QuarkusTest
class PagesTest {
    /** Pages whose examples ask a service with other settings: {@link GuardedPagesTest}. */
    static final Set<String> GUARDED = Set.of("security.md", "settings.md");
    /** A list of what is new. */
    private static final String WITHOUT = "changes.md";

    @TestHTTPResource("/")
    URI service;

    @TestFactory
    Stream<DynamicTest> everyExampleIsAnsweredAsThePageShows() throws Exception {
        List<DynamicTest> tests = new ArrayList<>();
        for (String page : PageExample.pages()) {
            if (!GUARDED.contains(page) && !page.equals(WITHOUT)) {
                tests.add(DynamicTest.dynamicTest(
                        page + " has an example",
                        () -> assertFalse(PageExample.of(page).isEmpty())));
                for (PageExample example : PageExample.of(page)) {
                    tests.add(DynamicTest.dynamicTest(
                            page + " " + tests.size(), () -> example.check(service, Map.of(), Map.of())));
                }
            }
        }
        assertTrue(tests.size() > 2 * (PageExample.pages().size() - GUARDED.size() - 1) - 1);
        return tests.stream();
    }

    /** The check itself: what it takes and what it refuses, at an address with one plain number. */
    @Test
    void aWrongNumberAndALineThatIsMissingAreFound() throws Exception {
        String cell = "curl -s 'http://localhost:8080/v1/cell/blade-tilt?solid=cube'\n";
        new PageExample(cell, "text", "45\n").check(service, Map.of(), Map.of());
        assertRefused(new PageExample(cell, "text", "46\n"));
        assertRefused(new PageExample(cell, "text", "4\n"));
        String cube = "curl -s http://localhost:8080/v1/solids/cube\n";
        new PageExample(cube, "json", "{\"name\": \"cube\", \"inradius\": 0.50, ...}\n")
                .check(service, Map.of(), Map.of());
        assertRefused(new PageExample(cube, "json", "{\"name\": \"cube\"}\n"));
        assertRefused(new PageExample(cube, "json", "{\"inradius\": 0.51, ...}\n"));
        assertRefused(new PageExample(cube, "json", "{\"nothing\": 1, ...}\n"));
        assertRefused(new PageExample(cube, "json", "{\"faceKinds\": [], ...}\n"));
    }

    private void assertRefused(PageExample example) {
        assertThrows(AssertionError.class, () -> example.check(service, Map.of(), Map.of()));
    }
}
