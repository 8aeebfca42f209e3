package org.orbwright.stock;

/**
 * Which wood that is left over is kept: all from which one more strip of its wood, or one more piece of such a strip,
 * could be cut. What is shorter than the shortest piece, narrower than the narrowest strip or thinner than the stick is
 * waste. Strips are measured as they leave the saw, in millimetres. Spare strips are kept in any case.
 */
record KeptWood(double shortest, double narrowest, double stick) {
    static KeptWood of(CuttingProblem problem, double shortest) {
        return new KeptWood(
                shortest,
                problem.ripping().widths().stream()
                        .mapToDouble(width -> width)
                        .min()
                        .orElse(0),
                problem.ripping().stick());
    }

    /** Whether a block is kept; its length is along the grain. A strip may lie flat in it or stand on its edge. */
    boolean isKept(double length, double width, double thickness) {
        boolean flat = Ripping.fits(narrowest, width) && Ripping.fits(stick, thickness);
        boolean onEdge = Ripping.fits(stick, width) && Ripping.fits(narrowest, thickness);
        return Ripping.fits(shortest, length) && (flat || onEdge);
    }
}
