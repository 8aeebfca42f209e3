package org.orbwright.stock;

import java.util.Collections;
import java.util.List;

/**
 * A part of a board's width, as long and as thick as the section of board that it is ripped from; its width is without
 * the kerf. A rotated lane is a stick as wide as the strips are thick, from which strips are sliced off the board's
 * thickness. In others the strips lie as they lay in the board, one above the other if it is resawn. The items are the
 * strips' widths by number, from the board's upper face downwards, in ascending order.
 */
record Lane(boolean rotated, double width, List<Integer> items) {
    Lane {
        items = List.copyOf(items);
    }

    /** How many strips of a width it gives. */
    int count(int item) {
        return Collections.frequency(items, item);
    }

    /** Whether this lane gives at least as many strips of every width from no more of the board. */
    boolean replaces(Lane other) {
        if (width > other.width) {
            return false;
        }
        int at = 0;
        for (int item : other.items) {
            while (at < items.size() && items.get(at) < item) {
                at++;
            }
            if (at == items.size() || items.get(at) != item) {
                return false;
            }
            at++;
        }
        return true;
    }
}
