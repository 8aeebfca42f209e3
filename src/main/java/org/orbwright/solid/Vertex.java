package org.orbwright.solid;

import static org.orbwright.quantity.Quantity.NUMBER;
import static org.orbwright.quantity.Quantity.UNIT_EDGE;

import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.orbwright.quantity.Describe;

@Describe("A corner of a solid, from the solid's centre.")
public record Vertex(
        @Describe(value = "Its number.", quantity = NUMBER, example = "1", max = 200)
        int number,

        @Describe(value = "First coordinate.", quantity = UNIT_EDGE, example = "0.809016994375", min = -10, max = 10)
        double x,

        @Describe(value = "Second coordinate.", quantity = UNIT_EDGE, example = "0.809016994375", min = -10, max = 10)
        double y,

        @Describe(value = "Third coordinate.", quantity = UNIT_EDGE, example = "0.809016994375", min = -10, max = 10)
        double z) {

    static Vertex of(int number, Vector3D point) {
        return new Vertex(number, point.getX(), point.getY(), point.getZ());
    }

    /** This corner as a vector. */
    public Vector3D vector() {
        return Vector3D.of(x, y, z);
    }
}
