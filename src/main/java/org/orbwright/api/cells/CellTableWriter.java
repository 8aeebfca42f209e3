package org.orbwright.api.cells;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.TextNode;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Request;
import java.io.StringWriter;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.orbwright.api.query.Format;
import org.orbwright.api.wire.AnswerUnits;
import org.orbwright.api.wire.Csv;
import org.orbwright.cell.CellTable;
import org.orbwright.document.Document;
import org.orbwright.notice.Notice;
import org.orbwright.sheet.Answer;
import org.orbwright.xml.Xml;

/**
 * Writes a sheet's STOPs, the rows of a table, and the unit as the last column, as CSV or as XML. The unit is that of
 * the row's lengths; in the table of the whole sheet, of the row's one value.
 */
public final class CellTableWriter {
    static final String XML = MediaType.APPLICATION_XML;

    private static final String UNIT = "unit";
    private static final List<Format> FORMS = List.of(Format.CSV, Format.XML);

    private CellTableWriter() {}

    /** The media type by the query, or by the header where the query says nothing. */
    static String type(String format, Request request) {
        String stated = format == null || format.isBlank() ? null : format;
        return Format.wanted(stated, request, FORMS).type();
    }

    /** The table of a document's sheet, in a media type. */
    public static String write(CellTable table, SheetPath path, Document document, String type) {
        Answer sheet = SheetJson.answer(document);
        return write(table, path, sheet, sheet.notices(), type);
    }

    /** A table of a sheet with what is told above it. */
    public static String write(CellTable table, SheetPath path, Answer sheet, List<Notice> notices, String type) {
        Document document = sheet.document();
        List<Map<String, JsonNode>> rows = path.rows(SheetJson.of(sheet), table.path());
        List<Notice> stops = Notice.stops(notices);
        if (table == CellTable.SHEET) {
            rows.forEach(row -> row.put(
                    UNIT,
                    TextNode.valueOf(AnswerUnits.of(row.get(SheetPath.POINTER).asText(), document.unit()))));
        }
        Set<String> columns = new LinkedHashSet<>();
        rows.forEach(row -> columns.addAll(row.keySet()));
        columns.remove(UNIT);
        String unit = document.unit().symbol();
        return type.equals(XML) ? xml(table.text(), stops, rows, unit) : csv(stops, columns, rows, unit);
    }

    /** A table that only says what is wrong. */
    static String error(String message, String type) {
        if (!type.equals(XML)) {
            return Csv.line(List.of(Csv.text(message)));
        }
        StringWriter text = new StringWriter();
        new Xml(text).open("table").text("error", message).close(1).end();
        return text.toString();
    }

    private static String csv(List<Notice> stops, Set<String> columns, List<Map<String, JsonNode>> rows, String unit) {
        List<String> heading = new ArrayList<>(columns);
        heading.add(UNIT);
        StringBuilder csv = new StringBuilder(Csv.stops(stops, heading.size())).append(Csv.line(heading));
        for (Map<String, JsonNode> row : rows) {
            List<String> cells = new ArrayList<>();
            for (String column : columns) {
                JsonNode value = row.get(column);
                cells.add(value == null ? "" : value.isNumber() ? SheetPath.text(value) : Csv.text(value.asText()));
            }
            JsonNode own = row.get(UNIT);
            cells.add(own == null ? unit : own.asText());
            csv.append(Csv.line(cells));
        }
        return csv.toString();
    }

    private static String xml(String name, List<Notice> stops, List<Map<String, JsonNode>> rows, String unit) {
        StringWriter text = new StringWriter();
        Xml xml = new Xml(text).open("table", "name", name, UNIT, unit);
        stops.forEach(stop -> xml.text("stop", stop.text(), "code", stop.code()));
        for (Map<String, JsonNode> row : rows) {
            xml.open("row");
            row.forEach((column, value) -> xml.text(column, SheetPath.text(value)));
            xml.close(1);
        }
        xml.close(1).end();
        return text.toString();
    }
}
