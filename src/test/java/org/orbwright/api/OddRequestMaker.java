package org.orbwright.api;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.ByteArrayOutputStream;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;

/**
 * Makes requests of every operation in the contract, each of them odd here and there: broken bytes in the body, headers
 * and parameters with odd values.
 */
final class OddRequestMaker {
    private static final List<String> TEXTS = List.of(
            "",
            " ",
            "null",
            "true",
            "-1",
            "0",
            "1",
            "2147483648",
            "1e308",
            "1e999",
            "-1e-320",
            "NaN",
            "Infinity",
            "0x10",
            "1,5",
            "1/0",
            "3 1/8",
            "-1/8in",
            "1e9 1/8mm",
            "9".repeat(400),
            "\u0000",
            "\u0663",
            "\ud83d\ude00",
            "\u00ff\ufffe",
            "\r\nX-Odd: 1",
            "a;b|c:d",
            "rest;rest",
            "sugar maple rest; sugar maple rest",
            "pentagon: sugar maple 1/4 | pentagon: beech rest",
            "<b>&amp;",
            "../../x",
            "%",
            "=1+1",
            "png",
            "svg",
            "csv",
            "text");
    private static final Map<String, List<String>> HEADERS = new TreeMap<>(Map.ofEntries(
            Map.entry(
                    "Accept",
                    List.of(
                            "*/*",
                            "application/json",
                            "application/problem+json",
                            "application/*",
                            "image/png",
                            "image/svg+xml;q=0.1, */*;q=0.2",
                            "text/csv",
                            "text/html",
                            "application/xml",
                            "application/json;q=x",
                            "application/json;q=0",
                            "application/json;charset=utf-7",
                            "application/json;x=\"",
                            "nonsense",
                            "a/b/c",
                            "*/",
                            "/",
                            ";",
                            ",",
                            "*/json",
                            "",
                            "a/b,".repeat(500))),
            Map.entry(
                    "Content-Type",
                    List.of(
                            "application/json",
                            "application/json;charset=utf-8",
                            "application/json;charset=utf-16",
                            "application/json;charset=nonsense",
                            "application/json;charset=",
                            "application/json, text/plain",
                            "application/problem+json",
                            "application/x-ndjson",
                            "application/x-www-form-urlencoded",
                            "multipart/form-data",
                            "multipart/form-data;boundary=",
                            "text/plain",
                            "application/",
                            "*/*",
                            "nonsense",
                            ";",
                            "")),
            Map.entry("Content-Encoding", List.of("gzip", "nonsense")),
            Map.entry("Accept-Encoding", List.of("gzip", "identity;q=0", "br;q=x", "*;q=0", "")),
            Map.entry("Accept-Charset", List.of("utf-16", "nonsense;q=x")),
            Map.entry("Accept-Language", List.of("de", "x;q=9", "-")),
            Map.entry("If-None-Match", List.of("*", "W/\"\"", "nonsense", "\"")),
            Map.entry("If-Modified-Since", List.of("yesterday", "Thu, 01 Jan 1970 00:00:00 GMT")),
            Map.entry("Range", List.of("bytes=0-1", "bytes=9-1", "nonsense")),
            Map.entry("Authorization", List.of("Basic %%%", "Basic Og==", "Bearer", "nonsense")),
            Map.entry("X-API-Key", List.of("", "odd")),
            Map.entry("X-Request-Id", List.of("", "odd id", "a".repeat(1000))),
            Map.entry("X-HTTP-Method-Override", List.of("DELETE")),
            Map.entry("X-Forwarded-For", List.of("nonsense", "::1, ")),
            Map.entry("Cookie", List.of("=;;=", "a=\"")),
            Map.entry("Origin", List.of("null", "http://odd.example"))));

    private record Kind(String method, String path, JsonNode operation) {}

    private final Random random;
    private final DesignMaker designs;
    private final List<Kind> kinds = new ArrayList<>();
    private final List<String> headerNames = List.copyOf(HEADERS.keySet());

    OddRequestMaker(JsonNode contract, Random random, DesignMaker designs) {
        this.random = random;
        this.designs = designs;
        for (Map.Entry<String, JsonNode> path : contract.path("paths").properties()) {
            for (Map.Entry<String, JsonNode> operation : path.getValue().properties()) {
                kinds.add(new Kind(operation.getKey().toUpperCase(Locale.ROOT), path.getKey(), operation.getValue()));
            }
        }
    }

    /** How many operations there are; they are taken in turn. */
    int operations() {
        return kinds.size();
    }

    /** A request of the operation with this number. */
    OddRequest make(int number) {
        Kind kind = kinds.get(number % kinds.size());
        Map<String, String> headers = new TreeMap<>();
        byte[] body = {};
        JsonNode contents = kind.operation().at("/requestBody/content");
        if (!contents.isMissingNode()) {
            String type = contents.fieldNames().next();
            headers.put("Content-Type", type);
            body = body();
        }
        for (int i = random.nextInt(3); i > 0; i--) {
            String name = headerNames.get(random.nextInt(headerNames.size()));
            headers.put(name, any(HEADERS.get(name)));
        }
        return new OddRequest(kind.method(), kind.path(), address(kind), headers, body);
    }

    private byte[] body() {
        byte[] body = designs.make().toString().getBytes(StandardCharsets.UTF_8);
        for (int i = random.nextInt(4); i > 0 && body.length > 0; i--) {
            body = broken(body);
        }
        return body;
    }

    /** Flips a bit, puts a byte in, takes some away, repeats some, or cuts the end off. */
    private byte[] broken(byte[] body) {
        int at = random.nextInt(body.length);
        int end = Math.min(body.length, at + 1 + random.nextInt(8));
        byte[] before = Arrays.copyOf(body, at);
        return switch (random.nextInt(5)) {
            case 0 -> joined(before, new byte[] {(byte) (body[at] ^ 1 << random.nextInt(8))}, after(body, at + 1));
            case 1 -> joined(before, new byte[] {(byte) random.nextInt(256)}, after(body, at));
            case 2 -> joined(before, after(body, end));
            case 3 -> joined(before, Arrays.copyOfRange(body, at, end), after(body, at));
            default -> before;
        };
    }

    private static byte[] after(byte[] body, int at) {
        return Arrays.copyOfRange(body, at, body.length);
    }

    private static byte[] joined(byte[]... parts) {
        ByteArrayOutputStream all = new ByteArrayOutputStream();
        for (byte[] part : parts) {
            all.writeBytes(part);
        }
        return all.toByteArray();
    }

    private String address(Kind kind) {
        String path = kind.path();
        StringBuilder query = new StringBuilder();
        boolean odd = random.nextInt(3) > 0;
        for (JsonNode parameter : kind.operation().path("parameters")) {
            String name = parameter.path("name").asText();
            boolean required = parameter.path("required").asBoolean();
            String usual = parameter.path("example").asText();
            boolean inPath = parameter.path("in").asText().equals("path");
            // Few operations have a part of the path to fill in, so these few go astray often enough to be counted.
            String value = odd && random.nextInt(inPath ? 2 : 6) == 0 ? any(TEXTS) : usual;
            if (inPath) {
                path = path.replace("{" + name + "}", value.isBlank() ? "odd" : encoded(value));
            } else if (required || random.nextInt(4) > 0) {
                query.append('&').append(name).append('=').append(encoded(value));
            }
        }
        if (odd && random.nextInt(10) == 0) {
            query.append('&').append(encoded(any(TEXTS))).append('=').append(encoded(any(TEXTS)));
        }
        if (odd && random.nextInt(20) == 0) {
            query.append(query);
        }
        return query.isEmpty() ? path : path + "?" + query.substring(1);
    }

    private static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8).replace("+", "%20");
    }

    private String any(List<String> texts) {
        return texts.get(random.nextInt(texts.size()));
    }
}
