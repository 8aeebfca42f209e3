package org.orbwright.body;

import java.util.List;

/**
 * A body as closed meshes in millimetres, one part for each wood or just one.
 *
 * @param title what it is, in a few words
 * @param parts its parts, in the order of the design's woods
 * @param deviation the farthest that a mesh lies from what is round, in millimetres; 0 for a body without anything
 *     round
 */
public record Body(String title, List<Part> parts, double deviation) {

    /** Copies the list. */
    public Body {
        parts = List.copyOf(parts);
    }

    /**
     * A part of a body.
     *
     * @param name its wood, or what it is
     * @param mesh its surface
     * @param volume its volume in closed form, in cubic millimetres; null where there is none
     */
    public record Part(String name, Mesh mesh, Double volume) {}

    /** The same body with just one of its parts. */
    public Body only(String name) {
        List<Part> kept =
                parts.stream().filter(part -> part.name().equals(name)).toList();
        return new Body(title, kept, deviation);
    }

    /** Triangles of all parts. */
    public int triangles() {
        return parts.stream().mapToInt(part -> part.mesh().triangles().size()).sum();
    }
}
