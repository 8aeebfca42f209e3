package org.orbwright.drawing;

import java.util.DoubleSummaryStatistics;
import java.util.List;

/** An upright rectangle on the sheet. */
record Box(double left, double top, double right, double bottom) {
    /** How much paper covers what lies below a label. */
    private static final double COVER = 0.9;
    /** Room around a label, as a share of its letters. */
    private static final double ROOM = 0.25;
    /** A label covers at most this share of the width and of the height. */
    private static final double SHARE = 0.8;
    /** Letters of this share of the full size are taken before a shorter text is. */
    private static final double LEGIBLE = 0.7;
    /** Letters rise above and hang below their base line by these shares of their size. */
    private static final double RISE = 0.36;

    /** The least box around points. */
    static Box around(List<Point> points) {
        DoubleSummaryStatistics x = points.stream().mapToDouble(Point::x).summaryStatistics();
        DoubleSummaryStatistics y = points.stream().mapToDouble(Point::y).summaryStatistics();
        return new Box(x.getMin(), y.getMin(), x.getMax(), y.getMax());
    }

    double width() {
        return right - left;
    }

    double height() {
        return bottom - top;
    }

    double middle() {
        return (left + right) / 2;
    }

    /** The outline. */
    PathData path() {
        return new PathData()
                .moveTo(left, top)
                .lineTo(right, top)
                .lineTo(right, bottom)
                .lineTo(left, bottom)
                .close();
    }

    /** Lines across it that slant the other way than those of {@link #hatch}. */
    PathData hatchBack(double spacing) {
        PathData path = new PathData();
        double step = spacing * Math.sqrt(2);
        for (double c = left + top + step / 2; c < right + bottom; c += step) {
            double from = Math.max(top, c - right);
            double to = Math.min(bottom, c - left);
            path.moveTo(c - from, from).lineTo(c - to, to);
        }
        return path;
    }

    /** Slanting lines across it. */
    PathData hatch(double spacing) {
        PathData path = new PathData();
        double step = spacing * Math.sqrt(2);
        for (double c = left - bottom + step / 2; c < right - top; c += step) {
            double from = Math.max(top, left - c);
            double to = Math.min(bottom, right - c);
            path.moveTo(from + c, from).lineTo(to + c, to);
        }
        return path;
    }

    /**
     * A label in its middle on a ground of paper. It has the longest text that fits in letters of nearly full size,
     * else in smaller ones that can still be read, or there is none.
     */
    List<Mark> label(List<String> texts, double largest, double smallest) {
        for (double least : new double[] {Math.max(smallest, LEGIBLE * largest), smallest}) {
            for (String text : texts) {
                double high = SHARE * height() / (1 + 2 * ROOM);
                double wide = SHARE * width() / (Lettering.width(text, 1) + 2 * ROOM);
                double size = Math.min(largest, Math.min(high, wide));
                if (size >= least) {
                    return label(text, size);
                }
            }
        }
        return List.of();
    }

    private List<Mark> label(String text, double size) {
        double reach = Lettering.width(text, size) / 2 + ROOM * size;
        double y = (top + bottom) / 2;
        double rise = size * (0.5 + ROOM);
        Box ground = new Box(middle() - reach, y - rise, middle() + reach, y + rise);
        return List.of(
                new Paper(ground.path(), COVER, Pen.NONE),
                new Label(middle(), y + RISE * size, size, Anchor.MIDDLE, text));
    }
}
