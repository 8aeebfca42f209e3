package org.orbwright.drawing;

/** How finely curves are replaced by straight parts. */
final class Flattening {
    /** Largest distance between a curve and its straight parts, in millimetres; half of what drawings promise. */
    static final double TOLERANCE = 0.025;

    private Flattening() {}

    /** The angle of an arc whose chord lies within a tolerance: the sagitta is {@code r (1 - cos(angle / 2))}. */
    static double step(double radius, double tolerance) {
        return 2 * Math.acos(Math.max(0.5, 1 - tolerance / radius));
    }
}
