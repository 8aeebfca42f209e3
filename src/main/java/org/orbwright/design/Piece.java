package org.orbwright.design;

/**
 * One outline of segment that has to be sawn, in millimetres, seen from outside with its base down. Where the bands run
 * parallel to the base a mirrored segment is the same piece turned face down; where they do not it is a piece of its
 * own.
 *
 * @param segment letter of the segment kind
 * @param mirrored whether it is the mirror image of the kind's outline
 * @param turned whether it lies face down, so that the band angle counts the other way
 * @param base base distance
 * @param left base length to the left of the foot
 * @param right base length to the right of the foot
 * @param perSphere how many one sphere takes
 * @param turnedPerSphere how many of those are turned face down
 */
public record Piece(
        String segment,
        boolean mirrored,
        boolean turned,
        double base,
        double left,
        double right,
        int perSphere,
        int turnedPerSphere) {

    /** Length of the base. */
    public double baseLength() {
        return left + right;
    }

    /** Area of the face. */
    public double area() {
        return base * baseLength() / 2;
    }

    /** Whether left and right are alike. */
    public boolean symmetric() {
        return left == right;
    }

    /** This piece turned face down, as one piece of its own. */
    public Piece turnedOver() {
        return new Piece(segment, !mirrored, !turned, base, /* left= */ right, /* right= */ left, 1, 1);
    }

    /** The same piece in other numbers. */
    Piece counted(int inSphere, int turnedInSphere) {
        return new Piece(segment, mirrored, turned, base, left, right, inSphere, turnedInSphere);
    }

    /** Band angle of a lamination as it lies in this piece. */
    public double angle(Lamination lamination) {
        return turned ? -lamination.bandAngle() : lamination.bandAngle();
    }

    /** The largest of {@code x cos d + y sin d} over the outline, which is where the first band starts. */
    public double top(double bandAngle) {
        double cos = Math.cos(bandAngle);
        double sin = Math.sin(bandAngle);
        return Math.max(0, base * cos + Math.max(-left * sin, right * sin));
    }

    /** The smallest of {@code x cos d + y sin d} over the outline. */
    public double bottom(double bandAngle) {
        double cos = Math.cos(bandAngle);
        double sin = Math.sin(bandAngle);
        return Math.min(0, base * cos + Math.min(-left * sin, right * sin));
    }

    /** Extent of the outline square to the bands: the width of lamination that it takes. */
    public double extent(double bandAngle) {
        return bandAngle == 0 ? base : top(bandAngle) - bottom(bandAngle);
    }
}
