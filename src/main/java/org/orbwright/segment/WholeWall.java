package org.orbwright.segment;

import org.orbwright.design.Design;
import org.orbwright.design.Panel;

/** Whether a finished sphere's wall is whole. */
public final class WholeWall {
    private WholeWall() {}

    /** Whether the sphere reaches the hollow nowhere, which comes nearest to it at its corners. */
    public static boolean of(Design design) {
        return design.panels().stream().allMatch(panel -> holds(panel, design));
    }

    private static boolean holds(Panel panel, Design design) {
        double inner = panel.faceDistance() - design.thickness();
        return inner * panel.cornerRadius() / panel.jointDistance() <= design.sphereRadius();
    }
}
