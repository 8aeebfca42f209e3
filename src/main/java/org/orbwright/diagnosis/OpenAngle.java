package org.orbwright.diagnosis;

/**
 * The angle of an open joint: the gap is the chord of the angle, {@code gap = 2 distance sin(angle / 2)}.
 *
 * @param angle the angle, 0 or more
 * @param fromGap its uncertainty by that of the gap
 * @param fromDistance its uncertainty by that of the distance; with a sign, for it is common to several gaps
 */
record OpenAngle(double angle, double fromGap, double fromDistance) {

    static OpenAngle of(Reading gap, Reading distance) {
        double half = gap.value() / (2 * distance.value());
        double slope = 1 / (distance.value() * Math.sqrt(1 - half * half));
        return new OpenAngle(
                2 * Math.asin(half),
                slope * gap.uncertainty(),
                -slope * gap.value() / distance.value() * distance.uncertainty());
    }

    OpenAngle times(double factor) {
        return new OpenAngle(angle * factor, fromGap * factor, fromDistance * factor);
    }

    /** The sum of angles whose gaps were read on their own, and whose distance was read once. */
    OpenAngle plus(OpenAngle other) {
        return new OpenAngle(
                angle + other.angle, Math.hypot(fromGap, other.fromGap), fromDistance + other.fromDistance);
    }

    AngleEstimate estimate() {
        return AngleEstimate.of(angle, Math.hypot(fromGap, fromDistance));
    }
}
