package org.orbwright.container;

import java.io.BufferedReader;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The rehearsal from which the Java machine learns what to have ready at the start (the AOT cache): starts the service
 * by the command that is its arguments, sends it the worked designs, and ends it as a container is ended. Every answer
 * has to be 200. What is rehearsed takes memory in every service from its start on, so pictures, paper and plans, which
 * not all of them are asked for, have no part in it. Run from the project's folder, as {@code java Rehearsal.java
 * COMMAND...}.
 */
final class Rehearsal {
    private static final Path DESIGNS = Path.of("src/main/resources/designs");
    private static final List<String> ANSWERS = List.of("sheet", "angles", "segments", "yield", "sphere", "bands");
    private static final List<String> PAGES =
            List.of("/q/health", "/q/metrics", "/q/openapi", "/v1/solids", "/v1/designs", "/v1/woods");
    private static final Pattern LISTENING = Pattern.compile("Listening on: (http://\\S+)");

    private final HttpClient client = HttpClient.newHttpClient();
    private final String service;

    private Rehearsal(String service) {
        this.service = service;
    }

    /** Ends with an exception if anything is not answered as it should be. */
    public static void main(String... command) throws IOException, InterruptedException {
        Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
        try (BufferedReader log = process.inputReader()) {
            new Rehearsal(address(log)).play();
            // Not by the process itself, which would close its log too.
            process.toHandle().destroy();
            log.lines().forEach(System.out::println);
        } finally {
            if (!process.waitFor(5, TimeUnit.MINUTES)) {
                process.destroyForcibly();
            }
        }
    }

    private static String address(BufferedReader log) throws IOException {
        for (String line = log.readLine(); line != null; line = log.readLine()) {
            System.out.println(line);
            Matcher listening = LISTENING.matcher(line);
            if (listening.find()) {
                return listening.group(1);
            }
        }
        throw new IOException("The service ended before it listened.");
    }

    private void play() throws IOException, InterruptedException {
        for (String page : PAGES) {
            ask(HttpRequest.newBuilder(URI.create(service + page)));
        }
        for (String design : designs()) {
            for (String answer : ANSWERS) {
                post("/v1/" + answer, design);
            }
        }
    }

    /** In the order of their names, as folders have none. */
    private static List<String> designs() throws IOException {
        List<Path> files = new ArrayList<>();
        try (DirectoryStream<Path> entries = Files.newDirectoryStream(DESIGNS, "*.json")) {
            entries.forEach(files::add);
        }
        files.sort(null);
        List<String> designs = new ArrayList<>();
        for (Path file : files) {
            designs.add(Files.readString(file));
        }
        return designs;
    }

    private void post(String path, String body) throws IOException, InterruptedException {
        ask(HttpRequest.newBuilder(URI.create(service + path))
                .header("Content-Type", "application/json")
                .header("Accept", "application/json")
                .POST(HttpRequest.BodyPublishers.ofString(body)));
    }

    private void ask(HttpRequest.Builder builder) throws IOException, InterruptedException {
        HttpRequest request = builder.build();
        HttpResponse<byte[]> answer = client.send(request, HttpResponse.BodyHandlers.ofByteArray());
        if (answer.statusCode() != 200) {
            throw new IOException(
                    request.uri() + " answered " + answer.statusCode() + ": " + new String(answer.body()));
        }
    }
}
