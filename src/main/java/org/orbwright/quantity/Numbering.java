package org.orbwright.quantity;

import java.util.Collection;
import java.util.List;

/**
 * How the panels, corners and seams of a solid are numbered: inside by their place in its lists, which begins at 0, and
 * from 1 wherever somebody reads or writes them. Answers are numbered by {@link Quantity#NUMBER}; texts, pictures and
 * requests by this.
 */
public final class Numbering {
    /** The number of the first. */
    public static final int FIRST = 1;

    private Numbering() {}

    /** The number of what stands at a place in its list. */
    public static int of(int place) {
        return place + FIRST;
    }

    /** The numbers of what stands at these places, in the same order. */
    public static List<Integer> of(Collection<Integer> places) {
        return places.stream().map(Numbering::of).toList();
    }

    /** The place in its list of what has a number. */
    public static int place(int number) {
        return number - FIRST;
    }
}
