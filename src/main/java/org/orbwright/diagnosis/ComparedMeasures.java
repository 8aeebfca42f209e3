package org.orbwright.diagnosis;

import org.orbwright.quantity.Describe;

@Describe("Measurements that tell the same thing. TILT_AND_SEAM: the angle gauge and the mean error of the test seams."
        + " PANELS_OF_TRIO: the largest and the smallest error of a trio's panels of one kind. SMALLEST_FLATS and"
        + " LARGEST_FLATS: the smallest and the largest measure across flats, compared with the sums of the distances"
        + " of two opposite faces. These two are compared only where all of a kind were measured.")
public enum ComparedMeasures {
    TILT_AND_SEAM,
    PANELS_OF_TRIO,
    SMALLEST_FLATS,
    LARGEST_FLATS
}
