package org.orbwright.band;

/**
 * The part of a convex polygon that lies in a disc around the origin, in closed form: triangles from the origin where
 * an edge runs within the disc, and sectors of the disc where it runs outside.
 *
 * @param area its area
 * @param x its first moment: the integral of x
 * @param y the integral of y
 */
record DiscPolygon(double area, double x, double y) {

    /**
     * Clips a polygon to a disc.
     *
     * @param corners x and y of each corner, counter-clockwise
     * @param radius the disc's radius; infinite for the whole polygon
     */
    static DiscPolygon of(double[][] corners, double radius) {
        DiscPolygon sum = new DiscPolygon(0, 0, 0);
        for (int i = 0; i < corners.length; i++) {
            sum = sum.plus(fan(corners[i], corners[(i + 1) % corners.length], radius));
        }
        return sum;
    }

    private DiscPolygon plus(DiscPolygon other) {
        return new DiscPolygon(area + other.area, x + other.x, y + other.y);
    }

    /** What the disc holds of the triangle from the origin over an edge, negative for one that runs clockwise. */
    private static DiscPolygon fan(double[] from, double[] to, double radius) {
        if (Double.isInfinite(radius)) {
            return triangle(from, to);
        }
        double dx = to[0] - from[0];
        double dy = to[1] - from[1];
        double square = dx * dx + dy * dy;
        double along = from[0] * dx + from[1] * dy;
        double outside = from[0] * from[0] + from[1] * from[1] - radius * radius;
        double half = along * along - square * outside;
        if (square == 0 || half <= 0) {
            return sector(from, to, radius);
        }
        double enter = (-along - Math.sqrt(half)) / square;
        double leave = (-along + Math.sqrt(half)) / square;
        if (leave <= 0 || enter >= 1) {
            return sector(from, to, radius);
        }
        double[] first = enter <= 0 ? from : new double[] {from[0] + enter * dx, from[1] + enter * dy};
        double[] last = leave >= 1 ? to : new double[] {from[0] + leave * dx, from[1] + leave * dy};
        return sector(from, first, radius).plus(triangle(first, last)).plus(sector(last, to, radius));
    }

    private static DiscPolygon triangle(double[] from, double[] to) {
        double area = (from[0] * to[1] - from[1] * to[0]) / 2;
        return new DiscPolygon(area, area * (from[0] + to[0]) / 3, area * (from[1] + to[1]) / 3);
    }

    private static DiscPolygon sector(double[] from, double[] to, double radius) {
        double turn = Math.atan2(from[0] * to[1] - from[1] * to[0], from[0] * to[0] + from[1] * to[1]);
        if (turn == 0) {
            return new DiscPolygon(0, 0, 0);
        }
        double cube = radius * radius * radius / 3;
        double start = Math.hypot(from[0], from[1]);
        double end = Math.hypot(to[0], to[1]);
        return new DiscPolygon(
                radius * radius * turn / 2,
                cube * (to[1] / end - from[1] / start),
                cube * (from[0] / start - to[0] / end));
    }
}
