package org.orbwright.paper;

import java.io.IOException;

/**
 * A piece of a sheet that stays on one page; sizes in millimetres. One that leads stays with the block that follows it.
 * Its head, or null, is drawn above it at the top of a column and where another head went before.
 */
record Block(double height, boolean leads, Block head, Ink ink) {

    /** Something that is drawn below and to the right of a point. */
    @FunctionalInterface
    interface Ink {
        void draw(PdfCanvas canvas, double left, double top) throws IOException;
    }

    /** A block without a head that may stand alone. */
    Block(double height, Ink ink) {
        this(height, false, null, ink);
    }

    /** The same block, which stays with the one that follows. */
    Block leading() {
        return new Block(height, true, head, ink);
    }
}
