package org.orbwright.sheet;

import static org.orbwright.sheet.Finding.Severity.NOTE;
import static org.orbwright.sheet.Finding.Severity.STOP;
import static org.orbwright.sheet.Finding.Severity.WARN;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.orbwright.design.Design;
import org.orbwright.quantity.Rounding;
import org.orbwright.sphere.SphereCalculator;
import org.orbwright.sphere.SphereSizing;
import org.orbwright.sphere.SphereSizing.SphereLimit;
import org.orbwright.tolerance.ErrorBudget;
import org.orbwright.tolerance.PanelSide;
import org.orbwright.tolerance.PanelTolerance;
import org.orbwright.tolerance.PanelTolerance.LeanTolerance;
import org.orbwright.tolerance.SeamSide;
import org.orbwright.tolerance.SeamTolerance;
import org.orbwright.tolerance.Tolerance;

/** What the errors of cutting get wrong or nearly wrong. */
final class ToleranceFindings {
    /** Share of solids that should come out without a gap. Common practice, no source. */
    private static final double ENOUGH = 0.95;

    private static final int SHOWN_DECIMALS = 4;
    private static final String ERRORS = "/tolerance/errors";

    private final Design design;
    private final Tolerance tolerance;
    private final SphereSizing sphere;
    private final List<Finding> findings = new ArrayList<>();

    private ToleranceFindings(Design design, Tolerance tolerance) {
        this.design = design;
        this.tolerance = tolerance;
        this.sphere = SphereCalculator.calculate(design);
    }

    static List<Finding> of(Design design, Tolerance tolerance) {
        ToleranceFindings finder = new ToleranceFindings(design, tolerance);
        tolerance.panels().forEach(finder::panel);
        tolerance.seams().forEach(finder::seam);
        finder.chance();
        finder.wall();
        finder.diameter();
        return finder.findings;
    }

    private void panel(PanelTolerance panel) {
        if (!tolerance.bridges(panel.gap())) {
            findings.add(FindingCode.GAP_BEYOND_GLUE.stop(
                    "The setting error of the tip angle opens every " + panel.face() + " panel by "
                            + design.unit().sayApart(panel.gap(), tolerance.glueBridges()) + " at the "
                            + (panel.opensAt() == PanelSide.RIM ? "rim" : "tips") + ". The glue bridges "
                            + design.unit().sayApart(tolerance.glueBridges(), panel.gap())
                            + ". Set the tip angle to within "
                            + degrees(panel.largestTipAngleError()) + ".",
                    "/tolerance/errors/tipAngle/setting"));
        }
        lean(panel);
        double blunt = panel.bluntTips().shift();
        if (blunt > tolerance.glueBridges()) {
            findings.add(FindingCode.TIPS_BLUNT.warn(
                    "The blank is " + design.say(blunt) + " too narrow for the segments of the " + panel.face()
                            + " panels. That leaves a hole of this radius in their middle.",
                    ERRORS));
        }
        if (panel.unmixed() != null && panel.opening().uncertainty() > 0) {
            double mixed = panel.opening().uncertainty();
            findings.add(FindingCode.SEGMENTS_SHARE_CUTS.note(
                    "The bands of the " + panel.face() + " segments read the same from both edges. So neighbours along"
                            + " a blank come into one panel, and they share a cut. In that order a panel's gap would"
                            + " scatter by " + design.say(mixed * panel.unmixed()) + " instead of " + design.say(mixed)
                            + ", " + Rounding.plain(panel.unmixed(), 2)
                            + " times as much: mix the segments before they are glued up to panels.",
                    "/tolerance/errors/tipAngle/scatter"));
        }
    }

    /** Legs that are not square open every joint on one face. */
    private void lean(PanelTolerance panel) {
        LeanTolerance lean = panel.square();
        double rim = lean.gapAtRim().shift();
        double tips = lean.gapAtTips().shift();
        double gap = Math.abs(rim) < Math.abs(tips) ? tips : rim;
        if (gap == 0) {
            return;
        }
        boolean open = !tolerance.bridges(Math.abs(gap));
        if (Math.abs(rim + tips) < Math.abs(rim - tips)) {
            findings.add(FindingCode.LEGS_NOT_SQUARE.finding(
                    open ? STOP : NOTE,
                    "The lean of the legs drifts: pressed flat, every joint of the " + panel.face() + " panels opens "
                            + side(rim) + " at the rim and " + side(tips) + " at the tips, by up to "
                            + design.unit().sayApart(Math.abs(gap), tolerance.glueBridges()) + ". The glue bridges "
                            + (open ? design.unit().sayApart(tolerance.glueBridges(), Math.abs(gap)) : "that") + ".",
                    "/tolerance/errors/squareDrift"));
            return;
        }
        findings.add(FindingCode.LEGS_NOT_SQUARE.finding(
                open ? STOP : NOTE,
                "The legs are not square: pressed flat, every joint of the " + panel.face() + " panels opens "
                        + side(gap) + " by "
                        + design.unit().sayApart(Math.abs(gap), tolerance.glueBridges())
                        + ". Pulled tight, the panel becomes a shallow cone, and its middle stands "
                        + design.say(Math.abs(lean.rise().shift()))
                        + (lean.rise().shift() < 0 ? " in. " : " out. ")
                        + (open
                                ? "The glue bridges "
                                        + design.unit().sayApart(tolerance.glueBridges(), Math.abs(gap))
                                        + ": set the blade square to within " + degrees(lean.largestError()) + "."
                                : "The glue bridges that."),
                "/tolerance/errors/square/setting"));
    }

    private static String side(double gap) {
        return gap > 0 ? "inside" : "outside";
    }

    private void seam(SeamTolerance seam) {
        if (!tolerance.bridges(seam.gap())) {
            findings.add(FindingCode.GAP_BEYOND_GLUE.stop(
                    "The setting error of the bevel opens every seam between " + seam.face() + " and "
                            + seam.neighbour() + " panels by "
                            + design.unit().sayApart(seam.gap(), tolerance.glueBridges()) + " "
                            + (seam.opensAt() == SeamSide.INSIDE ? "inside" : "outside")
                            + ". The glue bridges "
                            + design.unit().sayApart(tolerance.glueBridges(), seam.gap())
                            + ". Set the bevel to within " + degrees(seam.largestBevelError()) + ".",
                    "/tolerance/errors/bevel/setting"));
        }
    }

    private void chance() {
        double share = tolerance.simulation().allBridged();
        if (share < ENOUGH) {
            findings.add(FindingCode.GAPS_LIKELY.warn(
                    "Only " + percent(share) + " of such solids have no gap wider than "
                            + design.say(tolerance.glueBridges()) + ". The glue bridges no wider gap.",
                    ERRORS));
        }
    }

    /** The thinnest wall that the errors may leave, by the limits of the sphere's own findings. */
    private void wall() {
        double least = least(sphere.thinnestWall(), tolerance.solid().thinnestWall());
        if (least <= 0) {
            findings.add(FindingCode.BREAK_THROUGH.stop(
                    "With these errors the sphere may break through to the hollow. The wall is "
                            + design.say(sphere.thinnestWall()) + " at the thinnest place, and they may take "
                            + design.say(sphere.thinnestWall() - least) + " of it.",
                    ERRORS));
        } else if (least < Math.max(design.minimumWall(), SphereFindings.THINNEST_TURNED) - SphereFindings.EXACT) {
            boolean fragile = least < SphereFindings.THINNEST_TURNED - SphereFindings.EXACT;
            findings.add(FindingCode.WALL_BELOW_MINIMUM.finding(
                    fragile ? STOP : WARN,
                    "With these errors only " + design.sayAtMost(least) + " of wall may be left at the thinnest place."
                            + (fragile ? " So thin a wall breaks under the tool or the sander." : "")
                            + " The wanted wall is " + design.say(design.minimumWall()) + ".",
                    ERRORS));
        }
    }

    /** The largest sphere that the errors may leave room for, against the designed one and its allowance. */
    private void diameter() {
        double least = least(sphere.largestDiameter(), tolerance.solid().largestDiameter());
        double allowance = (least - sphere.diameter()) / 2;
        boolean flats = sphere.largestLimitedBy() == SphereLimit.FLATS;
        String room = "With these errors there may be room for a sphere of only " + design.sayAtMost(least)
                + ". The designed one has " + design.say(sphere.diameter());
        if (allowance < -SphereFindings.EXACT) {
            findings.add((flats ? FindingCode.FLATS_LEFT : FindingCode.SEAMS_OPEN)
                    .finding(
                            flats ? WARN : STOP,
                            room
                                    + (flats
                                            ? ": flats may stay on the faces."
                                            : ": seams may be open at the middle of the edges."),
                            ERRORS));
        } else if (flats && allowance < design.turningAllowance() - SphereFindings.EXACT) {
            findings.add(FindingCode.ALLOWANCE_NOT_MET.warn(
                    room + ": only " + design.sayAtMost(Math.max(0, allowance))
                            + " may be left to turn away, less than the turning allowance of "
                            + design.say(design.turningAllowance()) + ".",
                    ERRORS));
        }
    }

    private static double least(double designed, ErrorBudget budget) {
        return designed + budget.shift() - budget.expanded();
    }

    private static String degrees(double radians) {
        return Rounding.plain(Math.toDegrees(radians), SHOWN_DECIMALS) + " degrees";
    }

    private static String percent(double share) {
        return String.format(Locale.ROOT, "%.1f %%", Math.floor(share * 1000) / 10);
    }
}
