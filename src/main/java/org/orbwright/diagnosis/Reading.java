package org.orbwright.diagnosis;

/**
 * A measured value with its uncertainty; in millimetres and radians where it comes from a request.
 *
 * @param value the reading
 * @param uncertainty its standard uncertainty
 */
record Reading(double value, double uncertainty) {
    /**
     * Half of the resolution either way, all alike: a uniform distribution (JCGM 100:2008, F.2.2.1, the clause from
     * memory).
     */
    private static final double UNIFORM = Math.sqrt(12);

    static Reading of(double value, double resolution) {
        return new Reading(value, resolution / UNIFORM);
    }

    /** A value that is taken as exact. */
    static Reading exact(double value) {
        return new Reading(value, 0);
    }
}
