package org.orbwright.band;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.orbwright.source.Kind.LIBRARY;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.apache.commons.geometry.euclidean.twod.ConvexArea;
import org.apache.commons.geometry.euclidean.twod.Line;
import org.apache.commons.geometry.euclidean.twod.Lines;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.apache.commons.numbers.core.Precision;
import org.orbwright.source.Source;

/** Polygons that end above the seam, seen square to the panel, against the convex areas of Commons Geometry. */
@Source(value = LIBRARY, text = "Apache Commons Geometry 1.0, ConvexArea")
class ShapesOnPlanTest {
    private static final Precision.DoubleEquivalence EXACT = Precision.doubleEquivalenceOfEpsilon(1e-12);
    private static final double BASE = 60;
    private static final double RADIUS = 100;

    @Property(tries = 300)
    void planOfAPolygonIsAConvexArea(
            @ForAll @DoubleRange(min = 10, max = 70) double left,
            @ForAll @DoubleRange(min = 10, max = 70) double right,
            @ForAll @IntRange(min = 4, max = 24) int sides,
            @ForAll @DoubleRange(min = 5, max = 30) double inner,
            @ForAll @DoubleRange(min = -180, max = 180) double turn,
            @ForAll @DoubleRange(min = -40, max = 40) double offset,
            @ForAll @DoubleRange(min = -180, max = 180) double bandAngle) {
        // The farthest corner is 30 sqrt(2) = 42.4 from the centre, the seam 100 * 60 / hypot(60, 100) = 51.4.
        SegmentSurface surface = new SegmentSurface(100, 100, BASE, left, right, RADIUS);
        List<BandLine> polygon = new ArrayList<>();
        for (int i = 0; i < sides; i++) {
            polygon.add(BandLine.of(inner, Math.toRadians(turn) + 2 * Math.PI * i / sides));
        }
        BandLine line = BandLine.of(offset, Math.toRadians(bandAngle));
        ConvexArea whole = cut(triangle(left, right), polygon);
        assertEquals(whole.getSize(), surface.within(polygon).plan(), 1e-9);
        ConvexArea part = cut(whole, List.of(line));
        assertEquals(
                part == null ? 0 : part.getSize(), surface.within(polygon, line).plan(), 1e-9);
    }

    private static ConvexArea triangle(double left, double right) {
        return ConvexArea.convexPolygonFromVertices(
                List.of(Vector2D.ZERO, Vector2D.of(BASE, -left), Vector2D.of(BASE, right)), EXACT);
    }

    private static ConvexArea cut(ConvexArea area, List<BandLine> lines) {
        ConvexArea left = area;
        for (BandLine line : lines) {
            left = left == null ? null : left.split(bound(line)).getMinus();
        }
        return left;
    }

    /** A line with what is below it on its left, which is its minus side. */
    private static Line bound(BandLine line) {
        Vector2D normal = Vector2D.of(line.cos(), line.sin());
        return Lines.fromPointAndDirection(normal.multiply(line.offset()), Vector2D.of(-line.sin(), line.cos()), EXACT);
    }
}
