package org.orbwright.api;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonParser;
import io.quarkus.runtime.QuarkusApplication;
import io.quarkus.vertx.http.HttpServer;
import java.io.File;
import java.io.IOException;
import java.io.PrintStream;
import java.io.StringWriter;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.Optional;

/**
 * The command {@code print-sheet FILE_OR_NAME}: starts the service on a free port of this machine only, posts the
 * design to it as any client would, prints the sheet and ends. The exit code is 0 for a sheet and 1 for a problem.
 */
public final class PrintSheet implements QuarkusApplication {
    private final HttpServer server;

    PrintSheet(HttpServer server) {
        this.server = server;
    }

    /** Chooses a free port and keeps the log out of the sheet; has to come before the service starts. */
    static void prepare() {
        System.setProperty("quarkus.http.host", "127.0.0.1");
        System.setProperty("quarkus.http.port", "0");
        System.setProperty("quarkus.log.level", "WARN");
        Main.endAtOnce();
    }

    @Override
    public int run(String... arguments) throws IOException, InterruptedException {
        String names = String.join(", ", DesignLibrary.all().keySet());
        if (arguments.length != 2 || !arguments[0].equals("print-sheet")) {
            System.err.println("Usage: print-sheet FILE_OR_NAME (a file with a design, or one of: " + names + ")");
            return 1;
        }
        Optional<byte[]> design;
        try {
            design = design(arguments[1]);
        } catch (IOException e) {
            System.err.println("The file " + arguments[1] + " cannot be read.");
            return 1;
        }
        if (design.isEmpty()) {
            System.err.println("There is no file or worked design named " + arguments[1] + ". The worked designs are: "
                    + names + ".");
            return 1;
        }
        HttpResponse<String> answer = post(design.get());
        PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
        out.println(indented(answer.body()));
        return answer.statusCode() == 200 ? 0 : 1;
    }

    /** The design's bytes as they are: whether they are JSON is for the service to say. */
    private static Optional<byte[]> design(String fileOrName) throws IOException {
        File file = new File(fileOrName);
        return file.isFile()
                ? Optional.of(Files.readAllBytes(file.toPath()))
                : DesignLibrary.find(fileOrName).map(design -> design.json().getBytes(StandardCharsets.UTF_8));
    }

    private HttpResponse<String> post(byte[] design) throws IOException, InterruptedException {
        HttpRequest request = HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + server.getPort() + "/v1/sheet"))
                .header("Content-Type", "application/json")
                .POST(HttpRequest.BodyPublishers.ofByteArray(design))
                .build();
        return HttpClient.newHttpClient().send(request, HttpResponse.BodyHandlers.ofString());
    }

    /** Sets JSON out in lines, every number as it stands. */
    static String indented(String json) throws IOException {
        StringWriter text = new StringWriter();
        JsonFactory factory = new JsonFactory();
        try (JsonParser parser = factory.createParser(json);
                JsonGenerator generator = factory.createGenerator(text).useDefaultPrettyPrinter()) {
            while (parser.nextToken() != null) {
                generator.copyCurrentEventExact(parser);
            }
        }
        return text.toString();
    }
}
