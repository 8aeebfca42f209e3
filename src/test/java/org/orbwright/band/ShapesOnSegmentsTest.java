package org.orbwright.band;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.orbwright.source.Kind.HAND;
import static org.orbwright.source.Kind.INVARIANT;
import static org.orbwright.source.Kind.ORACLE;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.orbwright.source.Source;

/** Discs and polygons on a segment's surface, with and without a band line, against quadrature of the definition. */
@Source(INVARIANT)
class ShapesOnSegmentsTest {
    /**
     * Of the whole segment: where one boundary takes over within one look of the quadrature, that is what it misses.
     */
    private static final double ACCURACY = 1e-8;

    /** A segment of a dodecahedron of 180 mm across flats with a sphere of 180 mm. */
    private static final SurfaceOracle DODECAHEDRON =
            new SurfaceOracle(90, 90, 90 * 0.618033988749895, 90 * 0.449027976579585, 90 * 0.449027976579585, 90);

    @Property(tries = 500)
    @Source(value = ORACLE, text = "quadrature of the definition in polar coordinates, ShapeQuadrature")
    void discAgreesWithQuadrature(
            @ForAll("segments") SurfaceOracle segment,
            @ForAll @DoubleRange(min = 0.05, max = 1.6) double size,
            @ForAll @DoubleRange(min = -1, max = 1) double offset,
            @ForAll @DoubleRange(min = -180, max = 180) double bandAngle) {
        SegmentSurface surface = surface(segment);
        double disc = size * segment.base();
        BandLine line = BandLine.of(offset * segment.base(), Math.toRadians(bandAngle));
        assertAreas(segment, List.of(), disc, surface.within(disc), surface);
        assertAreas(segment, List.of(line), disc, surface.within(disc, line), surface);
    }

    @Property(tries = 300)
    @Source(value = ORACLE, text = "quadrature of the definition in polar coordinates, ShapeQuadrature")
    void polygonAgreesWithQuadrature(
            @ForAll("segments") SurfaceOracle segment,
            @ForAll @IntRange(min = 3, max = 12) int sides,
            @ForAll @DoubleRange(min = 0.05, max = 1.2) double size,
            @ForAll @DoubleRange(min = -180, max = 180) double turn,
            @ForAll @DoubleRange(min = -1, max = 1) double offset,
            @ForAll @DoubleRange(min = -180, max = 180) double bandAngle) {
        SegmentSurface surface = surface(segment);
        List<BandLine> polygon = polygon(sides, size * segment.base(), turn);
        BandLine line = BandLine.of(offset * segment.base(), Math.toRadians(bandAngle));
        List<BandLine> both = new ArrayList<>(polygon);
        both.add(line);
        assertAreas(segment, polygon, Double.POSITIVE_INFINITY, surface.within(polygon), surface);
        assertAreas(segment, both, Double.POSITIVE_INFINITY, surface.within(polygon, line), surface);
    }

    @Property(tries = 200)
    void shapeIsPartedByALineWithoutLoss(
            @ForAll("segments") SurfaceOracle segment,
            @ForAll @IntRange(min = 3, max = 24) int sides,
            @ForAll @DoubleRange(min = 0.05, max = 1.2) double size,
            @ForAll @DoubleRange(min = -1, max = 1) double offset,
            @ForAll @DoubleRange(min = -180, max = 180) double bandAngle) {
        SegmentSurface surface = surface(segment);
        double whole = surface.whole().visible();
        BandLine line = BandLine.of(offset * segment.base(), Math.toRadians(bandAngle));
        BandLine other = new BandLine(-line.offset(), -line.cos(), -line.sin());
        double disc = size * segment.base();
        assertEquals(
                surface.within(disc).visible(),
                surface.within(disc, line).visible()
                        + surface.within(disc, other).visible(),
                1e-12 * whole);
        List<BandLine> polygon = polygon(sides, disc, 0);
        assertEquals(
                surface.within(polygon).visible(),
                surface.within(polygon, line).visible()
                        + surface.within(polygon, other).visible(),
                1e-12 * whole);
    }

    @Property(tries = 200)
    void discBeyondTheSegmentCoversAllOfIt(
            @ForAll("segments") SurfaceOracle segment,
            @ForAll @DoubleRange(min = 1, max = 3) double beyond,
            @ForAll @DoubleRange(min = -1, max = 1) double offset) {
        SegmentSurface surface = surface(segment);
        double far = beyond * Math.hypot(segment.base(), Math.max(segment.left(), segment.right()));
        double whole = surface.whole().visible();
        BandLine line = BandLine.of(offset * segment.base(), 0.3);
        assertEquals(whole, surface.within(far).visible(), 1e-12 * whole);
        assertEquals(surface.below(line).visible(), surface.within(far, line).visible(), 1e-12 * whole);
    }

    @Test
    @DisplayName("a disc inside the segment takes its sector of the cap, phi R (R - sqrt(R^2 - r^2))")
    @Source(value = HAND, text = "Archimedes: a cap of the height k has the area 2 pi R k")
    void discInsideTheSegmentIsASectorOfACap() {
        double angle = 2 * Math.PI / 5;
        double expected = angle * 90 * (90 - Math.sqrt(90 * 90 - 20 * 20));
        assertEquals(expected, surface(DODECAHEDRON).within(20).visible(), 1e-12 * expected);
        assertEquals(angle * 200, surface(DODECAHEDRON).within(20).plan(), 1e-10);
    }

    @Test
    @Source(value = HAND, text = "Archimedes: a cap of the height k has the area 2 pi R k")
    void discThatJustTouchesTheSeamIsStillASector() {
        // The sphere ends at x = R a / rho; a / rho = 0.525731 for a dodecahedron.
        double touch = 90 * 0.5257311121191336;
        double expected = 2 * Math.PI / 5 * 90 * (90 - Math.sqrt(90 * 90 - touch * touch));
        assertEquals(expected, surface(DODECAHEDRON).within(touch).visible(), 1e-12 * expected);
    }

    @Test
    void polygonWhoseSidesLieOnTheLinesOfTheBandsIsCutExactly() {
        SegmentSurface surface = surface(DODECAHEDRON);
        List<BandLine> polygon = polygon(5, 30, 0);
        BandLine side = BandLine.of(30, 0);
        double whole = surface.within(polygon).visible();
        assertEquals(whole, surface.within(polygon, side).visible(), 1e-12 * whole);
        assertEquals(surface.below(side).visible(), whole, 1e-12 * whole);
    }

    @Test
    void lineThroughTheCentreHalvesASymmetricShape() {
        SegmentSurface surface = surface(DODECAHEDRON);
        BandLine axis = BandLine.of(0, Math.PI / 2);
        for (int sides : new int[] {3, 4, 5, 6, 24}) {
            List<BandLine> polygon = polygon(sides, 35, 0);
            assertEquals(
                    surface.within(polygon).visible() / 2,
                    surface.within(polygon, axis).visible(),
                    1e-10,
                    () -> sides + " sides");
        }
        assertEquals(surface.within(35).visible() / 2, surface.within(35, axis).visible(), 1e-10);
    }

    /** Spheres from well below the face to the seam, which leaves flats, with and without a land. */
    @Provide
    Arbitrary<SurfaceOracle> segments() {
        return Combinators.combine(
                        Arbitraries.doubles().between(0.3, 1.5),
                        Arbitraries.doubles().between(0.15, 1.5),
                        Arbitraries.doubles().between(0.15, 1.5),
                        Arbitraries.of(0.0, 0.0, 0.1, 0.6),
                        Arbitraries.doubles().between(0.6, 1))
                .as((base, left, right, land, part) -> {
                    double largest = Math.max(100 * (1 + land), 100 * Math.hypot(1, base));
                    return new SurfaceOracle(
                            100, 100 * (1 + land), 100 * base, 100 * base * left, 100 * base * right, part * largest);
                });
    }

    private static void assertAreas(
            SurfaceOracle segment, List<BandLine> lines, double disc, Area actual, SegmentSurface surface) {
        SurfaceOracle.Measured expected = new ShapeQuadrature(segment, lines, disc).measured();
        double tolerance = ACCURACY * surface.whole().visible();
        assertEquals(expected.visible(), actual.visible(), tolerance, "visible");
        assertEquals(expected.plan(), actual.plan(), tolerance, "plan");
        assertEquals(expected.flat(), actual.flat(), tolerance, "flat");
    }

    private static List<BandLine> polygon(int sides, double inner, double turn) {
        List<BandLine> lines = new ArrayList<>();
        for (int i = 0; i < sides; i++) {
            lines.add(BandLine.of(inner, Math.toRadians(turn) + 2 * Math.PI * i / sides));
        }
        return lines;
    }

    private static SegmentSurface surface(SurfaceOracle s) {
        return new SegmentSurface(s.joint(), s.face(), s.base(), s.left(), s.right(), s.radius());
    }
}
