package org.orbwright.stock;

import java.util.List;

/**
 * One way to rip a section of a board.
 *
 * @param lanes its lanes, from the jointed edge
 * @param counts how many strips of each width it gives, none counted that nobody needs
 */
record RipPattern(List<Lane> lanes, List<Integer> counts) {
    RipPattern {
        lanes = List.copyOf(lanes);
        counts = List.copyOf(counts);
    }

    /** Whether this pattern gives at least as many strips of every width. */
    boolean replaces(RipPattern other) {
        for (int item = 0; item < counts.size(); item++) {
            if (counts.get(item) < other.counts.get(item)) {
                return false;
            }
        }
        return true;
    }
}
