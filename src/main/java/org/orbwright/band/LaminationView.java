package org.orbwright.band;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.orbwright.band.SolveRequest.Measure;
import org.orbwright.band.VisibleWidths.Mark;
import org.orbwright.band.VisibleWidths.Way;
import org.orbwright.band.WidthSolution.Seen;
import org.orbwright.design.BandSet;
import org.orbwright.design.Design;
import org.orbwright.design.Panel;
import org.orbwright.design.Piece;
import org.orbwright.design.SphereKind;
import org.orbwright.design.SphereSet;

/**
 * What is seen of one panel's lamination, as curves over the depth from the blank's first edge. No curve ever falls,
 * and what is seen of a strip is the least difference of a curve between the strip's two edges. So each wish is a rule
 * about two cuts, upright or inverted.
 */
final class LaminationView {
    private final Design design;
    private final Panel panel;
    private final List<PieceOnSphere> parts = new ArrayList<>();
    private final double sphereArea;

    private record PieceOnSphere(Piece piece, SegmentSurface surface, double top, double cos, double sin) {}

    LaminationView(Design design, Panel panel) {
        this.design = design;
        this.panel = panel;
        double total = 0;
        for (Panel other : design.panels()) {
            for (Piece piece : other.pieces()) {
                SegmentSurface surface = SegmentSurface.of(other, piece, design.sphereRadius());
                total += piece.perSphere() * surface.whole().visible();
                if (other.equals(panel)) {
                    double angle = piece.angle(panel.lamination());
                    parts.add(new PieceOnSphere(piece, surface, piece.top(angle), Math.cos(angle), Math.sin(angle)));
                }
            }
        }
        this.sphereArea = total;
    }

    /** Width of the lamination, from its first edge to its last. */
    double width() {
        return panel.lamination().width();
    }

    /** The curves of a measure on the spheres of a set; a mixed sphere shows a width where it shows least of it. */
    List<DoubleUnaryOperator> curves(Measure measure, SphereSet set) {
        List<DoubleUnaryOperator> upright = upright(measure);
        if (set == SphereSet.UPRIGHT) {
            return upright;
        }
        List<DoubleUnaryOperator> inverted =
                upright.stream().map(this::turnedEndForEnd).toList();
        if (set == SphereSet.INVERTED) {
            return inverted;
        }
        double part = uprightPart();
        if (part == 0 || part == 1) {
            return part == 0 ? inverted : upright;
        }
        if (measure == Measure.SHARE_OF_SPHERE) {
            DoubleUnaryOperator one = upright.get(0);
            DoubleUnaryOperator other = inverted.get(0);
            return List.of(depth -> part * one.applyAsDouble(depth) + (1 - part) * other.applyAsDouble(depth));
        }
        List<DoubleUnaryOperator> both = new ArrayList<>(upright);
        both.addAll(inverted);
        return both;
    }

    /** What is seen of a strip between two depths on the spheres of a set. */
    Seen seen(SphereSet set, double from, double to) {
        return new Seen(
                set,
                shown(curves(Measure.EDGE_MIDDLE, set), from, to),
                shown(curves(Measure.CORNER, set), from, to),
                shown(curves(Measure.SHARE_OF_SPHERE, set), from, to));
    }

    /** What curves show between two depths. */
    static double shown(List<DoubleUnaryOperator> curves, double from, double to) {
        double least = Double.POSITIVE_INFINITY;
        for (DoubleUnaryOperator curve : curves) {
            least = Math.min(least, curve.applyAsDouble(to) - curve.applyAsDouble(from));
        }
        return Math.max(0, least);
    }

    private List<DoubleUnaryOperator> upright(Measure measure) {
        if (measure == Measure.SHARE_OF_SPHERE) {
            return List.of(this::shareBefore);
        }
        List<DoubleUnaryOperator> curves = new ArrayList<>();
        for (PieceOnSphere part : parts) {
            Piece piece = part.piece();
            if (measure == Measure.EDGE_MIDDLE) {
                curves.add(crossed(part, 0));
            } else {
                curves.add(crossed(part, piece.right() / piece.base()));
                if (!piece.symmetric() || part.sin() != 0) {
                    curves.add(crossed(part, -piece.left() / piece.base()));
                }
            }
        }
        return curves;
    }

    private DoubleUnaryOperator turnedEndForEnd(DoubleUnaryOperator curve) {
        return depth -> -curve.applyAsDouble(width() - depth);
    }

    /** The part of this face kind's panels that are upright on a mixed sphere. */
    private double uprightPart() {
        SphereKind mixed = design.spheres().stream()
                .filter(kind -> kind.set() == SphereSet.MIXED)
                .findFirst()
                .orElseThrow();
        return panel.lamination().sets() == 1
                ? 1
                : (double) mixed.panelsOf(design.solid(), panel.face(), BandSet.UPRIGHT)
                        / panel.kind().count();
    }

    /** Share of the sphere's whole surface that lies between the first edge and a depth. */
    private double shareBefore(double depth) {
        double area = 0;
        for (PieceOnSphere part : parts) {
            BandLine line = new BandLine(part.top() - depth, part.cos(), part.sin());
            SegmentSurface surface = part.surface();
            area += part.piece().perSphere()
                    * (surface.whole().visible() - surface.below(line).visible());
        }
        return area / sphereArea;
    }

    /** Minus the way along the sphere to a depth, on the way to a place on the base; see {@link VisibleWidths}. */
    private static DoubleUnaryOperator crossed(PieceOnSphere part, double slope) {
        Way way = Way.to(part.surface(), slope, part.cos(), part.sin());
        return depth -> -way.upTo(Mark.at(part.surface(), part.top() - depth));
    }
}
