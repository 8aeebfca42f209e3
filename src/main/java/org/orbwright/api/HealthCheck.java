package org.orbwright.api;

import java.io.IOException;
import java.net.HttpURLConnection;
import java.net.URI;
import java.time.Duration;

/**
 * Asks a running service whether it is well, for containers without a shell or another program that could: the exit
 * code is 0 if the address that is its argument answers with 200 within five seconds, otherwise 1. It stands alone,
 * without the service's start.
 */
final class HealthCheck {
    private static final int PATIENCE = Math.toIntExact(Duration.ofSeconds(5).toMillis());

    private HealthCheck() {}

    /** Ends the program with the exit code. */
    public static void main(String... arguments) {
        System.exit(isWell(URI.create(arguments[0])) ? 0 : 1);
    }

    static boolean isWell(URI address) {
        try {
            HttpURLConnection connection = (HttpURLConnection) address.toURL().openConnection();
            connection.setConnectTimeout(PATIENCE);
            connection.setReadTimeout(PATIENCE);
            return connection.getResponseCode() == HttpURLConnection.HTTP_OK;
        } catch (IOException e) {
            return false;
        }
    }
}
