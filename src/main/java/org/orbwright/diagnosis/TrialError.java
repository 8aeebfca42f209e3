package org.orbwright.diagnosis;

/**
 * What a trial says: how far its setting was off, in degrees or in the design's unit, as an interval. A value that is
 * read to the nearest step lies anywhere within half a step (JCGM 100:2008, 4.3.7).
 *
 * @param set what the scale stood at
 * @param least the least that the setting can have been off
 */
record TrialError(double set, double least, double most) {

    double middle() {
        return (least + most) / 2;
    }

    double half() {
        return (most - least) / 2;
    }

    /** Standard uncertainty of the reading alone. */
    double uncertainty() {
        return half() / Math.sqrt(3);
    }
}
