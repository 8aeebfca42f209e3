package org.orbwright.segment;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.orbwright.source.Kind.COMMON_PRACTICE;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.orbwright.design.Design;
import org.orbwright.fixture.Designs;
import org.orbwright.quantity.LengthUnit;
import org.orbwright.segment.SawAngles.FaceAngles;
import org.orbwright.segment.SegmentPlan.SegmentCut;
import org.orbwright.segment.Yield.LaminationYield;
import org.orbwright.segment.Yield.SegmentYield;
import org.orbwright.segment.Yield.StripYield;
import org.orbwright.source.Source;

/** What the trade knows of a pair of dodecahedra 7 in across flats. Common practice, no source. */
@DisplayName("two dodecahedra 7 in across flats (common practice, no source)")
@Source(value = COMMON_PRACTICE, text = "what the trade knows of two dodecahedra 7 in across flats; no source")
class TradeValuesTest {
    private static final Design PAIR = Designs.of("dodecahedron")
            .in(LengthUnit.IN)
            .copies(2)
            .acrossFlats(7)
            .thickness(1.1)
            .bands(Designs.widths(0.75, 0.25, 0.5, null))
            .saw(0.125, 0)
            .blank(23)
            .diameter(null)
            .allowance(0.08)
            .minimumWall(0.25)
            .build();

    @Nested
    class Angles {
        private final FaceAngles pentagon =
                AngleCalculator.calculate(PAIR).faces().get(0);

        @Test
        @DisplayName("bevel 58.3 degrees: 58.2825")
        void bevel() {
            assertEquals(58.2825, Math.toDegrees(pentagon.bevel()), 5e-5);
        }

        @Test
        @DisplayName("blade tilt 31.7 degrees: 31.7175")
        void bladeTilt() {
            assertEquals(31.7175, Math.toDegrees(pentagon.bladeTilt()), 5e-5);
        }

        @Test
        @DisplayName("mitre gauge 36, tip 72, base angles 54 degrees")
        void mitreGauge() {
            SawAngles.SegmentAngles segment = pentagon.segments().get(0);
            assertEquals(36, Math.toDegrees(segment.mitreGaugeLeft()), 1e-12);
            assertEquals(36, Math.toDegrees(segment.mitreGaugeRight()), 1e-12);
            assertEquals(72, Math.toDegrees(segment.tipAngle()), 1e-12);
            assertEquals(54, Math.toDegrees(segment.baseAngleLeft()), 1e-12);
            assertEquals(54, Math.toDegrees(segment.baseAngleRight()), 1e-12);
        }
    }

    @Test
    @DisplayName("60 segments a solid, 120 for two")
    void segmentsOfASolid() {
        SegmentPlan plan = SegmentCalculator.calculate(PAIR);
        assertEquals(60, plan.perSphere());
        assertEquals(120, plan.total());
        assertEquals(12, plan.faces().get(0).panelsPerSphere());
        assertEquals(24, plan.faces().get(0).panels());
        assertEquals(120, plan.faces().get(0).segments().get(0).total());
    }

    @Test
    @DisplayName("a 23 in blank with a 1/8 in kerf and no end trim gives 12 segments")
    void segmentsOfABlank() {
        SegmentCut cut =
                SegmentCalculator.calculate(PAIR).faces().get(0).segments().get(0);
        assertEquals(12, cut.perBlank());
        // Base b = 3.5 in / 1.1135163644 = 3.14319584 in, so 13 b / 2 + 11 (1/8 in) / sin 54 deg = 22.1303664 in.
        assertEquals(22.1303664, cut.lengthUsed() / 25.4, 1e-6);
        assertEquals(23 * 25.4, cut.lengthUsed() + cut.lengthLeft(), 1e-9);
    }

    @Test
    @DisplayName("10 blanks, 10 strips of each band, nothing left over")
    void blanksAndStrips() {
        LaminationYield lamination =
                YieldCalculator.calculate(PAIR).laminations().get(0);
        assertEquals(2, lamination.sets());
        assertEquals(10, lamination.blanks());
        assertEquals(4, lamination.strips().size());
        for (StripYield strip : lamination.strips()) {
            assertEquals(10, strip.count());
            assertEquals(23 * 25.4, strip.length(), 1e-9);
        }
        assertEquals(
                new SegmentYield("A", false, 12, 10, 0, 60, 60, 0, 0),
                lamination.segments().get(0));
    }
}
