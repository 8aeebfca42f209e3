package org.orbwright.assembly;

import java.util.HashMap;
import java.util.Map;
import org.orbwright.assembly.AssemblyPlan.GluedSeam;
import org.orbwright.design.Design;
import org.orbwright.design.Panel;
import org.orbwright.solid.Edge;
import org.orbwright.solid.Solid;

/**
 * Length, depth and area of the seams. A seam's face lies in a plane through the solid's centre, between the edge at
 * the joint distance and the hollow, and its ends point to the centre: it is the edge's triangle over the centre less
 * the same triangle on a smaller scale. The panel's inner side is {@code joint distance + land - thickness} from the
 * centre, so that the scale is that over the joint distance; of two panels that differ the larger one counts, as only
 * there both have wood.
 */
final class SeamSizes {
    private final Solid solid;
    private final double edge;
    private final double seamRadius;
    private final Map<String, Double> inner = new HashMap<>();

    SeamSizes(Design design) {
        solid = design.solid();
        edge = design.edge();
        seamRadius = design.seamRadius();
        for (Panel panel : design.facePanels()) {
            inner.put(panel.face(), (panel.faceDistance() - design.thickness()) / panel.jointDistance());
        }
    }

    /** A seam that is glued as one of its panels is added. */
    GluedSeam of(int seam, int added) {
        Edge line = solid.edges().get(seam);
        double length = edge
                * solid.vertices()
                        .get(line.from())
                        .vector()
                        .distance(solid.vertices().get(line.to()).vector());
        double scale = Math.max(inner(line.face()), inner(line.neighbour()));
        return new GluedSeam(
                seam,
                added,
                line.face() == added ? line.neighbour() : line.face(),
                length,
                seamRadius * (1 - scale),
                length * seamRadius * (1 - scale) * (1 + scale) / 2);
    }

    private double inner(int face) {
        return inner.get(solid.faces().get(face).kind());
    }
}
