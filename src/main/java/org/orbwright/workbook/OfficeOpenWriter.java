package org.orbwright.workbook;

import java.util.ArrayList;
import java.util.List;
import org.orbwright.workbook.Book.Content;
import org.orbwright.workbook.Book.Look;
import org.orbwright.workbook.Book.Page;
import org.orbwright.xml.Archive;
import org.orbwright.xml.Xml;

/** Writes a workbook as Office Open XML (ISO/IEC 29500:2016, transitional, from memory). */
public final class OfficeOpenWriter {
    /** The media type of the file. */
    public static final String MEDIA_TYPE = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet";

    static final String DRAWING = "http://schemas.openxmlformats.org/drawingml/2006/";
    static final String RELATIONS = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";

    private static final String MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
    private static final String PACKAGE = "http://schemas.openxmlformats.org/package/2006/";
    private static final String PARTS = "application/vnd.openxmlformats-package.";
    private static final String TYPE = "application/vnd.openxmlformats-officedocument.";
    /** Widths are counted in digits of the default font, about two millimetres each. */
    private static final double DIGITS_PER_MILLIMETRE = 0.5;

    /** Number of the built-in format for texts, which is {@code @} (ISO/IEC 29500-1:2016, 18.8.30, from memory). */
    private static final String TEXT_FORMAT = "49";

    private static final String GREY = "FF606060";
    private static final String BLACK = "FF000000";

    private OfficeOpenWriter() {}

    /** The bytes of the file. */
    public static byte[] write(Book book) {
        Archive archive = new Archive();
        List<Page> pages = book.sheets();
        archive.add("[Content_Types].xml", xml -> contentTypes(xml, pages.size()));
        archive.add("_rels/.rels", xml -> relations(xml, List.of("officeDocument xl/workbook.xml")));
        archive.add("xl/workbook.xml", xml -> workbook(xml, pages));
        List<String> parts = new ArrayList<>();
        for (int i = 1; i <= pages.size(); i++) {
            parts.add("worksheet worksheets/sheet" + i + ".xml");
        }
        parts.add("styles styles.xml");
        archive.add("xl/_rels/workbook.xml.rels", xml -> relations(xml, parts));
        archive.add("xl/styles.xml", OfficeOpenWriter::styles);
        for (int i = 1; i <= pages.size(); i++) {
            Page page = pages.get(i - 1);
            archive.add("xl/worksheets/sheet" + i + ".xml", xml -> sheet(xml, page));
            if (page.chart() != null) {
                addChart(archive, i, page);
            }
        }
        return archive.toBytes();
    }

    private static void addChart(Archive archive, int number, Page page) {
        String drawing = "drawing ../drawings/drawing1.xml";
        archive.add("xl/worksheets/_rels/sheet" + number + ".xml.rels", xml -> relations(xml, List.of(drawing)));
        archive.add("xl/drawings/drawing1.xml", xml -> OfficeOpenChart.place(xml, page));
        archive.add(
                "xl/drawings/_rels/drawing1.xml.rels", xml -> relations(xml, List.of("chart ../charts/chart1.xml")));
        archive.add("xl/charts/chart1.xml", xml -> OfficeOpenChart.draw(xml, page));
    }

    private static void contentTypes(Xml xml, int pages) {
        xml.open("Types", "xmlns", PACKAGE + "content-types");
        xml.empty("Default", "Extension", "xml", "ContentType", "application/xml");
        xml.empty("Default", "Extension", "rels", "ContentType", PARTS + "relationships+xml");
        type(xml, "/xl/workbook.xml", "spreadsheetml.sheet.main+xml");
        type(xml, "/xl/styles.xml", "spreadsheetml.styles+xml");
        for (int i = 1; i <= pages; i++) {
            type(xml, "/xl/worksheets/sheet" + i + ".xml", "spreadsheetml.worksheet+xml");
        }
        type(xml, "/xl/drawings/drawing1.xml", "drawing+xml");
        type(xml, "/xl/charts/chart1.xml", "drawingml.chart+xml");
        xml.close(1);
    }

    private static void type(Xml xml, String part, String type) {
        xml.empty("Override", "PartName", part, "ContentType", TYPE + type);
    }

    /** Each part is its kind and its place, parted by a blank. */
    private static void relations(Xml xml, List<String> parts) {
        xml.open("Relationships", "xmlns", PACKAGE + "relationships");
        for (int i = 1; i <= parts.size(); i++) {
            String[] part = parts.get(i - 1).split(" ", -1);
            xml.empty("Relationship", "Id", "rId" + i, "Type", RELATIONS + "/" + part[0], "Target", part[1]);
        }
        xml.close(1);
    }

    private static void workbook(Xml xml, List<Page> pages) {
        xml.open("workbook", "xmlns", MAIN, "xmlns:r", RELATIONS).open("sheets");
        for (int i = 1; i <= pages.size(); i++) {
            xml.empty("sheet", "name", pages.get(i - 1).name(), "sheetId", text(i), "r:id", "rId" + i);
        }
        // No value is stored beside a formula, so that none can be out of date.
        xml.close(1).empty("calcPr", "fullCalcOnLoad", "1").close(1);
    }

    private static void styles(Xml xml) {
        xml.open("styleSheet", "xmlns", MAIN);
        xml.open("fonts", "count", text(Look.values().length));
        for (Look look : Look.values()) {
            font(xml, look);
        }
        xml.close(1).open("fills", "count", "3");
        xml.open("fill").empty("patternFill", "patternType", "none").close(1);
        xml.open("fill").empty("patternFill", "patternType", "gray125").close(1);
        xml.open("fill patternFill", "patternType", "solid")
                .empty("fgColor", "rgb", "FFFFF8E1")
                .close(2);
        xml.close(1).open("borders", "count", "2");
        xml.open("border")
                .empty("left")
                .empty("right")
                .empty("top")
                .empty("bottom")
                .empty("diagonal")
                .close(1);
        xml.open("border");
        for (String side : List.of("left", "right", "top", "bottom")) {
            xml.open(side, "style", "thin").empty("color", "rgb", "FF808080").close(1);
        }
        xml.empty("diagonal").close(2).open("cellStyleXfs", "count", "1");
        xml.empty("xf", "numFmtId", "0", "fontId", "0", "fillId", "0", "borderId", "0")
                .close(1);
        xml.open("cellXfs", "count", text(Look.values().length));
        for (Look look : Look.values()) {
            format(xml, look);
        }
        xml.close(2);
    }

    private static void font(Xml xml, Look look) {
        xml.open("font");
        if (look == Look.TITLE || look == Look.HEADING) {
            xml.empty("b");
        }
        xml.empty("sz", "val", look == Look.TITLE ? "14" : "11");
        xml.empty("color", "rgb", look == Look.NOTE ? GREY : BLACK);
        xml.empty("name", "val", "Calibri").close(1);
    }

    private static void format(Xml xml, Look look) {
        boolean input = look == Look.INPUT;
        String border = input ? "1" : "0";
        String fill = input ? "2" : "0";
        String numbers = input ? TEXT_FORMAT : "0";
        xml.empty("xf", "numFmtId", numbers, "fontId", style(look), "fillId", fill, "borderId", border, "xfId", "0");
    }

    private static void sheet(Xml xml, Page page) {
        xml.open("worksheet", "xmlns", MAIN, "xmlns:r", RELATIONS);
        xml.open("sheetPr").empty("pageSetUpPr", "fitToPage", "1").close(1);
        xml.open("cols");
        for (int i = 1; i <= page.widths().size(); i++) {
            String width = Double.toString(page.widths().get(i - 1) * DIGITS_PER_MILLIMETRE);
            xml.empty("col", "min", text(i), "max", text(i), "width", width, "customWidth", "1");
        }
        xml.close(1).open("sheetData");
        for (int row = 1; row <= page.rows().size(); row++) {
            xml.open("row", "r", text(row));
            List<Content> cells = page.rows().get(row - 1);
            for (int column = 0; column < cells.size(); column++) {
                cell(xml, Book.column(column) + row, cells.get(column));
            }
            xml.close(1);
        }
        xml.close(1).empty("pageSetup", "orientation", "landscape", "fitToHeight", "0");
        if (page.chart() != null) {
            xml.empty("drawing", "r:id", "rId1");
        }
        xml.close(1);
    }

    private static void cell(Xml xml, String place, Content cell) {
        String style = style(cell.look());
        if (cell.value().isEmpty()) {
            xml.empty("c", "r", place, "s", style);
        } else if (cell.kind() == Book.Kind.FORMULA) {
            xml.open("c", "r", place, "s", style).text("f", Formula.officeOpen(cell.value()));
            xml.close(1);
        } else if (cell.kind() == Book.Kind.NUMBER) {
            xml.open("c", "r", place, "s", style).text("v", cell.value()).close(1);
        } else {
            xml.open("c", "r", place, "s", style, "t", "inlineStr").open("is");
            xml.text("t", cell.value()).close(2);
        }
    }

    /** Number of the style, and of its font. */
    private static String style(Look look) {
        return text(List.of(Look.values()).indexOf(look));
    }

    private static String text(int number) {
        return Integer.toString(number);
    }
}
