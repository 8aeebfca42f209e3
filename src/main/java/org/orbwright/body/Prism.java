package org.orbwright.body;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;

/** An upright prism over a regular polygon around the third axis; with many sides it is a cylinder. */
final class Prism {
    private static final int FEWEST_SIDES = 12;
    private static final int MOST_SIDES = 20_000;

    private final List<Vector3D> vertices = new ArrayList<>();
    private final List<Triangle> triangles = new ArrayList<>();

    private Prism() {}

    /** Sides of a polygon inscribed in a circle, none of which lies deeper than a deviation; 12 to 20,000. */
    static int sides(double radius, double deviation) {
        double half = Math.acos(1 - Math.min(deviation, radius) / radius);
        return (int) Math.max(FEWEST_SIDES, Math.min(MOST_SIDES, Math.ceil(Math.PI / half)));
    }

    /** A prism with a hole, or 0 for none. Radii run through corners; its ends are at bottom and top. */
    static Mesh of(int sides, double radius, double hole, double bottom, double top) {
        Prism prism = new Prism();
        int low = prism.ring(sides, radius, bottom);
        int high = prism.ring(sides, radius, top);
        prism.band(low, high, sides);
        if (hole > 0) {
            int innerLow = prism.ring(sides, hole, bottom);
            int innerHigh = prism.ring(sides, hole, top);
            prism.band(high, innerHigh, sides);
            prism.band(innerHigh, innerLow, sides);
            prism.band(innerLow, low, sides);
        } else {
            prism.cap(low, bottom, sides, false);
            prism.cap(high, top, sides, true);
        }
        return new Mesh(prism.vertices, prism.triangles);
    }

    /** A side is towards the negative second axis, as the first base of a panel is. */
    private int ring(int sides, double radius, double height) {
        int first = vertices.size();
        for (int i = 0; i < sides; i++) {
            double direction = (2 * i + 1) * Math.PI / sides;
            vertices.add(Vector3D.of(radius * Math.sin(direction), -radius * Math.cos(direction), height));
        }
        return first;
    }

    private void band(int from, int to, int sides) {
        for (int i = 0; i < sides; i++) {
            int next = (i + 1) % sides;
            triangles.add(new Triangle(from + i, from + next, to + next));
            triangles.add(new Triangle(from + i, to + next, to + i));
        }
    }

    private void cap(int ring, double height, int sides, boolean upwards) {
        int middle = vertices.size();
        vertices.add(Vector3D.of(0, 0, height));
        for (int i = 0; i < sides; i++) {
            int a = ring + i;
            int b = ring + (i + 1) % sides;
            triangles.add(upwards ? new Triangle(a, b, middle) : new Triangle(b, a, middle));
        }
    }
}
