package org.orbwright.band;

import static java.lang.Math.max;
import static java.lang.Math.min;
import static java.lang.Math.sqrt;

import java.util.TreeSet;
import java.util.function.DoubleUnaryOperator;

/**
 * The surface of one segment straight from its definition, by another route than the closed forms: strips parallel to
 * the base whose ends are where the bounding curves cross, summed by tanh-sinh quadrature (H. Takahasi and M. Mori,
 * 1974).
 *
 * <p>The surface lies above the plan points (x, y) with {@code -x l / a <= y <= x r / a} and {@code x <= a}, at the
 * height {@code z = min(h, sqrt(R^2 - x^2 - y^2))}, where that is inside the seam: {@code z >= g x / a}.
 */
record SurfaceOracle(double joint, double face, double base, double left, double right, double radius) {
    private static final double STEP = 1.0 / 16;
    private static final int STEPS = 54;

    /**
     * The same region measured three times.
     *
     * @param visible on the finished surface
     * @param flat the part of that which is flat
     * @param plan square to the panel
     */
    record Measured(double visible, double flat, double plan) {}

    private enum Measure {
        SPHERE,
        FLAT,
        PLAN
    }

    /** Whether the surface has a point above the plan point. */
    boolean contains(double x, double y) {
        boolean onSegment = y >= -x * left / base && y <= x * right / base && x <= base;
        return onSegment && height(x, y) >= joint * x / base;
    }

    /** Area of the surface per area of the plan. */
    double slant(double x, double y) {
        double sphere = sqrt(radius * radius - x * x - y * y);
        return sphere > face ? 1 : radius / sphere;
    }

    /** The surface below a band line. */
    Measured below(BandLine line) {
        double sphere = sum(line, Measure.SPHERE);
        double flat = flatRadius() > 0 ? sum(line, Measure.FLAT) : 0;
        return new Measured(sphere + flat, flat, sum(line, Measure.PLAN));
    }

    /** The whole surface. */
    Measured whole() {
        return below(BandLine.of(2 * base, 0));
    }

    /** How far the surface reaches in a direction, by bisection. */
    double reach(double slope) {
        double cos = 1 / Math.hypot(1, slope);
        double inside = 0;
        double outside = radius + base / cos;
        for (int i = 0; i < 100; i++) {
            double middle = (inside + outside) / 2;
            double x = middle * cos;
            boolean in = x <= base && height(x, x * slope) >= joint * x / base;
            inside = in ? middle : inside;
            outside = in ? outside : middle;
        }
        return inside;
    }

    /** The largest {@code x cos d + y sin d} of the surface, by search along its end. */
    double extent(double cos, double sin) {
        double from = Math.atan(-left / base);
        double to = Math.atan(right / base);
        double most = 0;
        for (int round = 0; round < 12; round++) {
            double best = from;
            double width = (to - from) / 64;
            double mostHere = Double.NEGATIVE_INFINITY;
            for (int i = 0; i <= 64; i++) {
                double angle = from + i * width;
                double along = reach(Math.tan(angle)) * (Math.cos(angle) * cos + Math.sin(angle) * sin);
                if (along > mostHere) {
                    mostHere = along;
                    best = angle;
                }
            }
            most = max(most, mostHere);
            from = max(from, best - width);
            to = min(to, best + width);
        }
        return most;
    }

    private double sum(BandLine line, Measure measure) {
        double sum = 0;
        double from = 0;
        for (double to : stops(line)) {
            sum += integrate(x -> strip(x, line, measure), from, to);
            from = to;
        }
        return sum;
    }

    private double height(double x, double y) {
        double square = radius * radius - x * x - y * y;
        return square < 0 ? Double.NEGATIVE_INFINITY : min(face, sqrt(square));
    }

    private double flatRadius() {
        return sqrt(max(0, (radius - face) * (radius + face)));
    }

    private double seamStretch() {
        return 1 + joint / base * (joint / base);
    }

    /** The strip at x: its length on the sphere, on the flat or on the plan. */
    private double strip(double x, BandLine line, Measure measure) {
        double seam = sqrt(max(0, radius * radius - x * x * seamStretch()));
        double low = max(-x * left / base, -seam);
        double high = min(x * right / base, seam);
        double rest = line.offset() - x * line.cos();
        if (line.sin() > 0) {
            high = min(high, rest / line.sin());
        } else if (line.sin() < 0) {
            low = max(low, rest / line.sin());
        } else if (rest < 0) {
            return 0;
        }
        if (high <= low) {
            return 0;
        }
        double flat = flatRadius();
        double half = x < flat ? sqrt((flat - x) * (flat + x)) : 0;
        double flatLow = min(max(low, -half), high);
        double flatHigh = max(min(high, half), flatLow);
        return switch (measure) {
            case PLAN -> high - low;
            case FLAT -> flatHigh - flatLow;
            case SPHERE -> radius * (angle(x, high) - angle(x, flatHigh) + angle(x, flatLow) - angle(x, low));
        };
    }

    private double angle(double x, double y) {
        return Math.atan2(y, sqrt(max(0, radius * radius - x * x - y * y)));
    }

    /** Every x at which two of the bounding curves can cross. */
    private TreeSet<Double> stops(BandLine line) {
        double end = min(base, radius / sqrt(seamStretch()));
        TreeSet<Double> stops = new TreeSet<>();
        stops.add(end);
        BandLine[] sides = {line, ray(-left), ray(right), new BandLine(base, 1, 0)};
        for (BandLine side : sides) {
            for (BandLine other : sides) {
                double cross = side.cos() * other.sin() - side.sin() * other.cos();
                put(stops, end, (side.offset() * other.sin() - other.offset() * side.sin()) / cross);
            }
            meetings(stops, end, side, seamStretch(), radius);
            meetings(stops, end, side, 1, flatRadius());
        }
        put(stops, end, flatRadius());
        put(stops, end, line.offset() / line.cos());
        return stops;
    }

    /** The line from the tip to a corner. */
    private BandLine ray(double y) {
        double length = Math.hypot(base, y);
        return new BandLine(0, -y / length, base / length);
    }

    /** Where a line meets {@code stretch x^2 + y^2 = size^2}. */
    private static void meetings(TreeSet<Double> stops, double end, BandLine line, double stretch, double size) {
        double x = line.offset() * line.cos();
        double y = line.offset() * line.sin();
        double a = stretch * line.sin() * line.sin() + line.cos() * line.cos();
        double b = -stretch * x * line.sin() + y * line.cos();
        double c = stretch * x * x + y * y - size * size;
        double root = sqrt(b * b - a * c);
        put(stops, end, x - line.sin() * (-b + root) / a);
        put(stops, end, x - line.sin() * (-b - root) / a);
    }

    private static void put(TreeSet<Double> stops, double end, double x) {
        if (x > 0 && x < end) {
            stops.add(x);
        }
    }

    private static double integrate(DoubleUnaryOperator f, double from, double to) {
        double half = (to - from) / 2;
        double sum = 0;
        for (int i = -STEPS; i <= STEPS; i++) {
            double t = i * STEP;
            double s = Math.PI / 2 * Math.sinh(t);
            // Distance from the nearer end, exact where the end is close.
            double gap = half * Math.exp(-Math.abs(s)) / Math.cosh(s);
            double weight = Math.PI / 2 * Math.cosh(t) / (Math.cosh(s) * Math.cosh(s));
            sum += weight * f.applyAsDouble(t < 0 ? from + gap : to - gap);
        }
        return sum * STEP * half;
    }
}
