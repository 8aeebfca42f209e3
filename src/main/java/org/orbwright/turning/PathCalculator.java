package org.orbwright.turning;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.orbwright.design.Design;
import org.orbwright.design.ImpossibleDesignException;
import org.orbwright.design.Panel;
import org.orbwright.design.Violation;
import org.orbwright.turning.PathMove.Kind;
import org.orbwright.turning.PathRequest.LimitsRequest;
import org.orbwright.turning.PathRequest.Machine;
import org.orbwright.turning.ToolPath.PassTime;

/**
 * Lays the way of a cutter over the sphere; lengths in millimetres. Every pass is a set of rings, on each of which the
 * cutter's rim touches the sphere of that pass on the side towards the middle plane. From ring to ring the cutter moves
 * along the axis at the higher of both heights, where it is clear of the sphere.
 */
public final class PathCalculator {
    /** Share of the depth of a pass that the ridges of roughing stand high. */
    private static final double ROUGH_RIDGES = 0.25;
    /** Moves that one answer holds. */
    private static final int MOST_MOVES = 200_000;

    private final PathRequest request;
    private final Design design;
    private final boolean rotary;
    private final Cutter cutter;
    private final Holding holding;
    private final double room;
    private final double neck;
    private final double sphere;
    private final double depth;
    private final double corners;
    private final double safeHeight;
    private final double feed;
    private final List<PathMove> moves = new ArrayList<>();
    private double turned;
    private double length;

    private PathCalculator(PathRequest request, Design design) {
        this.request = request;
        this.design = design;
        this.rotary = request.machine() == Machine.ROTARY;
        this.cutter = Cutter.of(request.cutter(), design);
        this.sphere = design.sphereRadius() + (request.leave() == null ? 0 : millimetres(request.leave()));
        TurningRequest held =
                new TurningRequest(request.design(), request.axis(), request.discs(), null, null, null, null, null);
        this.holding = HoldingCalculator.discs(held, design, sphere);
        this.room = HoldingCalculator.room(request.discs(), design);
        this.neck = request.discs() == null || request.discs().neck() == null
                ? holding.head().disc()
                : millimetres(request.discs().neck());
        this.depth = millimetres(request.passDepth());
        this.corners = corners();
        this.safeHeight = corners + 2 * millimetres(request.safe());
        this.feed = millimetres(request.feed());
    }

    private double millimetres(double stated) {
        return design.unit().toMillimetres(stated);
    }

    /**
     * Lays the path.
     *
     * @param request a request that keeps its Bean Validation constraints
     * @param design the request's design
     * @throws ImpossibleDesignException if the cutter does not fit its shape or between the discs, the machine's limits
     *     are exceeded, or there would be more moves than are answered
     */
    public static ToolPath path(PathRequest request, Design design) {
        return new PathCalculator(request, design).path();
    }

    private List<PassTime> passes(List<Double> radii) {
        List<PassTime> passes = new ArrayList<>();
        for (int pass = 0; pass < radii.size(); pass++) {
            int number = pass;
            List<PathMove> own =
                    moves.stream().filter(move -> move.pass() == number).toList();
            passes.add(new PassTime(
                    pass,
                    radii.get(pass),
                    (int) own.stream()
                            .filter(move -> move.kind() == Kind.TURN || move.kind() == Kind.CIRCLE)
                            .count(),
                    own.stream().mapToDouble(PathMove::minutes).sum()));
        }
        return passes;
    }

    /** From the centre to the solid's farthest corner. */
    private double corners() {
        double farthest = 0;
        for (Panel panel : design.panels()) {
            double rim = Math.sqrt(
                    (panel.cornerRadius() - panel.jointDistance()) * (panel.cornerRadius() + panel.jointDistance()));
            farthest = Math.max(farthest, Math.hypot(panel.faceDistance(), rim));
        }
        return farthest;
    }

    private ToolPath path() {
        List<Double> radii = new ArrayList<>();
        if (Boolean.TRUE.equals(request.airPass())) {
            radii.add(corners + millimetres(request.safe()));
        }
        for (double radius = corners - depth; radius > sphere + 1e-9; radius -= depth) {
            radii.add(radius);
        }
        radii.add(sphere);
        for (int pass = 0; pass < radii.size(); pass++) {
            boolean last = pass + 1 == radii.size();
            double ridge = last
                    ? millimetres(request.scallop())
                    : Math.max(ROUGH_RIDGES * depth, millimetres(request.scallop()));
            lay(pass, radii.get(pass), rings(radii.get(pass), ridge));
        }
        double farthest =
                moves.stream().mapToDouble(move -> Math.abs(move.x())).max().orElse(0);
        double lowest = moves.stream().mapToDouble(PathMove::z).min().orElse(0);
        limits(farthest, lowest);
        Double stickOut = request.cutter().stickOut() == null ? null : Double.valueOf(stickOut(radii));
        if (stickOut != null && millimetres(request.cutter().stickOut()) < stickOut) {
            throw new ImpossibleDesignException(List.of(new Violation(
                    "/cutter/stickOut",
                    "HOLDER_HITS",
                    "The holder would reach into wood that is not yet cut.",
                    String.valueOf(request.cutter().stickOut()),
                    "at least " + design.sayAtLeast(stickOut))));
        }
        return new ToolPath(
                request.machine(),
                sphere,
                passes(radii),
                cutter.corner() > 0
                        ? Double.valueOf(sphere * cutter.step(sphere, millimetres(request.scallop()), 0))
                        : null,
                end(sphere, holding.head().seatDistance()),
                rotary ? end(sphere, holding.tail().seatDistance()) : -start(sphere),
                lowest,
                safeHeight,
                farthest,
                stickOut,
                length,
                moves.stream().mapToDouble(PathMove::minutes).sum(),
                moves);
    }

    /** Latitude to which a ring reaches on one side, where the cutter stays clear of the disc and leaves the neck. */
    private double end(double radius, double seat) {
        if (!rotary) {
            return Math.PI / 2;
        }
        double reach = radius + cutter.corner();
        double beside = (seat - room - cutter.flat() - cutter.radius()) / reach;
        double above = (neck / 2 + cutter.corner()) / reach;
        if (beside <= 0 || above >= 1) {
            throw new ImpossibleDesignException(List.of(new Violation(
                    "/cutter/diameter",
                    "CUTTER_TOO_WIDE",
                    "Between the discs, with the room beside them and the neck, there is no room for this cutter.",
                    String.valueOf(request.cutter().diameter()),
                    "a smaller cutter, disc or neck")));
        }
        return Math.min(Math.asin(Math.min(1, beside)), Math.acos(above));
    }

    /** Latitude down to which the upright work is milled: that of the middle plane, or where the disc ends it. */
    private double start(double radius) {
        double deepest = holding.tail().seatDistance() - room;
        double above = (cutter.corner() - deepest) / (radius + cutter.corner());
        return rotary || above <= 0 ? 0 : Math.asin(above);
    }

    /** A ring: its latitude, and whether it is on the side of the axis' first end. */
    private record Ring(double latitude, boolean head) {}

    private List<Ring> rings(double radius, double ridge) {
        List<Ring> rings = new ArrayList<>();
        latitudes(radius, ridge, end(radius, holding.head().seatDistance()))
                .forEach(latitude -> rings.add(new Ring(latitude, true)));
        Collections.reverse(rings);
        if (rotary) {
            // On both sides of the middle plane a cutter without a flat would turn the same ring.
            latitudes(radius, ridge, end(radius, holding.tail().seatDistance())).stream()
                    .skip(cutter.flat() > 0 ? 0 : 1)
                    .forEach(latitude -> rings.add(new Ring(-latitude, false)));
        }
        return rings;
    }

    /** Latitudes from the middle plane, or the lowest that is milled, to an end. */
    private List<Double> latitudes(double radius, double ridge, double end) {
        double start = start(radius);
        List<Double> latitudes = new ArrayList<>();
        if (cutter.corner() > 0) {
            int count = Math.max(1, (int) Math.ceil((end - start) / cutter.step(radius, ridge, 0) - 1e-9));
            tooMany(count);
            for (int i = 0; i <= count; i++) {
                latitudes.add(start + (end - start) * i / count);
            }
            return latitudes;
        }
        // The flat of the cutter lies along the axis on a rotary table, and square to it on three axes.
        double from = rotary ? start : Math.PI / 2 - end;
        double to = rotary ? end : Math.PI / 2 - start;
        for (double at = from; at < to; at += cutter.step(radius, ridge, at)) {
            latitudes.add(rotary ? at : Math.PI / 2 - at);
            tooMany(latitudes.size());
        }
        latitudes.add(rotary ? to : Math.PI / 2 - to);
        if (!rotary) {
            Collections.reverse(latitudes);
        }
        return latitudes;
    }

    private void tooMany(int more) {
        if (moves.size() + more > MOST_MOVES) {
            throw new ImpossibleDesignException(List.of(new Violation(
                    "/scallop",
                    "TOO_MANY_MOVES",
                    "The path would have more than " + MOST_MOVES + " moves.",
                    String.valueOf(request.scallop()),
                    "higher ridges, deeper passes or a larger cutter")));
        }
    }

    private void lay(int pass, double radius, List<Ring> rings) {
        double lastX = 0;
        double lastZ = safeHeight;
        for (int i = 0; i < rings.size(); i++) {
            Ring ring = rings.get(i);
            double along = (radius + cutter.corner()) * Math.sin(ring.latitude);
            double height = (radius + cutter.corner()) * Math.cos(ring.latitude);
            double side = ring.head ? cutter.flat() : -cutter.flat();
            double x = rotary ? along + side : height + cutter.flat();
            double z = (rotary ? height : along) - cutter.corner();
            if (i == 0) {
                add(pass, radius, Kind.RAPID, x, safeHeight, 0);
                lastX = x;
                lastZ = safeHeight;
            }
            if (z > lastZ) {
                add(pass, radius, Kind.LINE, lastX, z, (z - lastZ) / feed);
                lastZ = z;
            }
            if (x != lastX) {
                add(pass, radius, Kind.LINE, x, lastZ, Math.abs(x - lastX) / feed);
            }
            if (z < lastZ) {
                add(pass, radius, Kind.LINE, x, z, (lastZ - z) / feed);
            }
            ring(pass, radius, x, z, 2 * Math.PI * radius * Math.cos(ring.latitude));
            lastX = x;
            lastZ = z;
            tooMany(0);
        }
        add(pass, radius, Kind.RAPID, lastX, safeHeight, 0);
    }

    private void ring(int pass, double radius, double x, double z, double around) {
        length += around;
        if (rotary) {
            turned += 2 * Math.PI;
            // Near the pole the way is short, but the table still has to turn.
            add(pass, radius, Kind.TURN, x, z, Math.max(around, 2 * Math.PI * z) / feed);
        } else if (x > 0) {
            add(pass, radius, Kind.CIRCLE, x, z, 2 * Math.PI * x / feed);
        }
    }

    private void add(int pass, double radius, Kind kind, double x, double z, double minutes) {
        moves.add(new PathMove(pass, radius, kind, x, z, turned, minutes));
    }

    /** How far the holder has to stay above the tip, so that it meets no wood that a pass has not yet cut. */
    private double stickOut(List<Double> radii) {
        double holder = request.cutter().holder() == null
                ? cutter.radius()
                : millimetres(request.cutter().holder()) / 2;
        double needed = 0;
        for (PathMove move : moves) {
            double before = move.pass() == 0 ? corners : Math.min(corners, radii.get(move.pass() - 1));
            // Beyond the rings the solid still stands as it was glued up.
            double wood = rotary ? corners : before;
            double inner = rotary ? 0 : Math.max(0, move.x() - holder);
            double height = wood > inner ? Math.sqrt((wood - inner) * (wood + inner)) : Double.NEGATIVE_INFINITY;
            needed = Math.max(needed, height - move.z());
        }
        return holder <= cutter.radius() && !rotary ? 0 : needed;
    }

    private void limits(double farthest, double lowest) {
        LimitsRequest limits = request.limits();
        if (limits == null) {
            return;
        }
        List<Violation> broken = new ArrayList<>();
        check(broken, "x", limits.x(), farthest, "X goes to ");
        check(broken, "y", limits.y(), rotary ? 0 : farthest, "Y goes to ");
        check(broken, "highest", limits.highest(), safeHeight, "Z goes up to ");
        check(broken, "below", limits.below(), -lowest, "Z goes below the centre by ");
        if (!broken.isEmpty()) {
            throw new ImpossibleDesignException(broken);
        }
    }

    private void check(List<Violation> broken, String name, double limit, double needed, String words) {
        if (needed > millimetres(limit) + 1e-9) {
            broken.add(new Violation(
                    "/limits/" + name,
                    "BEYOND_LIMIT",
                    words + design.say(needed) + ".",
                    String.valueOf(limit),
                    "at least " + design.sayAtLeast(needed) + ", or another cutter or axis"));
        }
    }
}
