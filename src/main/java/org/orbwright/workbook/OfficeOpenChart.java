package org.orbwright.workbook;

import org.orbwright.workbook.Book.Chart;
import org.orbwright.workbook.Book.Page;
import org.orbwright.xml.Xml;

/** Writes a sheet's chart as Office Open XML has it: its place on the sheet, and what it draws. */
final class OfficeOpenChart {
    private static final String CHART = OfficeOpenWriter.DRAWING + "chart";
    private static final String MAIN = OfficeOpenWriter.DRAWING + "main";
    private static final String SHEET = OfficeOpenWriter.DRAWING + "spreadsheetDrawing";
    /** Rows and columns that the chart covers. */
    private static final int ROWS = 18;

    private static final int COLUMNS = 6;

    private OfficeOpenChart() {}

    /** The place, below the sheet's rows. */
    static void place(Xml xml, Page page) {
        int below = page.rows().size();
        xml.open("xdr:wsDr", "xmlns:xdr", SHEET, "xmlns:a", MAIN, "xmlns:r", OfficeOpenWriter.RELATIONS);
        xml.open("xdr:twoCellAnchor");
        corner(xml, "xdr:from", 0, below);
        corner(xml, "xdr:to", COLUMNS, below + ROWS);
        xml.open("xdr:graphicFrame", "macro", "").open("xdr:nvGraphicFramePr");
        xml.empty("xdr:cNvPr", "id", "2", "name", page.chart().title());
        xml.empty("xdr:cNvGraphicFramePr").close(1);
        xml.open("xdr:xfrm").empty("a:off", "x", "0", "y", "0").empty("a:ext", "cx", "0", "cy", "0");
        xml.close(1).open("a:graphic a:graphicData", "uri", CHART);
        xml.empty("c:chart", "xmlns:c", CHART, "r:id", "rId1").close(3);
        xml.empty("xdr:clientData").close(2);
    }

    private static void corner(Xml xml, String name, int column, int row) {
        xml.open(name).text("xdr:col", Integer.toString(column)).text("xdr:colOff", "0");
        xml.text("xdr:row", Integer.toString(row)).text("xdr:rowOff", "0").close(1);
    }

    /** Bars over the names. */
    static void draw(Xml xml, Page page) {
        Chart chart = page.chart();
        xml.open("c:chartSpace", "xmlns:c", CHART, "xmlns:a", MAIN, "xmlns:r", OfficeOpenWriter.RELATIONS);
        xml.open("c:chart").open("c:title c:tx c:rich").empty("a:bodyPr");
        xml.open("a:p a:r").text("a:t", chart.title()).close(5);
        xml.empty("c:autoTitleDeleted", "val", "0").open("c:plotArea").empty("c:layout");
        xml.open("c:barChart").empty("c:barDir", "val", "col").empty("c:grouping", "val", "clustered");
        xml.empty("c:varyColors", "val", "0").open("c:ser");
        xml.empty("c:idx", "val", "0").empty("c:order", "val", "0");
        xml.open("c:spPr a:solidFill")
                .empty("a:srgbClr", "val", Book.BARS.substring(1))
                .close(2);
        xml.empty("c:invertIfNegative", "val", "0");
        xml.open("c:cat c:strRef").text("c:f", range(page, chart.names())).close(2);
        xml.open("c:val c:numRef").text("c:f", range(page, chart.values())).close(2);
        xml.close(1).empty("c:gapWidth", "val", "60");
        xml.empty("c:axId", "val", "1").empty("c:axId", "val", "2").close(1);
        axis(xml, "c:catAx", "1", "b", "2");
        axis(xml, "c:valAx", "2", "l", "1");
        xml.close(1).empty("c:plotVisOnly", "val", "1").close(2);
    }

    private static void axis(Xml xml, String name, String own, String side, String other) {
        xml.open(name).empty("c:axId", "val", own);
        xml.open("c:scaling").empty("c:orientation", "val", "minMax").close(1);
        xml.empty("c:delete", "val", "0").empty("c:axPos", "val", side).empty("c:tickLblPos", "val", "nextTo");
        xml.empty("c:crossAx", "val", other).close(1);
    }

    private static String range(Page page, int column) {
        Chart chart = page.chart();
        String name = "$" + Book.column(column) + "$";
        return page.name() + "!" + name + (chart.first() + 1) + ":" + name + (chart.last() + 1);
    }
}
