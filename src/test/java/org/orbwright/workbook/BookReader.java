package org.orbwright.workbook;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.IntStream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;

/** Reads a workbook of either format into one form, with the JDK's ZIP and XML alone. */
final class BookReader {
    /** Formulas as Office Open XML writes them, each part of a rule from memory of ISO/IEC 26300-2 and 29500-1. */
    private static final List<String[]> DIALECT = List.of(
            new String[] {"^of:=", ""},
            new String[] {"\\[\\$([A-Z][a-z]+)\\.([A-Z]+[0-9]+)]", "$1!$2"},
            new String[] {"\\[\\.([A-Z]+[0-9]+)]", "$1"},
            new String[] {"COM\\.MICROSOFT\\.", "_xlfn."},
            new String[] {"(?<![A-Z.])NUMBERVALUE", "_xlfn.NUMBERVALUE"},
            new String[] {";(?=([^\"]*\"[^\"]*\")*[^\"]*$)", ","});

    private final Map<String, byte[]> parts = new LinkedHashMap<>();

    private final Map<String, Cell> cells = new TreeMap<>();

    BookReader(byte[] file) {
        try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(file))) {
            for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
                parts.put(entry.getName(), zip.readAllBytes());
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /**
     * A cell.
     *
     * @param formula its formula, blank where it has none
     * @param value the text or the digits that stand in it
     * @param kind text, number or truth, of what stands there
     */
    record Cell(String formula, String value, String kind) {}

    Map<String, byte[]> parts() {
        return parts;
    }

    Document xml(String part) throws Exception {
        DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
        return factory.newDocumentBuilder().parse(new ByteArrayInputStream(parts.get(part)));
    }

    static List<Element> all(Node node, String name) {
        NodeList found = node instanceof Document document
                ? document.getElementsByTagName(name)
                : ((Element) node).getElementsByTagName(name);
        return IntStream.range(0, found.getLength())
                .mapToObj(i -> (Element) found.item(i))
                .toList();
    }

    private static String first(Element element, String name) {
        return all(element, name).stream().findFirst().map(Node::getTextContent).orElse("");
    }

    private boolean isOpenDocument() {
        return parts.containsKey("mimetype");
    }

    /** The cells that hold something, by their sheet and place, such as {@code Design!B4}. */
    Map<String, Cell> cells() throws Exception {
        if (!cells.isEmpty()) {
            return new TreeMap<>(cells);
        }
        if (isOpenDocument()) {
            for (Element sheet : all(xml("content.xml"), "table:table")) {
                addOpenDocument(sheet, cells);
            }
        } else {
            List<Element> sheets = all(xml("xl/workbook.xml"), "sheet");
            for (int i = 0; i < sheets.size(); i++) {
                addOfficeOpen(sheets.get(i).getAttribute("name"), xml("xl/worksheets/sheet" + (i + 1) + ".xml"), cells);
            }
        }
        cells.values().removeIf(cell -> cell.formula().isEmpty() && cell.value().isEmpty());
        return new TreeMap<>(cells);
    }

    private static void addOpenDocument(Element sheet, Map<String, Cell> cells) {
        int row = 0;
        for (Element line : all(sheet, "table:table-row")) {
            row++;
            int column = 0;
            for (Node node = line.getFirstChild(); node != null; node = node.getNextSibling()) {
                if (node instanceof Element cell) {
                    String place = sheet.getAttribute("table:name") + "!" + (char) ('A' + column) + row;
                    cells.put(place, openDocument(cell));
                    String repeated = cell.getAttribute("table:number-columns-repeated");
                    column += repeated.isEmpty() ? 1 : Integer.parseInt(repeated);
                }
            }
        }
    }

    private static Cell openDocument(Element cell) {
        String kind = cell.getAttribute("office:value-type");
        return switch (kind) {
            case "float" -> new Cell(formula(cell), cell.getAttribute("office:value"), "number");
            case "boolean" -> new Cell(formula(cell), cell.getAttribute("office:boolean-value"), "truth");
            default -> new Cell(formula(cell), first(cell, "text:p"), "text");
        };
    }

    private static String formula(Element cell) {
        String formula = cell.getAttribute("table:formula");
        for (String[] rule : DIALECT) {
            formula = formula.replaceAll(rule[0], rule[1]);
        }
        return formula;
    }

    private static void addOfficeOpen(String sheet, Document xml, Map<String, Cell> cells) {
        for (Element cell : all(xml, "c")) {
            String type = cell.getAttribute("t");
            String kind = type.equals("b") ? "truth" : type.isEmpty() ? "number" : "text";
            String stored = first(cell, type.equals("inlineStr") ? "t" : "v");
            String value = kind.equals("truth") ? String.valueOf(stored.equals("1")) : stored;
            cells.put(sheet + "!" + cell.getAttribute("r"), new Cell(first(cell, "f"), value, kind));
        }
    }

    /**
     * What the names mean, such as {@code Lists!A2:A32}; the rows that are printed again on each page, by their sheet.
     */
    Map<String, String> names() throws Exception {
        Map<String, String> names = new TreeMap<>();
        if (!isOpenDocument()) {
            Document book = xml("xl/workbook.xml");
            List<Element> sheets = all(book, "sheet");
            for (Element name : all(book, "definedName")) {
                String local = name.getAttribute("localSheetId");
                names.put(
                        local.isEmpty()
                                ? name.getAttribute("name")
                                : "titles of "
                                        + sheets.get(Integer.parseInt(local)).getAttribute("name"),
                        local.isEmpty()
                                ? name.getTextContent().replace("$", "")
                                : name.getTextContent().replaceAll(".*:\\$", ""));
            }
            return names;
        }
        Document content = xml("content.xml");
        for (Element name : all(content, "table:named-range")) {
            String range = name.getAttribute("table:cell-range-address").replace("$", "");
            names.put(name.getAttribute("table:name"), range.replace(":.", ":").replace('.', '!'));
        }
        for (Element sheet : all(content, "table:table")) {
            List<Element> rows = all(all(sheet, "table:table-header-rows").get(0), "table:table-row");
            names.put("titles of " + sheet.getAttribute("table:name"), Integer.toString(rows.size()));
        }
        return names;
    }

    /** The names of the lists that are offered, by the cells that offer them. */
    Map<String, String> choices() throws Exception {
        Map<String, String> choices = new TreeMap<>();
        if (!isOpenDocument()) {
            for (Element offered : all(xml("xl/worksheets/sheet1.xml"), "dataValidation")) {
                places(offered.getAttribute("sqref")).forEach(place -> choices.put(place, first(offered, "formula1")));
            }
            return choices;
        }
        Map<String, String> lists = new TreeMap<>();
        for (Element offered : all(xml("content.xml"), "table:content-validation")) {
            String condition = offered.getAttribute("table:condition");
            lists.put(
                    offered.getAttribute("table:name"),
                    condition.replaceAll("of:cell-content-is-in-list\\(([a-z]+)\\)", "$1"));
        }
        Element design = all(xml("content.xml"), "table:table").get(0);
        int row = 0;
        for (Element line : all(design, "table:table-row")) {
            row++;
            List<Element> cells = all(line, "table:table-cell");
            for (int column = 0; column < cells.size(); column++) {
                String list = cells.get(column).getAttribute("table:content-validation-name");
                if (!list.isEmpty()) {
                    choices.put((char) ('A' + column) + Integer.toString(row), lists.get(list));
                }
            }
        }
        return choices;
    }

    private static List<String> places(String range) {
        String[] ends = range.split(":", -1);
        int last = Integer.parseInt(ends[ends.length - 1].substring(1));
        List<String> places = new ArrayList<>();
        for (int row = Integer.parseInt(ends[0].substring(1)); row <= last; row++) {
            places.add(ends[0].substring(0, 1) + row);
        }
        return places;
    }
}
