package org.orbwright.workbook;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.orbwright.cell.CellDesign;
import org.orbwright.cell.Inputs;
import org.orbwright.cell.Parameter;
import org.orbwright.design.Design;
import org.orbwright.design.DesignRequest.LaminationRequest;
import org.orbwright.fixture.Slow;
import org.orbwright.solid.Solid;
import org.orbwright.solid.SolidCatalogue;
import org.orbwright.wood.WoodSpecies;
import org.orbwright.wood.WoodTable;
import org.w3c.dom.Element;

/** The files are opened by a spreadsheet in {@code src/test/sheets}; here they are read by the JDK's ZIP and XML. */
@Slow
class WorkbookTest {
    private static final String SERVICE = "http://shop.example:8080";
    private static final String FIRST_WOOD = "white ash";

    /** Answers that differ from cell to cell: the numbers of what is asked. */
    private static final Map<String, String> ASKED = new TreeMap<>();

    private static final Map<Workbook, BookReader> BOOKS = new EnumMap<>(Workbook.class);

    private static BookReader book(Workbook workbook) {
        return BOOKS.computeIfAbsent(workbook, format -> book(format, SERVICE));
    }

    private static BookReader book(Workbook workbook, String service) {
        return new BookReader(workbook.write(new Contents(service, cell -> {
            ASKED.putIfAbsent(cell, Integer.toString(ASKED.size()));
            return ASKED.get(cell);
        })));
    }

    /** Formulas, texts and stored values alike; what lies apart is the language in which a file writes them. */
    @Test
    void bothBooksShowTheSameCellsNamesAndChoices() throws Exception {
        BookReader open = book(Workbook.OPEN_DOCUMENT);
        BookReader office = book(Workbook.OFFICE_OPEN);
        Map<String, BookReader.Cell> cells = open.cells();
        assertTrue(cells.size() > 900, () -> Integer.toString(cells.size()));
        assertEquals(cells.keySet(), office.cells().keySet());
        for (Map.Entry<String, BookReader.Cell> cell : office.cells().entrySet()) {
            assertEquals(cell.getValue(), cells.get(cell.getKey()), cell.getKey());
        }
        assertEquals(open.names(), office.names());
        assertEquals(open.choices(), office.choices());
        assertEquals(
                new TreeSet<>(List.of("faces", "sets", "solids", "units", "woods")),
                new TreeSet<>(open.choices().values()));
    }

    @Test
    void everyPartIsXmlAndEveryRelationLeadsToAPart() throws Exception {
        BookReader office = book(Workbook.OFFICE_OPEN);
        for (String part : office.parts().keySet()) {
            String folder = part.replaceFirst("_rels/[^/]*$", "");
            for (Element relation : BookReader.all(office.xml(part), "Relationship")) {
                String path = (folder + relation.getAttribute("Target")).replaceAll("[^/]+/\\.\\./", "");
                assertTrue(office.parts().containsKey(path), path);
            }
        }
        List<String> typed = BookReader.all(office.xml("[Content_Types].xml"), "Override").stream()
                .map(type -> type.getAttribute("PartName").substring(1))
                .toList();
        List<String> parts = office.parts().keySet().stream()
                .filter(part -> part.startsWith("xl/") && part.endsWith(".xml"))
                .toList();
        assertEquals(new TreeSet<>(parts), new TreeSet<>(typed));
    }

    /** ISO/IEC 26300-3:2015, 3.3, from memory: the type comes first in the archive, and is not compressed. */
    @Test
    void theOpenDocumentStartsWithItsType() throws Exception {
        byte[] file = Workbook.OPEN_DOCUMENT.write(new Contents(SERVICE, cell -> "1"));
        String head = new String(file, 0, 200, StandardCharsets.ISO_8859_1);
        assertEquals("mimetype" + Workbook.OPEN_DOCUMENT_TYPE, head.substring(30, 38 + 46));
        BookReader open = new BookReader(file);
        List<String> listed = BookReader.all(open.xml("META-INF/manifest.xml"), "manifest:file-entry").stream()
                .map(entry -> entry.getAttribute("manifest:full-path"))
                .filter(path -> !path.endsWith("/"))
                .toList();
        TreeSet<String> parts = new TreeSet<>(open.parts().keySet());
        parts.removeAll(List.of("mimetype", "META-INF/manifest.xml"));
        assertEquals(parts, new TreeSet<>(listed));
    }

    /** A text is filled in once and escaped: braces in it are no words to be filled in. */
    @ParameterizedTest
    @EnumSource
    void whatIsFilledInStaysAText(Workbook workbook) throws Exception {
        String awkward = "http://<&>\"'$1\\{{lastRow woods}}]]>";
        Map<String, BookReader.Cell> cells = book(workbook, awkward).cells();
        assertEquals(awkward, cells.get("Design!B5").value());
        assertTrue(
                cells.values().stream()
                        .filter(cell -> !cell.value().equals(awkward))
                        .noneMatch(cell -> cell.value().contains("{{")),
                cells::toString);
    }

    @ParameterizedTest
    @EnumSource
    void theListsHoldWhatTheServiceKnows(Workbook workbook) throws Exception {
        BookReader book = book(workbook);
        assertEquals(SolidCatalogue.all().stream().map(Solid::name).toList(), list(book, "solids"));
        assertEquals(List.of("mm", "in"), list(book, "units"));
        assertEquals(List.of("TWINS", "UPRIGHT", "INVERTED", "MIXED"), list(book, "sets"));
        assertEquals(WoodTable.all().stream().map(WoodSpecies::name).toList(), list(book, "woods"));
        List<String> faces = list(book, "faces");
        for (Solid solid : SolidCatalogue.all()) {
            solid.faceKinds().forEach(kind -> assertTrue(faces.contains(kind.face()), kind::face));
        }
    }

    /** What the name of a list covers, without a blank and with nothing behind it. */
    private static List<String> list(BookReader book, String name) throws Exception {
        String[] range = book.names().get(name).split("[!:]", -1);
        String column = range[1].substring(0, 1);
        int last = Integer.parseInt(range[2].substring(1));
        Map<String, BookReader.Cell> cells = book.cells();
        assertTrue(!cells.containsKey("Lists!" + column + (last + 1)), name);
        return IntStream.rangeClosed(2, last)
                .mapToObj(row -> cells.get("Lists!" + column + row).value())
                .toList();
    }

    /** The row of the first cell of a column with a text. */
    private static int row(Map<String, BookReader.Cell> cells, String column, String text) {
        return cells.entrySet().stream()
                .filter(cell -> cell.getKey().matches(column + "[0-9]+"))
                .filter(cell -> cell.getValue().value().equals(text))
                .mapToInt(cell -> Integer.parseInt(cell.getKey().substring(column.length())))
                .min()
                .orElseThrow(() -> new AssertionError(text));
    }

    /** The query that the workbook makes once these cells are filled in. */
    private String query(Map<String, String> filled) throws Exception {
        BookReader book = book(Workbook.OFFICE_OPEN);
        Map<String, BookReader.Cell> cells = book.cells();
        filled.forEach((place, text) -> cells.put("Design!" + place, new BookReader.Cell("", text, "text")));
        return FormulaReader.text(cells, book.names(), book.names().get("query"));
    }

    private Design asked(Map<String, String> filled) throws Exception {
        CellDesign.Reading reading = reading(filled);
        assertEquals(List.of(), reading.broken());
        return Design.of(reading.design());
    }

    private CellDesign.Reading reading(Map<String, String> filled) throws Exception {
        Map<Parameter, String> texts = new EnumMap<>(Parameter.class);
        for (String part : query(filled).substring(1).split("&", -1)) {
            String[] named = part.split("=", -1);
            Parameter.of(named[0])
                    .ifPresent(known -> texts.put(
                            known,
                            URLDecoder.decode(named[1], StandardCharsets.UTF_8).strip()));
        }
        return CellDesign.read(texts, Inputs.DESIGN);
    }

    private static Stream<Solid> solids() {
        return SolidCatalogue.all().stream();
    }

    /** Rows without a face kind are for all of them; with a face kind beside its first band, each has its own. */
    @ParameterizedTest
    @MethodSource("solids")
    void rowsOfBandsForEachFaceKindServeEverySolid(Solid solid) throws Exception {
        assertEquals(31, SolidCatalogue.all().size());
        Map<String, BookReader.Cell> cells = book(Workbook.OFFICE_OPEN).cells();
        int first = row(cells, "Design!B", FIRST_WOOD);
        Map<String, String> filled = new HashMap<>();
        filled.put("B" + row(cells, "Design!B", "icosahedron"), solid.name());
        filled.put("C" + first, "2");
        filled.put("C" + (first + 1), "rest");
        for (int row = first + 2; row < first + 4; row++) {
            filled.put("B" + row, "");
            filled.put("C" + row, "");
        }
        assertEquals(solid.faceKinds().size(), asked(filled).panels().size());
        for (int i = 0; i < solid.faceKinds().size(); i++) {
            int row = first + 8 * i;
            filled.put("A" + row, solid.faceKinds().get(i).face());
            filled.put("B" + row, FIRST_WOOD);
            filled.put("C" + row, Integer.toString(i + 1));
            filled.put("B" + (row + 7), "red alder");
            filled.put("C" + (row + 7), "rest");
            filled.put("B" + (row + 1), "");
            filled.put("C" + (row + 1), "");
        }
        List<LaminationRequest> laminations = asked(filled).request().laminations();
        for (int i = 0; i < laminations.size(); i++) {
            assertEquals(solid.faceKinds().get(i).face(), laminations.get(i).face());
            assertEquals(i + 1.0, laminations.get(i).bands().get(0).width());
        }
        assertEquals(solid.faceKinds().size(), laminations.size());
    }

    /** What is stored beside the formula of the query is what it gives, and so is each text on the way to it. */
    @Test
    void theStoredQueryIsWhatItsFormulasGive() throws Exception {
        BookReader book = book(Workbook.OFFICE_OPEN);
        Map<String, BookReader.Cell> cells = book.cells();
        int last = Integer.parseInt(book.names().get("query").substring("Answers!D".length()));
        for (int row = row(cells, "Answers!A", "band row 1"); row <= last; row++) {
            String place = "Answers!D" + row;
            assertEquals(
                    FormulaReader.text(cells, book.names(), place),
                    cells.get(place).value(),
                    place);
        }
        assertTrue(query(Map.of()).startsWith("?errors=text&solid=icosahedron&unit=mm&acrossFlats=212&thickness=30&"));
        assertEquals(
                FormulaReader.text(cells, book.names(), book.names().get("query")),
                cells.get(book.names().get("example")).value());
        assertEquals(4, asked(Map.of()).request().laminations().get(0).bands().size());
    }

    /** A face kind alone in its row heads the rows below it; without a wood below it, it is refused and not dropped. */
    @Test
    void aFaceKindMayStandAboveItsBands() throws Exception {
        Map<String, BookReader.Cell> cells = book(Workbook.OFFICE_OPEN).cells();
        int first = row(cells, "Design!B", FIRST_WOOD);
        Map<String, String> filled = new HashMap<>();
        filled.put("B" + row(cells, "Design!B", "icosahedron"), "cuboctahedron");
        List<List<String>> rows = List.of(
                List.of("square", "", ""),
                List.of("", "red alder", "4"),
                List.of("", FIRST_WOOD, "rest"),
                List.of("Triangle", "", ""),
                List.of("", FIRST_WOOD, "rest"));
        for (int i = 0; i < rows.size(); i++) {
            for (int column = 0; column < 3; column++) {
                filled.put(
                        (char) ('A' + column) + Integer.toString(first + i),
                        rows.get(i).get(column));
            }
        }
        List<LaminationRequest> laminations = asked(filled).request().laminations();
        assertEquals(
                List.of("square", "triangle"),
                laminations.stream().map(LaminationRequest::face).toList());
        assertEquals(2, laminations.get(0).bands().size());
        filled.put("A" + (first + 9), "square");
        assertEquals(
                List.of("bands names no wood in"),
                reading(filled).broken().stream()
                        .map(violation -> violation.message().replaceAll(" in .*", " in"))
                        .toList());
    }

    /**
     * Else a spreadsheet takes 1/8 for a day. Format 49 is that for texts (ISO/IEC 29500-1:2016, 18.8.30); OpenDocument
     * has a style for them (ISO/IEC 26300-1:2015, number:text-style). Both from memory.
     */
    @Test
    void whatIsFilledInByAUserIsAText() throws Exception {
        BookReader office = book(Workbook.OFFICE_OPEN);
        List<Element> formats = BookReader.all(
                BookReader.all(office.xml("xl/styles.xml"), "cellXfs").get(0), "xf");
        List<String> texts = BookReader.all(office.xml("xl/worksheets/sheet1.xml"), "c").stream()
                .filter(cell -> formats.get(Integer.parseInt(cell.getAttribute("s")))
                        .getAttribute("numFmtId")
                        .equals("49"))
                .map(cell -> cell.getAttribute("r"))
                .toList();
        assertTrue(texts.containsAll(List.of("B5", "B8", "B23")), texts::toString);
        assertTrue(texts.containsAll(office.choices().keySet()), texts::toString);
        BookReader open = book(Workbook.OPEN_DOCUMENT);
        List<Element> inputs = BookReader.all(open.xml("styles.xml"), "style:style").stream()
                .filter(style -> !style.getAttribute("style:data-style-name").isEmpty())
                .toList();
        assertEquals(1, inputs.size());
        assertEquals("input", inputs.get(0).getAttribute("style:name"));
        assertEquals(
                office.choices().size(),
                BookReader.all(open.xml("content.xml"), "table:table-cell").stream()
                        .filter(cell -> !cell.getAttribute("table:content-validation-name")
                                .isEmpty())
                        .filter(cell -> cell.getAttribute("table:style-name").equals("input"))
                        .count());
    }

    @ParameterizedTest
    @EnumSource
    void theSameContentsGiveTheSameBytes(Workbook workbook) {
        Contents contents = new Contents(SERVICE, cell -> "1");
        assertArrayEquals(workbook.write(contents), workbook.write(contents));
    }
}
