package org.orbwright.api;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.URI;
import org.junit.jupiter.api.Test;

/** The question that a container asks the service inside it. */
@QuarkusTest
class HealthCheckTest {
    @TestHTTPResource("/q/health/live")
    URI live;

    @TestHTTPResource("/q/health/no-such-check-here")
    URI missing;

    @Test
    void isWellWhereTheServiceSaysSo() {
        assertTrue(HealthCheck.isWell(live));
    }

    @Test
    void isNotWellWhereTheAnswerIsAnother() {
        assertFalse(HealthCheck.isWell(missing));
    }

    @Test
    void isNotWellWhereNobodyListens() throws IOException {
        int free;
        try (ServerSocket socket = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
            free = socket.getLocalPort();
        }
        assertFalse(HealthCheck.isWell(URI.create("http://127.0.0.1:" + free + "/q/health/live")));
    }
}
