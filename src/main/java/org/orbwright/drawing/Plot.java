package org.orbwright.drawing;

import java.util.ArrayList;
import java.util.List;
import org.orbwright.quantity.LengthUnit;

/** The field of a plot of lengths, with axes whose values are round in the design's unit. */
final class Plot {
    private static final double LEFT = 0.09;
    private static final double RIGHT = 0.6;
    private static final double TOP = 0.15;
    private static final double BOTTOM = 0.58;
    private static final int STEPS_ALONG = 8;
    private static final int STEPS_UP = 7;

    private final LengthUnit unit;
    private final double sheet;
    private final double letters;
    private final double from;
    private final double to;
    private final double height;

    /** A plot on a sheet of a width; the horizontal axis has two ends, the vertical one a highest value. */
    Plot(LengthUnit unit, double sheet, double from, double to, double highest) {
        this.unit = unit;
        this.sheet = sheet;
        this.letters = Legend.letters(sheet);
        this.from = from;
        this.to = to;
        // A design of which nothing at all is seen still gets an axis.
        this.height = highest > 0 ? highest * 1.05 : to - from;
    }

    double right() {
        return RIGHT * sheet;
    }

    double top() {
        return TOP * sheet;
    }

    double bottom() {
        return BOTTOM * sheet;
    }

    double x(double along) {
        return sheet * (LEFT + (RIGHT - LEFT) * (along - from) / (to - from));
    }

    double y(double value) {
        return sheet * (BOTTOM + (TOP - BOTTOM) * value / height);
    }

    /** Leads a path on to a point of the plot. */
    void add(PathData path, double along, double value, boolean first) {
        if (first) {
            path.moveTo(x(along), y(value));
        } else {
            path.lineTo(x(along), y(value));
        }
    }

    /** The axes with their values and names. */
    List<Mark> axes(String alongName, String upName) {
        List<Mark> marks = new ArrayList<>();
        PathData lines =
                new PathData().moveTo(x(from), top()).lineTo(x(from), bottom()).lineTo(x(to), bottom());
        double stroke = letters / 2;
        for (double value : ticks(from, to, STEPS_ALONG)) {
            double x = x(unit.toMillimetres(value));
            lines.moveTo(x, bottom()).lineTo(x, bottom() + stroke);
            marks.add(new Label(x, bottom() + 1.8 * letters, letters, Anchor.MIDDLE, Ticks.write(value)));
        }
        for (double value : ticks(0, height, STEPS_UP)) {
            double y = y(unit.toMillimetres(value));
            lines.moveTo(x(from), y).lineTo(x(from) - stroke, y);
            marks.add(new Label(x(from) - 1.5 * stroke, y + 0.36 * letters, letters, Anchor.END, Ticks.write(value)));
        }
        marks.add(new Line(lines, Pen.MEDIUM));
        double size = Lettering.size(upName, sheet * 0.94, letters);
        marks.add(new Label(sheet * 0.03, top() - 1.2 * letters, size, Anchor.START, upName));
        marks.add(new Label((x(from) + x(to)) / 2, bottom() + 3.6 * letters, letters, Anchor.MIDDLE, alongName));
        return marks;
    }

    private List<Double> ticks(double low, double high, int most) {
        return Ticks.between(unit.fromMillimetres(low), unit.fromMillimetres(high), most);
    }
}
