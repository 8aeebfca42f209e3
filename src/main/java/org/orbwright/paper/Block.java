package org.orbwright.paper;

import java.io.IOException;

/**
 * A piece of a sheet that no page parts; sizes in millimetres.
 *
 * @param height its height
 * @param leads whether it stays with the block that follows it
 * @param head what is drawn above it where a column starts with it or another head went before; null for nothing
 * @param ink what it looks like
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
