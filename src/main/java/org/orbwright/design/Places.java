package org.orbwright.design;

import org.orbwright.quantity.Describe;

@Describe(
        "Which of a panel's segments: ALL of them, or every other one: ODD the first, third and so on, EVEN the second,"
                + " fourth and so on. ALL if a lamination leaves it out.")
public enum Places {
    ALL,
    ODD,
    EVEN;

    /**
     * Whether a segment is one of them.
     *
     * @param place its place in the face's list of segments, from 0
     */
    public boolean include(int place) {
        return this == ALL || (place % 2 == 0) == (this == ODD);
    }
}
