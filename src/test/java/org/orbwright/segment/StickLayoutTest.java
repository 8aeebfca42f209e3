package org.orbwright.segment;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.orbwright.source.Kind.CONTRACT;
import static org.orbwright.source.Kind.HAND;
import static org.orbwright.source.Kind.INVARIANT;
import static org.orbwright.source.Kind.ORACLE;

import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.orbwright.design.Band;
import org.orbwright.design.Design;
import org.orbwright.design.Lamination;
import org.orbwright.design.Piece;
import org.orbwright.design.Places;
import org.orbwright.fixture.Designs;
import org.orbwright.segment.SegmentPlan.Cut;
import org.orbwright.source.Source;

@Source(value = HAND, text = "plane trigonometry: a stick of width b at the angle d takes b / sin d along the edge")
class StickLayoutTest {
    private static final double KERF = 3;
    private static final double TRIM = 8;
    private static final double BLANK = 900;
    private static final Piece PIECE = new Piece("A", false, false, 50, 20, 45, 1, 0);

    private static Design design(double blank) {
        return Designs.of("cube").saw(KERF, TRIM).blank(blank).build();
    }

    private static Lamination lamination(double degrees) {
        double angle = Math.toRadians(degrees);
        return new Lamination(0, Places.ALL, angle, false, List.of(new Band("sugar maple", PIECE.extent(angle))));
    }

    private static StickLayout layout(double degrees, double blank) {
        return new StickLayout(design(blank), lamination(degrees), PIECE);
    }

    @Test
    @DisplayName("at 90 degrees sticks are square: 50 wide, kerf 3, trims 8: 16 in 861 mm, 15 in 860.9 mm")
    void squareSticksByHand() {
        // 16 sticks take 16 x 50 + 15 x 3 + 2 x 8 = 861.
        assertEquals(16, layout(90, 861).perBlank());
        assertEquals(861, layout(90, 861).lengthUsed(), 1e-9);
        assertEquals(15, layout(90, 860.9).perBlank());
        assertEquals(66, layout(90, 861).shortestBlank(), 1e-9);
        List<Cut> cuts = layout(90, 861).cuts();
        assertEquals(17, cuts.size());
        assertCut(0, 8, 8, cuts.get(0));
        assertCut(1, 58, 58, cuts.get(1));
        assertCut(2, 111, 111, cuts.get(2));
        assertCut(16, 853, 853, cuts.get(16));
    }

    @Test
    @DisplayName("at 45 degrees a stick 50 wide takes 70.71 along the edge, a kerf of 3 takes 4.243")
    void sticksAt45DegreesByHand() {
        double width = lamination(45).width();
        List<Cut> cuts = layout(45, BLANK).cuts();
        // From the first band's edge to the last the line moves back by the blank's width.
        assertCut(0, TRIM + width, TRIM, cuts.get(0));
        assertCut(1, TRIM + width + 70.71067811865476, TRIM + 70.71067811865476, cuts.get(1));
        assertCut(2, TRIM + width + 145.6639969244288, TRIM + 145.6639969244288, cuts.get(2));
    }

    @Test
    @Source(CONTRACT)
    void onlyAsManyCutsAsACallerReadsAreListed() {
        assertEquals(1886, layout(90, 100_000).perBlank());
        assertEquals(BlankLayout.MOST_CUTS, layout(90, 100_000).cuts().size());
    }

    @ParameterizedTest(name = "{0} degrees")
    @ValueSource(doubles = {5, 30, 45, 60, 89, 90, -5, -30, -45, -60, -89, -90})
    @Source(value = ORACLE, text = "the segment's three corners on the blank, each between the cuts")
    void everyStickHoldsAWholeSegmentInsideTheBlank(double degrees) {
        StickLayout layout = layout(degrees, 2 * BLANK);
        double angle = Math.toRadians(degrees);
        double width = lamination(degrees).width();
        List<Cut> cuts = layout.cuts();
        assertEquals(layout.perBlank() + 1, cuts.size());
        double[][] corners = cornersOnBlank(angle);
        for (int i = 0; i < layout.perBlank(); i++) {
            // Behind every cut but the first the kerf is gone before the next stick begins.
            double gone = i == 0 ? 0 : KERF / Math.abs(Math.sin(angle));
            Cut left = moved(cuts.get(i), gone);
            Cut right = cuts.get(i + 1);
            assertEquals(PIECE.base(), distance(left, right, width), 1e-9);
            assertHolds(left, right, width, corners);
            assertTrue(Math.min(left.firstBandEdge(), left.lastBandEdge()) >= TRIM - 1e-9);
            assertTrue(Math.max(right.firstBandEdge(), right.lastBandEdge()) <= 2 * BLANK - TRIM + 1e-6);
        }
        double more = (PIECE.base() + KERF) / Math.abs(Math.sin(angle));
        Cut last = cuts.get(cuts.size() - 1);
        assertTrue(Math.max(last.firstBandEdge(), last.lastBandEdge()) + more > 2 * BLANK - TRIM);
        assertEquals(
                Math.max(last.firstBandEdge(), last.lastBandEdge()) + TRIM, layout.lengthUsed(), 1e-9, "length used");
    }

    @ParameterizedTest(name = "{0} degrees")
    @ValueSource(doubles = {5, 30, 45, 60, 90, -30, -90})
    @Source(INVARIANT)
    void theShortestBlankGivesOneSegmentAndNoShorterOneDoes(double degrees) {
        double shortest = layout(degrees, BLANK).shortestBlank();
        assertEquals(1, layout(degrees, shortest).perBlank());
        assertEquals(shortest, layout(degrees, shortest).lengthUsed(), 1e-9);
        assertEquals(0, layout(degrees, shortest - 1e-4).perBlank());
        assertEquals(0, layout(degrees, shortest - 1e-4).lengthUsed());
        assertTrue(layout(degrees, shortest - 1e-4).cuts().isEmpty());
    }

    /**
     * The tip, the left and the right corner on a blank that lies with its outer face up and its first band towards the
     * reader: along the blank, and from its first band's edge.
     */
    private static double[][] cornersOnBlank(double angle) {
        double[][] panel = {{0, 0}, {PIECE.base(), -PIECE.left()}, {PIECE.base(), PIECE.right()}};
        double[][] blank = new double[panel.length][];
        for (int i = 0; i < panel.length; i++) {
            double x = panel[i][0];
            double y = panel[i][1];
            double across = x * Math.cos(angle) + y * Math.sin(angle);
            blank[i] = new double[] {y * Math.cos(angle) - x * Math.sin(angle), PIECE.top(angle) - across};
        }
        return blank;
    }

    private static void assertHolds(Cut left, Cut right, double width, double[][] corners) {
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        double lean = left.lastBandEdge() - left.firstBandEdge();
        for (double[] corner : corners) {
            assertTrue(corner[1] >= -1e-9 && corner[1] <= width + 1e-9, "on the blank");
            double atFirstEdge = corner[0] - lean * corner[1] / width;
            least = Math.min(least, atFirstEdge);
            most = Math.max(most, atFirstEdge);
        }
        // The segment has both sides of the stick as its tip line and its base.
        assertEquals(right.firstBandEdge() - left.firstBandEdge(), most - least, 1e-9);
    }

    private static double distance(Cut left, Cut right, double width) {
        double lean = left.lastBandEdge() - left.firstBandEdge();
        assertEquals(lean, right.lastBandEdge() - right.firstBandEdge(), 1e-9, "parallel");
        return (right.firstBandEdge() - left.firstBandEdge()) * width / Math.hypot(width, lean);
    }

    private static Cut moved(Cut cut, double along) {
        return new Cut(cut.number(), cut.firstBandEdge() + along, cut.lastBandEdge() + along);
    }

    private static void assertCut(int number, double first, double last, Cut cut) {
        assertEquals(number, cut.number());
        assertEquals(first, cut.firstBandEdge(), 1e-9);
        assertEquals(last, cut.lastBandEdge(), 1e-9);
    }
}
