package org.orbwright.quantity;

import java.lang.annotation.Documented;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/**
 * Says what a component of a request or an answer is: in words, as which quantity, with an example. The words, the unit
 * and the bounds of the contract, and the conversion and rounding of every answer, all come from here.
 */
@Documented
@Retention(RetentionPolicy.RUNTIME)
@Target({ElementType.RECORD_COMPONENT, ElementType.TYPE})
public @interface Describe {
    /** What it is, in a sentence; the unit is added from the quantity. */
    String value();

    /** What kind of number it is. */
    Quantity quantity() default Quantity.NONE;

    /**
     * For a length of a request the least and the most that is usual, in millimetres. What lies outside is probably
     * stated in the wrong unit; 0 never is.
     */
    double[] usual() default {};

    /** An example as it stands in JSON; empty for records and lists of records. */
    String example() default "";

    /** Whether an answer may leave it out, or a request may. */
    boolean optional() default false;

    /** The smallest value that can occur in an answer; requests carry Bean Validation instead. */
    double min() default 0;

    /** The largest value that can occur in an answer; requests carry Bean Validation instead. */
    double max() default 1e18;
}
