package org.orbwright.api;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/** A request whose body is sent piece by piece (RFC 9112, 7.1), for what an ordinary client does not do. */
final class Chunked {
    private final OutputStream out;

    /**
     * Sends the head.
     *
     * @param out the connection
     * @param path where to
     * @param type media type of the body
     * @param headers further lines of the head
     */
    Chunked(OutputStream out, String path, String type, String... headers) throws IOException {
        this.out = out;
        List<String> head = new ArrayList<>(List.of("POST " + path + " HTTP/1.1", "Host: localhost"));
        head.addAll(List.of(headers));
        head.addAll(List.of("Content-Type: " + type, "Transfer-Encoding: chunked", "", ""));
        out.write(String.join("\r\n", head).getBytes(StandardCharsets.US_ASCII));
    }

    /** Sends a piece. */
    void send(String text) throws IOException {
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
        out.write((Integer.toHexString(bytes.length) + "\r\n").getBytes(StandardCharsets.US_ASCII));
        out.write(bytes);
        out.write("\r\n".getBytes(StandardCharsets.US_ASCII));
        out.flush();
    }

    /** Says that nothing more comes. */
    void end() throws IOException {
        out.write("0\r\n\r\n".getBytes(StandardCharsets.US_ASCII));
        out.flush();
    }
}
