package org.orbwright.assembly;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.orbwright.solid.Face;
import org.orbwright.solid.Solid;

/**
 * A face laid flat, seen from outside.
 *
 * @param corners its corners, counter-clockwise
 */
record FlatFace(List<Vector2D> corners) {
    /** Flat faces that overlap by less than this at unit edge only touch; they are accurate to 1e-13. */
    private static final double TOUCHING = 1e-9;

    FlatFace {
        corners = List.copyOf(corners);
    }

    /** A face with its first edge along the x axis. */
    static FlatFace of(Solid solid, Face face) {
        Vector3D start = solid.corner(face, 0);
        Vector3D right = solid.corner(face, 1).subtract(start).normalize();
        Vector3D up = solid.normal(face).cross(right);
        List<Vector2D> corners = new ArrayList<>();
        for (int i = 0; i < face.vertices().size(); i++) {
            Vector3D from = solid.corner(face, i).subtract(start);
            corners.add(Vector2D.of(from.dot(right), from.dot(up)));
        }
        return new FlatFace(corners);
    }

    Vector2D corner(int place) {
        return corners.get(place % corners.size());
    }

    /**
     * This face moved so that one of its edges lies beside an edge of another face.
     *
     * @param other the other face
     * @param othersPlace its edge
     * @param place this face's edge
     * @param gap distance of the two edges; where it is 0 they lie on each other
     */
    FlatFace hungOn(FlatFace other, int othersPlace, int place, double gap) {
        Vector2D end = other.corner(othersPlace + 1);
        Vector2D wanted = other.corner(othersPlace).subtract(end).normalize();
        Vector2D target = end.add(Vector2D.of(-wanted.getY(), wanted.getX()).multiply(gap));
        Vector2D present = corner(place + 1).subtract(corner(place)).normalize();
        double cos = present.dot(wanted);
        double sin = present.signedArea(wanted);
        Vector2D from = corner(place);
        return new FlatFace(corners.stream()
                .map(corner -> corner.subtract(from))
                .map(d -> target.add(Vector2D.of(d.getX() * cos - d.getY() * sin, d.getX() * sin + d.getY() * cos)))
                .toList());
    }

    /** Whether the insides of the two faces have a point in common: no edge of either parts them. */
    boolean overlaps(FlatFace other) {
        return !parts(other) && !other.parts(this);
    }

    /** Whether the other face lies wholly beyond one of this one's edges. */
    private boolean parts(FlatFace other) {
        for (int i = 0; i < corners.size(); i++) {
            Vector2D from = corner(i);
            Vector2D along = corner(i + 1).subtract(from).normalize();
            if (other.isBeyond(from, along)) {
                return true;
            }
        }
        return false;
    }

    /** Whether the whole face lies to the right of a line. */
    private boolean isBeyond(Vector2D from, Vector2D along) {
        for (Vector2D corner : corners) {
            if (along.signedArea(corner.subtract(from)) > TOUCHING) {
                return false;
            }
        }
        return true;
    }
}
