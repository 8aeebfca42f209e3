package org.orbwright.turning;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.orbwright.design.ImpossibleDesignException;
import org.orbwright.design.Violation;
import org.orbwright.quantity.Numbering;
import org.orbwright.solid.Edge;
import org.orbwright.solid.Face;
import org.orbwright.solid.Solid;
import org.orbwright.turning.AxisRequest.Through;

/** Finds the axis that a solid turns about. */
final class LatheAxis {
    private LatheAxis() {}

    /**
     * Unit vector from the solid's centre along an axis.
     *
     * @throws ImpossibleDesignException if the solid has no such face, corner or edge
     */
    static Vector3D direction(AxisRequest axis, Solid solid) {
        Through through = axis.through();
        int number = axis.number();
        List<Vector3D> directions = directions(through, solid);
        if (number > directions.size()) {
            throw new ImpossibleDesignException(List.of(new Violation(
                    "/turning/axis/number",
                    "NO_SUCH_AXIS",
                    "The " + solid.name() + " has " + directions.size() + " " + through.many() + ", numbered from 1.",
                    String.valueOf(number),
                    "a whole number, 1 to " + directions.size())));
        }
        return directions.get(Numbering.place(number));
    }

    /** Unit vectors from the centre through all faces, corners or edges of a solid. */
    static List<Vector3D> directions(Through through, Solid solid) {
        List<Vector3D> directions = new ArrayList<>();
        switch (through) {
            case FACE -> {
                for (Face face : solid.faces()) {
                    directions.add(solid.normal(face));
                }
            }
            case CORNER ->
                solid.vertices()
                        .forEach(corner -> directions.add(corner.vector().normalize()));
            case EDGE -> {
                for (Edge edge : solid.edges()) {
                    Vector3D from = solid.vertices().get(edge.from()).vector();
                    Vector3D to = solid.vertices().get(edge.to()).vector();
                    Vector3D along = to.subtract(from).normalize();
                    directions.add(
                            from.subtract(along.multiply(along.dot(from))).normalize());
                }
            }
        }
        return directions;
    }
}
