package org.orbwright.drawing;

import java.io.StringWriter;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;
import org.orbwright.drawing.Drawing.Anchor;
import org.orbwright.drawing.Drawing.Area;
import org.orbwright.drawing.Drawing.Ink;
import org.orbwright.drawing.Drawing.Label;
import org.orbwright.drawing.Drawing.Line;
import org.orbwright.drawing.Drawing.Mark;
import org.orbwright.drawing.Drawing.Paper;
import org.orbwright.drawing.Drawing.Pen;
import org.orbwright.drawing.Drawing.Shade;
import org.orbwright.xml.XmlText;

/** Writes a drawing as SVG 1.1, one user unit a millimetre, with a title and a description for readers of screens. */
public final class SvgWriter {
    private static final String SVG = "http://www.w3.org/2000/svg";
    private static final String PAPER = "#ffffff";
    private static final String INK = "#1c1c1c";
    /** A hatch repeats some 80 times over the sheet, fine enough for narrow bands and coarse enough to be printed. */
    private static final double HATCHES_PER_SHEET = 80;

    /** Pens, as a share of the sheet, so that small and large drawings look alike. */
    private static final double THIN_PER_SHEET = 0.001;
    /** Width of the stroke that leaves a light rim around letters, as a share of their size. */
    private static final double RIM_PER_LETTER = 0.35;

    private final Drawing drawing;
    private final XMLStreamWriter xml;
    /** What every name of a part begins with, so that several drawings fit into one document. */
    private final String prefix;

    private SvgWriter(Drawing drawing, XMLStreamWriter xml, String prefix) {
        this.drawing = drawing;
        this.xml = xml;
        this.prefix = prefix;
    }

    /** The drawing as an SVG document. */
    public static String write(Drawing drawing) {
        StringWriter text = new StringWriter();
        try {
            XMLStreamWriter xml = XMLOutputFactory.newInstance().createXMLStreamWriter(text);
            xml.writeStartDocument("UTF-8", "1.0");
            new SvgWriter(drawing, xml, "").element();
            xml.writeEndDocument();
            xml.close();
        } catch (XMLStreamException e) {
            throw new IllegalStateException(e);
        }
        return text.toString();
    }

    /**
     * Writes the drawing as an element of a larger document.
     *
     * @param drawing the drawing
     * @param xml where to
     * @param prefix what the names of its parts begin with, another one for each drawing of a document
     * @throws XMLStreamException if it cannot be written
     */
    public static void write(Drawing drawing, XMLStreamWriter xml, String prefix) throws XMLStreamException {
        new SvgWriter(drawing, xml, prefix).element();
    }

    private void element() throws XMLStreamException {
        String width = PathData.number(drawing.width());
        String height = PathData.number(drawing.height());
        xml.writeStartElement("svg");
        xml.writeDefaultNamespace(SVG);
        attributes("version", "1.1", "width", width + "mm", "height", height + "mm");
        attributes("viewBox", "0 0 " + width + " " + height);
        text("title", "title", drawing.title());
        text("desc", "description", drawing.description());
        patterns();
        xml.writeEmptyElement("rect");
        attributes("width", width, "height", height, "fill", PAPER);
        for (Mark mark : drawing.marks()) {
            mark(mark);
        }
        xml.writeEndElement();
    }

    private void text(String element, String id, String content) throws XMLStreamException {
        xml.writeStartElement(element);
        attributes("id", prefix + id);
        xml.writeCharacters(XmlText.legal(content));
        xml.writeEndElement();
    }

    private void patterns() throws XMLStreamException {
        double size = drawing.width() / HATCHES_PER_SHEET;
        xml.writeStartElement("defs");
        int[] tones = drawing.marks().stream()
                .filter(mark -> mark instanceof Area area && area.hatched())
                .mapToInt(mark -> ((Area) mark).tone())
                .distinct()
                .sorted()
                .toArray();
        for (int tone : tones) {
            xml.writeStartElement("pattern");
            attributes("id", prefix + "wood-" + tone, "patternUnits", "userSpaceOnUse");
            attributes("width", PathData.number(size), "height", PathData.number(size));
            xml.writeEmptyElement("path");
            attributes(
                    "d",
                    Tones.hatch(tone).toString(),
                    "stroke",
                    Tones.line(tone),
                    "stroke-width",
                    "0.9",
                    "fill",
                    "none");
            attributes("transform", "scale(" + PathData.number(size / Tones.HATCH_SIZE) + ")");
            xml.writeEndElement();
        }
        if (drawing.marks().stream().anyMatch(Shade.class::isInstance)) {
            ShadeGradient.define(xml, prefix);
        }
        xml.writeEndElement();
    }

    private void mark(Mark mark) throws XMLStreamException {
        if (mark instanceof Area area) {
            area(area);
        } else if (mark instanceof Shade shade) {
            ShadeGradient.lay(shade, xml, prefix);
        } else if (mark instanceof Paper paper) {
            xml.writeEmptyElement("path");
            attributes("d", paper.path().toString(), "fill", PAPER, "fill-rule", "evenodd");
            attributes("fill-opacity", PathData.number(paper.opacity()));
            pen(paper.pen());
        } else if (mark instanceof Ink ink) {
            xml.writeEmptyElement("path");
            attributes("d", ink.path().toString(), "fill", INK);
        } else if (mark instanceof Line line) {
            line(line);
        } else if (mark instanceof Label label) {
            label(label);
        }
    }

    private void line(Line line) throws XMLStreamException {
        String path = line.path().toString();
        if (line.pen() == Pen.CASED || line.pen() == Pen.DASHED || line.pen() == Pen.CHAIN) {
            double casing = (line.pen() == Pen.CASED ? 4 : 2) * thin();
            xml.writeEmptyElement("path");
            attributes("d", path, "fill", "none", "stroke", PAPER, "stroke-width", PathData.number(casing));
        }
        xml.writeEmptyElement("path");
        attributes("d", path, "fill", "none");
        pen(line.pen());
    }

    /** The tone below and the hatch above it: a pattern with a ground of its own shows its joints in some viewers. */
    private void area(Area area) throws XMLStreamException {
        String path = area.path().toString();
        xml.writeEmptyElement("path");
        attributes("d", path, "fill", Tones.fill(area.tone()));
        if (area.hatched()) {
            xml.writeEmptyElement("path");
            attributes("d", path, "fill", "url(#" + prefix + "wood-" + area.tone() + ")");
        }
        pen(area.pen());
    }

    private void pen(Pen pen) throws XMLStreamException {
        double thin = thin();
        double width = switch (pen) {
            case NONE -> 0;
            case THIN -> thin;
            case CASED -> 1.5 * thin;
            case MEDIUM, DASHED, CHAIN -> 2 * thin;
            case THICK -> 3.5 * thin;
        };
        if (width > 0) {
            attributes("stroke", INK, "stroke-width", PathData.number(width), "stroke-linejoin", "round");
        }
        if (pen == Pen.DASHED) {
            attributes("stroke-dasharray", PathData.number(8 * thin) + " " + PathData.number(5 * thin));
        } else if (pen == Pen.CHAIN) {
            String gap = " " + PathData.number(3.5 * thin) + " ";
            String dash = PathData.number(14 * thin);
            attributes("stroke-dasharray", dash + gap + PathData.number(3 * thin) + gap.stripTrailing());
        }
    }

    private double thin() {
        return drawing.width() * THIN_PER_SHEET;
    }

    private void label(Label label) throws XMLStreamException {
        switch (label.letters()) {
            case PLAIN -> letters(label, "fill", INK);
            case REVERSED -> letters(label, "fill", PAPER, "font-weight", "bold");
            case CASED -> {
                String rim = PathData.number(RIM_PER_LETTER * label.size());
                letters(label, "fill", PAPER, "stroke", PAPER, "stroke-width", rim, "stroke-linejoin", "round");
                letters(label, "fill", INK);
            }
        }
    }

    private void letters(Label label, String... style) throws XMLStreamException {
        xml.writeStartElement("text");
        attributes("x", PathData.number(label.x()), "y", PathData.number(label.y()));
        attributes("font-size", PathData.number(label.size()), "font-family", "sans-serif");
        attributes(style);
        if (label.anchor() != Anchor.START) {
            attributes("text-anchor", label.anchor() == Anchor.MIDDLE ? "middle" : "end");
        }
        xml.writeCharacters(XmlText.legal(label.text()));
        xml.writeEndElement();
    }

    private void attributes(String... namesAndValues) throws XMLStreamException {
        for (int i = 0; i < namesAndValues.length; i += 2) {
            xml.writeAttribute(namesAndValues[i], namesAndValues[i + 1]);
        }
    }
}
