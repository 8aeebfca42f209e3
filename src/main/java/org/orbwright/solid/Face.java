package org.orbwright.solid;

import java.util.List;
import org.orbwright.quantity.Describe;

/** One face of a solid. */
@Describe("One face of a solid.")
public record Face(
        @Describe(value = "The face kind.", example = "\"pentagon\"")
        String kind,

        @Describe(value = "Whether the face is the mirror image of its kind's first face.", example = "false")
        boolean mirrored,

        @Describe(value = "Numbers of its corners, counter-clockwise seen from outside.", example = "[0,12,14,4,8]")
        List<Integer> vertices,

        @Describe("Its segments; the base of each lies between the corner of the same place in the list and the next.")
        List<Part> segments) {

    /** Copies the lists. */
    public Face {
        vertices = List.copyOf(vertices);
        segments = List.copyOf(segments);
    }

    /** One segment of a face. */
    @Describe("One segment of a face.")
    public record Part(
            @Describe(value = "The kind of segment.", example = "\"A\"")
            String segment,

            @Describe(value = "Whether it is mirrored.", example = "false")
            boolean mirrored) {}
}
