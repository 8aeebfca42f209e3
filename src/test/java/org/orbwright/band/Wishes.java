package org.orbwright.band;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.orbwright.band.BandSurvival.BandView;
import org.orbwright.band.BandSurvival.FaceBands;
import org.orbwright.band.BandSurvival.SegmentBands;
import org.orbwright.band.SolveRequest.Measure;
import org.orbwright.band.SolveRequest.WishRequest;
import org.orbwright.band.WidthSolution.SolvedWish;
import org.orbwright.design.BandSet;
import org.orbwright.design.Design;
import org.orbwright.design.DesignRequest;
import org.orbwright.design.ImpossibleDesignException;
import org.orbwright.design.SphereKind;
import org.orbwright.design.SphereSet;
import org.orbwright.design.Violation;

/** Wishes in a line, and what the analysis of a design says of the same measures. */
final class Wishes {
    private Wishes() {}

    /** Wishes for a design. */
    record Wished(DesignRequest design, SolveRequest request) {
        WidthSolution solve() {
            return solved().widths();
        }

        SolvedDesign solved() {
            return WidthSolver.solve(request, design);
        }
    }

    static WishRequest wish(int band, Measure measure, double value) {
        return new WishRequest(band, measure, value);
    }

    static WishRequest wish(int band, Measure measure, SphereSet set, double value) {
        return new WishRequest(band, measure, set, value);
    }

    static WishRequest rest(int band) {
        return new WishRequest(band, Measure.REST, null);
    }

    static Wished upright(DesignRequest design, WishRequest... wishes) {
        return new Wished(design, new SolveRequest(null, null, List.of(wishes), null));
    }

    static Wished inverted(DesignRequest design, WishRequest... wishes) {
        return new Wished(design, new SolveRequest(null, SphereSet.INVERTED, List.of(wishes), null));
    }

    static Wished inSteps(double step, DesignRequest design, WishRequest... wishes) {
        return new Wished(design, new SolveRequest(null, null, List.of(wishes), step));
    }

    /** What became of the only wish for a band. */
    static SolvedWish of(WidthSolution solution, int band) {
        return solution.wishes().stream()
                .filter(wish -> wish.band() == band)
                .reduce((one, other) -> {
                    throw new AssertionError("two wishes for band " + band);
                })
                .orElseThrow();
    }

    /** A measure of one band as the analysis of a design gives it, in millimetres or as a share. */
    static double analysed(DesignRequest design, String face, SphereSet set, int band, Measure measure) {
        Design built = Design.of(design);
        return analysed(built, BandCalculator.calculate(built, 2), face, set, band, measure);
    }

    /** The same of a design that was analysed already. */
    static double analysed(
            Design design, BandSurvival survival, String face, SphereSet set, int band, Measure measure) {
        if (set != SphereSet.MIXED) {
            return analysed(survival, face, BandSet.valueOf(set.name()), band, measure);
        }
        SphereKind mixed = design.spheres().get(0);
        double upright = mixed.panelsOf(design.solid(), face, BandSet.UPRIGHT);
        double inverted = mixed.panelsOf(design.solid(), face, BandSet.INVERTED);
        double one = analysed(survival, face, BandSet.UPRIGHT, band, measure);
        double other = analysed(survival, face, BandSet.INVERTED, band, measure);
        return measure == Measure.SHARE_OF_SPHERE
                ? (upright * one + inverted * other) / (upright + inverted)
                : Math.min(one, other);
    }

    private static double analysed(BandSurvival survival, String face, BandSet set, int band, Measure measure) {
        FaceBands bands = survival.faces().stream()
                .filter(f -> f.face().equals(face))
                .findFirst()
                .orElseThrow();
        double least = Double.POSITIVE_INFINITY;
        double share = 0;
        for (SegmentBands segment : bands.segments()) {
            boolean turned = set == BandSet.INVERTED && segment.inverted() != null;
            BandView view = (turned ? segment.inverted() : segment.upright())
                    .stream().filter(v -> v.band() == band).findFirst().orElseThrow();
            share += view.shareOfSphere();
            least = Math.min(
                    least,
                    measure == Measure.EDGE_MIDDLE
                            ? view.visibleWidth().edgeMiddle()
                            : Math.min(
                                    view.visibleWidth().leftCorner(),
                                    view.visibleWidth().rightCorner()));
        }
        return measure == Measure.EDGE_MIDDLE || measure == Measure.CORNER ? least : share;
    }

    /** The one violation with which a request is refused. */
    static Violation refusal(Wished request) {
        List<Violation> violations =
                assertThrows(ImpossibleDesignException.class, request::solve).violations();
        assertEquals(1, violations.size(), violations::toString);
        return violations.get(0);
    }
}
