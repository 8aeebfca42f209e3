package org.orbwright.drawing;

import java.io.StringWriter;
import java.util.List;
import java.util.Map;
import org.orbwright.drawing.Outline.At;
import org.orbwright.drawing.Outline.Chain;
import org.orbwright.drawing.Outline.LayerKind;
import org.orbwright.drawing.Outline.Round;
import org.orbwright.drawing.Outline.Shape;
import org.orbwright.notice.Notice;
import org.orbwright.quantity.LengthUnit;
import org.orbwright.quantity.Rounding;
import org.orbwright.xml.Xml;

/**
 * Writes what a laser or a router cuts, and nothing else, as SVG 1.1 at true size: one user unit is a millimetre or an
 * inch, and the sheet is as large as what is cut. Each layer is a group with a colour of its own. What lies within
 * another outline comes before it, since a part that is cut out may move. There are no letters: a machine would cut
 * them. The unit and the notices stand in the description.
 */
public final class CutWriter {
    private static final int DECIMALS = 6;
    /** Width of the lines in millimetres; programs take thin lines for cuts. */
    private static final double HAIRLINE = 0.1;
    /** What is cut, the innermost first, with the colours that programs for lasers tell apart. */
    private static final List<Map.Entry<LayerKind, String>> CUT = List.of(
            Map.entry(LayerKind.HOLE, "#ff0000"),
            Map.entry(LayerKind.POCKET, "#0000ff"),
            Map.entry(LayerKind.OUTLINE, "#000000"));

    private final Outline outline;
    private final OutlineExtent extent;
    private final LengthUnit unit;
    private final Xml xml;

    private CutWriter(Outline outline, LengthUnit unit, Xml xml) {
        this.outline = outline;
        this.extent = OutlineExtent.of(outline);
        this.unit = unit;
        this.xml = xml;
    }

    /** The outlines that are cut as a file in a unit; the notices are what it tells whoever opens it. */
    public static String write(Outline outline, LengthUnit unit, List<Notice> notices) {
        List<Shape> cut = outline.shapes().stream()
                .filter(shape -> CUT.stream()
                        .anyMatch(layer -> layer.getKey() == shape.layer().kind()))
                .toList();
        StringWriter text = new StringWriter();
        new CutWriter(new Outline(outline.title(), cut), unit, new Xml(text)).file(notices);
        return text.toString();
    }

    private void file(List<Notice> notices) {
        String width = number(extent.width());
        String height = number(extent.height());
        xml.open("svg", "xmlns", "http://www.w3.org/2000/svg", "version", "1.1");
        xml.attributes("width", width + unit.symbol(), "height", height + unit.symbol());
        xml.attributes("viewBox", "0 0 " + width + " " + height, "overflow", "visible");
        xml.text("title", outline.title());
        StringBuilder told = new StringBuilder("Lengths in " + unit.symbol() + ".");
        notices.forEach(notice -> told.append(' ').append(notice.line()));
        xml.text("desc", told.toString());
        CUT.forEach(layer -> group(layer.getKey(), layer.getValue()));
        xml.close(1).end();
    }

    private void group(LayerKind kind, String colour) {
        List<Shape> shapes = outline.shapes().stream()
                .filter(shape -> shape.layer().kind() == kind)
                .toList();
        if (shapes.isEmpty()) {
            return;
        }
        xml.open("g", "id", kind.name(), "fill", "none", "stroke", colour, "stroke-width", number(HAIRLINE));
        for (Shape shape : shapes) {
            if (shape instanceof Round round) {
                xml.empty("circle", "cx", x(round.centre()), "cy", y(round.centre()), "r", number(round.radius()));
            } else if (shape instanceof Chain chain) {
                xml.empty("path", "d", path(chain));
            }
        }
        xml.close(1);
    }

    private String path(Chain chain) {
        StringBuilder path = new StringBuilder();
        for (At at : chain.points()) {
            path.append(path.isEmpty() ? "M" : " L").append(point(at));
        }
        if (chain.bulge() != 0) {
            String radius = number(chain.radius());
            path.append(" A").append(radius).append(' ').append(radius).append(" 0 ");
            path.append(Math.abs(chain.bulge()) > 1 ? "1 " : "0 ").append(chain.bulge() < 0 ? "1 " : "0 ");
            path.append(point(chain.points().get(0)));
        }
        return chain.closed() ? path + " Z" : path.toString();
    }

    private String point(At at) {
        return x(at) + " " + y(at);
    }

    private String x(At at) {
        return number(at.x() - extent.left());
    }

    /** On a sheet y runs down. */
    private String y(At at) {
        return number(extent.high() - at.y());
    }

    private String number(double millimetres) {
        return Rounding.plain(unit.fromMillimetres(millimetres), DECIMALS);
    }
}
