package org.orbwright.inlay;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.orbwright.design.Design;
import org.orbwright.design.Panel;
import org.orbwright.solid.Face;
import org.orbwright.solid.Solid;

/**
 * Chips straight from their definition: for each side of a face a prism over the tip, from the outer face down by the
 * depth. A point of the finished surface lies in the hole if it lies in a prism. Everything comes from the corners of
 * the catalogue's solid.
 */
final class ChipOracle {
    private static final int STEPS = 400;

    private final Vector3D normal;
    private final double face;
    private final double radius;
    private final double depth;
    private final List<Vector3D[]> chips = new ArrayList<>();

    /** @param onAxis whether the length is measured square to the base, not along each leg */
    ChipOracle(Design design, Panel panel, double length, boolean onAxis, double depth) {
        Solid solid = design.solid();
        Face first = solid.faces().stream()
                .filter(f -> f.kind().equals(panel.face()))
                .findFirst()
                .orElseThrow();
        List<Vector3D> corners = first.vertices().stream()
                .map(v -> solid.vertices().get(v).vector().multiply(design.edge()))
                .toList();
        normal = corners.get(1)
                .subtract(corners.get(0))
                .cross(corners.get(2).subtract(corners.get(1)))
                .normalize();
        double joint = normal.dot(corners.get(0));
        face = joint + design.land();
        radius = design.sphereRadius();
        this.depth = depth;
        for (int i = 0; i < corners.size(); i++) {
            Vector3D one = corners.get(i).subtract(normal.multiply(joint));
            Vector3D other = corners.get((i + 1) % corners.size()).subtract(normal.multiply(joint));
            double height = one.cross(other).norm() / other.subtract(one).norm();
            chips.add(new Vector3D[] {
                one.multiply(onAxis ? length / height : length / one.norm()),
                other.multiply(onAxis ? length / height : length / other.norm())
            });
        }
    }

    private double height(double distance) {
        return Math.min(face, Math.sqrt(Math.max(0, radius * radius - distance * distance)));
    }

    private boolean inHole(Vector3D[] chip, Vector3D direction, double distance) {
        double height = height(distance);
        Vector3D point = direction.multiply(distance);
        double whole = normal.dot(chip[0].cross(chip[1]));
        double one = normal.dot(point.cross(chip[1])) / whole;
        double other = normal.dot(chip[0].cross(point)) / whole;
        return height >= face - depth && one >= -1e-12 && other >= -1e-12 && one + other <= 1;
    }

    private double reach(Vector3D[] chip, Vector3D direction) {
        double in = 0;
        double out = chip[0].norm() + chip[1].norm();
        for (int i = 0; i < 60; i++) {
            double middle = (in + out) / 2;
            boolean hit = inHole(chip, direction, middle);
            in = hit ? middle : in;
            out = hit ? out : middle;
        }
        return in;
    }

    private static Vector3D ray(Vector3D[] chip, double share) {
        double angle = chip[0].angle(chip[1]);
        return chip[0].normalize()
                .multiply(Math.sin((1 - share) * angle))
                .add(chip[1].normalize().multiply(Math.sin(share * angle)))
                .normalize();
    }

    /** The farthest point of the hole from the face's axis, on rays from leg to leg. */
    double reach() {
        double most = 0;
        for (Vector3D[] chip : chips) {
            for (int i = 0; i <= STEPS; i++) {
                most = Math.max(most, reach(chip, ray(chip, (double) i / STEPS)));
            }
        }
        return most;
    }

    /** Area of the hole that one chip leaves, by sectors between rays: exact on the sphere and on the flat. */
    double area(int chip) {
        double area = 0;
        double sector = chips.get(chip)[0].angle(chips.get(chip)[1]) / STEPS;
        double flat = Math.sqrt(Math.max(0, radius * radius - face * face));
        for (int i = 0; i < STEPS; i++) {
            double reach = reach(chips.get(chip), ray(chips.get(chip), (i + 0.5) / STEPS));
            double onFlat = Math.min(reach, flat);
            area += sector * (onFlat * onFlat / 2 + radius * (height(onFlat) - height(reach)));
        }
        return area;
    }

    int sides() {
        return chips.size();
    }
}
