package org.orbwright.api;

import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import java.net.URI;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** The examples of pages that need a service with keys and other settings. */
@QuarkusTest
@TestProfile(GuardedTest.Guarded.class)
class GuardedPagesTest {
    @TestHTTPResource("/")
    URI service;

    @Test
    void aKeyOpensAsThePageOnSecurityShows() throws Exception {
        List<PageExample> examples = PageExample.of("security.md");
        assertTrue(examples.size() > 1);
        for (PageExample example : examples) {
            example.check(service, Map.of("key", GuardedTest.KEY), Map.of());
        }
    }

    /** The service was started with the setting of that page. It asks for a key too, which the page does not. */
    @Test
    void aSettingLimitsAsThePageOnSettingsShows() throws Exception {
        List<PageExample> examples = PageExample.of("settings.md");
        assertTrue(examples.size() > 0);
        for (PageExample example : examples) {
            example.check(service, Map.of(), Map.of("X-API-Key", GuardedTest.KEY));
        }
    }
}
