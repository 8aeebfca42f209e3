package org.orbwright.paper;

import java.io.StringWriter;
import java.util.List;
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
import org.orbwright.xml.Xml;

/** Writes a sheet as a page of HTML 5 that is also well-formed XML: drawings within it, no script, nothing to load. */
public final class HtmlWriter {
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

    private final Xml xml;
    private int pictures;

    private HtmlWriter(Xml xml) {
        this.xml = xml;
    }

    /** The sheet as a page of HTML. */
    public static String write(ShopSheet sheet) {
        StringWriter text = new StringWriter();
        new HtmlWriter(Xml.html(text)).document(sheet);
        return text.toString();
    }

    private void document(ShopSheet sheet) {
        xml.open("head").empty("meta", "charset", "UTF-8");
        xml.empty("meta", "name", "viewport", "content", "width=device-width, initial-scale=1");
        text("title", sheet.title());
        text("style", STYLE);
        xml.close(1).open("body");
        text("h1", sheet.title());
        sheet.opening().forEach(line -> text("p", line));
        for (Finding finding : sheet.findings()) {
            xml.open("p", "class", "finding " + finding.severity());
            text("strong", finding.severity().name());
            words(" " + finding.message()).close(1);
        }
        sheet.sections().forEach(this::section);
        xml.close(2).end();
    }

    /** Neighbouring values share a table. */
    private void section(Section section) {
        xml.open("section");
        text("h2", section.title());
        boolean values = false;
        for (Step step : section.steps()) {
            if (step instanceof Value && !values) {
                xml.open("table");
            } else if (values && !(step instanceof Value)) {
                xml.close(1);
            }
            values = step instanceof Value;
            step(step);
        }
        xml.close(values ? 2 : 1);
    }

    private void step(Step step) {
        if (step instanceof Heading heading) {
            text("h3", heading.text());
        } else if (step instanceof Text text) {
            text("p", text.text());
        } else if (step instanceof Value value) {
            value(value);
        } else if (step instanceof Table table) {
            xml.open("table");
            row("th", table.headings());
            table.rows().forEach(row -> row("td", row));
            xml.close(1);
        } else if (step instanceof Check check) {
            xml.open("p label").empty("input", "type", "checkbox");
            words(" " + check.text()).close(2);
        } else if (step instanceof Advice advice) {
            xml.open("p", "class", "caution");
            text("strong", "Caution:");
            words(" " + advice.caution().text()).close(1);
        } else if (step instanceof Picture picture) {
            pictures++;
            xml.open("div", "class", "picture");
            SvgWriter.write(picture.drawing(), xml, "picture" + pictures + "-");
            xml.close(1);
        }
    }

    private void value(Value value) {
        xml.open("tr");
        text("td", value.label());
        text("td", value.number(), "class", "number");
        text("td", value.unit(), "class", "unit");
        text("td", value.fraction());
        xml.open("td");
        if (value.measured()) {
            words("measured: ");
            text("span", "\u00a0", "class", "blank");
        }
        xml.close(2);
    }

    private void row(String cell, List<String> texts) {
        xml.open("tr");
        texts.forEach(text -> text(cell, text));
        xml.close(1);
    }

    private void text(String name, String text, String... attributes) {
        xml.open(name, attributes);
        words(text).close(1);
    }

    /** The text, with a mark in place of control characters. */
    private Xml words(String text) {
        return xml.words(text.replaceAll("[\u007f-\u009f]", "\ufffd"));
    }
}
