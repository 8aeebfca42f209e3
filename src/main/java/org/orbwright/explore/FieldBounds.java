package org.orbwright.explore;

import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.Max;
import jakarta.validation.constraints.Min;
import java.lang.reflect.Method;
import java.lang.reflect.RecordComponent;
import java.util.List;
import org.orbwright.design.Violation;
import org.orbwright.quantity.Rounding;

/**
 * What a number field of a design allows, as its constraints state it: varied values have to keep them like written
 * ones.
 *
 * @param least the smallest value
 * @param most the largest value
 * @param whole whether it takes whole numbers only
 */
record FieldBounds(double least, double most, boolean whole) {
    private static final int SHOWN_DECIMALS = 6;

    static FieldBounds of(RecordComponent component) {
        Method accessor = component.getAccessor();
        DecimalMin decimalMin = accessor.getAnnotation(DecimalMin.class);
        DecimalMax decimalMax = accessor.getAnnotation(DecimalMax.class);
        Min min = accessor.getAnnotation(Min.class);
        Max max = accessor.getAnnotation(Max.class);
        return new FieldBounds(
                decimalMin != null ? Double.parseDouble(decimalMin.value()) : min.value(),
                decimalMax != null ? Double.parseDouble(decimalMax.value()) : max.value(),
                component.getType() == Integer.class);
    }

    /** Adds a violation for the first value that is not allowed. */
    void check(List<Double> values, String path, List<Violation> broken) {
        for (double value : values) {
            boolean fits = value >= least && value <= most && (!whole || value == Math.rint(value));
            if (!fits) {
                String shown = Rounding.plain(value, SHOWN_DECIMALS);
                broken.add(new Violation(
                        path,
                        "VALUE_NOT_ALLOWED",
                        "The field cannot take " + shown + ".",
                        shown,
                        (whole ? "whole numbers from " : "numbers from ") + Rounding.plain(least, SHOWN_DECIMALS)
                                + " to " + Rounding.plain(most, SHOWN_DECIMALS)));
                return;
            }
        }
    }
}
