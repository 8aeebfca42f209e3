package org.orbwright.band;

/**
 * The line between two bands on the panel, {@code x cos d + y sin d = offset}; below it is where the left side is
 * smaller.
 *
 * @param offset distance from the panel's centre, negative beyond it
 * @param cos cosine of the band angle d
 * @param sin sine of the band angle d
 */
public record BandLine(double offset, double cos, double sin) {

    /** A line at an offset, turned by a band angle in radians. */
    public static BandLine of(double offset, double bandAngle) {
        return new BandLine(offset, Math.cos(bandAngle), Math.sin(bandAngle));
    }

    /** The same line with below and above changed. */
    BandLine reversed() {
        return new BandLine(-offset, -cos, -sin);
    }
}
