package org.orbwright.paper;

import java.awt.Color;
import java.io.IOException;
import java.util.List;
import org.orbwright.drawing.Drawing;
import org.orbwright.drawing.Drawing.Anchor;
import org.orbwright.paper.ShopSheet.Advice;
import org.orbwright.paper.ShopSheet.Check;
import org.orbwright.paper.ShopSheet.Heading;
import org.orbwright.paper.ShopSheet.Picture;
import org.orbwright.paper.ShopSheet.Section;
import org.orbwright.paper.ShopSheet.Step;
import org.orbwright.paper.ShopSheet.Table;
import org.orbwright.paper.ShopSheet.Text;
import org.orbwright.paper.ShopSheet.Value;
import org.orbwright.quantity.Rounding;
import org.orbwright.sheet.Finding;
import org.orbwright.sheet.Finding.Severity;

/** Lets the steps of a sheet flow down its pages; sizes in millimetres. */
final class PdfFlow {
    static final double LETTERS = 3.2;
    static final double LINE = 4.5;
    private static final double TITLE = 6.5;
    private static final double SECTION = 5;
    private static final double HEADING = 3.7;
    private static final double MARGIN = 14;
    private static final double BOTTOM = 13;
    private static final double INDENT = 6;
    private static final double BOX = 3.4;
    private static final double GAP = 1.4;
    private static final double THIN = 0.15;
    private static final double GREY = 0.7;
    private static final double HIGHEST_PICTURE = 125;
    private static final double CAPTION = 2.7;
    /** A heading has at least so much of what follows below it. */
    private static final double KEPT = 24;

    private final PdfPages pages;
    private final PdfLetters letters;
    private final PdfDrawing drawings;
    private final PaperSize paper;
    private final double room;
    private PdfCanvas canvas;
    private double y;

    PdfFlow(PdfPages pages, PdfDrawing drawings, PaperSize paper) throws IOException {
        this.pages = pages;
        this.letters = pages.letters();
        this.drawings = drawings;
        this.paper = paper;
        this.room = paper.width() - 2 * MARGIN;
        turn();
    }

    /** Goes on to the next page. */
    void turn() throws IOException {
        canvas = pages.add(paper.width(), paper.height());
        y = MARGIN;
    }

    /** Goes on to the next page where this one has less room than that. */
    void need(double height) throws IOException {
        if (y + height > paper.height() - BOTTOM && y > MARGIN) {
            turn();
        }
    }

    /** Title and findings on top of the first page. */
    void title(ShopSheet sheet) throws IOException {
        for (String line : letters.wrap(sheet.title(), TITLE, room)) {
            need(1.2 * TITLE);
            y += 1.2 * TITLE;
            canvas.bold(line, MARGIN, y, TITLE, Anchor.START);
        }
        y += LINE + GAP;
        canvas.text(HtmlWriter.SUBTITLE, MARGIN, y, LETTERS, Anchor.START);
        y += 2 * GAP;
        for (Finding finding : sheet.findings()) {
            finding(finding);
        }
        if (sheet.findings().isEmpty()) {
            paragraph("No findings: nothing in this design is wrong or nearly wrong by these numbers.");
        }
    }

    private void finding(Finding finding) throws IOException {
        double label = 15;
        List<String> lines = letters.wrap(finding.message(), LETTERS, room - label - 2 * GAP);
        double height = lines.size() * LINE + 2 * GAP;
        need(height + GAP);
        y += GAP;
        boolean stop = finding.severity() == Severity.STOP;
        if (stop) {
            canvas.fill(MARGIN, y, label, height, 0);
        }
        canvas.out().setStrokingColor(Color.BLACK);
        canvas.frame(MARGIN, y, room, height, stop ? 5 * THIN : finding.severity() == Severity.WARN ? 3 * THIN : THIN);
        Color colour = stop ? Color.WHITE : Color.BLACK;
        canvas.out().setNonStrokingColor(colour);
        canvas.out().setStrokingColor(colour);
        double baseLine = y + GAP + LETTERS;
        canvas.bold(finding.severity().name(), MARGIN + label / 2, baseLine, LETTERS, Anchor.MIDDLE);
        canvas.out().setNonStrokingColor(Color.BLACK);
        canvas.out().setStrokingColor(Color.BLACK);
        for (String line : lines) {
            canvas.text(line, MARGIN + label + GAP, baseLine, LETTERS, Anchor.START);
            baseLine += LINE;
        }
        y += height;
    }

    /** Writes a section. */
    void section(Section section) throws IOException {
        List<Step> steps = section.steps();
        need(3 * SECTION + kept(steps, 0));
        y += 2.4 * SECTION;
        canvas.bold(section.title(), MARGIN, y, SECTION, Anchor.START);
        canvas.line(MARGIN, y + GAP, MARGIN + room, y + GAP, 3 * THIN);
        y += 2 * GAP;
        pages.bookmark(section.title(), canvas.page());
        for (int i = 0; i < steps.size(); i++) {
            if (steps.get(i) instanceof Heading) {
                need(2 * HEADING + kept(steps, i + 1));
            }
            step(steps.get(i));
        }
    }

    /** How much of what follows a heading stays with it. */
    private double kept(List<Step> steps, int next) {
        boolean picture = next < steps.size() && steps.get(next) instanceof Picture;
        return picture ? height(((Picture) steps.get(next)).drawing()) : KEPT;
    }

    private void step(Step step) throws IOException {
        if (step instanceof Heading heading) {
            y += 2 * HEADING;
            for (String line : letters.wrap(heading.text(), HEADING, room)) {
                canvas.bold(line, MARGIN, y, HEADING, Anchor.START);
                y += LINE;
            }
            y -= LINE - GAP;
        } else if (step instanceof Text text) {
            paragraph(text.text());
        } else if (step instanceof Value value) {
            value(value);
        } else if (step instanceof Table table) {
            table(table);
        } else if (step instanceof Check check) {
            check(check.text());
        } else if (step instanceof Advice advice) {
            advice("Caution: " + advice.caution().text());
        } else if (step instanceof Picture picture) {
            picture(picture.drawing());
        }
    }

    private void paragraph(String text) throws IOException {
        y += GAP;
        lines(letters.wrap(text, LETTERS, room), MARGIN);
    }

    private void lines(List<String> lines, double x) throws IOException {
        for (String line : lines) {
            need(LINE);
            canvas.text(line, x, y + LETTERS, LETTERS, Anchor.START);
            y += LINE;
        }
    }

    /** Label, number with its unit, fraction and blank, each in a column of its own. */
    private void value(Value value) throws IOException {
        double numberEnd = MARGIN + 0.53 * room;
        double fraction = MARGIN + 0.61 * room;
        double blank = MARGIN + 0.74 * room;
        List<String> label = letters.wrap(value.label(), LETTERS, 0.41 * room);
        double height = label.size() * LINE + (value.measured() ? 2.2 : 0.4);
        need(height);
        double baseLine = y + height - 1.2;
        for (int i = 0; i < label.size(); i++) {
            canvas.text(label.get(i), MARGIN, baseLine - (label.size() - 1 - i) * LINE, LETTERS, Anchor.START);
        }
        canvas.bold(value.number(), numberEnd, baseLine, LETTERS, Anchor.END);
        canvas.text(value.unit(), numberEnd + 1, baseLine, LETTERS, Anchor.START);
        canvas.text(value.fraction(), fraction, baseLine, LETTERS, Anchor.START);
        if (value.measured()) {
            canvas.text("measured:", blank, baseLine, LETTERS, Anchor.START);
            canvas.line(blank + 16, baseLine + 0.4, MARGIN + room, baseLine + 0.4, 2 * THIN);
        }
        y += height;
        rule(y);
    }

    private void rule(double at) throws IOException {
        canvas.out().setStrokingColor((float) GREY);
        canvas.line(MARGIN, at, MARGIN + room, at, THIN / 2);
        canvas.out().setStrokingColor(Color.BLACK);
    }

    private void table(Table table) throws IOException {
        PdfTable layout = new PdfTable(table, letters, room);
        need(layout.headHeight() + 2 * layout.rowHeight(0));
        y += GAP;
        layout.head(canvas, MARGIN, y);
        y += layout.headHeight();
        for (int row = 0; row < table.rows().size(); row++) {
            if (y + layout.rowHeight(row) > paper.height() - BOTTOM) {
                turn();
                layout.head(canvas, MARGIN, y);
                y += layout.headHeight();
            }
            layout.row(canvas, row, MARGIN, y);
            y += layout.rowHeight(row);
            rule(y);
        }
        y += GAP;
    }

    private void check(String text) throws IOException {
        List<String> lines = letters.wrap(text, LETTERS, room - INDENT);
        need(LINE + GAP);
        y += GAP;
        canvas.frame(MARGIN, y, BOX, BOX, 2 * THIN);
        lines(lines, MARGIN + INDENT);
        y += GAP / 2;
    }

    private void advice(String text) throws IOException {
        List<String> lines = letters.wrap(text, LETTERS, room - INDENT);
        double height = lines.size() * LINE;
        need(height + GAP);
        y += GAP;
        canvas.fill(MARGIN, y, 1, height, 0);
        lines(lines, MARGIN + INDENT / 2);
        y += GAP;
    }

    private double scale(Drawing drawing) {
        return Math.min(room / drawing.width(), HIGHEST_PICTURE / drawing.height());
    }

    private double height(Drawing drawing) {
        return scale(drawing) * drawing.height() + 3 * GAP + CAPTION;
    }

    private void picture(Drawing drawing) throws IOException {
        double scale = scale(drawing);
        need(height(drawing));
        y += GAP;
        double left = MARGIN + (room - scale * drawing.width()) / 2;
        double thin = PdfDrawing.THIN_PER_DRAWING * scale * drawing.width();
        drawings.draw(drawing, canvas, left, y, scale, thin);
        canvas.out().setNonStrokingColor(Color.BLACK);
        canvas.out().setStrokingColor(Color.BLACK);
        y += scale * drawing.height() + GAP + CAPTION;
        String caption = drawing.title() + ". Printed at 100 % it is " + Rounding.plain(scale, 3) + " times true size.";
        canvas.text(letters.fit(caption, CAPTION, room), MARGIN, y, CAPTION, Anchor.START);
        y += GAP;
    }
}
