package org.orbwright.band;

import static java.lang.Math.asin;
import static java.lang.Math.sqrt;

import java.util.Arrays;

/**
 * The area of an upright plane cut through a panel's wood, between a floor and a ceiling, along the plane's own
 * coordinate w. The ceiling is the outer face or the sphere, whichever is lower; the floor is the hollow or the seam,
 * whichever is higher. All four are straight or circular, so the area has a closed form between the places where they
 * cross.
 *
 * @param ceiling height of the outer face
 * @param roundSquared square of the radius of the circle that the plane cuts from the sphere; infinite for no sphere
 * @param floor height of the hollow's flat
 * @param slope rise of the seam along w
 * @param start height of the seam at w = 0
 */
record CutFace(double ceiling, double roundSquared, double floor, double slope, double start) {

    /** The area between two places along the plane. */
    double area(double from, double to) {
        double round = sqrt(Math.max(0, roundSquared));
        double low = Math.max(from, -round);
        double high = Math.min(to, round);
        if (!(low < high)) {
            return 0;
        }
        double[] breaks = new double[10];
        breaks[0] = low;
        breaks[1] = high;
        int count = 2;
        if (slope != 0) {
            count = put(breaks, count, (floor - start) / slope, low, high);
            count = put(breaks, count, (ceiling - start) / slope, low, high);
        }
        if (Double.isFinite(roundSquared)) {
            count = roundBreaks(breaks, count, low, high);
        }
        Arrays.sort(breaks, 0, count);
        double area = 0;
        for (int i = 0; i + 1 < count; i++) {
            area += between(breaks[i], breaks[i + 1]);
        }
        return area;
    }

    private int roundBreaks(double[] breaks, int before, double low, double high) {
        int count = before;
        double ceilingCrossing = sqrt(Math.max(0, roundSquared - ceiling * ceiling));
        double floorCrossing = sqrt(Math.max(0, roundSquared - floor * floor));
        count = put(breaks, count, ceilingCrossing, low, high);
        count = put(breaks, count, -ceilingCrossing, low, high);
        count = put(breaks, count, floorCrossing, low, high);
        count = put(breaks, count, -floorCrossing, low, high);
        double steep = 1 + slope * slope;
        double half = steep * roundSquared - start * start;
        if (half > 0) {
            count = put(breaks, count, (-slope * start + sqrt(half)) / steep, low, high);
            count = put(breaks, count, (-slope * start - sqrt(half)) / steep, low, high);
        }
        return count;
    }

    private static int put(double[] breaks, int count, double at, double low, double high) {
        if (at > low && at < high) {
            breaks[count] = at;
            return count + 1;
        }
        return count;
    }

    private double between(double from, double to) {
        double middle = (from + to) / 2;
        double arc = sqrt(Math.max(0, roundSquared - middle * middle));
        double seam = slope * middle + start;
        if (Math.min(ceiling, arc) <= Math.max(floor, seam)) {
            return 0;
        }
        double above = arc < ceiling ? underArc(to) - underArc(from) : ceiling * (to - from);
        double below = seam > floor ? seam * (to - from) : floor * (to - from);
        return above - below;
    }

    private double underArc(double w) {
        double round = sqrt(roundSquared);
        double clamped = Math.max(-1, Math.min(1, w / round));
        return (w * sqrt(Math.max(0, roundSquared - w * w)) + roundSquared * asin(clamped)) / 2;
    }
}
