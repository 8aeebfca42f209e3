package org.orbwright.paper;

import java.awt.Color;
import java.io.IOException;
import java.util.List;
import org.orbwright.drawing.Drawing.Anchor;
import org.orbwright.paper.ShopSheet.Advice;
import org.orbwright.paper.ShopSheet.Check;
import org.orbwright.paper.ShopSheet.Heading;
import org.orbwright.paper.ShopSheet.Step;
import org.orbwright.paper.ShopSheet.Text;
import org.orbwright.paper.ShopSheet.Value;
import org.orbwright.sheet.Finding;
import org.orbwright.sheet.Finding.Severity;

/** Measures and draws what is never parted by the end of a page: findings, headings, values, lines of text. */
final class PdfBlocks {
    /** Height of the letters; in millimetres, as all sizes here. */
    static final double LETTERS = 3.2;

    static final double LINE = 4.5;
    static final double GAP = 1.4;
    static final double THIN = 0.15;
    private static final double HEADING = 3.7;
    private static final double INDENT = 6;
    private static final double BOX = 3.4;
    private static final double GREY = 0.7;
    private static final double SEVERITY = 15;
    /** Room to write a measured value by hand. */
    private static final double WRITTEN = 2.2;
    /** Where columns start or end, as a share of the width. */
    private static final double LABEL = 0.41;

    private static final double NUMBER = 0.53;
    private static final double FRACTION = 0.61;
    private static final double BLANK = 0.74;
    private static final double MEASURED = 16;

    private final PdfLetters letters;
    private final double left;
    private final double room;

    PdfBlocks(PdfLetters letters, double left, double room) {
        this.letters = letters;
        this.left = left;
        this.room = room;
    }

    /** Height of a step. */
    double height(Step step) {
        if (step instanceof Heading heading) {
            return HEADING + GAP + lines(heading.text(), HEADING, room).size() * LINE;
        } else if (step instanceof Text text) {
            return GAP + lines(text.text(), LETTERS, room).size() * LINE;
        } else if (step instanceof Value value) {
            return lines(value.label(), LETTERS, LABEL * room).size() * LINE + (value.measured() ? WRITTEN : GAP / 3);
        } else if (step instanceof Check check) {
            return 1.5 * GAP + lines(check.text(), LETTERS, room - INDENT).size() * LINE;
        } else if (step instanceof Advice advice) {
            return 2 * GAP + lines(said(advice), LETTERS, room - INDENT).size() * LINE;
        }
        throw new IllegalArgumentException("not a block: " + step);
    }

    /** Draws a step below a height. */
    void draw(Step step, PdfCanvas canvas, double top) throws IOException {
        if (step instanceof Heading heading) {
            double baseLine = top + HEADING + LINE;
            for (String line : lines(heading.text(), HEADING, room)) {
                canvas.bold(line, left, baseLine - GAP, HEADING, Anchor.START);
                baseLine += LINE;
            }
        } else if (step instanceof Text text) {
            write(lines(text.text(), LETTERS, room), canvas, left, top + GAP);
        } else if (step instanceof Value value) {
            value(value, canvas, top);
        } else if (step instanceof Check check) {
            canvas.frame(left, top + GAP, BOX, BOX, 2 * THIN);
            write(lines(check.text(), LETTERS, room - INDENT), canvas, left + INDENT, top + GAP);
        } else if (step instanceof Advice advice) {
            canvas.fill(left, top + GAP, 1, height(step) - 2 * GAP, 0);
            write(lines(said(advice), LETTERS, room - INDENT), canvas, left + INDENT / 2, top + GAP);
        }
    }

    private static String said(Advice advice) {
        return "Caution: " + advice.caution().text();
    }

    private List<String> lines(String text, double size, double width) {
        return letters.wrap(text, size, width);
    }

    private static void write(List<String> lines, PdfCanvas canvas, double x, double top) throws IOException {
        double baseLine = top + LETTERS;
        for (String line : lines) {
            canvas.text(line, x, baseLine, LETTERS, Anchor.START);
            baseLine += LINE;
        }
    }

    /** Label, number with its unit, fraction and blank, each in a column of its own. */
    private void value(Value value, PdfCanvas canvas, double top) throws IOException {
        double end = top + height(value);
        double baseLine = end - 1.2;
        List<String> label = lines(value.label(), LETTERS, LABEL * room);
        for (int i = 0; i < label.size(); i++) {
            canvas.text(label.get(i), left, baseLine - (label.size() - 1 - i) * LINE, LETTERS, Anchor.START);
        }
        double numberEnd = left + NUMBER * room;
        canvas.bold(value.number(), numberEnd, baseLine, LETTERS, Anchor.END);
        double space = value.unit().equals("°") ? GAP / 4 : GAP;
        canvas.text(value.unit(), numberEnd + space, baseLine, LETTERS, Anchor.START);
        canvas.text(value.fraction(), left + FRACTION * room, baseLine, LETTERS, Anchor.START);
        if (value.measured()) {
            double blank = left + BLANK * room;
            canvas.text("measured:", blank, baseLine, LETTERS, Anchor.START);
            canvas.line(blank + MEASURED, baseLine + 0.4, left + room, baseLine + 0.4, 2 * THIN);
        }
        rule(canvas, end);
    }

    /** A light line across the page, for the eye to follow. */
    void rule(PdfCanvas canvas, double at) throws IOException {
        canvas.out().setStrokingColor((float) GREY);
        canvas.line(left, at, left + room, at, THIN / 2);
        canvas.out().setStrokingColor(Color.BLACK);
    }

    /** Height of a finding. */
    double height(Finding finding) {
        return findingLines(finding).size() * LINE + 3 * GAP;
    }

    private List<String> findingLines(Finding finding) {
        return lines(finding.message(), LETTERS, room - SEVERITY - 2 * GAP);
    }

    /** Draws a finding in a frame that is the heavier the graver it is. */
    void draw(Finding finding, PdfCanvas canvas, double top) throws IOException {
        double frameTop = top + GAP;
        double high = height(finding) - GAP;
        boolean stop = finding.severity() == Severity.STOP;
        if (stop) {
            canvas.fill(left, frameTop, SEVERITY, high, 0);
        }
        double pen = stop ? 5 * THIN : finding.severity() == Severity.WARN ? 3 * THIN : THIN;
        canvas.frame(left, frameTop, room, high, pen);
        Color colour = stop ? Color.WHITE : Color.BLACK;
        canvas.out().setNonStrokingColor(colour);
        canvas.out().setStrokingColor(colour);
        double baseLine = frameTop + GAP + LETTERS;
        canvas.bold(finding.severity().name(), left + SEVERITY / 2, baseLine, LETTERS, Anchor.MIDDLE);
        canvas.out().setNonStrokingColor(Color.BLACK);
        canvas.out().setStrokingColor(Color.BLACK);
        write(findingLines(finding), canvas, left + SEVERITY + GAP, frameTop + GAP);
    }
}
