package org.orbwright.api;

import com.fasterxml.jackson.databind.JsonNode;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Request;
import jakarta.ws.rs.core.Variant;
import java.io.StringWriter;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;
import org.orbwright.cell.CellTable;
import org.orbwright.design.Design;
import org.orbwright.drawing.XmlText;

/** Writes the rows of a table, and the unit of their lengths as the last column, as CSV or as XML. */
final class CellTableWriter {
    static final String XML = MediaType.APPLICATION_XML;

    private static final String UNIT = "unit";
    private static final List<Variant> VARIANTS = Variant.mediaTypes(
                    MediaType.valueOf(Csv.MEDIA_TYPE), MediaType.valueOf(XML))
            .build();

    private CellTableWriter() {}

    /** The media type by the query, or by the header where the query says nothing. */
    static String type(String format, Request request) {
        if (format != null && !format.isBlank()) {
            return Query.name(CellQuery.FORMAT, format, List.of("csv", "xml")).equals("xml") ? XML : Csv.MEDIA_TYPE;
        }
        Variant wanted = request.selectVariant(VARIANTS);
        return wanted != null && wanted.getMediaType().equals(MediaType.APPLICATION_XML_TYPE) ? XML : Csv.MEDIA_TYPE;
    }

    static String write(CellTable table, SheetPath path, Design design, String type) {
        List<Map<String, JsonNode>> rows = path.rows(SheetJson.of(design), table.path());
        Set<String> columns = new LinkedHashSet<>();
        rows.forEach(row -> columns.addAll(row.keySet()));
        String unit = design.request().unit().symbol();
        return type.equals(XML) ? xml(table.text(), rows, unit) : csv(columns, rows, unit);
    }

    /** A table that only says what is wrong. */
    static String error(String message, String type) {
        return type.equals(XML)
                ? document(xml -> element(xml, "error", message))
                : Csv.line(List.of(Csv.text(message)));
    }

    private static String csv(Set<String> columns, List<Map<String, JsonNode>> rows, String unit) {
        List<String> heading = new ArrayList<>(columns);
        heading.add(UNIT);
        StringBuilder csv = new StringBuilder(Csv.line(heading));
        for (Map<String, JsonNode> row : rows) {
            List<String> cells = new ArrayList<>();
            for (String column : columns) {
                JsonNode value = row.get(column);
                cells.add(value == null ? "" : value.isNumber() ? SheetPath.text(value) : Csv.text(value.asText()));
            }
            cells.add(unit);
            csv.append(Csv.line(cells));
        }
        return csv.toString();
    }

    private static String xml(String name, List<Map<String, JsonNode>> rows, String unit) {
        return document(xml -> {
            xml.writeAttribute("name", name);
            xml.writeAttribute(UNIT, unit);
            for (Map<String, JsonNode> row : rows) {
                xml.writeStartElement("row");
                for (Map.Entry<String, JsonNode> value : row.entrySet()) {
                    element(xml, value.getKey(), SheetPath.text(value.getValue()));
                }
                xml.writeEndElement();
            }
        });
    }

    private static void element(XMLStreamWriter xml, String name, String text) throws XMLStreamException {
        xml.writeStartElement(name);
        xml.writeCharacters(XmlText.legal(text));
        xml.writeEndElement();
    }

    private static String document(Content content) {
        StringWriter text = new StringWriter();
        try {
            XMLStreamWriter xml = XMLOutputFactory.newInstance().createXMLStreamWriter(text);
            xml.writeStartDocument("UTF-8", "1.0");
            xml.writeStartElement("table");
            content.write(xml);
            xml.writeEndElement();
            xml.writeEndDocument();
            xml.close();
        } catch (XMLStreamException e) {
            throw new IllegalStateException(e);
        }
        return text.toString();
    }

    private interface Content {
        void write(XMLStreamWriter xml) throws XMLStreamException;
    }
}
