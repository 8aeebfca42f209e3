package org.orbwright.paper;

import java.awt.Color;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.orbwright.drawing.Anchor;
import org.orbwright.paper.ShopSheet.Table;

/** A table whose columns are as wide as what stands in them; an empty cell is a blank to write into. */
final class PdfTable {
    private static final double GAP = 2.4;
    private static final double LINE = 3.5;
    private static final double BLANK = 15;
    private static final double BLANK_HEIGHT = 5.6;
    private static final double RISE = 1;
    private static final double PEN = 0.3;
    private static final float GREY = 0.7f;

    private final Table table;
    private final PdfLetters letters;
    private final double[] widths;
    private final double width;
    private double natural;

    PdfTable(Table table, PdfLetters letters, double width) {
        this.table = table;
        this.letters = letters;
        this.width = width;
        this.widths = new double[table.headings().size()];
        for (int column = 0; column < widths.length; column++) {
            widths[column] = natural(column);
            natural += widths[column];
        }
        for (int column = 0; column < widths.length; column++) {
            widths[column] *= width / natural;
        }
    }

    /** Width at which nothing but a heading of several words is broken. */
    double natural() {
        return natural;
    }

    private double natural(int column) {
        double widest = 0;
        for (String word : table.headings().get(column).split(" ", -1)) {
            widest = Math.max(widest, letters.width(word, PdfBlocks.SMALL));
        }
        for (List<String> row : table.rows()) {
            String cell = row.get(column);
            widest = Math.max(widest, cell.isEmpty() ? BLANK : letters.width(cell, PdfBlocks.SMALL));
        }
        return widest + GAP;
    }

    /** A block for each row, all with the headings as their head. */
    List<Block> blocks() {
        double headHeight = height(table.headings()) + PdfBlocks.GAP;
        Block head = new Block(headHeight, (canvas, left, top) -> {
            cells(canvas, table.headings(), left, top + PdfBlocks.GAP, true);
            canvas.line(left, top + headHeight, left + width, top + headHeight, PEN);
        });
        List<Block> blocks = new ArrayList<>();
        for (List<String> row : table.rows()) {
            double height = height(row);
            blocks.add(new Block(height, false, head, (canvas, left, top) -> {
                cells(canvas, row, left, top, false);
                rules(canvas, row, left, top, height);
            }));
        }
        return blocks;
    }

    /** A light line below, and one on the left of each blank. */
    private void rules(PdfCanvas canvas, List<String> row, double left, double top, double height) throws IOException {
        canvas.out().setStrokingColor(GREY);
        canvas.line(left, top + height, left + width, top + height, PdfBlocks.THIN / 2);
        double x = left;
        for (int column = 0; column < widths.length; column++) {
            if (row.get(column).isEmpty()) {
                canvas.line(x - GAP / 2, top, x - GAP / 2, top + height, PdfBlocks.THIN / 2);
            }
            x += widths[column];
        }
        canvas.out().setStrokingColor(Color.BLACK);
    }

    private double height(List<String> cells) {
        int lines = 1;
        boolean blank = false;
        for (int column = 0; column < widths.length; column++) {
            lines = Math.max(lines, wrapped(cells, column).size());
            blank |= cells.get(column).isEmpty();
        }
        return Math.max(lines * LINE + RISE, blank ? BLANK_HEIGHT : 0);
    }

    private List<String> wrapped(List<String> cells, int column) {
        // A share of a hair less than measured may be left after the widths were scaled.
        return letters.wrap(cells.get(column), PdfBlocks.SMALL, widths[column] - GAP / 2);
    }

    private void cells(PdfCanvas canvas, List<String> cells, double left, double top, boolean bold) throws IOException {
        double x = left;
        for (int column = 0; column < widths.length; column++) {
            double baseLine = top + RISE / 2 + PdfBlocks.SMALL;
            for (String line : wrapped(cells, column)) {
                if (bold) {
                    canvas.bold(line, x, baseLine, PdfBlocks.SMALL, Anchor.START);
                } else {
                    canvas.text(line, x, baseLine, PdfBlocks.SMALL, Anchor.START);
                }
                baseLine += LINE;
            }
            x += widths[column];
        }
    }
}
