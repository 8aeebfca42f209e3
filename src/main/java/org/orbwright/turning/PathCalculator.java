package org.orbwright.turning;

import java.util.ArrayList;
import java.util.List;
import org.orbwright.design.Design;
import org.orbwright.design.ImpossibleDesignException;
import org.orbwright.turning.PathMove.Kind;
import org.orbwright.turning.RingPlanner.Half;
import org.orbwright.turning.RingPlanner.Ring;
import org.orbwright.turning.ToolPath.PassTime;

/**
 * Lays the way of a cutter over the sphere; lengths in millimetres. Every pass is a set of rings, on each of which the
 * cutter's rim touches the sphere of that pass. A half of it begins where the pass before lies exactly a pass's depth
 * higher. From ring to ring the cutter moves outwards at its height, and then straight down, going around at least once
 * for each pass's depth.
 */
public final class PathCalculator {
    /** Share of the depth of a pass that the ridges of roughing stand high. */
    private static final double ROUGH_RIDGES = 0.25;

    private final Milling milling;
    private final Cutter cutter;
    private final RingPlanner planner;
    private final double clearHeight;
    private final double noWidth;
    private final List<PathMove> moves = new ArrayList<>();
    private final List<PassTime> passes = new ArrayList<>();
    /** Radius of the sphere that holds all wood that the passes before left. */
    private double standing;

    private int pass;
    private double radius;
    private double turned;
    private int rings;
    private double length;
    private double minutes;

    private PathCalculator(PathRequest request, TurningRequest turning, Design design) {
        this.milling = Milling.of(request, turning, design);
        this.cutter = milling.cutter();
        this.planner = new RingPlanner(milling);
        this.clearHeight = milling.clearHeight();
        this.noWidth = milling.request().control().halfStep(design.unit());
    }

    /**
     * Lays the path.
     *
     * @param request a section that keeps its Bean Validation constraints
     * @param turning the axis and the discs that the work is held by
     * @throws ImpossibleDesignException if the cutter does not fit its shape or between the discs, the machine's limits
     *     are exceeded, or there would be more moves than are answered
     */
    public static ToolPath path(PathRequest request, TurningRequest turning, Design design) {
        return new PathCalculator(request, turning, design).path();
    }

    private ToolPath path() {
        // In air there is no wood to go around for.
        standing = 0;
        if (milling.request().airPass()) {
            lay(milling.airRadius(), roughRidge(), true);
        }
        double stepover = 0;
        List<Double> radii = milling.radii();
        standing = milling.corners();
        for (int i = 0; i < radii.size(); i++) {
            boolean last = i + 1 == radii.size();
            double latitudes = lay(radii.get(i), last ? milling.scallop() : roughRidge(), false);
            stepover = radii.get(i) * latitudes;
            standing = Math.min(milling.corners(), radii.get(i) + roughRidge());
        }
        if (milling.rotary()) {
            PathMove end = moves.get(moves.size() - 1);
            turned = 0;
            add(Kind.RAPID, end.x(), clearHeight, 0);
        }
        PathChecks checks = new PathChecks(milling, moves);
        checks.limits();
        return new ToolPath(
                milling.request().machine(),
                milling.sphere(),
                passes,
                cutter.corner() > 0 ? Double.valueOf(stepover) : null,
                cutter.flat() > 0 ? Double.valueOf(cutter.overlap()) : null,
                planner.headEnd(milling.sphere()),
                planner.tailEnd(milling.sphere()),
                milling.corners(),
                milling.plunge(),
                checks.lowest(),
                clearHeight,
                checks.farthest(),
                checks.stickOut(),
                passes.stream()
                        .filter(done -> !done.inAir())
                        .mapToDouble(PassTime::length)
                        .sum(),
                passes.stream().mapToDouble(PassTime::minutes).sum(),
                moves);
    }

    /** Ridges are never higher than half the radius of the rim, whatever is asked for. */
    private double roughRidge() {
        return Math.max(ROUGH_RIDGES * milling.depth(), milling.scallop());
    }

    /** Lays a pass, and returns the angle from its first ring to the next. */
    private double lay(double sphere, double ridge, boolean inAir) {
        pass = passes.size();
        radius = sphere;
        rings = 0;
        length = 0;
        minutes = 0;
        List<Half> halves = planner.halves(sphere, ridge);
        for (Half half : halves) {
            half(half);
        }
        passes.add(new PassTime(pass, sphere, inAir, rings, length, minutes));
        List<Ring> first = halves.get(0).rings();
        return Math.abs(first.get(1).latitude() - first.get(0).latitude());
    }

    private void half(Half half) {
        double reach = radius + cutter.corner();
        double lastX = 0;
        double lastZ = clearHeight;
        for (int i = 0; i < half.rings().size(); i++) {
            Ring ring = half.rings().get(i);
            double along = reach * Math.sin(ring.latitude());
            double height = reach * Math.cos(ring.latitude());
            double side = half.head() ? 1 : -1;
            double middle = i == 0 ? cutter.first() : cutter.flat();
            double x = milling.rotary() ? side * (along + middle) : height + middle;
            double z = (milling.rotary() ? height : along) - cutter.corner();
            double around = 2 * Math.PI * (milling.rotary() ? radius * Math.cos(ring.latitude()) : x);
            if (i == 0) {
                add(Kind.RAPID, x, clearHeight, 0);
            } else if (x != lastX) {
                straight(Kind.LINE, x, lastZ, Math.abs(x - lastX), milling.feed());
            }
            down(x, lastZ, z, i == 0 ? 0 : wood(Math.abs(x), z), around);
            if (ring.around()) {
                around(x, z, around);
            }
            lastX = x;
            lastZ = z;
            planner.tooMany(moves.size());
        }
        add(Kind.RAPID, lastX, clearHeight, 0);
    }

    /** Straight down, going around once for each pass's depth of the wood that is met there. */
    private void down(double x, double from, double to, double wood, double around) {
        double deep = Math.min(from - to, wood);
        int steps = (int) Math.max(1, Math.ceil(deep / milling.depth() - 1e-9));
        double last = from;
        for (int step = 1; step <= steps && last > to; step++) {
            double above = deep * (steps - step) / steps;
            straight(Kind.PLUNGE, x, to + above, last - to - above, milling.plunge());
            last = to + above;
            if (step < steps) {
                around(x, last, around + (milling.rotary() ? 2 * Math.PI * above : 0));
            }
        }
    }

    /**
     * Deepest wood under the cutter, straight down to a height: where its rim runs as the sphere that stands there, it
     * would rest on that at the same place.
     */
    private double wood(double x, double z) {
        double rest = standing + cutter.corner();
        double out = x - cutter.flat();
        return out >= rest ? 0 : Math.max(0, Math.sqrt((rest - out) * (rest + out)) - cutter.corner() - z);
    }

    private void straight(Kind kind, double x, double z, double way, double feed) {
        length += way;
        add(kind, x, z, way / feed);
    }

    /** Once around, but where so little is to go around that it is nothing as it is written. */
    private void around(double x, double z, double way) {
        if (milling.rotary()) {
            turned += 2 * Math.PI;
            add(Kind.TURN, x, z, Math.max(way / milling.feed(), milling.quickestTurn()));
        } else if (x > noWidth) {
            add(Kind.CIRCLE, x, z, way / milling.feed());
        } else {
            return;
        }
        rings++;
        length += way;
    }

    private void add(Kind kind, double x, double z, double time) {
        minutes += time;
        moves.add(new PathMove(pass, radius, kind, x, z, turned, time));
    }
}
