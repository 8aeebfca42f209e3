package org.orbwright.sheet;

import static org.orbwright.sheet.Finding.Severity.STOP;
import static org.orbwright.sheet.Finding.Severity.WARN;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.orbwright.design.Design;
import org.orbwright.quantity.Rounding;
import org.orbwright.tolerance.PanelSide;
import org.orbwright.tolerance.PanelTolerance;
import org.orbwright.tolerance.SeamSide;
import org.orbwright.tolerance.SeamTolerance;
import org.orbwright.tolerance.Tolerance;

/** What the errors of cutting get wrong or nearly wrong. */
final class ToleranceFindings {
    /** Share of solids that should come out without a gap. Common practice, no source. */
    private static final double ENOUGH = 0.95;
    /** What answered angles are rounded to, in radians: a limit that was answered may be set. */
    private static final double EXACT_ANGLE = Math.toRadians(0.5e-4);

    private static final int SHOWN_DECIMALS = 4;

    private final Design design;
    private final Tolerance tolerance;
    private final List<Finding> findings = new ArrayList<>();

    private ToleranceFindings(Design design, Tolerance tolerance) {
        this.design = design;
        this.tolerance = tolerance;
    }

    static List<Finding> of(Design design, Tolerance tolerance) {
        ToleranceFindings finder = new ToleranceFindings(design, tolerance);
        tolerance.panels().forEach(finder::panel);
        tolerance.seams().forEach(finder::seam);
        finder.chance();
        return finder.findings;
    }

    private void panel(PanelTolerance panel) {
        double each = Math.abs(panel.angleSum()) / panel.segments();
        if (each > panel.largestTipAngleError() + EXACT_ANGLE) {
            add(
                    FindingCode.GAP_BEYOND_GLUE,
                    STOP,
                    "The setting error of the tip angle opens every " + panel.face() + " panel by "
                            + design.say(panel.gap()) + " at the "
                            + (panel.opensAt() == PanelSide.RIM ? "rim" : "tips") + ", and the glue bridges "
                            + design.say(tolerance.glueBridges()) + ": the tip angle has to be set to within "
                            + degrees(panel.largestTipAngleError()) + ".",
                    "/errors/tipAngle/setting");
        }
        double blunt = panel.bluntTips().shift();
        if (blunt > tolerance.glueBridges()) {
            add(
                    FindingCode.TIPS_BLUNT,
                    WARN,
                    "The blank is " + design.say(blunt) + " too narrow for the segments of the " + panel.face()
                            + " panels, which leaves a hole of this radius in their middle.",
                    "/errors");
        }
    }

    private void seam(SeamTolerance seam) {
        if (Math.abs(seam.angleSum()) / 2 > seam.largestBevelError() + EXACT_ANGLE) {
            add(
                    FindingCode.GAP_BEYOND_GLUE,
                    STOP,
                    "The setting error of the bevel opens every seam between " + seam.face() + " and "
                            + seam.neighbour() + " panels by " + design.say(seam.gap()) + " "
                            + (seam.opensAt() == SeamSide.INSIDE ? "inside" : "outside")
                            + ", and the glue bridges " + design.say(tolerance.glueBridges())
                            + ": the bevel has to be set to within " + degrees(seam.largestBevelError()) + ".",
                    "/errors/bevel/setting");
        }
    }

    private void chance() {
        double share = tolerance.simulation().allBridged();
        if (share < ENOUGH) {
            add(
                    FindingCode.GAPS_LIKELY,
                    WARN,
                    "Only " + percent(share) + " of such solids have no gap anywhere that is larger than the "
                            + design.say(tolerance.glueBridges()) + " that the glue bridges.",
                    "/errors");
        }
    }

    private static String degrees(double radians) {
        double steps = Math.floor(Math.toDegrees(radians) * 1e4) / 1e4;
        return Rounding.plain(steps, SHOWN_DECIMALS) + " degrees";
    }

    private static String percent(double share) {
        return String.format(Locale.ROOT, "%.1f %%", Math.floor(share * 1000) / 10);
    }

    private void add(FindingCode code, Finding.Severity severity, String message, String field) {
        findings.add(new Finding(code, severity, message, field));
    }
}
