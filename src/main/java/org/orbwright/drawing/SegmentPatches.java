package org.orbwright.drawing;

import java.util.ArrayList;
import java.util.List;
import org.orbwright.band.BandStack;
import org.orbwright.band.BandStack.Layer;
import org.orbwright.band.SegmentSurface;
import org.orbwright.design.BandSet;
import org.orbwright.design.Panel;
import org.orbwright.design.Piece;

/**
 * The bands of one segment as polygons on the panel, cut to the whole panel or to what is left of it on the sphere. The
 * set says which way round the bands lie.
 */
record SegmentPatches(Panel panel, Piece piece, BandSet set) {
    /** The bands of the set that the panel is made from where both sets are the same. */
    static SegmentPatches used(Panel panel, Piece piece, BandSet set) {
        return new SegmentPatches(panel, piece, panel.lamination().used(set));
    }

    /** One band and its outline. */
    record Patch(Layer layer, PlanPolygon polygon) {}

    /** The bands on the flat panel. */
    List<Patch> flat() {
        return of(new PlanPolygon(List.of(
                new Point(0, 0), new Point(piece.base(), -piece.left()), new Point(piece.base(), piece.right()))));
    }

    /** What is left of the bands on the sphere, seen square to the panel. */
    List<Patch> onSphere(double radius, double flattening) {
        List<Point> points = new ArrayList<>();
        points.add(new Point(0, 0));
        points.addAll(reach(radius, flattening));
        return of(new PlanPolygon(points));
    }

    /** The line beyond which the wood is turned away, from the left corner to the right one. */
    List<Point> reach(double radius, double flattening) {
        SegmentSurface surface = SegmentSurface.of(panel, piece, radius);
        double from = Math.atan2(-piece.left(), piece.base());
        double to = Math.atan2(piece.right(), piece.base());
        int steps = (int) Math.ceil((to - from) / Flattening.step(radius, flattening));
        List<Point> points = new ArrayList<>();
        for (int i = 0; i <= steps; i++) {
            double slope = Math.tan(from + (to - from) * i / steps);
            double x = surface.along(slope, 1, 0);
            points.add(new Point(x, slope * x));
        }
        return points;
    }

    /** The bands in an outline, such as that of the blank from which the segment is sawn. */
    List<Patch> of(PlanPolygon whole) {
        List<Patch> patches = new ArrayList<>();
        for (Layer layer : BandStack.of(panel.lamination(), piece, set).layers()) {
            PlanPolygon polygon = whole;
            if (!layer.outermost()) {
                polygon = polygon.below(
                        layer.outer().offset(),
                        layer.outer().cos(),
                        layer.outer().sin());
            }
            if (!layer.innermost()) {
                polygon = polygon.above(
                        layer.inner().offset(),
                        layer.inner().cos(),
                        layer.inner().sin());
            }
            if (!polygon.isEmpty()) {
                patches.add(new Patch(layer, polygon));
            }
        }
        return patches;
    }
}
