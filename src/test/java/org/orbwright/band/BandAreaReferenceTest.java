package org.orbwright.band;

import static org.orbwright.band.Agreement.assertArea;
import static org.orbwright.source.Kind.REFERENCE;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.aggregator.ArgumentsAccessor;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.orbwright.source.Source;

/** Areas below a band line against 60 cases by arbitrary-precision quadrature by an independent program. */
@DisplayName("60 cases by arbitrary-precision quadrature by an independent program")
@Source(value = REFERENCE, text = "mpmath 1.3, 30 digits: band-areas.csv, nested Gauss-Legendre quadrature")
class BandAreaReferenceTest {

    @ParameterizedTest(name = "case {0}")
    @CsvFileSource(resources = "band-areas.csv", useHeadersInDisplayName = true)
    void areaBelowABandLineAgrees(ArgumentsAccessor row) {
        SegmentSurface surface = surface(row);
        double area = surface.below(line(row)).visible();
        assertArea(row.getDouble(8), area, surface.whole().visible(), "below");
    }

    @ParameterizedTest(name = "case {0}")
    @CsvFileSource(resources = "band-areas.csv", useHeadersInDisplayName = true)
    @DisplayName("the oracle of the other tests agrees too")
    void oracleAgrees(ArgumentsAccessor row) {
        SurfaceOracle oracle = new SurfaceOracle(
                row.getDouble(1),
                row.getDouble(1),
                row.getDouble(2),
                row.getDouble(3),
                row.getDouble(4),
                row.getDouble(5));
        assertArea(
                row.getDouble(8),
                oracle.below(line(row)).visible(),
                oracle.whole().visible(),
                "below");
    }

    private static SegmentSurface surface(ArgumentsAccessor row) {
        double joint = row.getDouble(1);
        return new SegmentSurface(joint, joint, row.getDouble(2), row.getDouble(3), row.getDouble(4), row.getDouble(5));
    }

    private static BandLine line(ArgumentsAccessor row) {
        return BandLine.of(row.getDouble(7), Math.toRadians(row.getDouble(6)));
    }
}
