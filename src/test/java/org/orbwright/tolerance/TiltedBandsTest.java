package org.orbwright.tolerance;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.orbwright.fixture.Designs;
import org.orbwright.tolerance.ErrorBudget.ErrorContribution;
import org.orbwright.tolerance.ToleranceRequest.LengthErrorRequest;

/** What errors do to bands that do not run parallel to the base. */
class TiltedBandsTest {
    /** Base 200 mm, 100 mm high. */
    private static final Designs CUBE = Designs.of("cube");

    @Test
    @DisplayName("hand calculation: a line at 60 degrees moves by half of what a straight one does; cos(90) is 0")
    void tiltedBandsMoveByTheCosine() {
        Tolerances straight = Tolerances.of(CUBE.bands(Designs.widths(40.0, null)))
                .stop(0.2, 0.1)
                .tipAngle(0.1, 0.05)
                .widths(new LengthErrorRequest(-0.3, 0.2), null, null);
        ErrorBudget whole = line(straight);
        ErrorBudget half =
                line(new Tolerances(CUBE.bands(60, Designs.widths(40.0, 200.0)), straight.errors(), 0.1, 100, 1));
        assertEquals(whole.shift() / 2, half.shift(), 1e-12);
        assertEquals(whole.uncertainty() / 2, half.uncertainty(), 1e-12);
        ErrorBudget none =
                line(new Tolerances(CUBE.bands(90, Designs.widths(90.0, 200.0)), straight.errors(), 0.1, 100, 1));
        assertEquals(
                List.of(ErrorSource.BAND_WIDTH),
                none.contributions().stream().map(ErrorContribution::source).toList());
    }

    private static ErrorBudget line(Tolerances of) {
        return of.calculate().laminations().get(0).lines().get(0).shift();
    }

    @Test
    void theStickDecidesHowBluntTiltedBandsAre() {
        Tolerances tilted = Tolerances.of(CUBE.bands(30, Designs.widths(40.0, 200.0)))
                .widths(new LengthErrorRequest(-0.3, 0.2), new LengthErrorRequest(0.1, 0.05), null);
        assertEquals(0.3, tilted.calculate().panels().get(0).bluntTips().shift(), 1e-12);
        assertEquals(0.2, tilted.calculate().panels().get(0).bluntTips().uncertainty(), 1e-12);
    }
}
