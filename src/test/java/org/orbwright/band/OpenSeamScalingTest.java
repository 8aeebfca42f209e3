package org.orbwright.band;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.orbwright.source.Kind.INVARIANT;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.orbwright.fixture.Trials;
import org.orbwright.source.Source;

@DisplayName("where a land leaves seams open, a band's area grows with the square of the size, whatever the size is")
@Source(INVARIANT)
class OpenSeamScalingTest {
    private static final double[] OFFSETS = {5, 20, 35, 44, 47};

    /** The sphere reaches 0.4 % beyond the seams, so that bands end at the outline near the middle of the edge. */
    private static SegmentSurface surface(double size) {
        double radius = 1.004 * Math.hypot(50 * size, 80 * size);
        return new SegmentSurface(80 * size, 88 * size, 50 * size, 40 * size, 30 * size, radius);
    }

    @Test
    void tiltedBandsAtTwoThousandSizes() {
        SegmentSurface one = surface(1);
        for (int i = 0; i < Trials.of(2000); i++) {
            double size = 1 + i * 0.00137;
            SegmentSurface other = surface(size);
            for (double offset : OFFSETS) {
                double expected =
                        one.below(BandLine.of(offset, Math.toRadians(17))).visible();
                double area = other.below(BandLine.of(offset * size, Math.toRadians(17)))
                        .visible();
                assertEquals(expected, area / (size * size), 1e-10 * expected, "size " + size + ", line at " + offset);
            }
        }
    }
}
