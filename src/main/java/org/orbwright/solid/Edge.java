package org.orbwright.solid;

import static org.orbwright.quantity.Quantity.NUMBER;

import org.orbwright.quantity.Describe;

@Describe("One edge of a solid.")
public record Edge(
        @Describe(value = "Its number, which seams have everywhere.", quantity = NUMBER, example = "1", max = 400)
        int number,

        @Describe(value = "Number of the corner where it starts.", quantity = NUMBER, example = "1", max = 200)
        int from,

        @Describe(value = "Number of the corner where it ends.", quantity = NUMBER, example = "13", max = 200)
        int to,

        @Describe(
                value = "Number of the face on its left, seen from outside.",
                quantity = NUMBER,
                example = "1",
                max = 200)
        int face,

        @Describe(value = "Number of the face on its right.", quantity = NUMBER, example = "3", max = 200)
        int neighbour) {}
