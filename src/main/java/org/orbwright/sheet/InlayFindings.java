package org.orbwright.sheet;

import static org.orbwright.sheet.Finding.Severity.WARN;

import java.util.ArrayList;
import java.util.List;
import org.orbwright.design.Design;
import org.orbwright.inlay.InlayPlan;

/** What the inlays of a design get wrong or nearly wrong. */
final class InlayFindings {
    /** Thinnest rim in millimetres that can be expected to survive sanding. Common practice, no source. */
    private static final double THINNEST_RIM = 1;
    /** What is within this of a limit keeps it, in millimetres: more than answers are rounded to. */
    private static final double EXACT = 1e-3;

    private InlayFindings() {}

    static List<Finding> of(Design design, InlayPlan plan) {
        List<Finding> findings = new ArrayList<>();
        if (plan.pocket().floor() < design.minimumWall() - EXACT) {
            findings.add(new Finding(
                    FindingCode.INLAY_FLOOR_THIN,
                    WARN,
                    "Only " + design.sayAtMost(plan.pocket().floor())
                            + " of wood stays between the pocket and the hollow," + " less than the wanted wall of "
                            + design.say(design.minimumWall()) + ".",
                    "/inlays/floor"));
        }
        if (plan.pocket().rimThickness() < THINNEST_RIM - EXACT) {
            findings.add(new Finding(
                    FindingCode.INLAY_RIM_THIN,
                    WARN,
                    "The inlay is finished to a rim of only "
                            + design.say(plan.pocket().rimThickness())
                            + ", which chips easily and may be sanded through.",
                    "/inlays/rimThickness"));
        }
        if (!plan.tips().coveredByInlay()) {
            findings.add(new Finding(
                    FindingCode.TIPS_NOT_COVERED,
                    WARN,
                    "The chipped tips leave a hole of " + design.say(plan.tips().diameter())
                            + " across, which the inlay does not cover.",
                    "/inlays/shape/diameter"));
        }
        return findings;
    }
}
