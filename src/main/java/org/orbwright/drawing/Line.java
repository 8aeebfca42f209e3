package org.orbwright.drawing;

/** A line, open or closed, without a filling. */
public record Line(PathData path, Pen pen) implements Mark {
    @Override
    public Mark lowered(double by) {
        return new Line(path.lowered(by), pen);
    }
}
