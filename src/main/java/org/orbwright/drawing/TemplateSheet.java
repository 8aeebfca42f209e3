package org.orbwright.drawing;

import java.util.ArrayList;
import java.util.List;

/** A template in the making: lines to be cut or marked along, and letters of one height whatever the size is. */
final class TemplateSheet {
    /** Height of the letters; in millimetres. */
    static final double LETTERS = 3;
    /** Room around the outline for letters; in millimetres. */
    static final double MARGIN = 12;

    private final List<Mark> marks = new ArrayList<>();

    void outline(List<Point> corners) {
        line(new PathData().lines(corners).close(), Pen.MEDIUM);
    }

    void line(PathData path, Pen pen) {
        marks.add(new Line(path, pen));
    }

    void label(double x, double y, Anchor anchor, String text) {
        marks.add(new Label(x, y, LETTERS, anchor, text));
    }

    /** Letters that are read on a line too. */
    void cased(double x, double y, double size, Anchor anchor, String text) {
        marks.add(new Label(x, y, size, anchor, text, Letters.CASED));
    }

    Drawing drawing(String title, double width, double height) {
        return new Drawing(title, title + ", at true size.", width, height, List.of(), marks);
    }
}
