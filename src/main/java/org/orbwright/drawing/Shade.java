package org.orbwright.drawing;

/** Light from the upper left and shadow on a ball, over the colours, which are seen through it. */
public record Shade(double x, double y, double radius) implements Mark {
    @Override
    public Mark lowered(double by) {
        return new Shade(x, y + by, radius);
    }
}
