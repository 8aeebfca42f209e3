package org.orbwright.band;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.orbwright.band.Wishes.inSteps;
import static org.orbwright.band.Wishes.rest;
import static org.orbwright.band.Wishes.upright;
import static org.orbwright.band.Wishes.wish;
import static org.orbwright.design.RequestSketch.lamination;
import static org.orbwright.design.RequestSketch.sketch;
import static org.orbwright.source.Kind.CONTRACT;
import static org.orbwright.source.Kind.INVARIANT;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.orbwright.band.SolveRequest.Measure;
import org.orbwright.band.SolveRequest.WishRequest;
import org.orbwright.band.WidthSolution.SolvedBand;
import org.orbwright.band.Wishes.Wished;
import org.orbwright.design.Design;
import org.orbwright.design.DesignRequest;
import org.orbwright.design.DesignRequest.BandRequest;
import org.orbwright.design.SizeBy;
import org.orbwright.quantity.LengthUnit;
import org.orbwright.source.Source;

/** Widths in the steps in which a shop sets its saw, with the rest taking up the difference. */
@Source(INVARIANT)
class WidthStepTest {
    private static final double ACCURACY = 1e-9;

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
    private static final DesignRequest TILTED = sketch().solid("cube")
            .size(SizeBy.EDGE, 120)
            .laminations(lamination(null, 30.0, 30.0, 8.0, null, 20.0))
            .request();

    static Stream<Wished> requests() {
        return Stream.of(
                inSteps(0.5, METRIC, wishes(7, 6, 5)),
                inSteps(0.1, METRIC, wishes(7.03, 6.21, 5.55)),
                inSteps(1.0 / 32, IMPERIAL, wishes(0.27, 0.3, 0.22)),
                inSteps(1.0 / 64, IMPERIAL, wishes(0.21, 0.31, 0.25)),
                inSteps(0.5, TILTED, wishes(4, 6, 5)));
    }

    @ParameterizedTest
    @MethodSource("requests")
    @Source(CONTRACT)
    void everyWidthButTheRestIsAMultipleOfTheStep(Wished request) {
        double step = request.request().step();
        SolvedDesign solution = request.solved();
        List<BandRequest> answered = solution.design().laminations().get(0).bands();
        for (SolvedBand band : solution.widths().bands()) {
            Double width = answered.get(band.band() - 1).width();
            if (band.rest()) {
                assertNull(width);
                assertNull(band.steps());
            } else {
                assertEquals(band.steps() * step, width, 1e-12);
                assertEquals(band.width(), request.design().unit().toMillimetres(width), ACCURACY);
            }
        }
    }

    @ParameterizedTest
    @MethodSource("requests")
    void widthsFillTheLamination(Wished request) {
        SolvedDesign solution = request.solved();
        double sum = solution.widths().bands().stream()
                .mapToDouble(SolvedBand::width)
                .sum();
        assertEquals(Design.of(solution.design()).panels().get(0).lamination().width(), sum, ACCURACY);
    }

    @ParameterizedTest
    @MethodSource("requests")
    void whatAStepCostsIsToldBesideIt(Wished request) {
        WidthSolution stepped = request.solve();
        assertEquals(0, stepped.worstWithoutStep());
        assertTrue(stepped.worst() > 0);
        WidthSolution exact = new Wished(
                        request.design(),
                        new SolveRequest(null, null, request.request().wishes(), null))
                .solve();
        assertNull(exact.worstWithoutStep());
        assertEquals(0, exact.worst());
    }

    @Test
    @Source(CONTRACT)
    void widthBelowHalfAStepIsOneStep() {
        SolvedDesign solution = inSteps(5, METRIC, wishes(7, 1, 1)).solved();
        assertEquals(5, solution.widths().bands().get(1).width(), ACCURACY);
        assertEquals(5, solution.widths().bands().get(3).width(), ACCURACY);
    }

    @Test
    @Source(CONTRACT)
    void withoutAStepTheAnsweredDesignHasTheExactWidths() {
        SolvedDesign solution = upright(METRIC, wishes(7, 6, 5)).solved();
        for (SolvedBand band : solution.widths().bands()) {
            Double width = solution.design()
                    .laminations()
                    .get(0)
                    .bands()
                    .get(band.band() - 1)
                    .width();
            assertEquals(band.rest() ? null : Double.valueOf(band.width()), width);
        }
    }

    private static WishRequest[] wishes(double first, double second, double fourth) {
        return new WishRequest[] {
            wish(1, Measure.EDGE_MIDDLE, first),
            wish(2, Measure.CORNER, second),
            rest(3),
            wish(4, Measure.EDGE_MIDDLE, fourth)
        };
    }
}
