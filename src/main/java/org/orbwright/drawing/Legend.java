package org.orbwright.drawing;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.orbwright.design.Band;
import org.orbwright.design.BandSet;
import org.orbwright.design.Design;
import org.orbwright.design.Panel;
import org.orbwright.drawing.Drawing.Anchor;
import org.orbwright.drawing.Drawing.Area;
import org.orbwright.drawing.Drawing.Label;
import org.orbwright.drawing.Drawing.Mark;
import org.orbwright.drawing.Drawing.Pen;

/** The woods of a design with their tones, and the key to them below a drawing. */
final class Legend {
    /** Margin around a drawing, as a share of half its size. */
    static final double MARGIN = 0.06;

    private static final int COLUMNS = 3;
    private static final double ROW = 0.045;

    private final List<String> species;

    Legend(Design design) {
        Set<String> names = new LinkedHashSet<>();
        for (Panel panel : design.panels()) {
            for (Band band : panel.lamination().bands()) {
                names.add(band.species());
            }
        }
        this.species = List.copyOf(names);
    }

    List<String> species() {
        return species;
    }

    int tone(String name) {
        return species.indexOf(name);
    }

    String setName(BandSet set) {
        return set.name().toLowerCase(Locale.ROOT);
    }

    /** Height of letters that suit a sheet of this width. */
    static double letters(double width) {
        return width * 0.025;
    }

    /** Height of the key below a drawing of this width. */
    double height(double width) {
        int rows = (species.size() + COLUMNS - 1) / COLUMNS;
        return width * ROW * (rows + 0.5);
    }

    /** The key, from the given height downwards. */
    List<Mark> marks(double width, double top) {
        List<Mark> marks = new ArrayList<>();
        double letters = letters(width);
        for (int i = 0; i < species.size(); i++) {
            int row = i / COLUMNS;
            double x = width * (0.03 + (double) (i % COLUMNS) / COLUMNS);
            double y = top + width * ROW * row;
            double box = width * ROW * 0.7;
            PathData square = new PathData()
                    .moveTo(x, y)
                    .lineTo(x + 1.6 * box, y)
                    .lineTo(x + 1.6 * box, y + box)
                    .lineTo(x, y + box)
                    .close();
            marks.add(new Area(square, i, Pen.THIN));
            marks.add(new Label(x + 2 * box, y + box * 0.8, letters, Anchor.START, species.get(i)));
        }
        return marks;
    }
}
