package org.orbwright.workbook;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Computes the few functions of texts by which the workbook makes its query, as a spreadsheet does: it compares texts
 * without regard to capitals. Formulas are read as Office Open XML has them, and the cells that they name are computed
 * in turn.
 */
final class FormulaReader {
    private static final Pattern REFERENCE = Pattern.compile("(?:[A-Z][a-z]+!)?[A-Z][0-9]+");
    private static final Pattern NAME = Pattern.compile("[a-z][a-zA-Z]*");
    private static final String TRUE = "true";

    private final Map<String, BookReader.Cell> cells;
    private final Map<String, String> names;
    /** What is computed already, since a cell may be named many times. */
    private final Map<String, String> known;

    private final String sheet;
    private final String formula;
    private int at;

    private FormulaReader(FormulaReader asking, String sheet, String formula) {
        this.cells = asking.cells;
        this.names = asking.names;
        this.known = asking.known;
        this.sheet = sheet;
        this.formula = formula;
    }

    private FormulaReader(Map<String, BookReader.Cell> cells, Map<String, String> names) {
        this.cells = cells;
        this.names = names;
        this.known = new HashMap<>();
        this.sheet = "";
        this.formula = "";
    }

    /** The text of a cell, such as {@code Design!B4}, in a workbook with these names of cells. */
    static String text(Map<String, BookReader.Cell> cells, Map<String, String> names, String place) {
        return new FormulaReader(cells, names).text(place);
    }

    private String text(String place) {
        BookReader.Cell cell = cells.get(place);
        if (cell == null || cell.formula().isEmpty()) {
            return cell == null ? "" : cell.value();
        }
        if (!known.containsKey(place)) {
            known.put(place, new FormulaReader(this, place.split("!", -1)[0], cell.formula()).whole());
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
        return takes("=") ? String.valueOf(left.equalsIgnoreCase(joined())) : left;
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
            boolean all = comparison().equals(TRUE);
            while (takes(",")) {
                all &= comparison().equals(TRUE);
            }
            expect(")");
            return String.valueOf(all);
        }
        if (takes("SUBSTITUTE(")) {
            String text = comparison();
            expect(",");
            String old = comparison();
            expect(",");
            String inItsPlace = comparison();
            expect(")");
            return text.replace(old, inItsPlace);
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
        Matcher name = NAME.matcher(formula).region(at, formula.length());
        if (name.lookingAt()) {
            at = name.end();
            return text(names.get(name.group()));
        }
        Matcher reference = REFERENCE.matcher(formula).region(at, formula.length());
        if (!reference.lookingAt()) {
            throw new IllegalArgumentException("no formula from " + formula.substring(at));
        }
        at = reference.end();
        String place = reference.group();
        return text(place.contains("!") ? place : sheet + "!" + place);
    }
}
