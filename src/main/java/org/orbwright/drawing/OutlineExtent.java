package org.orbwright.drawing;

import org.orbwright.drawing.Outline.At;
import org.orbwright.drawing.Outline.Chain;
import org.orbwright.drawing.Outline.Round;
import org.orbwright.drawing.Outline.Shape;

/** The least and largest x and y of outlines. */
record OutlineExtent(double left, double right, double low, double high) {

    static OutlineExtent of(Outline outline) {
        double[] ends = {
            Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY
        };
        for (Shape shape : outline.shapes()) {
            if (shape instanceof Chain chain) {
                chain.points().forEach(at -> grow(ends, at, 0));
                if (chain.bulge() != 0) {
                    grow(ends, chain.middle(), 0);
                }
            } else if (shape instanceof Round round) {
                grow(ends, round.centre(), round.radius());
            }
        }
        return new OutlineExtent(ends[0], ends[1], ends[2], ends[3]);
    }

    private static void grow(double[] ends, At at, double around) {
        ends[0] = Math.min(ends[0], at.x() - around);
        ends[1] = Math.max(ends[1], at.x() + around);
        ends[2] = Math.min(ends[2], at.y() - around);
        ends[3] = Math.max(ends[3], at.y() + around);
    }

    double width() {
        return right - left;
    }

    double height() {
        return high - low;
    }
}
