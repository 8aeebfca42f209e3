package org.orbwright.drawing;

import java.util.List;
import org.orbwright.notice.Notice;

/**
 * A drawing in millimetres, the origin at the top left, y downwards.
 *
 * @param title what it shows, in a few words
 * @param description what it shows, for somebody who cannot see it
 * @param width width of the sheet
 * @param height height of the sheet
 * @param species the woods, in the order of the key
 * @param marks what is drawn, from the back to the front
 */
public record Drawing(
        String title, String description, double width, double height, List<String> species, List<Mark> marks) {

    /** Copies the lists. */
    public Drawing {
        species = List.copyOf(species);
        marks = List.copyOf(marks);
    }

    /**
     * The same drawing with what it tells: STOPs above it, where they cover nothing, and STOPs and WARNs in its
     * description.
     */
    public Drawing with(List<Notice> notices) {
        return NoticeBlock.above(this, notices);
    }

    /** Something that is drawn. */
    public sealed interface Mark permits Area, Shade, Paper, Ink, Line, Label {
        /** The same mark further down on the sheet. */
        Mark lowered(double by);
    }

    /**
     * An area of one wood.
     *
     * @param path its closed outline
     * @param tone number of its wood's tone
     * @param pen how its outline is drawn
     * @param hatched whether it has the tone's hatch; without it, it has the colour alone
     */
    public record Area(PathData path, int tone, Pen pen, boolean hatched) implements Mark {

        /** An area with colour and hatch. */
        public Area(PathData path, int tone, Pen pen) {
            this(path, tone, pen, true);
        }

        /** The same area in its colour alone. */
        Area plain() {
            return new Area(path, tone, pen, false);
        }

        @Override
        public Mark lowered(double by) {
            return new Area(path.lowered(by), tone, pen, hatched);
        }
    }

    /**
     * Light from the upper left and shadow on a ball. It lies over the colours, which are seen through it.
     *
     * @param x middle of the ball
     * @param y middle of the ball
     * @param radius radius of the ball
     */
    public record Shade(double x, double y, double radius) implements Mark {
        @Override
        public Mark lowered(double by) {
            return new Shade(x, y + by, radius);
        }
    }

    /**
     * An area of bare paper, with holes where its parts overlap.
     *
     * @param path its closed outline
     * @param opacity how much of what lies below it is hidden, 0 to 1
     * @param pen how its outline is drawn
     */
    public record Paper(PathData path, double opacity, Pen pen) implements Mark {
        @Override
        public Mark lowered(double by) {
            return new Paper(path.lowered(by), opacity, pen);
        }
    }

    /**
     * An area of ink, for white letters.
     *
     * @param path its closed outline
     */
    public record Ink(PathData path) implements Mark {
        @Override
        public Mark lowered(double by) {
            return new Ink(path.lowered(by));
        }
    }

    /**
     * A line, open or closed, without a filling.
     *
     * @param path its course
     * @param pen how it is drawn
     */
    public record Line(PathData path, Pen pen) implements Mark {
        @Override
        public Mark lowered(double by) {
            return new Line(path.lowered(by), pen);
        }
    }

    /**
     * A line of text.
     *
     * @param x where it is anchored
     * @param y its base line
     * @param size height of the letters
     * @param anchor which part of it lies at x
     * @param text the text
     * @param letters how the letters are drawn
     */
    public record Label(double x, double y, double size, Anchor anchor, String text, Letters letters) implements Mark {

        /** A line of plain text. */
        public Label(double x, double y, double size, Anchor anchor, String text) {
            this(x, y, size, anchor, text, Letters.PLAIN);
        }

        @Override
        public Mark lowered(double by) {
            return new Label(x, y + by, size, anchor, text, letters);
        }
    }

    /** How letters are drawn. */
    public enum Letters {
        /** In ink. */
        PLAIN,
        /** In ink with a light rim, to be read on every wood. */
        CASED,
        /** Bold and light, on ink. */
        REVERSED
    }

    /** Which part of a label lies at its x. */
    public enum Anchor {
        /** Its start. */
        START,
        /** Its middle. */
        MIDDLE,
        /** Its end. */
        END
    }

    /** How a line is drawn. */
    public enum Pen {
        /** Not at all. */
        NONE,
        /** Joints between segments, axes, dimension lines. */
        THIN,
        /** Outlines. */
        MEDIUM,
        /** Seams and what matters most. */
        THICK,
        /** Lines that have to be seen on the darkest wood too: they run between light ones. */
        CASED,
        /** What is turned away, or lies behind; light between the dashes. */
        DASHED,
        /** Where a bevel ends: dashes and dots, which no glue line is drawn in; light between them. */
        CHAIN
    }
}
