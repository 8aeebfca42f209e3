package org.orbwright.segment;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.orbwright.source.Kind.CONTRACT;
import static org.orbwright.source.Kind.HAND;
import static org.orbwright.source.Kind.INVARIANT;
import static org.orbwright.source.Kind.ORACLE;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.orbwright.design.Design;
import org.orbwright.design.Piece;
import org.orbwright.fixture.Designs;
import org.orbwright.segment.BlankSimulation.Triangle;
import org.orbwright.segment.SegmentPlan.Cut;
import org.orbwright.source.Source;

@Source(
        value = HAND,
        text = "legs in turn: N triangles of base b take (N + 1) b / 2, and each of N - 1 kerfs c / sin q along the "
                + "edge")
class AlternatingLayoutTest {
    private static Design saw(double kerf, double trim, double blank) {
        return Designs.of("dodecahedron").saw(kerf, trim).blank(blank).build();
    }

    private static Piece piece(double base, double left, double right) {
        return new Piece("A", false, false, base, left, right, 1, 0);
    }

    /** N segments take (N + 1) b / 2 + (N - 1) c / sin q and the end trims. */
    private static double isoscelesLength(int segments, double b, double kerf, double baseAngle) {
        return segments == 0 ? 0 : (segments + 1) * b / 2 + (segments - 1) * kerf / Math.sin(baseAngle);
    }

    @Property(tries = 500)
    void isoscelesSegmentsFillTheBlankAsTheFormulaSays(
            @ForAll @DoubleRange(min = 20, max = 200) double base,
            @ForAll @DoubleRange(min = 10, max = 150) double half,
            @ForAll @DoubleRange(max = 6) double kerf,
            @ForAll @DoubleRange(max = 40) double trim,
            @ForAll @DoubleRange(min = 10, max = 3000) double blank) {
        double angle = Math.atan2(base, half);
        int most = 0;
        while (isoscelesLength(most + 1, 2 * half, kerf, angle) + 2 * trim <= blank + BlankLayout.EXACT_FIT) {
            most++;
        }
        AlternatingLayout layout = new AlternatingLayout(saw(kerf, trim, blank), piece(base, half, half));
        assertEquals(most, layout.perBlank());
        double used = most == 0 ? 0 : isoscelesLength(most, 2 * half, kerf, angle) + 2 * trim;
        assertEquals(used, layout.lengthUsed(), 1e-9);
    }

    @Property(tries = 500)
    @Source(value = ORACLE, text = "laid out one by one: half a turn, then slid until the kerf fits")
    void scaleneSegmentsLieAsWhenTheyAreLaidOutOneByOne(
            @ForAll @DoubleRange(min = 30, max = 200) double base,
            @ForAll @DoubleRange(min = 10, max = 150) double left,
            @ForAll @DoubleRange(min = 10, max = 150) double right,
            @ForAll @DoubleRange(max = 6) double kerf,
            @ForAll @DoubleRange(max = 40) double trim,
            @ForAll @DoubleRange(min = 10, max = 3000) double blank) {
        Piece piece = piece(base, left, right);
        AlternatingLayout layout = new AlternatingLayout(saw(kerf, trim, blank), piece);
        List<Triangle> triangles = BlankSimulation.layOut(piece, kerf, trim, blank);
        assertEquals(triangles.size(), layout.perBlank());
        if (triangles.isEmpty()) {
            assertTrue(layout.cuts().isEmpty());
            assertEquals(0, layout.lengthUsed());
            return;
        }
        Triangle last = triangles.get(triangles.size() - 1);
        assertEquals(last.end() + trim, layout.lengthUsed(), 1e-8);
        assertTrue(layout.lengthUsed() <= blank + 1e-6);
        Triangle more = BlankSimulation.next(last, kerf);
        assertTrue(more.end() + trim > blank, "one more segment would not fit");
        BlankSimulation.assertCutsAreLegs(triangles, layout.cuts());
    }

    @Property(tries = 300)
    @Source(INVARIANT)
    void neighboursNeverOverlapAndLeaveTheKerf(
            @ForAll @DoubleRange(min = 30, max = 200) double base,
            @ForAll @DoubleRange(min = 10, max = 150) double left,
            @ForAll @DoubleRange(min = 10, max = 150) double right,
            @ForAll @DoubleRange(max = 6) double kerf) {
        AlternatingLayout layout = new AlternatingLayout(saw(kerf, 5, 1500), piece(base, left, right));
        List<Triangle> triangles = BlankSimulation.fromCuts(layout.cuts(), base, left + right, kerf);
        for (int i = 0; i + 1 < triangles.size(); i++) {
            Triangle triangle = triangles.get(i);
            Triangle next = triangles.get(i + 1);
            assertEquals(kerf, triangle.gapTo(next), 1e-9);
            assertTrue(triangle.start() >= 5 - 1e-9);
            assertTrue(next.end() <= 1495 + 1e-6);
        }
    }

    @Test
    @DisplayName("by hand: base distance 4, base 2 + 4, kerf 1: cuts at (0, 2), (6, 2), (6 + 1.4142, 8 + 1.4142)")
    void scaleneByHand() {
        // The right leg rises 4 over 4, at 45 degrees: a kerf of 1 takes sqrt 2 along the blank.
        // The left leg rises 4 over 2: a kerf of 1 takes sqrt 20 / 4 = 1.118034 along the blank.
        double longer = Math.sqrt(2);
        double shorter = Math.sqrt(20) / 4;
        List<Cut> cuts = new AlternatingLayout(saw(1, 0, 16), piece(4, 2, 4)).cuts();
        assertEquals(4, cuts.size());
        assertCut(0, 0, 2, cuts.get(0));
        assertCut(1, 6, 2, cuts.get(1));
        assertCut(2, 6 + longer, 8 + longer, cuts.get(2));
        double second = 6 + longer + shorter;
        assertCut(3, second + 6, second + 2, cuts.get(3));
    }

    @Test
    @Source(CONTRACT)
    void theShorterPartOfTheBaseLiesFirstWhicheverSideItIs() {
        Design design = saw(2, 10, 500);
        assertEquals(
                new AlternatingLayout(design, piece(40, 15, 35)).cuts(),
                new AlternatingLayout(design, piece(40, 35, 15)).cuts());
    }

    @Test
    void aBlankThatIsExactlyLongEnoughIsLongEnough() {
        Piece piece = piece(50, 20, 20);
        double twelve = isoscelesLength(12, 40, 3, Math.atan2(50, 20)) + 2 * 7;
        assertEquals(12, new AlternatingLayout(saw(3, 7, twelve), piece).perBlank());
        assertEquals(11, new AlternatingLayout(saw(3, 7, twelve - 1e-5), piece).perBlank());
    }

    @Test
    void theShortestBlankGivesOneSegmentAndNoShorterOneDoes() {
        Piece piece = piece(50, 20, 30);
        assertEquals(64, new AlternatingLayout(saw(3, 7, 500), piece).shortestBlank());
        assertEquals(1, new AlternatingLayout(saw(3, 7, 64), piece).perBlank());
        assertEquals(0, new AlternatingLayout(saw(3, 7, 63.999), piece).perBlank());
        assertEquals(0, new AlternatingLayout(saw(3, 7, 1), piece).perBlank());
    }

    @Test
    @Source(CONTRACT)
    void onlyTheFirst400CutsAreListed() {
        AlternatingLayout layout = new AlternatingLayout(saw(3, 0, 100_000), piece(50, 20, 30));
        assertTrue(layout.perBlank() > 400);
        assertEquals(400, layout.cuts().size());
        assertEquals(399, layout.cuts().get(399).number());
    }

    private static void assertCut(int number, double first, double last, Cut cut) {
        assertEquals(number, cut.number());
        assertEquals(first, cut.firstBandEdge(), 1e-12);
        assertEquals(last, cut.lastBandEdge(), 1e-12);
    }
}
