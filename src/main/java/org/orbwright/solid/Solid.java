package org.orbwright.solid;

import org.orbwright.quantity.Describe;
import org.orbwright.quantity.Quantity;

/** A solid of the catalogue. */
@Describe("A solid of the catalogue, with a shortest edge of 1.")
public record Solid(
        @Describe(value = "The solid's name.", example = "\"dodecahedron\"")
        String name,

        @Describe(value = "Number of faces.", example = "12", max = 200)
        int faces,

        @Describe(value = "Smallest face distance.", quantity = Quantity.UNIT_EDGE, example = "1.113516364412")
        double inradius) {}
