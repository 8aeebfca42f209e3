package org.orbwright.band;

import java.util.Locale;
import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.integration.IterativeLegendreGaussIntegrator;
import org.apache.commons.math3.analysis.integration.UnivariateIntegrator;
import org.orbwright.bench.BenchmarkDesigns;
import org.orbwright.design.BandSet;
import org.orbwright.design.Design;
import org.orbwright.design.Panel;
import org.orbwright.design.Piece;

/**
 * The outermost band of a segment on the finished sphere, measured in closed form and by adaptive quadrature from its
 * definition. The design has bands along the base, no land, and a sphere that reaches neither seams nor faces.
 */
final class RimBand {
    /** Relative error that the quadratures are asked for; the closed form has less. */
    static final double ALONG_RAYS = 1e-12;

    static final double OVER_PLAN = 1e-9;

    private static final int MOST_EVALUATIONS = 10_000_000;

    private final Panel panel;
    private final Piece piece;
    private final double thickness;
    private final double radius;
    private final BandLine inner;
    private final double joint;
    private final double base;
    private final double half;

    private RimBand(Design design) {
        panel = design.panels().get(0);
        piece = panel.pieces().get(0);
        thickness = design.thickness();
        radius = design.sphereRadius();
        inner = BandStack.of(panel.lamination(), piece, BandSet.UPRIGHT)
                .layers()
                .get(0)
                .inner();
        joint = panel.jointDistance();
        base = piece.base();
        half = piece.right();
        if (piece.left() != half
                || inner.sin() != 0
                || joint != panel.faceDistance()
                || radius > joint
                || inner.offset() >= seam(0)) {
            throw new IllegalArgumentException("The design has another shape than is integrated here.");
        }
    }

    static RimBand of(String design) {
        return new RimBand(Design.of(BenchmarkDesigns.read(design).design()));
    }

    /** Area on the sphere in closed form, nothing prepared. */
    double closedForm() {
        SegmentSurface surface = SegmentSurface.of(panel, piece, radius);
        return surface.whole().visible() - surface.below(inner).visible();
    }

    /** The same, swept by rays around the panel's centre, from where the band line leaves the seam on. */
    double alongRays() {
        double corner = half / base;
        double leaves = Math.min(corner, lineMeetsSeam());
        UnivariateIntegrator integrator = new IterativeLegendreGaussIntegrator(5, ALONG_RAYS, 0);
        UnivariateFunction strip = angle -> {
            double slope = Math.tan(angle);
            double line = inner.offset() * Math.hypot(1, slope);
            return radius * (height(line) - height(seam(slope)));
        };
        return 2 * integrator.integrate(MOST_EVALUATIONS, strip, 0, Math.atan(leaves));
    }

    /** The same as an integral over the plan, whose inner integral is adaptive too. */
    double overPlan() {
        double end = seam(0);
        UnivariateIntegrator outer = new IterativeLegendreGaussIntegrator(5, OVER_PLAN, 0);
        return 2 * outer.integrate(MOST_EVALUATIONS, this::strip, inner.offset(), end);
    }

    private double strip(double x) {
        double seamHalf = Math.sqrt(Math.max(0, radius * radius - x * x * (1 + joint / base * (joint / base))));
        double to = Math.min(x * half / base, seamHalf);
        if (to <= 0) {
            return 0;
        }
        UnivariateIntegrator along = new IterativeLegendreGaussIntegrator(5, OVER_PLAN, 0);
        return along.integrate(MOST_EVALUATIONS, y -> radius / height(Math.hypot(x, y)), 0, to);
    }

    private double height(double reach) {
        return Math.sqrt((radius - reach) * (radius + reach));
    }

    private double seam(double slope) {
        return radius / Math.hypot(1, joint / base / Math.sqrt(1 + slope * slope));
    }

    /** {@code y / x} where the seam crosses the band line: from {@code x^2 (1 + (g/a)^2) + y^2 = R^2}. */
    private double lineMeetsSeam() {
        double x = inner.offset();
        return Math.sqrt(radius * radius - x * x * (1 + joint / base * (joint / base))) / x;
    }

    /** Volume on the finished sphere in closed form, nothing prepared. */
    double volume() {
        SegmentVolume wood = SegmentVolume.ofSphere(panel, piece, thickness, radius);
        return wood.whole() - wood.below(inner);
    }

    /** What a mesh needs to know of it, in millimetres, with its volume by the closed form. */
    public static void main(String... design) {
        RimBand band = of(design[0]);
        System.out.printf(
                Locale.ROOT,
                "{\"base\":%s,\"half\":%s,\"face\":%s,\"inner\":%s,\"radius\":%s,\"offset\":%s,\"volume\":%s}%n",
                band.base,
                band.half,
                band.joint,
                band.joint - band.thickness,
                band.radius,
                band.inner.offset(),
                band.volume());
    }
}
