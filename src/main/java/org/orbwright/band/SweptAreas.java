package org.orbwright.band;

import static java.lang.Math.atan2;
import static java.lang.Math.sqrt;

/**
 * Antiderivatives, over the direction of a ray from the panel's centre, of what the ray sweeps until it ends at a band
 * line or at the seam. Directions are slopes {@code y / x}.
 *
 * <p>Caps are areas of the sphere, one less the cosine of the polar angle, arranged so that nothing cancels near the
 * centre. Source: the integral of {@code 1 - sqrt(1 - k^2 / cos^2 p)} for a line at {@code k} radii from the axis, and
 * of one less the cosine of the polar angle along a great circle, by elementary integration.
 *
 * @param radius the sphere's radius
 * @param seamCos cosine by which the seam's great circle leans out, joint distance over seam radius
 * @param tilt base distance over seam radius
 */
record SweptAreas(double radius, double seamCos, double tilt) {

    /** Cap below a band line, per square of the radius, from the line's own axis to the given direction. */
    double underLine(BandLine line, double slope) {
        double k = line.offset() / radius;
        if (k == 0) {
            return 0;
        }
        double norm = sqrt(1 + slope * slope);
        double cos = Math.max(k, (line.cos() + slope * line.sin()) / norm);
        double sin = (slope * line.cos() - line.sin()) / norm;
        double height = sqrt((cos - k) * (cos + k));
        return k * atan2(k * sin, height) - atan2(sin * k * k / (cos + height), cos * height + sin * sin);
    }

    /** Cap inside the seam, per square of the radius, from the tip axis to the given direction. */
    double underSeam(double slope) {
        double norm = sqrt(1 + slope * slope);
        double cos = 1 / norm;
        double sin = slope / norm;
        double polarSin = sqrt(1 - seamCos() * seamCos() * sin * sin);
        return atan2(sin * tilt() * tilt() / (polarSin + seamCos() * cos), cos * polarSin + seamCos() * sin * sin);
    }

    /**
     * A triangle between the line's axis and a ray; a ray that meets the line on the sphere is never square to its
     * axis.
     */
    double planUnderLine(BandLine line, double slope) {
        double k = line.offset() / radius;
        if (k == 0) {
            return 0;
        }
        double cos = Math.max(k * sqrt(1 + slope * slope), line.cos() + slope * line.sin());
        return line.offset() * line.offset() * (slope * line.cos() - line.sin()) / cos / 2;
    }

    /** A sector of the ellipse as which the seam appears, by stretching it to a circle. */
    double planUnderSeam(double slope) {
        return radius * radius / 2 * tilt() * Math.atan(slope * tilt());
    }
}
