package org.orbwright.workbook;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Computes the few functions of texts by which the workbook makes its query, as a spreadsheet does. Formulas are read
 * as Office Open XML has them, and the cells that they name are computed in turn.
 */
final class FormulaReader {
    private static final Pattern REFERENCE = Pattern.compile("(?:[A-Z][a-z]+!)?[A-Z][0-9]+");
    private static final String TRUE = "true";

    private final Map<String, BookReader.Cell> cells;
    /** What is computed already, since a cell may be named many times. */
    private final Map<String, String> known;

    private final String sheet;
    private final String formula;
    private int at;

    private FormulaReader(Map<String, BookReader.Cell> cells, Map<String, String> known, String sheet, String formula) {
        this.cells = cells;
        this.known = known;
        this.sheet = sheet;
        this.formula = formula;
    }

    /** The text of a cell, such as {@code Design!B4}. */
    static String text(Map<String, BookReader.Cell> cells, String place) {
        return text(cells, new HashMap<>(), place);
    }

    private static String text(Map<String, BookReader.Cell> cells, Map<String, String> known, String place) {
        BookReader.Cell cell = cells.get(place);
        if (cell == null || cell.formula().isEmpty()) {
            return cell == null ? "" : cell.value();
        }
        if (!known.containsKey(place)) {
            known.put(place, new FormulaReader(cells, known, place.split("!", -1)[0], cell.formula()).whole());
        }
        return known.get(place);
    }

    private String whole() {
        String text = comparison();
        if (at < formula.length()) {
            throw new IllegalArgumentException("no formula from " + formula.substring(at));
        }
        return text;
    }

    private boolean takes(String word) {
        boolean there = formula.startsWith(word, at);
        at += there ? word.length() : 0;
        return there;
    }

    private void expect(String word) {
        if (!takes(word)) {
            throw new IllegalArgumentException(word + " is missing at " + formula.substring(at));
        }
    }

    private String comparison() {
        String left = joined();
        return takes("=") ? String.valueOf(left.equals(joined())) : left;
    }

    private String joined() {
        StringBuilder text = new StringBuilder(part());
        while (takes("&")) {
            text.append(part());
        }
        return text.toString();
    }

    private String part() {
        if (takes("\"")) {
            int from = at;
            at = formula.indexOf('"', from) + 1;
            return formula.substring(from, at - 1);
        }
        if (takes("_xlfn.ENCODEURL(")) {
            String text = comparison();
            expect(")");
            return URLEncoder.encode(text, StandardCharsets.UTF_8).replace("+", "%20");
        }
        if (takes("AND(")) {
            boolean both = comparison().equals(TRUE);
            expect(",");
            both &= comparison().equals(TRUE);
            expect(")");
            return String.valueOf(both);
        }
        return takes("IF(") ? chosen() : referred();
    }

    private String chosen() {
        String condition = comparison();
        expect(",");
        String yes = comparison();
        expect(",");
        String no = comparison();
        expect(")");
        return condition.equals(TRUE) ? yes : no;
    }

    private String referred() {
        Matcher reference = REFERENCE.matcher(formula).region(at, formula.length());
        if (!reference.lookingAt()) {
            throw new IllegalArgumentException("no formula from " + formula.substring(at));
        }
        at = reference.end();
        String place = reference.group();
        return text(cells, known, place.contains("!") ? place : sheet + "!" + place);
    }
}
