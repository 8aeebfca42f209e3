package org.orbwright.band;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.orbwright.band.Wishes.rest;
import static org.orbwright.band.Wishes.upright;
import static org.orbwright.band.Wishes.wish;
import static org.orbwright.source.Kind.HAND;
import static org.orbwright.source.Kind.REFERENCE;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.aggregator.ArgumentsAccessor;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.orbwright.band.SolveRequest.Measure;
import org.orbwright.band.WidthSolution.SolvedBand;
import org.orbwright.fixture.Designs;
import org.orbwright.source.Source;

/** Widths that are looked for, against widths that were found without the service. */
class WidthSolverReferenceTest {
    private static SolvedBand rim(Designs designs, Measure measure, double value) {
        return upright(designs.bands(Designs.widths(1.0, null)).request(), wish(1, measure, value), rest(2))
                .solve()
                .bands()
                .get(0);
    }

    @ParameterizedTest(name = "{0}: {3} of a sphere of {2} mm takes a rim of {4} mm")
    @CsvFileSource(resources = "widths.csv", useHeadersInDisplayName = true)
    @Source(value = REFERENCE, text = "mpmath 1.3, 30 digits, src/test/python/answers.py: bisection over quadrature")
    void rimThatTakesUpAShareOfTheSphere(ArgumentsAccessor row) {
        Designs designs =
                Designs.of(row.getString(0)).acrossFlats(row.getDouble(1)).diameter(row.getDouble(2));
        SolvedBand rim = rim(designs, Measure.SHARE_OF_SPHERE, row.getDouble(3));
        assertEquals(row.getDouble(4), rim.width(), 1e-8);
        assertEquals(row.getDouble(3), rim.seen().get(0).shareOfSphere(), 1e-10);
    }

    @Test
    @DisplayName("cube 200, sphere 196: 10 mm are seen at the edge middle of a rim of 100 - 98 sin(45 deg - 10 / 98)")
    @Source(
            value = HAND,
            text = "the seam cuts the sphere at 45 degrees from the middle of the face; an arc is R times its angle")
    void rimThatShowsTenMillimetresAtTheEdgeMiddleOfACube() {
        double width = 100 - 98 * Math.sin(Math.PI / 4 - 10 / 98.0);
        assertEquals(
                width,
                rim(Designs.of("cube").diameter(196.0), Measure.EDGE_MIDDLE, 10).width(),
                1e-9);
    }

    @Test
    @DisplayName(
            "cube 200, sphere 196: 10 mm are seen at the corner of a rim of 100 - 98 sin(asin(1 / sqrt 3) - 10 / 98)")
    @Source(
            value = HAND,
            text = "the corner of a cube is seen from the centre at asin(1 / sqrt 3) over the plane of the bands")
    void rimThatShowsTenMillimetresAtTheCornerOfACube() {
        double width = 100 - 98 * Math.sin(Math.asin(1 / Math.sqrt(3)) - 10 / 98.0);
        assertEquals(
                width,
                rim(Designs.of("cube").diameter(196.0), Measure.CORNER, 10).width(),
                1e-9);
    }
}
