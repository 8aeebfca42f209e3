package org.orbwright.body;

/** How finely round surfaces are divided: how far a triangle may lie below them, in millimetres. */
record Fineness(double deviation) {

    /**
     * The longest edge on a sphere: no triangle with such edges has a circle larger than that of an equilateral one, as
     * long as it is acute, and an obtuse one comes nearest to the centre at the middle of its longest edge.
     */
    double longestEdge(double radius) {
        double depth = Math.min(deviation, radius / 2);
        return Math.sqrt(3 * depth * (2 * radius - depth));
    }

    /** The largest angle between two points on a circle, which may lie on a sphere of the second radius. */
    double step(double circle, double sphere) {
        double bySagitta = 2 * Math.acos(1 - Math.min(deviation, circle / 2) / circle);
        double byEdge = 2 * Math.asin(Math.min(1, longestEdge(sphere) / 2 / circle));
        return Math.min(Math.PI / 4, Math.min(bySagitta, byEdge));
    }
}
