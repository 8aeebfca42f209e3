package org.orbwright.band;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegrator;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegratorFactory;

/**
 * The part of a segment's surface inside a disc and below lines, straight from the definition in polar coordinates of
 * the plan: along every ray the slant of the surface is summed from where the ray enters the region to where it leaves
 * it, and those sums are summed over the directions. Directions in which another boundary takes over are found by
 * looking, not by solving.
 */
final class ShapeQuadrature {
    private static final GaussIntegrator RULE = new GaussIntegratorFactory().legendre(24);
    private static final int LOOKS = 480;
    private static final int MOST_CHANGES = 8;
    private static final int HALVINGS = 60;
    private static final int MOST_REFINEMENTS = 16;
    /** Difference between a sum and its refinement that is let pass, in squares of the base distance. */
    private static final double SMALL = 1e-12;
    /** Two boundaries that coincide must not take turns by rounding: only one that is nearer by more takes over. */
    private static final double NEARER = 1 - 1e-12;

    private final SurfaceOracle surface;
    private final List<BandLine> lines;
    private final double disc;
    private final double flat;

    ShapeQuadrature(SurfaceOracle surface, List<BandLine> lines, double disc) {
        this.surface = surface;
        this.lines = lines;
        this.disc = disc;
        double square = (surface.radius() - surface.face()) * (surface.radius() + surface.face());
        this.flat = square > 0 && surface.radius() > surface.face() ? Math.sqrt(square) : 0;
    }

    /** Area on the finished surface, and on the plan. */
    SurfaceOracle.Measured measured() {
        double from = Math.atan(-surface.left() / surface.base());
        double to = Math.atan(surface.right() / surface.base());
        double visible = 0;
        double plan = 0;
        double flatPart = 0;
        double start = from;
        for (double stop : stops(from, to)) {
            visible += refined(angle -> ray(angle).visible, start, stop);
            plan += refined(angle -> ray(angle).plan, start, stop);
            flatPart += refined(angle -> ray(angle).flat, start, stop);
            start = stop;
        }
        return new SurfaceOracle.Measured(visible, flatPart, plan);
    }

    /**
     * One ray.
     *
     * @param ends which boundaries end it, as text
     */
    private record Ray(String ends, double visible, double plan, double flat) {}

    private Ray ray(double angle) {
        double low = 0;
        double high = surface.reach(Math.tan(angle));
        boolean outline = high * Math.cos(angle) > surface.base() * (1 - 1e-12);
        String lowEnd = "tip";
        String highEnd = outline ? "outline" : "seam";
        if (disc < high * NEARER) {
            high = disc;
            highEnd = "disc";
        }
        for (int i = 0; i < lines.size(); i++) {
            BandLine line = lines.get(i);
            double towards = line.cos() * Math.cos(angle) + line.sin() * Math.sin(angle);
            double at = line.offset() / towards;
            if (towards > 0 && at < high * NEARER) {
                high = at;
                highEnd = "line " + i;
            } else if (towards < 0 && at * NEARER > low) {
                low = at;
                lowEnd = "line " + i;
            }
        }
        if (high <= low) {
            return new Ray("nothing", 0, 0, 0);
        }
        double flatLow = Math.min(low, flat);
        double flatHigh = Math.min(high, flat);
        double onFlat = (flatHigh * flatHigh - flatLow * flatLow) / 2;
        double radius = surface.radius();
        double onSphere = high <= flat
                ? 0
                : integrate(r -> radius * r / Math.sqrt(radius * radius - r * r), Math.max(low, flat), high);
        return new Ray(
                lowEnd + (low < flat) + highEnd + (high < flat),
                onFlat + onSphere,
                (high * high - low * low) / 2,
                onFlat);
    }

    /** Where one kind of ray ends and the next one starts, and the end. */
    private List<Double> stops(double from, double to) {
        List<Double> stops = new ArrayList<>();
        double before = from;
        String kind = ray(from).ends();
        for (int i = 1; i <= LOOKS; i++) {
            double here = from + (to - from) * i / LOOKS;
            String next = ray(here).ends();
            // Several boundaries may take over one after another between two looks.
            for (int more = 0; more < MOST_CHANGES && !next.equals(kind); more++) {
                before = change(before, here, kind);
                stops.add(before);
                kind = ray(before).ends();
            }
            before = here;
            kind = next;
        }
        stops.add(to);
        return stops;
    }

    private double change(double before, double after, String kind) {
        double low = before;
        double high = after;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (low + high) / 2;
            boolean same = ray(middle).ends().equals(kind);
            low = same ? middle : low;
            high = same ? high : middle;
        }
        return high;
    }

    /** Halved until both halves agree with the whole: rays along a line close to the centre grow steeply. */
    private double refined(UnivariateFunction f, double from, double to) {
        return refined(f, from, to, integrate(f, from, to), MOST_REFINEMENTS);
    }

    private double refined(UnivariateFunction f, double from, double to, double whole, int left) {
        double middle = (from + to) / 2;
        double first = integrate(f, from, middle);
        double second = integrate(f, middle, to);
        double enough = SMALL * surface.base() * surface.base();
        if (left == 0 || Math.abs(first + second - whole) < enough) {
            return first + second;
        }
        return refined(f, from, middle, first, left - 1) + refined(f, middle, to, second, left - 1);
    }

    private static double integrate(UnivariateFunction f, double from, double to) {
        double half = (to - from) / 2;
        double middle = (to + from) / 2;
        return half * RULE.integrate(x -> f.value(middle + half * x));
    }
}
