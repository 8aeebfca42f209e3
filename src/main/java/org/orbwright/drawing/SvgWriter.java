package org.orbwright.drawing;

import java.io.StringWriter;
import org.orbwright.xml.Xml;

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
    private final Xml xml;
    /** What every name of a part begins with, so that several drawings fit into one document. */
    private final String prefix;

    private SvgWriter(Drawing drawing, Xml xml, String prefix) {
        this.drawing = drawing;
        this.xml = xml;
        this.prefix = prefix;
    }

    /** The drawing as an SVG document. */
    public static String write(Drawing drawing) {
        StringWriter text = new StringWriter();
        Xml xml = new Xml(text);
        write(drawing, xml, "");
        xml.end();
        return text.toString();
    }

    /** Writes the drawing within a larger document, the names of its parts with a prefix of their own. */
    public static void write(Drawing drawing, Xml xml, String prefix) {
        new SvgWriter(drawing, xml, prefix).element();
    }

    private void element() {
        String width = PathData.number(drawing.width());
        String height = PathData.number(drawing.height());
        xml.open("svg", "xmlns", SVG, "version", "1.1", "width", width + "mm", "height", height + "mm");
        xml.attributes("viewBox", "0 0 " + width + " " + height);
        xml.text("title", drawing.title(), "id", prefix + "title");
        xml.text("desc", drawing.description(), "id", prefix + "description");
        patterns();
        xml.empty("rect", "width", width, "height", height, "fill", PAPER);
        drawing.marks().forEach(this::mark);
        xml.close(1);
    }

    private void patterns() {
        double size = drawing.width() / HATCHES_PER_SHEET;
        xml.open("defs");
        int[] tones = drawing.marks().stream()
                .filter(mark -> mark instanceof Area area && area.hatched())
                .mapToInt(mark -> ((Area) mark).tone())
                .distinct()
                .sorted()
                .toArray();
        for (int tone : tones) {
            xml.open("pattern", "id", prefix + "wood-" + tone, "patternUnits", "userSpaceOnUse");
            xml.attributes("width", PathData.number(size), "height", PathData.number(size));
            xml.empty("path", "d", Tones.hatch(tone).toString(), "stroke", Tones.line(tone));
            xml.attributes("stroke-width", "0.9", "fill", "none");
            xml.attributes("transform", "scale(" + PathData.number(size / Tones.HATCH_SIZE) + ")");
            xml.close(1);
        }
        if (drawing.marks().stream().anyMatch(Shade.class::isInstance)) {
            ShadeGradient.define(xml, prefix);
        }
        xml.close(1);
    }

    private void mark(Mark mark) {
        if (mark instanceof Area area) {
            area(area);
        } else if (mark instanceof Shade shade) {
            ShadeGradient.lay(shade, xml, prefix);
        } else if (mark instanceof Paper paper) {
            xml.empty("path", "d", paper.path().toString(), "fill", PAPER, "fill-rule", "evenodd");
            xml.attributes("fill-opacity", PathData.number(paper.opacity()));
            pen(paper.pen());
        } else if (mark instanceof Ink ink) {
            xml.empty("path", "d", ink.path().toString(), "fill", INK);
        } else if (mark instanceof Line line) {
            line(line);
        } else if (mark instanceof Label label) {
            label(label);
        }
    }

    private void line(Line line) {
        String path = line.path().toString();
        if (line.pen() == Pen.CASED || line.pen() == Pen.DASHED || line.pen() == Pen.CHAIN) {
            double casing = (line.pen() == Pen.CASED ? 4 : 2) * thin();
            xml.empty("path", "d", path, "fill", "none", "stroke", PAPER, "stroke-width", PathData.number(casing));
        }
        xml.empty("path", "d", path, "fill", "none");
        pen(line.pen());
    }

    /** The tone below and the hatch above it: a pattern with a ground of its own shows its joints in some viewers. */
    private void area(Area area) {
        String path = area.path().toString();
        xml.empty("path", "d", path, "fill", Tones.fill(area.tone()));
        if (area.hatched()) {
            xml.empty("path", "d", path, "fill", "url(#" + prefix + "wood-" + area.tone() + ")");
        }
        pen(area.pen());
    }

    private void pen(Pen pen) {
        double thin = thin();
        double width = switch (pen) {
            case NONE -> 0;
            case THIN -> thin;
            case CASED -> 1.5 * thin;
            case MEDIUM, DASHED, CHAIN -> 2 * thin;
            case THICK -> 3.5 * thin;
        };
        if (width > 0) {
            xml.attributes("stroke", INK, "stroke-width", PathData.number(width), "stroke-linejoin", "round");
        }
        if (pen == Pen.DASHED) {
            xml.attributes("stroke-dasharray", PathData.number(8 * thin) + " " + PathData.number(5 * thin));
        } else if (pen == Pen.CHAIN) {
            String gap = " " + PathData.number(3.5 * thin) + " ";
            String dash = PathData.number(14 * thin);
            xml.attributes("stroke-dasharray", dash + gap + PathData.number(3 * thin) + gap.stripTrailing());
        }
    }

    private double thin() {
        return drawing.width() * THIN_PER_SHEET;
    }

    private void label(Label label) {
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

    private void letters(Label label, String... style) {
        xml.open("text", "x", PathData.number(label.x()), "y", PathData.number(label.y()));
        xml.attributes("font-size", PathData.number(label.size()), "font-family", "sans-serif");
        xml.attributes(style);
        if (label.anchor() != Anchor.START) {
            xml.attributes("text-anchor", label.anchor() == Anchor.MIDDLE ? "middle" : "end");
        }
        xml.words(label.text());
        xml.close(1);
    }
}
