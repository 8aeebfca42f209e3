package org.orbwright.tolerance;

import java.util.ArrayList;
import java.util.List;
import org.orbwright.tolerance.CuttingErrors.ErrorPair;
import org.orbwright.tolerance.ErrorBudget.ErrorContribution;

/** Adds up what the errors do to one length. */
final class BudgetBuilder {
    private static final double TENTH_OF_DEGREE = Math.toRadians(0.1);
    /** The expanded uncertainty in standard ones. */
    static final double COVERAGE = 2;

    private final CuttingErrors errors;
    private final List<ErrorContribution> contributions = new ArrayList<>();
    private double shift;
    private double variance;

    BudgetBuilder(CuttingErrors errors) {
        this.errors = errors;
    }

    /** Adds a source with its derivatives, unless they are 0. */
    BudgetBuilder add(ErrorSource source, Derivatives derivatives) {
        if (derivatives.independent() == 0 && derivatives.together() == 0) {
            return this;
        }
        ErrorPair error = errors.of(source);
        boolean angle = source.isAngle();
        double shifted = derivatives.together() * error.setting();
        double scattered = derivatives.independent() * error.scatter();
        contributions.add(new ErrorContribution(
                source,
                angle ? Double.valueOf(derivatives.together() * TENTH_OF_DEGREE) : null,
                angle ? null : Double.valueOf(derivatives.together()),
                shifted,
                scattered));
        shift += shifted;
        variance += scattered * scattered;
        return this;
    }

    ErrorBudget build() {
        double uncertainty = Math.sqrt(variance);
        return new ErrorBudget(shift, uncertainty, COVERAGE * uncertainty, contributions);
    }
}
