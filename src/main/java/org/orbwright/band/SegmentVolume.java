package org.orbwright.band;

import org.orbwright.design.Panel;
import org.orbwright.design.Piece;

/**
 * The wood of one segment, in the glued-up solid or in the finished sphere, in closed form.
 *
 * <p>By the divergence theorem with the solid's centre as origin, three times the volume is the sum over the wood's
 * surfaces of area times distance of the surface from the centre. The seams and the joints between segments pass
 * through the centre or contain the panel's normal through it and drop out; what remains are the sphere, the outer
 * face, the hollow, the land, and the cut along the band line. It holds as long as the sphere does not break through to
 * the hollow.
 */
public final class SegmentVolume {
    private final double joint;
    private final double face;
    private final double inner;
    private final FlatSegment outline;
    /** The turned surface, or null for the solid before turning. */
    private final SegmentSurface surface;

    private SegmentVolume(Panel panel, Piece piece, double thickness, SegmentSurface surface) {
        this.joint = panel.jointDistance();
        this.face = panel.faceDistance();
        this.inner = face - thickness;
        this.outline = new FlatSegment(piece.base(), piece.left(), piece.right());
        this.surface = surface;
    }

    /** A segment of the glued-up solid, with its outer face still flat. */
    public static SegmentVolume ofSolid(Panel panel, Piece piece, double thickness) {
        return new SegmentVolume(panel, piece, thickness, null);
    }

    /** A segment of the finished sphere. */
    public static SegmentVolume ofSphere(Panel panel, Piece piece, double thickness, double radius) {
        return new SegmentVolume(panel, piece, thickness, SegmentSurface.of(panel, piece, radius));
    }

    /** Volume of the whole segment. */
    public double whole() {
        double outside = surface == null ? face * outline.area() : outside(surface.whole());
        double hollow = inner * square(inner / joint) * outline.area();
        return (outside - hollow + outline.base() * land(-outline.left(), outline.right())) / 3;
    }

    /** Volume below a band line. */
    public double below(BandLine line) {
        double outside = surface == null ? face * outline.areaBelow(line) : outside(surface.below(line));
        double shrink = inner / joint;
        BandLine innerLine = new BandLine(line.offset() / shrink, line.cos(), line.sin());
        double hollow = inner * square(shrink) * outline.areaBelow(innerLine);
        return (outside - hollow + outline.base() * landBelow(line) + line.offset() * cut(line)) / 3;
    }

    private double outside(Area area) {
        return surface.radius() * (area.visible() - area.flat()) + face * area.flat();
    }

    private double landBelow(BandLine line) {
        double reach = line.offset() - outline.base() * line.cos();
        if (line.sin() == 0) {
            return reach >= 0 ? land(-outline.left(), outline.right()) : 0;
        }
        double end = reach / line.sin();
        return line.sin() > 0
                ? land(-outline.left(), Math.min(end, outline.right()))
                : land(Math.max(end, -outline.left()), outline.right());
    }

    private double land(double from, double to) {
        double roundSquared = roundSquared(outline.base());
        return new CutFace(face, roundSquared, joint, 0, joint).area(from, to);
    }

    private double cut(BandLine line) {
        double from = Double.NEGATIVE_INFINITY;
        double to = Double.POSITIVE_INFINITY;
        double x = line.offset() * line.cos();
        double y = line.offset() * line.sin();
        double[][] limits = {
            {x - outline.base(), -line.sin()},
            {y - x * outline.right() / outline.base(), line.cos() + line.sin() * outline.right() / outline.base()},
            {-y - x * outline.left() / outline.base(), -line.cos() + line.sin() * outline.left() / outline.base()}
        };
        for (double[] limit : limits) {
            double end = -limit[0] / limit[1];
            if (limit[1] > 0) {
                to = Math.min(to, end);
            } else if (limit[1] < 0) {
                from = Math.max(from, end);
            } else if (limit[0] > 0) {
                return 0;
            }
        }
        double rise = joint / outline.base();
        return new CutFace(face, roundSquared(line.offset()), inner, -rise * line.sin(), rise * x).area(from, to);
    }

    private double roundSquared(double offset) {
        return surface == null ? Double.POSITIVE_INFINITY : (surface.radius() - offset) * (surface.radius() + offset);
    }

    private static double square(double x) {
        return x * x;
    }
}
