package org.orbwright.workbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.orbwright.cell.Cell;
import org.orbwright.fixture.Slow;

/** What the workbook shows without fetching: whose answers they are, and that another design has none of them. */
@Slow
class WorkbookFallbackTest {
    private static final String NO_SUCH_BAND = "ERROR: band must be";
    private static final String ANOTHER = "7";
    private static final int EXAMPLE_BANDS = 4;

    /** What each column of the sheet Bands shows: a cell's name and the set, if it has one. */
    private static final Map<String, String> COLUMNS = Map.of(
            "B", "band-species",
            "C", "band-width",
            "E", "visible-width UPRIGHT",
            "G", "visible-width-corner UPRIGHT",
            "I", "survival UPRIGHT",
            "J", "visible-width INVERTED",
            "L", "visible-width-corner INVERTED",
            "N", "survival INVERTED");

    private static final int FIRST_BAND_ROW = 6;
    private static final int BAND_ROWS = 8;

    private static BookReader book;
    private static Map<String, BookReader.Cell> cells;
    /** Answers that differ from cell to cell: the numbers of what is asked. */
    private static final Map<String, String> ASKED = new LinkedHashMap<>();

    @BeforeAll
    static void write() throws Exception {
        byte[] file = Workbook.OFFICE_OPEN.write(new Contents("http://shop.example:8080", asked -> {
            String number = Integer.toString(ASKED.size());
            boolean known = IntStream.rangeClosed(EXAMPLE_BANDS + 1, BAND_ROWS + 1)
                    .noneMatch(band -> asked.contains("&band=" + band));
            ASKED.putIfAbsent(asked, known ? number : NO_SUCH_BAND + " less than " + number);
            return ASKED.get(asked);
        }));
        book = new BookReader(file);
        cells = book.cells();
    }

    private static String value(String place) {
        BookReader.Cell cell = cells.get(place);
        return cell == null ? "" : cell.value();
    }

    /** The rows in which answers stand. */
    private static List<Integer> rows() {
        int heading = IntStream.range(1, 100)
                .filter(row -> value("Answers!A" + row).equals("Asked for"))
                .findFirst()
                .orElseThrow();
        return IntStream.iterate(heading + 1, row -> cells.containsKey("Answers!A" + row), row -> row + 1)
                .boxed()
                .toList();
    }

    /** What is stored for a cell was asked for by the name and the choice that stand beside it, as its formula does. */
    @Test
    void everyAnswerIsThatOfTheCellBesideIt() throws Exception {
        String query = FormulaReader.text(cells, book.names(), book.names().get("query"));
        for (int row : rows()) {
            String name = value("Answers!A" + row);
            String chosen = value("Answers!B" + row);
            String wanted = ASKED.get(name + query + chosen);
            assertEquals(wanted, value("Answers!C" + row), name + chosen);
            assertEquals(wanted, value("Answers!D" + row), name + chosen);
            assertEquals(wanted.startsWith(NO_SUCH_BAND) ? "" : wanted, value("Answers!E" + row), name + chosen);
            String address = "service&\"/v1/cell/\"&A" + row + "&query&B" + row;
            assertEquals(
                    "IFERROR(_xlfn.WEBSERVICE(" + address + "),IF(untouched,C" + row + ",\"no answer\"))",
                    cells.get("Answers!D" + row).formula());
            BookReader.Cell choice = cells.get("Answers!B" + row);
            boolean byFace = choice != null && choice.formula().startsWith("face");
            assertEquals(Cell.of(name).orElseThrow().choices().contains("face"), byFace, name);
        }
        assertEquals(ASKED.size(), rows().size());
    }

    /** A cell that shows another has stored what that one has, and every answer is shown somewhere. */
    @ParameterizedTest
    @EnumSource
    void whatIsShownIsTheAnswerThatItRefersTo(Workbook workbook) throws Exception {
        Map<String, BookReader.Cell> stored =
                new BookReader(workbook.write(new Contents("http://shop.example:8080", ASKED::get))).cells();
        Set<String> shown = new HashSet<>();
        stored.forEach((place, cell) -> {
            if (cell.formula().matches("Answers![A-Z][0-9]+")) {
                BookReader.Cell answer = stored.get(cell.formula());
                assertEquals(answer.value(), cell.value(), place);
                assertEquals(answer.kind(), cell.kind(), place);
                shown.add(cell.formula());
            }
        });
        List<Integer> rows = rows();
        for (int row : rows.subList(0, rows.size() - 1)) {
            assertTrue(shown.contains("Answers!E" + row), value("Answers!A" + row));
        }
        int last = rows.get(rows.size() - 1);
        assertEquals("band-species &band=9", value("Answers!A" + last) + " " + value("Answers!B" + last));
        assertTrue(stored.get("Bands!A14").formula().contains("Answers!E" + last));
    }

    @Test
    void everyColumnOfBandsShowsWhatItsHeadingSays() {
        for (int band = 1; band <= BAND_ROWS; band++) {
            for (Map.Entry<String, String> column : COLUMNS.entrySet()) {
                String place = "Bands!" + column.getKey() + (FIRST_BAND_ROW + band - 1);
                String answer = cells.get(place).formula().replace("!E", "!A");
                String[] what = column.getValue().split(" ", 2);
                assertEquals(what[0], value(answer), place);
                assertEquals(
                        "&band=" + band + (what.length > 1 ? "&set=" + what[1] : ""),
                        value(answer.replace("!A", "!B")),
                        place);
            }
        }
    }

    /** The chart is drawn from numbers alone: a text would be drawn as 0. */
    @Test
    void theChartIsDrawnFromNumbersAlone() throws Exception {
        List<String> ranges = BookReader.all(book.xml("xl/charts/chart1.xml"), "c:numRef").stream()
                .map(numbers -> BookReader.all(numbers, "c:f").get(0).getTextContent())
                .toList();
        assertEquals(List.of("Answers!$B$146:$B$153", "Answers!$C$146:$C$153"), ranges);
        for (int band = 1; band <= BAND_ROWS; band++) {
            for (String[] columns : new String[][] {{"B", "I"}, {"C", "N"}}) {
                String shown = cells.get("Bands!" + columns[1] + (FIRST_BAND_ROW + band - 1))
                        .formula()
                        .replace("Answers!", "");
                BookReader.Cell drawn = cells.get("Answers!" + columns[0] + (145 + band));
                assertEquals("IF(ISNUMBER(" + shown + ")," + shown + ",NA())", drawn.formula());
                assertEquals(band <= EXAMPLE_BANDS ? value("Answers!" + shown) : "#N/A", drawn.value());
            }
        }
    }

    /** The cells of the design that a user may fill in. Format 49 is that for texts, as it is for WorkbookTest. */
    static Stream<String> framed() {
        List<String> places = new ArrayList<>();
        IntStream.rangeClosed(8, 23).forEach(row -> places.add("B" + row));
        IntStream.rangeClosed(27, 50)
                .forEach(row -> List.of("A", "B", "C").forEach(column -> places.add(column + row)));
        places.add("B52");
        return places.stream();
    }

    private static String untouched(Map<String, String> filled) throws Exception {
        Map<String, BookReader.Cell> changed = book.cells();
        filled.forEach((place, text) -> changed.put("Design!" + place, new BookReader.Cell("", text, "text")));
        return FormulaReader.text(changed, book.names(), book.names().get("untouched"));
    }

    @Test
    void theFramedCellsAreAllThatMayBeFilledIn() throws Exception {
        List<String> formats =
                BookReader.all(
                                BookReader.all(book.xml("xl/styles.xml"), "cellXfs")
                                        .get(0),
                                "xf")
                        .stream()
                        .map(format -> format.getAttribute("numFmtId"))
                        .toList();
        Set<String> texts = new HashSet<>();
        BookReader.all(book.xml("xl/worksheets/sheet1.xml"), "c").stream()
                .filter(cell ->
                        formats.get(Integer.parseInt(cell.getAttribute("s"))).equals("49"))
                .forEach(cell -> texts.add(cell.getAttribute("r")));
        // Row 5 is the service's address, which is no part of the design.
        texts.removeIf(place -> place.endsWith("5") && place.length() == 2);
        assertEquals(texts, new HashSet<>(framed().toList()));
    }

    @ParameterizedTest
    @MethodSource("framed")
    void oneChangedCellIsAnotherDesign(String place) throws Exception {
        assertEquals("true", untouched(Map.of()));
        assertEquals("false", untouched(Map.of(place, ANOTHER)));
        boolean empty = value("Design!" + place).isEmpty();
        assertEquals(Boolean.toString(empty), untouched(Map.of(place, "")));
    }

    @Test
    void capitalsMakeNoOtherDesign() throws Exception {
        assertEquals("true", untouched(Map.of("B8", "Icosahedron")));
        assertEquals("true", untouched(Map.of("B9", "MM", "B20", "twins")));
    }

    @ParameterizedTest
    @ValueSource(strings = {"ERROR: kerf is missing.", "", "1,5", "NaN", "1e3", "0x10"})
    void aTextWhereANumberMustStandIsRefused(String answer) {
        Contents contents = new Contents("http://shop.example:8080", asked -> answer);
        for (Workbook workbook : Workbook.values()) {
            String message = assertThrows(IllegalStateException.class, () -> workbook.write(contents))
                    .getMessage();
            assertTrue(message.endsWith("answers no number: " + answer), message);
        }
    }
}
