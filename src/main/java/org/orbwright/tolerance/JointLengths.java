package org.orbwright.tolerance;

import org.orbwright.design.Design;
import org.orbwright.design.Panel;
import org.orbwright.design.PlacedPiece;

/** The lengths over which an angle that is off opens a joint. */
public final class JointLengths {
    private JointLengths() {}

    /** Length of a panel's longest joint between two segments, from the tips to the corner of the rim. */
    public static double joint(Design design, Panel panel) {
        double longest = 0;
        for (PlacedPiece placed : PlacedPiece.around(design, panel.face())) {
            double leg = Math.hypot(placed.piece().base(), placed.piece().right());
            longest = Math.max(longest, leg);
        }
        return longest;
    }

    /** Length of a panel's seam face across its thickness, from the joint to the hollow. */
    public static double seamFace(Design design, Panel panel) {
        return (design.thickness() - design.land()) / Math.sin(panel.bevel());
    }

    /** Length over which two panels touch across their thickness: that of the shorter seam face. */
    public static double seam(Design design, Panel one, Panel other) {
        return Math.min(seamFace(design, one), seamFace(design, other));
    }

    /** The panel of a face kind; of two halves the first. */
    public static Panel panel(Design design, String face) {
        return design.panelAt(face, 0);
    }
}
