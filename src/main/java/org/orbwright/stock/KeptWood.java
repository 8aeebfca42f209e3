package org.orbwright.stock;

/**
 * Which wood that is left over is kept: all from which one more strip of its wood, or one more piece of such a strip,
 * could be cut. What is shorter, narrower or thinner is waste. Spare strips are kept in any case. Lengths are in
 * millimetres.
 *
 * @param shortest the shortest piece that a strip may be made up of; the whole strip where strips are in one piece
 * @param narrowest width of the narrowest strip, as it leaves the saw
 * @param stick thickness of every strip, as it leaves the saw
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

    /**
     * Whether a block is kept. A strip may lie flat in it or stand on its edge.
     *
     * @param length its length along the grain
     * @param width its width
     * @param thickness its thickness
     */
    boolean isKept(double length, double width, double thickness) {
        boolean flat = Ripping.fits(narrowest, width) && Ripping.fits(stick, thickness);
        boolean onEdge = Ripping.fits(stick, width) && Ripping.fits(narrowest, thickness);
        return Ripping.fits(shortest, length) && (flat || onEdge);
    }
}
