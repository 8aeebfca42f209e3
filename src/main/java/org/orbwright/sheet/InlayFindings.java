package org.orbwright.sheet;

import static java.lang.Boolean.FALSE;
import static java.lang.Boolean.TRUE;
import static org.orbwright.sheet.Finding.Severity.NOTE;
import static org.orbwright.sheet.Finding.Severity.STOP;
import static org.orbwright.sheet.Finding.Severity.WARN;

import java.util.ArrayList;
import java.util.List;
import org.orbwright.design.Design;
import org.orbwright.inlay.ChipPlan;
import org.orbwright.inlay.ChipPlan.Plug;
import org.orbwright.inlay.InlayPlan;
import org.orbwright.inlay.InlayPlan.Pocket;
import org.orbwright.inlay.TipComparison.TipRisk;

/** What the inlays and the tips of a design get wrong or nearly wrong. */
final class InlayFindings {
    /** Thinnest rim in millimetres that can be expected to survive sanding. Common practice, no source. */
    private static final double THINNEST_RIM = 1;
    /** What is within this of a limit keeps it, in millimetres: more than answers are rounded to. */
    private static final double EXACT = 1e-3;

    /** Grain that is shorter than so many times its distance from the tip. Common practice, no source. */
    private static final double AT_RISK = 2;

    /** The same where it holds the tip least. Common practice, no source. */
    private static final double STRONGLY = 1;

    private final Design design;
    private final InlayPlan plan;
    private final List<Finding> findings = new ArrayList<>();

    private InlayFindings(Design design, InlayPlan plan) {
        this.design = design;
        this.plan = plan;
    }

    static List<Finding> of(Design design, InlayPlan plan) {
        InlayFindings finder = new InlayFindings(design, plan);
        if (plan.pocket() != null) {
            finder.pocket(plan.pocket());
        }
        if (plan.chips() != null) {
            finder.chips(plan.chips());
        }
        plan.tips().tips().forEach(finder::tip);
        return finder.findings;
    }

    private void pocket(Pocket pocket) {
        if (pocket.floor() < design.minimumWall() - EXACT) {
            findings.add(FindingCode.INLAY_FLOOR_THIN.warn(
                    "Only " + design.sayAtMost(pocket.floor()) + " of wood stays between the pocket and the hollow,"
                            + " less than the wanted wall of " + design.say(design.minimumWall()) + ".",
                    "/inlays/floor"));
        }
        if (pocket.rimThickness() < THINNEST_RIM - EXACT) {
            findings.add(FindingCode.INLAY_RIM_THIN.warn(
                    "The inlay is finished to a rim of only " + design.say(pocket.rimThickness())
                            + ", which chips easily and may be sanded through.",
                    "/inlays/rimThickness"));
        }
    }

    private void chips(ChipPlan chips) {
        if (FALSE.equals(chips.hole().coveredByInlay())) {
            findings.add(FindingCode.TIPS_NOT_COVERED.warn(
                    "The chipped tips leave a hole of "
                            + design.sayAtLeast(chips.hole().diameter())
                            + " across, which the inlay does not cover.",
                    "/inlays/shape/diameter"));
        }
        if (chips.plug() != null
                && !chips.plug().fits()
                && !TRUE.equals(chips.hole().coveredByInlay())) {
            plug(chips.plug(), chips.hole().coveredByInlay() == null ? STOP : WARN);
        }
    }

    private void plug(Plug plug, Finding.Severity severity) {
        Double largest = plug.largestDiameter();
        boolean stepAlone = largest != null && plug.smallestDiameter() <= largest;
        findings.add(FindingCode.PLUG_DOES_NOT_FIT.finding(
                severity,
                "The chipped tips leave a hole of " + design.sayAtLeast(plug.smallestDiameter()) + " across. A plug of "
                        + design.say(plug.diameter()) + " hides it, but does not fit: "
                        + (largest == null
                                ? "rim and floor leave no room in the wall."
                                : "no disc above " + design.sayAtMost(largest) + " does.")
                        + (stepAlone ? " A finer step gives a smaller plug." : ""),
                stepAlone ? "/inlays/chips/plugStep" : "/inlays/chips/length"));
    }

    private void tip(TipRisk tip) {
        double times = tip.grainLength() / plan.tips().distance();
        if (times < AT_RISK - EXACT) {
            findings.add(FindingCode.TIP_SHORT_GRAIN.finding(
                    times < STRONGLY - EXACT ? WARN : NOTE,
                    design.say(plan.tips().distance()) + " from the tip of segment " + tip.segment() + " of the "
                            + tip.face() + " panels the grain is only "
                            + design.sayAtMost(tip.grainLength())
                            + " long. Such a tip can break off at the saw. See tips in the answer for what helps.",
                    bandAngle(tip)));
        }
    }

    private String bandAngle(TipRisk tip) {
        return design.panels().stream()
                        .filter(panel -> panel.face().equals(tip.face()) && panel.places() == tip.places())
                        .findFirst()
                        .orElseThrow()
                        .lamination()
                        .pointer()
                + "/bandAngle";
    }
}
