package org.orbwright.segment;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.orbwright.design.BandSet;
import org.orbwright.design.Design;
import org.orbwright.fixture.Designs;
import org.orbwright.segment.Yield.LaminationYield;
import org.orbwright.segment.Yield.SegmentYield;
import org.orbwright.segment.Yield.SphereYield;
import org.orbwright.segment.Yield.StripYield;
import org.orbwright.solid.Solid;
import org.orbwright.solid.SolidCatalogue;

class YieldCalculatorTest {
    private static final Designs TWO_SETS = Designs.of("dodecahedron").bands(Designs.widths(20.0, 8.0, null));
    private static final Designs ONE_SET = Designs.of("dodecahedron")
            .bands(List.of(
                    Designs.band("black walnut", 12.0),
                    Designs.band("sugar maple", null),
                    Designs.band("black walnut", 12.0)));

    static List<Solid> solids() {
        return SolidCatalogue.all();
    }

    private static LaminationYield first(Designs design) {
        return YieldCalculator.calculate(design.build()).laminations().get(0);
    }

    private static SegmentYield segment(Designs design) {
        return first(design).segments().get(0);
    }

    @ParameterizedTest(name = "{0} copies, blanks of {1} mm")
    @CsvSource({"1, 300", "1, 500", "2, 300", "2, 450", "2, 1000", "3, 300", "3, 450", "7, 333", "100, 777"})
    void whatIsCutIsNeededOrLeftOver(int copies, double blank) {
        SegmentYield two = segment(TWO_SETS.copies(copies).blank(blank));
        assertEquals(
                two.blanks() * two.perBlank(),
                two.uprightNeeded() + two.invertedNeeded() + two.uprightLeft() + two.invertedLeft());
        assertTrue(two.uprightLeft() >= 0 && two.invertedLeft() >= 0);
        assertEquals(60 * copies, two.uprightNeeded() + two.invertedNeeded());
        SegmentYield one = segment(ONE_SET.copies(copies).blank(blank));
        assertEquals(one.blanks() * one.perBlank(), one.uprightNeeded() + one.uprightLeft());
        assertEquals(60 * copies, one.uprightNeeded());
        assertEquals(0, one.invertedNeeded());
        assertEquals(0, one.invertedLeft());
    }

    @Test
    @DisplayName("19 segments a blank, 10 and 9: one sphere takes 6 blanks and leaves 54, three take 12 and leave 48")
    void anOddNumberOfCopiesLeavesASet() {
        assertEquals(new SegmentYield("A", false, 19, 6, 0, 60, 0, 0, 54), segment(TWO_SETS.copies(1)));
        assertEquals(new SegmentYield("A", false, 19, 12, 0, 120, 60, 0, 48), segment(TWO_SETS.copies(3)));
    }

    @Test
    void anEvenNumberOfCopiesUsesBothSetsUp() {
        SegmentYield four = segment(TWO_SETS.copies(4));
        assertEquals(120, four.uprightNeeded());
        assertEquals(120, four.invertedNeeded());
        assertTrue(four.uprightLeft() + four.invertedLeft() < four.perBlank());
    }

    @Test
    void aPalindromicLaminationHasOneSet() {
        assertEquals(1, first(ONE_SET).sets());
        assertEquals(2, first(TWO_SETS).sets());
        assertEquals(1, first(Designs.of("dodecahedron")).sets());
        assertEquals(
                1,
                YieldCalculator.calculate(ONE_SET.copies(2).build()).spheres().size());
    }

    @Test
    void aTiltedLaminationHasOneSet() {
        assertEquals(
                1,
                first(Designs.of("cube").bands(45, Designs.widths(60.0, 10.0, null)))
                        .sets());
    }

    @Test
    void everySecondSphereIsMadeFromInvertedSegments() {
        List<SphereYield> spheres =
                YieldCalculator.calculate(TWO_SETS.copies(5).build()).spheres();
        assertEquals(2, spheres.size());
        assertEquals(BandSet.UPRIGHT, spheres.get(0).set());
        assertEquals(3, spheres.get(0).count());
        assertEquals(BandSet.INVERTED, spheres.get(1).set());
        assertEquals(2, spheres.get(1).count());
    }

    @Test
    @DisplayName("a cube of 200 mm has bases of 200 mm: blanks of 199.9 mm give none, and nothing is counted")
    void aBlankThatIsTooShortLeavesTheCountsOut() {
        Yield yield = YieldCalculator.calculate(Designs.of("cube").blank(199.9).build());
        LaminationYield lamination = yield.laminations().get(0);
        assertNull(lamination.blanks());
        assertEquals(
                new SegmentYield("A", false, 0, null, 0, 24, 0, 0, 0),
                lamination.segments().get(0));
        assertNull(lamination.strips().get(0).count());
        assertNull(yield.species().get(0).strips());
        assertNull(yield.species().get(0).stripVolume());
        assertNull(yield.species().get(0).stripMass());
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("solids")
    void segmentsOfAllPiecesMakeUpEveryFace(Solid solid) {
        int segments = solid.faces().stream().mapToInt(f -> f.vertices().size()).sum();
        for (double angle : new double[] {0, 37}) {
            Design design = Designs.of(solid.name())
                    .bands(angle, Designs.widths(1.0, null))
                    .blank(5000)
                    .build();
            int needed = YieldCalculator.calculate(design).laminations().stream()
                    .flatMap(l -> l.segments().stream())
                    .mapToInt(s -> s.uprightNeeded() + s.invertedNeeded())
                    .sum();
            assertEquals(segments, needed);
            assertEquals(segments, SegmentCalculator.calculate(design).perSphere());
        }
    }

    @Test
    void blanksAreAsWideAsTheBaseDistanceAndAsThickAsThePanels() {
        LaminationYield straight = first(Designs.of("cube"));
        assertEquals(100, straight.blankWidth(), 1e-12);
        assertEquals(25, straight.blankThickness());
        assertEquals(1000, straight.blankLength());
        // A cube's segment, base 200 and height 100, at 45 degrees: from corner to corner 200 / sqrt 2.
        LaminationYield tilted = first(Designs.of("cube").bands(45, Designs.widths(60.0, 10.0, null)));
        assertEquals(141.4213562373095, tilted.blankWidth(), 1e-9);
        assertEquals(71.4213562373095, tilted.strips().get(2).width(), 1e-9);
        assertEquals(
                List.of(1, 2, 3), tilted.strips().stream().map(StripYield::band).toList());
    }
}
