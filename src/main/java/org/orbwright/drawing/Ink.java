package org.orbwright.drawing;

/** An area of ink, for white letters. */
public record Ink(PathData path) implements Mark {
    @Override
    public Mark lowered(double by) {
        return new Ink(path.lowered(by));
    }
}
