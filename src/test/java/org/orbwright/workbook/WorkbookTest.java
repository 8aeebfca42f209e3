package org.orbwright.workbook;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.orbwright.cell.CellDesign;
import org.orbwright.cell.Needs;
import org.orbwright.cell.Parameter;
import org.orbwright.design.Design;
import org.orbwright.design.DesignRequest.LaminationRequest;
import org.orbwright.solid.Solid;
import org.orbwright.solid.SolidCatalogue;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/** The files are opened by a spreadsheet in {@code src/test/sheets}; here they are read by the JDK's ZIP and XML. */
class WorkbookTest {
    private static final String SERVICE = "http://shop.example:8080";

    private static Map<String, byte[]> parts(byte[] file) throws IOException {
        Map<String, byte[]> parts = new LinkedHashMap<>();
        try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(file))) {
            for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
                parts.put(entry.getName(), zip.readAllBytes());
            }
        }
        return parts;
    }

    private static Document xml(byte[] part) throws Exception {
        DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
        factory.setNamespaceAware(true);
        return factory.newDocumentBuilder().parse(new ByteArrayInputStream(part));
    }

    /** A workbook with what XML has to escape. */
    private static final Book AWKWARD = new Book(List.of(new Book.Page(
            "Sheet",
            List.of(20, 30),
            List.of(List.of(
                    Book.Content.text("<&>\"'", Book.Look.TITLE),
                    Book.Content.number(1e-7, Book.Look.INPUT),
                    Book.Content.formula("IF({A1}=\"a;b\";@ENCODEURL({Sheet!B1});\"&\")", Book.Look.NOTE))),
            null)));

    /** From memory: ISO/IEC 26300-2:2015 has references in brackets and semicolons, ISO/IEC 29500:2016 commas. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "{B4}&\"a;b\" | of:=[.$B$4]&\"a;b\" | $B$4&\"a;b\"",
                "SUM({A1:B2};{Design!C3}) | of:=SUM([.$A$1:.$B$2];[$Design.$C$3]) | SUM($A$1:$B$2,Design!$C$3)",
                "@WEBSERVICE({Design!B3}) | of:=COM.MICROSOFT.WEBSERVICE([$Design.$B$3]) |"
                        + " _xlfn.WEBSERVICE(Design!$B$3)",
                "@NUMBERVALUE({A1};\".\";\",\") | of:=NUMBERVALUE([.$A$1];\".\";\",\") |"
                        + " _xlfn.NUMBERVALUE($A$1,\".\",\",\")",
            })
    void aFormulaIsWrittenInBothWays(String formula, String openDocument, String officeOpen) {
        assertEquals(openDocument, Formula.openDocument(formula));
        assertEquals(officeOpen, Formula.officeOpen(formula));
    }

    @Test
    void everyPartIsXmlAndEveryRelationLeadsToAPart() throws Exception {
        Map<String, byte[]> parts = parts(OfficeOpenWriter.write(DesignBook.of(SERVICE)));
        for (Map.Entry<String, byte[]> part : parts.entrySet()) {
            NodeList relations = xml(part.getValue()).getElementsByTagName("Relationship");
            String folder = part.getKey().replaceFirst("_rels/[^/]*$", "");
            for (int i = 0; i < relations.getLength(); i++) {
                String target = folder + ((Element) relations.item(i)).getAttribute("Target");
                String path = target.replaceAll("[^/]+/\\.\\./", "");
                assertTrue(parts.containsKey(path), path);
            }
        }
        NodeList types = xml(parts.get("[Content_Types].xml")).getElementsByTagName("Override");
        for (int i = 0; i < types.getLength(); i++) {
            String name = ((Element) types.item(i)).getAttribute("PartName").substring(1);
            assertTrue(parts.containsKey(name), name);
        }
        assertEquals(6, types.getLength() - 1);
    }

    /** ISO/IEC 26300-3:2015, 3.3, from memory: the type comes first in the archive, and is not compressed. */
    @Test
    void theOpenDocumentStartsWithItsType() throws Exception {
        byte[] file = OpenDocumentWriter.write(DesignBook.of(SERVICE));
        String head = new String(file, 0, 200, StandardCharsets.ISO_8859_1);
        assertEquals("mimetype" + OpenDocumentWriter.MEDIA_TYPE, head.substring(30, 38 + 46));
        Map<String, byte[]> parts = parts(file);
        NodeList entries = xml(parts.get("META-INF/manifest.xml")).getElementsByTagName("manifest:file-entry");
        for (int i = 0; i < entries.getLength(); i++) {
            String path = ((Element) entries.item(i)).getAttribute("manifest:full-path");
            assertTrue(path.endsWith("/") || parts.containsKey(path), path);
        }
        for (Map.Entry<String, byte[]> part : parts.entrySet()) {
            if (part.getKey().endsWith(".xml")) {
                xml(part.getValue());
            }
        }
    }

    @Test
    void theBookAsksTheServiceThatItCameFrom() throws Exception {
        String open = new String(
                parts(OpenDocumentWriter.write(DesignBook.of(SERVICE))).get("content.xml"), StandardCharsets.UTF_8);
        String office = new String(
                parts(OfficeOpenWriter.write(DesignBook.of(SERVICE))).get("xl/worksheets/sheet1.xml"),
                StandardCharsets.UTF_8);
        assertTrue(open.contains(">" + SERVICE + "<"));
        assertTrue(office.contains(">" + SERVICE + "<"));
        assertFalse(open.contains("localhost"));
    }

    /** The query that the sheet Design makes once these cells are filled in. */
    private static String query(Map<String, String> filled) {
        List<List<Book.Content>> rows = DesignBook.of(SERVICE).sheets().get(0).rows();
        Book.Content query = rows.stream()
                .filter(row -> row.size() > 1 && row.get(1).kind() == Book.Kind.FORMULA)
                .findFirst()
                .orElseThrow()
                .get(1);
        return FormulaReader.text(query.value(), reference -> {
            List<Book.Content> row = rows.get(Integer.parseInt(reference.substring(1)) - 1);
            Book.Content cell = row.get(reference.charAt(0) - 'A');
            assertEquals(Book.Look.INPUT, cell.look(), reference);
            return filled.getOrDefault(reference, cell.value());
        });
    }

    private static int row(String heading) {
        List<List<Book.Content>> rows = DesignBook.of(SERVICE).sheets().get(0).rows();
        for (int i = 0; i < rows.size(); i++) {
            if (!rows.get(i).isEmpty() && rows.get(i).get(0).value().equals(heading)) {
                return i + 1;
            }
        }
        throw new AssertionError(heading);
    }

    private static Design asked(Map<String, String> filled) {
        Map<Parameter, String> texts = new EnumMap<>(Parameter.class);
        for (String part : query(filled).substring(1).split("&", -1)) {
            String[] named = part.split("=", -1);
            Parameter.of(named[0])
                    .ifPresent(known -> texts.put(
                            known,
                            URLDecoder.decode(named[1], StandardCharsets.UTF_8).strip()));
        }
        CellDesign.Reading reading = CellDesign.read(texts, Needs.DESIGN);
        assertEquals(List.of(), reading.broken());
        return Design.of(reading.design());
    }

    private static Stream<Solid> solids() {
        return SolidCatalogue.all().stream();
    }

    /** The first row serves all face kinds; with a row for each, each has its own bands. */
    @ParameterizedTest
    @MethodSource("solids")
    void aRowOfBandsForEachFaceKindServesEverySolid(Solid solid) {
        assertEquals(31, SolidCatalogue.all().size());
        int first = row("Face kind") + 1;
        Map<String, String> filled = new HashMap<>();
        filled.put("B" + row("solid"), solid.name());
        filled.put("B" + first, "white ash 2; red alder rest");
        assertEquals(solid.faceKinds().size(), asked(filled).panels().size());
        for (int i = 0; i < solid.faceKinds().size(); i++) {
            filled.put("A" + (first + i), solid.faceKinds().get(i).face());
            filled.put("B" + (first + i), "white ash " + (i + 1) + "; red alder rest");
        }
        List<LaminationRequest> laminations = asked(filled).request().laminations();
        for (int i = 0; i < laminations.size(); i++) {
            assertEquals(solid.faceKinds().get(i).face(), laminations.get(i).face());
            assertEquals(i + 1.0, laminations.get(i).bands().get(0).width());
        }
        assertEquals(solid.faceKinds().size(), laminations.size());
    }

    /** A cell that is not of one face kind takes no face. */
    @Test
    void theOtherSheetsSendTheQueryAndTheFaceKindThatIsShown() {
        String query = "{Design!B" + row("The query that the other sheets send") + "}";
        String face = "{Design!B" + row("Face kind that the other sheets show") + "}";
        List<String> fetched = DesignBook.of(SERVICE).sheets().stream()
                .flatMap(page -> page.rows().stream().flatMap(List::stream))
                .map(Book.Content::value)
                .filter(value -> value.contains("@WEBSERVICE("))
                .toList();
        assertTrue(fetched.stream().allMatch(value -> value.contains(query)), fetched::toString);
        for (String cell : List.of("blade-tilt", "survival", "sphere-mass", "severity")) {
            List<String> asked = fetched.stream()
                    .filter(value -> value.contains("/v1/cell/" + cell + "\""))
                    .toList();
            boolean chosen = cell.equals("blade-tilt") || cell.equals("survival");
            assertEquals(cell.equals("survival") ? 8 : 1, asked.size());
            assertTrue(asked.stream().allMatch(value -> value.contains(face) == chosen), asked::toString);
        }
    }

    @Test
    void theQueryOfTheUntouchedWorkbookIsThatOfItsDesign() {
        assertEquals(4, asked(Map.of()).request().laminations().get(0).bands().size());
        assertTrue(query(Map.of()).startsWith("?errors=text&solid=icosahedron&unit=mm&acrossFlats=212&thickness=30&"));
    }

    @Test
    void textsAreEscapedAndNumbersHaveNoExponent() throws Exception {
        Document open = xml(parts(OpenDocumentWriter.write(AWKWARD)).get("content.xml"));
        assertEquals("<&>\"'", open.getElementsByTagName("text:p").item(0).getTextContent());
        Document office = xml(parts(OfficeOpenWriter.write(AWKWARD)).get("xl/worksheets/sheet1.xml"));
        assertEquals("<&>\"'", office.getElementsByTagName("t").item(0).getTextContent());
        assertEquals("0.00000010", office.getElementsByTagName("v").item(0).getTextContent());
        assertEquals(
                "IF($A$1=\"a;b\",_xlfn.ENCODEURL(Sheet!$B$1),\"&\")",
                office.getElementsByTagName("f").item(0).getTextContent());
    }

    /**
     * Else a spreadsheet takes 1/8 for a day. Format 49 is that for texts (ISO/IEC 29500-1:2016, 18.8.30); OpenDocument
     * has a style for them (ISO/IEC 26300-1:2015, number:text-style). Both from memory.
     */
    @Test
    void whatIsFilledInIsAText() throws Exception {
        Document formats = xml(parts(OfficeOpenWriter.write(AWKWARD)).get("xl/styles.xml"));
        Element cells = (Element) formats.getElementsByTagName("cellXfs").item(0);
        Document office = xml(parts(OfficeOpenWriter.write(AWKWARD)).get("xl/worksheets/sheet1.xml"));
        Element input = (Element) office.getElementsByTagName("c").item(1);
        Element format = (Element) cells.getElementsByTagName("xf").item(Integer.parseInt(input.getAttribute("s")));
        assertEquals("49", format.getAttribute("numFmtId"));
        Document open = xml(parts(OpenDocumentWriter.write(AWKWARD)).get("content.xml"));
        String texts = ((Element) open.getElementsByTagName("number:text-style").item(0)).getAttribute("style:name");
        String look =
                ((Element) open.getElementsByTagName("table:table-cell").item(1)).getAttribute("table:style-name");
        NodeList styles = open.getElementsByTagName("style:style");
        for (int i = 0; i < styles.getLength(); i++) {
            Element style = (Element) styles.item(i);
            assertEquals(
                    style.getAttribute("style:name").equals(look) ? texts : "",
                    style.getAttribute("style:data-style-name"));
        }
    }

    @Test
    void theSameBookGivesTheSameBytes() {
        assertArrayEquals(
                OpenDocumentWriter.write(DesignBook.of(SERVICE)), OpenDocumentWriter.write(DesignBook.of(SERVICE)));
        assertArrayEquals(
                OfficeOpenWriter.write(DesignBook.of(SERVICE)), OfficeOpenWriter.write(DesignBook.of(SERVICE)));
    }
}
