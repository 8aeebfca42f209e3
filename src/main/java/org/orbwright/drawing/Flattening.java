package org.orbwright.drawing;

/** How finely curves are replaced by straight parts. */
final class Flattening {
    /** Largest distance between a curve and its straight parts, in millimetres; half of what drawings promise. */
    static final double TOLERANCE = 0.025;

    /** The same as a share of the radius, for spheres so small that their curves would become corners. */
    private static final double COARSEST = 0.001;

    /**
     * For spheres of more than five metres across it is this share of the radius: on such a sheet nobody sees less, and
     * a drawing stays of a size that can be sent.
     */
    private static final double FINEST = 1e-5;

    private Flattening() {}

    /** The angle of an arc whose chord lies within a tolerance: the sagitta is {@code r (1 - cos(angle / 2))}. */
    static double step(double radius, double tolerance) {
        return 2 * Math.acos(1 - Math.min(Math.max(tolerance / radius, FINEST), COARSEST));
    }
}
