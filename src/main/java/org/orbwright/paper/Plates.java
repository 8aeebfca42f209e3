package org.orbwright.paper;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.orbwright.document.PaperSize;
import org.orbwright.drawing.Drawing;

/** Puts the tiles of templates onto pages, the highest first, each where it first fits; sizes in millimetres. */
final class Plates {
    /** Between tiles side by side. */
    private static final double GAP = 4;

    private final PaperSize paper;
    private final List<Plate> plates = new ArrayList<>();

    /** A tile on a page: its template, which tile it is, and where its title begins. */
    record Placed(Drawing template, Tiling tiling, int row, int column, double left, double top) {}

    /** A page with its tiles. */
    static final class Plate {
        private final boolean landscape;
        private final List<Placed> tiles = new ArrayList<>();
        private double rowTop;
        private double rowHeight;
        private double rowEnd;

        private Plate(boolean landscape) {
            this.landscape = landscape;
        }

        boolean landscape() {
            return landscape;
        }

        List<Placed> tiles() {
            return List.copyOf(tiles);
        }

        private boolean take(Drawing template, Tiling tiling, int row, int column, double across, double down) {
            double height = tiling.tileHeight() + Tiling.HEAD;
            double width = tiling.tileWidth(column);
            boolean beside = rowEnd + width <= across && rowTop + Math.max(rowHeight, height) <= down;
            if (!beside) {
                if (rowTop + rowHeight + height > down || width > across) {
                    return false;
                }
                rowTop += rowHeight;
                rowHeight = 0;
                rowEnd = 0;
            }
            tiles.add(new Placed(template, tiling, row, column, Tiling.MARGIN + rowEnd, Tiling.MARGIN + rowTop));
            rowEnd += width + GAP;
            rowHeight = Math.max(rowHeight, height);
            return true;
        }
    }

    private Plates(PaperSize paper) {
        this.paper = paper;
    }

    /** The pages of templates. */
    static List<Plate> of(List<Drawing> templates, PaperSize paper) {
        Plates plates = new Plates(paper);
        List<Drawing> sorted = new ArrayList<>(templates);
        sorted.sort(Comparator.comparingDouble(Drawing::height).reversed());
        for (Drawing template : sorted) {
            Tiling tiling = Tiling.of(template, paper);
            for (int row = 0; row < tiling.rows(); row++) {
                for (int column = 0; column < tiling.columns(); column++) {
                    plates.place(template, tiling, row, column);
                }
            }
        }
        return plates.plates;
    }

    private void place(Drawing template, Tiling tiling, int row, int column) {
        for (Plate plate : plates) {
            if (take(plate, template, tiling, row, column)) {
                return;
            }
        }
        Plate plate = new Plate(tiling.landscape());
        plates.add(plate);
        take(plate, template, tiling, row, column);
    }

    private boolean take(Plate plate, Drawing template, Tiling tiling, int row, int column) {
        return plate.take(
                template,
                tiling,
                row,
                column,
                Tiling.roomAcross(paper, plate.landscape()),
                Tiling.roomDown(paper, plate.landscape()));
    }
}
