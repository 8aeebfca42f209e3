package org.orbwright.drawing;

/** An area of bare paper, with holes where its parts overlap. It hides a share of what lies below it, from 0 to 1. */
public record Paper(PathData path, double opacity, Pen pen) implements Mark {
    @Override
    public Mark lowered(double by) {
        return new Paper(path.lowered(by), opacity, pen);
    }
}
