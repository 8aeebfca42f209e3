package org.orbwright.sheet;

import java.util.ArrayList;
import java.util.List;
import org.orbwright.design.Design;
import org.orbwright.jig.JigPlan;
import org.orbwright.jig.JigPlan.BevelCut;
import org.orbwright.jig.JigPlan.JigFace;

/** What the bevel cuts of a design get wrong or nearly wrong, with pointers into the design. */
final class JigFindings {
    /** Narrowest seam in millimetres that is glued and clamped well. Common practice, no source. */
    static final double NARROWEST_SEAM = 6;
    /**
     * Most blade in millimetres that stands out of the table of common saws with a blade of 250 mm or 10 in, measured
     * along the blade: about 80 mm upright and 56 mm at a tilt of 45 degrees. Common practice, no source.
     */
    static final double MOST_BLADE = 80;
    /** A width that is exactly a limit keeps it, in millimetres; more than answers are rounded to. */
    private static final double EXACT = 1e-3;

    private final Design design;
    private final List<Finding> findings = new ArrayList<>();

    private JigFindings(Design design) {
        this.design = design;
    }

    static List<Finding> of(Design design, JigPlan plan) {
        JigFindings finder = new JigFindings(design);
        finder.land();
        plan.faces().forEach(finder::seam);
        plan.faces().forEach(finder::blade);
        return finder.findings;
    }

    private void land() {
        if (design.land() == 0) {
            warn(
                    FindingCode.NO_LAND,
                    "Without a land the bevel leaves only a sharp edge. A fence above the blade has nothing to bear on,"
                            + " and the highest tooth comes out where the fence would bear. Leave a land, or hold"
                            + " the panel on a carrier and try the cut in scrap.",
                    "/panel/land");
        }
    }

    private void seam(JigFace face) {
        double width = face.bevel().seamWidth();
        if (width < NARROWEST_SEAM - EXACT) {
            warn(
                    FindingCode.SEAM_NARROW,
                    "The bevel of the " + face.face() + " panels leaves a seam only " + design.sayAtMost(width)
                            + " wide. Less than " + design.say(NARROWEST_SEAM)
                            + " is hard to glue and to hold together. Thicker panels or a lower land widen it.",
                    "/panel/thickness");
        }
    }

    private void blade(JigFace face) {
        BevelCut bevel = face.bevel();
        double height =
                bevel.upright() == null ? bevel.bladeHeight() : bevel.upright().bladeHeight();
        if (bevel.seamWidth() > MOST_BLADE + EXACT) {
            warn(
                    FindingCode.BLADE_BEYOND_SAW,
                    "The bevel of the " + face.face() + " panels needs a blade height of " + design.say(height)
                            + (bevel.upright() == null ? "" : ", even with the panel upright")
                            + ". It needs " + design.sayAtLeast(bevel.seamWidth())
                            + " of blade along its tilt. Saws with a 250 mm or 10 in blade commonly have about "
                            + design.say(MOST_BLADE) + ". Look it up in the saw's manual.",
                    "/panel/thickness");
        }
    }

    private void warn(FindingCode code, String message, String field) {
        findings.add(code.warn(message, field));
    }
}
