package org.orbwright.api.guard;

import java.io.IOException;
import java.net.HttpURLConnection;
import java.net.InetAddress;
import java.net.Socket;
import java.net.URI;
import java.security.GeneralSecurityException;
import java.security.cert.X509Certificate;
import java.time.Duration;
import javax.net.ssl.HttpsURLConnection;
import javax.net.ssl.SSLContext;
import javax.net.ssl.SSLEngine;
import javax.net.ssl.TrustManager;
import javax.net.ssl.X509ExtendedTrustManager;

/**
 * Asks a running service whether it is well, for containers without a shell or another program that could: the exit
 * code is 0 if the address in the environment variable {@code ORBWRIGHT_HEALTH}, or {@value #ADDRESS} without it,
 * answers with 200 within five seconds, otherwise 1. At an address of this machine alone (loopback) any certificate is
 * taken, as nobody can stand between, and it is made out to another name. It stands alone, without the service's start.
 */
final class HealthCheck {
    private static final String ADDRESS = "http://127.0.0.1:8080/q/health/live";
    private static final int PATIENCE = Math.toIntExact(Duration.ofSeconds(5).toMillis());

    private HealthCheck() {}

    /** Ends the program with the exit code. */
    public static void main(String... arguments) {
        String address = System.getenv().getOrDefault("ORBWRIGHT_HEALTH", ADDRESS);
        System.exit(isWell(URI.create(address)) ? 0 : 1);
    }

    static boolean isWell(URI address) {
        try {
            HttpURLConnection connection = (HttpURLConnection) address.toURL().openConnection();
            connection.setConnectTimeout(PATIENCE);
            connection.setReadTimeout(PATIENCE);
            if (connection instanceof HttpsURLConnection encrypted
                    && InetAddress.getByName(address.getHost()).isLoopbackAddress()) {
                takeAnyCertificate(encrypted);
            }
            return connection.getResponseCode() == HttpURLConnection.HTTP_OK;
        } catch (IOException | GeneralSecurityException e) {
            return false;
        }
    }

    private static void takeAnyCertificate(HttpsURLConnection connection) throws GeneralSecurityException {
        SSLContext context = SSLContext.getInstance("TLS");
        context.init(null, new TrustManager[] {new AnyCertificate()}, null);
        connection.setSSLSocketFactory(context.getSocketFactory());
        connection.setHostnameVerifier((name, session) -> true);
    }

    private static final class AnyCertificate extends X509ExtendedTrustManager {
        @Override
        public void checkServerTrusted(X509Certificate[] chain, String type) {}

        @Override
        public void checkServerTrusted(X509Certificate[] chain, String type, Socket socket) {}

        @Override
        public void checkServerTrusted(X509Certificate[] chain, String type, SSLEngine engine) {}

        @Override
        public void checkClientTrusted(X509Certificate[] chain, String type) {}

        @Override
        public void checkClientTrusted(X509Certificate[] chain, String type, Socket socket) {}

        @Override
        public void checkClientTrusted(X509Certificate[] chain, String type, SSLEngine engine) {}

        @Override
        public X509Certificate[] getAcceptedIssuers() {
            return new X509Certificate[0];
        }
    }
}
