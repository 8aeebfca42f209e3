package org.orbwright.turning;

import jakarta.validation.constraints.Max;
import jakarta.validation.constraints.Min;
import jakarta.validation.constraints.NotNull;
import org.orbwright.quantity.Describe;
import org.orbwright.quantity.Numbering;
import org.orbwright.quantity.Quantity;

@Describe("An axis through the solid's centre.")
public record AxisRequest(
        @Describe(
                value = "What it goes through: a FACE's centre, a CORNER or the middle of an EDGE.",
                example = "\"FACE\"")
        @NotNull
        Through through,

        @Describe(
                value = "Number of the face, the corner or the edge in the list of the solid; 1 if left out.",
                quantity = Quantity.NUMBER,
                example = "1",
                optional = true)
        @Min(1)
        @Max(200)
        Integer number) {

    /** The axis that is meant: the one through the first face where none is stated. */
    static AxisRequest filled(AxisRequest asked) {
        return new AxisRequest(
                asked == null ? Through.FACE : asked.through(),
                asked == null || asked.number() == null ? Numbering.FIRST : asked.number());
    }

    /** What an axis goes through. */
    public enum Through {
        /** The foot of the perpendicular on a face. */
        FACE("faces"),
        /** A corner. */
        CORNER("corners"),
        /** The foot of the perpendicular on an edge. */
        EDGE("edges");

        private final String many;

        Through(String many) {
            this.many = many;
        }

        /** What a solid has several of, for sentences. */
        String many() {
            return many;
        }
    }
}
