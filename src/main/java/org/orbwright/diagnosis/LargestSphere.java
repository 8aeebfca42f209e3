package org.orbwright.diagnosis;

import org.orbwright.design.Design;
import org.orbwright.sphere.SphereSizing.SphereLimit;

/**
 * The largest sphere that a shell leaves room for.
 *
 * @param diameter its diameter
 * @param limitedBy what keeps it from being larger
 */
record LargestSphere(LengthEstimate diameter, SphereLimit limitedBy) {

    /** Between faces that leave a diameter, and within the seams as they are designed, which nothing here measures. */
    static LargestSphere of(Design design, double diameter, double uncertainty) {
        double seams = 2 * design.seamRadius();
        return diameter <= seams
                ? new LargestSphere(LengthEstimate.of(diameter, uncertainty), SphereLimit.FLATS)
                : new LargestSphere(LengthEstimate.of(seams, 0), SphereLimit.SEAMS);
    }
}
