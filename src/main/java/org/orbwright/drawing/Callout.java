package org.orbwright.drawing;

import java.util.ArrayList;
import java.util.List;

/** Marks that explain a drawing: numbered balloons, leaders, dimension lines and blocks of text. */
final class Callout {
    private static final double LETTERS_PER_BALLOON = 1.15;
    /** Letters are as high above their base line as this share of their size. */
    private static final double RISE = 0.36;

    /** The ink of a disc, as a share of its radius. */
    private static final double INK_OF_DISC = 0.93;

    private static final double LINE_SPACING = 1.35;

    private Callout() {}

    /** A number or letter in a circle that is legible on every wood. */
    static List<Mark> balloon(double x, double y, double radius, String text) {
        double size = radius * (text.length() > 2 ? 0.8 : LETTERS_PER_BALLOON);
        return List.of(
                new Paper(new PathData().circle(x, y, radius), 1, Pen.THIN),
                new Label(x, y + RISE * size, size, Anchor.MIDDLE, text));
    }

    /** A number in white on a disc of ink with a light rim, which no number in plain ink is taken for. */
    static List<Mark> disc(double x, double y, double radius, String text) {
        double size = radius * (text.length() > 2 ? 0.8 : LETTERS_PER_BALLOON);
        return List.of(
                new Paper(new PathData().circle(x, y, radius), 1, Pen.NONE),
                new Ink(new PathData().circle(x, y, INK_OF_DISC * radius)),
                new Label(x, y + RISE * size, size, Anchor.MIDDLE, text, Letters.REVERSED));
    }

    /** A line that ends in a dot at what it points to. */
    static List<Mark> leader(double fromX, double fromY, double x, double y, double dot) {
        return List.of(
                new Line(line(fromX, fromY, x, y), Pen.CASED), new Line(new PathData().circle(x, y, dot), Pen.CASED));
    }

    /** A dimension line with a stroke across each end. */
    static Line dimension(double fromX, double fromY, double toX, double toY, double stroke) {
        PathData path = line(fromX, fromY, toX, toY);
        double length = Math.hypot(toX - fromX, toY - fromY);
        if (length > 0) {
            double acrossX = (fromY - toY) / length * stroke;
            double acrossY = (toX - fromX) / length * stroke;
            path.moveTo(fromX - acrossX, fromY - acrossY).lineTo(fromX + acrossX, fromY + acrossY);
            path.moveTo(toX - acrossX, toY - acrossY).lineTo(toX + acrossX, toY + acrossY);
        }
        return new Line(path, Pen.CASED);
    }

    /** A straight line. */
    static PathData line(double fromX, double fromY, double toX, double toY) {
        return new PathData().moveTo(fromX, fromY).lineTo(toX, toY);
    }

    /** Height of a block of text. */
    static double textHeight(int lines, double size) {
        return LINE_SPACING * size * lines;
    }

    /** Lines of text, the first below the given height. */
    static List<Mark> text(double x, double top, double size, Anchor anchor, List<String> lines) {
        List<Mark> marks = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            marks.add(new Label(x, top + size + textHeight(i, size), size, anchor, lines.get(i)));
        }
        return marks;
    }

    /** The heading in the middle of the top of a sheet, three letters high with its margins. */
    static Label heading(String text, double width, double letters) {
        double size = Lettering.size(text, 0.94 * width, 1.4 * letters);
        return new Label(width / 2, 2.4 * letters, size, Anchor.MIDDLE, text);
    }
}
