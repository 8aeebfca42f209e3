package org.orbwright.drawing;

/** A point on the panel. */
record Point(double x, double y) {
    double along(double cos, double sin) {
        return x * cos + y * sin;
    }
}
