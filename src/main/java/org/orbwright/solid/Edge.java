package org.orbwright.solid;

import org.orbwright.quantity.Describe;
import org.orbwright.quantity.Quantity;

/** One edge of a solid. */
@Describe("One edge of a solid.")
public record Edge(
        @Describe(
                value = "Its number, which seams have everywhere.",
                quantity = Quantity.NUMBER,
                example = "1",
                max = 400)
        int number,

        @Describe(value = "Number of the corner where it starts.", quantity = Quantity.NUMBER, example = "1", max = 200)
        int from,

        @Describe(value = "Number of the corner where it ends.", quantity = Quantity.NUMBER, example = "13", max = 200)
        int to,

        @Describe(
                value = "Number of the face on its left, seen from outside.",
                quantity = Quantity.NUMBER,
                example = "1",
                max = 200)
        int face,

        @Describe(value = "Number of the face on its right.", quantity = Quantity.NUMBER, example = "3", max = 200)
        int neighbour) {}
