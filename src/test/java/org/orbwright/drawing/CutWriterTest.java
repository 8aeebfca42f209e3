package org.orbwright.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.github.weisj.jsvg.parser.LoaderContext;
import com.github.weisj.jsvg.parser.SVGLoader;
import com.github.weisj.jsvg.view.ViewBox;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.orbwright.design.BandSet;
import org.orbwright.design.Design;
import org.orbwright.drawing.Outline.At;
import org.orbwright.drawing.Outline.Chain;
import org.orbwright.drawing.Outline.Layer;
import org.orbwright.drawing.Outline.LayerKind;
import org.orbwright.drawing.Outline.Note;
import org.orbwright.drawing.Outline.Round;
import org.orbwright.fixture.Designs;
import org.orbwright.notice.Notice;
import org.orbwright.notice.Notice.Kind;
import org.orbwright.quantity.LengthUnit;
import org.w3c.dom.Element;

/** What is cut as SVG, read again by an XML parser and measured in what another library draws of it. */
class CutWriterTest {
    private static final double INCH = 25.4;
    private static final Layer OUTLINE = Layer.of(LayerKind.OUTLINE);

    private static Element read(String svg) throws Exception {
        return DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(new ByteArrayInputStream(svg.getBytes(StandardCharsets.UTF_8)))
                .getDocumentElement();
    }

    private static double measure(Element svg, String side, LengthUnit unit) {
        String text = svg.getAttribute(side);
        assertTrue(text.endsWith(unit.symbol()), text);
        return Double.parseDouble(text.substring(0, text.length() - 2));
    }

    @ParameterizedTest
    @EnumSource(LengthUnit.class)
    void theSheetIsAsLargeAsThePanelInTheUnitAskedFor(LengthUnit unit) throws Exception {
        Design design = Designs.example("dodecahedron-two-spheres").build();
        Outline outline = PanelOutline.of(design, "pentagon", BandSet.UPRIGHT);
        Element svg = read(CutWriter.write(outline, unit, List.of()));
        // A regular pentagon is 1.61803... edges wide and half of tan 72 degrees edges high; the file has six decimals.
        Element path = (Element) svg.getElementsByTagName("path").item(0);
        double[] numbers = Pattern.compile("[^0-9.]+")
                .splitAsStream(path.getAttribute("d"))
                .filter(text -> !text.isEmpty())
                .mapToDouble(Double::parseDouble)
                .toArray();
        double edge = Math.hypot(numbers[2] - numbers[0], numbers[3] - numbers[1]);
        double width = measure(svg, "width", unit);
        assertEquals(edge * (1 + Math.sqrt(5)) / 2, width, 1e-5);
        assertEquals(edge * Math.tan(Math.toRadians(72)) / 2, measure(svg, "height", unit), 1e-5);
        double millimetres = unit == LengthUnit.MM ? width : width * INCH;
        assertEquals(OutlineExtent.of(outline).width(), millimetres, 1e-4);
        assertEquals(
                "0 0 " + (svg.getAttribute("width") + " " + svg.getAttribute("height")).replace(unit.symbol(), ""),
                svg.getAttribute("viewBox"));
    }

    @Test
    void nothingButWhatIsCutIsThereAndHolesComeFirst() throws Exception {
        At middle = new At(5, 5);
        Chain plate = new Chain(OUTLINE, List.of(new At(0, 0), new At(10, 0), new At(10, 10), new At(0, 10)), true);
        List<Outline.Shape> shapes = List.of(
                plate,
                new Chain(Layer.of(LayerKind.JOINT), List.of(new At(-50, 0), middle), false),
                new Chain(Layer.of(LayerKind.BEVEL), plate.points(), true),
                new Chain(Layer.band("oak", 0), plate.points(), true),
                new Round(Layer.of(LayerKind.SCREW_CIRCLE), middle, 4),
                new Round(Layer.of(LayerKind.HOLE), middle, 2),
                new Round(Layer.of(LayerKind.POCKET), middle, 3),
                new Note(Layer.of(LayerKind.NOTE), middle, 1, "words"));
        List<Notice> notices = List.of(
                new Notice(Kind.STOP, "SEAMS_OPEN", "Seams <open> & gape."),
                new Notice(Kind.WARN, "SMALL_SEGMENT", "Keep away."));
        String text = CutWriter.write(new Outline("a plate", shapes), LengthUnit.MM, notices);
        Element svg = read(text);
        assertEquals(
                List.of("HOLE", "POCKET", "OUTLINE"),
                Pattern.compile("<g id=\"([A-Z_]+)\"")
                        .matcher(text)
                        .results()
                        .map(group -> group.group(1))
                        .toList());
        assertEquals(1, svg.getElementsByTagName("path").getLength());
        assertEquals(2, svg.getElementsByTagName("circle").getLength());
        assertEquals(0, svg.getElementsByTagName("text").getLength());
        assertFalse(text.contains("words"));
        assertEquals("10mm", svg.getAttribute("width"));
        assertEquals(
                "Lengths in mm. STOP SEAMS_OPEN: Seams <open> & gape. WARN SMALL_SEGMENT: Keep away.",
                svg.getElementsByTagName("desc").item(0).getTextContent());
    }

    @ParameterizedTest
    @EnumSource(LengthUnit.class)
    void aHollowEdgeIsHollow(LengthUnit unit) {
        // 400 less a circle's segment of rise 5 and radius 12.5; the hole of radius 2 lies in what is left.
        List<At> corners = List.of(new At(10, 0), new At(10, 20), new At(-10, 20), new At(-10, 0));
        Chain hollow = new Chain(OUTLINE, corners, true, -0.5);
        Round hole = new Round(Layer.of(LayerKind.HOLE), new At(0, 12), 2);
        double segment = 12.5 * 12.5 * Math.acos(7.5 / 12.5) - 7.5 * 10;
        assertEquals(400 - segment, inked(List.of(hollow), unit), 1);
        assertEquals(Math.PI * 4, inked(List.of(hole), unit), 0.3);
    }

    /** Square millimetres that are filled where all lines are taken away and all shapes are filled. */
    private static double inked(List<Outline.Shape> shapes, LengthUnit unit) {
        String svg = CutWriter.write(new Outline("filled", shapes), unit, List.of())
                .replace("fill=\"none\"", "fill=\"#000000\"")
                .replaceAll("stroke=\"#[0-9a-f]+\"", "stroke=\"none\"");
        OutlineExtent extent = OutlineExtent.of(new Outline("filled", shapes));
        int dots = 40;
        int width = (int) Math.round(extent.width() * dots);
        int height = (int) Math.round(extent.height() * dots);
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D graphics = image.createGraphics();
        graphics.setColor(Color.WHITE);
        graphics.fillRect(0, 0, width, height);
        new SVGLoader()
                .load(
                        new ByteArrayInputStream(svg.getBytes(StandardCharsets.UTF_8)),
                        null,
                        LoaderContext.createDefault())
                .render(null, graphics, new ViewBox(0, 0, width, height));
        int dark = 0;
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                dark += (image.getRGB(x, y) & 0xff) < 128 ? 1 : 0;
            }
        }
        return dark / (double) (dots * dots);
    }
}
