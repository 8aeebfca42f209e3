package org.orbwright.sheet;

import java.util.ArrayList;
import java.util.List;
import org.orbwright.band.BandCalculator;
import org.orbwright.design.Design;
import org.orbwright.quantity.Rounding;
import org.orbwright.sheet.Finding.Severity;
import org.orbwright.sphere.SphereCalculator;
import org.orbwright.sphere.SphereSizing;
import org.orbwright.turning.Holding;
import org.orbwright.turning.Holding.Seat;
import org.orbwright.turning.SpeedLimits.SpeedLimit;
import org.orbwright.turning.TurningPlan;
import org.orbwright.turning.TurningRequest;
import org.orbwright.turning.TurningRequest.GritRequest;
import org.orbwright.turning.TurningRequest.ScrewsRequest;

/** What the work on the lathe gets wrong or nearly wrong. */
final class TurningFindings {
    private static final String SCREWS = "/turning/discs/screws/bite";
    private static final String SPEED = "/turning/speed/turns";
    private static final String DISC = "/turning/discs/diameter";
    /** Share of the sphere below which reversing is most of the work. Common practice, no source. */
    private static final double LITTLE = 0.5;
    /** In millimetres; a hole that is no deeper goes with sanding. */
    private static final double NO_HOLE = 0.05;
    /** Places along the base that a band's width is looked at; its widest does not depend on them. */
    private static final int STATIONS = 2;

    private final TurningRequest request;
    private final Design design;
    private final TurningPlan plan;
    private final List<Finding> findings = new ArrayList<>();

    private TurningFindings(TurningRequest request, Design design, TurningPlan plan) {
        this.request = request;
        this.design = design;
        this.plan = plan;
    }

    static List<Finding> of(TurningRequest request, Design design, TurningPlan plan) {
        TurningFindings turning = new TurningFindings(request, design, plan);
        turning.discs();
        turning.cups();
        turning.speed(plan.speeds().solid(), "glued-up solid");
        turning.speed(plan.speeds().sphere(), "finished sphere");
        turning.glue();
        turning.sanding();
        turning.grits();
        return turning.findings;
    }

    private void discs() {
        Holding holding = plan.holding();
        Seat head = holding.head();
        disc(head, "first");
        disc(holding.tail(), "other");
        reach(holding);
        ScrewsRequest screws = request.discs() == null ? null : request.discs().screws();
        if (screws == null) {
            return;
        }
        double bite = design.unit().toMillimetres(screws.bite());
        double deepest = Math.max(head.holeInSphere(), holding.tail().holeInSphere());
        if (bite >= design.thickness()) {
            findings.add(FindingCode.SCREW_IN_SPHERE.warn(
                    "Screws that go " + design.say(bite) + " deep pass through the panel of "
                            + design.say(design.thickness()) + " into the hollow.",
                    SCREWS));
        } else if (deepest > NO_HOLE) {
            findings.add(FindingCode.SCREW_IN_SPHERE.warn(
                    "The screw holes stay " + design.say(deepest)
                            + " deep in the finished sphere and have to be plugged, or hidden by an inlay.",
                    SCREWS));
        }
    }

    private void disc(Seat seat, String end) {
        if (seat.disc() > plan.holding().swing()) {
            findings.add(FindingCode.DISC_OVERHANGS.warn(
                    "A disc of " + design.say(seat.disc()) + " on the " + end
                            + " end is wider than the solid, which is "
                            + design.say(plan.holding().swing())
                            + " about this axis: bed, rest and tool have to clear it.",
                    DISC));
        } else if (seat.largestDisc() != null && seat.disc() > seat.largestDisc() + NO_HOLE) {
            findings.add(FindingCode.DISC_OVERHANGS.note(
                    "A disc of " + design.say(seat.disc()) + " overhangs the panel on the " + end
                            + " end. The panel's inscribed circle is " + design.say(seat.largestDisc())
                            + " wide. A disc of that size finds the centre by itself.",
                    DISC));
        }
    }

    private void reach(Holding holding) {
        boolean none = Math.min(holding.head().reachedLatitude(), holding.tail().reachedLatitude()) == 0;
        if (none || holding.reachedShare() < LITTLE) {
            findings.add(FindingCode.REACH_SMALL.warn(
                    "Between discs of " + design.say(holding.head().disc()) + " and "
                            + design.say(holding.tail().disc())
                            + " the tool reaches "
                            + Rounding.plain(100 * holding.reachedShare(), 1) + " % of the sphere"
                            + (none ? ", and nothing on one side of the middle" : "")
                            + ". Necks and the tool's room are counted. Smaller discs or necks leave more to be"
                            + " reached.",
                    DISC));
        }
    }

    private void cups() {
        if (plan.cups() != null && plan.cups().positions() == null) {
            findings.add(FindingCode.CUPS_LEAVE_PATCHES.warn(
                    "Between these cups three positions leave "
                            + Rounding.plain(100 * plan.cups().leftByThree(), 1)
                            + " % of the sphere unturned. Smaller cups or more positions reach it.",
                    "/turning/cup/rim"));
        }
    }

    /**
     * Beyond the low end of the rule of thumb a speed is a WARN, beyond its upper end a STOP: diameter times turns of
     * 6000 to 9000 inches a minute, which is a speed of the rim of 8.0 to 12.0 m/s. Common practice, no source.
     */
    private void speed(SpeedLimit limit, String name) {
        Double turns = request.speed() == null ? null : request.speed().turns();
        if (turns == null) {
            return;
        }
        if (limit.glueLimit() != null && turns > limit.glueLimit()) {
            findings.add(FindingCode.SPEED_ABOVE_GLUE.stop(
                    "At " + Rounding.plain(turns, 0) + " turns a minute the " + name
                            + " pulls harder at its glue lines than the stated strength and its divisor allow. The"
                            + " limit is " + floor(limit.glueLimit()) + " turns a minute.",
                    SPEED));
        }
        boolean beyond = turns > limit.thumbHigh();
        if (beyond || turns > limit.thumbLow()) {
            findings.add(FindingCode.SPEED_ABOVE_THUMB.finding(
                    beyond ? Severity.STOP : Severity.WARN,
                    Rounding.plain(turns, 0) + " turns a minute are more than the rule of thumb allows. Its "
                            + (beyond ? "upper" : "lower") + " limit for the " + name + ", "
                            + design.say(limit.diameter())
                            + " wide, is " + floor(beyond ? limit.thumbHigh() : limit.thumbLow())
                            + " turns a minute (common practice, no source). Segmented and hollow work stays below "
                            + floor(limit.thumbLow()) + ". Lower speeds can still be dangerous.",
                    SPEED));
        }
    }

    private static String floor(double turns) {
        return Rounding.plain(Math.floor(turns), 0);
    }

    private void glue() {
        if (request.speed() == null || request.speed().glueStrength() == null) {
            return;
        }
        boolean solid = plan.speeds().solid().glueLimit() == null;
        if (solid || plan.speeds().sphere().glueLimit() == null) {
            findings.add(FindingCode.GLUE_NOT_CHECKED.warn(
                    "The strength of the glue is stated, but the load on it is not known. "
                            + (solid
                                    ? "The density of one of the woods is missing."
                                    : "The finished sphere breaks through to the hollow.")
                            + " So no limit of speed is answered for the glue.",
                    "/turning/speed/glueStrength"));
        }
    }

    private void grits() {
        if (request.finish() == null) {
            return;
        }
        BandFindings.of(design, BandCalculator.calculate(design, STATIONS)).stream()
                .filter(finding -> finding.code() == FindingCode.BAND_VANISHES)
                .forEach(finding -> findings.add(finding));
        List<GritRequest> grits =
                request.finish().grits() == null ? List.of() : request.finish().grits();
        for (int i = 1; i < grits.size(); i++) {
            if (grits.get(i).grit() < grits.get(i - 1).grit()) {
                findings.add(FindingCode.GRITS_OUT_OF_ORDER.warn(
                        "Grit " + grits.get(i).grit() + " after "
                                + grits.get(i - 1).grit()
                                + " is coarser: it leaves deeper scratches than it takes away.",
                        "/turning/finish/grits/" + i + "/grit"));
            }
        }
    }

    private void sanding() {
        SphereSizing sphere = SphereCalculator.calculate(design);
        double turned = plan.roughing().turnedDiameter();
        if (turned > sphere.largestDiameter() + NO_HOLE && turned > sphere.diameter()) {
            findings.add(FindingCode.SANDING_LEAVES_FLATS.note(
                    "Before sanding the sphere would be " + design.say(turned) + ", more than the largest of "
                            + design.say(sphere.largestDiameter())
                            + ": flats or open seams stay in the turned surface. Sanding is interrupted there.",
                    "/turning/finish/grits"));
        }
    }
}
