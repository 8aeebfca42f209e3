package org.orbwright.drawing;

import java.util.List;

/**
 * Flat outlines for a CAD program, in millimetres, y upwards.
 *
 * @param title what they show, in a few words
 * @param shapes the outlines
 */
public record Outline(String title, List<Shape> shapes) {

    /** Copies the list. */
    public Outline {
        shapes = List.copyOf(shapes);
    }

    /** An outline. */
    public sealed interface Shape permits Chain, Round, Bow, Note {
        /** Where it is put. */
        Layer layer();
    }

    /**
     * Straight lines from point to point.
     *
     * @param layer where it is put
     * @param points the points
     * @param closed whether the last is joined to the first
     */
    public record Chain(Layer layer, List<At> points, boolean closed) implements Shape {
        /** Copies the list. */
        public Chain {
            points = List.copyOf(points);
        }
    }

    /**
     * A circle.
     *
     * @param layer where it is put
     * @param centre its centre
     * @param radius its radius
     */
    public record Round(Layer layer, At centre, double radius) implements Shape {}

    /**
     * An arc of a circle.
     *
     * @param layer where it is put
     * @param centre its centre
     * @param radius its radius
     * @param from where it starts, in radians counter-clockwise from the first axis
     * @param to where it ends, counter-clockwise from its start
     */
    public record Bow(Layer layer, At centre, double radius, double from, double to) implements Shape {
        /** The point in a direction from the centre. */
        At end(double direction) {
            return new At(centre.x() + radius * Math.cos(direction), centre.y() + radius * Math.sin(direction));
        }
    }

    /**
     * A line of text.
     *
     * @param layer where it is put
     * @param at its lower left end
     * @param height height of its letters
     * @param text the text
     */
    public record Note(Layer layer, At at, double height, String text) implements Shape {}

    /**
     * A point.
     *
     * @param x to the right
     * @param y upwards
     */
    public record At(double x, double y) {}

    /**
     * Where a shape is put, so that a CAD or CAM program can tell what is cut from what is only looked at.
     *
     * @param kind what is on it
     * @param wood the wood of a band; empty for all others
     */
    public record Layer(LayerKind kind, String wood) {
        /** A layer that is not of one wood. */
        public static Layer of(LayerKind kind) {
            return new Layer(kind, "");
        }
    }

    /** What is on a layer. */
    public enum LayerKind {
        /** What is sawn, turned or cut out. */
        OUTLINE(7),
        /** The outline of the inner face, where the bevel ends. */
        BEVEL(5),
        /** Joints between segments. */
        JOINT(8),
        /** Bands, one layer for each wood. */
        BAND(3),
        /** The line beyond which the wood is turned away. */
        SPHERE_RIM(1),
        /** The flat that stays in the middle of a face. */
        FLAT(6),
        /** A pocket for an inlay. */
        POCKET(4),
        /** Holes. */
        HOLE(4),
        /** The circle that screws stand on. */
        SCREW_CIRCLE(2),
        /** Centres. */
        CENTRE(8),
        /** Text. */
        NOTE(8);

        private final int colour;

        LayerKind(int colour) {
            this.colour = colour;
        }

        /** Number of its colour in the index that drawing interchange files use: 1 red to 7 black or white, 8 grey. */
        int colour() {
            return colour;
        }
    }
}
