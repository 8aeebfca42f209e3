package org.orbwright.stock;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** A way to rip a section: lanes from the jointed edge, and the strips of each width that are needed. */
record RipPattern(List<Lane> lanes, List<Integer> counts) {
    RipPattern {
        lanes = List.copyOf(lanes);
        counts = List.copyOf(counts);
    }

    /** Sorts the lanes: wide ones first, and equal ones side by side, so that the fence moves seldom. */
    static RipPattern of(List<Lane> lanes, List<Integer> counts) {
        List<Lane> sorted = new ArrayList<>(lanes);
        sorted.sort(Comparator.comparingDouble(Lane::width)
                .reversed()
                .thenComparing(Lane::rotated)
                .thenComparing(lane -> lane.items().toString()));
        return new RipPattern(sorted, counts);
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
