package org.orbwright.api;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import java.io.ByteArrayInputStream;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/** The workbook as it is handed out: what is stored in it is what the service answers to the very address it asks. */
@QuarkusTest
class WorkbookHttpTest {
    private static final String SHEET_OF_ANSWERS = "xl/worksheets/sheet4.xml";
    private static final int COLUMNS = 4;

    private static Document answers() throws Exception {
        byte[] file = Contract.request().get("/clients/workbook.xlsx").asByteArray();
        try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(file))) {
            for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
                if (entry.getName().equals(SHEET_OF_ANSWERS)) {
                    return DocumentBuilderFactory.newInstance()
                            .newDocumentBuilder()
                            .parse(new ByteArrayInputStream(zip.readAllBytes()));
                }
            }
        }
        throw new AssertionError("no sheet of answers");
    }

    /** The stored texts by their places. */
    private static Map<String, String> texts() throws Exception {
        Map<String, String> texts = new LinkedHashMap<>();
        NodeList cells = answers().getElementsByTagName("c");
        for (int i = 0; i < cells.getLength(); i++) {
            Element cell = (Element) cells.item(i);
            NodeList stored = cell.getElementsByTagName(cell.getAttribute("t").equals("inlineStr") ? "t" : "v");
            texts.put(
                    cell.getAttribute("r"),
                    stored.getLength() == 0 ? "" : stored.item(0).getTextContent());
        }
        return texts;
    }

    @Test
    void everyStoredAnswerIsWhatTheServiceAnswers() throws Exception {
        Map<String, String> texts = texts();
        String query = texts.values().stream()
                .filter(text -> text.startsWith("?errors=text") && text.contains("minimumWall"))
                .findFirst()
                .orElseThrow();
        int row = 1;
        while (!texts.getOrDefault("A" + row, "").equals("Asked for")) {
            row++;
        }
        int first = row + 1;
        for (row = first; texts.containsKey("A" + row); row++) {
            String address = "/v1/cell/" + texts.get("A" + row) + query + texts.getOrDefault("B" + row, "");
            String answer =
                    Contract.badRequest().urlEncodingEnabled(false).get(address).asString();
            for (int column = 2; column < COLUMNS; column++) {
                assertEquals(answer, texts.get((char) ('A' + column) + "" + row), address);
            }
        }
        assertTrue(row - first > 80, "there are few answers");
    }
}
