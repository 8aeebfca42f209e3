package org.orbwright.solid;

import static java.lang.Math.cbrt;
import static java.lang.Math.sqrt;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;

/**
 * Corners of the Platonic and Archimedean solids, written as permutations and sign changes of exact numbers.
 *
 * <p>Source, from memory: H. S. M. Coxeter, Regular Polytopes, 3rd edition 1973, sections 3.7 and 8.4; R. Williams, The
 * Geometrical Foundation of Natural Structure, 1979, chapter 3. The tests hold every solid to Euler's formula, equal
 * edges and regular faces, and its radii and volume to the table of an independent library.
 */
final class ExactCoordinates {
    private static final double GOLDEN = (1 + sqrt(5)) / 2;
    private static final double SILVER = 1 + sqrt(2);
    /** Real root of t^3 = t^2 + t + 1. */
    private static final double TRIBONACCI = (1 + cbrt(19 - 3 * sqrt(33)) + cbrt(19 + 3 * sqrt(33))) / 3;
    /** Two corners closer than this are one; the exact coordinates differ by at least 0.1. */
    private static final double SAME_POINT = 1e-6;

    private final List<Vector3D> points = new ArrayList<>();

    private ExactCoordinates() {}

    /** Corners of a solid at any scale, in any position with its centre at the origin. */
    static List<Vector3D> of(String solid) {
        ExactCoordinates c = new ExactCoordinates();
        double p = GOLDEN;
        switch (solid) {
            case "tetrahedron" -> c.allEvenlyNegative(1, 1, 1);
            case "cube" -> c.all(1, 1, 1);
            case "octahedron" -> c.all(0, 0, 1);
            case "dodecahedron" -> c.all(1, 1, 1).even(0, 1 / p, p);
            case "icosahedron" -> c.even(0, 1, p);
            case "truncated-tetrahedron" -> c.allEvenlyNegative(3, 1, 1);
            case "cuboctahedron" -> c.all(1, 1, 0);
            case "truncated-cube" -> c.all(SILVER, SILVER, 1);
            case "truncated-octahedron" -> c.all(0, 1, 2);
            case "rhombicuboctahedron" -> c.all(1, 1, SILVER);
            case "truncated-cuboctahedron" -> c.all(1, SILVER, 2 * SILVER - 1);
            case "snub-cube" -> c.snubCube();
            case "icosidodecahedron" -> c.even(0, 0, 2 * p).even(1, p, p * p);
            case "truncated-dodecahedron" ->
                c.even(0, 1 / p, 2 + p).even(1 / p, p, 2 * p).even(p, 2, p + 1);
            case "truncated-icosahedron" ->
                c.even(0, 1, 3 * p).even(1, 2 + p, 2 * p).even(p, 2, 2 * p + 1);
            case "rhombicosidodecahedron" ->
                c.even(1, 1, p * p * p).even(p * p, p, 2 * p).even(2 + p, 0, p * p);
            case "truncated-icosidodecahedron" ->
                c.even(1 / p, 1 / p, 3 + p)
                        .even(2 / p, p, 1 + 2 * p)
                        .even(1 / p, p * p, 3 * p - 1)
                        .even(2 * p - 1, 2, 2 + p)
                        .even(p, 3, 2 * p);
            case "snub-dodecahedron" -> c.snubDodecahedron();
            default -> throw new IllegalArgumentException(solid);
        }
        return c.points;
    }

    /** All permutations and all signs. */
    private ExactCoordinates all(double x, double y, double z) {
        return even(x, y, z).even(y, x, z);
    }

    /** All permutations with an even number of negative signs. */
    private void allEvenlyNegative(double x, double y, double z) {
        signs(x, y, z, 0);
        signs(y, z, x, 0);
        signs(z, x, y, 0);
    }

    /** Even permutations and all signs. */
    private ExactCoordinates even(double x, double y, double z) {
        return evenWith(x, y, z, 0).evenWith(x, y, z, 1);
    }

    /** Even permutations with an even (0) or odd (1) number of negative signs. */
    private ExactCoordinates evenWith(double x, double y, double z, int negatives) {
        signs(x, y, z, negatives);
        signs(y, z, x, negatives);
        signs(z, x, y, negatives);
        return this;
    }

    private void signs(double x, double y, double z, int negatives) {
        for (int mask = 0; mask < 8; mask++) {
            if (Integer.bitCount(mask) % 2 == negatives) {
                add(Vector3D.of((mask & 1) == 0 ? x : -x, (mask & 2) == 0 ? y : -y, (mask & 4) == 0 ? z : -z));
            }
        }
    }

    private void add(Vector3D point) {
        if (points.stream().noneMatch(other -> other.distance(point) < SAME_POINT)) {
            points.add(point);
        }
    }

    private void snubCube() {
        double t = TRIBONACCI;
        evenWith(1, 1 / t, t, 1).evenWith(1 / t, 1, t, 0);
    }

    private void snubDodecahedron() {
        double p = GOLDEN;
        // Real root of x^3 - 2 x = golden ratio, by Cardano's formula.
        double x = cbrt((p + sqrt(p - 5.0 / 27)) / 2) + cbrt((p - sqrt(p - 5.0 / 27)) / 2);
        double a = x - 1 / x;
        double b = x * p + p * p + p / x;
        evenWith(2 * a, 2, 2 * b, 1)
                .evenWith(a + b / p + p, -a * p + b + 1 / p, a / p + b * p - 1, 1)
                .evenWith(a + b / p - p, a * p - b + 1 / p, a / p + b * p + 1, 1)
                .evenWith(-a / p + b * p + 1, -a + b / p - p, a * p + b - 1 / p, 1)
                .evenWith(-a / p + b * p - 1, a - b / p - p, a * p + b + 1 / p, 1);
    }
}
