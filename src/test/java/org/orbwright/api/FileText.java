package org.orbwright.api;

import com.fasterxml.jackson.databind.JsonNode;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import javax.imageio.ImageIO;
import javax.xml.parsers.DocumentBuilderFactory;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.orbwright.fixture.PngTexts;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/** What a file tells whoever opens it, read by the rules of its format alone. */
final class FileText {
    private static final int INK = 0x1c1c1c;

    private FileText() {}

    /**
     * The places in a file where its reader looks for what is wrong, each with all that stands there.
     *
     * @param type the media type
     * @param file the file
     */
    static Map<String, String> of(String type, byte[] file) throws Exception {
        String text = new String(file, StandardCharsets.UTF_8);
        return switch (type) {
            case "image/svg+xml" -> {
                Element svg = xml(file);
                yield Map.of("letters", texts(svg, "text"), "description", texts(svg, "desc"));
            }
            case "image/png" -> Map.of("description", PngTexts.of(file).get("Description"));
            case "image/vnd.dxf" -> {
                List<String> lines = text.lines().toList();
                yield Map.of("comments", groups(lines, i -> code(lines, i) == 999), "texts", dxfTexts(lines));
            }
            case "model/stl" -> Map.of("header", header(file));
            case "model/obj" ->
                Map.of(
                        "comments",
                        String.join(
                                "\n",
                                text.lines()
                                        .filter(line -> line.startsWith("#"))
                                        .toList()));
            case "model/3mf" -> Map.of("metadata", texts(xml(model(file)), "metadata"));
            case "model/gltf-binary" -> {
                int length =
                        ByteBuffer.wrap(file).order(ByteOrder.LITTLE_ENDIAN).getInt(12);
                JsonNode asset = Contract.json(new String(file, 20, length, StandardCharsets.UTF_8))
                        .path("asset");
                List<String> notices = new ArrayList<>();
                asset.at("/extras/notices").forEach(notice -> notices.add(notice.asText()));
                yield Map.of("notices", String.join(" ", notices));
            }
            case "text/csv" -> Map.of("lines", csv(text));
            case "application/xml" -> Map.of("elements", texts(xml(file), "stop"));
            case "application/x-ndjson" -> Map.of("lines", ndjson(text));
            case "application/pdf" -> pdf(file);
            case "application/zip" -> archive(file);
            case "text/html" -> Map.of("page", texts(xml(file), "body").replaceAll("\\s+", " "));
            case "text/plain" ->
                // A comment within brackets has square ones inside.
                Map.of("text", text.replace(")\n(...", "").replace('[', '(').replace(']', ')'));
            default -> throw new AssertionError("nobody here reads " + type);
        };
    }

    private static Element xml(byte[] file) throws Exception {
        DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
        factory.setFeature("http://apache.org/xml/features/nonvalidating/load-external-dtd", false);
        return factory.newDocumentBuilder()
                .parse(new ByteArrayInputStream(file))
                .getDocumentElement();
    }

    /** The content of the elements of a name, and of their attribute {@code code}. */
    private static String texts(Element root, String name) {
        NodeList found = root.getElementsByTagName(name);
        List<String> texts = new ArrayList<>();
        for (int i = 0; i < found.getLength(); i++) {
            Element element = (Element) found.item(i);
            String code = element.getAttribute("code");
            texts.add((name.equals("stop") ? "STOP " + code + ": " : "") + element.getTextContent());
        }
        return String.join(" ", texts);
    }

    private static int code(List<String> lines, int at) {
        return Integer.parseInt(lines.get(at).strip());
    }

    /** The values of the groups that are wanted; a file is groups of a code and a value, a line each. */
    private static String groups(List<String> lines, Predicate<Integer> wanted) {
        List<String> values = new ArrayList<>();
        for (int i = 0; i < lines.size(); i += 2) {
            if (wanted.test(i)) {
                values.add(lines.get(i + 1));
            }
        }
        return String.join(" ", values);
    }

    /** What stands in the entities TEXT on the layer NOTE. */
    private static String dxfTexts(List<String> lines) {
        String[] entity = {"", ""};
        return groups(lines, i -> {
            if (code(lines, i) == 0) {
                entity[0] = lines.get(i + 1);
            } else if (code(lines, i) == 8) {
                entity[1] = lines.get(i + 1);
            }
            return code(lines, i) == 1 && entity[0].equals("TEXT") && entity[1].equals("NOTE");
        });
    }

    private static String header(byte[] stl) {
        String header = new String(stl, 0, 80, StandardCharsets.US_ASCII).replace("\0", "");
        if (header.startsWith("solid")) {
            throw new AssertionError("taken for a file of text: " + header);
        }
        return header;
    }

    /** The types of files in an archive by how their names end; a posted document has no place for what is wrong. */
    private static final Map<String, String> TYPES = Map.of(
            "svg", "image/svg+xml",
            "dxf", "image/vnd.dxf",
            "stl", "model/stl",
            "3mf", "model/3mf",
            "glb", "model/gltf-binary",
            "csv", "text/csv",
            "pdf", "application/pdf",
            "html", "text/html",
            "nc", "text/plain");

    private static Map<String, String> archive(byte[] file) throws Exception {
        Map<String, String> told = new LinkedHashMap<>();
        for (Map.Entry<String, byte[]> entry : entries(file).entrySet()) {
            String name = entry.getKey();
            if (name.equals("build.json")) {
                told.put(
                        name,
                        ndjson("{\"sheet\":" + new String(entry.getValue(), StandardCharsets.UTF_8).replace('\n', ' ')
                                + "}"));
            } else if (!name.equals("design.json")) {
                Map<String, String> places = of(TYPES.get(name.substring(name.lastIndexOf('.') + 1)), entry.getValue());
                places.forEach((place, words) -> {
                    // A file for a laser has no letters: they would be cut.
                    if (!(name.endsWith("-cut.svg") && place.equals("letters"))) {
                        told.put(name + " " + place, words);
                    }
                });
            }
        }
        return told;
    }

    /** The files of an archive by their names, in their order. */
    static Map<String, byte[]> entries(byte[] file) throws IOException {
        Map<String, byte[]> entries = new LinkedHashMap<>();
        try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(file))) {
            for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
                entries.put(entry.getName(), zip.readAllBytes());
            }
        }
        return entries;
    }

    private static byte[] model(byte[] file) throws IOException {
        try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(file))) {
            for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
                if (entry.getName().endsWith(".model")) {
                    return zip.readAllBytes();
                }
            }
        }
        throw new AssertionError("no model");
    }

    /** The lines before the heading, or the column of a sweep. */
    private static String csv(String text) {
        List<List<String>> rows = CsvReader.read(text);
        List<String> told = new ArrayList<>();
        int heading = 0;
        while (rows.get(heading).get(0).equals("STOP")) {
            told.add("STOP " + rows.get(heading).get(1) + ": "
                    + rows.get(heading).get(2));
            heading++;
        }
        int stops = rows.get(heading).indexOf("stops");
        for (List<String> row : rows.subList(heading + 1, rows.size())) {
            if (stops >= 0 && !row.get(stops).isEmpty()) {
                told.add("STOP " + row.get(stops));
            }
        }
        return String.join(" ", told);
    }

    private static String ndjson(String text) {
        List<String> told = new ArrayList<>();
        text.lines().map(Contract::json).forEach(line -> {
            line.path("stops").forEach(code -> told.add("STOP " + code.asText()));
            for (JsonNode finding : line.at("/sheet/findings")) {
                told.add(finding.path("severity").asText() + " "
                        + finding.path("code").asText() + ": "
                        + finding.path("message").asText());
            }
        });
        return String.join(" ", told);
    }

    /** The first page, and what every page has in common, for templates leave the sheet. */
    private static Map<String, String> pdf(byte[] file) throws IOException {
        try (PDDocument document = Loader.loadPDF(file)) {
            PDFTextStripper reader = new PDFTextStripper();
            boolean all = true;
            String first = "";
            for (int page = document.getNumberOfPages(); page >= 1; page--) {
                reader.setStartPage(page);
                reader.setEndPage(page);
                first = reader.getText(document).replaceAll("\\s+", " ");
                all &= first.contains("STOP, do not cut this: see page 1");
            }
            return Map.of("first page", first, "every page", all ? first : "");
        }
    }

    /** Whether a picture begins with a block of ink with light letters in it. */
    static boolean beginsWithInk(byte[] png) throws IOException {
        BufferedImage image = ImageIO.read(new ByteArrayInputStream(png));
        int light = 0;
        int rows = image.getWidth() / 30;
        for (int y = 2; y < rows; y++) {
            if ((image.getRGB(image.getWidth() - 3, y) & 0xffffff) != INK) {
                return false;
            }
            for (int x = 0; x < image.getWidth(); x++) {
                light += (image.getRGB(x, y) & 0xffffff) == 0xffffff ? 1 : 0;
            }
        }
        return light > rows * image.getWidth() / 50;
    }
}
