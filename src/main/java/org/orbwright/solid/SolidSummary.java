package org.orbwright.solid;

import org.orbwright.quantity.Describe;

/** A solid of the catalogue in brief. */
@Describe("A solid of the catalogue in brief.")
public record SolidSummary(
        @Describe(value = "The solid's name.", example = "\"dodecahedron\"")
        String name,

        @Describe(value = "Number of faces.", example = "12", max = 200)
        int faces) {}
