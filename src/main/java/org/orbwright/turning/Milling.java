package org.orbwright.turning;

import java.util.ArrayList;
import java.util.List;
import org.orbwright.design.Design;
import org.orbwright.design.ImpossibleDesignException;
import org.orbwright.design.Panel;
import org.orbwright.design.Violation;
import org.orbwright.turning.ControlRequest.Arcs;
import org.orbwright.turning.Holding.Seat;
import org.orbwright.turning.PathRequest.Machine;
import org.orbwright.turning.TurningRequest.DiscsRequest;

/**
 * What a path is laid with; lengths in millimetres, times in minutes.
 *
 * @param request the section, filled in
 * @param discs the discs that it is milled between, filled in
 * @param holding the work between its discs
 * @param room that the cutter keeps beside a disc
 * @param sphere radius of the sphere that the last pass cuts
 * @param corners from the centre to the solid's farthest corner
 * @param depth of a pass
 */
record Milling(
        PathRequest request,
        DiscsRequest discs,
        Design design,
        Cutter cutter,
        Holding holding,
        double room,
        double sphere,
        double corners,
        double depth) {
    /** In millimetres. Common practice, no source. */
    private static final double LEAST_CLEARANCE = 2;

    private static final int MOST_PASSES = 1000;
    private static final double EXACT = 1e-9;

    /**
     * Reads a request.
     *
     * @throws ImpossibleDesignException if there is no such axis or cutter, or passes, ridges or the sphere are not
     *     what can be milled
     */
    static Milling of(PathRequest path, TurningRequest turning, Design design) {
        PathRequest request = path.filled(design.unit());
        TurningRequest held = turning.filled(design.unit());
        double sphere = design.sphereRadius() + millimetres(design, request.leave());
        Milling milling = new Milling(
                request,
                held.discs(),
                design,
                Cutter.of(request.cutter(), design),
                HoldingCalculator.discs(held, design, sphere),
                millimetres(design, held.discs().clearance()),
                sphere,
                corners(design),
                millimetres(design, request.passDepth()));
        milling.check();
        return milling;
    }

    private static double millimetres(Design design, double stated) {
        return design.unit().toMillimetres(stated);
    }

    /** A stated length in millimetres. */
    double millimetres(double stated) {
        return millimetres(design, stated);
    }

    /** From the centre to a solid's farthest corner. */
    static double corners(Design design) {
        return design.panels().stream()
                .mapToDouble(Panel::outerCornerRadius)
                .max()
                .orElseThrow();
    }

    boolean rotary() {
        return request.machine() == Machine.ROTARY;
    }

    double scallop() {
        return millimetres(request.scallop());
    }

    /** How far above all that stands up the cutter crosses the work. */
    private double clearance() {
        return millimetres(request.clearHeight());
    }

    /** From the centre to the sphere that the pass in air goes round. */
    double airRadius() {
        return corners + clearance() / 2;
    }

    /** Height of rapid moves: above the corners, and on a rotary table above the discs. */
    double clearHeight() {
        double discs = Math.max(holding.head().disc(), holding.tail().disc()) / 2;
        return (rotary() ? Math.max(corners, discs) : corners) + clearance();
    }

    double feed() {
        return millimetres(request.feed());
    }

    /** Feed straight down. */
    double plunge() {
        return millimetres(request.plungeFeed());
    }

    /** Least time that the table takes for a turn; 0 if its speed is not stated. */
    double quickestTurn() {
        return request.limits() == null || request.limits().tableTurns() == null
                ? 0
                : 1 / request.limits().tableTurns();
    }

    /** Radius of the holder, never less than the cutter's. */
    double holder() {
        return Math.max(cutter.radius(), millimetres(request.cutter().holder()) / 2);
    }

    /** Radius of the wood that is left under a disc. */
    double neck(Seat seat) {
        return (discs.neck() != null ? millimetres(discs.neck()) : seat.disc()) / 2;
    }

    /** How far the program goes outside the circles of the path at most. */
    double stray() {
        return !rotary() && request.control().arcs() == Arcs.SEGMENTS ? RingSegments.STRAY : 0;
    }

    /** Radii of the spheres of all passes but one in air. */
    List<Double> radii() {
        List<Double> radii = new ArrayList<>();
        for (double radius = corners - depth; radius > sphere + EXACT; radius -= depth) {
            radii.add(radius);
        }
        radii.add(sphere);
        return radii;
    }

    private void check() {
        List<Violation> broken = new ArrayList<>();
        if ((request.cutter().stickOut() == null) != (request.cutter().holder() == null)) {
            boolean noHolder = request.cutter().holder() == null;
            broken.add(new Violation(
                    noHolder ? "/path/cutter/holder" : "/path/cutter/stickOut",
                    "HOLDER_HALF_STATED",
                    "How far the cutter stands out and how thick its holder is are checked together.",
                    null,
                    noHolder ? "the holder's diameter, or no stickOut" : "stickOut, or no holder"));
        }
        if (clearance() < LEAST_CLEARANCE - EXACT) {
            broken.add(new Violation(
                    "/path/clearHeight",
                    "ROOM_TOO_SMALL",
                    "A solid that was glued up is less true than the one that is computed: " + design.say(clearance())
                            + " above its corners are not enough.",
                    String.valueOf(request.clearHeight()),
                    "at least " + design.sayAtLeast(LEAST_CLEARANCE)));
        }
        if (depth > 2 * cutter.radius() + EXACT) {
            broken.add(new Violation(
                    "/path/passDepth",
                    "PASS_TOO_DEEP",
                    "Passes of " + design.say(depth) + " are deeper than the cutter of "
                            + design.say(2 * cutter.radius()) + " is wide.",
                    String.valueOf(request.passDepth()),
                    "at most " + design.sayAtMost(2 * cutter.radius()) + ", or a wider cutter"));
        }
        double highest = Math.min(depth, (cutter.corner() > 0 ? cutter.corner() : cutter.radius()) / 2);
        if (scallop() > highest + EXACT) {
            broken.add(new Violation(
                    "/path/scallop",
                    "RIDGES_TOO_HIGH",
                    "Ridges of " + design.say(scallop()) + " are higher than a pass is deep, or than half the radius of"
                            + " the cutter's " + (cutter.corner() > 0 ? "rim." : "end."),
                    String.valueOf(request.scallop()),
                    "at most " + design.sayAtMost(highest)));
        }
        if (sphere >= corners) {
            broken.add(new Violation(
                    "/path/leave",
                    "NOTHING_TO_CUT",
                    "A sphere of " + design.say(2 * sphere) + " reaches beyond the solid's corners, which are "
                            + design.say(2 * corners) + " across.",
                    String.valueOf(request.leave()),
                    "a length below " + design.sayAtMost(corners - design.sphereRadius())));
        } else if ((corners - sphere) / depth > MOST_PASSES) {
            broken.add(new Violation(
                    "/path/passDepth",
                    "TOO_MANY_PASSES",
                    "From the corners to the sphere " + design.say(corners - sphere)
                            + " are cut away, which are more than " + MOST_PASSES + " passes of this depth.",
                    String.valueOf(request.passDepth()),
                    "at least " + design.sayAtLeast((corners - sphere) / MOST_PASSES)));
        }
        if (!broken.isEmpty()) {
            throw new ImpossibleDesignException(broken);
        }
    }
}
