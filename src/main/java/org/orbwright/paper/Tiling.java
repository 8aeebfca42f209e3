package org.orbwright.paper;

import java.util.ArrayList;
import java.util.List;
import org.orbwright.document.PaperSize;
import org.orbwright.drawing.Drawing;

/**
 * How a template is spread over pages: equal tiles that overlap, upright or across, whichever takes fewer pages.
 *
 * @param landscape whether the pages lie across
 * @param columns tiles side by side
 * @param rows tiles one above the other
 * @param tileWidth width of a tile, in millimetres
 * @param tileHeight height of a tile
 */
record Tiling(boolean landscape, int columns, int rows, double tileWidth, double tileHeight) {
    /** What neighbouring tiles share; in millimetres. */
    static final double OVERLAP = 10;
    /** Printers leave up to some 6 mm bare (common practice, no source). */
    static final double MARGIN = 10;
    /** Room for the title above a tile. */
    static final double HEAD = 8;
    /** Room for the bar and what it is for below a tile. */
    static final double FOOT = 24;

    /** A cross at which neighbouring tiles are laid onto each other, on the drawing. */
    record Cross(double x, double y) {}

    /** The tiles of a drawing. */
    static Tiling of(Drawing drawing, PaperSize paper) {
        Tiling upright = of(drawing, paper.width(), paper.height(), false);
        Tiling across = of(drawing, paper.height(), paper.width(), true);
        return across.pages() < upright.pages() ? across : upright;
    }

    private static Tiling of(Drawing drawing, double width, double height, boolean landscape) {
        double tileWidth = width - 2 * MARGIN;
        double tileHeight = height - 2 * MARGIN - HEAD - FOOT;
        return new Tiling(
                landscape,
                count(drawing.width(), tileWidth),
                count(drawing.height(), tileHeight),
                tileWidth,
                tileHeight);
    }

    private static int count(double size, double tile) {
        return Math.max(1, (int) Math.ceil((size - OVERLAP) / (tile - OVERLAP)));
    }

    /** Pages that it takes. */
    long pages() {
        return (long) columns * rows;
    }

    /** Where a column starts on the drawing. */
    double left(int column) {
        return column * (tileWidth - OVERLAP);
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
