package org.orbwright.workbook;

import java.math.BigDecimal;
import java.util.List;

/**
 * A workbook.
 *
 * @param sheets its sheets
 */
public record Book(List<Page> sheets) {
    /** Colour of a chart's bars. */
    static final String BARS = "#8d6e63";

    /** Copies the list. */
    public Book {
        sheets = List.copyOf(sheets);
    }

    /**
     * A sheet.
     *
     * @param name its name, of letters
     * @param widths widths of its columns in millimetres
     * @param rows its rows, each a list of cells from the first column on
     * @param chart the chart below the rows, or null
     */
    record Page(String name, List<Integer> widths, List<List<Content>> rows, Chart chart) {

        /** Copies the lists. */
        Page {
            widths = List.copyOf(widths);
            rows = rows.stream().map(List::copyOf).toList();
        }
    }

    /**
     * Bars over names.
     *
     * @param title its title
     * @param names column of the names, from 0
     * @param values column of the values, from 0
     * @param first first row, from 0
     * @param last last row, from 0
     */
    record Chart(String title, int names, int values, int first, int last) {}

    /**
     * What stands in a cell.
     *
     * @param kind what it is
     * @param value a text, a number's digits, or a {@link Formula}'s text
     * @param look how it looks
     */
    record Content(Kind kind, String value, Look look) {

        static Content text(String text, Look look) {
            return new Content(Kind.TEXT, text, look);
        }

        static Content number(double number, Look look) {
            return new Content(Kind.NUMBER, BigDecimal.valueOf(number).toPlainString(), look);
        }

        static Content formula(String formula, Look look) {
            return new Content(Kind.FORMULA, formula, look);
        }

        static Content none() {
            return new Content(Kind.TEXT, "", Look.PLAIN);
        }
    }

    /** What a cell holds. */
    enum Kind {
        /** A text. */
        TEXT,
        /** A number. */
        NUMBER,
        /** A formula. */
        FORMULA
    }

    /** How a cell looks. */
    enum Look {
        /** As cells do. */
        PLAIN,
        /** Large and bold. */
        TITLE,
        /** Bold. */
        HEADING,
        /** To be filled in: framed, on a light ground, and a text, since a spreadsheet takes 1/8 for a date else. */
        INPUT,
        /** Grey. */
        NOTE
    }

    /** Name of a column, from 0. */
    static String column(int number) {
        return Character.toString('A' + number);
    }
}
