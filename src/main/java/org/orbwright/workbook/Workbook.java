package org.orbwright.workbook;

import java.io.IOException;
import java.io.InputStream;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import javax.xml.transform.TransformerException;
import javax.xml.transform.TransformerFactory;
import javax.xml.transform.dom.DOMSource;
import javax.xml.transform.stream.StreamResult;
import org.orbwright.xml.Archive;
import org.orbwright.xml.XmlText;
import org.w3c.dom.Document;
import org.w3c.dom.NamedNodeMap;
import org.w3c.dom.Node;
import org.xml.sax.SAXException;

/**
 * The workbook as a file format keeps it. Its parts lie among the resources, {@code workbook/ods} and
 * {@code workbook/xlsx}, and {@link Contents} says what is filled in for {@code {{words in double braces}}} in a text
 * or an attribute. The row behind {@code <?each-list-row?>} is repeated for every place of the longest list.
 */
public enum Workbook {
    /** An OpenDocument spreadsheet (version 1.2, which is ISO/IEC 26300:2015, from memory). */
    OPEN_DOCUMENT("ods"),
    /** Office Open XML (ISO/IEC 29500:2016, transitional, from memory). */
    OFFICE_OPEN("xlsx");

    /** The media type of an OpenDocument spreadsheet. */
    public static final String OPEN_DOCUMENT_TYPE = "application/vnd.oasis.opendocument.spreadsheet";
    /** The media type of Office Open XML. */
    public static final String OFFICE_OPEN_TYPE = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet";

    private static final Pattern FILLED_IN = Pattern.compile("\\{\\{([^{}]+)}}");
    private static final String REPEATED = "each-list-row";

    private final String folder;

    Workbook(String folder) {
        this.folder = folder;
    }

    private List<String> parts() {
        return switch (this) {
            case OPEN_DOCUMENT ->
                List.of("content.xml", "styles.xml", "Chart/content.xml", "Chart/styles.xml", "META-INF/manifest.xml");
            case OFFICE_OPEN ->
                List.of(
                        "[Content_Types].xml",
                        "_rels/.rels",
                        "xl/workbook.xml",
                        "xl/_rels/workbook.xml.rels",
                        "xl/styles.xml",
                        "xl/worksheets/sheet1.xml",
                        "xl/worksheets/sheet2.xml",
                        "xl/worksheets/sheet3.xml",
                        "xl/worksheets/sheet4.xml",
                        "xl/worksheets/sheet5.xml",
                        "xl/worksheets/_rels/sheet3.xml.rels",
                        "xl/drawings/drawing1.xml",
                        "xl/drawings/_rels/drawing1.xml.rels",
                        "xl/charts/chart1.xml");
        };
    }

    /** The file's name. */
    public String file() {
        return "workbook." + folder;
    }

    /** The bytes of the file with these contents. */
    public byte[] write(Contents contents) {
        Archive archive = new Archive();
        if (this == OPEN_DOCUMENT) {
            archive.addStored("mimetype", OPEN_DOCUMENT_TYPE);
        }
        for (String part : parts()) {
            Document xml = read(part);
            repeatRows(xml);
            fill(xml, contents::text);
            archive.addBytes(part, text(xml).getBytes(StandardCharsets.UTF_8));
        }
        return archive.toBytes();
    }

    private Document read(String part) {
        try (InputStream in = Workbook.class.getResourceAsStream("/workbook/" + folder + "/" + part)) {
            return DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(in);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (ParserConfigurationException | SAXException e) {
            throw new IllegalStateException(part, e);
        }
    }

    private static void repeatRows(Node node) {
        Node next;
        for (Node child = node.getFirstChild(); child != null; child = next) {
            next = child.getNextSibling();
            if (child.getNodeType() == Node.PROCESSING_INSTRUCTION_NODE
                    && child.getNodeName().equals(REPEATED)) {
                Node row = elementBehind(child);
                for (int i = 0; i < Contents.longestList(); i++) {
                    Node copy = row.cloneNode(true);
                    int place = i;
                    fill(copy, words -> Contents.listed(words, place));
                    node.insertBefore(copy, child);
                }
                node.removeChild(child);
                next = row.getNextSibling();
                node.removeChild(row);
            } else {
                repeatRows(child);
            }
        }
    }

    private static Node elementBehind(Node mark) {
        Node behind = mark.getNextSibling();
        return behind.getNodeType() == Node.ELEMENT_NODE ? behind : elementBehind(behind);
    }

    /** Texts are set in the tree of the document, which is escaped when it is written. */
    private static void fill(Node node, UnaryOperator<String> texts) {
        String text = node.getNodeValue();
        if (text != null) {
            node.setNodeValue(FILLED_IN
                    .matcher(text)
                    .replaceAll(words -> Matcher.quoteReplacement(XmlText.legal(texts.apply(words.group(1))))));
        }
        NamedNodeMap attributes = node.getAttributes();
        for (int i = 0; attributes != null && i < attributes.getLength(); i++) {
            fill(attributes.item(i), texts);
        }
        for (Node child = node.getFirstChild(); child != null; child = child.getNextSibling()) {
            fill(child, texts);
        }
    }

    private static String text(Document xml) {
        StringWriter text = new StringWriter();
        try {
            TransformerFactory.newInstance().newTransformer().transform(new DOMSource(xml), new StreamResult(text));
        } catch (TransformerException e) {
            throw new IllegalStateException(e);
        }
        return text.toString();
    }
}
