package org.orbwright.paper;

import java.awt.Color;
import java.io.IOException;
import java.util.List;
import org.orbwright.document.PaperSize;
import org.orbwright.drawing.Drawing;
import org.orbwright.drawing.Drawing.Anchor;
import org.orbwright.drawing.Drawing.Label;
import org.orbwright.paper.ShopSheet.Advice;
import org.orbwright.paper.ShopSheet.Heading;
import org.orbwright.paper.ShopSheet.Picture;
import org.orbwright.paper.ShopSheet.Section;
import org.orbwright.paper.ShopSheet.Step;
import org.orbwright.paper.ShopSheet.Table;
import org.orbwright.paper.ShopSheet.Text;
import org.orbwright.quantity.Rounding;
import org.orbwright.sheet.Finding;

/** Lets the steps of a sheet flow down its pages; sizes in millimetres. */
final class PdfFlow {
    private static final double TITLE = 6.5;
    private static final double SECTION = 5;
    private static final double MARGIN = 14;
    private static final double BOTTOM = 13;
    private static final double HIGHEST_PICTURE = 125;
    /**
     * A picture may be higher so that its smallest letters are of this size, 7.4 points, and is not made smaller than
     * that to fit onto a page.
     */
    private static final double READABLE_LETTERS = 2.6;

    private static final double CAPTION = 2.7;
    /** What follows a heading stays with it as a whole if it is no higher than this. */
    private static final double KEPT_WHOLE = 75;
    /** Of what is higher, so much stays with it. */
    private static final double KEPT = 24;

    private final PdfPages pages;
    private final PdfLetters letters;
    private final PdfDrawing drawings;
    private final PaperSize paper;
    private final double room;
    private final PdfBlocks blocks;
    private PdfCanvas canvas;
    private double y;

    PdfFlow(PdfPages pages, PdfDrawing drawings, PaperSize paper) throws IOException {
        this.pages = pages;
        this.letters = pages.letters();
        this.drawings = drawings;
        this.paper = paper;
        this.room = paper.width() - 2 * MARGIN;
        this.blocks = new PdfBlocks(letters, MARGIN, room);
        turn();
    }

    private void turn() throws IOException {
        canvas = pages.add(paper.width(), paper.height());
        y = MARGIN;
    }

    private double left() {
        return paper.height() - BOTTOM - y;
    }

    /** Goes on to the next page where this one has less room than that. */
    private void need(double height) throws IOException {
        if (height > left() && y > MARGIN) {
            turn();
        }
    }

    /** Title and findings on top of the first page. */
    void title(ShopSheet sheet) throws IOException {
        for (String line : letters.wrap(sheet.title(), TITLE, room)) {
            y += 1.2 * TITLE;
            canvas.bold(line, MARGIN, y, TITLE, Anchor.START);
        }
        y += PdfBlocks.LINE + PdfBlocks.GAP;
        canvas.text(HtmlWriter.SUBTITLE, MARGIN, y, PdfBlocks.LETTERS, Anchor.START);
        y += PdfBlocks.GAP;
        for (Finding finding : sheet.findings()) {
            need(blocks.height(finding));
            blocks.draw(finding, canvas, y);
            y += blocks.height(finding);
        }
        if (sheet.findings().isEmpty()) {
            step(new Text(HtmlWriter.NO_FINDINGS));
        }
    }

    /** Writes a section. */
    void section(Section section) throws IOException {
        List<Step> steps = section.steps();
        need(3 * SECTION + kept(steps, 0));
        y += 2.2 * SECTION;
        canvas.bold(section.title(), MARGIN, y, SECTION, Anchor.START);
        canvas.line(MARGIN, y + PdfBlocks.GAP, MARGIN + room, y + PdfBlocks.GAP, 3 * PdfBlocks.THIN);
        y += 2 * PdfBlocks.GAP;
        pages.bookmark(section.title(), canvas.page());
        for (int i = 0; i < steps.size(); i++) {
            need(steps.get(i) instanceof Heading ? kept(steps, i) : withLast(steps, i));
            step(steps.get(i));
        }
    }

    /** How much from a step on to the next heading or picture stays together. */
    private double kept(List<Step> steps, int from) {
        double opening = 0;
        int first = from;
        while (first < steps.size() - 1 && opens(steps.get(first))) {
            opening += height(steps.get(first));
            first++;
        }
        double whole = opening + height(steps.get(first));
        for (int i = first + 1; i < steps.size() && !ends(steps.get(i)); i++) {
            whole += height(steps.get(i));
        }
        return whole <= KEPT_WHOLE ? whole : opening + Math.min(KEPT, whole - opening);
    }

    /** Whether a step only opens what follows, from which no page parts it. */
    private static boolean opens(Step step) {
        return step instanceof Heading || step instanceof Advice;
    }

    private static boolean ends(Step step) {
        return step instanceof Heading || step instanceof Picture;
    }

    /** Height of a step, with the last one of its group, which is not left alone on the next page. */
    private double withLast(List<Step> steps, int at) {
        if (steps.get(at) instanceof Table || at + 1 >= steps.size() || ends(steps.get(at + 1))) {
            return 0;
        }
        boolean last = at + 2 >= steps.size() || ends(steps.get(at + 2));
        return last ? height(steps.get(at)) + height(steps.get(at + 1)) : 0;
    }

    private double height(Step step) {
        if (step instanceof Picture picture) {
            return smallest(picture.drawing()) + around();
        } else if (step instanceof Table table) {
            return new PdfTable(table, letters, room).height();
        }
        return blocks.height(step);
    }

    private void step(Step step) throws IOException {
        if (step instanceof Table table) {
            table(new PdfTable(table, letters, room));
        } else if (step instanceof Picture picture) {
            picture(picture.drawing());
        } else {
            need(blocks.height(step));
            blocks.draw(step, canvas, y);
            y += blocks.height(step);
        }
    }

    private void table(PdfTable table) throws IOException {
        need(table.headHeight() + table.rowHeight(0) + PdfBlocks.LINE);
        y += PdfBlocks.GAP;
        head(table);
        for (int row = 0; row < table.rows(); row++) {
            if (table.rowHeight(row) > left()) {
                turn();
                head(table);
            }
            table.row(canvas, row, MARGIN, y);
            y += table.rowHeight(row);
            blocks.rule(canvas, y);
        }
        y += PdfBlocks.GAP;
    }

    private void head(PdfTable table) throws IOException {
        table.head(canvas, MARGIN, y);
        y += table.headHeight();
    }

    /** Room around a picture, for its caption. */
    private static double around() {
        return 3 * PdfBlocks.GAP + CAPTION;
    }

    /** Height of a picture whose smallest letters are easily read. */
    private static double readable(Drawing drawing) {
        double smallest = drawing.marks().stream()
                .filter(Label.class::isInstance)
                .mapToDouble(mark -> ((Label) mark).size())
                .min()
                .orElse(READABLE_LETTERS);
        return READABLE_LETTERS / smallest * drawing.height();
    }

    private double largest(Drawing drawing) {
        double wanted =
                Math.min(Math.max(HIGHEST_PICTURE, readable(drawing)), room / drawing.width() * drawing.height());
        return Math.min(wanted, paper.height() - BOTTOM - MARGIN - around());
    }

    private double smallest(Drawing drawing) {
        return Math.min(largest(drawing), readable(drawing));
    }

    /** Draws a picture as large as it may be, or a little smaller where it then fits onto this page. */
    private void picture(Drawing drawing) throws IOException {
        need(smallest(drawing) + around());
        double height = Math.min(largest(drawing), left() - around());
        double scale = height / drawing.height();
        y += PdfBlocks.GAP;
        double left = MARGIN + (room - scale * drawing.width()) / 2;
        double thin = PdfDrawing.THIN_PER_DRAWING * scale * drawing.width();
        drawings.draw(drawing, canvas, left, y, scale, thin);
        canvas.out().setNonStrokingColor(Color.BLACK);
        canvas.out().setStrokingColor(Color.BLACK);
        y += height + PdfBlocks.GAP + CAPTION;
        String caption = drawing.title() + ". Printed at 100 % it is " + Rounding.plain(scale, 3) + " times true size.";
        canvas.text(letters.fit(caption, CAPTION, room), MARGIN, y, CAPTION, Anchor.START);
        y += PdfBlocks.GAP;
    }
}
