package org.orbwright.body;

import java.util.List;

/**
 * A body as closed meshes in millimetres, in the order of the design's woods: one part for each wood or just one. The
 * deviation is the farthest that a mesh lies from what is round, in millimetres; 0 where nothing is round.
 */
public record Body(String title, List<Part> parts, double deviation) {

    /** Copies the list. */
    public Body {
        parts = List.copyOf(parts);
    }

    /** A part of a body by its wood or name. Volume is exact, in cubic millimetres; null where unknown. */
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
