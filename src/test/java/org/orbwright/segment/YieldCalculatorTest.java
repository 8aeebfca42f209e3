package org.orbwright.segment;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.orbwright.source.Kind.CONTRACT;
import static org.orbwright.source.Kind.HAND;
import static org.orbwright.source.Kind.INVARIANT;

import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.orbwright.design.Design;
import org.orbwright.design.Sets;
import org.orbwright.design.SphereSet;
import org.orbwright.fixture.Designs;
import org.orbwright.segment.Yield.LaminationYield;
import org.orbwright.segment.Yield.SegmentYield;
import org.orbwright.segment.Yield.SphereYield;
import org.orbwright.segment.Yield.StripYield;
import org.orbwright.solid.Solid;
import org.orbwright.solid.SolidCatalogue;
import org.orbwright.source.Source;

@Source(value = HAND, text = "counting: 12 pentagons of 5 segments, 6 squares of 4; blanks of 19, which are 10 and 9")
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
    @Source(INVARIANT)
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
    @Source(INVARIANT)
    void anEvenNumberOfCopiesUsesBothSetsUp() {
        SegmentYield four = segment(TWO_SETS.copies(4));
        assertEquals(120, four.uprightNeeded());
        assertEquals(120, four.invertedNeeded());
        assertTrue(four.uprightLeft() + four.invertedLeft() < four.perBlank());
    }

    @Test
    @Source(CONTRACT)
    void aPalindromicLaminationHasOneSet() {
        assertEquals(1, first(ONE_SET).sets());
        assertEquals(2, first(TWO_SETS).sets());
        assertEquals(1, first(Designs.of("dodecahedron")).sets());
        assertEquals(
                1,
                YieldCalculator.calculate(ONE_SET.copies(2).build()).spheres().size());
    }

    @Test
    @Source(CONTRACT)
    void aTiltedLaminationHasOneSet() {
        assertEquals(
                1,
                first(Designs.of("cube").bands(45, Designs.widths(60.0, 10.0, null)))
                        .sets());
    }

    @Test
    @Source(CONTRACT)
    void everySecondSphereIsMadeFromInvertedSegments() {
        List<SphereYield> spheres =
                YieldCalculator.calculate(TWO_SETS.copies(5).build()).spheres();
        assertEquals(2, spheres.size());
        assertEquals(SphereSet.UPRIGHT, spheres.get(0).set());
        assertEquals(3, spheres.get(0).count());
        assertEquals(SphereSet.INVERTED, spheres.get(1).set());
        assertEquals(2, spheres.get(1).count());
    }

    @Test
    @DisplayName("a cube of 200 mm has bases of 200 mm: blanks of 199.9 mm give none, and nothing is counted")
    @Source(CONTRACT)
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
    @Source(INVARIANT)
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
    @Source(value = HAND, text = "half a square of 200 mm at 45 degrees reaches over 200 / sqrt 2")
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

    /** A cube of 200 mm: bases of 200 mm and a kerf of 3 mm, so that a blank of 1000 mm gives 8 segments. */
    private static final Designs PLAIN = Designs.of("cube");

    @Test
    @DisplayName("24 segments at 8 a blank take 3 blanks; a spare one takes a fourth, and two spare strips make 6")
    void sparesRaiseEveryCount() {
        Yield bare = YieldCalculator.calculate(PLAIN.build());
        assertEquals(
                new SegmentYield("A", false, 8, 3, 0, 24, 0, 0, 0),
                bare.laminations().get(0).segments().get(0));
        Yield spared = YieldCalculator.calculate(PLAIN.spares(1, 2).build());
        LaminationYield lamination = spared.laminations().get(0);
        assertEquals(
                new SegmentYield("A", false, 8, 4, 0, 25, 0, 7, 0),
                lamination.segments().get(0));
        assertEquals(4, lamination.blanks());
        assertEquals(6, lamination.strips().get(0).count());
        assertEquals(6, spared.species().get(0).strips());
        // Strips of 100 by 25 by 1000 mm.
        assertEquals(3 * 2.5e6, bare.species().get(0).stripVolume(), 1e-6);
        assertEquals(6 * 2.5e6, spared.species().get(0).stripVolume(), 1e-6);
        assertEquals(
                2 * bare.species().get(0).stripMass(), spared.species().get(0).stripMass(), 1e-12);
        assertEquals(
                bare.species().get(0).finishedVolume(), spared.species().get(0).finishedVolume());
    }

    @Test
    @DisplayName("10 upright and 9 inverted segments a blank, 4 spares of each set that is used")
    void sparesAreMadeOfTheSetsThatAreUsed() {
        Designs spared = TWO_SETS.spares(4, 0);
        assertEquals(new SegmentYield("A", false, 19, 7, 0, 64, 0, 6, 63), segment(spared.sets(Sets.UPRIGHT)));
        assertEquals(new SegmentYield("A", false, 19, 7, 1, 0, 64, 69, 0), segment(spared.sets(Sets.INVERTED)));
        assertEquals(new SegmentYield("A", false, 19, 4, 0, 34, 34, 6, 2), segment(spared.sets(Sets.MIXED)));
        assertEquals(new SegmentYield("A", false, 19, 7, 1, 64, 64, 5, 0), segment(spared.copies(2)));
    }

    @Test
    void mixedSpheresUseBothSetsUp() {
        SegmentYield mixed = segment(TWO_SETS.sets(Sets.MIXED));
        assertEquals(new SegmentYield("A", false, 19, 4, 0, 30, 30, 10, 6), mixed);
        assertTrue(mixed.blanks() < segment(TWO_SETS).blanks());
    }

    @Test
    @DisplayName("two layers: twice as many strips, half as thick, of the same wood; spare strips are single ones")
    void layersAreRippedOneByOne() {
        Yield whole = YieldCalculator.calculate(PLAIN.build());
        Yield layered = YieldCalculator.calculate(PLAIN.layers(2).build());
        StripYield strip = layered.laminations().get(0).strips().get(0);
        assertEquals(6, strip.count());
        assertEquals(12.5, strip.thickness());
        assertEquals(25, layered.laminations().get(0).blankThickness());
        assertEquals(3, layered.laminations().get(0).blanks());
        assertEquals(
                whole.species().get(0).stripVolume(), layered.species().get(0).stripVolume(), 1e-6);
        assertEquals(6000, layered.species().get(0).stripLength(), 1e-9);
        assertEquals(whole.spheres(), layered.spheres());
        Yield spared = YieldCalculator.calculate(PLAIN.layers(5).spares(0, 2).build());
        assertEquals(17, spared.laminations().get(0).strips().get(0).count());
        assertEquals(5, spared.laminations().get(0).strips().get(0).thickness());
    }
}
