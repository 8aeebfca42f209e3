package org.orbwright.workbook;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.function.UnaryOperator;

/** Computes the few functions of texts by which the workbook makes its query, as a spreadsheet does. */
final class FormulaReader {
    private final String formula;
    private final UnaryOperator<String> cells;
    private int at;

    private FormulaReader(String formula, UnaryOperator<String> cells) {
        this.formula = formula;
        this.cells = cells;
    }

    /**
     * The text that a formula gives.
     *
     * @param cells the text of a cell by its reference
     */
    static String text(String formula, UnaryOperator<String> cells) {
        FormulaReader reader = new FormulaReader(formula, cells);
        String text = reader.comparison();
        if (reader.at < formula.length()) {
            throw new IllegalArgumentException("no formula from " + formula.substring(reader.at));
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
            return until("\"");
        }
        if (takes("{")) {
            return cells.apply(until("}"));
        }
        if (takes("@ENCODEURL(")) {
            String text = comparison();
            expect(")");
            return URLEncoder.encode(text, StandardCharsets.UTF_8).replace("+", "%20");
        }
        expect("IF(");
        String condition = comparison();
        expect(";");
        String yes = comparison();
        expect(";");
        String no = comparison();
        expect(")");
        return condition.equals("true") ? yes : no;
    }

    private String until(String end) {
        int from = at;
        at = formula.indexOf(end, from) + 1;
        return formula.substring(from, at - 1);
    }
}
