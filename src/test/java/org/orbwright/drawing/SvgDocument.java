package org.orbwright.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilderFactory;
import org.w3c.dom.Attr;
import org.w3c.dom.Element;
import org.w3c.dom.NamedNodeMap;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

/** A written drawing, read again by another parser than the one that is used for pictures. */
record SvgDocument(Element root, List<Element> elements) {
    private static final String SVG = "http://www.w3.org/2000/svg";
    private static final Set<String> ELEMENTS =
            Set.of("svg", "title", "desc", "defs", "pattern", "path", "rect", "text", "radialGradient", "stop");
    private static final Pattern REFERENCE = Pattern.compile("url\\(#([^)]*)\\)");
    private static final Pattern COORDINATES =
            Pattern.compile("[ML](-?[0-9.]+) (-?[0-9.]+)|A[0-9.]+ [0-9.]+ 0 [01] [01] (-?[0-9.]+) (-?[0-9.]+)|Z");

    static SvgDocument of(Drawing drawing) {
        try {
            DocumentBuilderFactory factory = DocumentBuilderFactory.newDefaultInstance();
            factory.setNamespaceAware(true);
            factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
            Element root = factory.newDocumentBuilder()
                    .parse(new InputSource(new StringReader(SvgWriter.write(drawing))))
                    .getDocumentElement();
            List<Element> elements = new ArrayList<>();
            NodeList nodes = root.getElementsByTagName("*");
            for (int i = 0; i < nodes.getLength(); i++) {
                elements.add((Element) nodes.item(i));
            }
            return new SvgDocument(root, elements);
        } catch (Exception e) {
            throw new AssertionError(drawing.title() + " is not well-formed", e);
        }
    }

    /** Holds the document to what SVG 1.1 asks of its structure. */
    void check(Drawing drawing) {
        assertEquals("svg", root.getLocalName());
        assertEquals("1.1", root.getAttribute("version"));
        assertTrue(root.getAttribute("width").endsWith("mm"), "width states its unit");
        assertTrue(root.getAttribute("height").endsWith("mm"), "height states its unit");
        String[] box = root.getAttribute("viewBox").split(" ", -1);
        assertEquals(4, box.length);
        double width = Double.parseDouble(box[2]);
        double height = Double.parseDouble(box[3]);
        assertEquals(drawing.title(), text("title"));
        assertEquals(drawing.description(), text("desc"));
        assertTrue(drawing.description().length() > 60, "says in words what is drawn");
        Set<String> ids = new HashSet<>();
        for (Element element : elements) {
            assertEquals(SVG, element.getNamespaceURI());
            assertTrue(ELEMENTS.contains(element.getLocalName()), element.getLocalName());
            String id = element.getAttribute("id");
            assertTrue(id.isEmpty() || ids.add(id), "unique id " + id);
        }
        elements.forEach(element -> references(element, ids));
        elements.stream().filter(e -> e.getLocalName().equals("path")).forEach(path -> path(path, width, height));
    }

    private String text(String element) {
        return root.getElementsByTagNameNS(SVG, element).item(0).getTextContent();
    }

    private static void references(Element element, Set<String> ids) {
        NamedNodeMap attributes = element.getAttributes();
        for (int i = 0; i < attributes.getLength(); i++) {
            Matcher matcher = REFERENCE.matcher(((Attr) attributes.item(i)).getValue());
            while (matcher.find()) {
                assertTrue(ids.contains(matcher.group(1)), "resolves " + matcher.group());
            }
        }
    }

    /** Path data in the words of the grammar, and on the sheet unless it belongs to a hatch. */
    private static void path(Element path, double width, double height) {
        String data = path.getAttribute("d");
        assertFalse(data.contains("NaN") || data.contains("E"), data);
        if (((Element) path.getParentNode()).getLocalName().equals("pattern")) {
            return;
        }
        Matcher matcher = COORDINATES.matcher(data);
        int end = 0;
        while (matcher.find()) {
            assertEquals(end, matcher.start(), data);
            end = matcher.end();
            String x = matcher.group(1) == null ? matcher.group(3) : matcher.group(1);
            String y = matcher.group(2) == null ? matcher.group(4) : matcher.group(2);
            if (x != null) {
                onSheet(Double.parseDouble(x), width, "x");
                onSheet(Double.parseDouble(y), height, "y");
            }
        }
        assertEquals(data.length(), end, data);
    }

    private static void onSheet(double at, double size, String axis) {
        assertTrue(at >= 0 && at <= size, () -> axis + " on the sheet: " + at);
    }
}
