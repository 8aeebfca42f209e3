package org.orbwright.band;

import org.orbwright.design.Piece;

/**
 * A segment's face on the flat panel: the triangle of the tip, the left and the right corner.
 *
 * @param base base distance
 * @param left base length to the left of the foot
 * @param right base length to the right of the foot
 */
public record FlatSegment(double base, double left, double right) {

    /** The face of a piece. */
    public static FlatSegment of(Piece piece) {
        return new FlatSegment(piece.base(), piece.left(), piece.right());
    }

    /** Area of the triangle. */
    public double area() {
        return base * (left + right) / 2;
    }

    /** Area below a band line: what the line cuts off a corner is similar in shape to a part of the triangle. */
    public double areaBelow(BandLine line) {
        double atLeft = base * line.cos() - left * line.sin();
        double atRight = base * line.cos() + right * line.sin();
        double low = Math.min(0, Math.min(atLeft, atRight));
        double high = Math.max(0, Math.max(atLeft, atRight));
        double middle = atLeft + atRight - low - high;
        double u = line.offset();
        if (u <= low) {
            return 0;
        }
        if (u >= high) {
            return area();
        }
        if (u <= middle) {
            return area() * (u - low) / (middle - low) * ((u - low) / (high - low));
        }
        return area() * (1 - (high - u) / (high - middle) * ((high - u) / (high - low)));
    }
}
