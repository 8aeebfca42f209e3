package org.orbwright.stock;

import java.util.List;

/**
 * What is ripped, and with which saw; all lengths in millimetres.
 *
 * @param widths the different widths of strip, as they leave the saw
 * @param needed how many strips of each width are of use at most
 * @param stick thickness of every strip, as it leaves the saw
 * @param kerf kerf of a rip
 */
record Ripping(List<Double> widths, List<Integer> needed, double stick, double kerf) {
    /** A strip that fits exactly fits, whatever the last bit of a sum says; in millimetres. */
    static final double EXACT_FIT = 1e-6;

    Ripping {
        widths = List.copyOf(widths);
        needed = List.copyOf(needed);
    }
}
