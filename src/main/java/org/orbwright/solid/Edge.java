package org.orbwright.solid;

import org.orbwright.quantity.Describe;

/** One edge of a solid. */
@Describe("One edge of a solid.")
public record Edge(
        @Describe(value = "Number of the corner where it starts.", example = "0", max = 200)
        int from,

        @Describe(value = "Number of the corner where it ends.", example = "12", max = 200)
        int to,

        @Describe(value = "Number of the face on its left, seen from outside.", example = "0", max = 200)
        int face,

        @Describe(value = "Number of the face on its right.", example = "2", max = 200)
        int neighbour) {}
