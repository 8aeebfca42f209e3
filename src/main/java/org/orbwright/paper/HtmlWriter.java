package org.orbwright.paper;

import java.io.StringWriter;
import java.util.List;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;
import org.orbwright.drawing.SvgWriter;
import org.orbwright.paper.ShopSheet.Advice;
import org.orbwright.paper.ShopSheet.Check;
import org.orbwright.paper.ShopSheet.Heading;
import org.orbwright.paper.ShopSheet.Picture;
import org.orbwright.paper.ShopSheet.Section;
import org.orbwright.paper.ShopSheet.Step;
import org.orbwright.paper.ShopSheet.Table;
import org.orbwright.paper.ShopSheet.Text;
import org.orbwright.paper.ShopSheet.Value;
import org.orbwright.sheet.Finding;
import org.orbwright.xml.XmlText;

/** Writes a sheet as a page of HTML 5 that is also well-formed XML: drawings within it, no script, nothing to load. */
public final class HtmlWriter {
    private static final String XHTML = "http://www.w3.org/1999/xhtml";
    private static final String STYLE = """

            body { font: 16px/1.45 sans-serif; margin: 0 auto; max-width: 54em; padding: 0 1em 2em; color: #111; }
            h1 { font-size: 1.6em; margin-bottom: 0; overflow-wrap: anywhere; }
            h2 { border-bottom: 2px solid; margin-top: 2em; }
            h2, h3 { break-after: avoid; }
            table { border-collapse: collapse; width: 100%; margin: 0.5em 0; }
            th, td { text-align: left; padding: 0.25em 0.5em 0.25em 0; border-bottom: 1px solid #bbb; }
            td { overflow-wrap: break-word; }
            .unit { white-space: nowrap; }
            section { overflow-x: auto; }
            .number { text-align: right; font-weight: bold; white-space: nowrap; }
            .blank { display: inline-block; min-width: 6em; border-bottom: 1px solid #111; }
            .caution { border-left: 4px solid #111; padding-left: 0.7em; }
            .finding { border: 1px solid #111; padding: 0.5em 0.7em; }
            .STOP { border-width: 4px; }
            .WARN { border-width: 2px; }
            .STOP strong { background: #111; color: #fff; padding: 0 0.4em; }
            .picture { margin: 1em 0; break-inside: avoid; }
            .picture svg { width: 100%; height: auto; max-height: 80vh; }
            tr, p, label { break-inside: avoid; }
            @page { margin: 14mm; }
            @media print {
              body { font-size: 10pt; max-width: none; padding: 0; }
              .picture svg { max-height: 125mm; }
            }
            """;

    private final XMLStreamWriter xml;
    private int pictures;

    private HtmlWriter(XMLStreamWriter xml) {
        this.xml = xml;
    }

    /** The sheet as a page of HTML. */
    public static String write(ShopSheet sheet) {
        StringWriter text = new StringWriter();
        try {
            XMLStreamWriter xml = XMLOutputFactory.newInstance().createXMLStreamWriter(text);
            new HtmlWriter(xml).document(sheet);
            xml.close();
        } catch (XMLStreamException e) {
            throw new IllegalStateException(e);
        }
        return text.toString();
    }

    private void document(ShopSheet sheet) throws XMLStreamException {
        xml.writeDTD("<!DOCTYPE html>\n");
        xml.writeStartElement("html");
        xml.writeDefaultNamespace(XHTML);
        xml.writeAttribute("lang", "en");
        xml.writeStartElement("head");
        xml.writeEmptyElement("meta");
        xml.writeAttribute("charset", "UTF-8");
        xml.writeEmptyElement("meta");
        xml.writeAttribute("name", "viewport");
        xml.writeAttribute("content", "width=device-width, initial-scale=1");
        element("title", "", sheet.title());
        element("style", "", STYLE);
        xml.writeEndElement();
        xml.writeStartElement("body");
        element("h1", "", sheet.title());
        for (String line : sheet.opening()) {
            element("p", "", line);
        }
        for (Finding finding : sheet.findings()) {
            xml.writeStartElement("p");
            xml.writeAttribute("class", "finding " + finding.severity());
            element("strong", "", finding.severity().name());
            characters(" " + finding.message());
            xml.writeEndElement();
        }
        for (Section section : sheet.sections()) {
            section(section);
        }
        xml.writeEndElement();
        xml.writeEndElement();
        xml.writeEndDocument();
    }

    /** Neighbouring values share a table. */
    private void section(Section section) throws XMLStreamException {
        xml.writeStartElement("section");
        element("h2", "", section.title());
        boolean values = false;
        for (Step step : section.steps()) {
            if (step instanceof Value != values) {
                if (values) {
                    xml.writeEndElement();
                } else {
                    xml.writeStartElement("table");
                }
                values = !values;
            }
            step(step);
        }
        if (values) {
            xml.writeEndElement();
        }
        xml.writeEndElement();
    }

    private void step(Step step) throws XMLStreamException {
        if (step instanceof Heading heading) {
            element("h3", "", heading.text());
        } else if (step instanceof Text text) {
            element("p", "", text.text());
        } else if (step instanceof Value value) {
            value(value);
        } else if (step instanceof Table table) {
            table(table);
        } else if (step instanceof Check check) {
            xml.writeStartElement("p");
            xml.writeStartElement("label");
            xml.writeEmptyElement("input");
            xml.writeAttribute("type", "checkbox");
            characters(" " + check.text());
            xml.writeEndElement();
            xml.writeEndElement();
        } else if (step instanceof Advice advice) {
            xml.writeStartElement("p");
            xml.writeAttribute("class", "caution");
            element("strong", "", "Caution:");
            characters(" " + advice.caution().text());
            xml.writeEndElement();
        } else if (step instanceof Picture picture) {
            pictures++;
            xml.writeStartElement("div");
            xml.writeAttribute("class", "picture");
            SvgWriter.write(picture.drawing(), xml, "picture" + pictures + "-");
            xml.writeEndElement();
        }
    }

    private void value(Value value) throws XMLStreamException {
        xml.writeStartElement("tr");
        element("td", "", value.label());
        element("td", "number", value.number());
        element("td", "unit", value.unit());
        element("td", "", value.fraction());
        xml.writeStartElement("td");
        if (value.measured()) {
            characters("measured: ");
            element("span", "blank", "\u00a0");
        }
        xml.writeEndElement();
        xml.writeEndElement();
    }

    private void table(Table table) throws XMLStreamException {
        xml.writeStartElement("table");
        row("th", table.headings());
        for (List<String> row : table.rows()) {
            row("td", row);
        }
        xml.writeEndElement();
    }

    private void row(String cell, List<String> texts) throws XMLStreamException {
        xml.writeStartElement("tr");
        for (String text : texts) {
            element(cell, "", text);
        }
        xml.writeEndElement();
    }

    private void element(String name, String style, String text) throws XMLStreamException {
        xml.writeStartElement(name);
        if (!style.isEmpty()) {
            xml.writeAttribute("class", style);
        }
        characters(text);
        xml.writeEndElement();
    }

    /** The text, with a mark in place of what no XML document may hold and of control characters. */
    private void characters(String text) throws XMLStreamException {
        xml.writeCharacters(XmlText.legal(text.replaceAll("[\u007f-\u009f]", "\ufffd")));
    }
}
