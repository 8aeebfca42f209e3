package org.orbwright.assembly;

import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.orbwright.solid.Face;
import org.orbwright.solid.Solid;

/**
 * How high the panels lie along an axis: the height of a face's pole, which is its normal divided by its distance from
 * the centre.
 *
 * <p>The poles are the corners of the dual solid, which is convex. Hence every panel that is not among the highest has
 * a neighbour that is higher, and every one that is not among the lowest one that is lower: the panels above any
 * height, with any choice of those at that height, hang together, and so do the others. And the plane of a seam through
 * the centre is square to the difference of its two panels' poles: as caps parted by height are pushed together along
 * the axis, no seam between them faces the wrong way.
 */
final class Heights {
    /** Heights of a solid at unit edge that are equal agree to 1e-14; different ones differ by more than 1e-3. */
    private static final double STEP = 1e-6;

    private final Vector3D up;
    private final double[] heights;

    Heights(Solid solid, Vector3D axis) {
        up = axis.normalize();
        heights = solid.faces().stream()
                .mapToDouble(face -> Math.rint(pole(solid, face).dot(up) / STEP))
                .toArray();
    }

    private static Vector3D pole(Solid solid, Face face) {
        Vector3D normal = solid.normal(face);
        return normal.multiply(1 / normal.dot(solid.corner(face, 0)));
    }

    /** Direction of the axis, one long. */
    Vector3D axis() {
        return up;
    }

    /** Height of a panel, in steps: equal heights are the same number. */
    double of(int panel) {
        return heights[panel];
    }
}
