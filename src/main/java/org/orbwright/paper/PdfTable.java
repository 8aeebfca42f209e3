package org.orbwright.paper;

import java.io.IOException;
import java.util.List;
import org.orbwright.drawing.Drawing.Anchor;
import org.orbwright.paper.ShopSheet.Table;

/** A table whose columns are as wide as what stands in them; an empty cell is a blank to write into. */
final class PdfTable {
    private static final double GAP = 3;
    private static final double BLANK = 28;
    private static final double RISE = 1.6;
    private static final double PEN = 0.3;

    private final Table table;
    private final PdfLetters letters;
    private final double[] widths;

    PdfTable(Table table, PdfLetters letters, double room) {
        this.table = table;
        this.letters = letters;
        this.widths = new double[table.headings().size()];
        double sum = 0;
        for (int column = 0; column < widths.length; column++) {
            widths[column] = natural(column);
            sum += widths[column];
        }
        for (int column = 0; column < widths.length; column++) {
            widths[column] *= room / sum;
        }
    }

    private double natural(int column) {
        double widest = letters.width(table.headings().get(column), PdfBlocks.LETTERS);
        for (List<String> row : table.rows()) {
            String cell = row.get(column);
            widest = Math.max(widest, cell.isEmpty() ? BLANK : letters.width(cell, PdfBlocks.LETTERS));
        }
        return widest + GAP;
    }

    int rows() {
        return table.rows().size();
    }

    /** Height of all of it, with some room around. */
    double height() {
        double height = headHeight() + 2 * PdfBlocks.GAP;
        for (int row = 0; row < rows(); row++) {
            height += rowHeight(row);
        }
        return height;
    }

    double headHeight() {
        return height(table.headings());
    }

    double rowHeight(int row) {
        return height(table.rows().get(row));
    }

    private double height(List<String> cells) {
        int lines = 1;
        for (int column = 0; column < widths.length; column++) {
            lines = Math.max(lines, wrapped(cells, column).size());
        }
        return lines * PdfBlocks.LINE + RISE;
    }

    private List<String> wrapped(List<String> cells, int column) {
        // A share of a hair less than measured may be left after the widths were scaled.
        return letters.wrap(cells.get(column), PdfBlocks.LETTERS, widths[column] - GAP / 2);
    }

    void head(PdfCanvas canvas, double left, double top) throws IOException {
        cells(canvas, table.headings(), left, top, true);
        double bottom = top + headHeight();
        double right = left;
        for (double width : widths) {
            right += width;
        }
        canvas.line(left, bottom, right, bottom, PEN);
    }

    void row(PdfCanvas canvas, int row, double left, double top) throws IOException {
        cells(canvas, table.rows().get(row), left, top, false);
    }

    private void cells(PdfCanvas canvas, List<String> cells, double left, double top, boolean bold) throws IOException {
        double x = left;
        for (int column = 0; column < widths.length; column++) {
            double baseLine = top + RISE / 2 + PdfBlocks.LETTERS;
            for (String line : wrapped(cells, column)) {
                if (bold) {
                    canvas.bold(line, x, baseLine, PdfBlocks.LETTERS, Anchor.START);
                } else {
                    canvas.text(line, x, baseLine, PdfBlocks.LETTERS, Anchor.START);
                }
                baseLine += PdfBlocks.LINE;
            }
            x += widths[column];
        }
    }
}
