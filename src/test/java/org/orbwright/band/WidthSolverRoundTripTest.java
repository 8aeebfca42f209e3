package org.orbwright.band;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.orbwright.band.Wishes.analysed;
import static org.orbwright.band.Wishes.rest;
import static org.orbwright.band.Wishes.wish;
import static org.orbwright.source.Kind.INVARIANT;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.orbwright.band.SolveRequest.Measure;
import org.orbwright.band.SolveRequest.WishRequest;
import org.orbwright.band.WidthSolution.Seen;
import org.orbwright.band.WidthSolution.SolvedBand;
import org.orbwright.band.WidthSolution.SolvedWish;
import org.orbwright.band.Wishes.Wished;
import org.orbwright.design.Design;
import org.orbwright.design.DesignRequest;
import org.orbwright.design.GeneratedDesigns;
import org.orbwright.design.SphereSet;
import org.orbwright.source.Source;

/**
 * Widths that are solved for, analysed again: inverse against forward. The wishes are parts of what bands of known
 * widths show, so that they can come true.
 */
@Source(INVARIANT)
class WidthSolverRoundTripTest {
    /** The accuracy that the solver promises, in millimetres and as a share. */
    private static final double ACCURACY = 1e-9;
    /** Less than this may take a narrower strip than a document may state, in millimetres or as a share. */
    private static final double TOO_LITTLE = 0.05;

    private static final double TOO_SMALL_A_SHARE = 1e-3;

    private static final List<Measure> MEASURES = List.of(Measure.EDGE_MIDDLE, Measure.CORNER, Measure.SHARE_OF_SPHERE);

    @Property(tries = 400)
    void solvedWidthsShowTheWishesAgain(
            @ForAll("designs") DesignRequest design,
            @ForAll("sets") SphereSet set,
            @ForAll @IntRange(max = 4) int restPlace,
            @ForAll @IntRange(max = 2) int firstMeasure,
            @ForAll @DoubleRange(min = 0.3, max = 0.95) double part,
            @ForAll @IntRange(max = 2) int facePlace) {
        List<String> faces =
                design.laminations().stream().map(l -> l.face()).distinct().toList();
        String face = faces.get(facePlace % faces.size());
        int bands = design.laminations().get(0).bands().size();
        List<WishRequest> wishes = new ArrayList<>();
        for (int band = 1; band <= bands; band++) {
            wishes.add(
                    band == 1 + restPlace % bands
                            ? rest(band)
                            : possible(design, face, set, band, firstMeasure + band, part));
        }
        SolvedDesign solution = new Wished(design, new SolveRequest(face, set, wishes, null)).solved();
        assertEquals(face, solution.widths().face());
        assertEquals(set, solution.widths().set());
        assertWidthsFill(design, face, solution);
        for (int band = 1; band <= bands; band++) {
            assertSeenAsAnalysed(solution.widths().bands().get(band - 1), solution);
        }
        wishes.stream()
                .filter(wish -> wish.measure() != Measure.REST)
                .forEach(wish -> assertWish(wish, solution, design));
    }

    @Property(tries = 300)
    void sharedRestsStandInTheirProportionAndTheWishesShowAgain(
            @ForAll("designs") DesignRequest design,
            @ForAll("sets") SphereSet set,
            @ForAll @IntRange(min = 1, max = 31) int rests,
            @ForAll @DoubleRange(min = 0.1, max = 10) double proportion,
            @ForAll @IntRange(max = 2) int firstMeasure,
            @ForAll @DoubleRange(min = 0.3, max = 0.8) double part) {
        String face = design.laminations().get(0).face();
        int bands = design.laminations().get(0).bands().size();
        Assume.that(rests % (1 << bands) != 0);
        List<WishRequest> wishes = new ArrayList<>();
        List<Double> parts = new ArrayList<>();
        for (int band = 1; band <= bands; band++) {
            boolean wished = (rests >> (band - 1) & 1) == 0;
            parts.add(wished ? null : Double.valueOf(band % 2 == 0 ? proportion : 1));
            if (wished) {
                wishes.add(possible(design, face, set, band, firstMeasure + band, part));
            } else if (band % 2 == 0) {
                wishes.add(new WishRequest(band, Measure.REST, proportion));
            }
        }
        SolveRequest request = new SolveRequest(face, set, wishes, null);
        SolvedDesign solution = new Wished(design, request).solved();
        assertWidthsFill(design, face, solution);
        double whole = 0;
        double sum = 0;
        for (int i = 0; i < bands; i++) {
            SolvedBand band = solution.widths().bands().get(i);
            whole += parts.get(i) == null ? 0 : band.width();
            sum += parts.get(i) == null ? 0 : parts.get(i);
        }
        for (int i = 0; i < bands; i++) {
            SolvedBand band = solution.widths().bands().get(i);
            if (parts.get(i) != null) {
                assertEquals(whole * parts.get(i) / sum, band.width(), 1e-8);
            }
        }
        wishes.stream()
                .filter(wish -> wish.measure() != Measure.REST)
                .forEach(wish -> assertWish(wish, solution, design));
    }

    @Provide
    Arbitrary<SphereSet> sets() {
        return Arbitraries.of(SphereSet.UPRIGHT, SphereSet.INVERTED);
    }

    @Provide
    Arbitrary<DesignRequest> designs() {
        return GeneratedDesigns.designs(GeneratedDesigns.anyBandAngle());
    }

    private static WishRequest possible(
            DesignRequest design, String face, SphereSet set, int band, int firstMeasure, double part) {
        for (int i = 0; i < MEASURES.size(); i++) {
            Measure measure = MEASURES.get((firstMeasure + i) % MEASURES.size());
            double shown = part * analysed(design, face, set, band, measure);
            if (shown > (measure == Measure.SHARE_OF_SPHERE ? TOO_SMALL_A_SHARE : TOO_LITTLE)) {
                return wish(band, measure, inUnit(design, measure, shown));
            }
        }
        Assume.that(false);
        return rest(band);
    }

    private static void assertWish(WishRequest wish, SolvedDesign solution, DesignRequest original) {
        SolvedWish solved = Wishes.of(solution.widths(), wish.band());
        assertEquals(wish.measure(), solved.measure());
        double shown = analysed(
                solution.design(), solution.widths().face(), solution.widths().set(), wish.band(), wish.measure());
        assertEquals(wish.value(), inUnit(original, wish.measure(), shown), ACCURACY, wish::toString);
        assertEquals(0, solution.widths().worst());
        assertEquals(0, solved.deviation());
        assertTrue(solved.most() >= wish.value() - ACCURACY);
    }

    private static void assertSeenAsAnalysed(SolvedBand solved, SolvedDesign solution) {
        for (Seen seen : solved.seen()) {
            double[] numbers = {seen.edgeMiddle(), seen.corner(), seen.shareOfSphere()};
            for (int i = 0; i < numbers.length; i++) {
                double shown = analysed(
                        solution.design(), solution.widths().face(), seen.set(), solved.band(), MEASURES.get(i));
                assertEquals(shown, numbers[i], ACCURACY, seen.set() + " " + MEASURES.get(i));
            }
        }
    }

    private static void assertWidthsFill(DesignRequest design, String face, SolvedDesign solution) {
        double width = Design.of(design).panels().stream()
                .filter(p -> p.face().equals(face))
                .findFirst()
                .orElseThrow()
                .lamination()
                .width();
        double sum = solution.widths().bands().stream()
                .mapToDouble(SolvedBand::width)
                .sum();
        assertEquals(width, sum, ACCURACY);
        assertTrue(solution.widths().bands().stream().allMatch(b -> b.width() > 0));
    }

    private static double inUnit(DesignRequest design, Measure measure, double value) {
        return measure == Measure.SHARE_OF_SPHERE ? value : design.unit().fromMillimetres(value);
    }
}
