package org.orbwright.api;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import java.io.ByteArrayInputStream;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
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
    private static final String SHEET = "xl/worksheets/sheet%d.xml";
    private static final String SHEET_OF_ANSWERS = String.format(SHEET, 4);
    private static final int SHEETS = 5;
    private static final int COLUMNS = 4;

    private static Document part(String workbook, String name) throws Exception {
        byte[] file = Contract.request().get("/clients/" + workbook).asByteArray();
        try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(file))) {
            for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
                if (entry.getName().equals(name)) {
                    return DocumentBuilderFactory.newInstance()
                            .newDocumentBuilder()
                            .parse(new ByteArrayInputStream(zip.readAllBytes()));
                }
            }
        }
        throw new AssertionError(workbook + " has no " + name);
    }

    private static List<Element> elements(Document part, String name) {
        NodeList found = part.getElementsByTagName(name);
        return IntStream.range(0, found.getLength())
                .mapToObj(i -> (Element) found.item(i))
                .toList();
    }

    private static String stored(Element cell) {
        NodeList stored = cell.getElementsByTagName(cell.getAttribute("t").equals("inlineStr") ? "t" : "v");
        return stored.getLength() == 0 ? "" : stored.item(0).getTextContent();
    }

    /** The stored texts by their places. */
    private static Map<String, String> texts() throws Exception {
        Map<String, String> texts = new LinkedHashMap<>();
        elements(part("workbook.xlsx", SHEET_OF_ANSWERS), "c")
                .forEach(cell -> texts.put(cell.getAttribute("r"), stored(cell)));
        return texts;
    }

    private static String query(Map<String, String> texts) {
        return texts.values().stream()
                .filter(text -> text.startsWith("?errors=text") && text.contains("minimumWall"))
                .findFirst()
                .orElseThrow();
    }

    private static String answer(String address) {
        return Contract.badRequest().urlEncodingEnabled(false).get(address).asString();
    }

    @Test
    void everyStoredAnswerIsWhatTheServiceAnswers() throws Exception {
        Map<String, String> texts = texts();
        String query = query(texts);
        int row = 1;
        while (!texts.getOrDefault("A" + row, "").equals("Asked for")) {
            row++;
        }
        int first = row + 1;
        for (row = first; texts.containsKey("A" + row); row++) {
            String address = "/v1/cell/" + texts.get("A" + row) + query + texts.getOrDefault("B" + row, "");
            String answer = answer(address);
            for (int column = 2; column < COLUMNS; column++) {
                assertEquals(answer, texts.get((char) ('A' + column) + "" + row), address);
            }
        }
        assertTrue(row - first > 80, "there are few answers");
    }

    /** By these words the workbook knows that a row has no band, and leaves it empty. */
    @Test
    void theServiceTellsOfAMissingBandInTheWorkbooksWords() throws Exception {
        String place = elements(part("workbook.xlsx", "xl/workbook.xml"), "definedName").stream()
                .filter(name -> name.getAttribute("name").equals("noBand"))
                .map(name -> name.getTextContent().replace("Answers!", "").replace("$", ""))
                .findFirst()
                .orElseThrow();
        Map<String, String> texts = texts();
        String words = texts.get(place);
        assertFalse(words.isEmpty());
        String address = "/v1/cell/survival" + query(texts) + "&band=";
        assertEquals(words, answer(address + 99).substring(0, words.length()));
        assertFalse(answer(address + 1).startsWith(words));
    }

    /** A cell without a type holds a number (ISO/IEC 29500-1, 18.3.1.4, from memory); a text there breaks the file. */
    @Test
    void everyNumericCellHoldsANumber() throws Exception {
        List<String> office = new ArrayList<>();
        for (int sheet = 1; sheet <= SHEETS; sheet++) {
            elements(part("workbook.xlsx", String.format(SHEET, sheet)), "c").stream()
                    .filter(cell -> cell.getAttribute("t").isEmpty()
                            && cell.getElementsByTagName("v").getLength() > 0)
                    .forEach(cell -> office.add(stored(cell)));
        }
        List<String> open = elements(part("workbook.ods", "content.xml"), "table:table-cell").stream()
                .filter(cell -> cell.getAttribute("office:value-type").equals("float"))
                .map(cell -> cell.getAttribute("office:value"))
                .toList();
        assertEquals(open, office);
        assertTrue(open.size() > 100, () -> Integer.toString(open.size()));
        open.forEach(text -> assertTrue(text.matches("-?[0-9]+(\\.[0-9]+)?"), text));
    }
}
