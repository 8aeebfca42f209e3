package org.orbwright.drawing;

import org.orbwright.quantity.Rounding;

/**
 * The course of a line: straight parts and arcs of ellipses, in the words of SVG's path data (SVG 1.1, section 8.3), to
 * a thousandth of a millimetre.
 */
public final class PathData {
    private static final int DECIMALS = 3;

    private final StringBuilder commands = new StringBuilder();

    /** Starts a new part of the path. */
    public PathData moveTo(double x, double y) {
        return add('M', x, y);
    }

    /** Draws a straight line. */
    public PathData lineTo(double x, double y) {
        return add('L', x, y);
    }

    /**
     * Draws an arc of an ellipse whose axes lie along x and y.
     *
     * @param radiusX half the axis along x
     * @param radiusY half the axis along y
     * @param large whether it is more than half of the ellipse
     * @param clockwise whether it runs clockwise on the sheet
     * @param x where it ends
     * @param y where it ends
     */
    public PathData arcTo(double radiusX, double radiusY, boolean large, boolean clockwise, double x, double y) {
        add('A', radiusX, radiusY);
        commands.append(" 0 ").append(large ? 1 : 0).append(' ').append(clockwise ? 1 : 0);
        return add(' ', x, y);
    }

    /** Draws a whole circle as a part of its own. */
    public PathData circle(double x, double y, double radius) {
        return moveTo(x - radius, y)
                .arcTo(radius, radius, true, true, x + radius, y)
                .arcTo(radius, radius, true, true, x - radius, y)
                .close();
    }

    /** Closes the part. */
    public PathData close() {
        commands.append('Z');
        return this;
    }

    /** Whether nothing is drawn. */
    public boolean isEmpty() {
        return commands.isEmpty();
    }

    private PathData add(char command, double x, double y) {
        commands.append(command).append(number(x)).append(' ').append(number(y));
        return this;
    }

    static String number(double value) {
        return Rounding.plain(value, DECIMALS);
    }

    /** The path data. */
    @Override
    public String toString() {
        return commands.toString();
    }
}
