package org.orbwright.paper;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.orbwright.design.DesignRequest;
import org.orbwright.fixture.Designs;
import org.orbwright.paper.ShopSheet.Check;
import org.orbwright.paper.ShopSheet.Picture;
import org.orbwright.paper.ShopSheet.Step;
import org.orbwright.paper.ShopSheet.Table;
import org.orbwright.paper.ShopSheet.Value;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;

/** A sheet in HTML, read back by a parser of XML. */
class HtmlWriterTest {
    private static ShopSheet sheet(DesignRequest design) {
        return ShopSheetCalculator.sheet(org.orbwright.document.Document.of(design));
    }

    private static Document parse(String html) throws ParserConfigurationException, IOException, SAXException {
        return DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(new InputSource(new StringReader(html)));
    }

    private static List<Element> elements(Document page, String name) {
        List<Element> elements = new ArrayList<>();
        NodeList found = page.getElementsByTagName(name);
        for (int i = 0; i < found.getLength(); i++) {
            elements.add((Element) found.item(i));
        }
        return elements;
    }

    private static List<String> texts(Document page, String name) {
        return elements(page, name).stream().map(Element::getTextContent).toList();
    }

    private static <T extends Step> List<T> steps(ShopSheet sheet, Class<T> type) {
        return sheet.sections().stream()
                .flatMap(section -> section.steps().stream())
                .filter(type::isInstance)
                .map(type::cast)
                .toList();
    }

    @ParameterizedTest
    @ValueSource(strings = {"dodecahedron-two-spheres", "truncated-octahedron-alternating", "cube-with-chevrons"})
    void everyNumberIsThereInItsOrder(String name) throws Exception {
        ShopSheet sheet = sheet(Designs.example(name).request());
        Document page = parse(HtmlWriter.write(sheet));
        List<String> cells = new ArrayList<>();
        for (Step step :
                sheet.sections().stream().flatMap(s -> s.steps().stream()).toList()) {
            if (step instanceof Value value) {
                String blank = value.measured() ? "measured: \u00a0" : "";
                cells.addAll(List.of(value.label(), value.number(), value.unit(), value.fraction(), blank));
            } else if (step instanceof Table table) {
                table.rows().forEach(cells::addAll);
            }
        }
        assertEquals(cells, texts(page, "td"));
        assertEquals(steps(sheet, Check.class).size(), elements(page, "input").size());
        assertEquals(steps(sheet, Picture.class).size(), elements(page, "svg").size());
        assertEquals(sheet.sections().stream().map(ShopSheet.Section::title).toList(), texts(page, "h2"));
    }

    @Test
    void thePageSaysItsLanguageAndNothingIsLoadedOrRun() throws Exception {
        Document page = parse(HtmlWriter.write(
                sheet(Designs.example("dodecahedron-vanishing-rim").request())));
        assertEquals("en", page.getDocumentElement().getAttribute("lang"));
        assertEquals(1, elements(page, "h1").size());
        assertEquals("STOP", texts(page, "strong").get(0));
        for (String loaded : List.of("script", "link", "img", "iframe", "object")) {
            assertTrue(elements(page, loaded).isEmpty(), loaded);
        }
    }

    @Test
    void noNameIsGivenTwiceAndEveryOneThatIsMeantIsThere() throws Exception {
        String html =
                HtmlWriter.write(sheet(Designs.example("truncated-icosahedron").request()));
        Set<String> ids = new HashSet<>();
        for (Element element : elements(parse(html), "*")) {
            String id = element.getAttribute("id");
            assertTrue(id.isEmpty() || ids.add(id), id + " is given twice");
        }
        for (Element element : elements(parse(html), "path")) {
            String fill = element.getAttribute("fill");
            if (fill.startsWith("url(#")) {
                assertTrue(ids.contains(fill.substring(5, fill.length() - 1)), fill);
            }
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "<script>alert(1)</script>",
                "]]> & \"'\u0001\u009b",
                "\ud800 \ufffe",
                "\u05db\u05d3\u05d5\u05e8 \ud83e\udeb5"
            })
    void oddNamesAreText(String name) throws Exception {
        DesignRequest design = Designs.named(name, Designs.of("cube").request());
        Document page = parse(HtmlWriter.write(sheet(design)));
        assertTrue(elements(page, "script").isEmpty());
        String shown = name.replaceAll("[\u0001\u009b\ud800\ufffe]", "\ufffd");
        assertEquals(List.of(shown), texts(page, "h1"));
    }
}
