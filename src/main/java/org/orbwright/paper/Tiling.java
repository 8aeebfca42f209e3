package org.orbwright.paper;

import java.util.ArrayList;
import java.util.List;
import org.orbwright.document.PaperSize;
import org.orbwright.drawing.Drawing;

/**
 * How a template is spread over pages, which may lie across: equal tiles that overlap, upright or across, whichever
 * takes fewer of them. Sizes are in millimetres; the last tile of a row may be narrower than the others.
 */
record Tiling(boolean landscape, int columns, int rows, double width, double tileWidth, double tileHeight) {
    /** What neighbouring tiles share; in millimetres. */
    static final double OVERLAP = 10;
    /** Printers leave up to some 6 mm bare (common practice, no source). */
    static final double MARGIN = 10;
    /** Room for the title above a tile. */
    static final double HEAD = 6;
    /** Room for the bar and what it is for at the foot of a page. */
    static final double FOOT = 18;

    /** The last tile of a row is no narrower, for its title. */
    private static final double NARROWEST = 70;

    /** A cross at which neighbouring tiles are laid onto each other, on the drawing. */
    record Cross(double x, double y) {}

    /** The tiles of a drawing. */
    static Tiling of(Drawing drawing, PaperSize paper) {
        Tiling upright = of(drawing, roomAcross(paper, false), roomDown(paper, false), false);
        Tiling across = of(drawing, roomAcross(paper, true), roomDown(paper, true), true);
        return across.tiles() < upright.tiles() ? across : upright;
    }

    /** What a page has room for from side to side. */
    static double roomAcross(PaperSize paper, boolean landscape) {
        return (landscape ? paper.height() : paper.width()) - 2 * MARGIN;
    }

    /** What a page has room for above its bar, titles included. */
    static double roomDown(PaperSize paper, boolean landscape) {
        return (landscape ? paper.width() : paper.height()) - 2 * MARGIN - FOOT;
    }

    private static Tiling of(Drawing drawing, double width, double height, boolean landscape) {
        double high = height - HEAD;
        int columns = count(drawing.width(), width);
        int rows = count(drawing.height(), high);
        return new Tiling(
                landscape,
                columns,
                rows,
                drawing.width(),
                columns == 1 ? drawing.width() : width,
                rows == 1 ? drawing.height() : high);
    }

    private static int count(double size, double tile) {
        return Math.max(1, (int) Math.ceil((size - OVERLAP) / (tile - OVERLAP)));
    }

    /** How many tiles there are. */
    long tiles() {
        return (long) columns * rows;
    }

    /** Where a column starts on the drawing. */
    double left(int column) {
        return column * (tileWidth - OVERLAP);
    }

    /** Width of the tiles of a column. */
    double tileWidth(int column) {
        return Math.min(tileWidth, Math.max(NARROWEST, width - left(column)));
    }

    /** Where a row starts on the drawing. */
    double top(int row) {
        return row * (tileHeight - OVERLAP);
    }

    /** The middles of the strips that columns share. */
    List<Double> columnSeams() {
        return seams(columns, tileWidth);
    }

    /** The middles of the strips that rows share. */
    List<Double> rowSeams() {
        return seams(rows, tileHeight);
    }

    private static List<Double> seams(int count, double tile) {
        List<Double> seams = new ArrayList<>();
        for (int i = 1; i < count; i++) {
            seams.add(i * (tile - OVERLAP) + OVERLAP / 2);
        }
        return seams;
    }

    /** The crosses: two on each side that two tiles share. */
    List<Cross> crosses() {
        List<Cross> crosses = new ArrayList<>();
        for (double x : columnSeams()) {
            for (int row = 0; row < rows; row++) {
                crosses.add(new Cross(x, top(row) + tileHeight / 4));
                crosses.add(new Cross(x, top(row) + tileHeight * 3 / 4));
            }
        }
        for (double y : rowSeams()) {
            for (int column = 0; column < columns; column++) {
                crosses.add(new Cross(left(column) + tileWidth / 4, y));
                crosses.add(new Cross(left(column) + tileWidth * 3 / 4, y));
            }
        }
        return crosses;
    }
}
