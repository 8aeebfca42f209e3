package org.orbwright.sheet;

import java.util.ArrayList;
import java.util.List;
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
import org.orbwright.turning.TurningRequest.ScrewsRequest;

/** What the work on the lathe gets wrong or nearly wrong. */
final class TurningFindings {
    private static final String SCREWS = "/discs/screws/bite";
    private static final String SPEED = "/speed/turns";
    /** In millimetres; a hole that is no deeper goes with sanding. */
    private static final double NO_HOLE = 0.05;

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
        turning.sanding();
        return turning.findings;
    }

    private void add(FindingCode code, Severity severity, String message, String field) {
        findings.add(new Finding(code, severity, message, field));
    }

    private void discs() {
        Holding holding = plan.holding();
        Seat head = holding.head();
        if (head.largestDisc() != null && head.disc() > head.largestDisc() + NO_HOLE) {
            add(
                    FindingCode.DISC_OVERHANGS,
                    Severity.NOTE,
                    "A disc of " + design.say(head.disc()) + " overhangs the panel, whose inscribed circle is "
                            + design.say(head.largestDisc()) + " wide; a disc of that size finds the centre by itself.",
                    "/discs/diameter");
        }
        ScrewsRequest screws = request.discs() == null ? null : request.discs().screws();
        if (screws == null) {
            return;
        }
        double bite = design.unit().toMillimetres(screws.bite());
        double deepest = Math.max(head.holeInSphere(), holding.tail().holeInSphere());
        if (bite >= design.thickness()) {
            add(
                    FindingCode.SCREW_IN_SPHERE,
                    Severity.WARN,
                    "Screws that go " + design.say(bite) + " deep pass through the panel of "
                            + design.say(design.thickness()) + " into the hollow.",
                    SCREWS);
        } else if (deepest > NO_HOLE) {
            add(
                    FindingCode.SCREW_IN_SPHERE,
                    Severity.WARN,
                    "The screw holes stay " + design.say(deepest)
                            + " deep in the finished sphere and have to be plugged, or hidden by an inlay.",
                    SCREWS);
        }
    }

    private void cups() {
        if (plan.cups() != null && plan.cups().positions() == null) {
            add(
                    FindingCode.CUPS_LEAVE_PATCHES,
                    Severity.WARN,
                    "Between these cups three positions leave "
                            + Rounding.plain(100 * plan.cups().leftByThree(), 1)
                            + " % of the sphere unturned; smaller cups, or more positions, reach it.",
                    "/cup/rim");
        }
    }

    private void speed(SpeedLimit limit, String name) {
        Double turns = request.speed() == null ? null : request.speed().turns();
        if (turns == null) {
            return;
        }
        if (limit.glueLimit() != null && turns > limit.glueLimit()) {
            add(
                    FindingCode.SPEED_ABOVE_GLUE,
                    Severity.STOP,
                    "At " + Rounding.plain(turns, 0) + " turns a minute the " + name
                            + " pulls harder at its glue lines than the stated strength over the safety factor; that is"
                            + " reached at " + Rounding.plain(Math.floor(limit.glueLimit()), 0) + ".",
                    SPEED);
        }
        if (turns > limit.thumbLow()) {
            add(
                    FindingCode.SPEED_ABOVE_THUMB,
                    Severity.WARN,
                    Rounding.plain(turns, 0) + " turns a minute are more than the "
                            + Rounding.plain(Math.floor(limit.thumbLow()), 0)
                            + " of the rule of thumb's low end for the " + name + ", "
                            + design.say(limit.diameter()) + " wide. Segmented and hollow work stays below that.",
                    SPEED);
        }
    }

    private void sanding() {
        SphereSizing sphere = SphereCalculator.calculate(design);
        double turned = plan.roughing().turnedDiameter();
        if (turned > sphere.largestDiameter() + NO_HOLE && turned > sphere.diameter()) {
            add(
                    FindingCode.SANDING_LEAVES_FLATS,
                    Severity.NOTE,
                    "Before sanding the sphere would be " + design.say(turned) + ", more than the largest of "
                            + design.say(sphere.largestDiameter())
                            + ": flats or open seams stay in the turned surface, and sanding works in blows there.",
                    "/finish/grits");
        }
    }
}
