package org.orbwright.solid;

import java.util.List;
import org.orbwright.quantity.Describe;
import org.orbwright.quantity.Quantity;

@Describe("One face of a solid.")
public record Face(
        @Describe(
                value = "Its number, which panels have everywhere: in the net, in inlays, in pictures.",
                quantity = Quantity.NUMBER,
                example = "1",
                max = 200)
        int number,

        @Describe(value = "The face kind.", example = "\"pentagon\"")
        String kind,

        @Describe(value = "Whether the face is the mirror image of its kind's first face.", example = "false")
        boolean mirrored,

        @Describe(
                value = "Numbers of its corners, counter-clockwise seen from outside.",
                quantity = Quantity.NUMBER,
                example = "[1,13,15,5,9]")
        List<Integer> vertices,

        @Describe("Its segments; the base of each lies between the corner of the same place in the list and the next.")
        List<Part> segments) {

    public Face {
        vertices = List.copyOf(vertices);
        segments = List.copyOf(segments);
    }

    @Describe("One segment of a face.")
    public record Part(
            @Describe(value = "The kind of segment.", example = "\"A\"")
            String segment,

            @Describe(value = "Whether it is mirrored.", example = "false")
            boolean mirrored) {}
}
