package org.orbwright.paper;

import java.awt.Color;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.orbwright.document.PaperSize;
import org.orbwright.drawing.Anchor;
import org.orbwright.drawing.Drawing;
import org.orbwright.drawing.Label;
import org.orbwright.drawing.Mark;
import org.orbwright.drawing.PathData;
import org.orbwright.paper.Plates.Placed;
import org.orbwright.paper.Plates.Plate;
import org.orbwright.paper.ShopSheet.Bar;
import org.orbwright.paper.Tiling.Cross;

/** Lays templates over pages at true size, with crosses where pages meet and a bar that proves the print's scale. */
record PdfTemplates(PdfPages pages, PdfDrawing drawings, PaperSize paper, Bar bar) {
    private static final double THIN = 0.12;
    /** Half the length of a cross; in millimetres. */
    private static final double CROSS = 4;

    private static final double TITLE_LETTERS = 3.2;
    /** Bold letters are wider by about this. */
    private static final double BOLD = 1.05;

    private static final double LETTERS = 3;
    private static final double LINE = 4.2;
    private static final double BAR_STROKE = 3;

    /** Draws all templates, as many on a page as fit. */
    void draw(List<Drawing> templates) throws IOException {
        for (Plate plate : Plates.of(templates, paper)) {
            PdfCanvas canvas = plate.landscape()
                    ? pages.add(paper.height(), paper.width())
                    : pages.add(paper.width(), paper.height());
            for (Placed placed : plate.tiles()) {
                if (placed.row() == 0 && placed.column() == 0) {
                    pages.bookmark(placed.template().title(), canvas.page());
                }
                tile(placed, canvas);
                head(placed, canvas);
            }
            bar(canvas);
        }
    }

    private void tile(Placed placed, PdfCanvas canvas) throws IOException {
        Tiling tiling = placed.tiling();
        PDPageContentStream out = canvas.out();
        double left = placed.left();
        double top = placed.top() + Tiling.HEAD;
        double right = left + tiling.tileWidth(placed.column());
        double originX = left - tiling.left(placed.column());
        double originY = top - tiling.top(placed.row());
        out.saveGraphicsState();
        out.addRect((float) left, (float) top, (float) (right - left), (float) tiling.tileHeight());
        out.clip();
        drawings.draw(near(placed), canvas, originX, originY, 1, THIN);
        out.setStrokingColor(Color.BLACK);
        double bottom = top + tiling.tileHeight();
        for (double x : tiling.columnSeams()) {
            canvas.dashed(originX + x, top, originX + x, bottom, THIN);
        }
        for (double y : tiling.rowSeams()) {
            canvas.dashed(left, originY + y, right, originY + y, THIN);
        }
        for (Cross cross : tiling.crosses()) {
            double x = originX + cross.x();
            double y = originY + cross.y();
            canvas.line(x - CROSS, y, x + CROSS, y, 2 * THIN);
            canvas.line(x, y - CROSS, x, y + CROSS, 2 * THIN);
            PdfPath.lay(new PathData().circle(x, y, CROSS / 2), 1, out);
            out.stroke();
        }
        out.restoreGraphicsState();
    }

    /** The template as a tile shows it: letters whole or not at all, each on the tile that it begins on at least. */
    private Drawing near(Placed placed) {
        Drawing template = placed.template();
        List<Mark> marks = new ArrayList<>();
        for (Mark mark : template.marks()) {
            if (mark instanceof Label label) {
                within(label, placed).ifPresent(marks::add);
            } else {
                marks.add(mark);
            }
        }
        return new Drawing(
                template.title(),
                template.description(),
                template.width(),
                template.height(),
                template.species(),
                marks);
    }

    /** A label that a tile shows: one that is whole on it, or one that begins on it and is moved inwards. */
    private Optional<Label> within(Label label, Placed placed) {
        Tiling tiling = placed.tiling();
        double left = tiling.left(placed.column());
        double right = left + tiling.tileWidth(placed.column());
        double top = tiling.top(placed.row());
        if (label.y() < top + label.size() || label.y() > top + tiling.tileHeight()) {
            return Optional.empty();
        }
        double width = pages.letters().width(label.text(), label.size());
        double share = label.anchor() == Anchor.START ? 0 : label.anchor() == Anchor.MIDDLE ? 0.5 : 1;
        double start = label.x() - share * width;
        boolean begins = start >= left && start < right - Tiling.OVERLAP;
        if (start < left || (start + width > right && !begins)) {
            return placed.column() == 0 && start < left && label.x() >= left
                    ? Optional.of(moved(label, left - start))
                    : Optional.empty();
        }
        return Optional.of(moved(label, Math.min(0, right - start - width)));
    }

    private static Label moved(Label label, double by) {
        return new Label(label.x() + by, label.y(), label.size(), label.anchor(), label.text(), label.letters());
    }

    private static void head(Placed placed, PdfCanvas canvas) throws IOException {
        Tiling tiling = placed.tiling();
        String row = tiling.rows() == 1 ? "" : "row " + (placed.row() + 1) + " of " + tiling.rows() + ", ";
        String column =
                tiling.columns() == 1 ? "" : "column " + (placed.column() + 1) + " of " + tiling.columns() + ", ";
        String title = row + column + placed.template().title();
        double room = tiling.tileWidth(placed.column()) / BOLD;
        PdfLetters letters = canvas.letters();
        double size = Math.min(TITLE_LETTERS, Math.max(PdfBlocks.SMALL, room / letters.width(title, 1)));
        canvas.bold(letters.fit(title, size, room), placed.left(), placed.top() + TITLE_LETTERS, size, Anchor.START);
    }

    private void bar(PdfCanvas canvas) throws IOException {
        double top = canvas.height() - Tiling.MARGIN - Tiling.FOOT + 4;
        double left = Tiling.MARGIN;
        double right = left + bar.millimetres();
        canvas.line(left, top, right, top, THIN);
        canvas.line(left, top - BAR_STROKE, left, top + BAR_STROKE, THIN);
        canvas.line(right, top - BAR_STROKE, right, top + BAR_STROKE, THIN);
        canvas.text(bar.text(), right + 2, top + 1, LETTERS, Anchor.START);
        List<String> words = canvas.letters()
                .wrap(
                        "Measure this bar before the template is used. If it is not " + bar.text()
                                + ", print again at 100 % (\"actual size\"), without fitting to the page.",
                        LETTERS,
                        canvas.width() - 2 * Tiling.MARGIN);
        double y = top + BAR_STROKE + LINE;
        for (String line : words) {
            canvas.text(line, left, y, LETTERS, Anchor.START);
            y += LINE;
        }
    }
}
