package org.orbwright.drawing;

import java.util.List;
import org.orbwright.quantity.LengthUnit;

/** A line of known length at the left of a sheet, to check the scale of a print. */
final class ScaleBar {
    /** Height that it takes, in letters. */
    static final double HEIGHT = 1.5;

    private ScaleBar() {}

    /** The line with its length, round in a unit, on a sheet of a width. */
    static List<Mark> marks(LengthUnit unit, double width, double top) {
        double letters = Legend.letters(width);
        double length = Ticks.step(width / 8 / unit.millimetres());
        double x = width * 0.03;
        double end = x + length * unit.millimetres();
        double y = top + letters / 2;
        String text = Ticks.write(length) + " " + unit.symbol() + " when printed at true size";
        return List.of(
                Callout.dimension(x, y, end, y, letters / 3),
                new Label(end + letters, y + 0.36 * letters, letters, Anchor.START, text));
    }
}
