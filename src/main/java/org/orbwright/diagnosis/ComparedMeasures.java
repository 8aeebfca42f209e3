package org.orbwright.diagnosis;

import org.orbwright.quantity.Describe;

/** Measurements that tell the same thing. */
@Describe("Measurements that tell the same thing. TILT_AND_SEAM: the angle gauge and the mean error of the test seams."
        + " PANELS_OF_TRIO: the largest and the smallest error of a trio's panels of one kind. SMALLEST_FLATS and"
        + " LARGEST_FLATS: the smallest and the largest measure across flats, compared with the sums of the distances"
        + " of two opposite faces. These two are compared only where all of a kind were measured.")
public enum ComparedMeasures {
    /** An angle gauge and the gaps of test seams. */
    TILT_AND_SEAM,
    /** The panels of a trio that one setting gave. */
    PANELS_OF_TRIO,
    /** The smallest measure across flats and the smallest sum of opposite distances. */
    SMALLEST_FLATS,
    /** The largest measure across flats and the largest sum of opposite distances. */
    LARGEST_FLATS
}
