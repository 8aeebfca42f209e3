package org.orbwright.diagnosis;

import org.orbwright.quantity.Describe;

@Describe("Two measurements that tell the same thing, by how far they differ.")
public record Comparison(
        @Describe(value = "What is compared.", example = "\"PANELS_OF_TRIO\"")
        ComparedMeasures measures,

        @Describe(value = "The face kind.", example = "\"triangle\"")
        String face,

        @Describe(value = "The first less the second, where they tell an angle.", optional = true)
        AngleEstimate angle,

        @Describe(value = "The first less the second, where they tell a length.", optional = true)
        LengthEstimate length,

        @Describe(value = "Whether they agree within their combined expanded uncertainty.", example = "true")
        boolean agree) {

    static Comparison of(ComparedMeasures measures, String face, AngleEstimate difference) {
        return new Comparison(measures, face, difference, null, difference.unclear());
    }

    static Comparison of(ComparedMeasures measures, String face, Reading one, Reading other) {
        LengthEstimate difference =
                LengthEstimate.of(one.value() - other.value(), Math.hypot(one.uncertainty(), other.uncertainty()));
        return new Comparison(measures, face, null, difference, difference.unclear());
    }
}
