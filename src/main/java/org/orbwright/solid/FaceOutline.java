package org.orbwright.solid;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;

/**
 * One face measured from the foot of the perpendicular dropped from the solid's centre.
 *
 * @param distance from the solid's centre
 * @param baseDistance from the foot to every edge
 * @param left for each edge, counter-clockwise, the part of it before the foot's projection
 * @param right the part after it
 */
record FaceOutline(double distance, double baseDistance, List<Double> left, List<Double> right) {
    /** Lengths of one solid that are equal agree to 1e-14; different ones differ by more than 1e-3. */
    static final double SAME = 1e-9;

    static FaceOutline of(Polyhedron polyhedron, List<Integer> face) {
        Vector3D normal = polyhedron.normal(face);
        double distance = normal.dot(polyhedron.vertices().get(face.get(0)));
        Vector3D foot = normal.multiply(distance);
        List<Double> left = new ArrayList<>();
        List<Double> right = new ArrayList<>();
        double base = 0;
        for (int i = 0; i < face.size(); i++) {
            Vector3D from = polyhedron.vertices().get(face.get(i));
            Vector3D to = polyhedron.vertices().get(face.get((i + 1) % face.size()));
            Vector3D along = to.subtract(from).normalize();
            left.add(foot.subtract(from).dot(along));
            right.add(to.subtract(foot).dot(along));
            base += along.cross(foot.subtract(from)).norm() / face.size();
        }
        return new FaceOutline(distance, base, left, right);
    }

    int sides() {
        return left.size();
    }

    double area() {
        double perimeter = 0;
        for (int i = 0; i < sides(); i++) {
            perimeter += left.get(i) + right.get(i);
        }
        return perimeter * baseDistance / 2;
    }

    /** Whether the two faces are congruent without turning one over. */
    boolean sameAs(FaceOutline other) {
        return sides() == other.sides() && Math.abs(distance - other.distance) < SAME && firstIn(other) >= 0;
    }

    /** This face seen from inside. */
    FaceOutline mirrored() {
        List<Double> newLeft = new ArrayList<>(right);
        List<Double> newRight = new ArrayList<>(left);
        Collections.reverse(newLeft);
        Collections.reverse(newRight);
        return new FaceOutline(distance, baseDistance, newLeft, newRight);
    }

    /** The edge of a congruent face that corresponds to this face's first one, or -1 if the other has other edges. */
    private int firstIn(FaceOutline other) {
        for (int shift = 0; shift < sides(); shift++) {
            boolean same = true;
            for (int i = 0; i < sides() && same; i++) {
                int j = (i + shift) % sides();
                same = Math.abs(left.get(i) - other.left.get(j)) < SAME
                        && Math.abs(right.get(i) - other.right.get(j)) < SAME;
            }
            if (same) {
                return shift;
            }
        }
        return -1;
    }

    /**
     * The edge of a face of the same kind with which its list has to begin so that its edges, or their mirror images,
     * come in this face's order.
     */
    int startOf(FaceOutline other) {
        int start = firstIn(other);
        return start < 0 ? mirrored().firstIn(other) : start;
    }

    /** The same face, its edges listed from another one on. */
    FaceOutline startingAt(int edge) {
        List<Double> newLeft = new ArrayList<>(left);
        List<Double> newRight = new ArrayList<>(right);
        Collections.rotate(newLeft, -edge);
        Collections.rotate(newRight, -edge);
        return new FaceOutline(distance, baseDistance, newLeft, newRight);
    }

    /** The name of the face by its sides, and for four sides by whether they are equal and square. */
    String name() {
        return switch (sides()) {
            case 3 -> "triangle";
            case 4 -> quadrilateral();
            case 5 -> "pentagon";
            case 6 -> "hexagon";
            case 8 -> "octagon";
            case 10 -> "decagon";
            default -> throw new IllegalStateException("No face of the catalogue has " + sides() + " sides");
        };
    }

    private String quadrilateral() {
        double first = left.get(0) + right.get(0);
        boolean equalSides = true;
        for (int i = 1; i < sides(); i++) {
            equalSides &= Math.abs(left.get(i) + right.get(i) - first) < SAME;
        }
        if (!equalSides) {
            return "kite";
        }
        return Math.abs(left.get(0) - right.get(0)) < SAME ? "square" : "rhombus";
    }
}
