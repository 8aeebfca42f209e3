package org.orbwright.workbook;

import java.util.List;
import java.util.TreeSet;
import org.orbwright.workbook.Book.Chart;
import org.orbwright.workbook.Book.Content;
import org.orbwright.workbook.Book.Look;
import org.orbwright.workbook.Book.Page;
import org.orbwright.xml.Archive;
import org.orbwright.xml.Xml;

/** Writes a workbook as an OpenDocument spreadsheet (version 1.2, which is ISO/IEC 26300:2015, from memory). */
public final class OpenDocumentWriter {
    /** The media type of the file. */
    public static final String MEDIA_TYPE = "application/vnd.oasis.opendocument.spreadsheet";

    private static final String CHART_TYPE = "application/vnd.oasis.opendocument.chart";
    private static final String CHART = "Chart";
    private static final String STYLE = "style:style";
    private static final String TEXTS = "texts";
    private static final String WIDTH = "170mm";
    private static final String HEIGHT = "90mm";
    private static final String[] NAMESPACES = {
        "office", "urn:oasis:names:tc:opendocument:xmlns:office:1.0",
        "style", "urn:oasis:names:tc:opendocument:xmlns:style:1.0",
        "text", "urn:oasis:names:tc:opendocument:xmlns:text:1.0",
        "table", "urn:oasis:names:tc:opendocument:xmlns:table:1.0",
        "draw", "urn:oasis:names:tc:opendocument:xmlns:drawing:1.0",
        "number", "urn:oasis:names:tc:opendocument:xmlns:datastyle:1.0",
        "fo", "urn:oasis:names:tc:opendocument:xmlns:xsl-fo-compatible:1.0",
        "svg", "urn:oasis:names:tc:opendocument:xmlns:svg-compatible:1.0",
        "chart", "urn:oasis:names:tc:opendocument:xmlns:chart:1.0",
        "of", "urn:oasis:names:tc:opendocument:xmlns:of:1.2",
        "xlink", "http://www.w3.org/1999/xlink"
    };

    private OpenDocumentWriter() {}

    /** The bytes of the file. */
    public static byte[] write(Book book) {
        Archive archive = new Archive();
        archive.addStored("mimetype", MEDIA_TYPE);
        archive.add("content.xml", xml -> content(xml, book));
        archive.add("styles.xml", OpenDocumentWriter::paper);
        for (Page page : book.sheets()) {
            if (page.chart() != null) {
                archive.add(CHART + "/content.xml", xml -> chart(xml, page));
            }
        }
        archive.add("META-INF/manifest.xml", OpenDocumentWriter::manifest);
        return archive.toBytes();
    }

    private static void root(Xml xml, String name) {
        String[] attributes = new String[NAMESPACES.length + 2];
        for (int i = 0; i < NAMESPACES.length; i += 2) {
            attributes[i] = "xmlns:" + NAMESPACES[i];
            attributes[i + 1] = NAMESPACES[i + 1];
        }
        attributes[NAMESPACES.length] = "office:version";
        attributes[NAMESPACES.length + 1] = "1.2";
        xml.open(name, attributes);
    }

    private static void content(Xml xml, Book book) {
        root(xml, "office:document-content");
        TreeSet<Integer> widths = new TreeSet<>();
        book.sheets().forEach(page -> widths.addAll(page.widths()));
        xml.open("office:automatic-styles");
        for (int width : widths) {
            style(xml, "width" + width, "table-column");
            xml.empty("style:table-column-properties", "style:column-width", width + "mm")
                    .close(1);
        }
        xml.open("style:style", "style:name", "sheet", "style:family", "table", "style:master-page-name", "wide")
                .close(1);
        xml.open("number:text-style", "style:name", TEXTS)
                .empty("number:text-content")
                .close(1);
        for (Look look : Look.values()) {
            cellStyle(xml, look);
            look(xml, look);
            xml.close(1);
        }
        xml.close(1).open("office:body office:spreadsheet");
        book.sheets().forEach(page -> page(xml, page));
        xml.close(3);
    }

    private static void style(Xml xml, String name, String family) {
        xml.open(STYLE, "style:name", name, "style:family", family);
    }

    private static void cellStyle(Xml xml, Look look) {
        if (look == Look.INPUT) {
            String name = look.name();
            xml.open(STYLE, "style:name", name, "style:family", "table-cell", "style:data-style-name", TEXTS);
        } else {
            style(xml, look.name(), "table-cell");
        }
    }

    private static void look(Xml xml, Look look) {
        switch (look) {
            case TITLE -> letters(xml, "fo:font-weight", "bold", "fo:font-size", "14pt");
            case HEADING -> letters(xml, "fo:font-weight", "bold");
            case NOTE -> letters(xml, "fo:color", "#606060");
            case INPUT -> cell(xml, "fo:background-color", "#fff8e1", "fo:border", "0.5pt solid #808080");
            case PLAIN -> {}
        }
    }

    private static void cell(Xml xml, String... properties) {
        xml.empty("style:table-cell-properties", properties);
    }

    private static void letters(Xml xml, String... properties) {
        xml.empty("style:text-properties", properties);
    }

    /** Sheets are printed as wide as the paper. */
    private static void paper(Xml xml) {
        root(xml, "office:document-styles");
        xml.open("office:automatic-styles style:page-layout", "style:name", "wide");
        xml.empty("style:page-layout-properties", "style:print-orientation", "landscape", "style:scale-to-X", "1");
        xml.close(2).open("office:master-styles");
        xml.empty("style:master-page", "style:name", "wide", "style:page-layout-name", "wide")
                .close(2);
    }

    private static void page(Xml xml, Page page) {
        xml.open("table:table", "table:name", page.name(), "table:style-name", "sheet");
        if (page.chart() != null) {
            xml.open("table:shapes");
            frame(xml, page);
            xml.close(1);
        }
        page.widths().forEach(width -> xml.empty("table:table-column", "table:style-name", "width" + width));
        for (List<Content> row : page.rows()) {
            xml.open("table:table-row");
            if (row.isEmpty()) {
                xml.empty("table:table-cell");
            }
            row.forEach(cell -> content(xml, cell));
            xml.close(1);
        }
        xml.close(1);
    }

    private static void content(Xml xml, Content cell) {
        String name = "table:table-cell";
        String look = cell.look().name();
        if (cell.value().isEmpty()) {
            xml.empty(name, "table:style-name", look);
        } else if (cell.kind() == Book.Kind.FORMULA) {
            xml.empty(name, "table:style-name", look, "table:formula", Formula.openDocument(cell.value()));
        } else if (cell.kind() == Book.Kind.NUMBER) {
            xml.open(name, "table:style-name", look, "office:value-type", "float", "office:value", cell.value());
            xml.text("text:p", cell.value()).close(1);
        } else {
            xml.open(name, "table:style-name", look, "office:value-type", "string");
            xml.text("text:p", cell.value()).close(1);
        }
    }

    private static void frame(Xml xml, Page page) {
        xml.open("draw:frame", "svg:x", "5mm", "svg:y", "70mm", "svg:width", WIDTH, "svg:height", HEIGHT);
        String ranges = range(page, page.chart().names()) + " "
                + range(page, page.chart().values());
        xml.empty("draw:object", "xlink:href", "./" + CHART, "draw:notify-on-update-of-ranges", ranges);
        xml.close(1);
    }

    private static String range(Page page, int column) {
        Chart chart = page.chart();
        String name = page.name() + "." + Book.column(column);
        return name + (chart.first() + 1) + ":" + name + (chart.last() + 1);
    }

    private static void chart(Xml xml, Page page) {
        Chart chart = page.chart();
        root(xml, "office:document-content");
        xml.open("office:automatic-styles");
        style(xml, "axis", "chart");
        xml.empty("style:chart-properties", "chart:display-label", "true").close(1);
        style(xml, "bars", "chart");
        xml.empty("style:graphic-properties", "draw:fill", "solid", "draw:fill-color", Book.BARS)
                .close(2);
        xml.open("office:body office:chart");
        xml.open("chart:chart", "chart:class", "chart:bar", "svg:width", WIDTH, "svg:height", HEIGHT);
        xml.open("chart:title").text("text:p", chart.title()).close(1);
        xml.open("chart:plot-area");
        axis(xml, "x");
        xml.empty("chart:categories", "table:cell-range-address", range(page, chart.names()))
                .close(1);
        axis(xml, "y");
        xml.close(1);
        String values = range(page, chart.values());
        xml.empty("chart:series", "chart:style-name", "bars", "chart:values-cell-range-address", values);
        xml.close(5);
    }

    private static void axis(Xml xml, String dimension) {
        String name = "primary-" + dimension;
        xml.open("chart:axis", "chart:dimension", dimension, "chart:name", name, "chart:style-name", "axis");
    }

    private static void manifest(Xml xml) {
        String namespace = "urn:oasis:names:tc:opendocument:xmlns:manifest:1.0";
        xml.open("manifest:manifest", "xmlns:manifest", namespace, "manifest:version", "1.2");
        entry(xml, "/", MEDIA_TYPE);
        entry(xml, "content.xml", "text/xml");
        entry(xml, "styles.xml", "text/xml");
        entry(xml, CHART + "/", CHART_TYPE);
        entry(xml, CHART + "/content.xml", "text/xml");
        xml.close(1);
    }

    private static void entry(Xml xml, String path, String type) {
        xml.empty("manifest:file-entry", "manifest:full-path", path, "manifest:media-type", type);
    }
}
