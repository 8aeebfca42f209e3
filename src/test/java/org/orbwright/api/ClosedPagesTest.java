package org.orbwright.api;

import static io.restassured.RestAssured.given;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.QuarkusTestProfile;
import io.quarkus.test.junit.TestProfile;
import java.io.IOException;
import java.net.Socket;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.SecureRandom;
import java.security.cert.X509Certificate;
import java.util.Map;
import javax.net.ssl.SSLContext;
import javax.net.ssl.SSLSocket;
import javax.net.ssl.TrustManager;
import javax.net.ssl.X509TrustManager;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A service that is encrypted, and closes its own pages. */
@QuarkusTest
@TestProfile(ClosedPagesTest.Closed.class)
class ClosedPagesTest {
    @TestHTTPResource("/")
    URI plain;

    @TestHTTPResource(value = "/", tls = true)
    URI encrypted;

    /** The settings. */
    public static final class Closed implements QuarkusTestProfile {
        @Override
        public Map<String, String> getConfigOverrides() {
            return Map.of(
                    "orbwright.access.metrics", "off",
                    "orbwright.access.contract", "off",
                    "quarkus.http.test-ssl-port", "0",
                    "quarkus.tls.key-store.p12.path", certificate().toString(),
                    "quarkus.tls.key-store.p12.password", "a password");
        }

        private static Path certificate() {
            try {
                Path file = Files.createTempDirectory("tls").resolve("key.p12");
                Process keytool = new ProcessBuilder(
                                Path.of(System.getProperty("java.home"), "bin", "keytool")
                                        .toString(),
                                "-genkeypair",
                                "-alias",
                                "a",
                                "-keyalg",
                                "EC",
                                "-dname",
                                "CN=localhost",
                                "-storetype",
                                "PKCS12",
                                "-keystore",
                                file.toString(),
                                "-storepass",
                                "a password")
                        .inheritIO()
                        .start();
                assertEquals(0, keytool.waitFor());
                return file;
            } catch (IOException | InterruptedException e) {
                throw new IllegalStateException(e);
            }
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"/q/metrics", "/q/openapi", "/q/swagger-ui/", "/q/swagger-ui/index.html", "/q/./metrics"})
    void whatIsOffIsNotThere(String path) {
        given().urlEncodingEnabled(false).get(path).then().statusCode(404);
    }

    @Test
    void theRestIsThere() {
        given().get("/q/health").then().statusCode(200);
        given().get("/v1/solids/cube").then().statusCode(200);
    }

    /** Java's own client of TLS: older programs of a shop know 1.2 alone. */
    @ParameterizedTest
    @ValueSource(strings = {"TLSv1.3", "TLSv1.2"})
    void bothVersionsOfTlsAreTaken(String version) throws Exception {
        SSLContext trusting = SSLContext.getInstance("TLS");
        trusting.init(null, new TrustManager[] {new AnyCertificate()}, new SecureRandom());
        try (SSLSocket socket =
                (SSLSocket) trusting.getSocketFactory().createSocket(encrypted.getHost(), encrypted.getPort())) {
            socket.setEnabledProtocols(new String[] {version});
            socket.startHandshake();
            assertEquals(version, socket.getSession().getProtocol());
        }
    }

    /** The certificate is made up for this test. */
    private static final class AnyCertificate implements X509TrustManager {
        @Override
        public void checkClientTrusted(X509Certificate[] chain, String type) {
            // Nobody asks.
        }

        @Override
        public void checkServerTrusted(X509Certificate[] chain, String type) {
            // Any will do.
        }

        @Override
        public X509Certificate[] getAcceptedIssuers() {
            return new X509Certificate[0];
        }
    }

    /** RFC 9112, 6.1: what follows must not be read as the next request either. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "Transfer-Encoding: foo",
                "Transfer-Encoding: gzip, chunked",
                "Transfer-Encoding: chunked\r\nTransfer-Encoding: chunked",
                "Transfer-Encoding:"
            })
    void unknownTransferCodingsAreRefused(String header) throws Exception {
        try (Socket socket = new Socket(plain.getHost(), plain.getPort())) {
            socket.setSoTimeout(15_000);
            String request = "POST /v1/sheet HTTP/1.1\r\nHost: a\r\nContent-Type: application/json\r\n" + header
                    + "\r\n\r\n" + (header.contains("chunked") ? "0\r\n\r\n" : "")
                    + "GET /v1/solids/cube HTTP/1.1\r\nHost: a\r\n\r\n";
            socket.getOutputStream().write(request.getBytes(StandardCharsets.US_ASCII));
            String answer = new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
            assertTrue(answer.startsWith("HTTP/1.1 400 "), answer);
            assertTrue(answer.contains("application/problem+json"), answer);
            assertTrue(answer.contains("is not understood"), answer);
            assertEquals(answer.indexOf("HTTP/1.1"), answer.lastIndexOf("HTTP/1.1"), answer);
        }
    }
}
