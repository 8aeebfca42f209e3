package org.orbwright.band;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.orbwright.band.Wishes.analysed;
import static org.orbwright.band.Wishes.rest;
import static org.orbwright.band.Wishes.wish;
import static org.orbwright.design.RequestSketch.lamination;
import static org.orbwright.design.RequestSketch.sketch;
import static org.orbwright.source.Kind.HAND;
import static org.orbwright.source.Kind.INVARIANT;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.orbwright.band.SolveRequest.Measure;
import org.orbwright.band.WidthSolution.Sensitivity;
import org.orbwright.band.WidthSolution.SolvedBand;
import org.orbwright.band.WidthSolution.SolvedWish;
import org.orbwright.band.Wishes.Wished;
import org.orbwright.design.DesignRequest;
import org.orbwright.design.DesignRequest.BandRequest;
import org.orbwright.design.DesignRequest.LaminationRequest;
import org.orbwright.design.SizeBy;
import org.orbwright.design.SphereSet;
import org.orbwright.quantity.LengthUnit;
import org.orbwright.source.Source;

/** Sensitivities against analyses of designs whose widths are a little changed, the rest giving way. */
@Source(INVARIANT)
class WidthSensitivityTest {
    /** Half the change of a width, as a share of the edge; its square is the error of the difference. */
    private static final double STEP = 1e-4;
    /** The error is about STEP squared times a third derivative, in millimetres below one. */
    private static final double ACCURACY = 1e-6;

    private static final DesignRequest METRIC = sketch().size(SizeBy.EDGE, 80)
            .laminations(lamination(null, null, 14.0, 8.0, null, 6.0))
            .request();
    private static final DesignRequest IMPERIAL = sketch().unit(LengthUnit.IN)
            .size(SizeBy.EDGE, 3)
            .panel(1, null)
            .allowance(0.1)
            .wall(0.2)
            .laminations(lamination(null, null, 0.5, 0.25, null, 0.25))
            .request();
    private static final DesignRequest TILTED = sketch().solid("rhombic-triacontahedron")
            .size(SizeBy.EDGE, 70)
            .panel(20, null)
            .laminations(lamination(null, 25.0, 20.0, 6.0, null, 6.0))
            .request();
    private static final DesignRequest WITH_FLATS = sketch().size(SizeBy.EDGE, 80)
            .diameter(195.0)
            .laminations(lamination(null, null, 14.0, 8.0, null, 6.0))
            .request();

    static Stream<Wished> requests() {
        return Stream.of(
                request(METRIC, SphereSet.UPRIGHT, 7, 0.2),
                request(METRIC, SphereSet.INVERTED, 7, 0.2),
                request(IMPERIAL, SphereSet.UPRIGHT, 0.3, 0.2),
                request(IMPERIAL, SphereSet.INVERTED, 0.3, 0.2),
                request(TILTED, SphereSet.UPRIGHT, 1, 0.15),
                request(TILTED, SphereSet.INVERTED, 1, 0.15),
                request(WITH_FLATS, SphereSet.UPRIGHT, 7, 0.2));
    }

    @ParameterizedTest
    @MethodSource("requests")
    void sensitivitiesAreThoseOfAnalysesOfChangedWidths(Wished request) {
        SolvedDesign solution = request.solved();
        for (SolvedWish band : solution.widths().wishes()) {
            assertEquals(
                    List.of(1, 2, 4),
                    band.sensitivities().stream().map(Sensitivity::band).toList());
            for (Sensitivity sensitivity : band.sensitivities()) {
                double expected = difference(solution, band, sensitivity.band());
                assertEquals(expected, sensitivity.change(), ACCURACY, () -> band.band() + " by " + sensitivity);
            }
        }
    }

    @Test
    @DisplayName("a band's visible width grows by the slope of the sphere where it ends, 1 / sqrt(1 - (x / R)^2)")
    @Source(value = HAND, text = "the derivative of R asin(x / R)")
    void visibleWidthGrowsByTheSlopeOfTheSphereAtTheBandsInnerEdge() {
        SolvedDesign solution = request(METRIC, SphereSet.UPRIGHT, 7, 0.2).solved();
        SolvedBand first = solution.widths().bands().get(0);
        double inner = 80 * 0.6881909602355868 - first.width();
        double radius = 80 * 1.1135163644116068 - 2;
        double slope = 1 / Math.sqrt(1 - inner * inner / radius / radius);
        List<Sensitivity> sensitivities = Wishes.of(solution.widths(), 1).sensitivities();
        assertEquals(slope, sensitivities.get(0).change(), ACCURACY);
        assertEquals(0, sensitivities.get(1).change(), ACCURACY);
        assertEquals(0, sensitivities.get(2).change(), ACCURACY);
    }

    @Test
    void sensitivitiesOfWidthsAreTheSameInBothUnitsAndThoseOfSharesScale() {
        DesignRequest metric = sketch().size(SizeBy.EDGE, 3 * 25.4)
                .panel(25.4, null)
                .allowance(2.54)
                .wall(5.08)
                .laminations(lamination(null, null, 12.7, 6.35, null, 6.35))
                .request();
        List<SolvedWish> mm =
                request(metric, SphereSet.UPRIGHT, 0.3 * 25.4, 0.2).solve().wishes();
        List<SolvedWish> inch =
                request(IMPERIAL, SphereSet.UPRIGHT, 0.3, 0.2).solve().wishes();
        for (int i = 0; i < mm.size(); i++) {
            boolean width = mm.get(i).measure() == Measure.EDGE_MIDDLE;
            for (int j = 0; j < 3; j++) {
                double perMillimetre = mm.get(i).sensitivities().get(j).change();
                double perInch = inch.get(i).sensitivities().get(j).change();
                assertEquals(width ? perMillimetre : 25.4 * perMillimetre, perInch, 1e-8);
            }
        }
    }

    private static double difference(SolvedDesign solution, SolvedWish band, int wider) {
        double step = STEP * solution.design().size().value();
        double change = shown(solution, band, wider, step) - shown(solution, band, wider, -step);
        boolean width = band.measure() == Measure.EDGE_MIDDLE;
        return change / (2 * step) * (width ? solution.design().unit().fromMillimetres(1) : 1);
    }

    private static double shown(SolvedDesign solution, SolvedWish band, int wider, double by) {
        LaminationRequest old = solution.design().laminations().get(0);
        List<BandRequest> bands = new ArrayList<>(old.bands());
        BandRequest changed = bands.get(wider - 1);
        bands.set(wider - 1, new BandRequest(changed.species(), changed.width() + by));
        DesignRequest design =
                solution.design().withLaminations(List.of(new LaminationRequest(old.face(), old.bandAngle(), bands)));
        return analysed(design, solution.widths().face(), solution.widths().set(), band.band(), band.measure());
    }

    private static Wished request(DesignRequest design, SphereSet set, double width, double share) {
        return new Wished(
                design,
                new SolveRequest(
                        null,
                        set,
                        List.of(
                                wish(
                                        1,
                                        set == SphereSet.UPRIGHT ? Measure.EDGE_MIDDLE : Measure.SHARE_OF_SPHERE,
                                        set == SphereSet.UPRIGHT ? width : share),
                                wish(2, Measure.SHARE_OF_SPHERE, share),
                                rest(3),
                                wish(
                                        4,
                                        set == SphereSet.UPRIGHT ? Measure.SHARE_OF_SPHERE : Measure.EDGE_MIDDLE,
                                        set == SphereSet.UPRIGHT ? share / 4 : width)),
                        null));
    }
}
