package org.orbwright.drawing;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.orbwright.quantity.Rounding;

/**
 * The course of a line: straight parts and arcs of ellipses, written in the words of SVG's path data (SVG 1.1, section
 * 8.3) to a thousandth of a millimetre.
 */
public final class PathData {
    private static final int DECIMALS = 3;

    private final List<Command> commands = new ArrayList<>();

    /** A part of the course. */
    public sealed interface Command permits Move, Straight, Arc, Close {
        /** The same part further down on the sheet. */
        Command lowered(double by);
    }

    /** Starts a new part of the path. */
    public record Move(double x, double y) implements Command {
        @Override
        public Command lowered(double by) {
            return new Move(x, y + by);
        }
    }

    /** A straight line to a point. */
    public record Straight(double x, double y) implements Command {
        @Override
        public Command lowered(double by) {
            return new Straight(x, y + by);
        }
    }

    /**
     * An arc of an ellipse whose axes lie along x and y, by half of each axis, to a point. A large one is more than
     * half of the ellipse; clockwise is meant as seen on the sheet.
     */
    public record Arc(double radiusX, double radiusY, boolean large, boolean clockwise, double x, double y)
            implements Command {
        @Override
        public Command lowered(double by) {
            return new Arc(radiusX, radiusY, large, clockwise, x, y + by);
        }
    }

    /** Closes a part. */
    public record Close() implements Command {
        @Override
        public Command lowered(double by) {
            return this;
        }
    }

    /** Starts a new part of the path. */
    public PathData moveTo(double x, double y) {
        return add(new Move(x, y));
    }

    /** Draws a straight line. */
    public PathData lineTo(double x, double y) {
        return add(new Straight(x, y));
    }

    /** Draws an {@linkplain Arc arc} of an ellipse whose axes lie along x and y. */
    public PathData arcTo(double radiusX, double radiusY, boolean large, boolean clockwise, double x, double y) {
        return add(new Arc(radiusX, radiusY, large, clockwise, x, y));
    }

    /** Draws a whole circle as a part of its own. */
    public PathData circle(double x, double y, double radius) {
        return moveTo(x - radius, y)
                .arcTo(radius, radius, true, true, x + radius, y)
                .arcTo(radius, radius, true, true, x - radius, y)
                .close();
    }

    /** Draws straight lines through points, as a part of its own. */
    PathData lines(List<Point> points) {
        for (int i = 0; i < points.size(); i++) {
            Point point = points.get(i);
            add(i == 0 ? new Move(point.x(), point.y()) : new Straight(point.x(), point.y()));
        }
        return this;
    }

    /** Closes the part. */
    public PathData close() {
        return add(new Close());
    }

    /** Adds all of another path. */
    PathData append(PathData other) {
        other.commands().forEach(this::add);
        return this;
    }

    /** The same course further down on the sheet. */
    PathData lowered(double by) {
        PathData path = new PathData();
        commands.forEach(command -> path.add(command.lowered(by)));
        return path;
    }

    /** Whether nothing is drawn. */
    public boolean isEmpty() {
        return commands.isEmpty();
    }

    /** The parts of the course, in their order. */
    public List<Command> commands() {
        return Collections.unmodifiableList(commands);
    }

    private PathData add(Command command) {
        commands.add(command);
        return this;
    }

    static String number(double value) {
        return Rounding.plain(value, DECIMALS);
    }

    /** The path data. */
    @Override
    public String toString() {
        StringBuilder text = new StringBuilder();
        for (Command command : commands) {
            if (command instanceof Move move) {
                point(text.append('M'), move.x(), move.y());
            } else if (command instanceof Straight straight) {
                point(text.append('L'), straight.x(), straight.y());
            } else if (command instanceof Arc arc) {
                point(text.append('A'), arc.radiusX(), arc.radiusY());
                text.append(arc.large() ? " 0 1 " : " 0 0 ").append(arc.clockwise() ? "1 " : "0 ");
                point(text, arc.x(), arc.y());
            } else {
                text.append('Z');
            }
        }
        return text.toString();
    }

    private static void point(StringBuilder text, double x, double y) {
        text.append(number(x)).append(' ').append(number(y));
    }
}
