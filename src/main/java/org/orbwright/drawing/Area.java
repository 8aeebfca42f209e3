package org.orbwright.drawing;

/** An area of one wood within a closed outline, in its tone by number. Without its hatch it has the colour alone. */
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
