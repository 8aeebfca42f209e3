package org.orbwright.band;

import java.util.Arrays;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegrator;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegratorFactory;
import org.orbwright.design.Panel;
import org.orbwright.design.Piece;

/**
 * The volume of a segment's wood by quadrature from its definition: over a point of the plan inside the segment's
 * outline there is wood from the hollow or the seam, whichever is higher, up to the outer face or the sphere, whichever
 * is lower. Rays from the tip are integrated between the places where one of these takes over from another.
 */
final class WoodQuadrature {
    private static final GaussIntegratorFactory GAUSS = new GaussIntegratorFactory();
    private static final int SLICES = 1500;
    private static final double[] NODES = new double[3];
    private static final double[] WEIGHTS = new double[3];

    static {
        GaussIntegrator unit = GAUSS.legendre(NODES.length, 0, 1);
        for (int i = 0; i < NODES.length; i++) {
            NODES[i] = unit.getPoint(i);
            WEIGHTS[i] = unit.getWeight(i);
        }
    }

    private final double base;
    private final double left;
    private final double right;
    private final double joint;
    private final double face;
    private final double inner;
    private final double radius;

    /** A segment; an infinite radius leaves it as it is before turning. */
    WoodQuadrature(Panel panel, Piece piece, double thickness, double radius) {
        this.base = piece.base();
        this.left = piece.left();
        this.right = piece.right();
        this.joint = panel.jointDistance();
        this.face = panel.faceDistance();
        this.inner = face - thickness;
        this.radius = radius;
    }

    /** What is added up over the plan: a function of the place on it and of the wood's lower and upper end there. */
    interface Column {
        double of(double x, double y, double bottom, double top);
    }

    /** Volume where {@code x cos d + y sin d} is between two offsets. */
    double between(double low, double high, double angle) {
        return between(low, high, angle, (x, y, bottom, top) -> top - bottom);
    }

    /** The sum over the columns of wood where {@code x cos d + y sin d} is between two offsets. */
    double between(double low, double high, double angle, Column column) {
        double from = Math.atan(-left / base);
        double step = (Math.atan(right / base) - from) / SLICES;
        double sum = 0;
        for (int slice = 0; slice < SLICES; slice++) {
            for (int i = 0; i < NODES.length; i++) {
                double direction = from + (slice + NODES[i]) * step;
                sum += WEIGHTS[i] * step * ray(direction, Math.cos(direction - angle), low, high, column);
            }
        }
        return sum;
    }

    private double ray(double direction, double along, double low, double high, Column column) {
        double cos = Math.cos(direction);
        double end = Math.min(base / cos, radius);
        double rise = joint * cos / base;
        double seamOnSphere = radius / Math.hypot(1, rise);
        double flat = radius > face ? Math.sqrt(radius * radius - face * face) : 0;
        double hollowOnSphere = radius > inner ? Math.sqrt(radius * radius - inner * inner) : 0;
        double[] breaks = {
            0, end, inner / rise, face / rise, seamOnSphere, flat, hollowOnSphere, low / along, high / along
        };
        for (int i = 0; i < breaks.length; i++) {
            breaks[i] = Double.isFinite(breaks[i]) ? Math.max(0, Math.min(end, breaks[i])) : end;
        }
        Arrays.sort(breaks);
        double sum = 0;
        for (int i = 0; i + 1 < breaks.length; i++) {
            double middle = (breaks[i] + breaks[i + 1]) / 2;
            boolean inBand = middle * along > low && middle * along < high;
            if (inBand && breaks[i + 1] - breaks[i] > 1e-9 && top(middle) > bottom(middle, rise)) {
                sum += GAUSS.legendre(10, breaks[i], breaks[i + 1])
                        .integrate(r -> r * column.of(r * cos, r * Math.sin(direction), bottom(r, rise), top(r)));
            }
        }
        return sum;
    }

    private double top(double r) {
        double sphere = Double.isInfinite(radius) ? radius : Math.sqrt(Math.max(0, radius * radius - r * r));
        return Math.min(face, sphere);
    }

    private double bottom(double r, double rise) {
        return Math.max(inner, rise * r);
    }
}
