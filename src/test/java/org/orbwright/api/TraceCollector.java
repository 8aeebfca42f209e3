package org.orbwright.api;

import com.sun.net.httpserver.HttpServer;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.util.Queue;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.zip.GZIPInputStream;

/**
 * A collector of traces as far as a service needs one: takes what is posted (OpenTelemetry Protocol 1.x over HTTP) and
 * hands it all out again.
 */
final class TraceCollector {
    private final Queue<byte[]> received = new ConcurrentLinkedQueue<>();
    private final HttpServer server;

    TraceCollector() {
        try {
            server = HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 0);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        server.createContext("/v1/traces", exchange -> {
            byte[] body = exchange.getRequestBody().readAllBytes();
            boolean packed = "gzip".equals(exchange.getRequestHeaders().getFirst("Content-Encoding"));
            received.add(packed ? new GZIPInputStream(new ByteArrayInputStream(body)).readAllBytes() : body);
            exchange.sendResponseHeaders(200, -1);
            exchange.close();
        });
        server.createContext("/received", exchange -> {
            exchange.sendResponseHeaders(200, 0);
            for (byte[] message : received) {
                exchange.getResponseBody().write(message);
            }
            exchange.close();
        });
        server.start();
    }

    String address() {
        return "http://localhost:" + server.getAddress().getPort();
    }
}
