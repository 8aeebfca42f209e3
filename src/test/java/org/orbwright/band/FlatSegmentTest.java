package org.orbwright.band;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.orbwright.source.Kind.HAND;
import static org.orbwright.source.Kind.INVARIANT;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.orbwright.source.Source;

@Source(value = HAND, text = "area of a triangle; the shoelace formula where it is cut askew")
class FlatSegmentTest {
    private static final FlatSegment SEGMENT = new FlatSegment(10, 4, 6);

    @Test
    @DisplayName("base 4 + 6, height 10: 50")
    void area() {
        assertEquals(50, SEGMENT.area());
    }

    @ParameterizedTest(name = "a line at {0} parallel to the base leaves {1} on the tip's side")
    @CsvSource({"-1, 0", "0, 0", "1, 0.5", "5, 12.5", "10, 50", "11, 50"})
    void parallelToTheBase(double offset, double area) {
        assertEquals(area, SEGMENT.areaBelow(BandLine.of(offset, 0)), 1e-12);
    }

    @ParameterizedTest(name = "a line from tip to base at y = {0} leaves {1} on its left")
    @CsvSource({"-4, 0", "-2, 5", "0, 20", "3, 42.5", "6, 50", "7, 50"})
    void squareToTheBase(double offset, double area) {
        // Left of y = -2 a triangle of base 2 and height 5; left of the axis 4 x 10 / 2; right of y = 3 one of 3 by 5.
        assertEquals(area, SEGMENT.areaBelow(new BandLine(offset, 0, 1)), 1e-12);
    }

    @Property(tries = 500)
    void agreesWithTheShoelaceFormula(
            @ForAll @DoubleRange(min = 1, max = 100) double base,
            @ForAll @DoubleRange(min = 1, max = 100) double left,
            @ForAll @DoubleRange(min = 1, max = 100) double right,
            @ForAll @DoubleRange(min = -200, max = 200) double offset,
            @ForAll @DoubleRange(min = -1.57, max = 1.57) double angle) {
        FlatSegment segment = new FlatSegment(base, left, right);
        double[][] corners = {{0, 0}, {base, -left}, {base, right}};
        double expected = clippedArea(corners, offset, Math.cos(angle), Math.sin(angle));
        assertEquals(expected, segment.areaBelow(BandLine.of(offset, angle)), 1e-10 * segment.area());
    }

    /** Area of the part of a triangle where x cos + y sin is below the offset. */
    private static double clippedArea(double[][] corners, double offset, double cos, double sin) {
        double[] xs = new double[6];
        double[] ys = new double[6];
        int count = 0;
        for (int i = 0; i < corners.length; i++) {
            double[] from = corners[i];
            double[] to = corners[(i + 1) % corners.length];
            double fromOver = from[0] * cos + from[1] * sin - offset;
            double toOver = to[0] * cos + to[1] * sin - offset;
            if (fromOver <= 0) {
                xs[count] = from[0];
                ys[count++] = from[1];
            }
            if (fromOver * toOver < 0) {
                double share = fromOver / (fromOver - toOver);
                xs[count] = from[0] + share * (to[0] - from[0]);
                ys[count++] = from[1] + share * (to[1] - from[1]);
            }
        }
        double twice = 0;
        for (int i = 0; i < count; i++) {
            int next = (i + 1) % count;
            twice += xs[i] * ys[next] - xs[next] * ys[i];
        }
        return twice / 2;
    }

    @Test
    @Source(INVARIANT)
    void aLineAndItsReverseShareTheSegment() {
        for (double angle = -1.5; angle <= 1.5; angle += 0.25) {
            for (double offset = -5; offset <= 12; offset += 0.5) {
                BandLine line = BandLine.of(offset, angle);
                assertEquals(50, SEGMENT.areaBelow(line) + SEGMENT.areaBelow(line.reversed()), 1e-12);
            }
        }
    }
}
