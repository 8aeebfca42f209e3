package org.orbwright.turning;

import java.util.ArrayList;
import java.util.List;
import org.orbwright.design.Design;
import org.orbwright.design.ImpossibleDesignException;
import org.orbwright.design.Panel;
import org.orbwright.design.Violation;
import org.orbwright.turning.Holding.Seat;
import org.orbwright.turning.PathRequest.Machine;

/**
 * What a path is laid with; lengths in millimetres, times in minutes.
 *
 * @param request the request
 * @param design its design
 * @param cutter the cutter
 * @param holding the work between its discs
 * @param room that the cutter keeps beside a disc
 * @param sphere radius of the sphere that the last pass cuts
 * @param corners from the centre to the solid's farthest corner
 * @param depth of a pass
 */
record Milling(
        PathRequest request,
        Design design,
        Cutter cutter,
        Holding holding,
        double room,
        double sphere,
        double corners,
        double depth) {
    /** Share of the feed that is plunged with where nothing is stated. Common practice, no source. */
    private static final double USUAL_PLUNGE = 0.25;

    /** In millimetres. Common practice, no source. */
    private static final double LEAST_SAFE = 1;

    private static final int MOST_PASSES = 1000;
    private static final double EXACT = 1e-9;

    /**
     * Reads a request.
     *
     * @throws ImpossibleDesignException if there is no such axis or cutter, or passes, ridges or the sphere are not
     *     what can be milled
     */
    static Milling of(PathRequest request, Design design) {
        double sphere = design.sphereRadius() + (request.leave() == null ? 0 : millimetres(design, request.leave()));
        Holding holding = HoldingCalculator.discs(
                new TurningRequest(request.design(), request.axis(), request.discs(), null, null, null, null, null),
                design,
                sphere);
        Milling milling = new Milling(
                request,
                design,
                Cutter.of(request.cutter(), design),
                holding,
                HoldingCalculator.room(request.discs(), design),
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

    /** Room above all that stands up. */
    double safe() {
        return millimetres(request.safe());
    }

    /** Height of rapid moves: above the corners, and on a rotary table above the discs. */
    double safeHeight() {
        double discs = Math.max(holding.head().disc(), holding.tail().disc()) / 2;
        return (rotary() ? Math.max(corners, discs) : corners) + 2 * safe();
    }

    double feed() {
        return millimetres(request.feed());
    }

    /** Feed straight down. */
    double plunge() {
        return request.plungeFeed() == null ? USUAL_PLUNGE * feed() : millimetres(request.plungeFeed());
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
        boolean stated = request.discs() != null && request.discs().neck() != null;
        return (stated ? millimetres(request.discs().neck()) : seat.disc()) / 2;
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
                    noHolder ? "/cutter/holder" : "/cutter/stickOut",
                    "HOLDER_HALF_STATED",
                    "How far the cutter stands out and how thick its holder is are checked together.",
                    null,
                    noHolder ? "the holder's diameter, or no stickOut" : "stickOut, or no holder"));
        }
        if (safe() < LEAST_SAFE - EXACT) {
            broken.add(new Violation(
                    "/safe",
                    "ROOM_TOO_SMALL",
                    "A solid that was glued up is less true than the one that is computed: " + design.say(safe())
                            + " above its corners are not enough.",
                    String.valueOf(request.safe()),
                    "at least " + design.sayAtLeast(LEAST_SAFE)));
        }
        if (depth > 2 * cutter.radius() + EXACT) {
            broken.add(new Violation(
                    "/passDepth",
                    "PASS_TOO_DEEP",
                    "Passes of " + design.say(depth) + " are deeper than the cutter of "
                            + design.say(2 * cutter.radius()) + " is wide.",
                    String.valueOf(request.passDepth()),
                    "at most " + design.sayAtMost(2 * cutter.radius()) + ", or a wider cutter"));
        }
        double highest = Math.min(depth, (cutter.corner() > 0 ? cutter.corner() : cutter.radius()) / 2);
        if (scallop() > highest + EXACT) {
            broken.add(new Violation(
                    "/scallop",
                    "RIDGES_TOO_HIGH",
                    "Ridges of " + design.say(scallop()) + " are higher than a pass is deep, or than half the radius of"
                            + " the cutter's " + (cutter.corner() > 0 ? "rim." : "end."),
                    String.valueOf(request.scallop()),
                    "at most " + design.sayAtMost(highest)));
        }
        if (sphere >= corners) {
            broken.add(new Violation(
                    "/leave",
                    "NOTHING_TO_CUT",
                    "A sphere of " + design.say(2 * sphere) + " reaches beyond the solid's corners, which are "
                            + design.say(2 * corners) + " across.",
                    String.valueOf(request.leave()),
                    "a length below " + design.sayAtMost(corners - design.sphereRadius())));
        } else if ((corners - sphere) / depth > MOST_PASSES) {
            broken.add(new Violation(
                    "/passDepth",
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
