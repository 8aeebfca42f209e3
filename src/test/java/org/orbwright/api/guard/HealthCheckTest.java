package org.orbwright.api.guard;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.sun.net.httpserver.HttpsConfigurator;
import com.sun.net.httpserver.HttpsServer;
import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import java.io.File;
import java.io.IOException;
import java.net.Inet4Address;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.NetworkInterface;
import java.net.ServerSocket;
import java.net.URI;
import java.nio.file.Path;
import java.security.KeyStore;
import java.util.Optional;
import javax.net.ssl.KeyManagerFactory;
import javax.net.ssl.SSLContext;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

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

    @Test
    void takesAnyCertificateOfItsOwnMachineButOfNoOther(@TempDir Path folder) throws Exception {
        Optional<InetAddress> outside = NetworkInterface.networkInterfaces()
                .flatMap(NetworkInterface::inetAddresses)
                .filter(address -> address instanceof Inet4Address && !address.isLoopbackAddress())
                .findFirst();
        HttpsServer server = HttpsServer.create(new InetSocketAddress(0), 0);
        server.setHttpsConfigurator(new HttpsConfigurator(selfSigned(folder)));
        server.createContext("/", exchange -> {
            exchange.sendResponseHeaders(200, -1);
            exchange.close();
        });
        server.start();
        try {
            int port = server.getAddress().getPort();
            assertTrue(HealthCheck.isWell(URI.create("https://127.0.0.1:" + port + "/")));
            assumeTrue(outside.isPresent(), "there is no network but this machine's own");
            assertFalse(HealthCheck.isWell(URI.create("https://" + outside.get().getHostAddress() + ":" + port + "/")));
        } finally {
            server.stop(0);
        }
    }

    /** A certificate that nobody has signed, made out to another name, by the JDK's own tool. */
    private static SSLContext selfSigned(Path folder) throws Exception {
        File store = folder.resolve("store.p12").toFile();
        String password = "changeit";
        Process keytool = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "keytool")
                                .toString(),
                        "-genkeypair",
                        "-keyalg",
                        "EC",
                        "-dname",
                        "CN=elsewhere.example",
                        "-storepass",
                        password,
                        "-keystore",
                        store.getPath())
                .inheritIO()
                .start();
        assertTrue(keytool.waitFor() == 0, "keytool makes no certificate");
        KeyManagerFactory keys = KeyManagerFactory.getInstance(KeyManagerFactory.getDefaultAlgorithm());
        keys.init(KeyStore.getInstance(store, password.toCharArray()), password.toCharArray());
        SSLContext context = SSLContext.getInstance("TLS");
        context.init(keys.getKeyManagers(), null, null);
        return context;
    }
}
