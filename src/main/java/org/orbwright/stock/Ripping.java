package org.orbwright.stock;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * What is ripped, and with which saw; all lengths in millimetres. Widths and the stick, which is the thickness of every
 * strip, are measured as strips leave the saw. Of each width so many strips are of use at most.
 */
record Ripping(List<Double> widths, List<Integer> needed, double stick, double kerf) {
    /** A strip that fits exactly fits, whatever the last bit of a sum says; in millimetres. */
    static final double EXACT_FIT = 1e-6;

    Ripping {
        widths = List.copyOf(widths);
        needed = List.copyOf(needed);
    }

    /** Strips that lie one above the other in a thickness if it is resawn. */
    int layers(double thickness) {
        return (int) Math.floor((thickness + kerf + EXACT_FIT) / (stick + kerf));
    }

    /** Whether something fits, exactly or with room to spare. */
    static boolean fits(double needed, double room) {
        return room + EXACT_FIT >= needed;
    }

    /** The set of no strips. */
    List<Integer> none() {
        return Collections.nCopies(widths.size(), 0);
    }

    /** A set of strips with those of a lane, none counted that nobody needs. */
    List<Integer> with(List<Integer> counts, Lane lane) {
        List<Integer> next = new ArrayList<>(counts);
        for (int item : lane.items()) {
            next.set(item, Math.min(needed.get(item), next.get(item) + 1));
        }
        return next;
    }
}
