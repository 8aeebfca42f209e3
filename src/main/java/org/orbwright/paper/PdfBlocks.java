package org.orbwright.paper;

import java.awt.Color;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.orbwright.drawing.Anchor;
import org.orbwright.drawing.Drawing;
import org.orbwright.drawing.Label;
import org.orbwright.paper.ShopSheet.Advice;
import org.orbwright.paper.ShopSheet.Check;
import org.orbwright.paper.ShopSheet.Heading;
import org.orbwright.paper.ShopSheet.Picture;
import org.orbwright.paper.ShopSheet.Step;
import org.orbwright.paper.ShopSheet.Table;
import org.orbwright.paper.ShopSheet.Text;
import org.orbwright.paper.ShopSheet.Value;
import org.orbwright.quantity.Rounding;
import org.orbwright.sheet.Finding;
import org.orbwright.sheet.Finding.Severity;

/** Turns findings and the steps of a sheet into blocks of one width. */
record PdfBlocks(PdfLetters letters, PdfDrawing drawings, double width) {
    /** Height of the letters, 8.2 points; in millimetres, as all sizes here. */
    static final double LETTERS = 2.9;

    static final double LINE = 3.75;
    static final double GAP = 1.2;
    static final double THIN = 0.15;
    /** No letters are smaller than 7 points, which is hard to read at a bench (common practice, no source). */
    static final double SMALL = 2.5;

    /** A picture over the whole width has letters of at least 6 points, unless the page is too narrow for it. */
    private static final double SMALL_IN_PICTURES = 2.1;
    /** If the smallest letters are as large as this, a picture need not be larger. */
    private static final double LARGE_IN_PICTURES = 2.6;
    /** In a column the numbers of crowded bands, which stand in a table too, may be 5 points. */
    private static final double SMALLEST_IN_COLUMN = 1.8;

    private static final double SMALL_LINE = 3.3;
    private static final double HEADING = 3.3;
    private static final double INDENT = 5.5;
    private static final double BOX = 3.1;
    private static final double GREY = 0.7;
    private static final double SEVERITY = 13;
    /** A box to write a measured value into by hand. */
    private static final double WRITTEN_WIDTH = 17;

    private static final double WRITTEN_HEIGHT = 4.8;
    /** Room for a number and its unit. */
    private static final double NUMBER = 25;

    private static final double HIGHEST_PICTURE = 110;

    /** Whether a step can be read at this width. */
    boolean takes(Step step) {
        if (step instanceof Table table) {
            return new PdfTable(table, letters, width).natural() <= width;
        }
        return !(step instanceof Picture picture)
                || scale(picture.drawing()) * smallest(picture.drawing()) >= SMALLEST_IN_COLUMN;
    }

    /** The blocks of a step, one below the other. */
    List<Block> of(Step step) {
        if (step instanceof Heading heading) {
            List<String> lines = letters.wrap(heading.text(), HEADING, width);
            return List.of(new Block(2 * GAP + lines.size() * LINE, (canvas, left, top) -> {
                        double baseLine = top + 2 * GAP + HEADING;
                        for (String line : lines) {
                            canvas.bold(line, left, baseLine - GAP / 2, HEADING, Anchor.START);
                            baseLine += LINE;
                        }
                    })
                    .leading());
        } else if (step instanceof Text text) {
            return List.of(paragraph(text.text(), 0));
        } else if (step instanceof Value value) {
            return List.of(value(value));
        } else if (step instanceof Check check) {
            return List.of(check(check));
        } else if (step instanceof Advice advice) {
            return List.of(advice(advice));
        } else if (step instanceof Table table) {
            return new PdfTable(table, letters, width).blocks();
        } else if (step instanceof Picture picture) {
            return List.of(picture(picture));
        }
        throw new IllegalArgumentException("no such step: " + step);
    }

    private Block paragraph(String text, double indent) {
        List<String> lines = letters.wrap(text, LETTERS, width - indent);
        return new Block(
                GAP + lines.size() * LINE,
                (canvas, left, top) -> write(lines, LETTERS, LINE, canvas, left + indent, top + GAP));
    }

    private static void write(List<String> lines, double size, double line, PdfCanvas canvas, double x, double top)
            throws IOException {
        double baseLine = top + size;
        for (String text : lines) {
            canvas.text(text, x, baseLine, size, Anchor.START);
            baseLine += line;
        }
    }

    private Block check(Check check) {
        Block words = paragraph(check.text(), INDENT);
        return new Block(words.height() + GAP / 2, (canvas, left, top) -> {
            canvas.frame(left, top + GAP, BOX, BOX, 2 * THIN);
            words.ink().draw(canvas, left, top);
        });
    }

    private Block advice(Advice advice) {
        List<String> lines = letters.wrap("Caution: " + advice.caution().text(), SMALL, width - INDENT / 2);
        double height = lines.size() * SMALL_LINE + GAP;
        return new Block(height, (canvas, left, top) -> {
            canvas.fill(left, top, 0.8, height - GAP / 2, 0);
            write(lines, SMALL, SMALL_LINE, canvas, left + INDENT / 2, top + GAP / 4);
        });
    }

    /** Label, number with its unit, its fraction below that, and a box to write into. */
    private Block value(Value value) {
        double numberRight = width - WRITTEN_WIDTH - GAP;
        List<String> label = letters.wrap(value.label(), LETTERS, numberRight - NUMBER - GAP);
        boolean fraction = !value.fraction().isEmpty();
        double least = value.measured() ? WRITTEN_HEIGHT : 0;
        double height = Math.max(Math.max(label.size(), fraction ? 2 : 1) * LINE, least) + GAP / 2;
        return new Block(height, (canvas, left, top) -> {
            write(label, LETTERS, LINE, canvas, left, top + GAP / 2);
            double space = value.unit().isEmpty() || value.unit().equals("°") ? 0 : GAP;
            double end = left + numberRight - letters.width(value.unit(), LETTERS) - space;
            double baseLine = top + GAP / 2 + LETTERS;
            canvas.bold(value.number(), end, baseLine, LETTERS, Anchor.END);
            canvas.text(value.unit(), end + space, baseLine, LETTERS, Anchor.START);
            canvas.text(value.fraction(), left + numberRight, baseLine + LINE, SMALL, Anchor.END);
            if (value.measured()) {
                canvas.frame(left + width - WRITTEN_WIDTH, top + GAP / 4, WRITTEN_WIDTH, height - GAP / 2, 2 * THIN);
            }
            rule(canvas, left, top + height);
        });
    }

    /** A light line across the column, for the eye to follow. */
    private void rule(PdfCanvas canvas, double left, double at) throws IOException {
        canvas.out().setStrokingColor((float) GREY);
        canvas.line(left, at, left + width, at, THIN / 2);
        canvas.out().setStrokingColor(Color.BLACK);
    }

    /** As large as the column is wide, but not higher than letters and eye need. */
    private double scale(Drawing drawing) {
        double eye = Math.min(HIGHEST_PICTURE / drawing.height(), LARGE_IN_PICTURES / smallest(drawing));
        double high = Math.max(eye, SMALL_IN_PICTURES / smallest(drawing));
        return Math.min(width / drawing.width(), high);
    }

    private static double smallest(Drawing drawing) {
        return drawing.marks().stream()
                .filter(Label.class::isInstance)
                .mapToDouble(mark -> ((Label) mark).size())
                .min()
                .orElse(Double.POSITIVE_INFINITY);
    }

    private Block picture(Picture picture) {
        Drawing drawing = picture.drawing();
        double scale = scale(drawing);
        double height = scale * drawing.height();
        String size = picture.trueSize() ? Rounding.plain(scale, 3) + " of true size at 100 %" : "not to scale";
        List<String> caption = letters.wrap(drawing.title() + ": " + size, SMALL, width);
        return new Block(height + 3 * GAP + caption.size() * SMALL_LINE, (canvas, left, top) -> {
            double start = left + (width - scale * drawing.width()) / 2;
            double thin = PdfDrawing.THIN_PER_DRAWING * scale * drawing.width();
            drawings.draw(drawing, canvas, start, top + GAP, scale, thin);
            canvas.out().setNonStrokingColor(Color.BLACK);
            canvas.out().setStrokingColor(Color.BLACK);
            write(caption, SMALL, SMALL_LINE, canvas, left, top + 2 * GAP + height);
        });
    }

    /** A finding in a frame that is the heavier the graver it is, and a note in small letters. */
    Block of(Finding finding) {
        boolean note = finding.severity() == Severity.NOTE;
        double size = note ? SMALL : LETTERS;
        double line = note ? SMALL_LINE : LINE;
        List<String> lines = letters.wrap(finding.message(), size, width - SEVERITY - 2 * GAP);
        double high = lines.size() * line + 1.5 * GAP;
        boolean stop = finding.severity() == Severity.STOP;
        double pen = stop ? 5 * THIN : finding.severity() == Severity.WARN ? 3 * THIN : THIN;
        return new Block(high + GAP, (canvas, left, top) -> {
            if (stop) {
                canvas.fill(left, top, SEVERITY, high, 0);
            }
            canvas.frame(left, top, width, high, pen);
            Color colour = stop ? Color.WHITE : Color.BLACK;
            canvas.out().setNonStrokingColor(colour);
            canvas.out().setStrokingColor(colour);
            canvas.bold(finding.severity().name(), left + SEVERITY / 2, top + GAP + size, size, Anchor.MIDDLE);
            canvas.out().setNonStrokingColor(Color.BLACK);
            canvas.out().setStrokingColor(Color.BLACK);
            write(lines, size, line, canvas, left + SEVERITY + GAP, top + GAP);
        });
    }

    /** The title of a card on a grey bar, with a box to tick when all of it is done. */
    Block title(String title) {
        double bar = 6.4;
        return new Block(bar + GAP, (canvas, left, top) -> {
            canvas.fill(left, top, width, bar, 0.88);
            canvas.frame(left + width - bar + 1.4, top + 1.4, bar - 2.8, bar - 2.8, 2 * THIN);
            canvas.bold(title, left + GAP, top + 4.7, 4.2, Anchor.START);
        });
    }

    /** Blocks of several steps: a caution stays with what it is about, a box to tick with what goes before it. */
    List<Block> of(List<Step> steps) {
        List<Block> blocks = new ArrayList<>();
        Step before = null;
        for (Step step : steps) {
            boolean opened = before instanceof Advice && !(step instanceof Advice);
            if (!blocks.isEmpty() && (opened || step instanceof Check)) {
                blocks.set(blocks.size() - 1, blocks.get(blocks.size() - 1).leading());
            }
            blocks.addAll(of(step));
            before = step;
        }
        return blocks;
    }
}
