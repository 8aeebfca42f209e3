package org.orbwright.drawing;

/** A line of text: where it is anchored on its base line, and the height of its letters. */
public record Label(double x, double y, double size, Anchor anchor, String text, Letters letters) implements Mark {

    /** A line of plain text. */
    public Label(double x, double y, double size, Anchor anchor, String text) {
        this(x, y, size, anchor, text, Letters.PLAIN);
    }

    @Override
    public Mark lowered(double by) {
        return new Label(x, y + by, size, anchor, text, letters);
    }
}
