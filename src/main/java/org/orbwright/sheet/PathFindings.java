package org.orbwright.sheet;

import java.util.ArrayList;
import java.util.List;
import org.orbwright.design.Design;
import org.orbwright.quantity.Rounding;
import org.orbwright.sphere.SphereCalculator;
import org.orbwright.sphere.SphereSizing;
import org.orbwright.turning.PathRequest;
import org.orbwright.turning.PathRequest.CutterShape;
import org.orbwright.turning.PathRequest.Machine;
import org.orbwright.turning.ToolPath;

/** What the way of a cutter gets wrong or nearly wrong. */
final class PathFindings {
    /** In millimetres; a flat or a step that is no higher goes with sanding. */
    private static final double NO_FLAT = 0.05;
    /** In radians: no belt can be seen. */
    private static final double NO_BELT = Math.toRadians(0.01);

    private PathFindings() {}

    static List<Finding> of(PathRequest request, Design design, ToolPath path) {
        List<Finding> findings = new ArrayList<>();
        if (request.machine() == Machine.THREE_AXIS) {
            findings.add(FindingCode.UPPER_END_FREE.warn(
                    "The upper half is milled up to its pole: no disc, no screw and no centre may be on the upper end.",
                    "/path/machine"));
            if (path.reachedTail() < -NO_BELT) {
                findings.add(belt(path));
            }
        }
        if (request.cutter().shape() != CutterShape.BALL) {
            findings.add(FindingCode.CUTS_AT_CENTRE.warn(
                    "The cutter goes straight down into the wood by up to a pass's depth. Many flat and"
                            + " bull-nose cutters do not cut at their centre. Do not use them for that.",
                    "/path/cutter/shape"));
        }
        SphereSizing sphere = SphereCalculator.calculate(design);
        double milled = 2 * path.sphere();
        if (milled > sphere.largestDiameter() + NO_FLAT && milled > sphere.diameter()) {
            findings.add(FindingCode.MILLING_LEAVES_FLATS.warn(
                    "The milled sphere would be " + design.say(milled) + ", more than the largest of "
                            + design.say(sphere.largestDiameter())
                            + ": flats or open seams stay, where the cutter meets no wood.",
                    "/path/leave"));
        }
        return findings;
    }

    private static Finding belt(ToolPath path) {
        double above = Math.toDegrees(-path.reachedTail());
        return FindingCode.BELT_LEFT.warn(
                "The cutter and the room above the lower disc end the milling at a latitude of "
                        + Rounding.plain(above, 2)
                        + " degrees above the middle. Once both halves are milled, a belt of "
                        + Rounding.plain(2 * above, 2) + " degrees is left around it.",
                "/turning/discs/clearance");
    }
}
