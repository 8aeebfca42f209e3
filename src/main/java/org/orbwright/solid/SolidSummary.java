package org.orbwright.solid;

import java.util.List;
import org.orbwright.quantity.Describe;

@Describe("A solid in brief.")
public record SolidSummary(
        @Describe(value = "The solid's name.", example = "\"dodecahedron\"")
        String name,

        @Describe(value = "The family that it belongs to.", example = "\"PLATONIC\"")
        SolidFamily family,

        @Describe(value = "Name of its dual.", example = "\"icosahedron\"")
        String dual,

        @Describe(value = "Number of faces.", example = "12", min = 4, max = 120)
        int faces,

        @Describe(value = "Number of edges.", example = "30", min = 6, max = 180)
        int edges,

        @Describe(value = "Number of corners.", example = "20", min = 4, max = 120)
        int vertices,

        @Describe(value = "Names of its face kinds.", example = "[\"pentagon\"]")
        List<String> faceKinds) {}
