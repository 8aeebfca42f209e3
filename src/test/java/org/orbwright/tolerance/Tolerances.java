package org.orbwright.tolerance;

import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.function.ToDoubleFunction;
import org.orbwright.design.ImpossibleDesignException;
import org.orbwright.design.Violation;
import org.orbwright.document.Document;
import org.orbwright.document.Section;
import org.orbwright.fixture.Designs;
import org.orbwright.tolerance.ErrorBudget.ErrorContribution;
import org.orbwright.tolerance.ToleranceRequest.AngleErrorRequest;
import org.orbwright.tolerance.ToleranceRequest.ErrorsRequest;
import org.orbwright.tolerance.ToleranceRequest.LengthErrorRequest;

/**
 * A tolerance that a test changes in one place. Every step returns a new one; it starts without errors, with glue that
 * bridges 0.1 mm, and few samples.
 */
public record Tolerances(Designs design, ErrorsRequest errors, Double glue, Integer samples, Integer seed) {

    /** Without errors. */
    public static Tolerances of(Designs design) {
        return new Tolerances(design, new ErrorsRequest(null, null, null, null, null, null, null, null), 0.1, 100, 1);
    }

    private Tolerances with(ErrorsRequest others) {
        return new Tolerances(design, others, glue, samples, seed);
    }

    /** An error of the tip angle in degrees. */
    public Tolerances tipAngle(double setting, double scatter) {
        return with(new ErrorsRequest(
                new AngleErrorRequest(setting, scatter),
                errors.bevel(),
                errors.blankWidth(),
                errors.bandWidth(),
                errors.panelThickness(),
                errors.stop(),
                errors.square(),
                errors.squareDrift()));
    }

    /** An error of the bevel in degrees. */
    public Tolerances bevel(double setting, double scatter) {
        return with(new ErrorsRequest(
                errors.tipAngle(),
                new AngleErrorRequest(setting, scatter),
                errors.blankWidth(),
                errors.bandWidth(),
                errors.panelThickness(),
                errors.stop(),
                errors.square(),
                errors.squareDrift()));
    }

    /** Errors of the blank's width, the bands' and the panels' thickness. */
    public Tolerances widths(LengthErrorRequest blank, LengthErrorRequest band, LengthErrorRequest thickness) {
        return with(new ErrorsRequest(
                errors.tipAngle(),
                errors.bevel(),
                blank,
                band,
                thickness,
                errors.stop(),
                errors.square(),
                errors.squareDrift()));
    }

    /** An error of the stop. */
    public Tolerances stop(double setting, double scatter) {
        return with(new ErrorsRequest(
                errors.tipAngle(),
                errors.bevel(),
                errors.blankWidth(),
                errors.bandWidth(),
                errors.panelThickness(),
                new LengthErrorRequest(setting, scatter),
                errors.square(),
                errors.squareDrift()));
    }

    /** A lean of the legs in degrees, and how much more of it there is at the rim than at the tips. */
    public Tolerances square(double setting, double scatter, double drift) {
        return with(new ErrorsRequest(
                errors.tipAngle(),
                errors.bevel(),
                errors.blankWidth(),
                errors.bandWidth(),
                errors.panelThickness(),
                errors.stop(),
                new AngleErrorRequest(setting, scatter),
                drift));
    }

    /** Glue that bridges this. */
    public Tolerances glue(Double bridges) {
        return new Tolerances(design, errors, bridges, samples, seed);
    }

    /** So many samples from this seed. */
    public Tolerances samples(Integer count, Integer from) {
        return new Tolerances(design, errors, glue, count, from);
    }

    /** The request. */
    public Document document() {
        return design.document(Section.TOLERANCE, request());
    }

    /** The section. */
    public ToleranceRequest request() {
        return new ToleranceRequest(errors, glue, samples, seed);
    }

    /** The answer. */
    public Tolerance calculate() {
        return ToleranceCalculator.calculate(request(), design.build());
    }

    List<Violation> refusals() {
        return assertThrows(ImpossibleDesignException.class, this::calculate).violations();
    }

    /** What one source has to do with a length. */
    static double part(ErrorBudget budget, ErrorSource source, ToDoubleFunction<ErrorContribution> number) {
        return budget.contributions().stream()
                .filter(contribution -> contribution.source() == source)
                .mapToDouble(number)
                .findFirst()
                .orElseThrow();
    }
}
