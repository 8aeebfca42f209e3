package org.orbwright.stock;

import static org.junit.jupiter.api.Assertions.assertEquals;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.orbwright.quantity.LengthUnit;
import org.orbwright.stock.BoardRequest.Surface;

/** What is left of a board of 1000 x 150 x 30 mm. */
class SurfacingTest {
    private static final String SEED = "20261125";

    private static Surfacing mm(Surface surface, double outOfFlat, double twist, boolean shimmed) {
        return Surfacing.of(
                Boards.warped(surface, outOfFlat, twist, shimmed), Boards.allowances(3, 2, 1.5, 50), LengthUnit.MM);
    }

    @Test
    @DisplayName("hand calculation: a rough flat board is planed twice, 30 - 2 x 1.5 = 27 mm")
    void aRoughBoardIsPlanedOnBothFaces() {
        assertEquals(27, mm(Surface.ROUGH, 0, 0, true).thickness(), 1e-12);
    }

    @Test
    void aSurfacedFlatBoardKeepsItsThickness() {
        assertEquals(30, mm(Surface.SURFACED, 0, 0, false).thickness());
    }

    @Test
    @DisplayName("hand calculation: 1 mm of cup and half of 3 mm of twist, 30 - 1 - 1.5 = 27.5 mm")
    void aShimmedBoardLosesHalfItsTwist() {
        Surfacing surfacing = mm(Surface.SURFACED, 1, 3, true);
        assertEquals(27.5, surfacing.thickness(), 1e-12);
        assertEquals(2.5, surfacing.shimmedLoss(), 1e-12);
        assertEquals(4, surfacing.unshimmedLoss(), 1e-12);
    }

    @Test
    @DisplayName("hand calculation: 1 mm of cup and all of 3 mm of twist, 30 - 1 - 3 = 26 mm")
    void aBoardOnThreeCornersLosesAllItsTwist() {
        Surfacing surfacing = mm(Surface.SURFACED, 1, 3, false);
        assertEquals(26, surfacing.thickness(), 1e-12);
        assertEquals(2.5, surfacing.shimmedLoss(), 1e-12);
        assertEquals(4, surfacing.unshimmedLoss(), 1e-12);
    }

    @Test
    @DisplayName("hand calculation: a rough one in twist, shimmed, 30 - 2 x 1.5 - 3 / 2 = 25.5 mm")
    void planingAndFlatteningAddUp() {
        assertEquals(25.5, mm(Surface.ROUGH, 0, 3, true).thickness(), 1e-12);
    }

    @Test
    @DisplayName("hand calculation: 1000 - 2 x 50 = 900 mm long, 150 - 3 - 2 = 145 mm wide")
    void endsAndEdges() {
        Surfacing surfacing = mm(Surface.ROUGH, 0, 0, true);
        assertEquals(900, surfacing.length(), 1e-12);
        assertEquals(145, surfacing.width(), 1e-12);
    }

    @Test
    @DisplayName("hand calculation: in inches, 30 - 2 x 0.0625 - 0.25 - 0.5 / 2 = 29.375 in, 746.125 mm")
    void inches() {
        Surfacing surfacing = Surfacing.of(
                Boards.warped(Surface.ROUGH, 0.25, 0.5, true),
                Boards.allowances(0.125, 0.125, 0.0625, 2),
                LengthUnit.IN);
        assertEquals(746.125, surfacing.thickness(), 1e-9);
        assertEquals(996 * 25.4, surfacing.length(), 1e-9);
        assertEquals(149.75 * 25.4, surfacing.width(), 1e-9);
        assertEquals(0.5 * 25.4, surfacing.shimmedLoss(), 1e-9);
    }

    @Test
    void nothingIsLeftOfABoardThatIsLostAltogether() {
        Surfacing surfacing = Surfacing.of(
                Boards.warped(Surface.ROUGH, 20, 20, false), Boards.allowances(100, 51, 0, 501), LengthUnit.MM);
        assertEquals(0, surfacing.length());
        assertEquals(0, surfacing.width());
        assertEquals(0, surfacing.thickness());
    }

    /**
     * A twisted board is the saddle z = twist / 4 x y over -1 to 1: on the plane through three of its corners, at a
     * quarter of the twist above, below and above the middle in turn, the fourth one is off by all of it (own geometry:
     * heights h, -h, h and -h at the corners; a plane has equal sums over both diagonals, so through the first three it
     * is at 3 h over the fourth, which is 4 h lower).
     */
    private static double height(double twist, double x, double y) {
        return twist / 4 * x * y;
    }

    /**
     * Thickness that is lost to the planes along a slope: the height from the lowest to the highest corner over it. The
     * faces are a saddle, which has its lowest and highest points over any plane at its corners.
     */
    private static double loss(double twist, double slopeX, double slopeY) {
        double lowest = Double.POSITIVE_INFINITY;
        double highest = Double.NEGATIVE_INFINITY;
        for (int x = -1; x <= 1; x += 2) {
            for (int y = -1; y <= 1; y += 2) {
                double over = height(twist, x, y) - slopeX * x - slopeY * y;
                lowest = Math.min(lowest, over);
                highest = Math.max(highest, over);
            }
        }
        return highest - lowest;
    }

    @Property(tries = 50, seed = SEED)
    void aShimmedBoardLosesAsLittleAsAnyTiltedPlaneTakes(@ForAll @DoubleRange(min = 0, max = 25) double twist) {
        double least = Double.POSITIVE_INFINITY;
        for (int i = -100; i <= 100; i++) {
            for (int j = -100; j <= 100; j++) {
                least = Math.min(least, loss(twist, twist * i / 100, twist * j / 100));
            }
        }
        assertEquals(least, mm(Surface.SURFACED, 0, twist, true).shimmedLoss(), 1e-12);
    }

    @Property(tries = 50, seed = SEED)
    void aBoardOnThreeCornersLosesWhatThePlaneThroughThemTakes(@ForAll @DoubleRange(min = 0, max = 25) double twist) {
        // Through the corners (1, 1), (-1, 1) and (-1, -1), at h, -h and h: the slope is h along x and -h along y.
        double h = twist / 4;
        assertEquals(loss(twist, h, -h), mm(Surface.SURFACED, 0, twist, false).unshimmedLoss(), 1e-12);
    }
}
