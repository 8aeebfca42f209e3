package org.orbwright.drawing;

import java.util.List;

/** Flat outlines for a CAD program, in millimetres, y upwards; the title says in a few words what they show. */
public record Outline(String title, List<Shape> shapes) {

    /** Copies the list. */
    public Outline {
        shapes = List.copyOf(shapes);
    }

    /** An outline. */
    public sealed interface Shape permits Chain, Round, Note {
        /** Where it is put. */
        Layer layer();
    }

    /**
     * Lines from point to point: all straight, but for an arc that may close them. The bulge is that of the arc from
     * the last point to the first: the tangent of a quarter of its angle, positive where it runs counter-clockwise, and
     * 0 for a straight line.
     */
    public record Chain(Layer layer, List<At> points, boolean closed, double bulge) implements Shape {
        /** Copies the list. */
        public Chain {
            points = List.copyOf(points);
        }

        /** Straight lines alone. */
        public Chain(Layer layer, List<At> points, boolean closed) {
            this(layer, points, closed, 0);
        }

        /** Radius of the closing arc: half its chord is square to its rise and the rest of the diameter. */
        double radius() {
            At from = points.get(points.size() - 1);
            At to = points.get(0);
            double chord = Math.hypot(to.x() - from.x(), to.y() - from.y());
            return chord * (1 + bulge * bulge) / (4 * Math.abs(bulge));
        }

        /** Middle of what closes it; a bulge that is positive lies to the right. */
        At middle() {
            At from = points.get(points.size() - 1);
            At to = points.get(0);
            return new At(
                    (from.x() + to.x() + bulge * (to.y() - from.y())) / 2,
                    (from.y() + to.y() - bulge * (to.x() - from.x())) / 2);
        }
    }

    /** A circle. */
    public record Round(Layer layer, At centre, double radius) implements Shape {}

    /** A line of text at its lower left end. */
    public record Note(Layer layer, At at, double height, String text) implements Shape {}

    /** A point, x to the right and y upwards. */
    public record At(double x, double y) {}

    /**
     * Where a shape is put, so that a CAD or CAM program can tell what is cut from what is only looked at. Only bands
     * have a wood; all others have an empty one. The colour is a number in the index that drawing interchange files
     * use.
     */
    public record Layer(LayerKind kind, String wood, int colour) {
        /** Colours from 20 to 249 are 24 hues in steps of ten; every fourth is that of a colour from 1 to 6. */
        private static final int HUES = 18;
        /** From wood to wood, so that neighbours differ. */
        private static final int STRIDE = 5;

        private static final int SHADES = 5;

        /** A layer that is not of one wood. */
        public static Layer of(LayerKind kind) {
            return new Layer(kind, "", kind.colour());
        }

        /** The layer of a wood's bands in a colour of its own, by its tone in the pictures. */
        static Layer band(String wood, int tone) {
            int hue = tone * STRIDE % HUES;
            int shade = 2 * (tone / HUES % SHADES);
            return new Layer(LayerKind.BAND, wood, LayerKind.BAND.colour() + 40 * (hue / 3) + 10 * (hue % 3) + shade);
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
        /** Bands, one layer for each wood, each of its own colour. */
        BAND(20),
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

        /** Its colour in the index of drawing interchange files: 1 red to 7 black or white, 8 grey, then hues. */
        int colour() {
            return colour;
        }
    }
}
