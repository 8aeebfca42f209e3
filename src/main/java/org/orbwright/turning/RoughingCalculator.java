package org.orbwright.turning;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.orbwright.band.Area;
import org.orbwright.band.SegmentSurface;
import org.orbwright.design.Design;
import org.orbwright.design.ImpossibleDesignException;
import org.orbwright.design.Panel;
import org.orbwright.design.Piece;
import org.orbwright.design.Violation;
import org.orbwright.turning.Roughing.DepthStation;
import org.orbwright.turning.Roughing.PolygonProfile;
import org.orbwright.turning.Roughing.ProfileCorner;
import org.orbwright.turning.Roughing.RingGauge;
import org.orbwright.turning.Roughing.RoughPass;
import org.orbwright.turning.TurningRequest.RoughingRequest;

/** Roughs a solid out by hand; lengths in millimetres. */
final class RoughingCalculator {
    private static final double[] USUAL_RINGS = {0.25, 0.5, 0.75};
    private static final int MOST_PASSES = 1000;
    /** In millimetres. */
    private static final double SAME_PLACE = 1e-9;

    private static final int[] SIDES = {4, 8, 16, 32};

    private final Design design;
    private final double radius;
    private final RoughingRequest request;
    private final double reachedHead;
    private final double reachedTail;

    private RoughingCalculator(RoughingRequest request, Design design, double radius, Holding holding) {
        this.design = design;
        this.radius = radius;
        this.reachedHead = radius * Math.sin(holding.head().reachedLatitude());
        this.reachedTail = radius * Math.sin(holding.tail().reachedLatitude());
        this.request = request;
    }

    /**
     * Plans the roughing.
     *
     * @param request the wishes
     * @param radius of the sphere as it leaves the tool
     * @param holding what the tool reaches between the discs
     * @throws ImpossibleDesignException if a ring is as wide as the sphere, or there would be more passes than are
     *     answered
     */
    static Roughing plan(RoughingRequest request, Design design, double radius, Holding holding) {
        return new RoughingCalculator(request, design, radius, holding).plan();
    }

    private Roughing plan() {
        List<RoughPass> passes =
                request.passDepth() == null ? List.of() : passes(design.unit().toMillimetres(request.passDepth()));
        return new Roughing(
                2 * radius,
                reachedHead,
                reachedTail,
                IntStream.of(SIDES).mapToObj(this::profile).toList(),
                depths(request.stations()),
                gauges(),
                passes,
                first(passes.stream().filter(pass -> pass.atEdges() > 0)),
                first(passes.stream().filter(pass -> pass.atFaces() > 0)));
    }

    private static Integer first(Stream<RoughPass> passes) {
        return passes.findFirst().map(RoughPass::pass).orElse(null);
    }

    private PolygonProfile profile(int sides) {
        double half = radius * Math.tan(Math.PI / sides);
        double halfBefore = radius * Math.tan(2 * Math.PI / sides);
        boolean cylinder = sides == SIDES[0];
        List<ProfileCorner> corners = new ArrayList<>();
        for (int i = 0; i < sides / 4; i++) {
            double angle = (2 * i + 1) * Math.PI / sides;
            double far = radius / Math.cos(Math.PI / sides);
            double at = far * Math.sin(angle);
            corners.add(new ProfileCorner(at, 2 * far * Math.cos(angle), afterReversing(at)));
        }
        return new PolygonProfile(
                sides,
                2 * half,
                half,
                cylinder ? null : Double.valueOf(halfBefore - half),
                cylinder ? null : Double.valueOf(above(sides / 2)),
                above(sides),
                corners);
    }

    /** What the corners of a polygon stand above the circle within. */
    private double above(int sides) {
        return radius * (1 / Math.cos(Math.PI / sides) - 1);
    }

    private List<DepthStation> depths(int count) {
        return IntStream.range(0, count)
                .mapToDouble(i -> radius * i / (count - 1))
                .mapToObj(at -> {
                    double there = Math.sqrt(Math.max(0, (radius - at) * (radius + at)));
                    return new DepthStation(at, 2 * there, radius - there, afterReversing(at));
                })
                .toList();
    }

    /** Whether a place lies beyond the tool's reach at one of the ends. */
    private boolean afterReversing(double at) {
        return at > Math.min(reachedHead, reachedTail) + SAME_PLACE;
    }

    private List<RingGauge> gauges() {
        List<RingGauge> gauges = new ArrayList<>();
        if (request.rings() == null) {
            for (double share : USUAL_RINGS) {
                gauges.add(gauge(2 * share * radius));
            }
        }
        for (int i = 0; request.rings() != null && i < request.rings().size(); i++) {
            double chord = design.unit().toMillimetres(request.rings().get(i));
            if (chord >= 2 * radius) {
                throw new ImpossibleDesignException(List.of(new Violation(
                        "/turning/roughing/rings/" + i,
                        "RING_TOO_WIDE",
                        "A ring of " + design.say(chord) + " passes over a sphere of " + design.say(2 * radius) + ".",
                        String.valueOf(request.rings().get(i)),
                        "a diameter below " + design.sayAtMost(2 * radius))));
            }
            gauges.add(gauge(chord));
        }
        return gauges;
    }

    private RingGauge gauge(double chord) {
        double height = Math.sqrt((radius - chord / 2) * (radius + chord / 2));
        double sagitta = chord * chord / 4 / (radius + height);
        return new RingGauge(chord, sagitta, sagitta / height / 2);
    }

    private List<RoughPass> passes(double depth) {
        double corners = Milling.corners(design);
        double count = Math.ceil((corners - radius) / depth - 1e-9);
        if (count > MOST_PASSES) {
            throw new ImpossibleDesignException(List.of(new Violation(
                    "/turning/roughing/passDepth",
                    "TOO_MANY_PASSES",
                    "From the corners to the sphere " + design.say(corners - radius)
                            + " are turned away, which are more" + " than " + MOST_PASSES + " passes of this depth.",
                    String.valueOf(request.passDepth()),
                    "at least " + design.sayAtLeast((corners - radius) / MOST_PASSES))));
        }
        double edges = edgeRadius();
        double faces = design.smallestFaceDistance();
        List<RoughPass> passes = new ArrayList<>();
        double before = corners;
        for (int pass = 1; pass <= count; pass++) {
            double after = Math.max(radius, corners - pass * depth);
            passes.add(new RoughPass(
                    pass,
                    2 * after,
                    before - after,
                    taken(edges, before, after),
                    taken(faces, before, after),
                    inWood(after)));
            before = after;
        }
        return passes;
    }

    /** From the centre to the middle of the farthest edge, at the outer face. */
    private double edgeRadius() {
        return design.panels().stream()
                .mapToDouble(panel -> Math.hypot(panel.faceDistance(), panel.baseDistance()))
                .max()
                .orElse(0);
    }

    private static double taken(double from, double before, double after) {
        return Math.max(0, Math.min(from, before) - after);
    }

    /** Share of a sphere that lies within the solid. */
    private double inWood(double sphere) {
        double area = 0;
        for (Panel panel : design.panels()) {
            for (Piece piece : panel.pieces()) {
                Area surface = SegmentSurface.of(panel, piece, sphere).whole();
                area += piece.perSphere() * (surface.visible() - surface.flat());
            }
        }
        return Math.max(0, Math.min(1, area / (4 * Math.PI * sphere * sphere)));
    }
}
